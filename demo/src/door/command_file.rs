use std::fs;
use std::path::{Component, Path};

use asfound_core::job::Sent;
use asfound_core::problem::{Code, Problem};
use asfound_core::record::{Hash, Id};
use serde_json::Value;

use super::{Unreadable, not_there};

/// Stands before the name of a file in the folder of photos, where a hash is wanted.
const IN_FOLDER: &str = "$file:";

/// Some editors put it in front of every text.
const BYTE_ORDER_MARK: char = '\u{feff}';

/// Reads commands, one a line, with the numbers of their lines; blank lines do not count.
pub(super) fn read(path: &Path, photos: Option<&Path>) -> Result<Vec<(usize, Sent)>, Unreadable> {
    let text = fs::read_to_string(path).map_err(|error| Unreadable::file(path, &error))?;
    let text = text.strip_prefix(BYTE_ORDER_MARK).unwrap_or(&text);
    let lines = (1..).zip(text.lines()).filter(|(_, line)| !line.trim().is_empty());
    let sent = lines.map(|(number, line)| {
        let problem = |problem: Problem| problem.value("file", path.display()).value("line", number);
        let sent = one(number, line.trim(), photos);
        sent.map(|sent| (number, sent)).map_err(|error| Unreadable::of(problem(*error)))
    });
    sent.collect()
}

/// One command: with an id of its own, or bare; then its id follows from its line, so that the same file does the same once.
fn one(number: usize, line: &str, photos: Option<&Path>) -> Result<Sent, Box<Problem>> {
    let unreadable = |error: serde_json::Error| Box::new(Problem::error(Code::NotOurs).value("detail", error));
    let mut value: Value = serde_json::from_str(line).map_err(unreadable)?;
    name_photos(&mut value, photos)?;
    if value.get("command").is_some() {
        return serde_json::from_value(value).map_err(unreadable);
    }
    let mut bytes = [0; 16];
    bytes.copy_from_slice(&Hash::of(line.as_bytes()).bytes()[..16]);
    let id = Id::derived(Id::from_bytes(bytes), "line", number as u64);
    Ok(Sent { id, command: serde_json::from_value(value).map_err(unreadable)? })
}

/// Puts the hash of its bytes wherever a photo is named by its file.
fn name_photos(value: &mut Value, photos: Option<&Path>) -> Result<(), Box<Problem>> {
    match value {
        Value::Object(members) => {
            for (name, member) in members {
                match member.as_str().and_then(|text| text.strip_prefix(IN_FOLDER)).filter(|_| name == "blob") {
                    Some(file) => *member = Value::String(hash_of(file, photos)?.to_string()),
                    None => name_photos(member, photos)?,
                }
            }
            Ok(())
        }
        Value::Array(values) => values.iter_mut().try_for_each(|value| name_photos(value, photos)),
        _ => Ok(()),
    }
}

fn hash_of(file: &str, photos: Option<&Path>) -> Result<Hash, Box<Problem>> {
    let plain = matches!(Path::new(file).components().collect::<Vec<_>>()[..], [Component::Normal(_)]);
    let bytes = photos.filter(|_| plain).and_then(|folder| fs::read(folder.join(file)).ok());
    bytes.map(|bytes| Hash::of(&bytes)).ok_or_else(|| Box::new(not_there(file)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bare_command_gets_its_id_from_its_line() {
        let line = r#"{"do":"undo","entry":"0102030405060708:1"}"#;
        let id = |number, line: &str| one(number, line, None).unwrap().id;
        assert_eq!(id(1, line), id(1, line));
        assert_ne!(id(1, line), id(2, line));
        assert_ne!(id(1, line), id(1, &line.replace(":1\"", ":2\"")));
    }

    #[test]
    fn a_photo_outside_the_folder_is_not_read() {
        let here = Path::new(env!("CARGO_MANIFEST_DIR"));
        assert!(hash_of("Cargo.toml", Some(here)).is_ok());
        for file in ["../Cargo.toml", "/etc/passwd", "src/lib.rs", "none.jpg", ""] {
            assert_eq!(hash_of(file, Some(here)).unwrap_err().code, Code::BlobMissing, "{file}");
        }
        assert!(hash_of("Cargo.toml", None).is_err());
    }
}
