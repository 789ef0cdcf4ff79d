use super::check::Checked;
use super::document::{Accepted, Recipe};
use crate::finding::{Answer, Finding, Force, Verdict};

const BROKEN: &str = "a broken limit of safety cannot be accepted";
const PAST: &str =
    "the figure may be past its limit of safety: show that it is not, or change the recipe";
const SAYABLE: &str = "the recipe can say what is missing: write it, in place of accepting";
const NOTHING: &str = "there is nothing to accept: drop it";

impl<'a> Recipe<'a> {
    /// The reason for which a finding is accepted, where the component of it gives one. What meets needs none. A
    /// finding of safety is accepted only where its figure cannot be past its limit, and where nobody who writes a
    /// recipe can say what is missing: the tables have no figure for it, or a laboratory or a process authority
    /// says it.
    #[must_use]
    pub fn accepted(&self, checked: &Checked) -> Option<&Accepted<'a>> {
        let component = self.components.get(checked.component)?;
        let finding = &checked.finding;
        component
            .accepted
            .iter()
            .find(|accepted| accepted.rule.id == finding.rule.id && may_be_accepted(finding))
    }

    /// What is accepted without effect: the rule finds nothing in that component that may be accepted, or something
    /// that may not be. With each, the component counted from zero, and why.
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
                let refused = |why: &&str| found().any(|finding| refusal(finding) == Some(*why));
                let why = [BROKEN, PAST, SAYABLE].into_iter().find(refused);
                let why = why.or_else(|| (!found().any(may_be_accepted)).then_some(NOTHING));
                Some((n, accepted, why?))
            })
        })
    }
}

/// Why something that does not meet cannot be accepted.
fn refusal(finding: &Finding) -> Option<&'static str> {
    if finding.rule.force != Force::Safety {
        return None;
    }
    match (finding.verdict, finding.missing) {
        (Verdict::Meets, _) => None,
        (Verdict::Breaks, _) => Some(BROKEN),
        (Verdict::Unproven, None) => Some(PAST),
        (Verdict::Unproven, Some(_)) if finding.found.is_some() && may_be_past(finding) => {
            Some(PAST)
        }
        (Verdict::Unproven, Some(missing)) if missing.answer == Answer::Writer => Some(SAYABLE),
        (Verdict::Unproven, Some(_)) => may_be_past(finding).then_some(PAST),
    }
}

/// Whether what was found may be past its limit. A figure that nobody knows may be, unless it is one that a laboratory
/// finds.
fn may_be_past(finding: &Finding) -> bool {
    let outside = finding.missing.is_some_and(|missing| missing.answer == Answer::Outside);
    match (&finding.limit, &finding.found) {
        (Some(limit), Some(found)) => limit.judge(found) != Verdict::Meets,
        (Some(_), None) => !outside,
        (None, _) => false,
    }
}

fn may_be_accepted(finding: &Finding) -> bool {
    !finding.is_met() && refusal(finding).is_none()
}
