use super::outline::{Outline, Point, arc};
use super::parts::{cast, long, turned};
use super::pen::Pen;
use super::sheet::{HEIGHT, Sheet, Tone, WIDTH};

/// What is drawn, by its kind and a few measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Picture {
    Hub { studs: usize },
    Drum { holes: usize },
    Bearing { rollers: usize },
    Seal,
    Washer { tab: bool },
    CastleNut,
    CrownWheel { teeth: usize },
    GreaseCap,
    HornCap,
    SteeringWheel { spokes: usize },
    Backplate { holes: usize },
    Shaft { flange: bool, spline: bool, taper: bool },
    Pins { pieces: usize, cotter: bool },
    Bushes { pieces: usize },
    CoilSprings { pieces: usize },
    LeafSpring { leaves: usize },
    Lever { eyes: usize },
    Link { bent: bool },
    BallJoint,
    Bolts { pieces: usize },
    UBolts { pieces: usize },
    Hose,
    SteeringBox,
    Cover { bolts: usize },
    Gasket { bolts: usize },
    WheelCylinder,
    Shoe { pieces: usize },
    Shims { pieces: usize },
    Receipt { minor: i64 },
    Shelf,
}

/// Where it is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Seen {
    /// On the vehicle, before anything is slackened.
    OnVehicle,
    /// On the bench.
    OnBench,
}

/// Where the middle of the part lies.
const AT: Point = (0.0, -0.04);

/// How large a part is drawn, and how it is turned: small lists show the middle square of a picture, and all of it is to be
/// seen there.
const fn placing(picture: Picture, seen: Seen) -> (f64, f64) {
    let size = match picture {
        Picture::Shaft { .. } | Picture::Link { .. } => 0.78,
        Picture::LeafSpring { .. } | Picture::SteeringBox | Picture::CrownWheel { .. } => 0.8,
        Picture::Hose | Picture::WheelCylinder | Picture::BallJoint => 0.86,
        Picture::Washer { .. } => 1.16,
        Picture::GreaseCap | Picture::Shims { .. } | Picture::Bushes { .. } | Picture::Pins { .. } | Picture::Seal => {
            1.02
        }
        _ => 0.94,
    };
    match seen {
        Seen::OnVehicle => (size * 0.8, 0.03),
        Seen::OnBench => (size, 0.0),
    }
}

/// Where a place on a part lies on its picture, in parts of ten thousand of the width and the height.
pub(super) fn on_picture(picture: Picture, seen: Seen, at: Point) -> (i64, i64) {
    let mut sheet = Sheet::new(Tone::Paper);
    let (size, turn) = placing(picture, seen);
    let (x, y) = Pen::new(&mut sheet).placed(AT, size, turn).to_sheet(at);
    let share = |at: f64, of: usize| (at / of as f64 * 10_000.0) as i64;
    (share(x, WIDTH), share(y, HEIGHT))
}

/// One picture, as PNG; `worn` is where a finding shows on the part.
pub(super) fn draw(picture: Picture, seen: Seen, worn: Option<Point>) -> anyhow::Result<Vec<u8>> {
    let mut sheet = Sheet::new(if seen == Seen::OnVehicle { Tone::Well } else { Tone::Paper });
    let mut pen = Pen::new(&mut sheet);
    if matches!(picture, Picture::Receipt { .. } | Picture::Shelf) {
        part(&mut pen, picture);
        return sheet.png();
    }
    match seen {
        Seen::OnVehicle => vehicle(&mut pen),
        Seen::OnBench => bench(&mut pen),
    }
    let (size, turn) = placing(picture, seen);
    let mut on_part = pen.placed(AT, size, turn);
    part(&mut on_part, picture);
    if let Some(at) = worn {
        finding(&mut on_part, at);
    }
    sheet.png()
}

/// A ruled bench top with a scale at its edge.
fn bench(pen: &mut Pen<'_>) {
    for row in -3..=2 {
        let height = f64::from(row) * 0.34;
        pen.fine(&[(-1.4, height), (1.4, height)], Tone::Well);
    }
    pen.within(&[(-1.2, 0.93), (1.2, 0.93)]);
    for mark in 0..=24 {
        let x = -1.2 + f64::from(mark) * 0.1;
        pen.fine(&[(x, 0.93), (x, if mark % 5 == 0 { 0.86 } else { 0.9 })], Tone::Ink);
    }
}

/// A rail, a wheel arch and dirt behind the part.
fn vehicle(pen: &mut Pen<'_>) {
    let arch = Outline(vec![{
        let mut points = vec![(-1.4, -1.1), (1.4, -1.1), (1.4, 1.1)];
        points.extend(arc((0.0, 1.1), (1.15, 1.75), 0.0, -0.5));
        points.push((-1.4, 1.1));
        points
    }]);
    pen.body(&arch, Tone::Hair);
    pen.hatch(&arch, Tone::Line);
    pen.body(&Outline::rectangle(-1.4, 0.62, 1.4, 0.84), Tone::Sheet);
    for bolt in -3..=3 {
        pen.face(&Outline::circle((f64::from(bolt) * 0.4, 0.73), 0.04), Tone::Ink2);
    }
}

/// Where something is wrong: buff, bounded by ink.
fn finding(pen: &mut Pen<'_>, (x, y): Point) {
    let spot = [(0.0, -0.07), (0.08, -0.05), (0.1, 0.02), (0.04, 0.08), (-0.05, 0.06), (-0.1, 0.0), (-0.06, -0.06)];
    let spot: Vec<Point> = spot.iter().map(|(dx, dy)| (x + dx, y + dy)).collect();
    pen.face(&Outline::polygon(&spot), Tone::Buff);
    pen.fine(&[(x - 0.03, y - 0.02), (x + 0.02, y + 0.03)], Tone::Ink);
}

fn part(pen: &mut Pen<'_>, picture: Picture) {
    match picture {
        Picture::Hub { studs } => turned::hub(pen, studs),
        Picture::Drum { holes } => turned::drum(pen, holes),
        Picture::Bearing { rollers } => turned::bearing(pen, rollers),
        Picture::Seal => turned::seal(pen),
        Picture::Washer { tab } => turned::washer(pen, tab),
        Picture::CastleNut => turned::castle_nut(pen),
        Picture::CrownWheel { teeth } => turned::crown_wheel(pen, teeth),
        Picture::GreaseCap => turned::grease_cap(pen),
        Picture::HornCap => turned::horn_cap(pen),
        Picture::SteeringWheel { spokes } => turned::steering_wheel(pen, spokes),
        Picture::Backplate { holes } => turned::backplate(pen, holes),
        Picture::Shaft { flange, spline, taper } => long::shaft(pen, flange, spline, taper),
        Picture::Pins { pieces, cotter } => long::pins(pen, pieces, cotter),
        Picture::Bushes { pieces } => long::bushes(pen, pieces),
        Picture::CoilSprings { pieces } => long::coil_springs(pen, pieces),
        Picture::LeafSpring { leaves } => long::leaf_spring(pen, leaves),
        Picture::Lever { eyes } => long::lever(pen, eyes),
        Picture::Link { bent } => long::link(pen, bent),
        Picture::BallJoint => long::ball_joint(pen),
        Picture::Bolts { pieces } => long::bolts(pen, pieces),
        Picture::UBolts { pieces } => long::u_bolts(pen, pieces),
        Picture::Hose => long::hose(pen),
        Picture::SteeringBox => cast::steering_box(pen),
        Picture::Cover { bolts } => cast::cover(pen, bolts),
        Picture::Gasket { bolts } => cast::gasket(pen, bolts),
        Picture::WheelCylinder => cast::wheel_cylinder(pen),
        Picture::Shoe { pieces } => cast::shoes(pen, pieces),
        Picture::Shims { pieces } => cast::shims(pen, pieces),
        Picture::Receipt { minor } => cast::receipt(pen, minor),
        Picture::Shelf => cast::shelf(pen),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_is_the_same_every_time_and_shows_its_finding() {
        let drum = |worn| draw(Picture::Drum { holes: 5 }, Seen::OnBench, worn).unwrap();
        assert_eq!(drum(None), drum(None));
        assert_ne!(drum(None), drum(Some((0.3, 0.3))));
        assert_ne!(drum(None), draw(Picture::Drum { holes: 4 }, Seen::OnBench, None).unwrap());
        assert_ne!(drum(None), draw(Picture::Drum { holes: 5 }, Seen::OnVehicle, None).unwrap());
        let png = image::load_from_memory(&drum(None)).unwrap();
        assert_eq!((png.width(), png.height()), (800, 600));
    }
}
