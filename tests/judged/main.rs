//! Invented recipes that a reader judged by hand, one by one, and what the command must answer to each.
//!
//! `expected.csv` says of each document in `documents` what must hold:
//!
//! - `not-clear`: somebody could be hurt. The command never ends with status 0.
//! - `clear`: the recipe is right. The command ends with status 0.
//! - `no-break`: the recipe is right by a rule that this version need not hold. It never breaks.
//!
//! `wrong.toml` holds what is answered wrongly today, by cause, and the open lines of right recipes that are
//! unproven today.
#![cfg(feature = "cli")]

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Expected {
    NotClear,
    Clear,
    NoBreak,
}

/// What the command answers to one document.
struct Answer {
    status: i32,
    /// The verdict, or "unread".
    verdict: String,
    /// The rules of its open lines.
    open: BTreeSet<String>,
}

/// The list of wrong answers.
#[derive(Default)]
struct Wrong {
    documents: BTreeSet<String>,
    /// Right recipes that are unproven, and the rules of their open lines.
    open: BTreeMap<String, BTreeSet<String>>,
}

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/judged")
}

fn expected() -> Vec<(String, Expected)> {
    let mut reader = csv::Reader::from_path(folder().join("expected.csv")).unwrap();
    let rows = reader.records().map(|row| {
        let row = row.unwrap();
        let expected = match &row[1] {
            "not-clear" => Expected::NotClear,
            "clear" => Expected::Clear,
            "no-break" => Expected::NoBreak,
            other => panic!("`{other}` is expected of no document"),
        };
        (row[0].to_owned(), expected)
    });
    rows.collect()
}

fn answer(document: &str) -> Answer {
    let output = Command::new(env!("CARGO_BIN_EXE_greenweight"))
        .args(["check", "--format", "json"])
        .arg(folder().join("documents").join(document).with_extension("toml"))
        .output()
        .unwrap();
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    let file = &report["files"][0];
    let findings = file["findings"].as_array().cloned().unwrap_or_default();
    let open = findings.iter().filter(|finding| finding["verdict"] == "unproven");
    Answer {
        status: output.status.code().unwrap(),
        verdict: file["verdict"].as_str().unwrap_or("unread").to_owned(),
        open: open.map(|finding| finding["rule"].as_str().unwrap().to_owned()).collect(),
    }
}

fn answers(documents: &[(String, Expected)]) -> Vec<Answer> {
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let share = documents.len().div_ceil(threads).max(1);
    std::thread::scope(|scope| {
        let shares = documents.chunks(share);
        let each = |share: &[(String, Expected)]| {
            share.iter().map(|(document, _)| answer(document)).collect()
        };
        let running: Vec<_> =
            shares.map(|share| scope.spawn(move || -> Vec<Answer> { each(share) })).collect();
        running.into_iter().flat_map(|thread| thread.join().unwrap()).collect()
    })
}

fn wrong() -> Wrong {
    let text = std::fs::read_to_string(folder().join("wrong.toml")).unwrap();
    let table: toml::Table = text.parse().unwrap();
    let texts = |value: &toml::Value| -> Vec<String> {
        value.as_array().unwrap().iter().map(|text| text.as_str().unwrap().to_owned()).collect()
    };
    let mut wrong = Wrong::default();
    for cause in table.get("cause").and_then(|causes| causes.as_array()).into_iter().flatten() {
        let documents = texts(&cause["documents"]);
        assert!(!documents.is_empty(), "no document has the cause {}: drop it", cause["is"]);
        for document in documents {
            assert!(wrong.documents.insert(document.clone()), "{document} is listed twice");
        }
    }
    for open in table.get("open").and_then(|open| open.as_array()).into_iter().flatten() {
        let document = open["document"].as_str().unwrap().to_owned();
        wrong.open.insert(document, texts(&open["rules"]).into_iter().collect());
    }
    wrong
}

/// Takes documents off the list.
fn take_off(documents: &BTreeSet<&str>) {
    let path = folder().join("wrong.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let stays = |line: &&str| {
        let name = line.trim().trim_end_matches(',').trim_matches('"');
        !(line.trim_start().starts_with('"') && documents.contains(name))
    };
    let kept: Vec<_> = text.lines().filter(stays).collect();
    // A cause without documents goes with its last one.
    let text = kept.join("\n") + "\n";
    let (head, causes) = text.split_once("[[cause]]").unwrap_or((&text, ""));
    let causes = causes.split("[[cause]]").filter(|cause| cause.contains("    \""));
    let causes: String = causes.map(|cause| format!("[[cause]]{cause}")).collect();
    std::fs::write(path, format!("{}\n", format!("{head}{causes}").trim_end())).unwrap();
}

#[test]
fn each_judged_document_is_answered_as_its_judge_asked() {
    let documents = expected();
    let wrong = wrong();
    let mut complaints = Vec::new();
    let mut right = BTreeSet::new();
    for ((document, expected), answer) in documents.iter().zip(answers(&documents)) {
        let listed = wrong.documents.contains(document);
        let is_right = match expected {
            Expected::NotClear => answer.status != 0,
            Expected::NoBreak => !matches!(answer.verdict.as_str(), "breaks" | "unread"),
            Expected::Clear => match (answer.verdict.as_str(), wrong.open.get(document)) {
                ("breaks" | "unread", _) => false,
                (_, None) => answer.status == 0,
                (_, Some(open)) => answer.status != 0 && *open == answer.open,
            },
        };
        let Answer { status, verdict, open } = answer;
        let said = format!("{document} ({expected:?}): {verdict}, status {status}, open: {open:?}");
        match (is_right, listed) {
            (true, true) => {
                right.insert(document.as_str());
                complaints.push(format!("{said}: it is right now, take it off the list"));
            }
            (false, false) => complaints.push(format!("{said}: it is wrong, and not listed")),
            _ => {}
        }
    }
    if std::env::var_os("GREENWEIGHT_REWRITE").is_some() {
        take_off(&right);
        complaints.retain(|complaint| !complaint.ends_with("take it off the list"));
    }
    assert!(complaints.is_empty(), "\n{}\n", complaints.join("\n"));
}

#[test]
fn every_document_is_judged_once_and_every_listed_one_exists() {
    let documents: BTreeMap<_, _> = expected().into_iter().collect();
    assert_eq!(documents.len(), expected().len());
    let files = std::fs::read_dir(folder().join("documents")).unwrap();
    let stem = |path: PathBuf| path.file_stem().unwrap().to_str().unwrap().to_owned();
    let files: BTreeSet<_> = files.map(|entry| stem(entry.unwrap().path())).collect();
    assert_eq!(files, documents.keys().cloned().collect());
    let wrong = wrong();
    assert!(wrong.documents.is_subset(&files));
    // An open line excuses a right recipe, and nothing else.
    let excused = wrong.open.keys().all(|name| documents.get(name) == Some(&Expected::Clear));
    assert!(excused, "only a document that must be clear may be open: {:?}", wrong.open.keys());
    assert!(wrong.open.values().all(|rules| !rules.is_empty()));
}
