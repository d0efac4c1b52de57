//! Finding as one types: over tag, name, numbers, notes and place; one wrong, missing, extra or swapped letter still finds.
//!
//! Words are kept once, each with the records that hold it. A keystroke looks through the words (some thousands) and then
//! once along the parts: what it finds is sorted by id and met, since a look-up for each costs far more.

use std::collections::{BTreeMap, BTreeSet, HashMap};

use super::view::{Found, FoundIn};
use super::whole::{Job, PartKey};
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
    holder: Holder,
    within: FoundIn,
}

/// What holds a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Holder {
    Part,
    Note,
    Place,
}

/// A record that was found, and how well; smaller is better.
type Hit = (Id, Rank);
/// How well one word is answered, and in what it stands.
type Rank = u8;
/// The ranks of all words typed, the worst first.
type Ranks = u128;

/// Words typed beyond this many still must be found, and no longer tell in which order.
const RANKED_WORDS: usize = size_of::<Ranks>();

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
        let holder = match kind {
            Some(Kind::Part) => Holder::Part,
            Some(Kind::Note) => Holder::Note,
            Some(Kind::Place) => Holder::Place,
            _ => return,
        };
        let mut words = Vec::new();
        for (within, text) in texts(kind, item) {
            let bare = (within == FoundIn::Tag).then(|| text.trim_start_matches('0').to_owned());
            for word in words_of(&text).into_iter().map(|(word, _)| word).chain(bare.filter(|bare| *bare != text)) {
                self.words.entry(word.clone()).or_default().push(Posting { id, holder, within });
                words.push(word);
            }
        }
        if !words.is_empty() {
            self.of.insert(id, words);
        }
    }

    /// The records that hold a word like the one typed, each with how well it fits and in what it stands.
    fn look_up(&self, typed: &str) -> impl Iterator<Item = (&Posting, Rank)> {
        let typed = Typed::new(typed);
        let hits = self.words.iter().filter_map(move |(word, postings)| Some((typed.fit(word)?, postings)));
        hits.flat_map(|(fit, postings)| postings.iter().map(move |posting| (posting, rank(fit, posting.within))))
    }
}

const fn rank(fit: Fit, within: FoundIn) -> Rank {
    ((fit as u8) << 4) | within as u8
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

/// A word as it was typed.
struct Typed<'a> {
    text: &'a str,
    letters: Vec<char>,
}

impl<'a> Typed<'a> {
    fn new(text: &'a str) -> Self {
        Self { text, letters: text.chars().collect() }
    }

    /// How well a word answers what was typed; nothing when it does not.
    fn fit(&self, word: &str) -> Option<Fit> {
        if word.starts_with(self.text) {
            return Some(if word.len() == self.text.len() { Fit::Whole } else { Fit::Beginning });
        }
        if self.letters.len() < MISSPELT_FROM {
            return None;
        }
        // Nearly all words are plain letters and figures, which need not be taken apart.
        if self.letters.len() == self.text.len() && word.is_ascii() {
            return misspelt(self.text.as_bytes(), word.as_bytes());
        }
        misspelt(&self.letters, &word.chars().collect::<Vec<_>>())
    }
}

/// Whether what was typed is, but for one letter, the word or its beginning. A letter may be wrong, missing, too much, or
/// swapped with the next (optimal string alignment distance of one).
fn misspelt<T: PartialEq>(typed: &[T], word: &[T]) -> Option<Fit> {
    let same = typed.iter().zip(word).take_while(|(a, b)| a == b).count();
    let (typed, word) = (&typed[same..], &word[same..]);
    // Nearly all words end here: none of the four ways can begin.
    if matches!((typed, word), ([a, b, ..], [c, d, ..]) if b != d && a != d && b != c) {
        return None;
    }
    let fit = |typing: usize, reading: usize| -> Option<Fit> {
        let (typed, word) = (typed.get(typing..)?, word.get(reading..)?);
        let by = if typed.len() == word.len() { Fit::MisspeltWhole } else { Fit::MisspeltBeginning };
        word.starts_with(typed).then_some(by)
    };
    let swapped = if swapped(typed, word) { fit(2, 2) } else { None };
    [fit(1, 1), fit(0, 1), fit(1, 0), swapped].into_iter().flatten().min()
}

/// Whether two words are the same but for one letter.
pub(super) fn is_misspelt(one: &str, other: &str) -> bool {
    let [one, other]: [Vec<char>; 2] = [one, other].map(|word| word.chars().collect());
    misspelt(&one, &other) == Some(Fit::MisspeltWhole)
}

fn swapped<T: PartialEq>(typed: &[T], word: &[T]) -> bool {
    matches!((typed, word), ([a, b, ..], [c, d, ..]) if a == d && b == c)
}

impl Job {
    /// The parts that answer what was typed, best first, then by tag: every word typed must be found, in any of the texts.
    #[must_use]
    pub fn find_parts(&self, typed: &str) -> Vec<Id> {
        self.keys_of_found(typed).into_iter().map(|(part, _)| part).collect()
    }

    /// The same with what a list needs to know of each.
    pub(super) fn keys_of_found(&self, typed: &str) -> Vec<(Id, &PartKey)> {
        let mut found: Option<Vec<(Id, Ranks)>> = None;
        for (number, (word, _)) in words_of(typed).into_iter().enumerate() {
            let hits = self.part_hits(&word);
            found = Some(match found {
                None => hits.into_iter().map(|(part, rank)| (part, Ranks::from(rank))).collect(),
                Some(known) => met(&known, &hits, |ranks, rank| (*ranks, *rank))
                    .map(|(part, (ranks, rank))| {
                        (part, if number < RANKED_WORDS { ranks << 8 | Ranks::from(rank) } else { ranks })
                    })
                    .collect(),
            });
        }
        let found = found.unwrap_or_default();
        let keyed = met_with_keys(&found, self.part_keys());
        let mut keyed: Vec<_> =
            keyed.map(|(part, ranks, key)| ((worst_first(ranks), key.tag.unwrap_or(i64::MAX), part), key)).collect();
        keyed.sort_unstable_by_key(|(order, _)| *order);
        keyed.into_iter().map(|((_, _, part), key)| (part, key)).collect()
    }

    /// The parts that hold a word like the one typed, in order of id, each with its best rank. A note stands for its part,
    /// a place for all that lies in it.
    fn part_hits(&self, word: &str) -> Vec<Hit> {
        let mut hits: Vec<Hit> = Vec::new();
        let mut places = Vec::new();
        for (posting, rank) in self.find_index().look_up(word) {
            match posting.holder {
                Holder::Part => hits.push((posting.id, rank)),
                Holder::Note if !self.is_struck(posting.id) => {
                    let part = self.item(posting.id).and_then(|item| item.read::<Id>(FieldName::Of));
                    hits.extend(part.map(|part| (part, rank)));
                }
                Holder::Note => {}
                Holder::Place => places.push((rank, posting.id)),
            }
        }
        self.places_of_hits(places, |place, rank| {
            hits.extend(self.pointing(FieldName::Place, place).map(|part| (part, rank)));
        });
        hits.sort_unstable();
        hits.dedup_by_key(|(part, _)| *part);
        hits
    }

    /// Every place in which something was found, and all places within it, once each under its best hit.
    fn places_of_hits(&self, mut hits: Vec<(Rank, Id)>, mut tell: impl FnMut(Id, Rank)) {
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
        let words = words_of(typed);
        let typed: Vec<Typed> = words.iter().map(|(word, _)| Typed::new(word)).collect();
        texts.iter().flat_map(|(within, text)| found_in_text(*within, text, &typed)).collect()
    }
}

fn found_in_text(within: FoundIn, text: &str, typed: &[Typed]) -> Vec<Found> {
    let mut found = Vec::new();
    for (word, range) in words_of(text) {
        // A tag is found without its leading noughts too, and shown where its own figures begin.
        let noughts = if within == FoundIn::Tag { word.len() - word.trim_start_matches('0').len() } else { 0 };
        let hits = typed.iter().flat_map(|typed| {
            let begins = [Some(0), (noughts > 0).then_some(noughts)];
            begins
                .into_iter()
                .flatten()
                .filter_map(|skipped| Some((typed.fit(&word[skipped..])?, typed.letters.len(), skipped)))
        });
        let Some((_, length, skipped)) = hits.min() else { continue };
        let range = range.start + skipped..range.end;
        let from = text[..range.start].encode_utf16().count();
        let shown = text[range].chars().take(length).map(char::len_utf16).sum::<usize>();
        found.push(Found { within, text: text.to_owned(), from, to: from + shown });
    }
    found
}

/// Those that are among both; each list in order of id, once each.
fn met<'a, A, B, C>(
    one: &'a [(Id, A)],
    other: &'a [(Id, B)],
    both: impl Fn(&A, &B) -> C + 'a,
) -> impl Iterator<Item = (Id, C)> + 'a {
    let mut other = other.iter().peekable();
    one.iter().filter_map(move |(id, left)| {
        while other.next_if(|(its, _)| its < id).is_some() {}
        let (_, right) = other.next_if(|(its, _)| its == id)?;
        Some((*id, both(left, right)))
    })
}

/// The parts among those found, with what is known of them.
fn met_with_keys<'keys>(
    found: &[(Id, Ranks)],
    keys: &'keys BTreeMap<Id, PartKey>,
) -> impl Iterator<Item = (Id, Ranks, &'keys PartKey)> {
    let mut keys = keys.iter().peekable();
    found.iter().filter_map(move |(id, ranks)| {
        while keys.next_if(|(its, _)| *its < id).is_some() {}
        let (_, key) = keys.next_if(|(its, _)| *its == id)?;
        Some((*id, *ranks, key))
    })
}

/// Ranks sorted so that the worst counts most.
fn worst_first(ranks: Ranks) -> Ranks {
    let mut bytes = ranks.to_be_bytes();
    bytes.sort_unstable_by(|a, b| b.cmp(a));
    Ranks::from_be_bytes(bytes)
}

#[cfg(test)]
mod tests {
    use super::{Fit, Typed, words_of};

    fn fit_of(typed: &str, word: &str) -> Option<Fit> {
        Typed::new(typed).fit(word)
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
