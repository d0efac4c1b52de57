use asfound_core::quantity::Millis;

/// A moment as RFC 3339 writes it: `2026-05-01T09:30:00Z`, `2026-05-01T11:30:00.250+02:00`.
#[must_use]
pub fn moment(text: &str) -> Option<Millis> {
    let (date, time) = text.split_at_checked(10)?;
    let time = time.strip_prefix(['T', 't', ' '])?;
    let [year, month, day] = figures(date, '-', [4, 2, 2])?;
    let (clock, rest) = time.split_at_checked(8)?;
    let [hour, minute, second] = figures(clock, ':', [2, 2, 2])?;
    let (millis, zone) = fraction(rest)?;
    let sound = (1..=12).contains(&month)
        && (1..=days_in(year, month)).contains(&day)
        && hour < 24
        && minute < 60
        && second <= 60;
    let seconds = days(year, month, day) * 86_400 + hour * 3600 + minute * 60 + second - offset(zone)? * 60;
    sound.then_some(Millis(seconds * 1000 + millis))
}

/// Three numbers of so many figures each.
fn figures(text: &str, between: char, lengths: [usize; 3]) -> Option<[i64; 3]> {
    let parts: Vec<&str> = text.split(between).collect();
    let parts: [&str; 3] = parts.try_into().ok()?;
    let number = |index: usize| {
        let part = parts[index];
        let plain = part.len() == lengths[index] && part.bytes().all(|byte| byte.is_ascii_digit());
        part.parse().ok().filter(|_| plain)
    };
    Some([number(0)?, number(1)?, number(2)?])
}

/// Milliseconds after the point, if there is one, and what follows.
fn fraction(rest: &str) -> Option<(i64, &str)> {
    let Some(digits) = rest.strip_prefix('.') else { return Some((0, rest)) };
    let length = digits.bytes().take_while(u8::is_ascii_digit).count();
    let (digits, zone) = digits.split_at(length);
    let millis = format!("{digits:0<3}").get(..3)?.parse().ok()?;
    (length > 0).then_some((millis, zone))
}

/// Minutes ahead of UTC.
fn offset(zone: &str) -> Option<i64> {
    if matches!(zone, "Z" | "z") {
        return Some(0);
    }
    let (sign, clock) = zone.split_at_checked(1)?;
    let [hours, minutes, _] = figures(&format!("{clock}:00"), ':', [2, 2, 2])?;
    let minutes = (hours < 24 && minutes < 60).then_some(hours * 60 + minutes)?;
    match sign {
        "+" => Some(minutes),
        "-" => Some(-minutes),
        _ => None,
    }
}

const fn days_in(year: i64, month: i64) -> i64 {
    match month {
        2 if year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

/// Days since 1970-01-01, by years that begin in March and eras of 400 of them.
const fn days(year: i64, month: i64, day: i64) -> i64 {
    let year = if month <= 2 { year - 1 } else { year };
    let era = year.div_euclid(400);
    let year_of_era = year.rem_euclid(400);
    let day_of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    era * 146_097 + year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year - 719_468
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The last three stand in RFC 3339, section 5.8.
    #[test]
    fn moments_are_read() {
        let moments = [
            ("1970-01-01T00:00:00Z", 0),
            ("2000-02-29T00:00:00z", 951_782_400_000),
            ("2026-05-01T11:30:00.25+02:00", 1_777_627_800_250),
            ("2026-05-01 09:30:00.2509Z", 1_777_627_800_250),
            ("1985-04-12T23:20:50.52Z", 482_196_050_520),
            ("1996-12-19T16:39:57-08:00", 851_042_397_000),
            ("1990-12-31T23:59:60Z", 662_688_000_000),
        ];
        for (text, millis) in moments {
            assert_eq!(moment(text), Some(Millis(millis)), "{text}");
        }
    }

    #[test]
    fn what_is_no_moment_is_refused() {
        let not = [
            "",
            "2026-05-01",
            "2026-02-29T00:00:00Z",
            "2026-13-01T00:00:00Z",
            "2026-05-01T24:00:00Z",
            "2026-05-01T00:00:00",
            "2026-05-01T00:00:00.Z",
            "2026-05-01T00:00:00+2:00",
            "+026-05-01T00:00:00Z",
            "2026-05-01T00:00:00Z ",
            "2026-05-01T0€:00:00Z",
        ];
        for text in not {
            assert_eq!(moment(text), None, "{text}");
        }
    }
}
