//! Documents to begin with, and changes that mend.

use std::path::Path;
use std::process::{Command, Output};

use greenweight::finding::Verdict;
use greenweight::recipe::Recipe;
use rstest::rstest;

use super::root;

fn run(arguments: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_greenweight"));
    command.args(arguments).current_dir(root()).output().unwrap()
}

fn text(bytes: Vec<u8>) -> String {
    String::from_utf8(bytes).unwrap()
}

fn kinds() -> Vec<String> {
    let list = text(run(&["new"]).stdout);
    list.lines().map(|line| line.split_whitespace().next().unwrap().to_owned()).collect()
}

/// Whether everything in it meets or is accepted.
fn settled(text: &str) -> bool {
    let recipe = Recipe::read(text).unwrap_or_else(|error| panic!("{error}\n{text}"));
    let findings = recipe.check();
    findings.iter().all(|checked| {
        let settled =
            checked.finding.verdict == Verdict::Meets || recipe.accepted(checked).is_some();
        assert!(settled, "{checked:#?}\n{text}");
        settled
    })
}

#[test]
fn a_document_to_begin_with_breaks_nothing_and_says_what_only_the_cook_knows() {
    assert!(kinds().len() > 7);
    for kind in kinds() {
        let start = text(run(&["new", &kind]).stdout);
        let findings =
            Recipe::read(&start).unwrap_or_else(|error| panic!("{kind}: {error}")).check();
        let of = |verdict| findings.iter().filter(move |c| c.finding.verdict == verdict).count();
        assert_eq!(of(Verdict::Breaks), 0, "{kind}");
        assert!(of(Verdict::Unproven) > 0, "{kind}: a start proves nothing");
    }
}

/// A start with its marked lines taken up, and what a cook might write in them.
fn filled_in(start: &str) -> String {
    let (mut after, mut inside) = (["0", "80", "6"].iter(), ["160", "78", "36"].iter());
    let mut value = |key: &str| match key {
        "scale" => "0.1",
        "thermometer" => "1",
        "sodium-nitrite" => "6.25",
        "nitrite" => "30",
        "salt" => "3",
        "moisture" => "65",
        "hold" => "35",
        "come_up" => "4",
        "finished" => "1.9",
        "fat" => "25",
        "humidity" => "90",
        "after" => after.next().unwrap(),
        "inside" => inside.next().unwrap(),
        other => panic!("{other} wants something"),
    };
    let lines = start.lines().map(|line| {
        let Some(line) = line.strip_prefix("#? ") else { return line.to_owned() };
        let line = line.replace("skin = \"…\"", "skin = false").replace("ph = \"…\"", "ph = 5.1");
        let mut line = line.replace("reason = \"\"", "reason = \"ten days, by a laboratory\"");
        while let Some((before, rest)) = line.split_once('…') {
            let key = before.trim_end_matches([' ', '=', '"']).rsplit([' ', '{']).next().unwrap();
            line = format!("{before}{}{rest}", value(key));
        }
        line
    });
    lines.collect::<Vec<_>>().join("\n")
}

#[test]
fn with_its_marked_lines_filled_in_nothing_is_left_to_say() {
    for kind in kinds() {
        let start = text(run(&["new", &kind]).stdout);
        assert!(start.contains("\n#? "), "{kind}");
        assert!(settled(&filled_in(&start)), "{kind}");
    }
}

#[test]
fn a_marked_line_that_was_only_taken_up_is_refused() {
    for kind in kinds() {
        let start = text(run(&["new", &kind]).stdout);
        let marked = start.lines().enumerate().filter(|(_, line)| line.starts_with("#? "));
        for (n, _) in marked.filter(|(_, line)| line.contains('…') || line.contains("\"\"")) {
            let taken_up = |(m, line): (usize, &str)| {
                let line = if m == n { line.strip_prefix("#? ").unwrap() } else { line };
                line.to_owned()
            };
            let lines = start.lines().enumerate().map(taken_up).collect::<Vec<_>>();
            assert!(Recipe::read(&lines.join("\n")).is_err(), "{kind}: {}", lines[n]);
        }
    }
}

#[test]
fn a_start_is_written_into_a_new_file_and_never_over_another() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("mine.toml");
    let into = path.to_str().unwrap();
    assert_eq!(run(&["new", "roast", "--into", into]).status.code(), Some(0));
    let written = std::fs::read_to_string(&path).unwrap();
    assert_eq!(written, text(run(&["new", "roast"]).stdout));
    let again = run(&["new", "poultry", "--into", into]);
    assert_eq!(again.status.code(), Some(2));
    assert_eq!(std::fs::read_to_string(&path).unwrap(), written);
    let unknown = run(&["new", "roasts"]);
    assert_eq!(unknown.status.code(), Some(2));
    assert!(text(unknown.stderr).contains("smoked-cheese"));
}

fn copied(folder: &Path, example: &str) -> String {
    let from = root().join("examples/recipes").join(example).with_extension("toml");
    let to = folder.join("recipe.toml");
    std::fs::copy(from, &to).unwrap();
    to.to_str().unwrap().to_owned()
}

#[rstest]
#[case("wrong-quarter", "amount = \"1 1/4 oz\"", "amount = \"7 g\"")]
#[case("endpoint-too-low", "to = \"145 °F\"", "to = \"162 °F\"")]
#[case("cheese-too-warm", "at = \"95 °F\"", "at = \"88 °F\"")]
#[case("fridge-too-long", "for = \"3 weeks\"", "for = \"7 days\"")]
fn one_computed_change_is_shown_and_then_written_with_everything_else_as_it_was(
    #[case] example: &str,
    #[case] from: &str,
    #[case] to: &str,
) {
    let folder = tempfile::tempdir().unwrap();
    let path = copied(folder.path(), example);
    let before = std::fs::read_to_string(&path).unwrap();
    let shown = run(&["mend", &path]);
    assert_eq!(shown.status.code(), Some(1));
    assert_eq!(std::fs::read_to_string(&path).unwrap(), before, "shown, and not written");
    let difference = text(shown.stdout);
    let line = |sign: char| {
        let of = |line: &&str| {
            line.starts_with(sign)
                && !line.starts_with([sign; 3].iter().collect::<String>().as_str())
        };
        difference.lines().filter(of).map(str::to_owned).collect::<Vec<_>>()
    };
    let (less, more) = (line('-'), line('+'));
    assert!(less.iter().any(|line| line.contains(from)), "{difference}");
    assert!(more.iter().any(|line| line.contains(to)), "{difference}");
    assert_eq!(less.len(), more.len());
    let written = run(&["mend", &path, "--write"]);
    assert_eq!(written.status.code(), Some(0));
    let after = std::fs::read_to_string(&path).unwrap();
    let kept = |text: &str| text.lines().filter(|line| line.contains('#')).count();
    assert_eq!(kept(&after), kept(&before), "comments stay");
    assert_eq!(after.lines().count(), before.lines().count());
    assert!(settled(&after));
    assert_eq!(run(&["mend", &path]).status.code(), Some(0), "there is nothing left to mend");
}

#[test]
fn line_ends_and_the_mark_before_the_text_stay_as_they_were() {
    let folder = tempfile::tempdir().unwrap();
    let path = copied(folder.path(), "wrong-quarter");
    let before = std::fs::read_to_string(&path).unwrap().replace('\n', "\r\n");
    let before = format!("\u{feff}{before}");
    std::fs::write(&path, &before).unwrap();
    run(&["mend", &path, "--write"]);
    let after = std::fs::read_to_string(&path).unwrap();
    assert_eq!(after, before.replace("\"1 1/4 oz\"", "\"7 g\""));
}

#[test]
fn a_most_on_a_scale_of_ounces_is_written_in_ounces_and_never_rounded_up() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("recipe.toml");
    let text = "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nscale = \"0.1 oz\"\n[[component]]\nname = \"a\"\nfood = \"ground-meat\"\nraw = true\ncure = { method = \"ground\" }\n\
        [[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"100 lb\"\n\
        [[component.ingredient]]\nname = \"curing salt\"\nkind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"4.3 oz\"\n";
    std::fs::write(&path, text).unwrap();
    run(&["mend", path.to_str().unwrap(), "--write"]);
    let after = std::fs::read_to_string(&path).unwrap();
    // The limit is 4 oz of this premix to 100 lb; the scale may be half a step off.
    assert!(after.contains("amount = \"3.9 oz\""), "{after}");
}

#[rstest]
#[case::the_label_was_not_read("strength-not-said")]
#[case::a_spoon_is_no_scale("spooned-cure")]
#[case::a_scale_is_bought("coarse-scale")]
#[case::nothing_is_wrong("farm-stall-ring-sausage")]
fn what_only_the_cook_can_mend_is_left_alone(#[case] example: &str) {
    let folder = tempfile::tempdir().unwrap();
    let path = copied(folder.path(), example);
    let before = std::fs::read_to_string(&path).unwrap();
    let output = run(&["mend", &path, "--write"]);
    assert_eq!((output.status.code(), output.stdout), (Some(0), Vec::new()), "{example}");
    assert_eq!(std::fs::read_to_string(&path).unwrap(), before);
}

#[test]
fn what_cannot_be_read_is_said_and_the_others_are_mended() {
    let folder = tempfile::tempdir().unwrap();
    copied(folder.path(), "wrong-quarter");
    std::fs::write(folder.path().join("bad.toml"), "title = ").unwrap();
    let output = run(&["mend", folder.path().to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(output.stdout).contains("+amount = \"7 g\""));
}

#[test]
fn the_page_of_a_rule_and_the_kitchens_can_be_asked_for() {
    let page = run(&["rules", "cook/come-up"]);
    assert_eq!(page.status.code(), Some(0));
    let file = root().join("references/pages/rules/cook/come-up.md");
    assert_eq!(text(page.stdout), std::fs::read_to_string(file).unwrap());
    assert_eq!(run(&["rules", "cook/nothing"]).status.code(), Some(2));
    let kitchens = text(run(&["profiles"]).stdout);
    let (listed, _) = kitchens.split_once("\n\n").unwrap();
    assert_eq!(listed.lines().count(), greenweight::authority::Profile::ALL.len());
}
