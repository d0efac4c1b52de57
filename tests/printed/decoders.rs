//! Two decoders that are not ours, asked for all pictures at once.

use std::path::PathBuf;
use std::process::Command;

use crate::page::said;

/// What one symbol says, and its corners in pixels.
#[derive(Debug)]
pub(crate) struct Seen {
    pub(crate) text: String,
    pub(crate) corners: [(f64, f64); 4],
}

/// The texts in each picture, by zbar.
pub(crate) fn read_by_zbar(pictures: &[PathBuf]) -> Vec<Vec<String>> {
    let flags = ["--nodbus", "--quiet", "--xml", "-S*.disable", "-Sqrcode.enable"];
    let told = said(Command::new("zbarimg").args(flags).args(pictures));
    // A picture without a symbol is not listed.
    let mut texts = vec![Vec::new(); pictures.len()];
    for source in told.split("<source href='").skip(1) {
        let (file, symbols) = source.split_once('\'').unwrap();
        let at = pictures.iter().position(|picture| picture.to_str() == Some(file)).unwrap();
        let data = symbols.split("<![CDATA[").skip(1).map(|rest| rest.split("]]>").next().unwrap().to_owned());
        texts[at] = data.collect();
    }
    texts
}

/// The symbols in each picture, by zxing-cpp.
pub(crate) fn read_by_zxing(pictures: &[PathBuf]) -> Vec<Vec<Seen>> {
    let told = said(Command::new("ZXingReader").args(["-format", "QRCode"]).args(pictures));
    let mut seen: Vec<Vec<Seen>> = pictures.iter().map(|_| Vec::new()).collect();
    let (mut at, mut text) = (0, None);
    for line in told.lines() {
        let Some((name, value)) = line.split_once(':') else { continue };
        let value = value.trim();
        match name {
            "File" => at = pictures.iter().position(|picture| picture.to_str() == Some(value)).unwrap(),
            "Text" => text = Some(value.trim_matches('"').to_owned()),
            "Position" => {
                let corners: Vec<(f64, f64)> = value.split_whitespace().map(corner).collect();
                seen[at].push(Seen { text: text.take().unwrap(), corners: corners.try_into().unwrap() });
            }
            _ => {}
        }
    }
    seen
}

fn corner(said: &str) -> (f64, f64) {
    let (x, y) = said.split_once('x').unwrap();
    (x.parse().unwrap(), y.parse().unwrap())
}
