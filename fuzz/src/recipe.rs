use greenweight::recipe::{Recipe, Unreadable};

/// A text is a recipe, or it has faults, each with its place.
pub fn recipe(text: &str) {
    match Recipe::read(text) {
        Ok(recipe) => {
            assert!(!recipe.components.is_empty(), "a recipe that makes nothing");
            assert!(!recipe.held_to.is_empty(), "a recipe that is held to nothing");
        }
        Err(unreadable) => faults_have_places(text, &unreadable),
    }
}

pub(crate) fn faults_have_places(text: &str, unreadable: &Unreadable) {
    assert!(!unreadable.faults.is_empty(), "unreadable without a reason");
    let mut before = 0;
    for fault in &unreadable.faults {
        crate::lies_in(text, fault.place.start, fault.place.end);
        assert!(fault.place.start >= before, "faults are in the order of the document");
        assert!(!fault.message.is_empty());
        before = fault.place.start;
    }
    assert!(!unreadable.to_string().is_empty());
}
