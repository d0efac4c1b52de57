use asfound_core::record::chunk::{ChunkError, MOST_ENTRIES, open, seal};
use asfound_core::record::{Entry, Record, Unreadable};
use proptest::prelude::*;

use crate::any_entry::{any_entries, any_entry};
use crate::cases;

fn sorted(mut entries: Vec<Entry>) -> Vec<Entry> {
    entries.sort_unstable();
    entries
}

/// Any bytes, and numbers written longer than they need be, bare and behind the letters of a currency.
fn misfit_body() -> impl Strategy<Value = Vec<u8>> {
    let overlong = (any::<bool>(), 0_usize..6, any::<u8>()).prop_map(|(money, length, low)| {
        let mut body = if money { b"EUR".to_vec() } else { Vec::new() };
        body.push(low | 0x80);
        body.extend(vec![0x80; length]);
        body.push(0);
        body
    });
    prop_oneof![prop::collection::vec(any::<u8>(), 0..40), overlong]
}

proptest! {
    #![proptest_config(cases(2_000))]

    /// Sealing and opening change nothing, whatever fields and marks of values stand in the entries, and the same entries
    /// make the same chunk.
    /// Break: in `seal` leave the sorting out.
    #[test]
    fn sealing_changes_nothing(entries in any_entries()) {
        let sealed = seal(&entries);
        prop_assert_eq!(open(sealed.name, &sealed.bytes), Ok(sorted(entries.clone())));
        let mut turned = entries;
        turned.reverse();
        prop_assert_eq!(seal(&turned), sealed);
    }

    /// Fields and marks of values that this version does not know come out byte for byte as they went in.
    /// Break: in `Value::write_body` write the mark of an unknown value as `CLEARED`.
    #[test]
    fn what_is_unknown_passes_through(entry in any_entry()) {
        let bytes = entry.to_bytes();
        let read = Entry::from_bytes(&bytes).expect("own bytes");
        prop_assert_eq!(read.to_bytes(), bytes);
        let mut record = Record::default();
        record.absorb(read);
        prop_assert_eq!(record.entries().next(), Some(&entry));
    }

    /// A value whose body does not fit its mark is kept byte for byte too.
    /// Break: in `Value::read_body` leave out that the value must write the body it was read from.
    #[test]
    fn a_misfit_body_passes_through(mark in 0_u8..10, body in misfit_body()) {
        let mut bytes = vec![7; 8];
        bytes.extend([1, 0, 1]);
        bytes.extend([9; 16]);
        bytes.extend([2, mark, u8::try_from(body.len()).expect("short")]);
        bytes.extend(&body);
        bytes.push(0);
        let entry = Entry::from_bytes(&bytes).expect("an entry of one op");
        prop_assert_eq!(entry.to_bytes(), bytes);
    }

    /// One flipped bit rejects that chunk, and no other.
    /// Break: in `open` leave the comparison of the name out.
    #[test]
    fn one_flipped_bit_rejects_one_chunk(entries in prop::collection::vec(any_entry(), 2..24), bit in any::<prop::sample::Index>()) {
        let chunks: Vec<_> = entries.chunks(entries.len().div_ceil(3)).map(seal).collect();
        let bits: usize = chunks.iter().map(|chunk| chunk.bytes.len() * 8).sum();
        let mut bit = bit.index(bits);
        let mut rejected = Vec::new();
        let mut struck = None;
        for (number, chunk) in chunks.iter().enumerate() {
            let mut bytes = chunk.bytes.clone();
            if struck.is_none() && bit < bytes.len() * 8 {
                bytes[bit / 8] ^= 1 << (bit % 8);
                struck = Some(number);
            }
            bit = bit.saturating_sub(bytes.len() * 8);
            if open(chunk.name, &bytes).is_err() {
                rejected.push(number);
            }
        }
        prop_assert_eq!(rejected, Vec::from_iter(struck));
    }

    /// Bytes that anybody may have made, under their true name: an answer, never a panic.
    /// Break: in `open` index the form instead of reading it.
    #[test]
    fn hostile_bytes_are_answered(head in 0_usize..12, bytes in prop::collection::vec(any::<u8>(), 0..80)) {
        let mut whole = b"ASFOUND\n\x01\x02\x20"[..head.min(11)].to_vec();
        whole.extend(&bytes);
        let name = asfound_core::record::Hash::of(&whole);
        prop_assert!(open(name, &whole).is_err() || whole.starts_with(b"ASFOUND\n\x01"));
        let _ = Entry::from_bytes(&bytes);
    }
}

/// A chunk that would unfold to more than memory is refused unread; one of our own making never is.
/// Break: in `inflate` leave the limit out.
#[test]
fn a_chunk_that_unfolds_to_too_much_is_refused() {
    let mut bytes = b"ASFOUND\n\x01\x01".to_vec();
    bytes.extend([0xff, 0xff, 0xff, 0xff, 0x7f]);
    bytes.extend([0; 64]);
    let name = asfound_core::record::Hash::of(&bytes);
    assert_eq!(open(name, &bytes), Err(ChunkError::Body(Unreadable::Long)));
    assert_eq!(MOST_ENTRIES, 1_000);
}
