//! What a camera sees, as a film: tags held before it, one after the other, with nothing in between.

use std::io::Write;

use anyhow::Context;
use asfound_core::job::TagCode;
use asfound_core::papers::Symbol;
use tempfile::NamedTempFile;

const WIDE: usize = 640;
const HIGH: usize = 480;
const FRAMES_A_SECOND: usize = 10;
/// Pixels to a module, and modules of white around the code.
const MODULE: usize = 9;
const QUIET: usize = 4;
const TABLE: u8 = 110;

/// Films these tags, each for some seconds, with the bare table after each for as long.
pub(crate) fn film(tags: &[i64], seconds: usize) -> anyhow::Result<NamedTempFile> {
    let mut file = tempfile::Builder::new().suffix(".y4m").tempfile()?;
    writeln!(file, "YUV4MPEG2 W{WIDE} H{HIGH} F{FRAMES_A_SECOND}:1 Ip A1:1 C420jpeg")?;
    for tag in tags {
        for picture in [picture(*tag)?, vec![TABLE; WIDE * HIGH]] {
            for _ in 0..seconds * FRAMES_A_SECOND {
                file.write_all(b"FRAME\n")?;
                file.write_all(&picture)?;
                // No colour.
                file.write_all(&vec![128; WIDE * HIGH / 2])?;
            }
        }
    }
    file.flush()?;
    Ok(file)
}

/// The code of a tag in the middle of the picture, on white paper.
fn picture(tag: i64) -> anyhow::Result<Vec<u8>> {
    let code = TagCode::new(tag).context("no number of a tag")?;
    let symbol = Symbol::of(&code.bare()).context("no symbol")?;
    let modules = symbol.size() + 2 * QUIET;
    let (left, top) = ((WIDE - modules * MODULE) / 2, (HIGH - modules * MODULE) / 2);
    let mut picture = vec![TABLE; WIDE * HIGH];
    for y in 0..modules * MODULE {
        for x in 0..modules * MODULE {
            let (row, column) = (y / MODULE, x / MODULE);
            let inside = |at: usize| (QUIET..QUIET + symbol.size()).contains(&at);
            let dark = inside(row) && inside(column) && symbol.is_dark(row - QUIET, column - QUIET);
            picture[(top + y) * WIDE + left + x] = if dark { 20 } else { 235 };
        }
    }
    Ok(picture)
}
