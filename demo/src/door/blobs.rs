use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use asfound_core::papers::job_file::blob_missing;
use asfound_core::problem::Problem;
use asfound_core::record::Hash;

use super::Unreadable;
use super::opened::Opened;

/// Where photos and sounds come from: job files, and a folder of new ones.
pub(super) struct Blobs<'a> {
    files: &'a [Opened],
    folder: BTreeMap<Hash, PathBuf>,
}

impl<'a> Blobs<'a> {
    pub(super) fn new(files: &'a [Opened], folder: Option<&Path>) -> Result<Self, Unreadable> {
        let folder = folder.map_or_else(|| Ok(BTreeMap::new()), by_hash)?;
        Ok(Self { files, folder })
    }

    /// The bytes of one: of several copies the first sound one.
    pub(super) fn read(&self, hash: Hash) -> Result<Vec<u8>, Problem> {
        if let Some(Ok(bytes)) = self.folder.get(&hash).map(fs::read) {
            return Ok(bytes);
        }
        let mut worst = None;
        for copy in self.files.iter().filter_map(|file| file.blob(hash)) {
            match copy {
                Ok(bytes) => return Ok(bytes),
                Err(problem) => worst = Some(problem),
            }
        }
        Err(worst.unwrap_or_else(|| blob_missing(hash)))
    }
}

fn by_hash(folder: &Path) -> Result<BTreeMap<Hash, PathBuf>, Unreadable> {
    let told = |error| Unreadable::file(folder, &error);
    let mut found = BTreeMap::new();
    for entry in fs::read_dir(folder).map_err(told)? {
        let path = entry.map_err(told)?.path();
        if path.is_file() {
            let bytes = fs::read(&path).map_err(|error| Unreadable::file(&path, &error))?;
            found.insert(Hash::of(&bytes), path);
        }
    }
    Ok(found)
}
