//! Letters of the one face that every reader of PDF brings along, Helvetica-Bold, in the encoding it brings them in.

/// Widths of the letters from the space to the tilde, in thousandths of the size: the face's own metrics.
const WIDTHS: [u16; 95] = [
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
    556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
    722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
    556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
    280, 389, 584,
];

/// What stands in the encoding (WinAnsi) between Latin letters: from 0x80 on; nothing where there is none.
const BETWEEN: [Option<char>; 32] = [
    Some('€'),
    None,
    Some('‚'),
    Some('ƒ'),
    Some('„'),
    Some('…'),
    Some('†'),
    Some('‡'),
    Some('ˆ'),
    Some('‰'),
    Some('Š'),
    Some('‹'),
    Some('Œ'),
    None,
    Some('Ž'),
    None,
    None,
    Some('\u{2018}'),
    Some('\u{2019}'),
    Some('“'),
    Some('”'),
    Some('•'),
    Some('–'),
    Some('—'),
    Some('˜'),
    Some('™'),
    Some('š'),
    Some('›'),
    Some('œ'),
    None,
    Some('ž'),
    Some('Ÿ'),
];

/// Letters beyond the encoding, each with the one that is printed in its place.
const ALIKE: [(&str, char); 32] = [
    ("ĀĂĄ", 'A'),
    ("āăą", 'a'),
    ("ĆĈĊČ", 'C'),
    ("ćĉċč", 'c'),
    ("ĎĐ", 'D'),
    ("ďđ", 'd'),
    ("ĒĔĖĘĚ", 'E'),
    ("ēĕėęě", 'e'),
    ("ĜĞĠĢ", 'G'),
    ("ĝğġģ", 'g'),
    ("ĤĦ", 'H'),
    ("ĥħ", 'h'),
    ("ĨĪĬĮİ", 'I'),
    ("ĩīĭįı", 'i'),
    ("Ĵ", 'J'),
    ("ĵ", 'j'),
    ("ĹĻĽĿŁ", 'L'),
    ("ĺļľŀł", 'l'),
    ("ŃŅŇ", 'N'),
    ("ńņň", 'n'),
    ("ŌŎŐ", 'O'),
    ("ōŏő", 'o'),
    ("ŔŖŘ", 'R'),
    ("ŕŗř", 'r'),
    ("ŚŜŞȘ", 'S'),
    ("śŝşș", 's'),
    ("ŢŤŦȚ", 'T'),
    ("ţťŧț", 't'),
    ("ŨŪŬŮŰŲ", 'U'),
    ("ũūŭůűų", 'u'),
    ("ŹŻ", 'Z'),
    ("źż", 'z'),
];

/// A letter's byte in the encoding; what is not in it is printed as its like, or as a question mark.
pub(super) fn byte(letter: char) -> u8 {
    known(letter).unwrap_or(b'?')
}

/// Whether all letters can be printed, as they are or as their like.
pub(super) fn can_print(text: &str) -> bool {
    text.chars().all(|letter| known(letter).is_some())
}

fn known(letter: char) -> Option<u8> {
    let latin =
        |letter: char| u8::try_from(u32::from(letter)).ok().filter(|byte| matches!(byte, 0x20..=0x7e | 0xa0..=0xff));
    let between = || BETWEEN.iter().zip(0x80_u8..).find_map(|(one, byte)| (*one == Some(letter)).then_some(byte));
    let alike = || ALIKE.iter().find(|(letters, _)| letters.contains(letter)).and_then(|(_, base)| latin(*base));
    let drawn_as = || match letter {
        '\u{2010}' | '\u{2011}' | '\u{2212}' => Some(b'-'),
        '\u{2007}'..='\u{200a}' | '\u{202f}' | '\t' | '\n' | '\r' => Some(b' '),
        '′' => Some(b'\''),
        '″' => Some(b'"'),
        _ => None,
    };
    latin(letter).or_else(between).or_else(alike).or_else(drawn_as)
}

/// Width of a letter in thousandths of the size. Latin letters with marks are as wide as those without.
fn width_of(letter: char) -> u16 {
    let plain = match letter {
        'À'..='Å' => 'A',
        'Ç' => 'C',
        'È'..='Ë' => 'E',
        'Ì'..='Ï' => 'I',
        'Ñ' | 'Ð' => 'N',
        'Ò'..='Ö' | 'Ø' => 'O',
        'Ù'..='Ü' => 'U',
        'Ý' => 'Y',
        'à'..='å' => 'a',
        'ç' => 'c',
        'è'..='ë' => 'e',
        'ì'..='ï' => 'i',
        'ñ' | 'ò'..='ö' | 'ø' | 'ù'..='ü' | 'ð' | 'þ' | 'ß' => 'n',
        'ý' | 'ÿ' => 'y',
        '·' | '\u{a0}' => ' ',
        'Æ' | 'Œ' | '…' | '—' | '™' | '‰' => return 1_000,
        '¼'..='¾' => return 834,
        'æ' => 'm',
        'œ' => 'W',
        other => other,
    };
    let byte = byte(plain);
    WIDTHS.get(usize::from(byte).wrapping_sub(0x20)).copied().unwrap_or(556)
}

/// How long a text is at a size.
pub(super) fn length(text: &str, size: f64) -> f64 {
    text.chars().map(|letter| f64::from(width_of(letter))).sum::<f64>() * size / 1_000.0
}

/// A text on so many lines of a width at most: broken between words; what is left over is cut with dots. What cannot be
/// printed is a question mark already here: a screen that has the letter would show what the paper will not.
pub(super) fn lines(text: &str, size: f64, width: f64, most: usize) -> Vec<String> {
    let text: String = text
        .chars()
        .map(|letter| if letter.is_whitespace() { letter } else { known(letter).map_or('?', |_| letter) })
        .collect();
    let mut lines: Vec<String> = Vec::new();
    let mut words = text.split_whitespace().peekable();
    while let Some(word) = words.next() {
        let longer = lines.last().map(|line| format!("{line} {word}"));
        match longer {
            Some(longer) if length(&longer, size) <= width => {
                lines.pop();
                lines.push(longer);
            }
            _ if lines.len() < most => lines.push(word.to_owned()),
            _ => {
                let rest: Vec<&str> = std::iter::once(word).chain(words).collect();
                if let Some(last) = lines.last_mut() {
                    *last = format!("{last} {}", rest.join(" "));
                }
                break;
            }
        }
    }
    lines.into_iter().map(|line| cut(line, size, width)).collect()
}

fn cut(line: String, size: f64, width: f64) -> String {
    if length(&line, size) <= width {
        return line;
    }
    let mut letters: Vec<char> = line.chars().collect();
    while letters.pop().is_some() {
        let shorter = format!("{}…", letters.iter().collect::<String>().trim_end());
        if length(&shorter, size) <= width {
            return shorter;
        }
    }
    String::new()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_have_their_bytes() {
        let row = |letters: &str| letters.chars().map(byte).collect::<Vec<u8>>();
        assert_eq!(row("A~é€…œ–"), [0x41, 0x7e, 0xe9, 0x80, 0x85, 0x9c, 0x96]);
        assert_eq!(row("Łożysko čep"), *b"Lo\x7aysko cep");
        assert_eq!(row("ж\u{1f527}\u{7f}?"), *b"????");
        assert_eq!(["Łożysko čep?", "Втулка", "Hub \u{1f527}"].map(can_print), [true, false, false]);
    }

    #[test]
    fn figures_are_as_wide_as_the_face_has_them() {
        assert!((length("0147", 10.0) - 22.24).abs() < 1e-9);
        assert!((length("-X", 10.0) - 10.0).abs() < 1e-9);
    }

    #[test]
    fn names_break_between_words_and_are_cut_at_the_end() {
        assert_eq!(lines("Stub axle", 4.0, 60.0, 2), ["Stub axle"]);
        assert_eq!(lines("Rear suspension bump stop", 4.0, 34.0, 2), ["Rear suspension", "bump stop"]);
        assert_eq!(lines("Rear suspension bump stop bracket plate", 4.0, 30.0, 1), ["Rear suspen…"]);
        assert_eq!(lines("", 4.0, 30.0, 2), Vec::<String>::new());
        assert_eq!(lines("Łożysko, Ось", 4.0, 60.0, 2), ["Łożysko, ???"]);
        assert!(lines("Donaudampfschifffahrtsgesellschaft", 4.0, 30.0, 2)[0].ends_with('…'));
    }
}
