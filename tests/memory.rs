//! Memory never meets: a figure that nobody read may break a recipe or leave it unproven. Whoever read it may
//! confirm it in the document.
#![cfg(feature = "recipe")]

use greenweight::cite::Seen;
use greenweight::finding::{Finding, Force, Verdict};
use greenweight::recipe::{Recipe, Remembered};
use rstest::rstest;

/// Invented: two kilograms of pork, cured for a Danish shop with `grams` of a weak premix.
fn danish(grams: &str, more: &str) -> String {
    format!(
        "title = \"Invented\"\nheld_to = [\"denmark\"]\n{more}\n[instruments]\nscale = \"0.1 g\"\n\
         [[component]]\nname = \"roll\"\nfood = \"ground-meat\"\nraw = true\ncured_as = [\"dk/meat-in-general\"]\ncure = {{ method = \"ground\" }}\n\
         [[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"2 kg\"\n\
         [[component.ingredient]]\nname = \"nitrite salt\"\nkind = \"curing-premix\"\nstrength = {{ sodium-nitrite = \"0.6 %\" }}\namount = \"{grams}\"\n"
    )
}

fn confirmed(printed: &str) -> String {
    format!(
        "[[confirmed]]\nrow = \"cure/denmark/general\"\nprinted = \"{printed}\"\ndocument = \"an invented order on additives, 2024\"\n\
         place = \"annex 1\"\non = 2026-11-20\n"
    )
}

fn nitrite(text: &str) -> Finding {
    let found = Recipe::read(text).expect("it is read").check();
    let ingoing =
        |finding: &Finding| finding.limit.is_some() && finding.rule.id == "cure/ingoing-nitrite";
    found.iter().map(|checked| checked.finding).find(ingoing).expect("its nitrite is judged")
}

// 60 mg/kg, from memory: 15 g of 0.6 % in 2 kg bring 45, 25 g bring 75.
#[rstest]
#[case::under_it("15 g", Verdict::Unproven)]
#[case::over_it("25 g", Verdict::Breaks)]
fn a_limit_from_memory_may_break_and_never_meets(#[case] grams: &str, #[case] verdict: Verdict) {
    let finding = nitrite(&danish(grams, ""));
    let row = finding.rows[0].expect("a row");
    assert_eq!((finding.verdict, row.key, row.citation.seen), (verdict, "general", Seen::Memory));
    assert_eq!(finding.missing.is_some(), verdict == Verdict::Unproven, "it says what is missing");
}

#[rstest]
#[case::under_it("15 g", Verdict::Meets)]
#[case::over_it("25 g", Verdict::Breaks)]
fn a_row_that_its_reader_confirms_is_a_row_that_was_read(
    #[case] grams: &str,
    #[case] verdict: Verdict,
) {
    let text = danish(grams, &confirmed("60 mg/kg expressed as NaNO2"));
    assert_eq!(nitrite(&text).verdict, verdict);
    let recipe = Recipe::read(&text).unwrap();
    let [confirmed] = recipe.confirmed.as_slice() else { panic!("one row is confirmed") };
    assert_eq!((confirmed.row.table, confirmed.row.key), ("cure/denmark", "general"));
    assert_eq!(&text[confirmed.place.start..confirmed.place.end][..13], "[[confirmed]]");
}

#[rstest]
#[case::another_figure(&confirmed("150 mg/kg expressed as NaNO2"), "printed")]
#[case::no_row_of_this_name(&confirmed("60 mg/kg").replace("denmark/general", "denmark/generel"), "row")]
#[case::a_row_that_was_read(&confirmed("1").replace("denmark/general", "us-ingoing/dry"), "row")]
#[case::no_text(&confirmed("60 mg/kg expressed as NaNO2").replace("\"cure/denmark/general\"", "5"), "row")]
#[case::no_day(&confirmed("60 mg/kg expressed as NaNO2").replace("on = 2026-11-20\n", ""), "on")]
#[case::no_document(&confirmed("60 mg/kg expressed as NaNO2").replace("an invented order on additives, 2024", " "), "document")]
fn what_confirms_nothing_is_a_fault(#[case] confirmed: &str, #[case] key: &str) {
    let text = danish("15 g", confirmed);
    let faults = Recipe::read(&text).expect_err("it is refused").faults;
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert!(faults[0].message.contains(&format!("`{key}`")), "{faults:?}");
    assert!(faults[0].place.end > faults[0].place.start);
}

#[test]
fn every_row_from_memory_that_judges_can_be_confirmed_by_its_path() {
    let paths: Vec<_> = Remembered::all().iter().map(|row| (row.table, row.key)).collect();
    assert!(paths.contains(&("cure/denmark", "general")));
    assert!(paths.contains(&("chill/warm-time", "australia-4-h")));
    let mut once = paths.clone();
    once.sort_unstable();
    once.dedup();
    assert_eq!(once.len(), paths.len());
}

/// None of the judged documents, whoever it is held to, meets a limit of safety by a row from memory.
#[test]
fn no_judged_document_meets_by_memory() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/judged/documents");
    let mut met = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        let text = std::fs::read_to_string(entry.unwrap().path()).unwrap();
        let Ok(recipe) = Recipe::read(&text) else { continue };
        for finding in recipe.check().iter().map(|checked| checked.finding) {
            if finding.verdict == Verdict::Meets && finding.rule.force == Force::Safety {
                let rows = finding.rows.into_iter().flatten();
                assert!(rows.clone().all(|row| row.citation.seen != Seen::Memory), "{finding:?}");
                met += 1;
            }
        }
    }
    assert!(met > 100, "{met}");
}

/// The slower schedule of cured meat was reported; how much of an accelerator it asks for is from memory.
#[test]
fn a_condition_from_memory_proves_nothing_until_it_is_confirmed() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/judged/documents/q03.toml");
    let text = std::fs::read_to_string(path).unwrap();
    let confirmed = "[[confirmed]]\nrow = \"chill/cured-conditions/option-3\"\n\
        printed = \"at least 100 ppm ingoing nitrite and at least 250 ppm ingoing erythorbate or ascorbate\"\n\
        document = \"an invented copy of the guideline\"\nplace = \"option 3\"\non = 2026-11-20\n";
    let cooling = |text: &str| {
        let found = Recipe::read(text).expect("it is read").check();
        let of = found.iter().filter(|checked| checked.finding.rule.id == "chill/cooling");
        of.map(|checked| checked.finding.verdict).collect::<Vec<_>>()
    };
    assert_eq!(cooling(&text), [Verdict::Unproven]);
    assert_eq!(cooling(&format!("{text}\n{confirmed}")), [Verdict::Meets]);
}

#[test]
fn a_row_is_confirmed_once() {
    let twice = confirmed("60 mg/kg expressed as NaNO2").repeat(2);
    let faults = Recipe::read(&danish("15 g", &twice)).expect_err("it is refused").faults;
    assert_eq!(faults.len(), 1, "{faults:?}");
}

/// Invented: it is too slow for the first option, keeps the second, which is from memory alone, and the third, which
/// is upheld by an edition that was read.
#[test]
fn of_two_schedules_that_are_kept_one_that_was_read_is_named() {
    let curve = [
        (0, 135.0),
        (2, 130.5),
        (4, 126.0),
        (36, 123.5),
        (44, 117.0),
        (94, 79.5),
        (150, 64.0),
        (200, 55.0),
        (260, 47.0),
        (310, 41.0),
        (330, 38.5),
    ];
    let rows = curve.map(|(at, inside)| {
        format!("[[component.cooling]]\nafter = \"{at} min\"\ninside = \"{inside} °F\"\n")
    });
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nthermometer = \"1 °F\"\n\
         [[component]]\nname = \"loin\"\nfood = \"whole-meat\"\n{}\
         [[component.step]]\ndo = \"cook\"\nto = \"170 °F\"\n[[component.step]]\ndo = \"chill\"\n",
        rows.concat()
    );
    let found = Recipe::read(&text).expect("it is read").check();
    let cooling =
        found.iter().find(|c| c.finding.rule.id == "chill/cooling").expect("it is judged");
    let row = cooling.finding.rows[0].expect("a row");
    assert_eq!((cooling.finding.verdict, row.key), (Verdict::Meets, "fsis-1999-2-1"));
}
