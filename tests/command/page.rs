//! The page of a recipe, in the browser that is here. A machine without one says so and checks the page as text.

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

use super::check;

/// The page of an example.
fn page(name: &str) -> String {
    let folder = tempfile::tempdir().unwrap();
    let path = format!("examples/recipes/{name}.toml");
    check(&[&path, "--pages", folder.path().to_str().unwrap()]);
    std::fs::read_to_string(folder.path().join(name).with_extension("html")).unwrap()
}

fn findings(name: &str) -> usize {
    let output = check(&[&format!("examples/recipes/{name}.toml"), "--format", "json"]);
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    report["files"][0]["findings"].as_array().unwrap().len()
}

const BROWSERS: [&str; 4] =
    ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

fn browser() -> Option<PathBuf> {
    let folders = std::env::var_os("PATH")?;
    let named = |folder: PathBuf| BROWSERS.map(|name| folder.join(name));
    std::env::split_paths(&folders).flat_map(named).find(|path| path.is_file())
}

/// What a script finds in the page when a browser shows it so wide.
fn shown(browser: &Path, page: &str, width: u32, script: &str) -> Value {
    let folder = tempfile::tempdir().unwrap();
    let inner = folder.path().join("page.html");
    let measured = format!(
        "<script>addEventListener('load', () => {{ const found = (() => {{ {script} }})(); parent.postMessage(JSON.stringify(found), '*'); }});</script>"
    );
    std::fs::write(&inner, page.replace("</body>", &format!("{measured}</body>"))).unwrap();
    let outer = folder.path().join("frame.html");
    let frame = format!(
        "<body><script>addEventListener('message', event => {{ document.body.dataset.found = encodeURIComponent(event.data); }});</script><iframe src=\"page.html\" style=\"width:{width}px;height:3000px;border:0\"></iframe></body>"
    );
    std::fs::write(&outer, frame).unwrap();
    let output = Command::new(browser)
        .args(["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-sync"])
        .args(["--disable-background-networking", "--disable-component-update", "--disable-quic"])
        .args(["--virtual-time-budget=4000", "--dump-dom"])
        .arg(format!("--user-data-dir={}", folder.path().join("profile").display()))
        .arg(format!("file://{}", outer.display()))
        .output()
        .unwrap();
    let dom = String::from_utf8_lossy(&output.stdout);
    let found = dom.split_once("data-found=\"").unwrap_or_else(|| panic!("{dom}")).1;
    let found = found.split_once('"').unwrap().0;
    let found = percent_encoding::percent_decode_str(found).decode_utf8().unwrap();
    serde_json::from_str(&found).unwrap()
}

const LAID_OUT: &str = "
    const all = [...document.querySelectorAll('body *')];
    const wide = all.filter(e => !e.closest('figure') && e.getBoundingClientRect().right > innerWidth + 1);
    const summaries = [...document.querySelectorAll('details.finding > summary')];
    const small = summaries.filter(e => e.getBoundingClientRect().height < 16);
    const light = e => getComputedStyle(e).color === getComputedStyle(document.body).backgroundColor;
    return {
        overflows: document.documentElement.scrollWidth - innerWidth,
        wide: wide.map(e => e.outerHTML.slice(0, 80)),
        findings: summaries.length,
        small: small.length,
        unseen: all.filter(light).length,
        strips: [...document.querySelectorAll('svg.strip')].filter(e => e.getBoundingClientRect().width > 100).length,
        steps: document.querySelectorAll('ol.steps > li').length,
        broken: [...document.querySelectorAll('a[href^=\"#\"]')].filter(a => !document.getElementById(a.getAttribute('href').slice(1))).length,
        requests: performance.getEntriesByType('resource').length,
        pictures: document.querySelectorAll('figure svg').length,
    };";

#[test]
fn a_browser_lays_the_page_out_on_a_telephone_and_on_a_desk() {
    let Some(browser) = browser() else {
        eprintln!("not done: no browser of {BROWSERS:?} is here");
        return;
    };
    for (name, steps, pictures) in [("endpoint-too-low", 10, 1), ("recorded-loaf", 3, 1)] {
        let page = page(name);
        for width in [360, 390, 1100] {
            let found = shown(&browser, &page, width, LAID_OUT);
            let said = format!("{name} at {width}: {found}");
            assert!(found["overflows"].as_i64().unwrap() <= 0, "{said}");
            assert_eq!(found["wide"], Value::Array(Vec::new()), "{said}");
            assert_eq!(found["findings"], findings(name), "{said}");
            assert_eq!((&found["small"], &found["unseen"]), (&0.into(), &0.into()), "{said}");
            assert_eq!((&found["broken"], &found["requests"]), (&0.into(), &0.into()), "{said}");
            assert_eq!(found["pictures"], pictures, "{said}");
            assert_eq!(found["steps"], steps, "{said}");
            assert!(found["strips"].as_u64().unwrap() > 1, "{said}");
        }
    }
}

#[test]
fn the_page_needs_no_other_file_and_no_script() {
    let page = page("recorded-loaf");
    for elsewhere in ["<script", "src=", "http://", "https://", "@import", "url("] {
        let found = page.matches(elsewhere).count();
        // The name space of SVG is a name, and no address that is visited.
        let names = page.matches("http://www.w3.org/2000/svg").count();
        let allowed = if elsewhere == "http://" { names } else { 0 };
        assert_eq!(found, allowed, "{elsewhere}");
    }
    assert!(page.starts_with("<!DOCTYPE html>"));
}

#[test]
fn what_a_document_says_is_text_in_the_page_and_no_markup() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("roast.toml");
    let text = "title = \"<script>alert(1)</script>\"\nheld_to = [\"us-consumer\"]\n[[component]]\nname = \"<b>&\"\nfood = \"whole-meat\"\n";
    std::fs::write(&path, text).unwrap();
    check(&[path.to_str().unwrap(), "--pages", folder.path().to_str().unwrap()]);
    let page = std::fs::read_to_string(folder.path().join("roast.html")).unwrap();
    assert!(!page.contains("<script") && page.contains("&lt;b&gt;&amp;"));
}

#[test]
fn every_finding_and_every_source_of_a_report_is_on_the_page() {
    let page = page("endpoint-too-low");
    assert_eq!(page.matches("<summary").count(), findings("endpoint-too-low"));
    let output = check(&["examples/recipes/endpoint-too-low.toml", "--format", "json"]);
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    for finding in report["files"][0]["findings"].as_array().unwrap() {
        for source in finding["sources"].as_array().unwrap() {
            let key = source["key"].as_str().unwrap();
            assert!(page.contains(&format!("id=\"document-{key}\"")), "{key}");
        }
    }
}
