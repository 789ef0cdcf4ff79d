//! Many documents at once, and how text is set.

use std::path::Path;

use rstest::rstest;
use serde_json::Value;

use super::check;

const ROAST: &str =
    "held_to = [\"us-consumer\"]\n[[component]]\nname = \"roast\"\nfood = \"whole-meat\"\n";

fn write(folder: &Path, name: &str, text: &str) {
    let path = folder.join(name);
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    std::fs::write(path, text).unwrap();
}

fn titles(report: &[u8]) -> Vec<String> {
    let report: Value = serde_json::from_slice(report).unwrap();
    let files = report["files"].as_array().unwrap().iter();
    files.map(|file| file["title"].as_str().unwrap().to_owned()).collect()
}

#[test]
fn a_thousand_documents_are_reported_in_the_order_of_their_names_every_time() {
    let folder = tempfile::tempdir().unwrap();
    for n in 0..1000 {
        write(folder.path(), &format!("{n:04}.toml"), &format!("title = \"{n:04}\"\n{ROAST}"));
    }
    let report = || check(&[folder.path().to_str().unwrap(), "--format", "json"]).stdout;
    let expected: Vec<_> = (0..1000).map(|n| format!("{n:04}")).collect();
    let first = report();
    assert_eq!(titles(&first), expected);
    assert_eq!(first, report());
}

#[test]
fn one_bad_document_does_not_stop_the_others_and_the_end_counts_them() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path(), "a.toml", &format!("title = \"A\"\n{ROAST}"));
    write(folder.path(), "b.toml", "title = ");
    write(folder.path(), "c/c.toml", &format!("title = \"C\"\n{ROAST}"));
    std::fs::write(folder.path().join("d.toml"), b"title = \"\xff\"").unwrap();
    let output = check(&[folder.path().to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(2));
    let printed = String::from_utf8(output.stdout).unwrap();
    assert!(printed.contains("\n4 documents: 2 unproven, 2 could not be read\n"), "{printed}");
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.contains("b.toml:1:9") && said.contains("byte 9 starts no character"), "{said}");
}

#[test]
fn a_pattern_names_files_for_shells_that_leave_it_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path(), "x/one.toml", &format!("title = \"One\"\n{ROAST}"));
    write(folder.path(), "y/z/two.toml", &format!("title = \"Two\"\n{ROAST}"));
    write(folder.path(), "y/other.txt", "no recipe");
    let pattern = folder.path().join("**/*.toml");
    let output = check(&[pattern.to_str().unwrap(), "--format", "json"]);
    assert_eq!(titles(&output.stdout), ["One", "Two"]);
    let nothing = folder.path().join("**/*.tml");
    let output = check(&[nothing.to_str().unwrap(), "--format", "json"]);
    assert_eq!(output.status.code(), Some(2));
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    let message = report["unread"][0]["faults"][0]["message"].as_str().unwrap();
    assert!(message.contains("none has a name of this pattern"), "{message}");
}

#[test]
fn pages_of_documents_with_one_name_do_not_overwrite_each_other() {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path(), "a/loaf.toml", &format!("title = \"A\"\n{ROAST}"));
    write(folder.path(), "b/loaf.toml", &format!("title = \"B\"\n{ROAST}"));
    let pages = folder.path().join("pages");
    check(&[folder.path().to_str().unwrap(), "--pages", pages.to_str().unwrap()]);
    let written = std::fs::read_dir(&pages).unwrap();
    let mut read: Vec<_> = written
        .map(|entry| std::fs::read_to_string(entry.unwrap().path()).unwrap())
        .map(|page| page.contains("<title>A</title>"))
        .collect();
    read.sort_unstable();
    assert_eq!(read, [false, true]);
}

#[rstest]
#[case(40)]
#[case(60)]
#[case(80)]
#[case(120)]
fn text_is_set_to_its_width_but_for_words_that_are_longer(#[case] width: usize) {
    let output = check(&["examples/recipes", "--width", &width.to_string()]);
    let printed = String::from_utf8(output.stdout).unwrap();
    let long = printed.lines().filter(|line| line.chars().count() > width);
    // What stands alone on its line cannot be broken.
    let long: Vec<_> = long.filter(|line| line.split_whitespace().count() > 2).collect();
    assert_eq!(long, [""; 0]);
    let widest = printed.lines().map(|line| line.chars().count()).max().unwrap();
    assert!(widest > width - 10, "the width is used");
}

#[test]
fn colour_is_only_where_it_is_asked_for_and_says_nothing_alone() {
    let plain = check(&["examples/recipes", "--colour", "never"]).stdout;
    let piped = check(&["examples/recipes"]).stdout;
    assert_eq!(plain, piped);
    let coloured = check(&["examples/recipes", "--colour", "always"]).stdout;
    let coloured = String::from_utf8(coloured).unwrap();
    assert!(coloured.contains("\u{1b}["));
    let mut bare = String::new();
    let mut rest = coloured.as_str();
    while let Some((before, after)) = rest.split_once("\u{1b}[") {
        bare.push_str(before);
        rest = after.split_once('m').unwrap().1;
    }
    bare.push_str(rest);
    assert_eq!(bare.as_bytes(), plain);
}
