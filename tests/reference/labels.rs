//! Label sheets as they are sold: widths and gaps add up to the page. The figures are common practice, no source.

use asfound_core::papers::TagSheet;

const INCH: f64 = 25.4;

/// One row: the sheet, page, label, across and down, and what is left between labels, all in millimetres.
struct Row {
    sheet: TagSheet,
    page: (f64, f64),
    label: (f64, f64),
    counts: (usize, usize),
    gaps: (f64, f64),
    /// Left and top margins, as published to this accuracy.
    margins: (f64, f64),
    within: f64,
}

fn rows() -> [Row; 4] {
    [
        Row {
            sheet: TagSheet::A4,
            page: (210.0, 297.0),
            label: (63.5, 38.1),
            counts: (3, 7),
            gaps: (2.54, 0.0),
            margins: (7.21, 15.15),
            within: 0.05,
        },
        Row {
            sheet: TagSheet::Letter,
            page: (8.5 * INCH, 11.0 * INCH),
            label: (2.625 * INCH, INCH),
            counts: (3, 10),
            gaps: (0.125 * INCH, 0.0),
            margins: (0.1875 * INCH, 0.5 * INCH),
            within: 0.002 * INCH,
        },
        // Strips are our own, in the middle of the sheet.
        Row {
            sheet: TagSheet::StripsA4,
            page: (210.0, 297.0),
            label: (63.0, 46.0),
            counts: (3, 6),
            gaps: (0.0, 0.0),
            margins: (10.5, 10.5),
            within: 1e-9,
        },
        Row {
            sheet: TagSheet::StripsLetter,
            page: (8.5 * INCH, 11.0 * INCH),
            label: (63.0, 46.0),
            counts: (3, 5),
            gaps: (0.0, 0.0),
            margins: (13.45, 24.7),
            within: 1e-9,
        },
    ]
}

#[test]
fn labels_and_gaps_fill_the_page_from_margin_to_margin() {
    for row in rows() {
        let grid = row.sheet.grid();
        assert_eq!(grid.check(), Ok(()));
        assert_eq!((grid.page, grid.label, (grid.across, grid.down)), (row.page, row.label, row.counts));
        let near = |here: f64, there: f64| (here - there).abs() <= row.within;
        assert!(near(grid.left, row.margins.0) && near(grid.top, row.margins.1), "{grid:?}");
        assert!(
            near(grid.pitch.0 - grid.label.0, row.gaps.0) && near(grid.pitch.1 - grid.label.1, row.gaps.1),
            "{grid:?}"
        );
        let (x, y) = grid.corner(grid.on_a_sheet() - 1);
        let left_over = (grid.page.0 - x - grid.label.0, grid.page.1 - y - grid.label.1);
        assert!(near(left_over.0, grid.left) && near(left_over.1, grid.top), "{left_over:?} beside {grid:?}");
    }
}
