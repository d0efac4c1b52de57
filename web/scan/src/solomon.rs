//! Reed and Solomon over 256 elements, as ISO/IEC 18004 has it: roots from α⁰ on, modulo x⁸ + x⁴ + x³ + x² + 1.

/// Codewords that correct, of version 1 at level Q.
pub(crate) const PARITY: usize = 13;
pub(crate) const ALL: usize = 26;

const fn tables() -> ([u8; 512], [u8; 256]) {
    let (mut power, mut log) = ([0; 512], [0; 256]);
    let (mut value, mut at) = (1_usize, 0);
    while at < 255 {
        power[at] = value as u8;
        power[at + 255] = value as u8;
        log[value] = at as u8;
        value <<= 1;
        if value > 255 {
            value ^= 0x11d;
        }
        at += 1;
    }
    (power, log)
}

const TABLES: ([u8; 512], [u8; 256]) = tables();

fn alpha(power: usize) -> u8 {
    TABLES.0[power % 255]
}

fn times(a: u8, b: u8) -> u8 {
    if a == 0 || b == 0 {
        return 0;
    }
    TABLES.0[usize::from(TABLES.1[usize::from(a)]) + usize::from(TABLES.1[usize::from(b)])]
}

fn over(a: u8, b: u8) -> u8 {
    if a == 0 {
        0
    } else {
        TABLES.0[255 + usize::from(TABLES.1[usize::from(a)]) - usize::from(TABLES.1[usize::from(b)])]
    }
}

fn value(polynomial: &[u8], at: u8) -> u8 {
    polynomial.iter().rev().fold(0, |sum, one| times(sum, at) ^ one)
}

fn syndromes(words: &[u8; ALL]) -> [u8; PARITY] {
    std::array::from_fn(|root| words.iter().fold(0, |sum, word| times(sum, alpha(root)) ^ word))
}

/// The codewords put right, when that can be done; `erased` are the places that are not trusted.
pub(crate) fn corrected(words: &[u8; ALL], erased: &[usize]) -> Option<[u8; ALL]> {
    let syndromes = syndromes(words);
    if syndromes.iter().all(|one| *one == 0) {
        return Some(*words);
    }
    if erased.len() > PARITY {
        return None;
    }
    let place = |index: usize| ALL - 1 - index;
    // The locator begins with the erasures, and is completed by Berlekamp and Massey.
    let mut locator = vec![1_u8];
    for index in erased {
        let root = alpha(place(*index));
        let mut longer = locator.clone();
        longer.push(0);
        for (at, one) in locator.iter().enumerate() {
            longer[at + 1] ^= times(*one, root);
        }
        locator = longer;
    }
    let mut before = locator.clone();
    let mut length = erased.len();
    for step in erased.len()..PARITY {
        before.insert(0, 0);
        let off =
            locator.iter().enumerate().take(step + 1).fold(0, |sum, (at, one)| sum ^ times(*one, syndromes[step - at]));
        if off == 0 {
            continue;
        }
        let mut next = locator.clone();
        next.resize(next.len().max(before.len()), 0);
        for (at, one) in before.iter().enumerate() {
            next[at] ^= times(off, *one);
        }
        if 2 * length <= step + erased.len() {
            length = step + 1 + erased.len() - length;
            before = locator.iter().map(|one| over(*one, off)).collect();
        }
        locator = next;
    }
    while locator.last() == Some(&0) {
        locator.pop();
    }
    let wrong = locator.len() - 1;
    if 2 * wrong > PARITY + erased.len() {
        return None;
    }
    let places: Vec<usize> = (0..ALL).filter(|index| value(&locator, alpha(255 - place(*index))) == 0).collect();
    if places.len() != wrong {
        return None;
    }
    // How much each is off, by Forney.
    let evaluator: Vec<u8> = (0..PARITY)
        .map(|at| (0..=at.min(wrong)).fold(0, |sum, by| sum ^ times(locator[by], syndromes[at - by])))
        .collect();
    let mut right = *words;
    for index in places {
        let inverse = alpha(255 - place(index));
        let slope = locator
            .iter()
            .enumerate()
            .skip(1)
            .step_by(2)
            .fold(0, |sum, (at, one)| sum ^ times(*one, alpha((255 - place(index)) * (at - 1))));
        if slope == 0 {
            return None;
        }
        right[index] ^= times(alpha(place(index)), over(value(&evaluator, inverse), slope));
    }
    syndromes_are_none(&right).then_some(right)
}

fn syndromes_are_none(words: &[u8; ALL]) -> bool {
    syndromes(words).iter().all(|one| *one == 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// HELLO WORLD at 1-Q: data as a page that explains QR has it, correction as a Python library (qrcode 8.2) does.
    const WORDS: [u8; ALL] = [
        0x20, 0x5B, 0x0B, 0x78, 0xD1, 0x72, 0xDC, 0x4D, 0x43, 0x40, 0xEC, 0x11, 0xEC, 168, 72, 22, 82, 217, 54, 156, 0,
        46, 15, 180, 122, 16,
    ];

    #[test]
    fn as_many_errors_and_erasures_as_promised_are_put_right() {
        let mut state = 7_u32;
        let mut next = |most: usize| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 8) as usize % most
        };
        for erasures in 0..=PARITY {
            for errors in 0..=(PARITY - erasures) / 2 {
                for _ in 0..20 {
                    let mut places: Vec<usize> = (0..ALL).collect();
                    for at in (1..ALL).rev() {
                        places.swap(at, next(at + 1));
                    }
                    let mut spoilt = WORDS;
                    for place in &places[..erasures + errors] {
                        spoilt[*place] ^= 1 + next(255) as u8;
                    }
                    assert_eq!(
                        corrected(&spoilt, &places[..erasures]),
                        Some(WORDS),
                        "{erasures} erased, {errors} wrong"
                    );
                }
            }
        }
    }

    #[test]
    fn one_error_too_many_is_not_made_right_unseen() {
        let mut spoilt = WORDS;
        for word in &mut spoilt[..7] {
            *word ^= 0x55;
        }
        assert_eq!(corrected(&spoilt, &[]), None);
    }
}
