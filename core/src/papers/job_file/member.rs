use rawzip::ZipArchiveEntryWayfinder;

use crate::record::Hash;

/// One file in the job file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Member {
    /// Its path as written in the zip.
    pub path: String,
    /// What it is.
    pub kind: MemberKind,
    /// How many bytes it has, by what the zip says.
    pub length: u64,
    pub(super) way: ZipArchiveEntryWayfinder,
    pub(super) checksum: u32,
    /// Nothing where it is packed in a way that is not read.
    pub(super) deflated: Option<bool>,
}

/// What a member is, by its path.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum MemberKind {
    /// Sealed entries.
    Chunk(Hash),
    /// A photo or a stretch of sound.
    Blob(Hash),
    /// What is meant for people.
    Text,
}

/// Where a photo or sound lies in a job file.
#[must_use]
pub fn blob_path(hash: Hash, media_type: &str) -> String {
    format!("photos/{hash}.{}", extension(media_type))
}

pub(super) fn chunk_path(name: Hash) -> String {
    format!("chunks/{name}.chunk")
}

/// The usual ending of a file of a media type; parameters such as codecs do not matter.
fn extension(media_type: &str) -> &'static str {
    let plain = media_type.split(';').next().unwrap_or_default().trim().to_ascii_lowercase();
    match plain.as_str() {
        "image/jpeg" => "jpg",
        "image/png" => "png",
        "image/webp" => "webp",
        "image/heic" => "heic",
        "image/heif" => "heif",
        "image/avif" => "avif",
        "image/gif" => "gif",
        "audio/webm" | "video/webm" => "webm",
        "audio/mp4" | "audio/x-m4a" => "m4a",
        "audio/ogg" => "ogg",
        "audio/aac" => "aac",
        "audio/wav" | "audio/x-wav" => "wav",
        "video/mp4" => "mp4",
        _ => "bin",
    }
}

impl MemberKind {
    /// What a path says. Folders above do not matter: whoever unpacked and packed it again has added one.
    pub(super) fn of(path: &str) -> Self {
        let mut parts = path.rsplit('/');
        let (Some(file), folder) = (parts.next(), parts.next()) else { return Self::Text };
        let stem = file.split('.').next().unwrap_or_default();
        match (folder, stem.parse()) {
            (Some("chunks"), Ok(hash)) => Self::Chunk(hash),
            (Some("photos"), Ok(hash)) => Self::Blob(hash),
            _ => Self::Text,
        }
    }

    /// Whether a path was that of a chunk before it was damaged: entries must not stay away unsaid. What begins with `._` is
    /// put beside every file by some systems when they pack a folder.
    pub(super) fn was_chunk(path: &str) -> bool {
        let file = path.rsplit('/').next().unwrap_or_default();
        let told = file.ends_with(".chunk") || path.split('/').any(|part| part == "chunks");
        Self::of(path) == Self::Text && told && !file.starts_with("._")
    }

    /// The hash that its bytes must have.
    pub(super) const fn hash(self) -> Option<Hash> {
        match self {
            Self::Chunk(hash) | Self::Blob(hash) => Some(hash),
            Self::Text => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_says_what_it_is() {
        let hash = Hash::of(b"photo");
        assert_eq!(MemberKind::of(&blob_path(hash, "image/jpeg")), MemberKind::Blob(hash));
        assert_eq!(MemberKind::of(&format!("my car/{}", chunk_path(hash))), MemberKind::Chunk(hash));
        assert_eq!(MemberKind::of("photos/holiday.jpg"), MemberKind::Text);
        assert_eq!(MemberKind::of("job.json"), MemberKind::Text);
        assert_eq!(MemberKind::of(&format!("{hash}.jpg")), MemberKind::Text);
    }

    #[test]
    fn a_damaged_path_of_a_chunk_is_known_for_one() {
        let path = chunk_path(Hash::of(b"entries"));
        let damaged = |from: &str, to: &str| MemberKind::was_chunk(&path.replacen(from, to, 1));
        assert!(damaged("chunks/", "chunjs/") && damaged("chunks/", "chunks/x") && damaged("/", "o"));
        assert!(damaged(".chunk", "/chunk") && MemberKind::was_chunk(&path[..13]));
        assert!(!MemberKind::was_chunk(&path) && !damaged("chunks/", "__MACOSX/chunks/._"));
        assert!(!MemberKind::was_chunk("photos/holiday.jpg") && !MemberKind::was_chunk("READ ME.txt"));
    }

    #[test]
    fn the_ending_follows_the_media_type() {
        let hash = Hash::of(b"sound");
        assert!(blob_path(hash, "audio/webm;codecs=opus").ends_with(".webm"));
        assert!(blob_path(hash, "audio/mp4").ends_with(".m4a"));
        assert!(blob_path(hash, "image/JPEG").ends_with(".jpg"));
        assert!(blob_path(hash, "").ends_with(".bin"));
    }
}
