//! What a pasted list says is in a kit, matched to the parts of the job: by number, else by name. Proposed, never written.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::alike::bare_name;
use super::find::is_misspelt;
use super::vocabulary::Side;
use super::whole::Job;
use crate::quantity::bounds;
use crate::record::{FieldName, Id, Kind, in_order};

/// More lines are not looked at.
const MOST_LINES: usize = 500;
/// As many other parts are offered for a line.
const OFFERED: usize = 5;
/// From here on names are like enough to be proposed, in thousandths.
const LIKE: u32 = 500;
/// From here on, to be proposed as sure.
const SURE: u32 = 800;

/// One line of what is in a kit.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ContentsLine {
    /// The number of the part; empty where none is said.
    pub number: String,
    /// Its name; empty where none is said.
    pub name: String,
    /// How many pieces; left out where it is not said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub quantity: Option<i64>,
}

/// What a list is taken to mean.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ContentsView {
    /// In order of the lines; one line may be for several parts, left and right.
    pub rows: Vec<ContentsRow>,
}

/// What one line is taken to mean.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ContentsRow {
    /// Which line, counted from 0.
    pub line: usize,
    /// The part that is proposed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub part: Option<Id>,
    /// How many pieces for it.
    pub pieces: i64,
    /// By what it was found.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<FoundBy>,
    /// Nothing speaks for another part.
    pub sure: bool,
    /// The kit is said to cover that part already.
    pub covered: bool,
    /// Other parts that it may be, the likeliest first.
    pub others: Vec<Id>,
}

/// By what a line was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum FoundBy {
    /// The maker's or casting number.
    Number,
    /// The name.
    Name,
}

/// A name as it is compared.
struct Named {
    words: Vec<String>,
    side: Option<Side>,
}

impl Named {
    fn of(name: &str, side: Option<Side>) -> Self {
        let bare = bare_name(name);
        let words = bare.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !is_filler(word));
        Self { words: words.map(singular).collect(), side: side.or_else(|| side_said(name)) }
    }

    /// How like two names are, in thousandths: twice what their words share, of all their words.
    fn like(&self, other: &Self) -> u32 {
        let sides_differ = self.side.zip(other.side).is_some_and(|(one, other)| one != other);
        if sides_differ || self.words.is_empty() || other.words.is_empty() {
            return 0;
        }
        // Each word is used once, the likest pairs first.
        let mut pairs: Vec<(u32, usize, usize)> = Vec::new();
        for (at, word) in self.words.iter().enumerate() {
            let of_word = other.words.iter().enumerate().map(|(with, other)| (words_like(word, other), at, with));
            pairs.extend(of_word.filter(|(like, ..)| *like > 0));
        }
        let pairs = in_order(pairs, |(like, at, with): &(u32, usize, usize)| (u32::MAX - like, at + with, *at));
        let (mut used, mut with_used) = (vec![false; self.words.len()], vec![false; other.words.len()]);
        let mut sum = 0;
        for (like, at, with) in pairs {
            if !used[at] && !with_used[with] {
                (used[at], with_used[with]) = (true, true);
                sum += like;
            }
        }
        let all = u32::try_from(self.words.len() + other.words.len()).unwrap_or(u32::MAX);
        (2 * sum) / all
    }
}

/// How like two names are, in thousandths; words for a side are left out, and two different sides are not alike at all.
#[must_use]
pub fn names_like(one: &str, other: &str) -> u32 {
    Named::of(one, None).like(&Named::of(other, None))
}

/// A number as it is compared: letters and figures alone, in capitals.
#[must_use]
pub fn bare_number(number: &str) -> String {
    number.chars().filter(|letter| letter.is_alphanumeric()).flat_map(char::to_uppercase).collect()
}

fn is_filler(word: &str) -> bool {
    matches!(word, "" | "the" | "a" | "an" | "of" | "for" | "with" | "and" | "to" | "in" | "off" | "x")
}

fn singular(word: &str) -> String {
    let is_plural = word.len() > 3 && word.ends_with('s') && !word.ends_with("ss") && !word.ends_with("us");
    let stem = if is_plural { &word[..word.len() - 1] } else { word };
    // "bushes" beside "bush", "boxes" beside "box".
    let is_hissed = is_plural && ["she", "che", "xe", "sse"].iter().any(|end| stem.ends_with(end));
    (if is_hissed { &stem[..stem.len() - 1] } else { stem }).to_owned()
}

fn side_said(name: &str) -> Option<Side> {
    let name = name.to_lowercase();
    let mut words = name.split(|letter: char| !letter.is_alphanumeric() && letter != '/');
    words.find_map(|word| match word {
        "left" | "lh" | "l/h" => Some(Side::Left),
        "right" | "rh" | "r/h" => Some(Side::Right),
        _ => None,
    })
}

/// The same word, the beginning of the other, or one letter wrong: what has figures in it must be the same.
fn words_like(one: &str, other: &str) -> u32 {
    if one == other {
        return 1_000;
    }
    let has_figures = |word: &str| word.chars().any(char::is_numeric);
    let shorter = one.chars().count().min(other.chars().count());
    if has_figures(one) || has_figures(other) || shorter < 4 {
        return 0;
    }
    let is_beginning = one.starts_with(other) || other.starts_with(one);
    if is_beginning || (shorter >= 5 && is_misspelt(one, other)) { SURE } else { 0 }
}

/// A part that a line may mean.
#[derive(Clone, Copy)]
struct Candidate {
    like: u32,
    part: Id,
    needed: i64,
}

impl Job {
    /// What a list of what is in a kit is taken to mean.
    #[must_use]
    pub fn contents_view(&self, quote: Id, lines: &[ContentsLine]) -> Option<ContentsView> {
        let kit = self.item_of(Kind::Quote, quote)?;
        let own: Option<Id> = kit.read(FieldName::Of);
        let said = self.children(Kind::Cover, FieldName::Of, quote);
        let covered: BTreeSet<Id> =
            said.filter_map(|cover| self.item(cover)?.read(FieldName::Part)).chain(own).collect();
        let lines = &lines[..lines.len().min(MOST_LINES)];
        let found = self.candidates(lines);
        // Who was found by number goes first, then the likest names.
        let order: Vec<usize> = (0..lines.len()).collect();
        let best = |line: &usize| found[*line].1.first().map_or(0, |candidate| candidate.like);
        let order =
            in_order(order, |line: &usize| (found[*line].0 != Some(FoundBy::Number), u32::MAX - best(line), *line));
        let mut taken: BTreeSet<Id> = BTreeSet::new();
        let mut rows: Vec<Vec<ContentsRow>> = lines.iter().map(|_| Vec::new()).collect();
        for line in order {
            let (by, all) = &found[line];
            let free: Vec<Candidate> = all.iter().filter(|one| !taken.contains(&one.part)).copied().collect();
            let of_line = self.rows_of(line, &lines[line], *by, &free, &covered);
            taken.extend(of_line.iter().filter_map(|row| row.part));
            rows[line] = of_line;
        }
        Some(ContentsView { rows: rows.into_iter().flatten().collect() })
    }

    /// For each line the parts it may mean, the likeliest first.
    fn candidates(&self, lines: &[ContentsLine]) -> Vec<(Option<FoundBy>, Vec<Candidate>)> {
        let mut numbers: BTreeMap<String, BTreeSet<Id>> = BTreeMap::new();
        let parts: Vec<Id> = self.standing_ids(Kind::Part).collect();
        let mut names: Vec<Named> = Vec::with_capacity(parts.len());
        // Words are looked up by their first two letters: what is misspelt is seldom so at once.
        let mut begins: BTreeMap<String, BTreeSet<Id>> = BTreeMap::new();
        let begin = |word: &str| word.chars().take(2).collect::<String>();
        for part in parts.iter().copied() {
            let item = self.item(part);
            for field in [FieldName::MakersNumber, FieldName::CastingNumber] {
                let number: Option<String> = item.and_then(|item| item.read(field));
                let number = number.map(|number| bare_number(&number)).unwrap_or_default();
                numbers.entry(number).or_default().insert(part);
            }
            let named = Named::of(&self.name(part), item.and_then(|item| self.side_of_part(item)));
            for word in &named.words {
                begins.entry(begin(word)).or_default().insert(part);
            }
            names.push(named);
        }
        let like = |part: Id, wanted: &Named| parts.binary_search(&part).map_or(0, |at| names[at].like(wanted));
        let candidate = |part: Id, like: u32| {
            let needed = self.item(part).and_then(|item| item.read(FieldName::Quantity)).unwrap_or(1);
            Candidate { like, part, needed: needed.clamp(bounds::PIECES.least, bounds::PIECES.most) }
        };
        let of_line = |line: &ContentsLine| {
            let wanted = Named::of(&line.name, None);
            let number = bare_number(&line.number);
            let by_number = numbers.get(&number).filter(|_| !number.is_empty());
            let all: Vec<Candidate> = match by_number {
                // Of one number the names tell apart, where they do.
                Some(parts) => parts.iter().map(|part| candidate(*part, like(*part, &wanted))).collect(),
                None => {
                    let near: BTreeSet<Id> =
                        wanted.words.iter().filter_map(|word| begins.get(&begin(word))).flatten().copied().collect();
                    let like = near.into_iter().map(|part| candidate(part, like(part, &wanted)));
                    like.filter(|candidate| candidate.like >= LIKE).collect()
                }
            };
            let all = in_order(all, |candidate: &Candidate| (u32::MAX - candidate.like, candidate.part));
            let by = match by_number {
                Some(_) => Some(FoundBy::Number),
                None => (!all.is_empty()).then_some(FoundBy::Name),
            };
            (by, all)
        };
        lines.iter().map(of_line).collect()
    }

    fn rows_of(
        &self,
        line: usize,
        said: &ContentsLine,
        by: Option<FoundBy>,
        free: &[Candidate],
        covered: &BTreeSet<Id>,
    ) -> Vec<ContentsRow> {
        let quantity = said.quantity.map(|quantity| quantity.clamp(bounds::PIECES.least, bounds::PIECES.most));
        let Some(first) = free.first() else {
            let pieces = quantity.unwrap_or(1);
            let by = None;
            return vec![ContentsRow { line, part: None, pieces, by, sure: false, covered: false, others: Vec::new() }];
        };
        // Left and right, or two of one number, are meant together where the line has pieces for them.
        let bare = bare_name(&self.name(first.part));
        let is_equal = |one: &&Candidate| {
            one.like == first.like && (by == Some(FoundBy::Number) || bare_name(&self.name(one.part)) == bare)
        };
        let equal: Vec<Candidate> = free.iter().take_while(is_equal).copied().collect();
        let rivals = free.iter().filter(|one| one.like == first.like).count();
        let mut meant: Vec<(Candidate, i64)> = Vec::new();
        let mut left = quantity.unwrap_or(first.needed);
        for one in &equal {
            if left > 0 {
                let pieces = left.min(one.needed);
                meant.push((*one, pieces));
                left -= pieces;
            }
        }
        if let Some((_, pieces)) = meant.last_mut() {
            *pieces += left;
        }
        let is_like = by == Some(FoundBy::Number) || first.like >= SURE;
        let sure = is_like && meant.len() == rivals;
        let row = |(one, pieces): &(Candidate, i64)| {
            let others = free.iter().map(|other| other.part).filter(|part| *part != one.part).take(OFFERED);
            ContentsRow {
                line,
                part: Some(one.part),
                pieces: *pieces,
                by,
                sure,
                covered: covered.contains(&one.part),
                others: others.collect(),
            }
        };
        meant.iter().map(row).collect()
    }
}
