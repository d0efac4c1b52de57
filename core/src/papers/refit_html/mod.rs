//! The steps of one assembly as a page for the wall: large, with boxes to tick by hand; it prints on A4 and Letter.

use std::collections::BTreeSet;
use std::fmt::Write;

use super::PaperWords;
use super::base64::base64;
use super::parts_html::{Thumbs, escaped};
use super::tag_drawing::tag_of;
use super::without_location::without_location;
use crate::inspect::cautions;
use crate::job::vocabulary::{Lubrication, Paint, Route, Tightened, TorqueUnit};
use crate::job::{Job, RecordView, Values};
use crate::quantity::{Day, Torque, Unit};
use crate::record::{Hash, Id};
use crate::refit::step::{each_step, steps};
use crate::refit::{RefitStepView, RefitStepsView, StepJoint, StepPiece, StepState};
use crate::stores::Whereabouts;
use crate::tables::hazards::Step;

/// The small photos that the sheet of an assembly shows: of each part the first, before anything was slackened where there is one.
#[must_use]
pub fn photos_of_refit(job: &Job, assembly: Id) -> BTreeSet<Hash> {
    each_step(job, assembly, None).iter().filter_map(photo_of).collect()
}

fn photo_of(view: &RefitStepView) -> Option<Hash> {
    view.photos.iter().find_map(|photo| photo.record.values.blob)
}

/// All steps of an assembly on one page that needs nothing else; nothing when none of its parts was off.
///
/// ```
/// use asfound_core::{job::Job, papers::{PaperWords, Thumbs, refit_html}, record::Id};
/// assert!(refit_html(&Job::new(), Id::from_bytes([1; 16]), None, &Thumbs::new(), &PaperWords::default()).is_none());
/// ```
#[must_use]
pub fn refit_html(job: &Job, assembly: Id, today: Option<Day>, thumbs: &Thumbs, words: &PaperWords) -> Option<String> {
    let view = steps(job, assembly, today)?;
    let sheet = Sheet { job, today, thumbs, words };
    let mut html = sheet.opening(&view);
    sheet.before(&mut html, &view);
    html.push_str("<ol class=\"steps\">\n");
    for step in each_step(job, assembly, today) {
        sheet.step(&mut html, &step);
    }
    html.push_str("</ol>\n");
    sheet.free(&mut html, &view.joints);
    let _ = writeln!(html, "<footer><p>{}</p></footer>\n</html>", escaped(&words.page.photos_carry_no_location));
    Some(html)
}

struct Sheet<'a> {
    job: &'a Job,
    today: Option<Day>,
    thumbs: &'a Thumbs,
    words: &'a PaperWords,
}

impl Sheet<'_> {
    fn opening(&self, view: &RefitStepsView) -> String {
        let (words, line) = (&self.words.refit, &view.assembly);
        let job = escaped(&self.job.id().map(|id| self.job.name(id)).unwrap_or_default());
        let name = escaped(if line.name.is_empty() { &self.words.page.no_name } else { &line.name });
        let side = line.side.map(|side| format!(" <b>{}</b>", escaped(self.words.side(side)))).unwrap_or_default();
        let day = self.today.map(|day| format!(" · {day}")).unwrap_or_default();
        format!(
            "<!DOCTYPE html>\n<html lang=\"{}\">\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n\
             <meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">\n\
             <title>{}: {name}</title>\n<style>\n{}</style>\n\
             <header><h1>{name}{side}</h1><p>{job}</p><p>{}\u{a0}{} · {}{day}</p></header>\n",
            escaped(&self.words.page.language),
            escaped(&words.title),
            include_str!("style.css"),
            view.steps.len(),
            escaped(&words.steps),
            escaped(&words.order),
        )
    }

    /// What holds for all of it: cautions, and what it uses up.
    fn before(&self, html: &mut String, view: &RefitStepsView) {
        let hazards = cautions(self.job, Step::Refit, None, Some(view.assembly.id)).cautions;
        let told: Vec<&str> = hazards.iter().filter_map(|one| self.words.refit_caution(one.hazard)).collect();
        if !told.is_empty() {
            let _ = write!(html, "<section class=\"cautions\"><h2>{}</h2><ul>", escaped(&self.words.cautions.caution));
            told.iter().for_each(|text| {
                let _ = write!(html, "<li>{}</li>", escaped(text));
            });
            html.push_str("</ul></section>\n");
        }
        self.consumables(html, &view.consumables);
    }

    fn consumables(&self, html: &mut String, records: &[RecordView]) {
        let words = &self.words.refit;
        if records.is_empty() {
            return;
        }
        let _ = write!(html, "<ul class=\"uses\" aria-label=\"{}\">", escaped(&words.uses));
        for record in records {
            let values = &record.values;
            let quantity = values.quantity.unwrap_or(1);
            let short = quantity.saturating_sub(values.in_hand.unwrap_or(0)) > 0;
            let state = if short { format!(" <i>{}</i>", escaped(&words.not_here)) } else { String::new() };
            let _ =
                write!(html, "<li>{BOX}{}{state}</li>", counted(quantity, values.name.as_deref().unwrap_or_default()));
        }
        html.push_str("</ul>\n");
    }

    fn step(&self, html: &mut String, view: &RefitStepView) {
        let line = &view.step.line;
        let done = view.step.state == StepState::Fitted;
        let name = if line.name.is_empty() { &self.words.page.no_name } else { &line.name };
        let _ = write!(
            html,
            "<li class=\"step\">{}<div class=\"what\"><div class=\"head\"><span class=\"number\">{}</span>{}<div><h2>{}</h2>",
            if done { TICKED } else { BIG_BOX },
            view.number,
            line.tag.map(|tag| tag_of(tag, line.standing, line.irreplaceable, line.missing)).unwrap_or_default(),
            counted(line.quantity, name),
        );
        let second = self.second(view);
        if !second.is_empty() {
            let _ = write!(html, "<p class=\"second\">{}</p>", escaped(&second.join(" · ")));
        }
        html.push_str("</div></div>");
        view.joints.iter().for_each(|joint| self.joint(html, joint));
        self.consumables(html, &view.consumables);
        for note in view.notes.iter().filter_map(|note| note.record.values.text.as_ref()) {
            let _ = write!(html, "<p class=\"note\">{}</p>", escaped(note));
        }
        let _ = writeln!(html, "</div>{}</li>", self.photo(view));
    }

    /// New or from a donor, before or after the paint, where it lies.
    fn second(&self, view: &RefitStepView) -> Vec<String> {
        let words = &self.words.refit;
        let line = &view.step.line;
        let other = if line.route == Some(Route::Donor) { &words.from_donor } else { &words.is_new };
        let other = view.step.brings_new.then(|| other.clone());
        let paint = view.step.paint.map(|paint| match paint {
            Paint::Before => words.before_paint.clone(),
            Paint::After => words.after_paint.clone(),
        });
        // Where the old one lies says nothing of the new one, and what is out of the house lies nowhere.
        let lies = !view.step.brings_new && matches!(self.job.whereabouts(line.id), Whereabouts::In(_));
        let place = lies.then(|| line.place.join(" › "));
        [other, paint, place].into_iter().flatten().collect()
    }

    fn photo(&self, view: &RefitStepView) -> String {
        let thumb = photo_of(view).and_then(|hash| without_location(self.thumbs.get(&hash)?));
        let Some(thumb) = thumb else { return String::new() };
        let line = &view.step.line;
        let of = line.tag.map_or_else(|| line.name.clone(), crate::job::tag_text);
        let alt = escaped(&format!("{} {of}", self.words.page.photo_of));
        format!("<img alt=\"{alt}\" src=\"data:image/jpeg;base64,{}\">", base64(&thumb))
    }

    fn joint(&self, html: &mut String, joint: &StepJoint) {
        let words = &self.words.refit;
        let values = &joint.record.values;
        let name = values.name.as_deref().unwrap_or_default();
        let bag =
            values.bag.as_ref().map(|bag| format!(", {} {}", escaped(&words.bag), escaped(bag))).unwrap_or_default();
        let tight = if values.tightened == Some(Tightened::Tight) { TICKED_SMALL } else { BOX };
        let checked = if values.checked_again == Some(true) { TICKED_SMALL } else { BOX };
        let height = if values.at_ride_height == Some(true) {
            format!(" <b>{}</b>", escaped(&words.at_ride_height))
        } else {
            String::new()
        };
        let _ = write!(
            html,
            "<div class=\"joint\"><div class=\"joint-head\"><span>{} {}{bag}</span><span>{tight}{}{height} {checked}{}</span></div>",
            escaped(&words.joint),
            escaped(name),
            escaped(&words.tight),
            escaped(&words.checked_again),
        );
        if !joint.pieces.is_empty() {
            html.push_str("<ol class=\"pieces\">");
            joint.pieces.iter().for_each(|piece| self.piece(html, piece));
            html.push_str("</ol>");
        }
        self.figure(html, values, None);
        for piece in &joint.pieces {
            self.figure(html, &piece.record.values, piece.record.values.name.as_deref());
        }
        html.push_str("</div>");
    }

    fn piece(&self, html: &mut String, piece: &StepPiece) {
        let values = &piece.record.values;
        let name = values.name.as_deref().unwrap_or(&self.words.refit.piece);
        let size = values.size.as_ref().map(|size| format!(", {}", escaped(size))).unwrap_or_default();
        let side = values.side.map(|side| format!(", {}", escaped(self.words.side(side)))).unwrap_or_default();
        let named = counted(values.quantity.unwrap_or(1), name);
        let (class, renew) = if piece.renew {
            (" class=\"new\"", format!(", {}", escaped(&self.words.refit.renew)))
        } else {
            ("", String::new())
        };
        let _ = write!(html, "<li{class}>{named}{size}{side}{renew}</li>");
    }

    /// How tight; nothing where nobody said.
    fn figure(&self, html: &mut String, values: &Values, of: Option<&str>) {
        let words = &self.words.refit;
        let torque = values.torque.map(|torque| {
            let (figure, sign) = torque_told(torque, values.torque_unit.map_or(Unit::NewtonMetre, TorqueUnit::unit));
            format!("<b>{figure}</b>\u{a0}{sign}")
        });
        let named = |head: &str, text: &Option<String>| {
            text.as_ref().map(|text| format!("{} {}", escaped(head), escaped(text)))
        };
        let plain = |text: &Option<String>| text.as_ref().map(|text| escaped(text));
        let lubrication = values.lubrication.map(|how| match how {
            Lubrication::Dry => escaped(&words.dry),
            Lubrication::Oiled => escaped(&words.oiled),
        });
        let angle = values.angle.map(|degrees| format!("<b>{} {degrees}°</b>", escaped(&words.then_on_by)));
        let rest = [
            lubrication,
            named(&words.in_stages, &values.stages),
            angle,
            named(&words.sequence, &values.sequence),
            named(&words.with, &values.compound),
            plain(&values.remark),
            plain(&values.torque_source),
        ];
        let rest: Vec<String> = rest.into_iter().flatten().collect();
        if torque.is_none() && rest.is_empty() {
            return;
        }
        let of = of.map(|name| format!("<span class=\"of\">{}</span> ", escaped(name))).unwrap_or_default();
        let torque = torque.map(|figure| format!("<span class=\"torque\">{figure}</span> ")).unwrap_or_default();
        let _ = write!(html, "<p class=\"figure\">{of}{torque}<span>{}</span></p>", rest.join(" · "));
    }

    /// Joints that hold no part that anybody has named.
    fn free(&self, html: &mut String, joints: &[StepJoint]) {
        if joints.is_empty() {
            return;
        }
        let _ = write!(html, "<section class=\"free\"><h2>{}</h2>", escaped(&self.words.refit.free_joints));
        joints.iter().for_each(|joint| self.joint(html, joint));
        html.push_str("</section>\n");
    }
}

/// A box to tick by hand; one that was ticked in the record.
const BOX: &str = "<svg class=\"box\" viewBox=\"0 0 20 20\" aria-hidden=\"true\"><path d=\"M1 1H19V19H1Z\"/></svg>";
const BIG_BOX: &str =
    "<svg class=\"tick\" viewBox=\"0 0 20 20\" aria-hidden=\"true\"><path d=\"M1 1H19V19H1Z\"/></svg>";
const TICKED: &str = "<svg class=\"tick\" viewBox=\"0 0 20 20\" role=\"img\" aria-label=\"\u{2713}\"><path d=\"M1 1H19V19H1Z\"/><path d=\"M4 10.5L8.5 15L16 5.5\"/></svg>";
const TICKED_SMALL: &str = "<svg class=\"box\" viewBox=\"0 0 20 20\" role=\"img\" aria-label=\"\u{2713}\"><path d=\"M1 1H19V19H1Z\"/><path d=\"M4 10.5L8.5 15L16 5.5\"/></svg>";

/// "4 × nut"; the name alone where there is one.
fn counted(quantity: i64, name: &str) -> String {
    if quantity > 1 { format!("{quantity}\u{a0}× {}", escaped(name)) } else { escaped(name) }
}

/// A tightening figure in the unit it was read in, and its sign. The second decimal is finer than any wrench.
fn torque_told(torque: Torque, unit: Unit) -> (String, &'static str) {
    (unit.figures_to(torque.micronewton_metres(), 2), unit.symbol())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 40 lbf·ft is 54.232718 N·m (4.4482216152605 N × 0.3048 m, both exact by definition).
    #[test]
    fn a_figure_stands_in_the_unit_it_was_read_in() {
        assert_eq!(torque_told(Torque(54_000_000), Unit::NewtonMetre), ("54".to_owned(), "N·m"));
        assert_eq!(torque_told(Torque(54_232_718), Unit::PoundFoot), ("40".to_owned(), "lbf·ft"));
        assert_eq!(torque_told(Torque(11_298_483), Unit::PoundInch), ("100".to_owned(), "lbf·in"));
        assert_eq!(torque_told(Torque(53_936_575), Unit::KilogramMetre), ("5.5".to_owned(), "kgf·m"));
        assert_eq!(torque_told(Torque(0), Unit::NewtonMetre), ("0".to_owned(), "N·m"));
    }
}
