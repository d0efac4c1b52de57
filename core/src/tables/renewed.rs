//! Fasteners and seals that are renewed whenever they were off (common practice, no source).

/// Names as words that stand one after the other in what a piece is called.
const PHRASES: [&[&str]; 22] = [
    &["split", "pin"],
    &["cotter", "pin"],
    &["splitpin"],
    &["tab", "washer"],
    &["tab", "lock"],
    &["lock", "tab"],
    &["lock", "plate"],
    &["locking", "plate"],
    &["crush", "washer"],
    &["crush", "sleeve"],
    &["collapsible", "spacer"],
    &["copper", "washer"],
    &["sealing", "washer"],
    &["lock", "wire"],
    &["lockwire"],
    &["locking", "wire"],
    &["stretch", "bolt"],
    &["torque", "to", "yield"],
    &["o", "ring"],
    &["oring"],
    &["gasket"],
    &["seal"],
];
/// What stands after `seal` or `gasket` where that only says what the piece is for: `Bolt, seal retainer`, `Gasket stud`.
const FOR_A_SEAL: [&str; 12] =
    ["bolt", "screw", "stud", "nut", "retainer", "carrier", "housing", "holder", "plate", "flange", "cover", "spacer"];
/// Words that say with `nut` that its grip is spent: `Nut, self-locking`.
const NUTS: [&str; 2] = ["locking", "nylon"];

/// Whether a piece of this name is renewed unless somebody says otherwise.
///
/// ```
/// use asfound_core::tables::renewed_by_name;
/// assert!(renewed_by_name("Split pin 1/8"));
/// assert!(renewed_by_name("Cotter pins"));
/// assert!(renewed_by_name("Pin, split, 1/8") && renewed_by_name("Washer, copper") && renewed_by_name("Ring, O"));
/// assert!(renewed_by_name("Nut, self-locking"));
/// assert!(renewed_by_name("Head bolt, torque-to-yield"));
/// assert!(renewed_by_name("Gasket, differential cover"));
/// assert!(!renewed_by_name("Bolt, seal retainer"));
/// assert!(!renewed_by_name("Castle nut"));
/// assert!(!renewed_by_name("Thrust washer, tab inwards"));
/// ```
#[must_use]
pub fn renewed_by_name(name: &str) -> bool {
    let name = name.to_lowercase();
    let words = name.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty());
    let words: Vec<&str> = words.collect();
    let is = |said: &str, word: &str| said == word || said.strip_suffix('s') == Some(word);
    let says = |word: &str| words.iter().any(|said| is(said, word));
    let holds = |phrase: &&[&str]| {
        let places = (0..words.len()).filter(|at| words[*at..].len() >= phrase.len());
        let mut found = places.filter(|at| words[*at..].iter().zip(phrase.iter()).all(|(said, word)| is(said, word)));
        found.any(|at| {
            let next = words.get(at + phrase.len());
            !next.is_some_and(|next| FOR_A_SEAL.iter().any(|word| is(next, word)))
        })
    };
    // As lists turn it round: `Pin, split`.
    let turned = |phrase: &&[&str]| matches!((*phrase, &words[..]), ([kind, noun], [first, second, ..]) if is(first, noun) && is(second, kind));
    PHRASES.iter().any(holds) || PHRASES.iter().any(turned) || (says("nut") && NUTS.iter().any(|word| says(word)))
}
