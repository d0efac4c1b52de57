use std::io::Cursor;

use asfound_core::job::{Job, PartsQuery};
use asfound_core::papers::{PartsList, Thumbs};
use asfound_core::problem::Problem;
use asfound_core::record::Hash;
use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageDecoder, ImageReader};

use super::opened::Opened;

/// The longer side of a small photo, and its quality: as the app makes them.
const SIDE: u32 = 320;
const QUALITY: u8 = 80;

/// The first photo of each part in a list, small.
pub(super) fn of_list(job: &Job, query: &PartsQuery, opened: &Opened) -> (Thumbs, Vec<Problem>) {
    let rows = PartsList::of(job, query, None).rows;
    of(rows.iter().filter_map(|row| Some(row.photos.first()?.0)), opened)
}

/// Small photos, upright; what is no picture, or not here, is left out.
pub(super) fn of(photos: impl Iterator<Item = Hash>, opened: &Opened) -> (Thumbs, Vec<Problem>) {
    let (mut thumbs, mut problems) = (Thumbs::new(), Vec::new());
    for hash in photos {
        match opened.blob(hash) {
            Some(Ok(bytes)) => thumbs.extend(small(&bytes).map(|small| (hash, small))),
            Some(Err(problem)) => problems.push(problem),
            None => {}
        }
    }
    (thumbs, problems)
}

fn small(bytes: &[u8]) -> Option<Vec<u8>> {
    let mut decoder = ImageReader::new(Cursor::new(bytes)).with_guessed_format().ok()?.into_decoder().ok()?;
    let orientation = decoder.orientation().ok()?;
    let mut picture = DynamicImage::from_decoder(decoder).ok()?;
    picture.apply_orientation(orientation);
    let mut small = Vec::new();
    let encoder = JpegEncoder::new_with_quality(&mut small, QUALITY);
    picture.thumbnail(SIDE, SIDE).to_rgb8().write_with_encoder(encoder).ok()?;
    Some(small)
}
