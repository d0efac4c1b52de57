//! What a browser keeps from one start to the next.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use anyhow::{Context, bail};
use tempfile::TempDir;

/// A folder for everything a browser stores, and one for what it downloads.
/// Both go when this value goes.
pub struct Profile {
    folder: TempDir,
    film: Option<PathBuf>,
}

impl Profile {
    /// A person who was never here before.
    pub fn fresh() -> anyhow::Result<Self> {
        let profile = Self { folder: tempfile::tempdir()?, film: None };
        fs::create_dir(profile.stored())?;
        fs::create_dir(profile.downloads())?;
        Ok(profile)
    }

    /// The same with a film (Y4M) before the camera, over and over, instead of the picture that the browser draws itself.
    pub fn with_film(film: &Path) -> anyhow::Result<Self> {
        Ok(Self { film: Some(film.to_owned()), ..Self::fresh()? })
    }

    /// What stands before the camera.
    pub(crate) fn film(&self) -> Option<&Path> {
        self.film.as_deref()
    }

    /// Where the browser keeps its own things.
    pub fn stored(&self) -> PathBuf {
        self.folder.path().join("stored")
    }

    /// Where downloads end up.
    pub fn downloads(&self) -> PathBuf {
        self.folder.path().join("downloads")
    }

    /// A folder of desktop settings that name the downloads folder: the only
    /// way to tell WebKit.
    pub(crate) fn desktop_settings(&self) -> anyhow::Result<PathBuf> {
        let folder = self.folder.path().join("settings");
        fs::create_dir_all(&folder)?;
        let line = format!("XDG_DOWNLOAD_DIR=\"{}\"\n", self.downloads().display());
        fs::write(folder.join("user-dirs.dirs"), line)?;
        Ok(folder)
    }

    /// Waits for a finished download whose name ends so.
    pub fn wait_for_download(&self, ending: &str, within: Duration) -> anyhow::Result<PathBuf> {
        let start = Instant::now();
        while start.elapsed() < within {
            if let Some(path) = finished(&self.downloads(), ending)? {
                return Ok(path);
            }
            std::thread::sleep(Duration::from_millis(50));
        }
        bail!("no download ending in {ending} within {within:?}")
    }
}

/// Chromium renames a finished file; Firefox keeps an empty one of the final
/// name beside the growing `.part`.
fn finished(folder: &Path, ending: &str) -> anyhow::Result<Option<PathBuf>> {
    let mut names: Vec<PathBuf> = Vec::new();
    for entry in fs::read_dir(folder).context("the downloads folder")? {
        names.push(entry?.path());
    }
    let growing =
        |path: &PathBuf| path.extension().is_some_and(|e| e == "part" || e == "crdownload" || e == "wkdownload");
    if names.iter().any(growing) {
        return Ok(None);
    }
    Ok(names.into_iter().find(|path| path.to_string_lossy().ends_with(ending)))
}
