//! Pictures in files, for engines and lanes without a camera.

use std::io::Write;

use tempfile::NamedTempFile;

/// One pixel of its own shade, as a PNG that every browser reads: each shade gives other bytes.
pub(crate) fn picture(shade: u8) -> anyhow::Result<NamedTempFile> {
    let mut file = tempfile::Builder::new().suffix(".png").tempfile()?;
    file.write_all(&png(shade))?;
    file.flush()?;
    Ok(file)
}

fn png(shade: u8) -> Vec<u8> {
    let mut out = vec![0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a];
    // One by one pixel, eight bits, grey.
    piece(&mut out, *b"IHDR", &[0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
    let row = [0, shade];
    let mut packed = vec![0x78, 0x01, 0x01, 2, 0, 0xfd, 0xff];
    packed.extend(row);
    packed.extend(adler(&row).to_be_bytes());
    piece(&mut out, *b"IDAT", &packed);
    piece(&mut out, *b"IEND", &[]);
    out
}

fn piece(out: &mut Vec<u8>, kind: [u8; 4], body: &[u8]) {
    let length = u32::try_from(body.len()).expect("a picture of one pixel is short");
    out.extend(length.to_be_bytes());
    let from = out.len();
    out.extend(kind);
    out.extend(body);
    let sum = checksum(&out[from..]);
    out.extend(sum.to_be_bytes());
}

fn adler(bytes: &[u8]) -> u32 {
    let (low, high) = bytes.iter().fold((1_u32, 0_u32), |(low, high), byte| {
        let low = (low + u32::from(*byte)) % 65_521;
        (low, (high + low) % 65_521)
    });
    high << 16 | low
}

fn checksum(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0_u32, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| if sum & 1 == 1 { sum >> 1 ^ 0xedb8_8320 } else { sum >> 1 })
    })
}
