use super::check::Checked;
use super::document::{Accepted, Recipe};
use crate::finding::{Finding, Force, Verdict};

impl<'a> Recipe<'a> {
    /// The reason for which a finding is accepted, where the component of it gives one. What meets needs
    /// none, and a broken limit of safety has none.
    #[must_use]
    pub fn accepted(&self, checked: &Checked) -> Option<&Accepted<'a>> {
        let component = self.components.get(checked.component)?;
        let finding = &checked.finding;
        component
            .accepted
            .iter()
            .find(|accepted| accepted.rule.id == finding.rule.id && may_be_accepted(finding))
    }

    /// What is accepted for nothing: the rule finds nothing in that component that may be. With each, the
    /// component counted from zero, and why.
    pub fn accepted_in_vain<'r>(
        &'r self,
        findings: &'r [Checked],
    ) -> impl Iterator<Item = (usize, &'r Accepted<'a>, &'static str)> + 'r {
        self.components.iter().enumerate().flat_map(move |(n, component)| {
            component.accepted.iter().filter_map(move |accepted| {
                let of_it = |checked: &&Checked| {
                    checked.component == n && checked.finding.rule.id == accepted.rule.id
                };
                let found = || findings.iter().filter(of_it).map(|checked| &checked.finding);
                if found().any(is_broken_safety) {
                    Some((n, accepted, "a broken limit of safety cannot be accepted"))
                } else if found().any(may_be_accepted) {
                    None
                } else {
                    Some((n, accepted, "there is nothing to accept: drop it"))
                }
            })
        })
    }
}

fn is_broken_safety(finding: &Finding) -> bool {
    finding.verdict == Verdict::Breaks && finding.rule.force == Force::Safety
}

fn may_be_accepted(finding: &Finding) -> bool {
    !finding.is_met() && !is_broken_safety(finding)
}
