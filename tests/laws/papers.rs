//! The sums of lists agree in every form, whatever the prices.

use asfound_core::costing::totals;
use asfound_core::job::{Command, Context, Group, Job, PartsQuery, Sent, apply};
use asfound_core::papers::{Errand, Errands, PaperWords, PartsList, Thumbs, parts_csv, parts_html};
use asfound_core::quantity::Millis;
use asfound_core::record::{Id, Replica};
use proptest::prelude::*;
use serde_json::{Value, json};

const ROUTES: [&str; 6] = ["buy", "kit", "exchange", "donor", "send-out", "repair-here"];

fn id(number: usize) -> Id {
    format!("{number:032x}").parse().unwrap()
}

/// One part with its chosen quote: prices, hours, the currency, the route, and whether it takes the kit of the part before.
type Part = ([Option<i64>; 6], i64, bool, usize, bool);

fn any_part() -> impl Strategy<Value = Part> {
    let price = || proptest::option::of(0_i64..1_000_000_000);
    let prices = [price(), price(), price(), price(), price(), price()];
    (prices, 0_i64..10_000, any::<bool>(), 0..ROUTES.len(), any::<bool>())
}

fn built(parts: &[Part], rate: i64) -> Job {
    let mut job = Job::new();
    let mut done = 0;
    let mut send = |command: Value| {
        done += 1;
        let command: Command = serde_json::from_value(command).unwrap();
        let context = Context { replica: Replica::from_bytes([7; 8]), device: id(2), at: Millis(0) };
        let applied = apply(&job, &Sent { id: id(90_000 + done), command }, &context);
        assert_eq!(applied.problems, vec![]);
        job.absorb(applied.entries);
    };
    send(json!({ "do": "create", "id": id(1), "kind": "job", "changes": [{ "currency": "GBP" }] }));
    let mut kit = None;
    for (number, (prices, minutes, foreign, route, joins)) in parts.iter().enumerate() {
        let (part, own, choice) = (id(1000 + number), id(2000 + number), id(3000 + number));
        send(json!({ "do": "create", "id": part, "kind": "part", "changes": [] }));
        let quote = match kit.filter(|_| *joins) {
            Some(kit) => {
                send(
                    json!({ "do": "create", "id": id(4000 + number), "kind": "cover", "changes": [{ "of": kit }, { "part": part }] }),
                );
                kit
            }
            None => {
                let currency = if *foreign { "EUR" } else { "GBP" };
                let mut changes = vec![
                    json!({ "of": part }),
                    json!({ "route": ROUTES[*route] }),
                    json!({ "own_time": minutes }),
                    json!({ "exchange_rate": rate }),
                ];
                let names = ["cash", "freight", "tax", "duty", "consumables", "surcharge"];
                changes.extend(
                    names.iter().zip(prices).filter_map(|(name, minor)| {
                        Some(json!({ *name: { "minor": (*minor)?, "currency": currency } }))
                    }),
                );
                send(json!({ "do": "create", "id": own, "kind": "quote", "changes": changes }));
                kit = (ROUTES[*route] == "kit").then_some(own).or(kit);
                own
            }
        };
        send(json!({ "do": "choose", "id": choice, "quote": quote, "part": part }));
    }
    job
}

fn minor(cell: &str) -> i64 {
    cell.replace('.', "").parse().unwrap_or(0)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Breaks when a kit counts at each of its parts, or when a row exchanges the sum instead of each price.
    #[test]
    fn sums_agree_in_every_form(parts in proptest::collection::vec(any_part(), 1..8), rate in 1_i64..5_000_000) {
        let job = built(&parts, rate);
        let query = PartsQuery { group: Group::None, ..PartsQuery::default() };
        let words = PaperWords::default();
        let view = totals(&job, None);
        let now = PartsList::of(&job, &query, None).totals.now;
        prop_assert_eq!((now.prices.kept(), now.prices.peak(), now.own_time), (view.cash, view.peak, view.own_time));

        let csv = parts_csv(&job, &query, None, &words);
        let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(csv.as_bytes());
        let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        let sum = rows.iter().find(|row| &row[0] == "Sum" && &row[10] == "GBP").unwrap();
        for (at, head) in rows[0].iter().enumerate().filter(|(_, head)| ["price now", "freight now", "tax now", "duty now", "consumables now", "surcharge now", "all prices now", "paid at first now", "worth now (each rounded)", "each year (each rounded)"].contains(head)) {
            let added: i64 = rows[1..=parts.len()].iter().map(|row| minor(&row[at])).sum();
            prop_assert_eq!(added, minor(&sum[at]), "{}", head);
        }
        let at = |name: &str| rows[0].iter().position(|head| head == name).unwrap();
        prop_assert_eq!((minor(&sum[at("all prices now")]), minor(&sum[at("paid at first now")])), (view.cash.minor, view.peak.minor));

        let page = parts_html(&job, &query, None, &Thumbs::new(), &words);
        let below = &page[page.rfind("class=\"sums\"").unwrap()..];
        for name in ["all prices now", "paid at first now"] {
            let shown = format!(">{}\u{a0}GBP</td>", &sum[at(name)]);
            prop_assert!(below.contains(&shown), "{}", shown);
        }

        let errands = [Errand::Buy, Errand::Send].map(|errand| Errands::of(&job, errand, &query, None));
        for list in &errands {
            let groups: i64 = list.groups.iter().map(|group| group.sums.prices.peak().minor).sum();
            prop_assert_eq!(groups, list.sums.prices.peak().minor);
        }
        let bench: i64 = PartsList::of(&job, &query, None).rows.iter().filter(|row| row.decision.as_ref().is_some_and(|decision| decision.route.is_some_and(|route| route.word() == "repair-here"))).filter_map(|row| Some(row.now.as_ref()?.prices.peak().minor)).sum();
        prop_assert_eq!(errands.iter().map(|list| list.sums.prices.peak().minor).sum::<i64>() + bench, view.peak.minor);
    }
}
