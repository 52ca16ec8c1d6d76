// Trees back into JSON, and the line of a lot.
// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "jarproof/document.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/shelf_record.hpp"

namespace jarproof::detail {

/// What the plain scalars of a tree are: numbers and the like in JSON, any text in YAML.
enum class plain_scalars { as_written, as_texts };

inline void write_tree(json_writer& w, const node& n, plain_scalars plain) {
  if (n.kind == node_kind::null) {
    w.raw("null");
  } else if (n.kind == node_kind::scalar) {
    const bool bare = plain == plain_scalars::as_written && n.style == scalar_style::plain;
    bare ? w.raw(n.text) : w.text(n.text);
  } else if (n.kind == node_kind::sequence) {
    w.begin('[');
    for (const node& item : n.items) write_tree(w, item, plain);
    w.end(']');
  } else {
    w.begin('{');
    for (const member& m : n.members) {
      w.key(m.key);
      write_tree(w, m.value, plain);
    }
    w.end('}');
  }
}

[[nodiscard]] inline std::string tree_text(const node& n, plain_scalars plain) {
  json_writer w;
  write_tree(w, n, plain);
  return w.take();
}

/// All members of a line, in the order of docs/shelf.md.
[[nodiscard]] inline std::string line_of(const shelf_record& r) {
  json_writer w;
  w.begin('{');
  w.member("record", shelf_format);
  w.member("lot", r.lot);
  w.member("title", r.title);
  w.member("date", r.date);
  w.member("library", r.library);
  w.key("edition");
  w.begin('{');
  w.member("name", r.edition_name);
  w.member("version", r.edition_version);
  w.end('}');
  w.member("verdict", name_of(r.verdict));
  w.key("process");
  r.process.empty() ? w.raw("null") : w.text(r.process);
  w.key("required");
  w.raw(r.required);
  w.key("plan");
  w.raw(r.plan_text);
  w.member("jars", r.jars);
  w.member("jar", r.jar);
  if (r.run) {
    w.key("run");
    w.begin('{');
    w.member("verdict", name_of(r.run->verdict));
    w.member("log", r.run->log);
    w.end('}');
  }
  w.member("unsealed", r.unsealed);
  w.member("use_by", r.use_by);
  w.end('}');
  return w.take();
}

}  // namespace jarproof::detail
