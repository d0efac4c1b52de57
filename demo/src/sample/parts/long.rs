//! Parts that are longer than wide, seen from the side.

use crate::sample::outline::{Outline, Point, arc, around};
use crate::sample::pen::Pen;
use crate::sample::sheet::Tone;

/// So many of one thing, side by side or one under the other.
fn rows(pieces: usize, height: f64) -> impl Iterator<Item = (Point, f64)> {
    let shown = pieces.clamp(1, 5);
    let apart = height / shown as f64;
    let place = move |row: usize| (0.0, (row as f64 - (shown as f64 - 1.0) / 2.0) * apart);
    (0..shown).map(move |row| (place(row), (apart * 1.35).min(1.0)))
}

fn columns(pieces: usize) -> impl Iterator<Item = f64> {
    let shown = pieces.clamp(1, 6);
    let apart = (1.9 / shown as f64).min(0.62);
    (0..shown).map(move |column| (column as f64 - (shown as f64 - 1.0) / 2.0) * apart)
}

pub(in crate::sample) fn shaft(pen: &mut Pen<'_>, flange: bool, spline: bool, taper: bool) {
    let mut pen = pen.placed((0.0, 0.0), 1.0, -0.06);
    let steps: [(f64, f64, f64); 3] =
        [(-0.7, 0.2, 0.2), (0.05, 0.15, 0.15), (0.6, 0.1, if taper { 0.055 } else { 0.1 })];
    for (index, (from, near, far)) in steps.into_iter().enumerate() {
        let to = steps.get(index + 1).map_or(1.16, |next| next.0);
        pen.body(&Outline::polygon(&[(from, -near), (to, -far), (to, far), (from, near)]), Tone::Sheet);
        pen.hatch(
            &Outline::polygon(&[
                (from + 0.02, near * 0.25),
                (to - 0.02, far * 0.25),
                (to - 0.02, far - 0.02),
                (from + 0.02, near - 0.02),
            ]),
            Tone::Line,
        );
    }
    if flange {
        pen.body(&Outline::rectangle(-0.92, -0.62, -0.7, 0.62), Tone::Sheet);
        pen.hatch(&Outline::rectangle(-0.9, 0.15, -0.72, 0.6), Tone::Line);
        for y in [-0.45, 0.45] {
            pen.face(&Outline::rectangle(-1.06, y - 0.07, -0.92, y + 0.07), Tone::Ink2);
        }
    } else {
        pen.body(&Outline::rectangle(-1.1, -0.12, -0.7, 0.12), Tone::Sheet);
    }
    if spline {
        for tooth in 0..5 {
            let y = -0.08 + f64::from(tooth) * 0.04;
            pen.fine(&[(0.8, y), (1.14, y)], Tone::Ink);
        }
    } else {
        for thread in 0..8 {
            let x = 0.88 + f64::from(thread) * 0.035;
            pen.fine(&[(x, -0.07), (x + 0.02, 0.07)], Tone::Ink);
        }
    }
}

pub(in crate::sample) fn pins(pen: &mut Pen<'_>, pieces: usize, cotter: bool) {
    for (at, size) in rows(pieces, 1.5) {
        let mut pen = pen.placed(at, size, if pieces > 1 { -0.01 } else { -0.04 });
        if cotter {
            pen.rod(&arc((-0.62, 0.0), (0.2, 0.17), 0.1, 0.9), 0.09, Tone::Sheet);
            pen.rod(&[(-0.46, -0.07), (0.85, -0.07)], 0.09, Tone::Sheet);
            pen.rod(&[(-0.46, 0.07), (0.7, 0.07)], 0.09, Tone::Sheet);
            continue;
        }
        pen.body(&Outline::rectangle(-0.86, -0.2, 0.86, 0.2), Tone::Sheet);
        pen.hatch(&Outline::rectangle(-0.84, 0.04, 0.84, 0.18), Tone::Line);
        pen.body(&Outline::rectangle(-1.0, -0.27, -0.84, 0.27), Tone::Well);
        pen.face(&Outline::rectangle(-0.16, -0.2, 0.16, -0.06), Tone::Ink2);
        pen.fine(&[(0.7, -0.2), (0.7, 0.2)], Tone::Ink);
    }
}

pub(in crate::sample) fn bushes(pen: &mut Pen<'_>, pieces: usize) {
    for x in columns(pieces) {
        let mut pen = pen.placed((x * 1.35, 0.0), 1.0, 0.0);
        pen.body(&Outline::rectangle(-0.34, -0.4, 0.34, 0.5), Tone::Sheet);
        pen.hatch(&Outline::rectangle(0.08, -0.36, 0.32, 0.48), Tone::Line);
        pen.body(&Outline::ellipse((0.0, -0.42), 0.34, 0.14), Tone::Sheet);
        pen.face(&Outline::ellipse((0.0, -0.42), 0.22, 0.085), Tone::Ink);
        pen.fine(&[(-0.1, -0.26), (-0.22, 0.46)], Tone::Ink);
    }
}

pub(in crate::sample) fn coil_springs(pen: &mut Pen<'_>, pieces: usize) {
    for (at, size) in rows(pieces, 1.6) {
        let mut pen = pen.placed(at, size, -0.03);
        let coils = 9;
        for coil in 0..coils {
            let x = -0.6 + 1.2 * f64::from(coil) / f64::from(coils);
            pen.rod(&[(x, 0.26), (x + 0.13, -0.26)], 0.1, Tone::Sheet);
        }
        for coil in 0..coils {
            let x = -0.6 + 1.2 * f64::from(coil) / f64::from(coils);
            pen.within(&[(x + 0.13, -0.26), (x + 0.133, 0.26)]);
        }
        pen.rod(&arc((-0.82, 0.05), (0.17, 0.17), 0.12, 0.95), 0.09, Tone::Sheet);
        pen.rod(&arc((0.86, -0.05), (0.17, 0.17), 0.62, 1.45), 0.09, Tone::Sheet);
    }
}

pub(in crate::sample) fn leaf_spring(pen: &mut Pen<'_>, leaves: usize) {
    let bow = |half: f64, drop: f64| -> Vec<Point> {
        (0..=24)
            .map(|step| f64::from(step) / 12.0 - 1.0)
            .map(|at| (at * half, drop - 0.42 * at * at * half * half))
            .collect()
    };
    for leaf in (0..leaves).rev() {
        let half = 1.1 - 0.13 * leaf as f64;
        pen.rod(&bow(half, 0.12 + 0.1 * leaf as f64), 0.105, Tone::Sheet);
    }
    for side in [-1.0, 1.0] {
        let eye = (side * 1.12, -0.42);
        pen.body(&Outline::circle(eye, 0.13), Tone::Sheet);
        pen.face(&Outline::circle(eye, 0.06), Tone::Ink);
        let drop = 0.16 + 0.045 * leaves as f64;
        pen.body(&Outline::rectangle(side * 0.5 - 0.05, drop - 0.28, side * 0.5 + 0.05, drop + 0.12), Tone::Well);
    }
    pen.body(&Outline::rectangle(-0.07, 0.0, 0.07, 0.22 + 0.1 * leaves as f64), Tone::Ink2);
}

pub(in crate::sample) fn lever(pen: &mut Pen<'_>, eyes: usize) {
    pen.rod(&[(-0.75, 0.42), (-0.1, -0.02), (0.8, -0.4)], 0.3, Tone::Sheet);
    pen.fine(&[(-0.5, 0.22), (-0.1, -0.03), (0.55, -0.3)], Tone::Line);
    pen.body(&Outline::circle((-0.78, 0.44), 0.3), Tone::Sheet);
    pen.hatch(&Outline::sector((-0.78, 0.44), 0.29, 0.15, 0.0, 0.35), Tone::Line);
    pen.face(&Outline::circle((-0.78, 0.44), 0.15), Tone::Ink);
    pen.body(&Outline::circle((0.84, -0.42), 0.2), Tone::Sheet);
    pen.face(&Outline::circle((0.84, -0.42), 0.09), Tone::Ink);
    for eye in 2..eyes {
        let at = (0.05 + 0.3 * (eye as f64 - 2.0), -0.08 - 0.13 * (eye as f64 - 2.0));
        pen.face(&Outline::circle(at, 0.065), Tone::Ink);
    }
}

pub(in crate::sample) fn link(pen: &mut Pen<'_>, bent: bool) {
    let sag = if bent { 0.26 } else { 0.0 };
    let rod: Vec<Point> = (0..=20)
        .map(|step| f64::from(step) / 10.0 - 1.0)
        .map(|at| (at * 0.95, -0.1 * at + sag * (1.0 - at * at)))
        .collect();
    pen.rod(&rod, 0.15, Tone::Sheet);
    for (side, y) in [(-1.0, 0.1), (1.0, -0.1)] {
        pen.body(&Outline::rectangle(side * 1.02 - 0.07, y - 0.34, side * 1.02 + 0.07, y), Tone::Ink2);
        pen.body(&Outline::circle((side * 1.02, y), 0.2), Tone::Sheet);
        pen.face(&Outline::circle((side * 1.02, y), 0.1), Tone::Well);
    }
}

pub(in crate::sample) fn ball_joint(pen: &mut Pen<'_>) {
    pen.rod(&[(-1.0, 0.25), (-0.2, 0.2)], 0.24, Tone::Sheet);
    for thread in 0..9 {
        let x = -0.98 + f64::from(thread) * 0.07;
        pen.fine(&[(x, 0.14), (x + 0.03, 0.36)], Tone::Ink);
    }
    pen.body(&Outline::polygon(&[(0.3, -0.3), (0.5, -0.3), (0.46, -0.86), (0.34, -0.86)]), Tone::Sheet);
    pen.body(&Outline::polygon(&[(0.1, -0.06), (0.24, -0.36), (0.56, -0.36), (0.7, -0.06)]), Tone::Ink2);
    pen.body(&Outline::circle((0.4, 0.2), 0.42), Tone::Sheet);
    pen.hatch(&Outline::sector((0.4, 0.2), 0.41, 0.2, 0.0, 0.4), Tone::Line);
    pen.within(&arc((0.4, 0.2), (0.26, 0.26), 0.0, 1.0));
}

fn bolt(pen: &mut Pen<'_>) {
    pen.body(&Outline::rectangle(-0.11, -0.4, 0.11, 0.8), Tone::Sheet);
    for thread in 0..9 {
        let y = 0.22 + f64::from(thread) * 0.065;
        pen.fine(&[(-0.11, y), (0.11, y - 0.03)], Tone::Ink);
    }
    pen.body(&Outline::rectangle(-0.24, -0.7, 0.24, -0.42), Tone::Sheet);
    pen.within(&[(-0.09, -0.7), (-0.09, -0.42)]);
    pen.within(&[(0.09, -0.7), (0.09, -0.42)]);
    pen.body(&Outline::rectangle(-0.28, -0.42, 0.28, -0.34), Tone::Well);
}

pub(in crate::sample) fn bolts(pen: &mut Pen<'_>, pieces: usize) {
    for (index, x) in columns(pieces).enumerate() {
        bolt(&mut pen.placed((x * 1.25, 0.0), 0.72, if index % 2 == 0 { 0.01 } else { -0.012 }));
    }
}

pub(in crate::sample) fn u_bolts(pen: &mut Pen<'_>, pieces: usize) {
    for x in columns(pieces.min(3)) {
        let mut pen = pen.placed((x * 1.35, 0.05), 0.9, 0.0);
        let mut line = vec![(-0.3, 0.75)];
        line.extend(arc((0.0, -0.35), (0.3, 0.35), 0.5, 1.0));
        line.push((0.3, 0.75));
        pen.rod(&line, 0.13, Tone::Sheet);
        for side in [-0.3, 0.3] {
            for thread in 0..6 {
                let y = 0.38 + f64::from(thread) * 0.06;
                pen.fine(&[(side - 0.06, y), (side + 0.06, y - 0.03)], Tone::Ink);
            }
            pen.face(&Outline::rectangle(side - 0.14, 0.2, side + 0.14, 0.34), Tone::Well);
        }
    }
}

pub(in crate::sample) fn hose(pen: &mut Pen<'_>) {
    let wave: Vec<Point> = (0..=30)
        .map(|step| f64::from(step) / 15.0 - 1.0)
        .map(|at| (at * 0.8, 0.42 * around((0.0, 0.0), 1.0, at * 0.5).1))
        .collect();
    pen.rod(&wave, 0.2, Tone::Ink2);
    pen.fine(&wave, Tone::Line);
    for (x, y) in [(-0.86, -0.02), (0.86, 0.02)] {
        pen.body(&Outline::rectangle(x - 0.2, y - 0.16, x + 0.1, y + 0.16), Tone::Sheet);
        pen.body(&Outline::rectangle(x - 0.06, y - 0.22, x + 0.18, y + 0.22), Tone::Well);
        pen.within(&[(x + 0.06, y - 0.22), (x + 0.06, y + 0.22)]);
    }
}
