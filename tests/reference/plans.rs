//! Plans of drawn models beside a general solver: HiGHS, as scipy 1.17.1 has it (`scipy.optimize.milp`, presolve off, no gap).
//! `plan_by_highs.py` beside this file prints the rows from the same models.

use asfound_core::plan::{PlanProof, solve};
use asfound_tests::plan_models::drawn;

/// Cells, seed, what the best plan costs; nothing where nothing fits.
const HIGHS: &[(usize, u64, Option<i64>)] = &[
    (30, 1, Some(89_250)),
    (30, 2, Some(107_178)),
    (30, 3, None),
    (30, 4, Some(105_587)),
    (30, 5, Some(99_175)),
    (30, 6, Some(137_995)),
    (30, 7, Some(85_716)),
    (30, 8, Some(112_454)),
    (30, 9, Some(90_374)),
    (30, 10, Some(108_523)),
    (30, 11, Some(89_615)),
    (30, 12, Some(113_713)),
    (30, 13, Some(126_711)),
    (30, 14, Some(98_748)),
    (30, 15, Some(110_935)),
    (30, 16, Some(107_841)),
    (30, 17, Some(92_602)),
    (30, 18, Some(131_967)),
    (30, 19, Some(99_744)),
    (30, 20, Some(97_557)),
    (30, 21, Some(115_146)),
    (30, 22, Some(120_480)),
    (30, 23, Some(80_163)),
    (30, 24, Some(103_308)),
    (30, 25, Some(88_593)),
    (30, 26, Some(93_725)),
    (30, 27, Some(106_005)),
    (30, 28, Some(125_885)),
    (30, 29, Some(121_518)),
    (30, 30, None),
    (60, 1, Some(162_917)),
    (60, 2, Some(179_963)),
    (60, 3, Some(208_159)),
    (60, 4, Some(217_299)),
    (60, 5, Some(207_242)),
    (60, 6, Some(232_336)),
    (60, 7, Some(231_001)),
    (60, 8, Some(240_010)),
    (60, 9, Some(213_956)),
    (60, 10, Some(190_988)),
    (60, 11, Some(173_109)),
    (60, 12, Some(232_411)),
    (100, 1, Some(366_293)),
    (100, 2, Some(340_905)),
    (100, 3, Some(349_942)),
    (100, 4, Some(347_129)),
    (100, 5, Some(319_532)),
    (100, 6, Some(336_697)),
    (100, 7, Some(345_731)),
    (100, 8, Some(348_383)),
];

/// What is proved is what the other solver found, to the minor unit; nothing is called impossible that it solves; and however soon
/// it is asked, no bound is above the best plan and no plan below it.
/// Break: in `Relaxed::find` add what a limit is priced at instead of taking it away.
#[test]
fn plans_are_those_of_a_general_solver() {
    let mut proved = 0;
    for (cells, seed, best) in HIGHS {
        let model = drawn(*seed, *cells);
        let solved = solve(&model, if *cells == 30 { 400 } else { 12 }, 1);
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
    assert!(proved >= 15, "{proved} of {} are proved", HIGHS.len());
}
