//! Round parts, seen along their axis.

use crate::sample::outline::{Outline, arc, around};
use crate::sample::pen::Pen;
use crate::sample::sheet::Tone;

const MIDDLE: (f64, f64) = (0.0, 0.0);

/// So many holes on a circle.
fn holes(pen: &mut Pen<'_>, count: usize, circle: f64, radius: f64, tone: Tone) {
    for index in 0..count {
        let at = around(MIDDLE, circle, index as f64 / count as f64 - 0.25);
        pen.face(&Outline::circle(at, radius), tone);
    }
}

pub(in crate::sample) fn hub(pen: &mut Pen<'_>, studs: usize) {
    pen.body(&Outline::circle(MIDDLE, 0.82), Tone::Sheet);
    pen.hatch(&Outline::sector(MIDDLE, 0.8, 0.5, 0.02, 0.3), Tone::Line);
    pen.face(&Outline::circle(MIDDLE, 0.44), Tone::Well);
    pen.face(&Outline::circle(MIDDLE, 0.34), Tone::Sheet);
    pen.face(&Outline::circle(MIDDLE, 0.22), Tone::Ink);
    for index in 0..studs {
        let at = around(MIDDLE, 0.62, index as f64 / studs as f64 - 0.25);
        pen.face(&Outline::circle(at, 0.11), Tone::Paper);
        pen.face(&Outline::circle(at, 0.055), Tone::Ink2);
    }
}

pub(in crate::sample) fn drum(pen: &mut Pen<'_>, count: usize) {
    // Seen a little from the side: the wall shows below.
    pen.body(&Outline::ellipse((0.0, 0.16), 0.9, 0.74), Tone::Well);
    pen.hatch(&Outline::ellipse((0.0, 0.16), 0.89, 0.73), Tone::Ink2);
    pen.fine(&arc((0.0, 0.12), (0.9, 0.74), 0.02, 0.48), Tone::Ink);
    pen.body(&Outline::ellipse((0.0, -0.06), 0.9, 0.74), Tone::Sheet);
    pen.within(&arc((0.0, -0.06), (0.8, 0.64), 0.0, 1.0));
    pen.face(&Outline::ellipse((0.0, -0.06), 0.34, 0.27), Tone::Ink);
    for index in 0..count {
        let (x, y) = around(MIDDLE, 0.56, index as f64 / count as f64 - 0.25);
        pen.face(&Outline::ellipse((x, y * 0.82 - 0.06), 0.075, 0.06), Tone::Ink2);
    }
}

pub(in crate::sample) fn bearing(pen: &mut Pen<'_>, rollers: usize) {
    pen.body(&Outline::ring(MIDDLE, 0.84, 0.36), Tone::Well);
    pen.body(&Outline::ring(MIDDLE, 0.84, 0.68), Tone::Sheet);
    pen.body(&Outline::ring(MIDDLE, 0.5, 0.34), Tone::Sheet);
    holes(pen, rollers, 0.59, (0.59 * 2.6 / rollers as f64).min(0.1), Tone::Paper);
    pen.hatch(&Outline::sector(MIDDLE, 0.83, 0.69, 0.05, 0.28), Tone::Line);
}

pub(in crate::sample) fn seal(pen: &mut Pen<'_>) {
    pen.body(&Outline::ring(MIDDLE, 0.8, 0.44), Tone::Ink2);
    pen.fill(&Outline::ring(MIDDLE, 0.72, 0.6), Tone::Line);
    pen.face(&Outline::ring(MIDDLE, 0.52, 0.44), Tone::Sheet);
    pen.fine(&arc(MIDDLE, (0.66, 0.66), 0.55, 0.8), Tone::Sheet);
}

pub(in crate::sample) fn washer(pen: &mut Pen<'_>, tab: bool) {
    pen.body(&Outline::ring(MIDDLE, 0.7, 0.34), Tone::Sheet);
    pen.hatch(&Outline::sector(MIDDLE, 0.69, 0.35, 0.05, 0.3), Tone::Line);
    if tab {
        pen.body(&Outline::rectangle(-0.1, -0.37, 0.1, -0.2), Tone::Sheet);
        pen.fill(&Outline::rectangle(-0.075, -0.42, 0.075, -0.3), Tone::Sheet);
    }
}

pub(in crate::sample) fn castle_nut(pen: &mut Pen<'_>) {
    let corners: Vec<(f64, f64)> = (0..6).map(|corner| around(MIDDLE, 0.78, f64::from(corner) / 6.0)).collect();
    pen.body(&Outline::polygon(&corners), Tone::Sheet);
    pen.face(&Outline::circle(MIDDLE, 0.56), Tone::Well);
    for slot in 0..6 {
        let turn = f64::from(slot) / 6.0 + 1.0 / 12.0;
        pen.rod(&[around(MIDDLE, 0.3, turn), around(MIDDLE, 0.58, turn)], 0.13, Tone::Ink2);
    }
    pen.face(&Outline::circle(MIDDLE, 0.34), Tone::Ink);
    pen.fine(&arc(MIDDLE, (0.28, 0.28), 0.0, 1.0), Tone::Hair);
}

pub(in crate::sample) fn crown_wheel(pen: &mut Pen<'_>, teeth: usize) {
    let middle = (-0.34, -0.02);
    pen.body(&Outline::toothed(middle, 0.8, 0.69, teeth), Tone::Sheet);
    pen.face(&Outline::ring(middle, 0.62, 0.36), Tone::Well);
    pen.face(&Outline::circle(middle, 0.36), Tone::Ink);
    for bolt in 0..8 {
        let at = around(middle, 0.49, f64::from(bolt) / 8.0);
        pen.face(&Outline::circle(at, 0.045), Tone::Ink2);
    }
    // The pinion beside it.
    pen.rod(&[(0.92, -0.1), (0.92, 0.78)], 0.2, Tone::Sheet);
    pen.body(&Outline::polygon(&[(0.78, -0.55), (1.06, -0.55), (1.18, -0.1), (0.66, -0.1)]), Tone::Well);
    for tooth in 0..5 {
        let at = f64::from(tooth) / 4.0;
        pen.within(&[(0.78 + 0.28 * at, -0.55), (0.66 + 0.52 * at, -0.1)]);
    }
}

pub(in crate::sample) fn grease_cap(pen: &mut Pen<'_>) {
    pen.body(&Outline::rectangle(-0.62, 0.2, 0.62, 0.58), Tone::Sheet);
    pen.hatch(&Outline::rectangle(0.2, 0.22, 0.6, 0.57), Tone::Line);
    pen.body(&Outline::rectangle(-0.72, 0.5, 0.72, 0.64), Tone::Well);
    let mut dome = arc((0.0, 0.22), (0.62, 0.78), 0.5, 1.0);
    dome.push((-0.62, 0.22));
    pen.body(&Outline::polygon(&dome), Tone::Sheet);
    pen.within(&arc((0.0, 0.22), (0.48, 0.6), 0.55, 0.72));
    pen.fill(&Outline::ellipse((0.0, -0.5), 0.12, 0.04), Tone::Hair);
}

pub(in crate::sample) fn horn_cap(pen: &mut Pen<'_>) {
    pen.body(&Outline::circle(MIDDLE, 0.78), Tone::Sheet);
    pen.face(&Outline::circle(MIDDLE, 0.62), Tone::Ink);
    // A winged wheel, the badge of no maker.
    pen.fill(&Outline::ring(MIDDLE, 0.24, 0.15), Tone::Sheet);
    for (side, row) in [(-1.0, 0.0), (-1.0, 1.0), (-1.0, 2.0), (1.0, 0.0), (1.0, 1.0), (1.0, 2.0)] {
        let y = -0.12 + row * 0.11;
        pen.fine(&[(side * 0.28, y), (side * (0.52 - row * 0.07), y - 0.07)], Tone::Sheet);
    }
    pen.fine(&arc(MIDDLE, (0.7, 0.7), 0.0, 1.0), Tone::Line);
}

pub(in crate::sample) fn steering_wheel(pen: &mut Pen<'_>, spokes: usize) {
    for spoke in 0..spokes {
        let turn = spoke as f64 / spokes as f64 + 0.25;
        pen.rod(&[around(MIDDLE, 0.15, turn), around(MIDDLE, 0.8, turn)], 0.09, Tone::Sheet);
    }
    pen.body(&Outline::ring(MIDDLE, 0.92, 0.76), Tone::Ink2);
    pen.fine(&arc(MIDDLE, (0.87, 0.87), 0.52, 0.8), Tone::Hair);
    for grip in 0..24 {
        let turn = f64::from(grip) / 24.0;
        pen.fine(&[around(MIDDLE, 0.77, turn), around(MIDDLE, 0.8, turn)], Tone::Sheet);
    }
    pen.body(&Outline::circle(MIDDLE, 0.2), Tone::Sheet);
    pen.face(&Outline::circle(MIDDLE, 0.08), Tone::Ink);
}

pub(in crate::sample) fn backplate(pen: &mut Pen<'_>, count: usize) {
    pen.body(&Outline::circle(MIDDLE, 0.88), Tone::Sheet);
    pen.within(&arc(MIDDLE, (0.78, 0.78), 0.0, 1.0));
    pen.hatch(&Outline::sector(MIDDLE, 0.77, 0.42, 0.02, 0.23), Tone::Line);
    pen.face(&Outline::circle(MIDDLE, 0.3), Tone::Ink);
    holes(pen, count, 0.4, 0.05, Tone::Ink2);
    // Where the cylinder and the adjuster sit, and the rests of the shoes.
    pen.face(&Outline::rectangle(-0.17, -0.72, 0.17, -0.52), Tone::Ink2);
    pen.face(&Outline::rectangle(-0.11, 0.54, 0.11, 0.7), Tone::Ink2);
    for (x, y) in [(-0.6, -0.28), (0.6, -0.28), (-0.6, 0.28), (0.6, 0.28)] {
        pen.face(&Outline::circle((x, y), 0.075), Tone::Well);
    }
}
