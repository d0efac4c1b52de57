use super::alike::bare_name;
use super::find::tag_text;
use super::terms_view::{RuleLine, RulesView};
use super::vocabulary::Route;
use super::whole::Job;
use crate::costing::{self, Breaches};
use crate::quantity::Day;
use crate::record::{FieldName, Id, Kind, in_order};

impl Job {
    /// What goes, or does not go, with what: all of it, or what is about one part.
    #[must_use]
    pub fn rules_view(&self, part: Option<Id>, today: Option<Day>) -> RulesView {
        let rules = self.standing_ids(Kind::Rule).filter(|rule| part.is_none_or(|part| self.is_about(*rule, part)));
        let mut breaches = Breaches::of(self, today);
        let rules = rules.filter_map(|id| self.rule_line(id, &mut breaches)).collect();
        RulesView {
            rules: in_order(rules, |rule: &RuleLine| (rule.subject.clone(), rule.other.clone(), rule.record.id)),
        }
    }

    fn is_about(&self, rule: Id, part: Id) -> bool {
        let sides = [FieldName::Of, FieldName::Other].into_iter();
        let mut sides = sides.filter_map(|field| self.item(rule)?.read::<Id>(field));
        sides.any(|side| costing::sides(self, side).contains(&part))
    }

    fn rule_line(&self, rule: Id, breaches: &mut Breaches<'_>) -> Option<RuleLine> {
        let record = self.record_view(rule)?;
        let part = |id: Option<Id>| self.item_of(Kind::Quote, id?)?.read::<Id>(FieldName::Of);
        let (subject, subject_route) = self.side_of_rule(record.values.of);
        let (other, other_route) = self.side_of_rule(record.values.other);
        Some(RuleLine {
            subject_part: part(record.values.of),
            other_part: part(record.values.other),
            breach: breaches.breach(rule),
            record,
            subject,
            subject_route,
            other,
            other_route,
        })
    }

    /// What stands on one side of a rule is called, and the route of a quote.
    fn side_of_rule(&self, id: Option<Id>) -> (String, Option<Route>) {
        let Some((id, kind)) = id.and_then(|id| Some((id, self.kind(id)?))) else { return (String::new(), None) };
        let Some(item) = self.item(id).filter(|_| kind == Kind::Quote) else {
            return (if kind == Kind::Part { self.part_called(id) } else { self.name(id) }, None);
        };
        let part = item.read::<Id>(FieldName::Of).map(|part| self.part_called(part)).unwrap_or_default();
        let from: String = item.read(FieldName::From).unwrap_or_default();
        let said: Vec<String> = [part, from].into_iter().filter(|text| !text.is_empty()).collect();
        (said.join(", "), item.read(FieldName::Route))
    }

    /// A part by its name; by its tag too where another is called the same.
    fn part_called(&self, part: Id) -> String {
        let name = self.name(part);
        let is_alone =
            !name.is_empty() && self.alike(&bare_name(&name)).all(|other| other == part || self.is_struck(other));
        let tag: Option<i64> = self.item(part).and_then(|item| item.read(FieldName::Tag));
        let tag = tag.filter(|_| !is_alone).map(tag_text);
        [Some(name), tag].into_iter().flatten().filter(|text| !text.is_empty()).collect::<Vec<_>>().join(" ")
    }
}
