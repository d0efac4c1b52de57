use asfound_core::job::{Change, Command, Job};
use asfound_core::record::{Id, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::Garage;

fn job_with(names: &[String]) -> (Job, Vec<Id>) {
    let mut garage = Garage::new();
    let ids: Vec<Id> = names.iter().map(|_| garage.fresh()).collect();
    for (id, name) in ids.iter().zip(names) {
        let changes = vec![Change::Name(name.clone()), Change::Tag(9_000_000)];
        let _ = garage.command(0, Command::Create { id: *id, kind: Kind::Part, changes });
    }
    (garage.devices[0].clone(), ids)
}

/// Whether what is typed is, but for one letter, the beginning of a word: by an outside measure of misspelling.
fn alike(typed: &str, word: &str) -> bool {
    let count = word.chars().count();
    let beginnings = (0..=count).map(|length| word.chars().take(length).collect::<String>());
    let most = if typed.chars().count() < 3 { 0 } else { 1 };
    beginnings.into_iter().any(|beginning| strsim::osa_distance(typed, &beginning) <= most)
}

/// One letter of a word changed, taken out, put in, or swapped with the next.
fn misspelt() -> impl Strategy<Value = (String, String)> {
    let letter = proptest::char::range('a', 'e');
    ("[a-e]{3,12}", any::<prop::sample::Index>(), letter, 0_u8..4).prop_map(|(word, at, letter, how)| {
        let mut typed: Vec<char> = word.chars().collect();
        let at = at.index(typed.len());
        match how {
            0 => typed[at] = letter,
            1 => typed.insert(at, letter),
            2 if typed.len() > 3 => drop(typed.remove(at)),
            _ if at + 1 < typed.len() => typed.swap(at, at + 1),
            _ => {}
        }
        (word, typed.into_iter().collect())
    })
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// One wrong, missing, extra or swapped letter still finds.
    /// Break: in `misspelt` leave any one of the four pairs out.
    #[test]
    fn one_letter_amiss_still_finds((word, typed) in misspelt()) {
        let (job, ids) = job_with(&[word]);
        prop_assert_eq!(job.find_parts(&typed), ids);
    }

    /// It finds exactly what an outside measure of misspelling finds, among words of few letters where near misses abound.
    /// Break: in `misspelt` leave the swapped letters out.
    #[test]
    fn it_finds_what_another_measure_finds(names in prop::collection::vec("[a-c]{1,8}", 1..12), typed in "[a-c]{1,8}") {
        let (job, ids) = job_with(&names);
        let mut found = job.find_parts(&typed);
        found.sort_unstable();
        let mut expected: Vec<Id> =
            ids.into_iter().zip(&names).filter(|(_, name)| alike(&typed, name)).map(|(id, _)| id).collect();
        expected.sort_unstable();
        prop_assert_eq!(found, expected);
    }

    /// Every word that is typed must be found, in whatever order; more words never find more.
    /// Break: in `find_parts` join what the words find instead of meeting.
    #[test]
    fn more_words_find_less(names in prop::collection::vec("[a-c]{1,4} [a-c]{1,4}", 1..8), one in "[a-c]{1,4}", two in "[a-c]{1,4}") {
        let (job, _) = job_with(&names);
        let sorted = |typed: &str| {
            let mut found = job.find_parts(typed);
            found.sort_unstable();
            found
        };
        let (first, second, both) = (sorted(&one), sorted(&two), sorted(&format!("{one} {two}")));
        prop_assert_eq!(&both, &sorted(&format!("{two}  {one}")));
        let meeting: Vec<Id> = first.into_iter().filter(|id| second.contains(id)).collect();
        prop_assert_eq!(both, meeting);
    }

    /// What is exactly so comes before what is misspelt.
    /// Break: in `Fit` put `MisspeltWhole` before `Whole`.
    #[test]
    fn the_exact_comes_first((word, typed) in misspelt()) {
        prop_assume!(word != typed);
        let (job, ids) = job_with(&[word, typed.clone()]);
        prop_assert_eq!(job.find_parts(&typed)[0], ids[1]);
    }

    /// A part is found by its tag, with or without the noughts before it, and the place shown lies in the text.
    /// Break: in `replace` leave the bare number out.
    #[test]
    fn a_tag_is_found_with_and_without_noughts(tag in prop_oneof![1_i64..1_000, 1_i64..9_999_999]) {
        let mut garage = Garage::new();
        let id = garage.fresh();
        let _ = garage.command(0, Command::Create { id, kind: Kind::Part, changes: vec![Change::Tag(tag)] });
        for typed in [tag.to_string(), asfound_core::job::tag_text(tag)] {
            let query = asfound_core::job::PartsQuery { find: typed.clone(), ..Default::default() };
            let view = garage.devices[0].parts_view(&query);
            prop_assert_eq!(view.rows.len(), 1);
            let found = view.rows[0].found.first().expect("shown where");
            prop_assert_eq!(&found.text[found.from..found.to], typed.as_str());
        }
    }

    /// Renamed, a part is found by its new name and not by the old one; struck out, not at all.
    /// Break: in `replace` keep the words it had.
    #[test]
    fn a_renamed_part_is_found_by_its_new_name(old in "[a-c]{5}", new in "[x-z]{5}") {
        let mut garage = Garage::new();
        let id = garage.fresh();
        let name = |name: &String| vec![Change::Name(name.clone())];
        let _ = garage.command(0, Command::Create { id, kind: Kind::Part, changes: name(&old) });
        let _ = garage.command(0, Command::Change { ids: vec![id], changes: name(&new), seen: None });
        prop_assert_eq!(garage.devices[0].find_parts(&old), vec![]);
        prop_assert_eq!(garage.devices[0].find_parts(&new), vec![id]);
    }
}
