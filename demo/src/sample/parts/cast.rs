//! Castings and pressings, and what is drawn beside parts.

use crate::sample::outline::{Outline, Point, around};
use crate::sample::pen::Pen;
use crate::sample::sheet::Tone;

pub(in crate::sample) fn steering_box(pen: &mut Pen<'_>) {
    // The column above, the shaft to the drop arm below.
    pen.rod(&[(0.5, -0.45), (1.15, -0.95)], 0.17, Tone::Sheet);
    pen.body(&Outline::rectangle(-0.42, 0.4, -0.12, 0.86), Tone::Sheet);
    pen.fine(&[(-0.36, 0.62), (-0.18, 0.62)], Tone::Ink);
    let case = [
        (-0.86, -0.28),
        (-0.3, -0.58),
        (0.45, -0.58),
        (0.72, -0.3),
        (0.62, 0.22),
        (0.1, 0.5),
        (-0.62, 0.5),
        (-0.9, 0.2),
    ];
    pen.body(&Outline::polygon(&case), Tone::Sheet);
    pen.hatch(
        &Outline::polygon(&[(-0.84, 0.1), (0.62, 0.05), (0.56, 0.2), (0.08, 0.46), (-0.58, 0.46), (-0.84, 0.2)]),
        Tone::Line,
    );
    pen.face(&Outline::circle((-0.26, -0.06), 0.34), Tone::Well);
    for bolt in 0..4 {
        let at = around((-0.26, -0.06), 0.26, f64::from(bolt) / 4.0 + 0.125);
        pen.face(&Outline::circle(at, 0.05), Tone::Ink2);
    }
    pen.face(&Outline::circle((-0.26, -0.06), 0.08), Tone::Ink);
    pen.body(&Outline::polygon(&[(0.4, -0.62), (0.62, -0.68), (0.8, -0.42), (0.66, -0.26)]), Tone::Well);
    // The foot with which it is bolted to the frame.
    pen.body(&Outline::rectangle(0.62, -0.1, 1.02, 0.34), Tone::Sheet);
    for y in [0.02, 0.22] {
        pen.face(&Outline::circle((0.86, y), 0.055), Tone::Ink);
    }
}

/// A plate with lugs at its bolts.
fn plate(bolts: usize) -> Outline {
    let lug = |index: usize| {
        let turn = index as f64 / bolts as f64;
        let step = 0.32 / bolts as f64;
        [(-step, 0.72), (-step * 0.7, 0.88), (step * 0.7, 0.88), (step, 0.72)]
            .map(|(at, radius)| around((0.0, 0.0), radius, turn + at - 0.25))
    };
    Outline::polygon(&(0..bolts).flat_map(lug).collect::<Vec<Point>>())
}

fn bolt_holes(pen: &mut Pen<'_>, bolts: usize) {
    for index in 0..bolts {
        let at = around((0.0, 0.0), 0.77, index as f64 / bolts as f64 - 0.25);
        pen.face(&Outline::circle(at, 0.055), Tone::Ink);
    }
}

pub(in crate::sample) fn cover(pen: &mut Pen<'_>, bolts: usize) {
    pen.body(&plate(bolts), Tone::Sheet);
    bolt_holes(pen, bolts);
    pen.face(&Outline::circle((0.0, 0.0), 0.56), Tone::Well);
    pen.hatch(&Outline::sector((0.0, 0.0), 0.55, 0.3, 0.0, 0.3), Tone::Line);
    pen.face(&Outline::circle((0.0, 0.0), 0.26), Tone::Sheet);
    pen.face(&Outline::circle((0.0, 0.32), 0.075), Tone::Ink2);
}

pub(in crate::sample) fn gasket(pen: &mut Pen<'_>, bolts: usize) {
    let turned = plate(bolts).and(Outline::circle((0.0, 0.0), 0.62));
    pen.body(&turned, Tone::Hair);
    pen.hatch(&turned, Tone::Line);
    bolt_holes(pen, bolts);
}

pub(in crate::sample) fn wheel_cylinder(pen: &mut Pen<'_>) {
    for side in [-1.0, 1.0] {
        // A piston with its slot, and the dust boot.
        pen.body(&Outline::rectangle(side * 0.92 - 0.14, -0.16, side * 0.92 + 0.14, 0.16), Tone::Sheet);
        pen.within(&[(side * 1.04, -0.06), (side * 1.04, 0.06)]);
        for fold in 0..3 {
            let x = side * (0.66 + 0.06 * f64::from(fold));
            let half = 0.3 - 0.04 * f64::from(fold);
            pen.body(&Outline::rectangle(x - 0.05, -half, x + 0.05, half), Tone::Ink2);
        }
    }
    pen.body(&Outline::rectangle(-0.64, -0.33, 0.64, 0.33), Tone::Sheet);
    pen.hatch(&Outline::rectangle(-0.62, 0.08, 0.62, 0.31), Tone::Line);
    pen.body(&Outline::rectangle(-0.3, 0.3, 0.3, 0.5), Tone::Well);
    for x in [-0.17, 0.17] {
        pen.face(&Outline::rectangle(x - 0.05, 0.5, x + 0.05, 0.72), Tone::Ink2);
    }
    // The bleed nipple.
    pen.body(&Outline::polygon(&[(0.3, -0.33), (0.33, -0.6), (0.42, -0.66), (0.51, -0.6), (0.54, -0.33)]), Tone::Well);
    pen.face(&Outline::circle((-0.28, -0.12), 0.09), Tone::Ink);
}

pub(in crate::sample) fn shoes(pen: &mut Pen<'_>, pieces: usize) {
    if pieces < 2 {
        return shoe(&mut pen.placed((0.66, 0.0), 1.0, 0.0));
    }
    shoe(&mut pen.placed((-0.2, 0.0), 0.86, 0.0));
    shoe(&mut pen.placed((0.2, 0.0), 0.86, 0.5));
}

fn shoe(pen: &mut Pen<'_>) {
    let middle = (0.0, 0.0);
    // The web, the platform, the lining on it with its rivets.
    pen.body(&Outline::sector(middle, 0.72, 0.42, 0.29, 0.71), Tone::Sheet);
    pen.hatch(&Outline::sector(middle, 0.6, 0.43, 0.31, 0.45), Tone::Line);
    pen.body(&Outline::sector(middle, 0.78, 0.7, 0.28, 0.72), Tone::Well);
    pen.body(&Outline::sector(middle, 0.94, 0.78, 0.31, 0.69), Tone::Ink2);
    for rivet in 0..5 {
        pen.fill(&Outline::circle(around(middle, 0.86, 0.35 + f64::from(rivet) * 0.075), 0.028), Tone::Sheet);
    }
    for turn in [0.4, 0.5, 0.6] {
        pen.face(&Outline::circle(around(middle, 0.55, turn), 0.055), Tone::Ink);
    }
}

pub(in crate::sample) fn shims(pen: &mut Pen<'_>, pieces: usize) {
    for piece in 0..pieces.min(5) {
        let at = (-0.3 + 0.2 * piece as f64, -0.3 + 0.2 * piece as f64);
        pen.body(&Outline::ring(at, 0.5, 0.3), if piece % 2 == 0 { Tone::Sheet } else { Tone::Well });
    }
}

/// The seven strokes of a figure, as on a till: top, upper left and right, middle, lower left and right, bottom.
const STROKES: [[u8; 7]; 10] = [
    [1, 1, 1, 0, 1, 1, 1],
    [0, 0, 1, 0, 0, 1, 0],
    [1, 0, 1, 1, 1, 0, 1],
    [1, 0, 1, 1, 0, 1, 1],
    [0, 1, 1, 1, 0, 1, 0],
    [1, 1, 0, 1, 0, 1, 1],
    [1, 1, 0, 1, 1, 1, 1],
    [1, 0, 1, 0, 0, 1, 0],
    [1, 1, 1, 1, 1, 1, 1],
    [1, 1, 1, 1, 0, 1, 1],
];

/// An amount, right-aligned at a place, two figures after the point.
fn amount(pen: &mut Pen<'_>, minor: i64, right: Point, height: f64) {
    let digits = format!("{:03}", minor.max(0));
    let (half, apart) = (height / 2.0, height * 0.82);
    let mut left = right.0;
    for (place, digit) in digits.bytes().rev().enumerate() {
        if place == 2 {
            left -= height * 0.3;
            pen.fill(&Outline::circle((left + height * 0.16, right.1), height * 0.07), Tone::Ink);
        }
        left -= apart;
        let (x, y, wide) = (left, right.1, height * 0.52);
        let lines = [
            [(x, y - height), (x + wide, y - height)],
            [(x, y - height), (x, y - half)],
            [(x + wide, y - height), (x + wide, y - half)],
            [(x, y - half), (x + wide, y - half)],
            [(x, y - half), (x, y)],
            [(x + wide, y - half), (x + wide, y)],
            [(x, y), (x + wide, y)],
        ];
        let strokes = STROKES[usize::from(digit - b'0')];
        for (line, _) in lines.iter().zip(strokes).filter(|(_, inked)| *inked == 1) {
            pen.within(line);
        }
    }
}

/// A till receipt: three lines and their sum.
pub(in crate::sample) fn receipt(pen: &mut Pen<'_>, minor: i64) {
    let mut slip = vec![(-0.62, -0.92), (0.62, -0.92), (0.62, 0.84)];
    slip.extend((1..12).map(|tooth| (0.62 - f64::from(tooth) * 1.24 / 12.0, if tooth % 2 == 1 { 0.92 } else { 0.84 })));
    slip.push((-0.62, 0.84));
    let slip = Outline::polygon(&slip);
    pen.fill(&slip.map(|(x, y)| (x + 0.05, y + 0.04)), Tone::Hair);
    pen.body(&slip, Tone::Sheet);
    pen.edge(&[(-0.3, -0.76), (0.3, -0.76)]);
    pen.within(&[(-0.2, -0.66), (0.2, -0.66)]);
    let (first, second) = (minor * 3 / 5, minor / 4);
    for (row, line) in [first, second, minor - first - second].into_iter().enumerate() {
        let y = -0.34 + row as f64 * 0.22;
        pen.fine(&[(-0.5, y - 0.06), (-0.05 - 0.1 * row as f64, y - 0.06)], Tone::Line);
        amount(pen, line, (0.52, y), 0.12);
    }
    pen.edge(&[(-0.5, 0.26), (0.52, 0.26)]);
    amount(pen, minor, (0.52, 0.54), 0.2);
    for bar in 0..18 {
        let x = -0.4 + f64::from(bar) * 0.045;
        let wide = [0, 3, 7, 8, 12, 16].contains(&bar);
        let line = [(x, 0.64), (x, 0.76)];
        if wide { pen.edge(&line) } else { pen.fine(&line, Tone::Ink) }
    }
}

/// A rack with boxes.
pub(in crate::sample) fn shelf(pen: &mut Pen<'_>) {
    for x in [-1.1, 1.1] {
        pen.body(&Outline::rectangle(x - 0.05, -0.9, x + 0.05, 0.95), Tone::Ink2);
    }
    for (row, y) in [-0.2, 0.38, 0.9].into_iter().enumerate() {
        for column in 0..3 {
            let x = -0.7 + f64::from(column) * 0.7;
            if row == 1 && column == 2 {
                pen.body(&Outline::sector((x, y - 0.25), 0.24, 0.12, 0.0, 1.0), Tone::Sheet);
                continue;
            }
            pen.body(&Outline::rectangle(x - 0.28, y - 0.38, x + 0.28, y), Tone::Sheet);
            pen.within(&[(x - 0.28, y - 0.3), (x + 0.28, y - 0.3)]);
            pen.face(
                &Outline::rectangle(x - 0.1, y - 0.2, x + 0.1, y - 0.1),
                if row == 0 && column == 1 { Tone::Buff } else { Tone::Paper },
            );
        }
        pen.body(&Outline::rectangle(-1.15, y, 1.15, y + 0.06), Tone::Well);
    }
}
