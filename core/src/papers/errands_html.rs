use std::fmt::Write;

use super::errands::{Errand, Errands, Group};
use super::errands_csv::{cautions, remarks, undecided};
use super::list::{NowSums, Row};
use super::parts_html::{Thumbs, closing, conditions, counted, escaped, opening, photo, priced};
use super::tag_drawing::tag_drawing;
use super::{PaperWords, figures};
use crate::job::vocabulary::Units;
use crate::job::{Job, PartsQuery};
use crate::quantity::Day;

/// How many columns there are.
const COLUMNS: usize = 7;

/// What is to be bought or sent out, as a page in the form of [`parts_html`](super::parts_html).
#[must_use]
pub fn errands_html(
    job: &Job,
    errand: Errand,
    query: &PartsQuery,
    today: Option<Day>,
    thumbs: &Thumbs,
    words: &PaperWords,
) -> String {
    let errands = Errands::of(job, errand, query, today);
    let sheet = Sheet { words, units: job.settings().units, errand, thumbs };
    let title = if errand == Errand::Buy { &words.page.to_buy } else { &words.page.to_send };
    let mut html = opening(job, words, title, &counted(words, errands.parts()));
    sheet.heads(&mut html);
    for group in &errands.groups {
        sheet.group(&mut html, group);
    }
    html.push_str("<tbody class=\"sums\">\n");
    sheet.sum(&mut html, &words.page.sum_of_all, &errands.sums);
    html.push_str("</tbody>\n");
    let open = (errands.undecided > 0).then(|| undecided(errands.undecided, words));
    let notes = [&words.page.now_is, &words.page.photos_carry_no_location].map(String::as_str);
    closing(&mut html, &open.iter().map(String::as_str).chain(notes).collect::<Vec<_>>());
    html
}

/// What every row needs to know.
struct Sheet<'a> {
    words: &'a PaperWords,
    units: Units,
    errand: Errand,
    thumbs: &'a Thumbs,
}

impl Sheet<'_> {
    fn heads(&self, html: &mut String) {
        let columns = &self.words.columns;
        html.push_str("<thead><tr>");
        for head in [&columns.tag, &columns.name, &columns.route] {
            let _ = write!(html, "<th scope=\"col\">{}</th>", escaped(head));
        }
        for head in self.figure_heads() {
            let _ = write!(html, "<th scope=\"col\" class=\"figure\">{}</th>", escaped(head));
        }
        let _ = writeln!(html, "<th scope=\"col\">{}</th></tr></thead>", escaped(&columns.photos));
    }

    fn figure_heads(&self) -> [&String; 3] {
        let columns = &self.words.columns;
        [&columns.prices_now, &columns.paid_at_first, &columns.own_hours_now]
    }

    fn group(&self, html: &mut String, group: &Group) {
        let page = &self.words.page;
        let nobody = if self.errand == Errand::Buy { &page.no_supplier } else { &page.no_specialist };
        let title = if group.from.is_empty() { nobody } else { &group.from };
        let _ = writeln!(
            html,
            "<tbody>\n<tr class=\"group\"><th colspan=\"{COLUMNS}\" scope=\"rowgroup\"><span>{}</span>{}</th></tr>",
            counted(self.words, group.rows.len()),
            escaped(title)
        );
        group.rows.iter().for_each(|row| self.row(html, row));
        html.push_str("</tbody>\n<tbody class=\"sums\">\n");
        self.sum(html, &format!("{}, {title}", self.words.columns.sum), &group.sums);
        html.push_str("</tbody>\n");
    }

    fn row(&self, html: &mut String, row: &Row) {
        let counted = row.counted();
        let _ = write!(
            html,
            "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td>",
            tag_drawing(row),
            self.described(row),
            self.route(row)
        );
        let figures =
            counted.map(|now| [priced(now.prices.kept()), priced(now.prices.peak()), figures::hours(now.own_time)]);
        self.figures(html, figures.unwrap_or_default());
        let _ = writeln!(html, "<td class=\"photo\">{}</td></tr>", photo(row, self.thumbs, self.words));
    }

    fn described(&self, row: &Row) -> String {
        let name = if row.name.is_empty() { &self.words.page.no_name } else { &row.name };
        let columns = &self.words.columns;
        let unit = if self.units == Units::Metric { "kg" } else { "lb" };
        let numbered = |head: &str, number: &str| (!number.is_empty()).then(|| format!("{head} {number}"));
        let known = [
            Some(format!("{}×", row.quantity)),
            row.side.map(|side| self.words.side(side).to_owned()),
            numbered(&columns.makers_number, &row.makers_number),
            numbered(&columns.casting_number, &row.casting_number),
            Some(row.material.clone()),
            row.mass.map(|mass| format!("{}\u{a0}{unit}", figures::mass(mass, self.units))),
            Some(self.words.marks(&row.marks)),
        ];
        let known: Vec<String> = known.into_iter().flatten().filter(|text| !text.is_empty()).collect();
        let mut html = format!(
            "<div class=\"name\">{}</div><div class=\"second\">{}</div>",
            escaped(name),
            escaped(&known.join(" · "))
        );
        for note in remarks(row) {
            let _ = write!(html, "<div class=\"note\">{}</div>", escaped(&note));
        }
        for caution in cautions(row, self.words) {
            let head = escaped(&self.words.cautions.caution);
            let _ = write!(html, "<div class=\"note\"><strong>{head}:</strong> {}</div>", escaped(caution));
        }
        html
    }

    fn route(&self, row: &Row) -> String {
        let route = row.decision.as_ref().and_then(|decision| decision.route);
        let with = row.with.as_ref().map(|with| format!("{} {with}", self.words.page.with));
        let told = row.now.as_ref().map(|now| conditions(now, self.words)).unwrap_or_default();
        let mut html = escaped(route.map(|route| self.words.route(route)).unwrap_or_default());
        for line in with.into_iter().chain(told) {
            let _ = write!(html, "<div class=\"second\">{}</div>", escaped(&line));
        }
        html
    }

    fn figures(&self, html: &mut String, figures: [String; 3]) {
        for (head, figure) in self.figure_heads().into_iter().zip(figures) {
            let _ = write!(html, "<td class=\"figure\" data-head=\"{}\">{figure}</td>", escaped(head));
        }
    }

    fn sum(&self, html: &mut String, title: &str, sums: &NowSums) {
        let _ = write!(
            html,
            "<tr><th scope=\"row\" colspan=\"2\">{}</th><td class=\"second\">{}</td>",
            escaped(title),
            escaped(&sums.prices.told(self.words))
        );
        let (kept, peak) = (priced(sums.prices.kept()), priced(sums.prices.peak()));
        self.figures(html, [kept, peak, figures::hours(sums.own_time)]);
        html.push_str("<td></td></tr>\n");
    }
}
