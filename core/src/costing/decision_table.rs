/// What each choice costs in each state of things, and how likely each state is.
///
/// Costs in any one unit; a gain is a negative cost. Expected value, expected value of perfect information and of a trial:
/// any textbook of decision analysis.
///
/// ```
/// use asfound_core::costing::DecisionTable;
/// // Cracked 1 time in 5: then a repair costs 150, else 50. A new one costs 90.
/// let table = DecisionTable { chances: vec![0.2, 0.8], costs: vec![vec![150.0, 50.0], vec![90.0, 90.0]] };
/// assert_eq!(table.expected(), [70.0, 90.0]);
/// assert_eq!(table.best(), Some(0));
/// // Knowing it saves 60 that 1 time in 5.
/// assert!((table.worth_of_certainty() - 12.0).abs() < 1e-12);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct DecisionTable {
    /// How likely each state is; they add up to 1.
    pub chances: Vec<f64>,
    /// By choice: what it costs in each state.
    pub costs: Vec<Vec<f64>>,
}

impl DecisionTable {
    /// What each choice is expected to cost.
    #[must_use]
    pub fn expected(&self) -> Vec<f64> {
        let of = |costs: &Vec<f64>| costs.iter().zip(&self.chances).map(|(cost, chance)| cost * chance).sum();
        self.costs.iter().map(of).collect()
    }

    /// The choice that is expected to cost least; of equal ones the first. Nothing where there is none.
    #[must_use]
    pub fn best(&self) -> Option<usize> {
        super::guess::least(&self.expected())
    }

    /// What it is worth to know the state before choosing; never below nothing, and nothing where one choice is the best in
    /// every state.
    #[must_use]
    pub fn worth_of_certainty(&self) -> f64 {
        let Some(best) = self.best() else { return 0.0 };
        // What is saved in each state, rather than the difference of two sums: so nothing is exactly nothing.
        let saved = (0..self.chances.len()).map(|state| {
            let least = self.costs.iter().map(|costs| costs[state]).fold(f64::INFINITY, f64::min);
            self.chances[state] * (self.costs[best][state] - least)
        });
        saved.sum()
    }

    /// What it is worth to see the outcome of a trial before choosing, by Bayes' rule: `says` gives, by outcome, how likely
    /// it is in each state; over the outcomes these add up to 1.
    ///
    /// ```
    /// use asfound_core::costing::DecisionTable;
    /// let table = DecisionTable { chances: vec![0.2, 0.8], costs: vec![vec![150.0, 50.0], vec![90.0, 90.0]] };
    /// // A trial that is always right is worth as much as certainty; one that says the same of both states is worth nothing.
    /// assert!((table.worth_of_trial(&[vec![1.0, 0.0], vec![0.0, 1.0]]) - 12.0).abs() < 1e-12);
    /// assert_eq!(table.worth_of_trial(&[vec![0.7, 0.7], vec![0.3, 0.3]]), 0.0);
    /// ```
    #[must_use]
    pub fn worth_of_trial(&self, says: &[Vec<f64>]) -> f64 {
        let outcomes: Vec<(f64, Vec<f64>)> = says.iter().map(|says| posterior(&self.chances, says)).collect();
        let of = |costs: &Vec<f64>| {
            let after =
                outcomes.iter().map(|(_, chances)| chances.iter().zip(costs).map(|(chance, cost)| chance * cost).sum());
            after.collect::<Vec<f64>>()
        };
        let costs: Vec<Vec<f64>> = self.costs.iter().map(of).collect();
        let chances = outcomes.iter().map(|(chance, _)| *chance).collect();
        Self { chances, costs }.worth_of_certainty()
    }
}

/// How likely an outcome is, and how likely each state is once it was seen: Bayes' rule. An outcome that cannot be tells
/// nothing.
pub(super) fn posterior(chances: &[f64], says: &[f64]) -> (f64, Vec<f64>) {
    let both: Vec<f64> = chances.iter().zip(says).map(|(chance, says)| chance * says).collect();
    let seen: f64 = both.iter().sum();
    let after = if seen > 0.0 { both.into_iter().map(|both| both / seen).collect() } else { chances.to_vec() };
    (seen, after)
}
