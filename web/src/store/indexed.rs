use std::cell::RefCell;

use asfound_core::record::{Hash, Id, Replica};
use rexie::{ObjectStore, Rexie, Transaction, TransactionMode};
use wasm_bindgen::JsValue;

use super::rows::{self, Step};
use super::strict::{last_cause, make_strict};
use super::{Blob, Derived, Failure, Quarantined, Store, TailRow, Task, TroubleCode, Write};

/// Grows by one whenever a store is added.
pub const VERSION: u32 = 1;

/// The stores. This list only grows: one that is left out would be deleted with all it holds.
pub const STORES: [&str; 7] = ["meta", "tail", "chunk", "photo", "thumb", "task", "quarantine"];

/// The browser's database, through rexie.
#[derive(Debug)]
pub struct Indexed {
    name: String,
    connection: RefCell<Rexie>,
}

impl Indexed {
    /// Opens the database, or makes it. One of a newer version is left alone: nothing is read, nothing written.
    ///
    /// # Errors
    /// When the browser refuses, or the database is of a newer version.
    pub async fn open(name: &str) -> Result<Self, Failure> {
        let connection = RefCell::new(connect(name).await?);
        Ok(Self { name: name.to_owned(), connection })
    }

    /// Lets go of a connection that no longer answers, and opens another.
    ///
    /// # Errors
    /// As when opening; a newer version means that another window has closed this one.
    pub async fn reopen(&self) -> Result<(), Failure> {
        let fresh = connect(&self.name).await.map_err(|failure| match failure.code {
            TroubleCode::NewerDatabase => Failure::new(TroubleCode::ClosedElsewhere, failure.detail),
            _ => failure,
        })?;
        self.connection.replace(fresh).close();
        Ok(())
    }

    async fn begin(&self, stores: &[&str], mode: TransactionMode) -> Result<Transaction, Failure> {
        let first = self.connection.borrow().transaction(stores, mode);
        if let Ok(transaction) = first {
            return Ok(transaction);
        }
        // A closed connection cannot be seen before it is used. Using a dead one again and again loses work.
        self.reopen().await?;
        self.connection.borrow().transaction(stores, mode).map_err(|error| Failure::of(&error))
    }

    async fn read(&self, store: &str) -> Result<(Transaction, rexie::Store), Failure> {
        let transaction = self.begin(&[store], TransactionMode::ReadOnly).await?;
        let opened = transaction.store(store).map_err(|error| Failure::of(&error))?;
        Ok((transaction, opened))
    }

    async fn get(&self, store: &str, key: &JsValue) -> Result<Option<JsValue>, Failure> {
        let (_transaction, opened) = self.read(store).await?;
        opened.get(key.clone()).await.map_err(|error| read_failure(&error))
    }

    /// Keys and values below a key, both from one transaction.
    async fn below(&self, store: &str, lower: &JsValue, upper: &JsValue) -> Result<Vec<(JsValue, JsValue)>, Failure> {
        let (_transaction, opened) = self.read(store).await?;
        let range = || {
            rexie::KeyRange::bound(lower, upper, Some(true), None).map_err(|error| Failure::named(error.to_string()))
        };
        let keys = opened.get_all_keys(Some(range()?), None).await.map_err(|error| read_failure(&error))?;
        let values = opened.get_all(Some(range()?), None).await.map_err(|error| read_failure(&error))?;
        Ok(keys.into_iter().zip(values).collect())
    }

    async fn keys_of(&self, store: &str, range: Option<(JsValue, JsValue)>) -> Result<Vec<JsValue>, Failure> {
        let (_transaction, opened) = self.read(store).await?;
        let range = range.map(|(lower, upper)| rexie::KeyRange::bound(&lower, &upper, Some(true), None)).transpose();
        let range = range.map_err(|error| Failure::named(error.to_string()))?;
        opened.get_all_keys(range, None).await.map_err(|error| read_failure(&error))
    }
}

async fn connect(name: &str) -> Result<Rexie, Failure> {
    if !js_sys::Reflect::get(&js_sys::global(), &"indexedDB".into()).is_ok_and(|factory| factory.is_object()) {
        return Err(Failure::new(TroubleCode::PrivateWindow, "there is no database here"));
    }
    make_strict();
    let builder = Rexie::builder(name).version(VERSION);
    let builder = STORES.iter().fold(builder, |builder, store| builder.add_object_store(ObjectStore::new(store)));
    builder.build().await.map_err(|error| {
        let failure = Failure::of(&error);
        // Some engines refuse private windows in these words, and only when opening.
        if failure.detail.contains("InvalidStateError") {
            return Failure::new(TroubleCode::PrivateWindow, failure.detail);
        }
        failure
    })
}

/// A read that fails although the connection is there.
fn read_failure(error: &rexie::Error) -> Failure {
    let failure = Failure::of(error);
    match failure.code {
        TroubleCode::TransactionAborted => Failure::new(TroubleCode::ReadFailed, failure.detail),
        _ => failure,
    }
}

/// What a write that failed is called: the first cause, where it was seen.
fn write_failure(error: Option<&rexie::Error>) -> Failure {
    let said = error.map(Failure::of);
    match (last_cause(), said) {
        (Some(cause), _) => Failure::named(cause),
        (None, Some(said)) => said,
        (None, None) => Failure::new(TroubleCode::TransactionAborted, "taken back, no cause given"),
    }
}

/// The one place where a writing transaction ends. rexie answers `Ok` for one that was taken back, too.
async fn finish(transaction: Transaction) -> Result<(), Failure> {
    match transaction.done().await {
        Ok(result) if result.is_committed() => Ok(()),
        Ok(_) => Err(write_failure(None)),
        Err(error) => Err(write_failure(Some(&error))),
    }
}

async fn carry_out(transaction: &Transaction, steps: Vec<Step>) -> Result<(), rexie::Error> {
    for store in STORES {
        let opened = if steps.iter().any(|step| step.store() == store) { transaction.store(store)? } else { continue };
        opened.add_all(steps.iter().filter_map(|step| step.added(store))).await?;
        opened.put_all(steps.iter().filter_map(|step| step.put(store))).await?;
        for key in steps.iter().filter_map(|step| step.deleted(store)) {
            opened.delete(key).await?;
        }
    }
    Ok(())
}

impl Store for Indexed {
    async fn commit(&self, writes: Vec<Write>) -> Result<(), Failure> {
        let steps: Vec<Step> = writes.into_iter().flat_map(rows::steps).collect();
        let used: Vec<&str> =
            STORES.into_iter().filter(|store| steps.iter().any(|step| step.store() == *store)).collect();
        if used.is_empty() {
            return Ok(());
        }
        let transaction = self.begin(&used, TransactionMode::ReadWrite).await?;
        match carry_out(&transaction, steps).await {
            Ok(()) => finish(transaction).await,
            Err(error) => {
                // What was put before must not stay behind alone; a second end of the same transaction says nothing new.
                let _ = transaction.abort().await;
                Err(write_failure(Some(&error)))
            }
        }
    }

    async fn meta(&self, key: &str) -> Result<Option<String>, Failure> {
        Ok(self.get("meta", &key.into()).await?.and_then(|value| value.as_string()))
    }

    async fn metas(&self, prefix: &str) -> Result<Vec<(String, String)>, Failure> {
        let rows = self.below("meta", &prefix.into(), &format!("{prefix}\u{ffff}").into()).await?;
        Ok(rows.into_iter().filter_map(|(key, value)| Some((key.as_string()?, value.as_string()?))).collect())
    }

    async fn jobs(&self) -> Result<Vec<Id>, Failure> {
        let mut keys = self.keys_of("tail", None).await?;
        keys.extend(self.keys_of("chunk", None).await?);
        let mut jobs: Vec<Id> = keys.iter().filter_map(|key| rows::part(key, 0)?.parse().ok()).collect();
        jobs.sort_unstable();
        jobs.dedup();
        Ok(jobs)
    }

    async fn tail(&self, job: Id) -> Result<Vec<TailRow>, Failure> {
        let rows = self.below("tail", &rows::key(&[&job.to_string()]), &rows::end(&[&job.to_string()])).await?;
        Ok(rows.iter().filter_map(|(key, value)| rows::tail_row(key, value)).collect())
    }

    async fn tail_of(&self, job: Id, replica: Replica, after: u64) -> Result<Vec<TailRow>, Failure> {
        let (job, replica) = (job.to_string(), replica.to_string());
        let rows = self.below("tail", &rows::numbered(&[&job, &replica], after), &rows::end(&[&job, &replica])).await?;
        Ok(rows.iter().filter_map(|(key, value)| rows::tail_row(key, value)).collect())
    }

    async fn chunk_names(&self, job: Id) -> Result<Vec<Hash>, Failure> {
        let job = job.to_string();
        let keys = self.keys_of("chunk", Some((rows::key(&[&job]), rows::end(&[&job])))).await?;
        Ok(keys.iter().filter_map(|key| rows::part(key, 1)?.parse().ok()).collect())
    }

    async fn chunk(&self, job: Id, name: Hash) -> Result<Option<Vec<u8>>, Failure> {
        let key = rows::key(&[&job.to_string(), &name.to_string()]);
        Ok(self.get("chunk", &key).await?.map(|value| rows::bytes(&value)))
    }

    async fn blob(&self, of: Hash) -> Result<Option<Blob>, Failure> {
        let of = of.to_string();
        let pieces = self.below("photo", &rows::key(&[&of]), &rows::end(&[&of])).await?;
        let pieces: Vec<JsValue> = pieces.into_iter().map(|(_, value)| value).collect();
        Ok((!pieces.is_empty()).then(|| rows::blob(&pieces)))
    }

    async fn derived(&self, of: Hash, derived: Derived) -> Result<Option<Vec<u8>>, Failure> {
        let key = rows::key(&[&of.to_string(), derived.word()]);
        Ok(self.get("thumb", &key).await?.map(|value| rows::bytes(&value)))
    }

    async fn tasks(&self) -> Result<Vec<Task>, Failure> {
        let rows = self.below("task", &"".into(), &"\u{ffff}".into()).await?;
        Ok(rows.iter().filter_map(|(key, value)| rows::task(key, value)).collect())
    }

    async fn quarantined(&self, job: Id) -> Result<Vec<Quarantined>, Failure> {
        let job = job.to_string();
        let rows = self.below("quarantine", &rows::key(&[&job]), &rows::end(&[&job])).await?;
        let damaged = rows.iter().filter_map(|(key, value)| Some((rows::part(key, 1)?, rows::bytes(value))));
        Ok(damaged.map(|(name, bytes)| Quarantined { name, bytes }).collect())
    }

    async fn probe(&self) -> Result<(), Failure> {
        // A store that is hardly ever written: a long write elsewhere must not look like a dead connection.
        self.get("quarantine", &"probe".into()).await.map(drop)
    }
}
