use std::fmt::Write;

use super::{Generated, ROOMS, References, Row, Table};

fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}

fn figure(value: &toml::Value) -> String {
    match value {
        toml::Value::Array(items) => items.iter().map(figure).collect::<Vec<_>>().join(" to "),
        toml::Value::Table(inner) => inner
            .iter()
            .map(|(key, value)| format!("{key} {}", figure(value)))
            .collect::<Vec<_>>()
            .join(", "),
        toml::Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

fn figures(row: &Row) -> String {
    row.figures
        .iter()
        .map(|(key, value)| format!("{} {}", key.replace('_', " "), figure(value)))
        .collect::<Vec<_>>()
        .join("; ")
}

fn in_force(row: &Row) -> String {
    match (&row.from, &row.until) {
        (None, None) => String::new(),
        (Some(from), None) => format!("from {from}"),
        (None, Some(until)) => format!("until {until}"),
        (Some(from), Some(until)) => format!("{from} until {until}"),
    }
}

/// A Markdown page with every row of a table.
pub fn table(references: &References, table: &Table) -> Generated {
    let mut text = format!(
        "<!-- Made from {}.toml by references/pipeline. Do not edit. -->\n\n# {}\n\n**Question.** {}\n\n**Does not apply.** {}\n\n| row | as printed | figures | source and place | standing | seen | in force | note |\n|---|---|---|---|---|---|---|---|\n",
        table.path, table.title, table.question, table.does_not_apply
    );
    for row in &table.rows {
        let source = references.source(&row.source);
        let document = if source.number.is_empty() { &source.title } else { &source.number };
        writeln!(
            text,
            "| {} | {} | {} | {}, {} | {} | {} | {} | {} |",
            cell(&row.key),
            cell(&row.printed),
            cell(&figures(row)),
            cell(document),
            cell(&row.place),
            row.standing,
            row.seen,
            in_force(row),
            cell(&row.note)
        )
        .unwrap();
    }
    Generated { path: format!("references/pages/{}.md", table.path), text }
}

/// The index of all tables and sources.
pub fn index(references: &References) -> Generated {
    let mut text = String::from(
        "<!-- Made from the files here by references/pipeline. Do not edit. -->\n\n# Reference tables\n\nEvery published figure of the crate stands here, once, with its document, the place in it, what kind of\nstatement it is, and how it was seen. `read`: in the document itself. `reported`: in another publication.\n`memory`: known, and not found again, so check it before you rest anything on it. `computed`: worked out\nfrom cited figures. \"As printed\" keeps figure, unit and operator; the words around them may be shortened.\nA page is made of each `.toml` file, and one JSON file of all of them:\n[export/tables.json](export/tables.json), with its [schema](export/tables.schema.json). The rules that hold recipes\nagainst these tables have pages of their own: [pages/rules](pages/rules/README.md).\n\nLocal codes and licensed practice come first; an edition here may have been superseded where you are.\n\n| table | question | rows | read | reported | memory | computed |\n|---|---|---|---|---|---|---|\n",
    );
    let line = |name: &str, question: &str, rows: Vec<&Row>| {
        let total = rows.len();
        let counts = References::count_by_seen(rows);
        let count = |seen: &str| counts.get(seen).copied().unwrap_or(0);
        format!(
            "| {name} | {question} | {total} | {} | {} | {} | {} |\n",
            count("read"),
            count("reported"),
            count("memory"),
            count("computed")
        )
    };
    for room in ROOMS {
        for table in references.tables.iter().filter(|table| table.room() == room) {
            let name = format!("[{}](pages/{}.md)", table.path, table.path);
            text += &line(&name, &cell(&table.question), table.rows.iter().collect());
        }
    }
    text += &line("all", "", references.tables.iter().flat_map(|table| &table.rows).collect());
    text += "\n## Documents\n\n| key | document | publisher | edition |\n|---|---|---|---|\n";
    for source in &references.sources {
        let number =
            if source.number.is_empty() { String::new() } else { format!("{}, ", source.number) };
        writeln!(
            text,
            "| `{}` | {number}{} | {} | {} |",
            source.key,
            cell(&source.title),
            cell(&source.publisher),
            cell(&source.edition)
        )
        .unwrap();
    }
    Generated { path: "references/README.md".to_owned(), text }
}
