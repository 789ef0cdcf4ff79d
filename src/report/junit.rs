use std::io::{self, Write};

use quick_xml::Writer;
use quick_xml::events::{BytesDecl, BytesEnd, BytesStart, BytesText, Event};

use super::{CAUTIONS, Checkup, Lines, Unread, visible, words};
use crate::finding::Verdict;
use crate::recipe::Checked;

pub(super) fn begin(out: &mut impl Write) -> io::Result<()> {
    let mut writer = Writer::new(out);
    writer.write_event(Event::Decl(BytesDecl::new("1.0", Some("UTF-8"), None)))?;
    let name = ("name", env!("CARGO_PKG_NAME"));
    writer.write_event(Event::Start(BytesStart::new("testsuites").with_attributes([name])))?;
    writeln!(writer.get_mut())
}

pub(super) fn end(out: &mut impl Write) -> io::Result<()> {
    Writer::new(&mut *out).write_event(Event::End(BytesEnd::new("testsuites")))?;
    writeln!(out)
}

/// A suite of a recipe: a case for each finding, with what stands in the text report beside it.
pub(super) fn checked(checkup: &Checkup<'_>) -> io::Result<String> {
    let lines = Lines::new(checkup.text);
    let path = checkup.path.display().to_string();
    let accepted = checkup.accepted();
    let open = |checked: &&Checked| {
        checked.finding.verdict != Verdict::Meets && checkup.recipe.accepted(checked).is_none()
    };
    let failures = checkup.findings.iter().filter(open).count();
    let counts = [checkup.findings.len(), failures, 0, accepted];
    suite(&checkup.recipe.title, &path, counts, |writer| {
        for checked in &checkup.findings {
            let finding = &checked.finding;
            let name = format!("{} [{}]", finding.rule.asks, finding.rule.id);
            let said = format!(
                "{path}, line {}: {}",
                lines.of(finding.place.start).0,
                words::sentences(finding, &checkup.recipe)
            );
            let class = checkup.component(checked);
            case(writer, [&name, class, &path], |writer| {
                if let Some(accepted) = checkup.recipe.accepted(checked) {
                    let said = format!("accepted: {} ({said})", accepted.reason);
                    said_in(writer, "skipped", &[], &said)
                } else if finding.verdict == Verdict::Meets {
                    said_in(writer, "system-out", &[], &said)
                } else {
                    let kind = finding.verdict.words();
                    said_in(
                        writer,
                        "failure",
                        &[("message", finding.rule.asks), ("type", kind)],
                        &said,
                    )
                }
            })?;
        }
        Ok(())
    })
}

/// A suite of a document that could not be read: a case for each reason.
pub(super) fn not_read(unread: &Unread) -> io::Result<String> {
    let lines = Lines::new(&unread.text);
    let path = unread.path.display().to_string();
    let count = unread.faults.len();
    suite(&path, &path, [count, 0, count, 0], |writer| {
        for fault in &unread.faults {
            let line = lines.of(fault.place.start).0;
            let help = fault.help.as_deref().unwrap_or_default();
            let said = format!("{path}, line {line}: {} {help}", fault.message);
            case(writer, ["can be read", &path, &path], |writer| {
                said_in(writer, "error", &[("message", &fault.message), ("type", "unread")], &said)
            })?;
        }
        Ok(())
    })
}

fn suite(
    name: &str,
    path: &str,
    counts: [usize; 4],
    cases: impl FnOnce(&mut Writer<Vec<u8>>) -> io::Result<()>,
) -> io::Result<String> {
    let mut writer = Writer::new_with_indent(Vec::new(), b' ', 1);
    let [tests, failures, errors, skipped] = counts.map(|count| count.to_string());
    let attributes = [
        ("name", visible(name)),
        ("package", visible(path)),
        ("tests", tests.into()),
        ("failures", failures.into()),
        ("errors", errors.into()),
        ("skipped", skipped.into()),
    ];
    let attributes = attributes.iter().map(|(key, value)| (*key, value.as_ref()));
    let element = writer.create_element("testsuite").with_attributes(attributes);
    element.write_inner_content(|writer| {
        writer.create_element("properties").write_inner_content(|writer| {
            for caution in CAUTIONS {
                let attributes = [("name", "caution"), ("value", caution)];
                writer.create_element("property").with_attributes(attributes).write_empty()?;
            }
            Ok(())
        })?;
        cases(writer)
    })?;
    let mut text = String::from_utf8(writer.into_inner()).map_err(io::Error::other)?;
    text.push('\n');
    Ok(text)
}

fn case(
    writer: &mut Writer<Vec<u8>>,
    [name, class, file]: [&str; 3],
    inside: impl FnOnce(&mut Writer<Vec<u8>>) -> io::Result<()>,
) -> io::Result<()> {
    let attributes = [("name", name), ("classname", class), ("file", file)];
    let attributes = attributes.map(|(key, value)| (key, visible(value)));
    let attributes = attributes.iter().map(|(key, value)| (*key, value.as_ref()));
    writer.create_element("testcase").with_attributes(attributes).write_inner_content(inside)?;
    Ok(())
}

fn said_in(
    writer: &mut Writer<Vec<u8>>,
    element: &str,
    attributes: &[(&str, &str)],
    said: &str,
) -> io::Result<()> {
    let attributes: Vec<_> = attributes.iter().map(|(key, value)| (*key, visible(value))).collect();
    let attributes = attributes.iter().map(|(key, value)| (*key, value.as_ref()));
    let said = visible(said);
    let element = writer.create_element(element).with_attributes(attributes);
    element.write_text_content(BytesText::new(&said))?;
    Ok(())
}
