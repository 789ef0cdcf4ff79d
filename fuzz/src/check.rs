use std::path::PathBuf;

use greenweight::finding::{Answer, Force, Verdict};
use greenweight::recipe::{Checked, Recipe};
use greenweight::report::{Checkup, Format, Layout, Outcome, Unread, labels, to_html};
use serde_json::Value;

use crate::recipe::faults_have_places;

/// A changed recipe is read, checked and reported, and the two reports are sound.
pub fn check(bytes: &[u8]) {
    let text = crate::mutated(bytes);
    let path = PathBuf::from("recipe.toml");
    let recipe = match Recipe::read(&text) {
        Ok(recipe) => recipe,
        Err(unreadable) => {
            faults_have_places(&text, &unreadable);
            let count = unreadable.faults.len();
            let unread = Outcome::Unread(Unread { path, text, faults: unreadable.faults });
            let [_, report, ..] = reports(&unread);
            let report = json(&report);
            let faults = report.pointer("/unread/0/faults").and_then(Value::as_array);
            assert_eq!(faults.map(Vec::len), Some(count));
            return;
        }
    };
    assert_eq!(recipe.validate(), [], "what is read can be");
    let checkup = Checkup::new(path, &text, recipe);
    let worst = checkup.findings.iter().map(|checked| checked.finding.verdict).max();
    assert_eq!(checkup.verdict(), worst.unwrap_or(Verdict::Unproven));
    let outcome = Outcome::Checked(checkup);
    let [printed, report, sarif, junit] = reports(&outcome);
    assert!(!printed.is_empty() && junit.ends_with("</testsuites>\n"));
    let (report, sarif) = (json(&report), json(&sarif));
    let Outcome::Checked(checkup) = &outcome else { return };
    assert!(to_html(checkup).ends_with("</html>"));
    let open = checkup.findings.iter().filter(|checked| !checked.finding.is_met()).count();
    assert_eq!(sarif["runs"][0]["results"].as_array().map(Vec::len), Some(open));

    for label in labels(checkup) {
        let Ok(says) = &label.says else {
            assert!(label.to_string().contains("DO NOT USE") && label.use_by().is_none());
            continue;
        };
        assert!(says.packed.is_none_or(|day| day >= says.made));
        let last = label.use_by();
        assert!(last.is_none_or(|last| last >= says.packed.unwrap_or(says.made)));
    }

    assert_eq!(report["files"][0]["verdict"], checkup.verdict().words());
    let printed = report["files"][0]["findings"].as_array().expect("findings");
    assert_eq!(printed.len(), checkup.findings.len());
    for (checked, printed) in checkup.findings.iter().zip(printed) {
        let place = checked.finding.place;
        crate::lies_in(&text, place.start, place.end);
        finding(checked, printed);
        accepted(checkup, checked, printed);
    }
}

/// The same as text, JSON, SARIF and JUnit.
fn reports(outcome: &Outcome<'_>) -> [String; 4] {
    let narrow = Layout { width: 40, ..Layout::default() };
    let formats = [Format::Text(narrow), Format::Json, Format::Sarif, Format::Junit];
    formats.map(|format| format.report(outcome).expect("a report is text").1)
}

fn json(text: &str) -> Value {
    serde_json::from_str(text).expect("the report is JSON")
}

/// Nothing of safety is accepted that is broken or that the writer could say, and a reason is printed.
fn accepted(checkup: &Checkup<'_>, checked: &Checked, printed: &Value) {
    let accepted = checkup.recipe.accepted(checked);
    let finding = &checked.finding;
    let broken = finding.verdict == Verdict::Breaks && finding.rule.force == Force::Safety;
    assert!(accepted.is_none() || !broken, "accepted: {finding:?}");
    let open = finding.verdict == Verdict::Unproven && finding.rule.force == Force::Safety;
    let sayable = open && finding.missing.is_none_or(|missing| missing.answer == Answer::Writer);
    assert!(accepted.is_none() || !sayable, "accepted: {finding:?}");
    let reason = accepted.map(|accepted| accepted.reason.as_ref());
    assert_eq!(printed["accepted"].as_str(), reason);
    if broken {
        assert!(!checkup.settled());
    }
}

/// A finding and its print say the same, and no figure is lost: JSON has no NaN, and
/// what is not a number would be printed as `null`.
fn finding(checked: &Checked, printed: &Value) {
    let finding = &checked.finding;
    assert_eq!(printed["verdict"], finding.verdict.words());
    assert!(
        finding.rule.force != Force::Advice || finding.verdict != Verdict::Breaks,
        "advice is never broken: {finding:?}"
    );
    if finding.verdict == Verdict::Meets {
        assert_eq!(finding.missing, None, "something is missing and it meets: {finding:?}");
    }
    assert_eq!(printed["found"].is_object(), finding.found.is_some(), "{printed}");
    if finding.found.is_some() {
        assert!(printed["found"]["low"].is_number(), "{printed}");
        assert_eq!(printed["found"]["nominal"].is_number(), finding.nominal.is_some(), "{printed}");
        if let (Some(low), Some(high)) =
            (printed["found"]["low"].as_f64(), printed["found"]["high"].as_f64())
        {
            assert!(low <= high, "{printed}");
        }
    }
    assert_eq!(printed["limit"].is_object(), finding.limit.is_some(), "{printed}");
    if let Some(limit) = finding.limit {
        assert!(printed["limit"]["figure"].is_number(), "{printed}");
        assert_eq!(printed["limit"]["second"].is_number(), limit.figures().1.is_some());
    }
    for words in ["/found/text", "/limit/text", "/margin", "/mend"] {
        let Some(words) = printed.pointer(words).and_then(Value::as_str) else { continue };
        let strange = |word: &str| matches!(word, "NaN" | "inf" | "-inf");
        assert!(!words.split([' ', '(', ')']).any(strange), "{words:?} in {printed}");
    }
}
