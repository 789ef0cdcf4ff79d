//! What is printed, and where it goes: whoever reads it may stop, a disk may be full, and a name may be anything.

use std::ffi::OsStr;
use std::fs::File;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::food::Food;
use greenweight::recipe::{Component, Ingredient, Kind, Recipe};
use greenweight::report::{CAUTIONS, Checkup, Format, Layout, Outcome, drawings, labels, to_html};
use greenweight::trace::Point;
use greenweight::units::{Reading, Scale, kilograms, minutes};

use super::{check, check_text, of_rule, root};

const DOSE: &str =
    "dose --held-to us-fsis --method ground --meat 7lb --sodium-nitrite 6.25% --scale 0.1g";

/// Every verb, and every way in which it prints.
const EVERY: [&str; 20] = [
    "check examples/recipes",
    "check examples/recipes --format json",
    "check examples/recipes --format sarif",
    "check examples/recipes --format junit",
    "scale examples/recipes/farm-stall-ring-sausage.toml --times 2.5",
    "mend examples/recipes",
    "label examples/recipes/labelled-loaf.toml",
    "new",
    "new roast",
    "new cooked-sausage",
    "rules",
    "rules cook/come-up",
    "profiles",
    DOSE,
    "--help",
    "--version",
    "help",
    "help mend",
    "check --help",
    "dose -h",
];

fn verb(arguments: &str) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_greenweight"));
    command.args(arguments.split(' ')).current_dir(root()).stdin(Stdio::null());
    command
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).unwrap()
}

/// As it is run with a reader that has already gone away.
fn unread(mut command: Command) -> Output {
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    command.stdout(writer).stderr(Stdio::piped()).output().unwrap()
}

#[test]
fn a_reader_that_goes_away_changes_no_exit_status_and_is_no_fault() {
    for arguments in EVERY {
        let open = verb(arguments).output().unwrap();
        let closed = unread(verb(arguments));
        assert_eq!(closed.status.code(), open.status.code(), "{arguments}");
        assert_eq!(text(&closed.stderr), text(&open.stderr), "{arguments}");
    }
}

#[test]
fn messages_that_nobody_can_read_change_no_exit_status() {
    for (arguments, status) in
        [("rules no/such-rule", 2), ("check no-such.toml", 2), ("nothing", 2)]
    {
        let (reader, writer) = std::io::pipe().unwrap();
        drop(reader);
        let output = verb(arguments).stderr(writer).output().unwrap();
        assert_eq!(output.status.code(), Some(status), "{arguments}");
    }
}

#[test]
fn a_full_disk_ends_every_verb_with_2_and_a_sentence() {
    let Ok(full) = File::options().write(true).open("/dev/full") else {
        eprintln!("not done: there is no device here that is always full");
        return;
    };
    for arguments in EVERY {
        let mut command = verb(arguments);
        let output = command.stdout(full.try_clone().unwrap()).stderr(Stdio::piped()).output();
        let output = output.unwrap();
        let said = text(&output.stderr);
        assert_eq!(output.status.code(), Some(2), "{arguments}: {said}");
        assert!(said.starts_with("the output could not be written: "), "{arguments}: {said}");
        assert_eq!(said.lines().count(), 1, "{arguments}: {said}");
    }
}

/// So many copies of a recipe that one change mends.
fn to_be_mended(folder: &Path, count: usize) {
    let text = std::fs::read_to_string(root().join("examples/recipes/wrong-quarter.toml")).unwrap();
    for n in 0..count {
        std::fs::write(folder.join(format!("{n:03}.toml")), &text).unwrap();
    }
}

fn mended(folder: &Path) -> usize {
    let files = std::fs::read_dir(folder).unwrap().flatten();
    let texts = files.map(|file| std::fs::read_to_string(file.path()).unwrap());
    texts.filter(|text| text.contains("amount = \"7 g\"")).count()
}

#[test]
fn mends_are_written_whether_or_not_they_can_be_shown() {
    let closed = tempfile::tempdir().unwrap();
    // Together they are more than a pipe holds.
    to_be_mended(closed.path(), 40);
    let write = format!("mend --write {}", closed.path().display());
    let output = unread(verb(&write));
    assert_eq!((output.status.code(), mended(closed.path())), (Some(0), 40));
    let Ok(full) = File::options().write(true).open("/dev/full") else { return };
    let folder = tempfile::tempdir().unwrap();
    to_be_mended(folder.path(), 40);
    let write = format!("mend --write {}", folder.path().display());
    let output = verb(&write).stdout(full).output().unwrap();
    assert_eq!((output.status.code(), mended(folder.path())), (Some(2), 40));
}

const ROAST: &str =
    "held_to = [\"us-consumer\"]\n[[component]]\nname = \"roast\"\nfood = \"whole-meat\"\n";

/// The titles of the pages that a check of a folder writes, with the names of their files.
fn pages(arguments: &[&str], pages: &Path) -> Vec<(String, String)> {
    let to = ["--pages", pages.to_str().unwrap()];
    assert_ne!(check(&[arguments, &to].concat()).status.code(), Some(2));
    let files = std::fs::read_dir(pages).unwrap().flatten();
    let mut found: Vec<_> = files
        .map(|file| {
            let page = std::fs::read_to_string(file.path()).unwrap();
            let title = page.split_once("<title>").unwrap().1.split_once('<').unwrap().0;
            (title.to_owned(), file.file_name().into_string().unwrap())
        })
        .collect();
    found.sort();
    found
}

#[test]
fn every_document_has_a_page_of_its_own_whatever_it_is_called() {
    let folder = tempfile::tempdir().unwrap();
    // Names that are one once folders are put before them, and names that are one to some disks.
    let names = [
        "a-b/loaf.toml",
        "a/b/loaf.toml",
        "a/b-loaf.toml",
        "a-b-loaf.toml",
        "c/Loaf.toml",
        "c/LOAF.toml",
        "Straße.toml",
        "STRASSE.toml",
        "d/x\u{1}y.toml",
        "d/x\u{2}y.toml",
        "e/x_y.toml",
    ];
    for (n, name) in names.iter().enumerate() {
        let path = folder.path().join(name);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, format!("title = \"{n:02}\"\n{ROAST}")).unwrap();
    }
    let to = tempfile::tempdir().unwrap();
    let found = pages(&[folder.path().to_str().unwrap()], to.path());
    let titles: Vec<_> = found.iter().map(|(title, _)| title.clone()).collect();
    let all: Vec<_> = (0..names.len()).map(|n| format!("{n:02}")).collect();
    assert_eq!(titles, all);
    let mut folded: Vec<_> = found.iter().map(|(_, file)| file.to_uppercase()).collect();
    folded.sort();
    folded.dedup();
    assert_eq!(folded.len(), names.len(), "{found:?}");
    assert!(found.iter().all(|(_, file)| !file.contains(char::is_control)), "{found:?}");
}

#[test]
fn a_document_that_is_alone_of_its_name_gives_its_name_to_its_page() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("loaf.toml"), format!("title = \"A\"\n{ROAST}")).unwrap();
    let path = folder.path().join("loaf.toml");
    let path = path.to_str().unwrap();
    let to = tempfile::tempdir().unwrap();
    assert_eq!(pages(&[path], to.path()), [("A".to_owned(), "loaf.html".to_owned())]);
}

/// What would begin a line, clear a screen, set a colour or turn the line around.
const EVIL: &str = "a\nheld to us-fsis: meets\r\u{1b}[2J\u{9b}31m\u{202e}\u{2066}b.toml";

fn steers(text: &str) -> Vec<char> {
    let steers = |c: &char| {
        (c.is_control() && *c != '\n' && *c != '\t')
            || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
    };
    text.chars().filter(steers).collect()
}

#[cfg(unix)]
#[test]
fn the_name_of_a_file_writes_no_line_and_no_escape_into_anything_that_is_printed() {
    let folder = tempfile::tempdir().unwrap();
    let good = std::fs::read_to_string(root().join("examples/recipes/wrong-quarter.toml")).unwrap();
    let good = good.replacen("\nfood = ", "\nmade_on = 2026-07-03\nfood = ", 1);
    for (name, text) in
        [(EVIL.to_owned(), good.as_str()), (format!("bad {EVIL}"), "title = \u{1b}\u{9b}\n")]
    {
        std::fs::write(folder.path().join(name), text).unwrap();
    }
    let (one, bad) = (folder.path().join(EVIL), folder.path().join(format!("bad {EVIL}")));
    let new = folder.path().join("new\n\u{1b}[1m");
    let to = folder.path().join("drawn");
    let run = |arguments: &[&OsStr]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_greenweight"));
        command.args(arguments).current_dir(root()).output().unwrap()
    };
    let word = OsStr::new;
    let (all, to) = (folder.path().as_os_str(), to.as_os_str());
    let runs: [&[&OsStr]; 14] = [
        &[word("check"), all],
        &[
            word("check"),
            all,
            word("--colour"),
            word("never"),
            word("--pages"),
            to,
            word("--plots"),
            to,
        ],
        &[word("check"), all, word("--format"), word("json")],
        &[word("check"), all, word("--format"), word("sarif")],
        &[word("check"), all, word("--format"), word("junit")],
        &[word("mend"), all],
        &[word("label"), one.as_os_str()],
        &[word("label"), bad.as_os_str()],
        &[word("scale"), one.as_os_str(), word("--times"), word("2")],
        &[word("new"), word("roast"), word("--into"), new.as_os_str()],
        &[word("new"), word("roast"), word("--into"), new.as_os_str()],
        &[word("rules"), word(EVIL)],
        &[word("new"), word(EVIL)],
        &[word(EVIL)],
    ];
    for arguments in runs {
        let output = run(arguments);
        for printed in [text(&output.stdout), text(&output.stderr)] {
            assert!(steers(printed).is_empty(), "{arguments:?}: {printed:?}");
            let forged =
                printed.lines().any(|line| line.trim_start().starts_with("held to us-fsis: meets"));
            assert!(!forged, "{arguments:?}: {printed}");
            assert!(!printed.contains("panicked"), "{printed}");
        }
    }
    // What is read from JSON is the name as it is.
    let json = run(&[word("check"), one.as_os_str(), word("--format"), word("json")]).stdout;
    let json: serde_json::Value = serde_json::from_slice(&json).unwrap();
    assert_eq!(json["files"][0]["path"], one.to_str().unwrap());
    let drawn: Vec<_> = std::fs::read_dir(to).unwrap().flatten().collect();
    assert!(!drawn.is_empty());
    for file in drawn {
        let page = std::fs::read_to_string(file.path()).unwrap();
        assert_eq!(steers(&page), []);
        assert!(!page.lines().any(|line| line.starts_with("held to us-fsis: meets")), "{page}");
    }
}

#[test]
fn names_of_a_recipe_built_by_types_write_no_line_and_no_escape_into_a_report() {
    let mut component = Component::new(EVIL, Food::WholeMeat);
    component.made_on = Some(Date::new(2026, 7, 3).unwrap());
    component.ingredients.push(Ingredient::new(EVIL, Kind::Meat, kilograms(1.0)));
    for (at, inside) in [(0.0, 40.0), (90.0, 131.0), (120.0, 150.0)] {
        let inside = Reading::new(inside, Scale::Fahrenheit).unwrap();
        component.record.push(Point::new(minutes(at), inside).unwrap());
    }
    let recipe = || {
        let components = vec![component.clone()];
        Recipe { components, ..Recipe::new(EVIL, [Authority::UsConsumer]) }
    };
    let checkup = || Checkup::new(EVIL.into(), "", recipe());
    let report = |format: Format| format.report(&Outcome::Checked(checkup())).unwrap().1;
    let mut printed: Vec<_> =
        [Format::Text(Layout::default()), Format::Junit].into_iter().map(report).collect();
    printed.extend(labels(&checkup()).iter().map(ToString::to_string));
    printed.push(to_html(&checkup()));
    printed.extend(drawings(&checkup()).unwrap().into_iter().filter_map(|drawn| drawn.record));
    assert_eq!(printed.len(), 5);
    for text in printed {
        assert_eq!(steers(&text), [], "{text}");
    }
    for text in [report(Format::Text(Layout::default())), labels(&checkup())[0].to_string()] {
        assert!(!text.lines().any(|line| line.starts_with("held to us-fsis: meets")), "{text}");
    }
    for format in [Format::Json, Format::Sarif] {
        let text = report(format);
        assert_eq!(steers(&text), [], "{text}");
        let _: serde_json::Value = serde_json::from_str(&text).unwrap();
    }
}

/// The words of every output, as far as it was printed, without the layout of its lines.
fn words(output: &str) -> String {
    let bare =
        output.lines().map(|line| line.trim_start_matches(['#', ' ', '-'])).collect::<Vec<_>>();
    let bare = bare.join(" ").replace("&quot;", "\"").replace("\\\"", "\"");
    bare.split_whitespace().collect::<Vec<_>>().join(" ")
}

const MEMORY: &str = "from memory: check those";
const LOCAL: &str = "Local codes and licensed practice come first";

#[test]
fn every_output_says_that_some_figures_are_from_memory_and_that_local_codes_come_first() {
    // A list of kinds and a version hold no figure.
    let none = ["new", "--version"];
    for arguments in EVERY.into_iter().filter(|arguments| !none.contains(arguments)) {
        let output = verb(arguments).output().unwrap();
        let said = words(text(&output.stdout));
        assert!(said.contains(MEMORY), "{arguments}: {said}");
        assert!(said.contains(LOCAL), "{arguments}: {said}");
    }
}

#[test]
fn every_report_has_every_caution_and_a_document_to_begin_with_those_that_fit_it() {
    let short = ["rules cook/come-up", "new", "new roast", "--version"];
    for arguments in EVERY.into_iter().filter(|arguments| !short.contains(arguments)) {
        let said = words(text(&verb(arguments).output().unwrap().stdout));
        for caution in CAUTIONS {
            assert!(said.contains(caution), "{arguments}: {caution}\n{said}");
        }
    }
    let kinds = verb("new").output().unwrap();
    for kind in text(&kinds.stdout).lines().filter_map(|line| line.split_whitespace().next()) {
        let start = verb(&format!("new {kind}")).output().unwrap();
        let start = text(&start.stdout);
        let cured = start.contains("curing-premix");
        assert_eq!(words(start).contains(CAUTIONS[2]), cured, "{kind}");
    }
}

#[test]
fn the_pages_of_rules_the_help_of_rules_and_drawings_have_the_short_one() {
    for rule in greenweight::recipe::rules() {
        let page = verb(&format!("rules {}", rule.id)).output().unwrap();
        let said = words(text(&page.stdout));
        assert!(said.contains(MEMORY) && said.contains(LOCAL), "{}", rule.id);
    }
    let report = verb("check examples/recipes --format sarif").output().unwrap();
    let report: serde_json::Value = serde_json::from_slice(&report.stdout).unwrap();
    let rules = report["runs"][0]["tool"]["driver"]["rules"].as_array().unwrap();
    assert!(rules.len() > 60);
    for rule in rules {
        let help = rule["help"]["text"].as_str().unwrap();
        assert!(help.contains(MEMORY) && help.contains(LOCAL), "{help}");
    }
    let folder = tempfile::tempdir().unwrap();
    let to = folder.path().to_str().unwrap();
    check(&["examples/recipes", "--plots", to, "--pages", to]);
    let files: Vec<_> = std::fs::read_dir(folder.path()).unwrap().flatten().collect();
    assert!(files.iter().any(|file| file.path().extension().is_some_and(|e| e == "svg")));
    for file in files {
        let drawn = std::fs::read_to_string(file.path()).unwrap();
        assert!(drawn.contains(MEMORY) && drawn.contains(LOCAL), "{:?}", file.path());
    }
}

#[test]
fn a_page_says_it_under_its_verdict_and_marks_findings_by_figures_from_memory() {
    let folder = tempfile::tempdir().unwrap();
    let to = folder.path().to_str().unwrap();
    check(&["examples/recipes/cheese-too-warm.toml", "--pages", to]);
    let page = std::fs::read_to_string(folder.path().join("cheese-too-warm.html")).unwrap();
    let head = page.split_once("class=\"board").unwrap().1.split_once("</header>").unwrap().0;
    let (verdict, below) = head.split_once("</p>").unwrap();
    assert!(verdict.contains("breaks"), "{verdict}");
    assert!(below.trim_start().starts_with(&format!("<p>Some figures are {MEMORY}")), "{below}");
    // The heading of the finding stands outside of its fold.
    let heading = page.split("<summary").skip(1).find(|part| part.contains("melt cheese")).unwrap();
    let heading = heading.split_once("</summary>").unwrap().0;
    assert!(heading.contains("from memory"), "{heading}");
}

#[test]
fn sarif_and_junit_cite_every_row_of_a_finding_with_its_note_and_how_it_was_seen() {
    let path = "examples/recipes/farm-stall-ring-sausage.toml";
    let json = verb(&format!("check {path} --format json")).output().unwrap();
    let json: serde_json::Value = serde_json::from_slice(&json.stdout).unwrap();
    let junit = verb(&format!("check {path} --format junit")).output().unwrap();
    let junit = text(&junit.stdout).replace("&apos;", "'").replace("&quot;", "\"");
    let junit = junit.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    let findings = json["files"][0]["findings"].as_array().unwrap();
    let plain =
        |value: &serde_json::Value| value.as_str().unwrap().trim_end_matches('.').to_owned();
    let mut second = 0;
    for source in findings.iter().flat_map(|f| f["sources"].as_array().unwrap()) {
        assert!(junit.contains(&plain(&source["document"])), "{source}");
        assert!(junit.contains(&plain(&source["note"])), "{source}");
        second += 1;
    }
    assert!(second > findings.len() / 2);
    assert!(junit.contains("(this figure is from memory: check it. Row "));
    // An unproven finding that rests on two rows.
    let unproven = "check examples/recipes --format sarif";
    let report = verb(unproven).output().unwrap();
    let report: serde_json::Value = serde_json::from_slice(&report.stdout).unwrap();
    let results = report["runs"][0]["results"].as_array().unwrap();
    let cheese = results.iter().find(|r| r["ruleId"] == "smoke/cheese-chamber").unwrap();
    assert_eq!(cheese["properties"]["seen"], serde_json::json!(["memory"]));
    let said = cheese["message"]["text"].as_str().unwrap();
    assert!(said.contains("(this figure is from memory: check it. Row "), "{said}");
}

/// Invented: a Danish sausage whose only limit is from memory, confirmed by whoever wrote it.
const CONFIRMED: &str = r#"title = "Invented: a juniper roll"
held_to = ["denmark"]
[instruments]
scale = "0.1 g"
[[confirmed]]
row = "cure/denmark/general"
printed = "60 mg/kg expressed as NaNO2"
document = "an invented order on additives"
place = "annex 1"
on = 2026-11-20
[[confirmed]]
row = "cure/denmark/150"
printed = "150 mg/kg expressed as NaNO2"
document = "another invented order"
place = "annex 2"
on = 2026-11-21
[[component]]
name = "roll"
food = "ground-meat"
raw = true
made_on = 2026-11-22
cured_as = ["dk/meat-in-general"]
cure = { method = "ground" }
[[component.ingredient]]
name = "pork"
kind = "meat"
from = "pork"
amount = "2 kg"
[[component.ingredient]]
name = "nitrite salt"
kind = "curing-premix"
strength = { sodium-nitrite = "0.6 %" }
amount = "15 g"
"#;

#[test]
fn every_report_says_who_confirmed_a_row_from_memory() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("roll.toml");
    std::fs::write(&path, CONFIRMED).unwrap();
    let name = path.to_str().unwrap();
    for format in ["text", "json", "sarif", "junit"] {
        let output = check(&[name, "--format", format, "--pages", folder.path().to_str().unwrap()]);
        let text = String::from_utf8(output.stdout).unwrap();
        // SARIF leaves out what meets.
        assert_eq!(
            text.contains("an invented order on additives"),
            format != "sarif",
            "{format}: {text}"
        );
    }
    let page = std::fs::read_to_string(folder.path().join("roll.html")).unwrap();
    assert!(page.contains("an invented order on additives"));
    let label =
        Command::new(env!("CARGO_BIN_EXE_greenweight")).args(["label", name]).output().unwrap();
    assert!(String::from_utf8(label.stdout).unwrap().contains("an invented order on additives"));
    let (_, report) = check_text(CONFIRMED);
    let rows = report["files"][0]["confirmed"].as_array().unwrap();
    let used: Vec<_> =
        rows.iter().map(|row| (row["row"].as_str().unwrap(), &row["used"])).collect();
    assert_eq!(used, [("general", &true.into()), ("150", &false.into())]);
    let finding = of_rule(&report, "cure/ingoing-nitrite")[0];
    assert_eq!(
        (&finding["verdict"], &finding["sources"][0]["confirmed"]),
        (&"meets".into(), &true.into())
    );
    // Without it the same figure proves nothing.
    let (_, report) = check_text(
        &CONFIRMED.replace("denmark/general\"\nprinted = \"60", "denmark/100\"\nprinted = \"100"),
    );
    assert_eq!(of_rule(&report, "cure/ingoing-nitrite")[0]["verdict"], "unproven");
}

#[test]
fn a_row_that_is_confirmed_on_a_day_that_has_not_come_is_a_fault() {
    let (status, report) = check_text(&CONFIRMED.replace("2026-11-21", "2999-01-01"));
    let faults = report["unread"][0]["faults"].as_array().unwrap();
    assert_eq!((status, faults.len()), (2, 1));
    assert!(faults[0]["message"].as_str().unwrap().contains("2999-01-01"));
}
