//! Cure limits of authorities that go by product, both sides of their dates.
#![cfg(feature = "recipe")]

use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::cure::{
    AUSTRALIA_NEW_ZEALAND, CANADA, CODEX, DENMARK, EU, GREAT_BRITAIN, JAPAN, MeasuredOn,
    product_rows,
};
use greenweight::finding::{Finding, Verdict};
use greenweight::recipe::Recipe;
use rstest::rstest;

/// The findings about an invented cooked sausage: 3 kg meat, 1 kg water, 60 g of a nitrite
/// salt of 0.5 % with `extra` in its strength.
fn findings(
    authority: &str,
    cured_as: &str,
    date: &str,
    salt: &str,
    strength: &str,
) -> Vec<Finding> {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{authority}\"]\n{date}\n[instruments]\nscale = \"0.1 g\"\n\
         [[component]]\nname = \"sausage\"\nfood = \"ground-meat\"\nraw = true\n{cured_as}\ncure = {{ method = \"ground\" }}\n\
         [[component.ingredient]]\nname = \"meat\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"3 kg\"\n\
         [[component.ingredient]]\nname = \"ice\"\nkind = \"water\"\namount = \"1 kg\"\n\
         [[component.ingredient]]\nname = \"nitrite salt\"\nkind = \"curing-premix\"\namount = \"{salt}\"\nstrength = {{ {strength} }}\n"
    );
    let recipe = Recipe::read(&text).unwrap();
    recipe.check().into_iter().map(|checked| checked.finding).collect()
}

const HALF: &str = "sodium-nitrite = \"0.5 %\"";

fn verdicts(findings: &[Finding], rule: &str) -> Vec<Verdict> {
    findings.iter().filter(|f| f.rule.id == rule).map(|f| f.verdict).collect()
}

#[rstest]
// 100 g of 0.5 % in 4.1 kg is 121.95 mg/kg of sodium nitrite, 81.3 of the ion: under the 150
// of before, over the 80 of after.
#[case::before("date = 2025-10-08", "100 g", Verdict::Meets)]
#[case::on_the_day("date = 2025-10-09", "100 g", Verdict::Breaks)]
#[case::under_the_new("date = 2025-10-09", "98 g", Verdict::Meets)]
#[case::over_the_old("date = 2025-10-08", "130 g", Verdict::Breaks)]
fn the_european_figure_changes_on_9_october_2025(
    #[case] date: &str,
    #[case] salt: &str,
    #[case] verdict: Verdict,
) {
    let found = findings("european-union", "cured_as = [\"eu/heat-treated\"]", date, salt, HALF);
    assert_eq!(verdicts(&found, "cure/ingoing-nitrite"), [verdict]);
}

#[test]
fn a_recipe_proves_the_ingoing_limit_and_never_the_residue() {
    let found = findings(
        "european-union",
        "cured_as = [\"eu/heat-treated\"]",
        "date = 2026-01-01",
        "90 g",
        HALF,
    );
    assert_eq!(verdicts(&found, "cure/ingoing-nitrite"), [Verdict::Meets]);
    assert_eq!(verdicts(&found, "cure/residue"), [Verdict::Unproven]);
    let found = findings("japan", "cured_as = [\"jp/meat\"]", "", "90 g", HALF);
    assert_eq!(verdicts(&found, "cure/residue"), [Verdict::Unproven]);
}

#[test]
fn great_britain_keeps_what_the_union_left() {
    let found = findings(
        "great-britain",
        "cured_as = [\"gb/meat-in-general\"]",
        "date = 2026-01-01",
        "100 g",
        HALF,
    );
    assert_eq!(verdicts(&found, "cure/ingoing-nitrite"), [Verdict::Meets]);
}

#[test]
fn a_product_that_is_not_named_is_unproven() {
    let found = findings("european-union", "", "", "90 g", HALF);
    assert_eq!(verdicts(&found, "cure/ingoing-nitrite"), [Verdict::Unproven]);
}

#[test]
fn nitrate_in_a_product_without_a_nitrate_row_is_not_passed_over() {
    let both = "sodium-nitrite = \"0.5 %\", sodium-nitrate = \"0.5 %\"";
    let found = findings(
        "european-union",
        "cured_as = [\"eu/heat-treated\"]",
        "date = 2026-01-01",
        "90 g",
        both,
    );
    assert_eq!(verdicts(&found, "cure/ingoing-nitrate"), [Verdict::Unproven]);
}

#[test]
fn canada_asks_for_at_least_100_and_at_most_200_of_the_salt_itself() {
    let canada = |salt: &str| {
        verdicts(
            &findings(
                "canada",
                "cured_as = [\"ca/cured\"]",
                "",
                salt,
                "potassium-nitrite = \"6.25 %\"",
            ),
            "cure/ingoing-nitrite",
        )
    };
    // Over 3 kg of meat or over 4 kg of product: the row does not say, so both must do.
    assert_eq!(canada("8 g"), [Verdict::Meets, Verdict::Meets]);
    assert_eq!(canada("4 g"), [Verdict::Breaks, Verdict::Meets]);
    assert_eq!(canada("5.5 g"), [Verdict::Unproven, Verdict::Meets]);
    assert_eq!(canada("20 g"), [Verdict::Meets, Verdict::Breaks]);
}

#[test]
fn the_mend_counts_the_salt_into_the_product_it_is_divided_by() {
    use greenweight::finding::Mend;
    let over = findings(
        "european-union",
        "cured_as = [\"eu/heat-treated\"]",
        "date = 2026-01-01",
        "150 g",
        HALF,
    );
    let Some(Mend::UseAtMost(most)) = over[0].mend else { panic!("{:?}", over[0]) };
    let grams = (most.value * 1e4).round() / 10.0;
    let at = |grams: f64| {
        let salt = format!("{grams} g");
        verdicts(
            &findings(
                "european-union",
                "cured_as = [\"eu/heat-treated\"]",
                "date = 2026-01-01",
                &salt,
                HALF,
            ),
            "cure/ingoing-nitrite",
        )[0]
    };
    assert_eq!(at(grams), Verdict::Meets, "{grams} g");
    assert_ne!(at(grams + 0.3), Verdict::Meets, "{grams} g is not the largest");
}

#[test]
fn superseded_rows_stay_and_are_never_current() {
    let old = CODEX.iter().filter(|row| row.value.superseded).count();
    assert_eq!(old, 4);
    assert_eq!(product_rows(Authority::Codex, "codex/cxs88-old-in", None).count(), 0);
    let day = |y, m, d| Date::new(y, m, d).ok();
    // Ripened cheese: 150 until 9 October 2026, then 75 as the ion.
    let cheese = |day| {
        product_rows(Authority::EuropeanUnion, "eu/ripened-cheese", day)
            .map(|row| row.row.key)
            .collect::<Vec<_>>()
    };
    assert_eq!(cheese(day(2026, 10, 8)), ["0172-nitrate-old"]);
    assert_eq!(cheese(day(2026, 10, 9)), ["0172-nitrate-new"]);
}

#[test]
fn every_row_of_the_tables_is_there() {
    let counts = [
        EU.len(),
        GREAT_BRITAIN.len(),
        DENMARK.len(),
        CANADA.len(),
        CODEX.len(),
        AUSTRALIA_NEW_ZEALAND.len(),
        JAPAN.len(),
    ];
    assert_eq!(counts, [88, 14, 4, 5, 8, 6, 7]);
    // A residual cap stands beside an ingoing figure only.
    for row in &EU {
        if row.value.residual_cap.is_some() {
            assert_eq!(row.value.measured_on, MeasuredOn::IngoingOnProduct, "{}", row.row.key);
        }
    }
}
