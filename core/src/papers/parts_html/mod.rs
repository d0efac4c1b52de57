//! The parts list as one page that needs nothing else: it opens anywhere, prints on A4 and Letter, and carries no location.

use std::collections::BTreeMap;
use std::fmt::Write;

use super::base64::base64;
use super::list::{Decision, NowSums, PartsList, Row, Sum, Totals};
use super::now::Now;
use super::tag_drawing::tag_drawing;
use super::{PaperWords, figures, without_location};
use crate::job::vocabulary::Units;
use crate::job::{Group, Job, PartsGroup, PartsQuery};
use crate::quantity::{Currency, Day, Money};
use crate::record::Hash;

/// Small photos as JPEG, by the hash of the photo they were made of.
pub type Thumbs = BTreeMap<Hash, Vec<u8>>;

/// How many columns there are.
const COLUMNS: usize = 11;
/// How many of them are figures.
const FIGURES: usize = 7;

/// The parts that a question is about, as one page. `today` says which quotes have run out, as in the totals of the job.
///
/// Of each small photo only what shows the picture goes in; one that is no sound JPEG is left out
/// ([`without_location`](super::without_location)).
///
/// ```
/// use asfound_core::{job::{Job, PartsQuery}, papers::{PaperWords, Thumbs, parts_html}};
/// let page = parts_html(&Job::new(), &PartsQuery::default(), None, &Thumbs::new(), &PaperWords::default());
/// assert!(page.starts_with("<!DOCTYPE html>"));
/// ```
#[must_use]
pub fn parts_html(job: &Job, query: &PartsQuery, today: Option<Day>, thumbs: &Thumbs, words: &PaperWords) -> String {
    let list = PartsList::of(job, query, today);
    let page = Page { words, units: job.settings().units, grouped: query.group, thumbs };
    let count = counted(words, list.rows.len());
    let mut html = opening(job, words, &words.page.title, &count);
    page.heads(&mut html);
    page.body(&mut html, &list);
    page.sums(&mut html, &list.totals);
    let notes = [&words.page.expected_cost_is, &words.page.now_is, &words.page.photos_carry_no_location];
    closing(&mut html, &notes.map(String::as_str));
    html
}

/// A page up to the beginning of its table.
pub(super) fn opening(job: &Job, words: &PaperWords, title: &str, count: &str) -> String {
    let name = escaped(&job.id().map(|id| job.name(id)).unwrap_or_default());
    let title = escaped(title);
    format!(
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">\n\
         <title>{title}: {name}</title>\n<style>\n{}</style>\n\
         <header><h1>{title}</h1><p>{name}</p><p>{count}</p></header>\n<main class=\"wide\"><table>\n",
        escaped(&words.page.language),
        include_str!("style.css"),
    )
}

/// The end of the table, and what is said below it.
pub(super) fn closing(html: &mut String, notes: &[&str]) {
    let notes: String = notes.iter().map(|note| format!("<p>{}</p>", escaped(note))).collect();
    let _ = writeln!(html, "</table></main>\n<footer>{notes}</footer>\n</html>");
}

/// So many parts.
pub(super) fn counted(words: &PaperWords, parts: usize) -> String {
    let page = &words.page;
    format!("{parts}\u{a0}{}", escaped(if parts == 1 { &page.part } else { &page.parts }))
}

/// The first photo of a part.
pub(super) fn photo(row: &Row, thumbs: &Thumbs, words: &PaperWords) -> String {
    let thumb = row.photos.first().and_then(|(hash, _)| without_location(thumbs.get(hash)?));
    let Some(thumb) = thumb else { return String::new() };
    let of = row.tag.map_or_else(|| row.name.clone(), crate::job::tag_text);
    let alt = escaped(&format!("{} {of}", words.page.photo_of));
    format!("<img alt=\"{alt}\" src=\"data:image/jpeg;base64,{}\">", base64(&thumb))
}

/// Rate, days, guesses: what is to be known of a quote beside its figures.
pub(super) fn conditions(now: &Now, words: &PaperWords) -> Vec<String> {
    let page = &words.page;
    let until = now.valid_until.map(|day| format!("{} {day}", page.valid_until));
    let wait = now.wait.map(|days| format!("{days}\u{a0}{}", page.days));
    let all = [Some(now.prices.told(words)), Some(now.entered(words)), until, wait];
    all.into_iter().flatten().filter(|text| !text.is_empty()).collect()
}

/// What every row needs to know.
struct Page<'a> {
    words: &'a PaperWords,
    units: Units,
    grouped: Group,
    thumbs: &'a Thumbs,
}

impl Page<'_> {
    fn heads(&self, html: &mut String) {
        let columns = &self.words.columns;
        let plain = [&columns.tag, &columns.name, &columns.route];
        let figures = self.figure_heads();
        html.push_str("<thead><tr>");
        for head in plain {
            let _ = write!(html, "<th scope=\"col\">{}</th>", escaped(head));
        }
        for head in figures {
            let _ = write!(html, "<th scope=\"col\" class=\"figure\">{}</th>", escaped(head));
        }
        let _ = writeln!(html, "<th scope=\"col\">{}</th></tr></thead>", escaped(&columns.photos));
    }

    fn figure_heads(&self) -> [&String; FIGURES] {
        let columns = &self.words.columns;
        [
            &columns.cash,
            &columns.own_hours,
            &columns.expected_cost,
            &columns.prices_now,
            &columns.paid_at_first,
            &columns.own_hours_now,
            &columns.worth_now,
        ]
    }

    fn body(&self, html: &mut String, list: &PartsList) {
        if list.groups.is_empty() {
            html.push_str("<tbody>\n");
            list.rows.iter().for_each(|row| self.row(html, row));
            html.push_str("</tbody>\n");
        }
        for group in &list.groups {
            let rows = list.rows.iter().skip(group.from).take(group.count);
            let (title, count) = (self.title(group), counted(self.words, group.count));
            let _ = writeln!(
                html,
                "<tbody>\n<tr class=\"group\"><th colspan=\"{COLUMNS}\" scope=\"rowgroup\"><span>{count}</span>{title}</th></tr>"
            );
            rows.for_each(|row| self.row(html, row));
            html.push_str("</tbody>\n");
        }
    }

    fn title(&self, group: &PartsGroup) -> String {
        let named = Some(group.title.as_str()).filter(|title| !title.is_empty());
        let route = group.route.map(|route| self.words.route(route));
        let standing = group.standing.map(|standing| self.words.standing(standing));
        let title = named.or(route).or(standing).unwrap_or(&self.words.page.none);
        let side = group.side.map(|side| format!(", {}", self.words.side(side))).unwrap_or_default();
        escaped(&format!("{title}{side}"))
    }

    fn row(&self, html: &mut String, row: &Row) {
        let decision = row.decision.as_ref();
        let _ = write!(
            html,
            "<tr><th scope=\"row\">{}<span class=\"second\">{}</span></th><td>{}</td><td>{}</td>",
            tag_drawing(row),
            escaped(self.words.stands(row.standing, row.lent)),
            self.described(row),
            decision.map(|decision| self.route(row, decision)).unwrap_or_default(),
        );
        let money = |money: Option<Money>| money.map(priced).unwrap_or_default();
        let counted = row.counted();
        let figures = [
            money(decision.and_then(|decision| decision.cash)),
            decision
                .filter(|_| row.with.is_none())
                .map(|decision| figures::hours(decision.own_time))
                .unwrap_or_default(),
            money(decision.and_then(|decision| decision.expected)),
            money(counted.map(|now| now.prices.kept())),
            money(counted.map(|now| now.prices.peak())),
            counted.map(|now| figures::hours(now.own_time)).unwrap_or_default(),
            money(counted.map(|now| now.present)),
        ];
        self.figures(html, figures);
        let _ = writeln!(html, "<td class=\"photo\">{}</td></tr>", photo(row, self.thumbs, self.words));
    }

    /// Figures, each with the head of its column, which a narrow screen shows beside it.
    fn figures(&self, html: &mut String, figures: [String; FIGURES]) {
        for (head, figure) in self.figure_heads().into_iter().zip(figures) {
            let _ = write!(html, "<td class=\"figure\" data-head=\"{}\">{figure}</td>", escaped(head));
        }
    }

    /// Name, what is known of it, where it lies, notes.
    fn described(&self, row: &Row) -> String {
        let name = if row.name.is_empty() { &self.words.page.no_name } else { &row.name };
        let mut html = format!("<div class=\"name\">{}</div>", escaped(name));
        let second: Vec<String> = self.known(row).into_iter().filter(|text| !text.is_empty()).collect();
        if !second.is_empty() {
            let _ = write!(html, "<div class=\"second\">{}</div>", escaped(&second.join(" · ")));
        }
        if !row.place.is_empty() {
            let _ = write!(html, "<div class=\"second\">{}</div>", escaped(&row.place.join(" › ")));
        }
        for note in &row.notes {
            let _ = write!(html, "<div class=\"note\">{}</div>", escaped(note));
        }
        html
    }

    fn known(&self, row: &Row) -> [String; 8] {
        let columns = &self.words.columns;
        let numbered =
            |head: &str, number: &str| if number.is_empty() { String::new() } else { format!("{head} {number}") };
        let unit = if self.units == Units::Metric { "kg" } else { "lb" };
        [
            if row.quantity == 1 { String::new() } else { format!("{}×", row.quantity) },
            row.side.map(|side| self.words.side(side).to_owned()).unwrap_or_default(),
            if self.grouped == Group::Assembly { String::new() } else { row.assembly.clone() },
            numbered(&columns.makers_number, &row.makers_number),
            numbered(&columns.casting_number, &row.casting_number),
            row.material.clone(),
            row.mass.map(|mass| format!("{}\u{a0}{unit}", figures::mass(mass, self.units))).unwrap_or_default(),
            self.words.marks(&row.marks),
        ]
    }

    fn route(&self, row: &Row, decision: &Decision) -> String {
        let page = &self.words.page;
        let route = decision.route.map(|route| self.words.route(route)).unwrap_or_default();
        let mut html = format!("{}<div class=\"second\">{}</div>", escaped(route), escaped(&decision.from));
        let with = row.with.as_ref().map(|with| format!("{} {with}", page.with));
        let now = row.now.as_ref();
        let counted = row.counted();
        let yearly = counted.map(|now| format!("{} {}", priced(now.yearly), page.each_year));
        let guessed = counted.filter(|now| now.guessed > 0).map(|now| format!("{}\u{a0}{}", now.guessed, page.guessed));
        let told = now.map(|now| conditions(now, self.words)).unwrap_or_default();
        for line in with.into_iter().chain(told).chain(yearly).chain(guessed) {
            let _ = write!(html, "<div class=\"second\">{}</div>", escaped(&line));
        }
        html
    }

    fn yearly(&self, now: &NowSums) -> String {
        format!("{} {}", priced(now.yearly), self.words.page.each_year)
    }

    fn sums(&self, html: &mut String, totals: &Totals) {
        html.push_str("<tbody class=\"sums\">\n");
        let mut hours = figures::hours(totals.own_time);
        let none = [(None, Sum::default())];
        let sums: Vec<(Option<Currency>, Sum)> =
            totals.money.iter().map(|(currency, sum)| (Some(*currency), *sum)).collect();
        for (currency, sum) in if sums.is_empty() { &none[..] } else { &sums } {
            let money = |minor: Option<i64>| {
                minor
                    .zip(*currency)
                    .map(|(minor, currency)| priced(Money::from_minor(minor, currency)))
                    .unwrap_or_default()
            };
            let now = Some(totals.now).filter(|now| *currency == Some(now.prices.currency));
            let told = now.map(|now| [now.prices.told(self.words), self.yearly(&now)]).unwrap_or_default();
            let told: Vec<String> = told.into_iter().filter(|text| !text.is_empty()).collect();
            let _ = write!(
                html,
                "<tr><th scope=\"row\" colspan=\"2\">{}</th><td class=\"second\">{}</td>",
                escaped(&self.words.columns.sum),
                escaped(&told.join(" · "))
            );
            let figures = [
                money(sum.cash),
                std::mem::take(&mut hours),
                money(sum.expected),
                now.map(|now| priced(now.prices.kept())).unwrap_or_default(),
                now.map(|now| priced(now.prices.peak())).unwrap_or_default(),
                now.map(|now| figures::hours(now.own_time)).unwrap_or_default(),
                now.map(|now| priced(now.present)).unwrap_or_default(),
            ];
            self.figures(html, figures);
            html.push_str("<td></td></tr>\n");
        }
        html.push_str("</tbody>\n");
    }
}

/// An amount with its currency, kept together.
pub(super) fn priced(money: Money) -> String {
    format!("{}\u{a0}{}", figures::money(money), money.currency)
}

/// Text that stands for itself wherever it is put.
pub(super) fn escaped(text: &str) -> String {
    let mut html = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => html.push_str("&amp;"),
            '<' => html.push_str("&lt;"),
            '>' => html.push_str("&gt;"),
            '"' => html.push_str("&quot;"),
            '\'' => html.push_str("&#39;"),
            // Not allowed in a page, whatever somebody pasted.
            '\0'..='\u{8}' | '\u{b}' | '\u{c}' | '\u{e}'..='\u{1f}' | '\u{7f}' => html.push('\u{fffd}'),
            _ => html.push(character),
        }
    }
    html
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_stands_for_itself() {
        assert_eq!(escaped("<a href='x'>\"&\0"), "&lt;a href=&#39;x&#39;&gt;&quot;&amp;\u{fffd}");
        assert_eq!(escaped("two\nlines"), "two\nlines");
    }
}
