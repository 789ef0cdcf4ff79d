//! Documents that somebody made to do harm: each is refused, or checked, in bounded time and memory, with a message
//! that says what is wrong. (A test that would not end is the failure.)

use std::fmt::Write as _;
use std::io::Write as _;
use std::path::Path;

use greenweight::recipe::{LARGEST, Recipe};
use rstest::rstest;

use super::check;

const HEAD: &str = "title = \"x\"\nheld_to = [\"us-fsis\", \"us-consumer\", \"us-food-code-2022\", \"us-fda\"]\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n";

/// As much of something as a document holds.
fn full(head: &str, item: impl Fn(usize) -> String) -> String {
    let mut text = head.to_owned();
    for n in 0.. {
        let item = item(n);
        if text.len() + item.len() > LARGEST {
            break;
        }
        text.push_str(&item);
    }
    text
}

fn refused(text: &str) -> String {
    let faults = Recipe::read(text).expect_err("it is refused").faults;
    assert!(faults.len() <= 101, "{} faults are told", faults.len());
    let said: Vec<_> = faults.iter().map(|fault| fault.message.clone()).collect();
    let said = said.join("; ");
    assert!(said.len() < 20_000, "{} bytes are said", said.len());
    said
}

#[rstest]
#[case::steps("[[component.step]]\ndo = \"cook\"\nto = \"163 °F\"\n", "`step` has ")]
#[case::ingredients(
    "[[component.ingredient]]\nname = \"i\"\nkind = \"meat\"\namount = \"1 g\"\n",
    "`ingredient` has "
)]
#[case::components("[[component]]\nname = \"b\"\nfood = \"fish\"\n", "`component` has ")]
#[case::aims("[[component.lethality]]\nd = \"20 s\"\n", "`lethality` has ")]
#[case::reasons(
    "[[component.accept]]\nrule = \"cook/endpoint\"\nreason = \"r\"\n",
    "`accept` has "
)]
fn a_list_of_thousands_is_refused_with_its_length(#[case] item: &str, #[case] said: &str) {
    let found = refused(&full(HEAD, |_| item.to_owned()));
    assert!(found.contains(said) && found.contains("are read at most"), "{found}");
}

#[test]
fn names_by_the_hundred_thousand_are_refused() {
    let names = |key: &str, name: &str| {
        full(&format!("{HEAD}{key} = ["), |_| format!("\"{name}\",")) + "]\n"
    };
    // What closes the list makes it a byte too long, so that less is put in.
    let short = |text: String| text.replacen("\"us/ground-beef\",\"us/ground-beef\",", "", 1);
    let found = refused(&short(names("sold_as", "us/ground-beef")));
    assert!(found.contains("`sold_as` has "), "{found}");
}

#[test]
fn of_unknown_keys_by_the_hundred_thousand_a_hundred_are_told_and_the_rest_counted() {
    let found = refused(&full("title = \"x\"\n", |n| format!("k{n} = 1\n")));
    assert!(found.contains("unknown key `k0`") && found.contains("more faults after this one"));
}

#[rstest]
#[case::of_lists(format!("a = {}", "[".repeat(1_000_000)))]
#[case::of_inline_tables(format!("a = {}", "{ a = ".repeat(500_000)))]
#[case::of_dotted_keys(format!("a{} = 1", ".a".repeat(1_000_000)))]
#[case::of_headings(full("", |n| format!("[a{}]\n", ".a".repeat(n % 3000))))]
fn nesting_without_end_is_no_recipe(#[case] text: String) {
    let found = refused(&text);
    assert!(found.contains("TOML") || found.contains("unknown key"), "{found}");
}

#[rstest]
#[case::of_a_mass(format!("{HEAD}finished = \"{} kg\"\n", "9".repeat(1_000_000)))]
#[case::of_an_exponent(format!("{HEAD}finished = \"1e999999999 kg\"\n"))]
#[case::of_a_temperature(format!("{HEAD}[[component.step]]\ndo = \"cook\"\nto = \"1e308 °F\"\n"))]
#[case::of_a_time(format!("{HEAD}[[component.step]]\ndo = \"cook\"\nfor = \"{} h\"\n", "9".repeat(400)))]
#[case::of_a_bare_number(format!("title = {}", "9".repeat(1_000_000)))]
#[case::of_a_fraction(format!("{HEAD}finished = \"1/{} kg\"\n", "0".repeat(100)))]
#[case::nan(format!("{HEAD}[component.analysis]\nph = nan\n"))]
#[case::infinite(format!("{HEAD}[component.analysis]\nph = inf\n"))]
fn a_number_beyond_all_measure_is_refused(#[case] text: String) {
    let found = refused(&text);
    assert!(!found.is_empty());
}

#[test]
fn more_bytes_than_are_read_are_refused_before_they_are_held() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("big.toml");
    std::fs::write(&path, vec![b'#'; 10 << 20]).unwrap();
    let output = check(&[path.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(2));
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.contains("more than the 4194304 bytes that are read"), "{said}");
    assert!(Recipe::read(&"#".repeat(LARGEST + 1)).is_err());
}

#[test]
fn the_longest_document_that_is_read_is_checked() {
    let mut text = HEAD.to_owned();
    for n in 0..1000 {
        let kinds =
            ["hold", "cold-smoke", "cook", "rest", "chill", "pack", "thaw", "serve", "ferment"];
        let kind = kinds[n % kinds.len()];
        write!(text, "[[component.step]]\ndo = \"{kind}\"\nat = \"38 °F\"\nfor = \"1 h\"\n")
            .unwrap();
        write!(
            text,
            "[[component.ingredient]]\nname = \"{n}\"\nkind = \"curing-premix\"\namount = \"1 g\"\n"
        )
        .unwrap();
    }
    let text = full(&text, |n| {
        format!("[[component.cooling]]\nafter = \"{n} min\"\ninside = \"{} °F\"\n", 160 - n % 2)
    });
    let found = Recipe::read(&text).unwrap().check();
    assert!(found.len() > 3);
}

#[test]
fn a_record_without_end_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let document = format!(
        "{HEAD}recorded_in = {{ file = \"r.csv\", time = \"s\", written = \"seconds\", inside = [\"i\"], scale = \"°C\" }}\n"
    );
    let path = folder.path().join("r.toml");
    std::fs::write(&path, document).unwrap();
    let mut csv = String::from("s,i\n");
    for n in 0..2_000_001 {
        writeln!(csv, "{n},60").unwrap();
    }
    std::fs::write(folder.path().join("r.csv"), csv).unwrap();
    let output = check(&[path.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(2));
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.contains("more than 2000000 readings"), "{said}");
}

/// What is said of a document that names `r.csv` beside it, which `make` puts there.
fn with_file(make: impl Fn(&Path, &Path)) -> String {
    with_named("r.csv", make)
}

fn with_named(named: &str, make: impl Fn(&Path, &Path)) -> String {
    let folder = tempfile::tempdir().unwrap();
    let beside = folder.path().join("recipes");
    std::fs::create_dir(&beside).unwrap();
    let document = beside.join("r.toml");
    std::fs::write(
        &document,
        format!(
            "{HEAD}recorded_in = {{ file = \"{named}\", time = \"s\", written = \"seconds\", inside = [\"i\"], scale = \"°C\" }}\n"
        ),
    )
    .unwrap();
    make(&beside.join("r.csv"), folder.path());
    let output = check(&[document.to_str().unwrap()]);
    let said = String::from_utf8([output.stdout, output.stderr].concat()).unwrap();
    assert_eq!(output.status.code(), Some(2), "{said}");
    said
}

#[cfg(unix)]
fn linked(file: &Path, to: &Path) {
    std::os::unix::fs::symlink(to, file).unwrap();
}

#[cfg(unix)]
fn pipe(at: &Path) {
    assert!(std::process::Command::new("mkfifo").arg(at).status().unwrap().success());
}

// (A pipe that is opened waits for ever.)
#[cfg(unix)]
#[rstest]
#[case::a_pipe(|file: &Path, _: &Path| pipe(file), "`r.csv` is not a plain file")]
#[case::a_folder(|file: &Path, _: &Path| std::fs::create_dir(file).unwrap(), "`r.csv` is not a plain file")]
#[case::a_device(|file: &Path, _: &Path| linked(file, Path::new("/dev/zero")), "`r.csv` is not beside the document")]
#[case::a_link_to_nothing(|file: &Path, _: &Path| linked(file, Path::new("nothing")), "r.csv cannot be read")]
#[case::a_link_to_itself(|file: &Path, _: &Path| linked(file, file), "r.csv cannot be read")]
fn a_record_is_a_plain_file(#[case] make: fn(&Path, &Path), #[case] says: &str) {
    let said = with_file(make);
    assert!(said.contains(says), "{said}");
}

#[cfg(unix)]
#[test]
fn a_link_out_of_the_folder_of_the_document_is_not_read_and_one_within_it_is() {
    const OTHER: &str = "s,secret\n0,60\n";
    let outside = |file: &Path, folder: &Path| {
        std::fs::write(folder.join("other.csv"), OTHER).unwrap();
        linked(file, &folder.join("other.csv"));
    };
    let through_a_folder = |file: &Path, folder: &Path| {
        std::fs::write(folder.join("r.csv"), OTHER).unwrap();
        linked(&file.with_file_name("below"), folder);
    };
    let above = |_: &Path, folder: &Path| {
        std::fs::write(folder.join("other.csv"), OTHER).unwrap();
    };
    for said in [
        with_file(outside),
        with_named("below/r.csv", through_a_folder),
        with_named("../other.csv", above),
    ] {
        assert!(said.contains("is not beside the document") && !said.contains("secret"), "{said}");
    }
    let inside = |file: &Path, _: &Path| {
        std::fs::write(file.with_file_name("real.csv"), OTHER).unwrap();
        linked(file, Path::new("real.csv"));
    };
    // It is read, and lacks a column.
    assert!(with_file(inside).contains("no column is headed `i`; there are s, secret"));
}

#[rstest]
#[case::of_one_line(|file: &mut std::fs::File| file.write_all(&vec![b'a'; 1 << 20]).unwrap(), "length of a line")]
#[case::of_one_cell(|file: &mut std::fs::File| {
    file.write_all(b"s,i\n0,\"").unwrap();
    file.write_all("1\n".repeat(1 << 19).as_bytes()).unwrap();
}, "length of a line")]
#[case::of_more_bytes_than_readings_take(|file: &mut std::fs::File| file.set_len(300 << 20).unwrap(), "size of `r.csv`: 314572800 bytes is outside 0 to 268435456 bytes")]
fn a_record_that_is_too_long_is_refused(#[case] make: fn(&mut std::fs::File), #[case] says: &str) {
    let said = with_file(|file, _| make(&mut std::fs::File::create(file).unwrap()));
    assert!(said.contains(says), "{said}");
    assert!(said.len() < 1_000, "{} bytes are said", said.len());
}

// A log of a machine that others read is no place for what stands in a file that is no record.
#[rstest]
#[case::no_table("TOKEN=0123456789\n", "TOKEN")]
#[case::a_long_heading("s,correct horse battery staple and more\n", "battery")]
#[case::a_long_cell("s,i\n0,correct horse battery staple and more\n", "battery")]
#[case::a_long_time("s,i\ncorrect horse battery staple and more,5\n", "battery")]
#[case::an_escape("s,i\n0,5\u{1b}[31m\n", "[31m")]
fn a_message_repeats_no_line_of_a_file(#[case] csv: &str, #[case] hidden: &str) {
    let said = with_file(|file, _| std::fs::write(file, csv).unwrap());
    assert!(said.contains("r.csv, line") && !said.contains(hidden), "{said}");
}

#[cfg(unix)]
#[test]
fn a_pipe_in_a_folder_of_recipes_is_not_waited_for() {
    let folder = tempfile::tempdir().unwrap();
    pipe(&folder.path().join("p.toml"));
    let pattern = folder.path().join("*.toml");
    for named in [folder.path(), &pattern] {
        let output = check(&[named.to_str().unwrap()]);
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(2));
        assert!(said.contains("not a plain file"), "{said}");
    }
}
