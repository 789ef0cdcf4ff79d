//! How many rows each document's table has, so that none is lost on the way. The numbers were
//! counted from the documents' figures as they were gathered, not from these files.

use greenweight_references::References;
use rstest::rstest;

#[rstest]
// 9 CFR 424.21(c): nitrite and nitrate for pickle, dry cure and chopped meat.
#[case("cure/us-ingoing", 6)]
// The same: ten rows of accelerators. That of citric acid and citrates stands apart, and that
// of pyrophosphate is two, one on the meat and one on the finished product.
#[case("cure/us-accelerators", 10)]
#[case("cure/us-citric-replacement", 1)]
#[case("cure/us-phosphates", 5)]
// 9 CFR 424.22(b): five formulas, each for the sodium and the potassium salt.
#[case("cure/us-bacon", 10)]
#[case("cure/us-bacon-nitrate", 1)]
#[case("cure/us-bacon-tolerance", 1)]
#[case("cure/us-bacon-skin", 1)]
#[case("cure/us-bacon-weight", 1)]
#[case("cure/us-bacon-test", 1)]
#[case("cure/us-residual", 1)]
#[case("cure/us-infant", 2)]
// A least level, and two remarks beside it.
#[case("cure/us-minimum", 1)]
#[case("cure/us-minimum-remarks", 2)]
// 21 CFR 172.170, .175, .177 and the guide to fish hazards: five products, of which two have
// nitrate too, and the process of one.
#[case("cure/us-fda", 7)]
#[case("cure/us-fda-chub", 1)]
#[case("cure/us-fda-action", 2)]
#[case("cure/eu", 88)]
#[case("cure/eu-footnotes", 17)]
#[case("cure/great-britain", 14)]
// Eight national rows outside the Union's own, four of them Danish.
#[case("cure/denmark", 4)]
#[case("cure/other-national", 4)]
#[case("cure/canada", 5)]
#[case("cure/codex", 8)]
#[case("cure/australia-new-zealand", 6)]
#[case("cure/japan", 7)]
#[case("cure/phosphates-elsewhere", 8)]
#[case("cure/ascorbates-elsewhere", 6)]
#[case("cure/rounded-pairs", 3)]
#[case("cure/conversion-factors", 15)]
// Ten rules of the Union, two national ones, one of Codex, two of the United States.
#[case("cure/conditions", 15)]
// Four strengths of the United States and five of other countries, one of them the same.
#[case("cure/premix-strength", 8)]
fn a_table_has_as_many_rows_as_its_documents_gave(#[case] table: &str, #[case] rows: usize) {
    assert_eq!(References::read().table(table).rows.len(), rows);
}

#[test]
fn every_table_of_the_cure_room_is_counted() {
    let text = include_str!("counts.rs");
    for table in References::read().tables.iter().filter(|table| table.room() == "cure") {
        let known = ["cure/molar-mass", "cure/nitrate-practice"].contains(&table.path.as_str());
        assert!(
            known || text.contains(&format!("{:?}", table.path)),
            "{} is not counted",
            table.path
        );
    }
}

#[rstest]
#[case("salt/brine-uk", 10)]
#[case("salt/brine-uk-leaflet", 10)]
#[case("salt/brine-us", 12)]
#[case("salt/solubility", 20)]
#[case("salt/density", 14)]
#[case("salt/specific-volume", 63)]
#[case("salt/freezing-point", 20)]
#[case("salt/pitzer", 4)]
#[case("salt/water-activity", 52)]
#[case("salt/water-activity-by-temperature", 48)]
#[case("salt/salt-for-water-activity", 15)]
#[case("salt/activity-formulas", 6)]
#[case("salt/saturated-humidity", 27)]
#[case("salt/saturated-activity", 18)]
#[case("salt/saturated-fixed", 12)]
#[case("salt/norrish", 6)]
#[case("salt/foods", 15)]
#[case("salt/food-groups", 4)]
#[case("salt/salometer", 10)]
#[case("fat/composition", 255)]
#[case("fat/measures", 244)]
#[case("fat/cooking-yield", 66)]
#[case("fat/regression", 6)]
#[case("fat/derived-yield", 32)]
// Eight densities of salt and two facts about its sodium.
#[case("fat/salt-density", 10)]
#[case("fat/fat-limits", 10)]
// Fifteen rows of the federal text, and two of pork sausage read in older parts of it; the
// other seventeen older readings stand apart.
#[case("fat/product-limits", 17)]
#[case("fat/product-limits-older", 17)]
// Six, of which that of bacon stands with its cure.
#[case("fat/weight-gain", 5)]
#[case("fat/protein-fat-free", 16)]
#[case("fat/country-ham", 12)]
// Three of the federal text, five from memory, nine and two reported elsewhere.
#[case("fat/moisture-protein", 19)]
#[case("fat/binders", 20)]
#[case("fat/antioxidants", 21)]
#[case("fat/ingredients", 20)]
#[case("fat/lean-points", 11)]
// Twelve, of which the usual salt stands with the salt.
#[case("fat/grinding", 11)]
#[case("fat/uncertainty", 22)]
fn a_table_of_salt_or_fat_has_as_many_rows_as_its_documents_gave(
    #[case] table: &str,
    #[case] rows: usize,
) {
    assert_eq!(References::read().table(table).rows.len(), rows);
}
