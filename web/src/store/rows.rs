//! How things lie in the database: keys are arrays, values plain objects with `ArrayBuffer`s, so that the rescue page can
//! read them with nothing but the browser.

use asfound_core::record::{EntryId, Hash, Id};
use js_sys::{Array, Object, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};

use super::{Blob, PIECE, Quarantined, TailRow, Task, Write};

/// One request of a transaction.
pub(super) enum Step {
    Add(&'static str, JsValue, JsValue),
    Put(&'static str, JsValue, JsValue),
    Delete(&'static str, JsValue),
}

impl Step {
    pub(super) const fn store(&self) -> &'static str {
        match self {
            Self::Add(store, ..) | Self::Put(store, ..) | Self::Delete(store, _) => store,
        }
    }

    pub(super) fn added(&self, to: &str) -> Option<(JsValue, Option<JsValue>)> {
        match self {
            Self::Add(store, key, value) if *store == to => Some((value.clone(), Some(key.clone()))),
            _ => None,
        }
    }

    pub(super) fn put(&self, to: &str) -> Option<(JsValue, Option<JsValue>)> {
        match self {
            Self::Put(store, key, value) if *store == to => Some((value.clone(), Some(key.clone()))),
            _ => None,
        }
    }

    pub(super) fn deleted(&self, from: &str) -> Option<JsValue> {
        match self {
            Self::Delete(store, key) if *store == from => Some(key.clone()),
            _ => None,
        }
    }
}

/// The requests that a write needs.
pub(super) fn steps(write: Write) -> Vec<Step> {
    match write {
        Write::Tail(job, row) => {
            let value = object(&[("bytes", buffer(&row.bytes)), ("hash", row.hash.to_string().into())]);
            vec![Step::Add("tail", tail_key(job, row.entry), value)]
        }
        Write::Sealed(job, entry) => vec![Step::Delete("tail", tail_key(job, entry))],
        Write::Chunk(job, name, bytes) => {
            vec![Step::Put("chunk", key(&[&job.to_string(), &name.to_string()]), object(&[("bytes", buffer(&bytes))]))]
        }
        Write::Blob(of, blob) => pieces(of, &blob),
        Write::Derived(of, derived, bytes) => {
            vec![Step::Put("thumb", key(&[&of.to_string(), derived.word()]), object(&[("bytes", buffer(&bytes))]))]
        }
        Write::Task(task) => {
            vec![Step::Put("task", task.of.to_string().into(), object(&[("begun", task.begun.into())]))]
        }
        Write::TaskDone(of) => vec![Step::Delete("task", of.to_string().into())],
        Write::Meta(name, value) => vec![Step::Put("meta", name.into(), value.into())],
        Write::FirstMeta(name, value) => vec![Step::Add("meta", name.into(), value.into())],
        Write::Quarantine(job, damaged) => set_aside(job, damaged),
        Write::Healed(job, name) => vec![Step::Delete("quarantine", key(&[&job.to_string(), &name]))],
    }
}

fn pieces(of: Hash, blob: &Blob) -> Vec<Step> {
    let of = of.to_string();
    let count = blob.bytes.len().div_ceil(PIECE).max(1);
    let piece = |number: usize| {
        let end = blob.bytes.len().min((number + 1) * PIECE);
        let value = object(&[
            ("bytes", buffer(&blob.bytes[number * PIECE..end])),
            ("type", blob.media_type.as_str().into()),
            ("pieces", JsValue::from_f64(count as f64)),
        ]);
        Step::Put("photo", numbered(&[&of], number as u64), value)
    };
    (0..count).map(piece).collect()
}

fn set_aside(job: Id, damaged: Quarantined) -> Vec<Step> {
    let mut steps = Vec::new();
    if damaged.name.parse::<Hash>().is_ok() {
        steps.push(Step::Delete("chunk", key(&[&job.to_string(), &damaged.name])));
    }
    if let Ok(entry) = damaged.name.parse() {
        steps.push(Step::Delete("tail", tail_key(job, entry)));
    }
    let value = object(&[("bytes", buffer(&damaged.bytes))]);
    steps.push(Step::Put("quarantine", key(&[&job.to_string(), &damaged.name]), value));
    steps
}

/// A key of these parts.
pub(super) fn key(parts: &[&str]) -> JsValue {
    array(parts).into()
}

/// A key of these parts and a number. Numbers stay below 2^53: nobody says that much.
pub(super) fn numbered(parts: &[&str], number: u64) -> JsValue {
    let key = array(parts);
    key.push(&JsValue::from_f64(number as f64));
    key.into()
}

/// The end of everything below these parts: arrays come after numbers and strings.
pub(super) fn end(parts: &[&str]) -> JsValue {
    let key = array(parts);
    key.push(&Array::new());
    key.into()
}

fn array(parts: &[&str]) -> Array {
    parts.iter().map(|part| JsValue::from_str(part)).collect()
}

fn tail_key(job: Id, entry: EntryId) -> JsValue {
    numbered(&[&job.to_string(), &entry.replica.to_string()], entry.seq)
}

/// A part of a key.
pub(super) fn part(key: &JsValue, index: u32) -> Option<String> {
    key.dyn_ref::<Array>()?.get(index).as_string()
}

/// The bytes of a value; none when it holds none.
pub(super) fn bytes(value: &JsValue) -> Vec<u8> {
    member(value, "bytes")
        .dyn_ref::<js_sys::ArrayBuffer>()
        .map(|buffer| Uint8Array::new(buffer).to_vec())
        .unwrap_or_default()
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "as numbered wrote it")]
pub(super) fn tail_row(key: &JsValue, value: &JsValue) -> Option<TailRow> {
    let seq = key.dyn_ref::<Array>()?.get(2).as_f64()? as u64;
    let entry = EntryId { replica: part(key, 1)?.parse().ok()?, seq };
    let bytes = bytes(value);
    // Without a readable hash the row is damaged, and found so by its reader.
    let written = member(value, "hash").as_string().and_then(|hash| hash.parse().ok());
    Some(TailRow { entry, hash: written.unwrap_or(Hash::from_bytes([0; 32])), bytes })
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a small count")]
pub(super) fn task(key: &JsValue, value: &JsValue) -> Option<Task> {
    Some(Task { of: key.as_string()?.parse().ok()?, begun: member(value, "begun").as_f64()? as u32 })
}

/// A photo from its pieces, in order.
pub(super) fn blob(pieces: &[JsValue]) -> Blob {
    let media_type = pieces.first().and_then(|piece| member(piece, "type").as_string()).unwrap_or_default();
    let bytes: Vec<Vec<u8>> = pieces.iter().map(bytes).collect();
    Blob { media_type, bytes: bytes.concat() }
}

fn member(value: &JsValue, name: &str) -> JsValue {
    Reflect::get(value, &name.into()).unwrap_or(JsValue::UNDEFINED)
}

fn object(members: &[(&str, JsValue)]) -> JsValue {
    let object = Object::new();
    for (name, value) in members {
        // A fresh plain object refuses nothing.
        let _ = Reflect::set(&object, &(*name).into(), value);
    }
    object.into()
}

fn buffer(bytes: &[u8]) -> JsValue {
    Uint8Array::from(bytes).buffer().into()
}
