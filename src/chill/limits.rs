use super::table::{GROWTH_LIMITS, GROWTH_LIMITS_1992, GROWTH_LIMITS_OTHER, GROWTH_TEMPERATURES};
use crate::cite::Cited;

/// A pathogen whose limits of growth are tabled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Pathogen {
    /// *Bacillus cereus*.
    BacillusCereus,
    /// *Campylobacter jejuni*.
    Campylobacter,
    /// *Clostridium botulinum* type A, and proteolytic B and F.
    BotulinumProteolytic,
    /// *Clostridium botulinum* type E, and non-proteolytic B and F; a type of which it is not said
    /// counts here, where limits are stricter.
    BotulinumNonProteolytic,
    /// *Clostridium perfringens*.
    Perfringens,
    /// Pathogenic *Escherichia coli*.
    EscherichiaColi,
    /// *Listeria monocytogenes*.
    Listeria,
    /// *Salmonella*.
    Salmonella,
    /// *Shigella*.
    Shigella,
    /// *Staphylococcus aureus*, its growth.
    StaphylococcusGrowth,
    /// *Staphylococcus aureus*, its toxin.
    StaphylococcusToxin,
    /// *Vibrio cholerae*.
    VibrioCholerae,
    /// *Vibrio parahaemolyticus*.
    VibrioParahaemolyticus,
    /// *Vibrio vulnificus*.
    VibrioVulnificus,
    /// *Yersinia enterocolitica*.
    Yersinia,
}

/// Beyond which limits a pathogen does not grow, by one source. They are extremes from the literature,
/// and no targets.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct GrowthLimit {
    /// The pathogen.
    pub pathogen: Pathogen,
    /// Below this temperature, °C.
    pub celsius: Option<f64>,
    /// Below this pH.
    pub ph: Option<f64>,
    /// Below this water activity.
    pub activity: Option<f64>,
    /// Above this much salt in the water phase, percent.
    pub salt: Option<f64>,
}

/// What a limit of growth is in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Factor {
    /// Temperature, °C.
    Celsius,
    /// pH.
    Ph,
    /// Water activity.
    Activity,
    /// Salt in the water phase, percent.
    Salt,
}

impl GrowthLimit {
    /// Its figure for a factor, where the source has one.
    #[must_use]
    pub const fn of(&self, factor: Factor) -> Option<f64> {
        match factor {
            Factor::Celsius => self.celsius,
            Factor::Ph => self.ph,
            Factor::Activity => self.activity,
            Factor::Salt => self.salt,
        }
    }
}

/// What every source says of a pathogen: they disagree, and each keeps its own row.
pub fn growth_limits(pathogen: Pathogen) -> impl Iterator<Item = &'static Cited<GrowthLimit>> {
    let sources = GROWTH_LIMITS.iter().chain(&GROWTH_LIMITS_1992);
    let sources = sources.chain(&GROWTH_LIMITS_OTHER).chain(&GROWTH_TEMPERATURES);
    sources.filter(move |row| row.value.pathogen == pathogen)
}

/// The strictest row for a pathogen and a factor: the coldest, sourest, driest or saltiest growth that any
/// source reports.
///
/// ```
/// use greenweight::chill::{Factor, Pathogen, strictest_growth};
///
/// // FDA prints 4.4 for the pH of Listeria; the 2008 report goes down to 4.2.
/// let row = strictest_growth(Pathogen::Listeria, Factor::Ph).ok_or("no row")?;
/// assert_eq!(row.value.ph, Some(4.2));
/// assert_eq!(row.row.citation.source.key, "sanco-lm-2008");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn strictest_growth(pathogen: Pathogen, factor: Factor) -> Option<&'static Cited<GrowthLimit>> {
    let rows = growth_limits(pathogen).filter(|row| row.value.of(factor).is_some());
    rows.reduce(|a, b| {
        let (held, next) = (a.value.of(factor), b.value.of(factor));
        // More salt is the stricter; of the others less is.
        let stricter = if factor == Factor::Salt { next > held } else { next < held };
        if stricter { b } else { a }
    })
}
