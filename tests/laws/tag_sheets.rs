//! Sheets of tags: whatever is asked, each label holds its own and leaves its QR alone.

use asfound_core::job::{Change, Command, Job};
use asfound_core::papers::{
    PaperWords, TagGrid, TagLabel, TagLabels, TagNudge, TagShape, TagSheet, TagSheets, TagsPaper, tags_pdf,
};
use asfound_core::record::Kind;
use proptest::prelude::*;

use crate::cases;
use crate::garage::Garage;

fn any_own() -> impl Strategy<Value = TagGrid> {
    let side = || prop_oneof![4 => 9.0..120.0_f64, 1 => prop::num::f64::ANY];
    (
        (20.0..400.0_f64, 20.0..400.0_f64),
        (side(), side()),
        0_usize..6,
        0_usize..12,
        -2.0..20.0_f64,
        -2.0..20.0_f64,
        any::<bool>(),
        0.0..4.0_f64,
    )
        .prop_map(|(page, label, across, down, left, top, strips, gap)| TagGrid {
            page,
            label,
            across,
            down,
            left,
            top,
            pitch: (label.0 + gap, label.1 + gap),
            strips,
        })
}

fn any_sheet() -> impl Strategy<Value = TagSheet> {
    prop_oneof![
        1 => Just(TagSheet::A4),
        1 => Just(TagSheet::Letter),
        1 => Just(TagSheet::StripsA4),
        1 => Just(TagSheet::StripsLetter),
        3 => any_own().prop_map(TagSheet::Own),
    ]
}

/// Left, top, right and bottom of what a shape covers; letters as high as their size.
fn covers(shape: &TagShape) -> (f64, f64, f64, f64) {
    match shape {
        TagShape::Line { points, .. } => points.iter().fold((f64::MAX, f64::MAX, f64::MIN, f64::MIN), |all, (x, y)| {
            (all.0.min(*x), all.1.min(*y), all.2.max(*x), all.3.max(*y))
        }),
        TagShape::Ring { x, y, radius, .. } => (x - radius, y - radius, x + radius, y + radius),
        TagShape::Text { x, y, size, length, turned, .. } => {
            let (high, low) = (size * 0.75, size * 0.22);
            if *turned { (x - length, y - low, *x, y + high) } else { (*x, y - high, x + length, y + low) }
        }
        TagShape::Dark { boxes } => boxes.iter().fold((f64::MAX, f64::MAX, f64::MIN, f64::MIN), |all, (x, y, w, h)| {
            (all.0.min(*x), all.1.min(*y), all.2.max(x + w), all.3.max(y + h))
        }),
    }
}

fn is_sound(grid: &TagGrid, label: &TagLabel) -> Result<(), TestCaseError> {
    let near = 1e-6;
    let all: Vec<_> = label.shapes.iter().map(|shape| (shape, covers(shape))).collect();
    for (shape, (left, top, right, bottom)) in &all {
        let inside = *left >= label.x - near
            && *top >= label.y - near
            && *right <= label.x + grid.label.0 + near
            && *bottom <= label.y + grid.label.1 + near;
        prop_assert!(inside, "{:?} leaves its label at {}, {} of {:?}", shape, label.x, label.y, grid);
    }
    let symbols = all.iter().filter(|(shape, _)| matches!(shape, TagShape::Dark { .. }));
    let mut count = 0;
    for (symbol, (left, top, right, bottom)) in symbols {
        count += 1;
        let module = (right - left) / 21.0;
        prop_assert!(((bottom - top) / 21.0 - module).abs() < near && module >= 0.3, "a module of {module}");
        let free = 4.0 * module - near;
        let (left, top, right, bottom) = (left - free, top - free, right + free, bottom + free);
        // The quiet zone lies on the label itself, but for strips, whose cut and fold lines may be its edge.
        prop_assert!(left >= label.x - near && top >= label.y - near);
        for (shape, (l, t, r, b)) in all.iter().filter(|(shape, _)| !std::ptr::eq(*shape, *symbol)) {
            if grid.strips && matches!(shape, TagShape::Line { thick, .. } if *thick < 0.2) {
                continue;
            }
            prop_assert!(*r <= left || *l >= right || *b <= top || *t >= bottom, "{:?} lies in the quiet zone", shape);
        }
    }
    prop_assert_eq!(count, if grid.strips { 2 } else { 1 });
    Ok(())
}

/// A job with parts and places of these names; every second part carries no assembly.
fn named(names: &[String]) -> Job {
    let mut garage = Garage::new();
    for name in names {
        let (part, place) = (garage.fresh(), garage.fresh());
        let changes = vec![Change::Name(name.clone())];
        let _ = garage.command(0, Command::Create { id: place, kind: Kind::Place, changes: changes.clone() });
        let _ = garage.command(0, Command::Create { id: part, kind: Kind::Part, changes });
    }
    garage.devices[0].clone()
}

proptest! {
    #![proptest_config(cases(150))]

    /// Breaks when a label's words may be wider than what is left beside the QR, or when the QR takes the whole height.
    #[test]
    fn labels_hold_their_own_and_leave_the_qr_alone(
        sheet in any_sheet(), names in prop::collection::vec("[A-Za-zÀ-ž ,½\"]{0,40}", 1..4), skip in 0_usize..400,
        from in prop_oneof![3 => 1_i64..9_999_000, 1 => any::<i64>()], count in 0_usize..60, blank: bool, places: bool,
    ) {
        let job = named(&names);
        let labels = if blank { TagLabels::Blank { from, count, places } } else { TagLabels::Parts { ids: None, assembly: None } };
        let paper = TagsPaper { sheet, labels, skip, nudge: TagNudge::default() };
        let words = PaperWords::default();
        let Ok(sheets) = TagSheets::of(&job, &paper, &words) else { return Ok(()) };
        let on_them: Vec<Vec<TagLabel>> = (0..sheets.sheets()).map(|nth| sheets.sheet(nth)).collect();
        prop_assert_eq!(on_them.iter().map(Vec::len).sum::<usize>(), sheets.labels());
        prop_assert!(on_them.iter().all(|sheet| !sheet.is_empty()));
        for label in on_them.iter().flatten() {
            is_sound(sheets.grid(), label)?;
        }
        let pdf = tags_pdf(&job, &paper, &words).unwrap();
        prop_assert!(pdf.starts_with(b"%PDF-1."));
        prop_assert_eq!(&pdf, &tags_pdf(&job, &paper, &words).unwrap());
    }
}
