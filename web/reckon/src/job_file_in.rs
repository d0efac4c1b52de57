use std::collections::BTreeSet;
use std::io;

use asfound_core::papers::job_file::{JobFile, JobFileError, MemberKind, ReaderAt};
use asfound_core::problem::Problem;
use asfound_core::record::{Hash, Id};
use js_sys::{Function, Uint8Array};
use serde::Serialize;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};

use crate::boundary::crossing;
use crate::copy::Copy;
use crate::job_file_out::said;

/// A job file on its way in. One member is read at a time.
#[wasm_bindgen]
pub struct JobFileIn {
    file: JobFile<Source>,
}

/// Whatever gives the bytes: a function of where they begin and how many are wanted.
struct Source(Function);

impl ReaderAt for Source {
    #[expect(clippy::cast_precision_loss, reason = "no file is longer than 2^53 bytes")]
    fn read_at(&self, buffer: &mut [u8], from: u64) -> io::Result<usize> {
        let (from, length) = (JsValue::from_f64(from as f64), JsValue::from_f64(buffer.len() as f64));
        let given = self.0.call2(&JsValue::NULL, &from, &length).map_err(|error| io::Error::other(said(&error)))?;
        let given: Uint8Array = given.dyn_into().map_err(|_| io::Error::other("no bytes"))?;
        let count = buffer.len().min(given.length() as usize);
        given.subarray(0, u32::try_from(count).unwrap_or(0)).copy_to(&mut buffer[..count]);
        Ok(count)
    }
}

/// A member that is to be brought in.
#[derive(Debug, Serialize)]
struct MemberLine {
    /// Its place in the list of members.
    index: usize,
    /// `chunk` or `blob`.
    kind: &'static str,
    /// Its name.
    hash: Hash,
    /// Which form the bytes of a photo or sound have, where the record says so.
    media_type: String,
}

#[derive(Debug, Serialize)]
struct Contents {
    #[serde(skip_serializing_if = "Option::is_none")]
    job: Option<Id>,
    members: Vec<MemberLine>,
}

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = r"
export interface JobFileMember { index: number; kind: 'chunk' | 'blob'; hash: Hash; media_type: string }
export interface JobFileContents { job?: Id; members: JobFileMember[] }
";

#[wasm_bindgen]
impl JobFileIn {
    /// Opens a file of so many bytes. What is no job file is thrown as a problem.
    ///
    /// # Errors
    /// A problem as an object.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "the length of a file")]
    pub fn open(
        length: f64,
        #[wasm_bindgen(unchecked_param_type = "(from: number, length: number) => Uint8Array<ArrayBuffer>")]
        source: Function,
    ) -> Result<Self, JsValue> {
        let file = JobFile::open(Source(source), length as u64).map_err(|error| thrown(&error.of_file()))?;
        Ok(Self { file })
    }

    /// What bringing it in would do. `here` is the job as it is here, `blobs` the photos and sounds that are here.
    ///
    /// # Errors
    /// When the names of the photos are none.
    #[wasm_bindgen(js_name = dryRun, unchecked_return_type = "DryRun")]
    pub fn dry_run(&self, here: &Copy, blobs: Vec<String>) -> Result<JsValue, JsValue> {
        let blobs: BTreeSet<Hash> = blobs.iter().filter_map(|hash| hash.parse().ok()).collect();
        let known = here.job.id().map(|_| &here.job);
        crossing(&self.file.dry_run(known, &|hash| blobs.contains(&hash)))
    }

    /// The job, and what is to be brought in: photos and sounds first, so that no entry names what is not here yet.
    ///
    /// # Errors
    /// Never, but for a lack of memory.
    #[wasm_bindgen(unchecked_return_type = "JobFileContents")]
    pub fn contents(&self) -> Result<JsValue, JsValue> {
        let (job, _) = self.file.to_job();
        let types = job.blobs();
        let mut members: Vec<MemberLine> = Vec::new();
        members.extend(self.file.members().iter().enumerate().filter_map(|(index, member)| match member.kind {
            MemberKind::Chunk(hash) => Some(MemberLine { kind: "chunk", index, hash, media_type: String::new() }),
            MemberKind::Blob(hash) => {
                let media_type = types.get(&hash).cloned().unwrap_or_default();
                Some(MemberLine { kind: "blob", index, hash, media_type })
            }
            MemberKind::Text => None,
        }));
        members.sort_by_key(|line| line.kind);
        crossing(&Contents { job: job.id().or(self.file.job()), members })
    }

    /// The bytes of one member; nothing when they are damaged.
    ///
    /// # Errors
    /// When the file cannot be read.
    pub fn read(&self, index: usize) -> Result<Option<Vec<u8>>, JsValue> {
        let Some(member) = self.file.members().get(index) else { return Ok(None) };
        match self.file.read(member) {
            Ok(bytes) => Ok(Some(bytes)),
            Err(error @ JobFileError::Outside(_)) => Err(thrown(&error.of_file())),
            Err(_) => Ok(None),
        }
    }
}

fn thrown(problem: &Problem) -> JsValue {
    crossing(problem).unwrap_or_else(|error| error)
}
