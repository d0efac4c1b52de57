//! Finding as one types: over tag, name, numbers, notes and place; one wrong, missing, extra or swapped letter still finds.
//!
//! Words are kept once, each with the records that hold it. A keystroke looks through the words (some thousands), never
//! through the parts.

use std::collections::{BTreeMap, BTreeSet, HashMap};

use super::view::{Found, FoundIn};
use super::whole::Job;
use crate::record::{FieldName, Id, Item, Kind};

/// Words of this many letters and more may be misspelt by one.
const MISSPELT_FROM: usize = 3;

/// Which words stand in which records.
#[derive(Debug, Clone, Default)]
pub(super) struct FindIndex {
    words: BTreeMap<String, Vec<Posting>>,
    of: HashMap<Id, Vec<String>>,
}

/// A word in a record.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Posting {
    id: Id,
    within: FoundIn,
}

/// How well a word answers what was typed; smaller is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Fit {
    Whole,
    Beginning,
    MisspeltWhole,
    MisspeltBeginning,
}

impl FindIndex {
    /// Puts the words of a record in the place of those it had.
    pub(super) fn replace(&mut self, id: Id, kind: Option<Kind>, item: &Item) {
        for word in self.of.remove(&id).unwrap_or_default() {
            if let Some(postings) = self.words.get_mut(&word) {
                postings.retain(|posting| posting.id != id);
                if postings.is_empty() {
                    self.words.remove(&word);
                }
            }
        }
        let mut words = Vec::new();
        for (within, text) in texts(kind, item) {
            let bare = (within == FoundIn::Tag).then(|| text.trim_start_matches('0').to_owned());
            for word in words_of(&text).into_iter().map(|(word, _)| word).chain(bare.filter(|bare| *bare != text)) {
                self.words.entry(word.clone()).or_default().push(Posting { id, within });
                words.push(word);
            }
        }
        if !words.is_empty() {
            self.of.insert(id, words);
        }
    }

    /// The records that hold a word like the one typed, with how well it fits and in what it stands.
    fn look_up(&self, typed: &str) -> HashMap<Id, (Fit, FoundIn)> {
        let letters: Vec<char> = typed.chars().collect();
        let mut best: HashMap<Id, (Fit, FoundIn)> = HashMap::new();
        for (word, postings) in &self.words {
            let Some(fit) = fit(&letters, typed, word) else { continue };
            for posting in postings {
                let found = (fit, posting.within);
                best.entry(posting.id).and_modify(|known| *known = (*known).min(found)).or_insert(found);
            }
        }
        best
    }
}

/// The texts of a record that are searched.
fn texts(kind: Option<Kind>, item: &Item) -> Vec<(FoundIn, String)> {
    let text = |field| item.read::<String>(field);
    let fields: &[(FoundIn, FieldName)] = match kind {
        Some(Kind::Part) => &[
            (FoundIn::Name, FieldName::Name),
            (FoundIn::Number, FieldName::MakersNumber),
            (FoundIn::Number, FieldName::CastingNumber),
            (FoundIn::Note, FieldName::Remark),
            (FoundIn::Note, FieldName::Tried),
        ],
        Some(Kind::Note) => &[(FoundIn::Note, FieldName::Text)],
        Some(Kind::Place) => &[(FoundIn::Place, FieldName::Name)],
        _ => &[],
    };
    let mut texts: Vec<(FoundIn, String)> =
        fields.iter().filter_map(|(within, field)| Some((*within, text(*field)?))).collect();
    if kind == Some(Kind::Part) {
        texts.extend(item.read::<i64>(FieldName::Tag).map(|tag| (FoundIn::Tag, tag_text(tag))));
    }
    texts
}

/// A tag as it is written: four figures at least.
#[must_use]
pub fn tag_text(tag: i64) -> String {
    format!("{tag:04}")
}

/// The words of a text, folded, each with where it stands in the text (bytes).
fn words_of(text: &str) -> Vec<(String, std::ops::Range<usize>)> {
    let mut words = Vec::new();
    let mut start = None;
    for (at, character) in text.char_indices().chain([(text.len(), ' ')]) {
        if character.is_alphanumeric() {
            start.get_or_insert(at);
        } else if let Some(from) = start.take() {
            words.push((folded(&text[from..at]), from..at));
        }
    }
    words
}

/// Lower case without the accents of Latin letters.
fn folded(word: &str) -> String {
    word.chars().flat_map(char::to_lowercase).map(without_accent).collect()
}

const fn without_accent(letter: char) -> char {
    match letter {
        'à'..='å' => 'a',
        'ç' => 'c',
        'è'..='ë' => 'e',
        'ì'..='ï' => 'i',
        'ñ' => 'n',
        'ò'..='ö' | 'ø' => 'o',
        'ù'..='ü' => 'u',
        'ý' | 'ÿ' => 'y',
        other => other,
    }
}

/// How well a word answers what was typed; nothing when it does not.
fn fit(letters: &[char], typed: &str, word: &str) -> Option<Fit> {
    if word.starts_with(typed) {
        return Some(if word.len() == typed.len() { Fit::Whole } else { Fit::Beginning });
    }
    if letters.len() < MISSPELT_FROM {
        return None;
    }
    misspelt(letters, word)
}

/// Whether what was typed is, but for one letter, the word or its beginning. A letter may be wrong, missing, too much, or
/// swapped with the next (optimal string alignment distance of one).
fn misspelt(typed: &[char], word: &str) -> Option<Fit> {
    // Nothing in the word beyond this can matter.
    let mut letters = ['\0'; 64];
    let mut length = 0;
    for letter in word.chars().take((typed.len() + 2).min(letters.len())) {
        letters[length] = letter;
        length += 1;
    }
    let word = &letters[..length];
    let same = typed.iter().zip(word).take_while(|(a, b)| a == b).count();
    let (typed, word) = (&typed[same..], &word[same..]);
    let mut skips = vec![(1, 1), (0, 1), (1, 0)];
    if swapped(typed, word) {
        skips.push((2, 2));
    }
    let rests = skips.into_iter().filter_map(|(typing, reading)| Some((typed.get(typing..)?, word.get(reading..)?)));
    rests.filter(|(typed, word)| word.starts_with(typed)).map(|(typed, word)| misspelt_by(typed, word)).min()
}

const fn misspelt_by(typed: &[char], word: &[char]) -> Fit {
    if typed.len() == word.len() { Fit::MisspeltWhole } else { Fit::MisspeltBeginning }
}

fn swapped(typed: &[char], word: &[char]) -> bool {
    matches!((typed, word), ([a, b, ..], [c, d, ..]) if a == d && b == c)
}

impl Job {
    /// The parts that answer what was typed, best first, then by tag: every word typed must be found, in any of the texts.
    #[must_use]
    pub fn find_parts(&self, typed: &str) -> Vec<Id> {
        let mut found: Option<HashMap<Id, Vec<(Fit, FoundIn)>>> = None;
        for (word, _) in words_of(typed) {
            let hits = self.parts_of_hits(self.find_index().look_up(&word));
            found = Some(match found {
                None => hits.into_iter().map(|(part, hit)| (part, vec![hit])).collect(),
                Some(known) => meet(known, &hits),
            });
        }
        let Some(found) = found else { return Vec::new() };
        let mut found: Vec<_> = found
            .into_iter()
            .map(|(part, mut hits)| {
                hits.sort_unstable_by(|a, b| b.cmp(a));
                let tag = self.item(part).and_then(|item| item.read::<i64>(FieldName::Tag));
                (hits, tag.unwrap_or(i64::MAX), part)
            })
            .collect();
        found.sort_unstable();
        found.into_iter().map(|(_, _, part)| part).collect()
    }

    /// From records that hold a word to the parts they belong to: a note to its part, a place to all that lies in it.
    fn parts_of_hits(&self, hits: HashMap<Id, (Fit, FoundIn)>) -> HashMap<Id, (Fit, FoundIn)> {
        let mut parts: HashMap<Id, (Fit, FoundIn)> = HashMap::with_capacity(hits.len());
        let mut put = |part: Id, hit: (Fit, FoundIn)| {
            parts.entry(part).and_modify(|known| *known = (*known).min(hit)).or_insert(hit);
        };
        let mut places = Vec::new();
        for (id, hit) in hits {
            match self.kind(id) {
                Some(Kind::Part) => put(id, hit),
                Some(Kind::Note) if !self.is_struck(id) => {
                    let part = self.item(id).and_then(|item| item.read::<Id>(FieldName::Of));
                    if let Some(part) = part.filter(|part| self.kind(*part) == Some(Kind::Part)) {
                        put(part, hit);
                    }
                }
                Some(Kind::Place) => places.push((hit, id)),
                _ => {}
            }
        }
        self.places_of_hits(places, |place, hit| {
            let lying = self.pointing(FieldName::Place, place);
            lying.filter(|part| self.kind(*part) == Some(Kind::Part)).for_each(|part| put(part, hit));
        });
        parts
    }

    /// Every place in which something was found, and all places within it, once each under its best hit.
    fn places_of_hits(&self, mut hits: Vec<((Fit, FoundIn), Id)>, mut tell: impl FnMut(Id, (Fit, FoundIn))) {
        hits.sort_unstable();
        let mut told = BTreeSet::new();
        for (hit, place) in hits {
            let mut waiting = vec![place];
            while let Some(place) = waiting.pop() {
                if told.insert(place) {
                    tell(place, hit);
                    waiting.extend(self.children(Kind::Place, FieldName::Within, place));
                }
            }
        }
    }

    /// Where in the texts of a part the words typed stand.
    pub(super) fn found_in(&self, part: Id, typed: &str) -> Vec<Found> {
        let mut texts: Vec<(FoundIn, String)> =
            self.item(part).map(|item| texts(Some(Kind::Part), item)).unwrap_or_default();
        for note in self.children(Kind::Note, FieldName::Of, part) {
            texts.extend(self.item(note).and_then(|item| item.read(FieldName::Text)).map(|text| (FoundIn::Note, text)));
        }
        if let Some(place) = self.item(part).and_then(|item| item.read::<Id>(FieldName::Place)) {
            texts.extend(self.place_path(place).into_iter().map(|name| (FoundIn::Place, name)));
        }
        let typed: Vec<(String, Vec<char>)> =
            words_of(typed).into_iter().map(|(word, _)| (word.clone(), word.chars().collect())).collect();
        texts.iter().flat_map(|(within, text)| found_in_text(*within, text, &typed)).collect()
    }
}

fn found_in_text(within: FoundIn, text: &str, typed: &[(String, Vec<char>)]) -> Vec<Found> {
    let mut found = Vec::new();
    for (word, range) in words_of(text) {
        // A tag is found without its leading noughts too, and shown where its own figures begin.
        let noughts = if within == FoundIn::Tag { word.len() - word.trim_start_matches('0').len() } else { 0 };
        let hits = typed.iter().flat_map(|(whole, letters)| {
            let begins = [Some(0), (noughts > 0).then_some(noughts)];
            begins
                .into_iter()
                .flatten()
                .filter_map(|skipped| Some((fit(letters, whole, &word[skipped..])?, letters.len(), skipped)))
        });
        let Some((_, length, skipped)) = hits.min() else { continue };
        let range = range.start + skipped..range.end;
        let from = text[..range.start].encode_utf16().count();
        let shown = text[range].chars().take(length).map(char::len_utf16).sum::<usize>();
        found.push(Found { within, text: text.to_owned(), from, to: from + shown });
    }
    found
}

/// Parts that are among both, with all their hits.
fn meet(
    known: HashMap<Id, Vec<(Fit, FoundIn)>>,
    hits: &HashMap<Id, (Fit, FoundIn)>,
) -> HashMap<Id, Vec<(Fit, FoundIn)>> {
    let both = known.into_iter().filter_map(|(part, mut known)| {
        known.push(*hits.get(&part)?);
        Some((part, known))
    });
    both.collect()
}

#[cfg(test)]
mod tests {
    use super::{Fit, fit, words_of};

    fn fit_of(typed: &str, word: &str) -> Option<Fit> {
        fit(&typed.chars().collect::<Vec<_>>(), typed, word)
    }

    #[test]
    fn one_letter_wrong_missing_extra_or_swapped_still_fits() {
        for typed in ["bearing", "bexring", "bearng", "bearring", "baering"] {
            assert!(fit_of(typed, "bearing").is_some(), "{typed}");
        }
        for typed in ["bex", "baer", "beari"] {
            assert!(fit_of(typed, "bearing").is_some(), "{typed}");
        }
        assert_eq!(fit_of("baernig", "bearing"), None);
        assert_eq!(fit_of("be", "stub"), None);
    }

    #[test]
    fn a_better_fit_sorts_first() {
        assert!(fit_of("bear", "bear") < fit_of("bear", "bearing"));
        assert!(fit_of("bear", "bearing") < fit_of("baer", "bearing"));
    }

    #[test]
    fn words_are_folded_and_placed() {
        assert_eq!(words_of("Écrou M8"), vec![("ecrou".to_owned(), 0..6), ("m8".to_owned(), 7..9)]);
    }
}
