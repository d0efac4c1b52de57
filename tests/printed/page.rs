//! Pages rendered from a PDF as grey pixels.

use std::fs;
use std::path::Path;
use std::process::Command;

const DOTS: f64 = 300.0 / 25.4;

/// A stretch of a page, in millimetres from its upper left corner.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Area {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) width: f64,
    pub(crate) height: f64,
}

/// One page at 300 dots to the inch.
pub(crate) struct Page {
    width: usize,
    height: usize,
    luma: Vec<u8>,
}

pub(crate) fn millimetres(pixels: f64) -> f64 {
    pixels / DOTS
}

/// Runs a program that `tests/prepare decoders` installs.
pub(crate) fn said(command: &mut Command) -> String {
    let output = command.output().unwrap_or_else(|error| panic!("{command:?}: {error}; run tests/prepare decoders"));
    assert!(output.status.success(), "{command:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

/// All pages, each of the size that is wanted.
pub(crate) fn rendered(pdf: &[u8], folder: &Path, (wide, high): (f64, f64)) -> Vec<Page> {
    let file = folder.join("sheet.pdf");
    fs::write(&file, pdf).unwrap();
    let told = said(Command::new("pdfinfo").arg(&file));
    let size = told.lines().find_map(|line| line.strip_prefix("Page size:")).unwrap();
    let sides: Vec<f64> = size.split_whitespace().filter_map(|word| word.parse().ok()).collect();
    let points = [wide, high].map(|side| side / 25.4 * 72.0);
    assert!((sides[0] - points[0]).abs() < 0.05 && (sides[1] - points[1]).abs() < 0.05, "{size}");
    said(Command::new("pdftoppm").args(["-r", "300", "-gray"]).arg(&file).arg(folder.join("page")));
    let mut files: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.retain(|file| file.extension().is_some_and(|kind| kind == "pgm"));
    files.sort();
    files.iter().map(|file| Page::read(&fs::read(file).unwrap())).collect()
}

pub(crate) fn text_of(pdf: &[u8]) -> String {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("sheet.pdf");
    fs::write(&file, pdf).unwrap();
    said(Command::new("pdftotext").args(["-enc", "UTF-8"]).arg(&file).arg("-"))
}

impl Page {
    /// A plain PGM: `P5`, width, height, 255, then the pixels.
    fn read(bytes: &[u8]) -> Self {
        let head: Vec<&[u8]> = bytes.splitn(4, u8::is_ascii_whitespace).collect();
        let number = |word: &[u8]| std::str::from_utf8(word).unwrap().parse::<usize>().unwrap();
        let (width, height) = (number(head[1]), number(head[2]));
        assert_eq!((head[0], &head[3][..4]), (&b"P5"[..], &b"255\n"[..]));
        let luma = head[3][4..].to_vec();
        assert_eq!(luma.len(), width * height);
        Self { width, height, luma }
    }

    /// Rows of an area.
    fn rows(&self, area: Area) -> impl Iterator<Item = &[u8]> {
        let pixel = |at: f64, most: usize| ((at * DOTS).round().max(0.0) as usize).min(most);
        let (left, right) = (pixel(area.left, self.width), pixel(area.left + area.width, self.width));
        let (top, bottom) = (pixel(area.top, self.height), pixel(area.top + area.height, self.height));
        (top..bottom).map(move |row| &self.luma[row * self.width..][left..right])
    }

    /// Writes an area as a picture of its own.
    pub(crate) fn cut(&self, area: Area, to: &Path) {
        let rows: Vec<&[u8]> = self.rows(area).collect();
        let mut bytes = format!("P5\n{} {}\n255\n", rows[0].len(), rows.len()).into_bytes();
        rows.iter().for_each(|row| bytes.extend_from_slice(row));
        fs::write(to, bytes).unwrap();
    }

    pub(crate) fn is_white(&self, area: Area) -> bool {
        self.rows(area).all(|row| row.iter().all(|value| *value > 250))
    }
}
