use std::sync::LazyLock;

use super::families::{Family, family};
use super::names::{NAMES, names_of};

/// A name in its words.
type Name = Vec<String>;

/// Each name of each family, taken apart once.
static IN_WORDS: LazyLock<Vec<(&Family, Vec<Name>)>> = LazyLock::new(|| {
    let in_words = |names: &str| names_of(names).map(words_of).collect();
    NAMES.iter().filter_map(|(code, names)| Some((family(code)?, in_words(names)))).collect()
});

/// The families that a part may be of by its name as typed, likeliest first, at most three.
///
/// In English the thing itself is named last ("brake drum bolt" is a bolt): what ends latest in the name comes first, then
/// what has more words in common. What follows a comma, a bracket or "for" says more about it, not what it is.
///
/// ```
/// use asfound_core::tables::propose;
/// let first = |name: &str| propose(name).first().map(|family| family.code);
/// assert_eq!(first("o/s f wheel bearing"), Some("rolling-bearing"));
/// assert_eq!(first("Brake drums, rear"), Some("brake-drum"));
/// assert_eq!(first("brake drum bolt"), Some("fastener"));
/// assert_eq!(first("thing"), None);
/// ```
#[must_use]
pub fn propose(name: &str) -> Vec<&'static Family> {
    let words = words_of(name);
    let mut fits: Vec<(usize, usize, &Family)> =
        IN_WORDS.iter().filter_map(|(family, names)| fit(family, names, &words)).collect();
    fits.sort_by(|a, b| (b.0, b.1).cmp(&(a.0, a.1)).then_with(|| a.2.code.cmp(b.2.code)));
    fits.into_iter().take(3).map(|(_, _, family)| family).collect()
}

/// The words of a name in small letters and singular, up to what only says more about it.
#[must_use]
pub fn words_of(name: &str) -> Vec<String> {
    let name = name.to_lowercase();
    let thing = name.split([',', '(', ';', ':']).find(|piece| piece.chars().any(char::is_alphanumeric)).unwrap_or("");
    let words = thing.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty());
    words.take_while(|word| *word != "for" && *word != "from").map(singular).collect()
}

fn singular(word: &str) -> String {
    let irregular = [("bushes", "bush"), ("boxes", "box"), ("discs", "disc"), ("assemblies", "assembly")];
    if let Some((_, one)) = irregular.iter().find(|(many, _)| *many == word) {
        return (*one).to_owned();
    }
    let kept = word.len() <= 3 || word.ends_with("ss") || word.ends_with("us") || word.ends_with("is");
    if kept { word.to_owned() } else { word.strip_suffix('s').unwrap_or(word).to_owned() }
}

/// Where in the name the best of a family's names ends, and how many words it has.
fn fit<'a>(family: &'a Family, names: &[Name], words: &[String]) -> Option<(usize, usize, &'a Family)> {
    let ends = names.iter().filter_map(|name| ends_at(name, words));
    ends.max().map(|(end, length)| (end, length, family))
}

/// Where these words end among others, at the latest, and how many they are.
fn ends_at(sought: &[String], words: &[String]) -> Option<(usize, usize)> {
    if sought.is_empty() {
        return None;
    }
    let at = words.windows(sought.len()).rposition(|window| window == sought)?;
    Some((at + sought.len(), sought.len()))
}
