use serde_json::{Map, Value, json};

use super::{Generated, References};

fn value(toml: &toml::Value) -> Value {
    match toml {
        toml::Value::String(text) => json!(text),
        toml::Value::Integer(n) => json!(n),
        toml::Value::Float(n) => json!(n),
        toml::Value::Boolean(b) => json!(b),
        toml::Value::Datetime(d) => json!(d.to_string()),
        toml::Value::Array(items) => items.iter().map(value).collect(),
        toml::Value::Table(inner) => {
            inner.iter().map(|(k, v)| (k.clone(), value(v))).collect::<Map<_, _>>().into()
        }
    }
}

/// All tables as one JSON file.
pub fn tables(references: &References) -> Generated {
    let tables: Vec<_> = references
        .tables
        .iter()
        .map(|table| {
            let rows: Vec<_> = table
                .rows
                .iter()
                .map(|row| {
                    json!({
                        "key": row.key,
                        "printed": row.printed,
                        "figures": value(&toml::Value::Table(row.figures.clone())),
                        "source": row.source,
                        "place": row.place,
                        "standing": row.standing,
                        "seen": row.seen,
                        "in_force_from": row.from,
                        "in_force_until": row.until,
                        "note": row.note,
                    })
                })
                .collect();
            json!({
                "path": table.path,
                "title": table.title,
                "shape": table.shape,
                "authority": table.authority,
                "question": table.question,
                "does_not_apply": table.does_not_apply,
                "rows": rows,
            })
        })
        .collect();
    let sources: Vec<_> = references
        .sources
        .iter()
        .map(|s| json!({ "key": s.key, "title": s.title, "publisher": s.publisher, "number": s.number, "edition": s.edition }))
        .collect();
    let all = json!({ "version": 1, "sources": sources, "tables": tables });
    let text = serde_json::to_string_pretty(&all).unwrap() + "\n";
    Generated { path: "references/export/tables.json".to_owned(), text }
}
