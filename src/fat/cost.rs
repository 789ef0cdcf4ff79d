use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};
use uom::si::f64::Mass;

use crate::range::{Range, bounds};
use crate::units::kilograms;

bounds! {
    PERCENT: "share of a component", "%", 0.0, 100.0;
    COST: "cost of a kilogram", "", 0.0, 1e9;
    KG: "weight", "kg", 0.0, 1e6;
}

/// A lot on offer for a blend.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Offer {
    /// Fat, percent.
    pub fat: f64,
    /// Protein, percent, where it counts.
    pub protein: Option<f64>,
    /// What a kilogram costs, in any money.
    pub cost: f64,
    /// At least this much of it.
    pub least: Mass,
    /// At most this much of it.
    pub most: Mass,
}

/// What a blend is to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wanted {
    /// Its weight.
    pub batch: Range<Mass>,
    /// Its fat, percent.
    pub fat: Range<f64>,
    /// Its protein, percent, where it counts.
    pub protein: Option<Range<f64>>,
}

/// The cheapest blend.
#[derive(Debug, Clone, PartialEq)]
pub struct Cheapest {
    /// How much of each offer, in their order.
    pub masses: Vec<Mass>,
    /// What it costs.
    pub cost: f64,
}

/// Why there is no cheapest blend.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum NoBlend {
    /// An input is outside its bounds.
    #[error(transparent)]
    OutOfRange(#[from] crate::range::OutOfRange),
    /// No amounts within the offers give what is wanted.
    #[error(
        "no amounts within the offers give the weight, the fat and the protein that are wanted"
    )]
    Infeasible,
    /// The solver found neither an answer nor that there is none.
    #[error("the amounts are too far apart for the solver")]
    Unsolved,
    /// Protein is wanted and an offer does not say its own.
    #[error("offer {0} does not say its protein, and protein is wanted")]
    ProteinMissing(usize),
}

/// The blend of offers that costs least and is what is wanted: a linear programme, solved
/// exactly.
///
/// Minimise Σ cᵢ wᵢ with Σ wᵢ in the batch, Σ wᵢ fᵢ between the ends of the fat times Σ wᵢ, the
/// same for protein, and each wᵢ between its least and its most.
///
/// # Errors
/// [`NoBlend::Infeasible`] when nothing within the offers is what is wanted;
/// [`NoBlend::ProteinMissing`] and [`NoBlend::OutOfRange`] for the inputs.
///
/// ```
/// use greenweight::fat::{Offer, Wanted, cheapest};
/// use greenweight::{range::Range, units::{kilograms, pounds}};
///
/// let offer = |fat, cost, least, most| Offer {
///     fat, cost, protein: None, least: pounds(least), most: pounds(most),
/// };
/// // Beef of 25 percent fat and pork of 40 to at most 30: the pork at least 50 lb.
/// let offers = [offer(25.0, 2.25, 0.0, 200.0), offer(40.0, 1.35, 50.0, 1e4)];
/// let wanted = Wanted {
///     batch: Range::new(pounds(180.0), pounds(1e4))?,
///     fat: Range::new(0.0, 30.0)?,
///     protein: None,
/// };
/// let blend = cheapest(&offers, &wanted)?;
/// assert!((blend.masses[0] - pounds(120.0)).value.abs() < 1e-6);
/// assert!((blend.masses[1] - pounds(60.0)).value.abs() < 1e-6);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn cheapest(offers: &[Offer], wanted: &Wanted) -> Result<Cheapest, NoBlend> {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let mut variables = Vec::with_capacity(offers.len());
    for offer in offers {
        let (least, most) = (KG.check(offer.least.value)?, KG.check(offer.most.value)?);
        if least > most {
            return Err(NoBlend::Infeasible);
        }
        PERCENT.check(offer.fat)?;
        variables.push(problem.add_var(COST.check(offer.cost)?, (least, most)));
    }
    let all = || variables.iter().map(|&variable| (variable, 1.0));
    problem.add_constraint(all(), ComparisonOp::Ge, wanted.batch.low().value);
    problem.add_constraint(all(), ComparisonOp::Le, wanted.batch.high().value);
    let fat: Vec<_> = offers.iter().map(|offer| offer.fat).collect();
    band(&mut problem, &variables, &fat, wanted.fat);
    if let Some(wanted) = wanted.protein {
        let protein: Result<Vec<_>, _> = offers
            .iter()
            .enumerate()
            .map(|(n, offer)| offer.protein.ok_or(NoBlend::ProteinMissing(n)))
            .collect();
        band(&mut problem, &variables, &protein?, wanted);
    }
    let outcome = problem.solve().map_err(|error| match error {
        microlp::Error::Infeasible => NoBlend::Infeasible,
        _ => NoBlend::Unsolved,
    })?;
    let solution = outcome.solution().ok_or(NoBlend::Unsolved)?;
    let masses = variables.iter().map(|&variable| kilograms(solution.var_value(variable).max(0.0)));
    Ok(Cheapest { masses: masses.collect(), cost: solution.objective() })
}

/// A component of the blend between two percentages: Σ wᵢ (cᵢ − end) on the right side of zero.
fn band(problem: &mut Problem, variables: &[Variable], shares: &[f64], wanted: Range<f64>) {
    let against = |end: f64| {
        variables.iter().zip(shares).map(move |(&variable, share)| (variable, share - end))
    };
    problem.add_constraint(against(wanted.low()), ComparisonOp::Ge, 0.0);
    problem.add_constraint(against(wanted.high()), ComparisonOp::Le, 0.0);
}
