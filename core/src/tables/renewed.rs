//! Fasteners and seals that are renewed whenever they were off (common practice, no source).

/// Names, as words that must all stand in what a piece is called.
const RENEWED: [&[&str]; 21] = [
    &["split", "pin"],
    &["cotter", "pin"],
    &["tab", "washer"],
    &["lock", "plate"],
    &["locking", "plate"],
    &["nylon", "nut"],
    &["self", "locking", "nut"],
    &["crush", "washer"],
    &["crush", "sleeve"],
    &["collapsible", "spacer"],
    &["copper", "washer"],
    &["sealing", "washer"],
    &["lock", "wire"],
    &["locking", "wire"],
    &["stretch", "bolt"],
    &["yield", "bolt"],
    &["gasket"],
    &["o", "ring"],
    &["oring"],
    &["seal"],
    &["grommet", "seal"],
];

/// Whether a piece of this name is renewed unless somebody says otherwise.
///
/// ```
/// use asfound_core::tables::renewed_by_name;
/// assert!(renewed_by_name("Split pin 1/8"));
/// assert!(renewed_by_name("Cotter pins"));
/// assert!(!renewed_by_name("Castle nut"));
/// ```
#[must_use]
pub fn renewed_by_name(name: &str) -> bool {
    let name = name.to_lowercase();
    let words: Vec<&str> = name.split(|letter: char| !letter.is_alphanumeric()).collect();
    let says = |word: &str| words.iter().any(|said| *said == word || said.strip_suffix('s') == Some(word));
    RENEWED.iter().any(|all| all.iter().all(|word| says(word)))
}
