use uom::si::f64::Mass;

use super::lot::{Lot, added_water, protein_fat_free};
use super::table::{COUNTRY_HAM, PRODUCT_LIMITS, PROTEIN_FAT_FREE, WEIGHT_GAIN};
use crate::authority::Authority;
use crate::cite::{Cited, Row};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Placed, Rule, Share, Verdict};
use crate::range::Range;

const FAT: Rule = Rule::new("fat/name", "fat that a product of this name may hold", Force::Quality);
const WATER: Rule =
    Rule::new("fat/water", "water that a product of this name may hold", Force::Quality);
const GAIN: Rule =
    Rule::new("fat/weight-gain", "weight that a product of this name may gain", Force::Quality);
const PROTEIN: Rule = Rule::new("fat/protein", "protein that goes with a name", Force::Quality);
const HAM: Rule =
    Rule::new("fat/country-ham", "salt and drying of a country or dry cured ham", Force::Quality);
const TARGET: Rule = Rule::new("fat/target", "the fat that the blend is to have", Force::Quality);

/// The rules of this room.
pub const RULES: [Rule; 6] = [FAT, WATER, GAIN, PROTEIN, HAM, TARGET];

const FAT_UNKNOWN: Missing = Missing::new(
    "the fat of an ingredient, or of the finished product",
    "write fat = \"25 %\" beside each meat, with fat_error where it was analysed, or analysis = { fat = \"…\" }",
);
const ANALYSIS: Missing = Missing::new(
    "an analysis of the finished product: cooking and drying change what it holds",
    "write analysis = { fat = \"…\", moisture = \"…\", protein = \"…\" }",
);
const WEIGHTS: Missing =
    Missing::new("the weight of every ingredient", "give every ingredient a weight, water too");
const PROTEIN_UNKNOWN: Missing = Missing::new(
    "the protein and the fat of the finished product",
    "write analysis = { protein = \"…\", fat = \"…\" }, the protein being that of the raw pork",
);
const SALT_UNKNOWN: Missing = Missing::new(
    "the salt of the finished ham: with nitrite or nitrate its salt, without it its water activity, or salt and moisture",
    "write analysis = { salt = \"…\", moisture = \"…\", water_activity = 0.9 }",
);
const UNCOOKED: Missing = Missing::new(
    "the fat of an ingredient: the name goes by the mix before it is cooked or smoked",
    "write fat = \"25 %\" beside each meat, with fat_error where it was analysed",
);
const CURED_UNKNOWN: Missing = Missing::new(
    "whether nitrite or nitrate went in: a plant among the ingredients may bring them",
    "write the plant as kind \"curing-premix\" with the strength its maker has analysed, or leave it out",
);
const FINISHED: Missing = Missing::new(
    "the weight before and after",
    "weigh the meat and the finished batch, and write finished = \"…\"",
);

const IN_PRODUCT: &str = "fat, of the product";
const OF_INGREDIENTS: &str = "water, of all ingredients";
const ADDED_WATER: &str = "added water, of the product";
const BOTH: &str = "fat and added water, of the product";
const FAT_FREE: &str = "protein, on the fat-free part";
const IN_HAM: &str = "salt, of the product";
const IN_WATER: &str = "salt, in the water phase";
const COUNTRY: [&str; 2] = ["us/country-ham", "us/dry-cured-ham"];
const IN_BLEND: &str = "fat, of the meat";

/// What is known of a product sold under a name.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Named<'a> {
    /// The names, as the tables key them.
    pub sold_as: &'a [&'static str],
    /// The blend of everything that goes in, where every part is known.
    pub blend: Option<Lot>,
    /// Whether it is cooked or dried after it is mixed.
    pub changed: bool,
    /// Fat by analysis, percent.
    pub fat: Option<f64>,
    /// Moisture by analysis, percent.
    pub moisture: Option<f64>,
    /// Protein by analysis, percent.
    pub protein: Option<f64>,
    /// Of the protein, what is not of the meat, percent.
    pub other_protein: f64,
    /// Salt by analysis, percent.
    pub salt: Option<f64>,
    /// Water activity by analysis.
    pub water_activity: Option<f64>,
    /// Whether nitrite or nitrate went in, where it is known.
    pub cured: Option<bool>,
    /// Water among the ingredients.
    pub water: Option<Range<Mass>>,
    /// All ingredients, the water included.
    pub all: Option<Range<Mass>>,
    /// The meat.
    pub green: Option<Range<Mass>>,
    /// The finished product.
    pub finished: Option<Range<Mass>>,
    /// Where it stands in the document.
    pub place: Place,
}

/// The names of products whose composition or weight is limited.
pub fn name_keys() -> impl Iterator<Item = &'static str> {
    let limits = PRODUCT_LIMITS.iter().map(|row| row.value.product_key);
    let protein = PROTEIN_FAT_FREE.iter().map(|row| row.value.product_key);
    limits.chain(WEIGHT_GAIN.iter().map(|row| row.value.product_key)).chain(protein).chain(COUNTRY)
}

/// Checks what a product may hold under its names, by one authority.
pub fn named(product: &Named<'_>, authority: Authority, report: &mut impl FnMut(Finding)) {
    let own = |key: &'static str, of: Authority| of == authority && product.sold_as.contains(&key);
    for row in PRODUCT_LIMITS.iter().filter(|row| own(row.value.product_key, row.value.authority)) {
        if let Some(most) = row.value.fat {
            report(product.fat_at_most(most, row.value.fat_of_uncooked, &row.row));
        }
        if let Some(most) = row.value.water_of_ingredients {
            report(product.water_at_most(most, &row.row));
        }
        // None at all is a matter of the ingredients, some of a formula on the analysis.
        match row.value.added_water {
            Some(most) if most <= 0.0 => report(product.water_at_most(0.0, &row.row)),
            Some(most) => report(product.added_at_most(most, false, &row.row)),
            None => {}
        }
        if let Some(most) = row.value.fat_and_added_water {
            report(product.added_at_most(most, true, &row.row));
        }
    }
    for row in WEIGHT_GAIN.iter().filter(|row| own(row.value.product_key, row.value.authority)) {
        report(product.weighs_at_most(&GAIN, row.value.percent_of_green, &row.row));
    }
    for row in PROTEIN_FAT_FREE.iter().filter(|row| own(row.value.product_key, row.value.authority))
    {
        report(product.protein_at_least(row.value.percent, &row.row));
    }
    if COUNTRY.iter().any(|key| own(key, Authority::UsFsis)) {
        product.country_ham(report);
    }
}

impl Named<'_> {
    fn unproven(&self, rule: &'static Rule, row: &'static Row, missing: Missing) -> Finding {
        Finding::new(rule, Verdict::Unproven).row(row).missing(missing).at(self.place)
    }

    fn held(
        &self,
        rule: &'static Rule,
        row: &'static Row,
        known: Range<f64>,
        most: f64,
        of: &'static str,
    ) -> Finding {
        let share = |percent| Share { percent, of };
        let known = Range::ordered(share(known.low()), share(known.high()));
        let limit = Limit::AtMost(share(most));
        let verdict = limit.judge(&known);
        Finding::new(rule, verdict).found(&known).limit(limit).row(row).at(self.place)
    }

    fn fat_at_most(&self, most: f64, of_uncooked: bool, row: &'static Row) -> Finding {
        // What was cooked or dried is analysed as it is then.
        let mixed = of_uncooked && self.changed;
        let known = match (self.fat.filter(|_| !mixed), self.changed && !mixed, self.blend) {
            (Some(fat), _, _) => Range::ordered(fat, fat),
            (None, true, _) => return self.unproven(&FAT, row, ANALYSIS),
            (None, false, Some(blend)) => blend.fat,
            (None, false, None) => {
                return self.unproven(&FAT, row, if mixed { UNCOOKED } else { FAT_UNKNOWN });
            }
        };
        self.held(&FAT, row, known, most, IN_PRODUCT)
    }

    fn water_at_most(&self, most: f64, row: &'static Row) -> Finding {
        let (Some(water), Some(all)) = (self.water, self.all) else {
            return self.unproven(&WATER, row, WEIGHTS);
        };
        // The water is part of what it is divided by.
        let share = |water: Mass, all: Mass| {
            if water.value > 0.0 { 100.0 * (water / all).value } else { 0.0 }
        };
        let low = share(water.low(), all.high());
        let high = share(water.high(), all.low()).min(100.0);
        let known = Range::ordered(low.next_down().max(0.0), high.next_up());
        let known = if high > 0.0 { known } else { Range::ordered(0.0, 0.0) };
        let finding = self.held(&WATER, row, known, most, OF_INGREDIENTS);
        let leave = most <= 0.0 && finding.verdict == Verdict::Breaks;
        if leave { finding.mend(Mend::LeaveOut) } else { finding }
    }

    fn added_at_most(&self, most: f64, with_fat: bool, row: &'static Row) -> Finding {
        let (Some(moisture), Some(protein)) = (self.moisture, self.protein) else {
            return self.unproven(&WATER, row, ANALYSIS);
        };
        let Ok(water) = added_water(moisture, protein, self.other_protein) else {
            return self.unproven(&WATER, row, ANALYSIS);
        };
        // Muscle alone comes out below zero, which is no room for more fat.
        let water = water.max(0.0);
        match (with_fat, self.fat) {
            (true, None) => self.unproven(&WATER, row, ANALYSIS),
            (true, Some(fat)) => {
                self.held(&WATER, row, Range::ordered(water + fat, water + fat), most, BOTH)
            }
            (false, _) => self.held(&WATER, row, Range::ordered(water, water), most, ADDED_WATER),
        }
    }

    fn at_least(
        &self,
        rule: &'static Rule,
        row: &'static Row,
        found: f64,
        least: f64,
        of: &'static str,
    ) -> Finding {
        let share = |percent| Share { percent, of };
        let known = Range::ordered(share(found), share(found));
        let limit = Limit::AtLeast(share(least));
        Finding::new(rule, limit.judge(&known)).found(&known).limit(limit).row(row).at(self.place)
    }

    fn protein_at_least(&self, least: f64, row: &'static Row) -> Finding {
        let of_it = self.protein.zip(self.fat);
        match of_it.and_then(|(protein, fat)| protein_fat_free(protein, fat).ok()) {
            Some(found) => self.at_least(&PROTEIN, row, found, least, FAT_FREE),
            None => self.unproven(&PROTEIN, row, PROTEIN_UNKNOWN),
        }
    }

    /// With nitrite or nitrate, salt; without, salt in the water or water activity; and either
    /// way the weight that was lost. Where it is not known which, both are met or it is open.
    fn country_ham(&self, report: &mut impl FnMut(Finding)) {
        for Cited { value: row, row: cited } in &COUNTRY_HAM {
            if let Some(loss) = row.loss {
                report(self.weighs_at_most(&HAM, 100.0 - loss, cited));
            }
            if let Some(least) = row.salt.filter(|_| self.cured != Some(false)) {
                report(self.if_cured(match self.salt {
                    Some(salt) => self.at_least(&HAM, cited, salt, least, IN_HAM),
                    None => self.unproven(&HAM, cited, SALT_UNKNOWN),
                }));
            }
            let of_water = row.brine.zip(row.activity).filter(|_| self.cured != Some(true));
            if let Some((brine, activity)) = of_water {
                report(self.if_cured(self.salted_or_dry(brine, activity, cited)));
            }
        }
    }

    /// Salt in the water, or a water activity: either of the two is enough.
    fn salted_or_dry(&self, brine: f64, activity: f64, cited: &'static Row) -> Finding {
        let dry = self.water_activity.is_some_and(|found| found <= activity);
        let phase = self.salt.zip(self.moisture).map(|(s, w)| 100.0 * s / (s + w));
        match phase {
            _ if dry => Finding::new(&HAM, Verdict::Meets).row(cited).at(self.place),
            Some(phase)
                if phase.is_finite() && (phase >= brine || self.water_activity.is_some()) =>
            {
                self.at_least(&HAM, cited, phase, brine, IN_WATER)
            }
            _ => self.unproven(&HAM, cited, SALT_UNKNOWN),
        }
    }

    /// A row for what is cured, or for what is not, may be another's where it is not known.
    fn if_cured(&self, finding: Finding) -> Finding {
        match (self.cured, finding.verdict) {
            (None, Verdict::Breaks) => {
                Finding { verdict: Verdict::Unproven, ..finding }.missing(CURED_UNKNOWN)
            }
            _ => finding,
        }
    }

    fn weighs_at_most(&self, rule: &'static Rule, most: f64, row: &'static Row) -> Finding {
        let (Some(green), Some(finished)) = (self.green, self.finished) else {
            return self.unproven(rule, row, FINISHED);
        };
        let at = |green: Mass| Limit::AtMost(green * (most / 100.0));
        let (surely, perhaps) = (at(green.low()), at(green.high()));
        let verdict = match (surely.judge(&finished), perhaps.judge(&finished)) {
            (Verdict::Meets, _) => Verdict::Meets,
            (_, Verdict::Breaks) => Verdict::Breaks,
            _ => Verdict::Unproven,
        };
        Finding::new(rule, verdict).found(&finished).limit(surely).row(row).at(self.place)
    }
}

/// Holds the blend of the meats against the fat it is to have: *breaks* when even the ranges of
/// the lots do not explain the difference, and *meets* with a note where they may, since a target
/// is an aim and no limit.
pub fn target(blend: Option<Lot>, wanted: Placed<Range<f64>>, report: &mut impl FnMut(Finding)) {
    let share = |percent| Share { percent, of: IN_BLEND };
    let (low, high) = (wanted.value.low(), wanted.value.high());
    let limit = if low < high {
        Limit::Between(share(low), share(high))
    } else {
        Limit::Exactly(share(low))
    };
    let finding = |verdict| Finding::new(&TARGET, verdict).limit(limit).at(wanted.place);
    let Some(blend) = blend else {
        report(finding(Verdict::Unproven).missing(FAT_UNKNOWN));
        return;
    };
    let known = Range::ordered(share(blend.fat.low()), share(blend.fat.high()));
    let reached = blend.fat.low() <= high && blend.fat.high() >= low;
    let verdict = if reached { Verdict::Meets } else { Verdict::Breaks };
    let finding = finding(verdict).found(&known);
    let sure = limit.judge(&known) == Verdict::Meets;
    report(if reached && !sure {
        finding.note("Within what the fat of the lots is known to; an analysis would tell.")
    } else {
        finding
    });
}
