use super::view::TagView;
use crate::job::{Job, TagCode, TagRead};
use crate::record::Id;

impl Job {
    /// What carries a code that was scanned or typed.
    ///
    /// Figures that are a code and a number as well count as the code, unless something carries the other number: then all
    /// that carries either is told.
    #[must_use]
    pub fn tag_view(&self, text: &str, scanned: bool) -> TagView {
        let read = if scanned { TagCode::scanned(text) } else { TagCode::typed(text) };
        let (number, other) = match read {
            TagRead::Code { number } | TagRead::Number { number } => (Some(number), None),
            TagRead::Either { number, other } => {
                let is_carried = |number| self.carriers(number).next().is_some();
                match (is_carried(number), is_carried(other)) {
                    (true, true) => (Some(number), Some(other)),
                    (false, true) => (Some(other), None),
                    (_, false) => (Some(number), None),
                }
            }
            TagRead::WrongCheck | TagRead::NotOurs => (None, None),
        };
        let carriers: Vec<Id> = number.into_iter().chain(other).flat_map(|number| self.carriers(number)).collect();
        TagView {
            read,
            number,
            code: number.and_then(TagCode::new).map(|code| code.to_string()),
            parts: carriers.iter().filter_map(|id| self.stored_line(*id)).collect(),
            places: carriers.iter().filter_map(|id| self.place_line(*id)).collect(),
        }
    }

    /// Parts, then places, that carry a number.
    fn carriers(&self, number: i64) -> impl Iterator<Item = Id> {
        self.parts_with_tag(number).chain(self.places_with_tag(number))
    }
}
