/// The same JPEG without anything that says where, when or by whom it was taken; nothing when the bytes are no JPEG.
///
/// Kept are the segments that a picture needs to be shown alike: JFIF (APP0), the colour profile (APP2 `ICC_PROFILE`), the
/// colour transform (APP14 `Adobe`), tables, frame and scans. Left out are EXIF and XMP (APP1), every other APPn, comments,
/// and whatever follows the end of the picture. No pixel is touched. (ITU-T T.81, annex B; segment names by CIPA DC-008.)
///
/// ```
/// assert!(asfound_core::papers::without_location(b"no JPEG").is_none());
/// ```
#[must_use]
pub fn without_location(jpeg: &[u8]) -> Option<Vec<u8>> {
    let mut rest = jpeg.strip_prefix(&[MARK, START])?;
    let mut kept = vec![MARK, START];
    loop {
        let marker = next_marker(&mut rest)?;
        if marker == END {
            kept.extend([MARK, END]);
            return Some(kept);
        }
        if is_bare(marker) {
            kept.extend([MARK, marker]);
            continue;
        }
        let body = body(&mut rest)?;
        if is_kept(marker, body.get(2..)?) {
            kept.extend([MARK, marker]);
            kept.extend_from_slice(body);
        }
        if marker == SCAN {
            kept.extend_from_slice(scanned(&mut rest)?);
        }
    }
}

const MARK: u8 = 0xff;
const START: u8 = 0xd8;
const END: u8 = 0xd9;
const SCAN: u8 = 0xda;
const COMMENT: u8 = 0xfe;

/// The next marker; fill bytes before it do not matter.
fn next_marker(rest: &mut &[u8]) -> Option<u8> {
    let after = rest.strip_prefix(&[MARK])?;
    let fill = after.iter().take_while(|byte| **byte == MARK).count();
    let marker = *after.get(fill)?;
    *rest = &after[fill + 1..];
    (marker != 0 && marker != START).then_some(marker)
}

/// Markers without a body: TEM and restarts.
const fn is_bare(marker: u8) -> bool {
    matches!(marker, 0x01 | 0xd0..=0xd7)
}

/// Length and content of a segment.
fn body<'a>(rest: &mut &'a [u8]) -> Option<&'a [u8]> {
    let length = usize::from(u16::from_be_bytes([*rest.first()?, *rest.get(1)?]));
    let (body, after) = rest.split_at_checked(length).filter(|_| length >= 2)?;
    *rest = after;
    Some(body)
}

fn is_kept(marker: u8, content: &[u8]) -> bool {
    match marker {
        0xe0 => content.starts_with(b"JFIF\0"),
        0xe2 => content.starts_with(b"ICC_PROFILE\0"),
        0xee => content.starts_with(b"Adobe"),
        0xe1..=0xef | COMMENT => false,
        _ => true,
    }
}

/// Coded picture data up to the next marker that is neither a stuffed byte nor a restart.
fn scanned<'a>(rest: &mut &'a [u8]) -> Option<&'a [u8]> {
    let ends = |pair: &[u8]| pair[0] == MARK && !matches!(pair[1], 0 | MARK | 0xd0..=0xd7);
    let length = rest.windows(2).position(ends)?;
    let (data, after) = rest.split_at(length);
    *rest = after;
    Some(data)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn segment(marker: u8, content: &[u8]) -> Vec<u8> {
        let length = u16::try_from(content.len() + 2).unwrap().to_be_bytes();
        [&[MARK, marker], &length[..], content].concat()
    }

    fn picture(segments: &[Vec<u8>], tail: &[u8]) -> Vec<u8> {
        let scan = [&segment(SCAN, &[1, 1, 0, 0, 63, 0])[..], &[0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56]].concat();
        [&[MARK, START][..], &segments.concat(), &scan, &[MARK, END], tail].concat()
    }

    #[test]
    fn only_what_shows_the_picture_is_kept() {
        let kept = [
            segment(0xe0, b"JFIF\0rest"),
            segment(0xe2, b"ICC_PROFILE\0rest"),
            segment(0xee, b"Adobe rest"),
            segment(0xdb, b"tables"),
        ];
        let told = [
            segment(0xe1, b"Exif\0\0GPS 51.5 N"),
            segment(0xe1, b"http://ns.adobe.com/xap/1.0/\0<GPSLatitude>"),
            segment(0xe0, b"JFXX\0thumbnail"),
            segment(0xe2, b"MPF\0other pictures"),
            segment(0xed, b"Photoshop 3.0\0city"),
            segment(COMMENT, b"behind the house"),
        ];
        let all = [&kept[..], &told[..]].concat();
        let bare = without_location(&picture(&all, b"trailing GPS")).unwrap();
        assert_eq!(bare, picture(&kept, b""));
    }

    #[test]
    fn every_scan_of_a_progressive_picture_is_kept() {
        let second = [segment(0xc4, b"table"), segment(SCAN, &[1, 1, 0, 0, 63, 0]), vec![0x77, 0x88]].concat();
        let mut two = picture(&[], b"");
        two.truncate(two.len() - 2);
        two.extend([&second[..], &[MARK, END]].concat());
        assert_eq!(without_location(&two).unwrap(), two);
    }

    #[test]
    fn what_is_cut_off_or_no_jpeg_is_left_out() {
        let whole = picture(&[segment(0xe1, b"Exif\0\0GPS")], b"");
        for length in 0..whole.len() {
            assert!(without_location(&whole[..length]).is_none(), "{length}");
        }
        assert!(without_location(b"\x89PNG\r\n\x1a\n").is_none());
    }

    proptest! {
        /// Breaks when a length is trusted before it is checked.
        #[test]
        fn any_bytes_are_walked_without_a_panic(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
            let jpeg = [&[MARK, START, MARK][..], &bytes].concat();
            let _ = without_location(&jpeg);
        }
    }
}
