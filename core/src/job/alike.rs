use super::whole::Job;
use crate::record::Id;

impl Job {
    /// Parts of the same name but for the words for a side, in order of id, struck-out ones too.
    pub(crate) fn alike(&self, bare_name: &str) -> impl Iterator<Item = Id> {
        self.alike_index().get(bare_name).into_iter().flatten().copied()
    }
}

/// A name in small letters without the words for a side.
pub(crate) fn bare_name(name: &str) -> String {
    let name = name.to_lowercase();
    let words = name.split(|letter: char| !letter.is_alphanumeric() && letter != '/').filter(|word| !word.is_empty());
    let sides = ["left", "right", "lh", "rh", "l/h", "r/h", "n/s", "o/s", "ns", "os", "nearside", "offside"];
    words.filter(|word| !sides.contains(word)).collect::<Vec<_>>().join(" ")
}
