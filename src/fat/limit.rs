use crate::authority::Authority;

/// A row that limits what a product of a name may hold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct CompositionLimit {
    /// Whose limit it is.
    pub authority: Authority,
    /// The key of the product.
    pub product_key: &'static str,
    /// The product, as the document names it.
    pub product: &'static str,
    /// Fat at most, percent.
    pub fat: Option<f64>,
    /// Whether the fat is that of the product before it is cooked or smoked.
    pub fat_of_uncooked: bool,
    /// Water at most, percent of all ingredients, itself included.
    pub water_of_ingredients: Option<f64>,
    /// Added water at most, percent.
    pub added_water: Option<f64>,
    /// Fat and added water together at most, percent.
    pub fat_and_added_water: Option<f64>,
}

/// A row that limits how much more than the fresh meat a product may weigh.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct WeightGain {
    /// Whose limit it is.
    pub authority: Authority,
    /// The key of the product.
    pub product_key: &'static str,
    /// Finished weight at most, percent of green weight.
    pub percent_of_green: f64,
}

/// A row that asks for protein on the fat-free part.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct LeastProtein {
    /// Whose limit it is.
    pub authority: Authority,
    /// The key of the product, its statement included.
    pub product_key: &'static str,
    /// Protein on the fat-free part at least, percent.
    pub percent: f64,
}

/// What a country or dry cured ham must have come to.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct CountryHam {
    /// Salt of the finished product at least, percent, where nitrite or nitrate was used.
    pub salt: Option<f64>,
    /// Salt in the water at least, percent, where neither was.
    pub brine: Option<f64>,
    /// Or this water activity at most.
    pub activity: Option<f64>,
    /// Weight lost at least, percent of the fresh weight.
    pub loss: Option<f64>,
}
