//! Sheets as PDF: vectors and one face that every reader has, so that nothing is embedded.

use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::types::{LineJoinStyle, TextRenderingMode};
use pdf_writer::{Content, Filter, Finish, Name, Pdf, Rect, Ref, Str, TextStr};

use super::grid::TagGrid;
use super::letters;
use super::shape::TagShape;
use super::{TagLabel, TagSheets, TagsPaper};
use crate::job::Job;
use crate::papers::PaperWords;
use crate::problem::Problem;

/// Points in a millimetre.
const POINTS: f64 = 72.0 / 25.4;
/// How far a curve's handles reach for a quarter of a circle.
const QUARTER: f64 = 0.552_284_75;
const FACE: Name<'static> = Name(b"F");
const CATALOG: i32 = 1;
const PAGES: i32 = 2;
const FONT: i32 = 3;
const ABOUT: i32 = 4;
const FIRST: i32 = 5;

/// Tags as a PDF of as many pages as there are sheets. It is to be printed at its own size.
///
/// # Errors
/// When the grid does not fit, a number is out of bounds, or nothing is left to print.
pub fn tags_pdf(job: &Job, paper: &TagsPaper, words: &PaperWords) -> Result<Vec<u8>, Problem> {
    let sheets = TagSheets::of(job, paper, words)?;
    Ok(sheets.pdf(&words.page.tags))
}

impl TagSheets {
    /// The same of what is ready to be drawn.
    #[must_use]
    pub fn pdf(&self, title: &str) -> Vec<u8> {
        let mut pdf = Pdf::new();
        let page_of = |nth: i32| (Ref::new(FIRST + 2 * nth), Ref::new(FIRST + 2 * nth + 1));
        let count = i32::try_from(self.sheets()).unwrap_or(i32::MAX);
        let mut catalog = pdf.catalog(Ref::new(CATALOG));
        catalog.pages(Ref::new(PAGES));
        // Asks the reader to leave the size as it is; a person may still choose otherwise.
        catalog.viewer_preferences().pair(Name(b"PrintScaling"), Name(b"None"));
        catalog.finish();
        pdf.document_info(Ref::new(ABOUT)).title(TextStr(title)).creator(TextStr("asfound"));
        pdf.pages(Ref::new(PAGES)).kids((0..count).map(|nth| page_of(nth).0)).count(count);
        pdf.type1_font(Ref::new(FONT)).base_font(Name(b"Helvetica-Bold")).encoding_predefined(Name(b"WinAnsiEncoding"));
        for (nth, sheet) in (0..count).zip(0..) {
            let (page, content) = page_of(nth);
            let mut written = pdf.page(page);
            written.parent(Ref::new(PAGES)).contents(content);
            let (width, height) = self.grid().page;
            written.media_box(Rect::new(0.0, 0.0, number(width * POINTS), number(height * POINTS)));
            written.resources().fonts().pair(FACE, Ref::new(FONT));
            written.finish();
            let drawn = compress_to_vec_zlib(&drawn(self.grid(), &self.sheet(sheet)), 6);
            pdf.stream(content, &drawn).filter(Filter::FlateDecode);
        }
        pdf.finish()
    }
}

/// To thousandths, which is far finer than any printer.
#[expect(clippy::cast_possible_truncation, reason = "the form has no finer numbers")]
fn number(value: f64) -> f32 {
    (libm::round(value * 1_000.0) / 1_000.0) as f32
}

fn drawn(grid: &TagGrid, labels: &[TagLabel]) -> Vec<u8> {
    let mut content = Content::new();
    // Millimetres from the upper left corner, as the shapes are.
    let scale = POINTS as f32;
    content.transform([scale, 0.0, 0.0, -scale, 0.0, number(grid.page.1 * POINTS)]);
    content.set_fill_gray(0.0).set_stroke_gray(0.0).set_line_join(LineJoinStyle::MiterJoin);
    for shape in labels.iter().flat_map(|label| &label.shapes) {
        draw(&mut content, shape);
    }
    content.finish().into_vec()
}

fn draw(content: &mut Content, shape: &TagShape) {
    match shape {
        TagShape::Line { points, closed, thick, dashed } => {
            content.set_line_width(number(*thick));
            content.set_dash_pattern(if *dashed { &[1.2, 1.2] } else { &[][..] }.iter().copied(), 0.0);
            for (nth, (x, y)) in points.iter().enumerate() {
                let (x, y) = (number(*x), number(*y));
                if nth == 0 {
                    content.move_to(x, y)
                } else {
                    content.line_to(x, y)
                };
            }
            if *closed {
                content.close_and_stroke()
            } else {
                content.stroke()
            };
        }
        TagShape::Ring { x, y, radius, thick } => {
            content.set_line_width(number(*thick)).set_dash_pattern([], 0.0);
            ring(content, (*x, *y), *radius);
            content.close_and_stroke();
        }
        TagShape::Text { x, y, size, length, text, turned } => {
            let natural = letters::length(text, *size);
            let wide = if natural > 0.0 { length / natural } else { 1.0 };
            let way = if *turned { -1.0 } else { 1.0 };
            // The page is turned over, so letters are turned over once more.
            content.begin_text().set_text_rendering_mode(TextRenderingMode::Fill).set_font(FACE, number(*size));
            content.set_text_matrix([number(wide * way), 0.0, 0.0, number(-way), number(*x), number(*y)]);
            let bytes: Vec<u8> = text.chars().map(letters::byte).collect();
            content.show(Str(&bytes)).end_text();
        }
        TagShape::Dark { boxes } => {
            // One path: where two touch, nothing shows between them.
            for (x, y, width, height) in boxes {
                content.rect(number(*x), number(*y), number(*width), number(*height));
            }
            content.fill_nonzero();
        }
    }
}

fn ring(content: &mut Content, (x, y): (f64, f64), radius: f64) {
    let handle = radius * QUARTER;
    let at = |dx: f64, dy: f64| (number(x + dx), number(y + dy));
    let (begin_x, begin_y) = at(radius, 0.0);
    content.move_to(begin_x, begin_y);
    // Each quarter turns the one before by 90°.
    for (cos, sin) in [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)] {
        let turned = |dx: f64, dy: f64| at(dx * cos - dy * sin, dx * sin + dy * cos);
        let ((ax, ay), (bx, by), (cx, cy)) = (turned(radius, handle), turned(handle, radius), turned(0.0, radius));
        content.cubic_to(ax, ay, bx, by, cx, cy);
    }
}
