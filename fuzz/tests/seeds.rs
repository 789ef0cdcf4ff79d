//! Every seed holds, without a fuzzer.

use std::path::Path;

fn each_seed(target: &str, run: impl Fn(&[u8])) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("seeds").join(target);
    let mut count = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        run(&std::fs::read(entry.unwrap().path()).unwrap());
        count += 1;
    }
    assert!(count > 2);
}

#[test]
fn every_quantity_seed_holds() {
    each_seed("quantity", |bytes| greenweight_fuzz::quantity(str::from_utf8(bytes).unwrap()));
}

#[test]
fn every_recipe_seed_holds() {
    each_seed("recipe", |bytes| greenweight_fuzz::recipe(str::from_utf8(bytes).unwrap()));
}

#[test]
fn every_check_seed_holds() {
    each_seed("check", greenweight_fuzz::check);
}

#[test]
fn every_record_seed_holds() {
    each_seed("record", greenweight_fuzz::record);
}

#[test]
fn every_document_to_be_changed_can_be_read() {
    for template in 0..4 {
        let text = greenweight_fuzz::mutated(&[template]);
        if let Err(unreadable) = greenweight::recipe::Recipe::read(&text) {
            panic!("{template}: {unreadable}");
        }
    }
}
