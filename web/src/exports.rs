//! What the record worker calls. Values cross as plain objects, bytes as buffers, failures as objects with a code.

use std::str::FromStr;

use asfound_core::record::Hash;
use js_sys::{Array, Reflect, Uint8Array};
use serde::Serialize;
use serde::de::DeserializeOwned;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};

use crate::recorder::{Beside, Recorder};
use crate::store::{Blob, Derived, Failure, Indexed, Store, Task, TroubleCode, Write};
use crate::{chance, clock};

/// The number that tells which form of the protocol this build speaks.
#[wasm_bindgen]
#[must_use]
pub fn form() -> u32 {
    1
}

/// The name that bytes are kept under.
#[wasm_bindgen(js_name = hashOf)]
#[must_use]
pub fn hash_of(bytes: &[u8]) -> String {
    Hash::of(bytes).to_string()
}

/// The record as the worker holds it.
#[wasm_bindgen]
pub struct Record {
    recorder: Recorder<Indexed>,
}

#[wasm_bindgen]
impl Record {
    /// Opens the database.
    ///
    /// # Errors
    /// A failure as an object.
    pub async fn start(name: String) -> Result<Record, JsValue> {
        let store = Indexed::open(&name).await.map_err(thrown)?;
        let recorder = Recorder::over(store, chance::id(), chance::replica()).await.map_err(thrown)?;
        Ok(Self { recorder })
    }

    /// This start of this window.
    #[must_use]
    pub fn replica(&self) -> String {
        self.recorder.replica().to_string()
    }

    /// How many entries of the open job are safe.
    #[must_use]
    pub fn safe(&self) -> usize {
        self.recorder.safe()
    }

    /// The open job.
    #[must_use]
    pub fn current(&self) -> Option<String> {
        self.recorder.current().map(|job| job.to_string())
    }

    /// All jobs, latest first.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(unchecked_return_type = "JobLine[]")]
    pub async fn jobs(&self) -> Result<JsValue, JsValue> {
        crossing(&self.recorder.jobs().await.map_err(thrown)?)
    }

    /// Opens a job of which nothing is kept yet.
    ///
    /// # Errors
    /// When it is no id.
    pub fn begin(&self, job: &str) -> Result<(), JsValue> {
        self.recorder.begin(parsed(job)?);
        Ok(())
    }

    /// Loads and folds a job.
    ///
    /// # Errors
    /// When it is no id; all else is in the answer.
    #[wasm_bindgen(unchecked_return_type = "RecordAnswer")]
    pub async fn open(&self, job: &str) -> Result<JsValue, JsValue> {
        crossing(&self.recorder.open(parsed(job)?).await)
    }

    /// Carries out a command. `beside` are the photos and sounds that it names.
    ///
    /// # Errors
    /// When it is no command; all else is in the answer.
    #[wasm_bindgen(unchecked_return_type = "RecordAnswer")]
    pub async fn command(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Sent")] sent: JsValue,
        #[wasm_bindgen(unchecked_param_type = "BesideCommand[]")] beside: Array,
    ) -> Result<JsValue, JsValue> {
        let sent = received(sent)?;
        let beside = beside.iter().map(|one| blob_beside(&one)).collect::<Result<Vec<Beside>, _>>()?;
        crossing(&self.recorder.command(&sent, beside, clock::now()).await)
    }

    /// Answers a question from memory.
    ///
    /// # Errors
    /// When it is no question.
    #[wasm_bindgen(unchecked_return_type = "View")]
    pub fn ask(&self, #[wasm_bindgen(unchecked_param_type = "Query")] query: JsValue) -> Result<JsValue, JsValue> {
        crossing(&self.recorder.ask(&received(query)?))
    }

    /// Takes in what another window has stored.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(unchecked_return_type = "string[]")]
    pub async fn hear(&self, job: &str, replica: &str, last: f64) -> Result<JsValue, JsValue> {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a count, far below 2^53")]
        let last = last as u64;
        let touched = self.recorder.hear(parsed(job)?, parsed(replica)?, last).await;
        crossing(&touched.map_err(thrown)?)
    }

    /// Takes in whatever is stored and not here.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(js_name = catchUp, unchecked_return_type = "string[]")]
    pub async fn catch_up(&self) -> Result<JsValue, JsValue> {
        match self.recorder.current() {
            Some(job) => crossing(&self.recorder.catch_up(job).await.map_err(thrown)?),
            None => Ok(Array::new().into()),
        }
    }

    /// Brings in a chunk from a job file.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(js_name = bringInChunk, unchecked_return_type = "string[]")]
    pub async fn bring_in_chunk(&self, job: &str, name: &str, bytes: Vec<u8>) -> Result<JsValue, JsValue> {
        crossing(&self.recorder.bring_in(parsed(job)?, parsed(name)?, bytes).await.map_err(thrown)?)
    }

    /// Brings in a photo or sound from a job file; false when its bytes are not those of its name.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(js_name = bringInBlob)]
    pub async fn bring_in_blob(&self, name: &str, media_type: String, bytes: Vec<u8>) -> Result<bool, JsValue> {
        let name = parsed::<Hash>(name)?;
        if Hash::of(&bytes) != name {
            return Ok(false);
        }
        let mut writes = vec![Write::Blob(name, Blob { media_type, bytes })];
        if let [Write::Blob(_, blob)] = writes.as_slice()
            && blob.media_type.starts_with("image/")
        {
            writes.push(Write::Task(Task { of: name, begun: 0 }));
        }
        self.store().commit(writes).await.map_err(thrown)?;
        Ok(true)
    }

    /// A photo or sound as it came.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(unchecked_return_type = "TypedBytes | undefined")]
    pub async fn blob(&self, of: &str) -> Result<JsValue, JsValue> {
        let blob = self.store().blob(parsed(of)?).await.map_err(thrown)?;
        Ok(blob.map_or(JsValue::UNDEFINED, |blob| typed_bytes(&blob)))
    }

    /// A smaller picture: `thumb` or `view`.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(unchecked_return_type = "Uint8Array<ArrayBuffer> | undefined")]
    pub async fn derived(&self, of: &str, word: &str) -> Result<JsValue, JsValue> {
        let Some(derived) = Derived::of(word) else { return Ok(JsValue::UNDEFINED) };
        let bytes = self.store().derived(parsed(of)?, derived).await.map_err(thrown)?;
        Ok(bytes.map_or(JsValue::UNDEFINED, |bytes| Uint8Array::from(bytes.as_slice()).into()))
    }

    /// Photos of which smaller pictures are still to be made, each with how often that was begun.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(unchecked_return_type = "DeriveTask[]")]
    pub async fn tasks(&self) -> Result<JsValue, JsValue> {
        let tasks = self.store().tasks().await.map_err(thrown)?;
        Ok(tasks
            .iter()
            .map(|task| pairs(&[("of", task.of.to_string().into()), ("begun", task.begun.into())]))
            .collect::<Array>()
            .into())
    }

    /// Notes that a task is begun once more: one that kills the worker each time must not do so for ever.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(js_name = taskBegun)]
    pub async fn task_begun(&self, of: &str, begun: u32) -> Result<(), JsValue> {
        self.store().commit(vec![Write::Task(Task { of: parsed(of)?, begun })]).await.map_err(thrown)
    }

    /// Keeps the smaller pictures of a photo; the task is done.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(js_name = keepDerived)]
    pub async fn keep_derived(&self, of: &str, view: Vec<u8>, thumb: Vec<u8>) -> Result<(), JsValue> {
        let of = parsed(of)?;
        let derived = [(Derived::View, view), (Derived::Thumb, thumb)];
        let mut writes: Vec<Write> =
            derived.into_iter().map(|(derived, bytes)| Write::Derived(of, derived, bytes)).collect();
        writes.push(Write::TaskDone(of));
        self.store().commit(writes).await.map_err(thrown)
    }

    /// Seals the oldest entries once there are `least` of them. Answers whether it did.
    ///
    /// # Errors
    /// A failure as an object.
    pub async fn seal(&self, least: usize) -> Result<bool, JsValue> {
        self.recorder.seal(least).await.map_err(thrown)
    }

    /// Notes the line that the list of jobs shows.
    ///
    /// # Errors
    /// A failure as an object.
    #[wasm_bindgen(js_name = noteLine)]
    pub async fn note_line(&self) -> Result<(), JsValue> {
        self.recorder.note_line().await.map_err(thrown)
    }

    /// Reads one small thing, to learn whether the store answers.
    ///
    /// # Errors
    /// A failure as an object.
    pub async fn probe(&self) -> Result<(), JsValue> {
        self.store().probe().await.map_err(thrown)
    }

    /// Lets go of a connection that no longer answers, and opens another.
    ///
    /// # Errors
    /// A failure as an object.
    pub async fn reopen(&self) -> Result<(), JsValue> {
        self.store().reopen().await.map_err(thrown)
    }
}

impl Record {
    const fn store(&self) -> &Indexed {
        self.recorder.store()
    }
}

fn crossing<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    let serializer = serde_wasm_bindgen::Serializer::new().serialize_maps_as_objects(true);
    value.serialize(&serializer).map_err(JsValue::from)
}

fn received<T: DeserializeOwned>(value: JsValue) -> Result<T, JsValue> {
    serde_wasm_bindgen::from_value(value).map_err(JsValue::from)
}

fn thrown(failure: Failure) -> JsValue {
    crossing(&failure).unwrap_or_else(|error| error)
}

fn parsed<T: FromStr>(text: &str) -> Result<T, JsValue> {
    text.parse().map_err(|_| thrown(Failure::new(TroubleCode::ReadFailed, format!("not a name: {text}"))))
}

fn blob_beside(one: &JsValue) -> Result<Beside, JsValue> {
    let member = |name: &str| Reflect::get(one, &name.into());
    let hash = parsed(&member("hash")?.as_string().unwrap_or_default())?;
    let media_type = member("media_type")?.as_string().unwrap_or_default();
    let bytes = Uint8Array::new(&member("bytes")?).to_vec();
    Ok((hash, Blob { media_type, bytes }))
}

fn typed_bytes(blob: &Blob) -> JsValue {
    pairs(&[("media_type", blob.media_type.as_str().into()), ("bytes", Uint8Array::from(blob.bytes.as_slice()).into())])
}

fn pairs(members: &[(&str, JsValue)]) -> JsValue {
    let object = js_sys::Object::new();
    for (name, value) in members {
        // A fresh plain object refuses nothing.
        let _ = Reflect::set(&object, &(*name).into(), value);
    }
    object.unchecked_into()
}

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = r"
export interface RecordTrouble { code: 'quota-exceeded' | 'transaction-aborted' | 'connection-lost' | 'newer-database' | 'closed-elsewhere' | 'chunk-damaged' | 'private-window' | 'read-failed'; detail: string }
export interface RecordAnswer { ok: boolean; problems: Problem[]; entry?: EntryId; job?: Id; trouble?: RecordTrouble; touched: Id[] }
export interface JobLine { id: Id; name: string; parts: number; photos: number; last: Millis }
export interface BesideCommand { hash: Hash; media_type: string; bytes: ArrayBuffer }
export interface TypedBytes { media_type: string; bytes: Uint8Array<ArrayBuffer> }
export interface DeriveTask { of: Hash; begun: number }
";
