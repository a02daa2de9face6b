// The JSON Schema of the case document.

#include <fieldshaft/case/read.hpp>

#include "case/schema.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

/// A regular expression for the units of a kind in all the ways that text may join and raise them.
std::string unit_pattern(Kind kind) {
  std::string alternatives;
  for (const UnitSpelling& unit : detail::unit_spellings) {
    if (unit.kind != kind) continue;
    std::string spelling;
    for (const char c : unit.spelling) {
      if (c == '.') {
        spelling += "[ ]*[·⋅* .-][ ]*";
      } else if (c == '(' || c == ')') {
        spelling += std::string("\\") + c;
      } else if (c == '^') {
        spelling += "\\^?";
      } else if (c == '2' || c == '3') {
        spelling += c == '2' ? "(2|²)" : "(3|³)";
      } else {
        spelling += c;
      }
    }
    alternatives += (alternatives.empty() ? "" : "|") + spelling;
  }
  return alternatives;
}

} // namespace

std::string quantity_pattern(Kind kind, bool measured) {
  const std::string number = std::string("(") + number_pattern + ")";
  const std::string unit = "(" + unit_pattern(kind) + ")\\.?";
  const std::string whole = kind == Kind::length ? "([+-]?[0-9]+\\s*(ft|foot|feet|'|′|’|m)[\\s.-]*)?" : "";
  const std::string one = whole + number + "\\s*" + unit;
  if (!measured) return "^\\s*" + one + "\\s*$";
  return "^\\s*(" + one + "|" + whole + number + "\\s*(" + unit + ")?\\s*(±|\\+/?-)\\s*" + one + ")\\s*$";
}

} // namespace case_document

std::string case_json_schema() {
  using namespace case_document;
  SchemaWriter writer;
  writer.require("schema", {{"const", case_schema_version}, {"description", "version of the document"}});
  Case value;
  fields(writer, value);
  Json schema = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                 {"title", "fieldshaft case"},
                 {"description", "A tractor, a PTO-driven implement, the driveline between them and the working range. "
                                 "Every quantity is text with its unit."}};
  schema.update(writer.take());
  return schema.dump(2) + "\n";
}

} // namespace v0
} // namespace fieldshaft
