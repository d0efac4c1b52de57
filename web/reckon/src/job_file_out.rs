use std::io;

use asfound_core::papers::job_file::{JobFileError, Writer};
use asfound_core::record::Held;
use js_sys::{Array, Function, Uint8Array};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsError, JsValue};

use crate::boundary::{crossing, received};
use crate::copy::Copy;

/// A job file on its way out. No more than one photo is in memory.
#[wasm_bindgen]
pub struct JobFileOut {
    writer: Writer<Sink>,
    held: Held,
}

/// Whatever takes the bytes: a function of them, which may throw.
struct Sink(Function);

impl io::Write for Sink {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let taken = self.0.call1(&JsValue::NULL, &Uint8Array::from(bytes));
        taken.map(|_| bytes.len()).map_err(|error| io::Error::other(said(&error)))
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

/// What was thrown, in words.
pub(crate) fn said(error: &JsValue) -> String {
    error.dyn_ref::<js_sys::Object>().map_or_else(|| format!("{error:?}"), |object| String::from(object.to_string()))
}

fn thrown(error: &JobFileError) -> JsValue {
    JsError::new(&format!("{error:?}")).into()
}

#[wasm_bindgen]
impl JobFileOut {
    /// Writes everything but photos and sounds.
    ///
    /// # Errors
    /// When the sink throws, or the words are none.
    pub fn begin(
        copy: &Copy,
        #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
        #[wasm_bindgen(unchecked_param_type = "(bytes: Uint8Array<ArrayBuffer>) => void")] sink: Function,
    ) -> Result<Self, JsValue> {
        let writer = Writer::begin(Sink(sink), &copy.job, &received(words)?).map_err(|error| thrown(&error))?;
        Ok(Self { writer, held: copy.job.record().held() })
    }

    /// The entries that are in it.
    ///
    /// # Errors
    /// Never: what is written here can be said to the page.
    #[wasm_bindgen(unchecked_return_type = "EntryId[]")]
    pub fn held(&self) -> Result<JsValue, JsValue> {
        crossing(&self.held)
    }

    /// The photos and sounds that are to be brought, in this order.
    #[must_use]
    #[wasm_bindgen(unchecked_return_type = "Hash[]")]
    pub fn wanted(&self) -> Array {
        self.writer.wanted().map(|(hash, _)| JsValue::from_str(&hash.to_string())).collect()
    }

    /// Brings one. False when its bytes are not those of its name: it is left out.
    ///
    /// # Errors
    /// When the sink throws.
    pub fn blob(&mut self, hash: &str, bytes: &[u8]) -> Result<bool, JsValue> {
        let Ok(hash) = hash.parse() else { return Ok(false) };
        match self.writer.blob(hash, bytes) {
            Ok(()) => Ok(true),
            Err(JobFileError::NameDiffers | JobFileError::NotNamed(_)) => Ok(false),
            Err(error) => Err(thrown(&error)),
        }
    }

    /// Ends the file. Answers which photos and sounds are not in it.
    ///
    /// # Errors
    /// When the sink throws.
    #[wasm_bindgen(unchecked_return_type = "Hash[]")]
    pub fn finish(self) -> Result<JsValue, JsValue> {
        let written = self.writer.finish().map_err(|error| thrown(&error))?;
        crossing(&written.missing)
    }
}
