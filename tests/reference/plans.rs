//! Plans of drawn models beside a general solver: HiGHS, as scipy 1.17.1 has it (`scipy.optimize.milp`, presolve off, no gap).
//! `plan_by_highs.py` beside this file prints the rows from the same models.

use asfound_core::plan::{PlanProof, solve};
use asfound_tests::plan_models::drawn;

/// Cells, seed, what the best plan costs; nothing where nothing fits.
const HIGHS: &[(usize, u64, Option<i64>)] = &[
    (30, 1, Some(89_250)),
    (30, 2, Some(153_622)),
    (30, 3, None),
    (30, 4, Some(117_982)),
    (30, 5, Some(102_446)),
    (30, 6, None),
    (30, 7, Some(97_070)),
    (30, 8, Some(138_717)),
    (30, 9, Some(90_776)),
    (30, 10, Some(118_515)),
    (30, 11, Some(89_615)),
    (30, 12, Some(151_348)),
    (30, 13, Some(135_220)),
    (30, 14, Some(121_669)),
    (30, 15, None),
    (30, 16, Some(107_841)),
    (30, 17, Some(97_994)),
    (30, 18, None),
    (30, 19, Some(117_172)),
    (30, 20, Some(105_397)),
    (50, 1, Some(167_335)),
    (50, 2, Some(180_491)),
    (50, 3, Some(210_846)),
    (50, 4, None),
    (50, 5, Some(211_164)),
    (50, 6, Some(157_597)),
    (50, 7, None),
    (50, 8, Some(211_083)),
    (50, 9, Some(173_561)),
    (50, 10, None),
    (50, 11, Some(183_173)),
    (50, 12, None),
    (50, 13, Some(188_294)),
    (50, 14, Some(151_458)),
    (50, 15, Some(192_410)),
    (100, 1, Some(407_595)),
    (100, 2, Some(360_111)),
    (100, 3, Some(349_942)),
    (100, 4, Some(390_735)),
    (100, 5, Some(343_822)),
    (100, 6, Some(359_317)),
    (100, 7, Some(365_525)),
    (100, 8, None),
    (100, 9, Some(357_157)),
    (100, 10, Some(378_400)),
    (100, 11, Some(370_934)),
    (100, 12, Some(411_380)),
    (100, 13, Some(423_499)),
    (100, 14, None),
    (100, 15, Some(348_367)),
];

/// So many steps prove nearly all of them.
const NODES: u32 = 400;

/// What is proved is what the other solver found, to the minor unit; nothing is called impossible that it solves; and however soon
/// it is asked, no bound is above the best plan and no plan below it.
/// Break: in `Relaxed::find` add what a limit is priced at instead of taking it away.
#[test]
fn plans_are_those_of_a_general_solver() {
    let mut proved = 0;
    for (cells, seed, best) in HIGHS {
        let model = drawn(*seed, *cells);
        let solved = solve(&model, NODES, 1);
        match (solved.proof, best) {
            (PlanProof::Best, best) => assert_eq!(solved.cost, *best, "{cells} cells, seed {seed}"),
            (PlanProof::NothingFits, best) => assert_eq!(*best, None, "{cells} cells, seed {seed}"),
            (PlanProof::Within | PlanProof::Open, Some(best)) => {
                assert!(solved.bound.is_none_or(|bound| bound <= *best), "{cells} cells, seed {seed}: {solved:?}");
                assert!(solved.cost.is_none_or(|cost| cost >= *best), "{cells} cells, seed {seed}: {solved:?}");
            }
            (PlanProof::Within, None) => panic!("{cells} cells, seed {seed}: a plan where nothing fits"),
            (PlanProof::Open, None) => {}
        }
        proved += usize::from(matches!(solved.proof, PlanProof::Best | PlanProof::NothingFits));
    }
    assert!(proved >= 46, "{proved} of {} are proved", HIGHS.len());
}
