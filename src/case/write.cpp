// Writing a case as a document.

#include <fieldshaft/case/read.hpp>

#include "case/writer.hpp"

#include <charconv>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

std::string exact_number(double value) {
  char buffer[64];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value).ptr;
  return {buffer, end};
}

std::string exact_text(double si, Kind kind) { return exact_number(si) + " " + std::string(si_symbol(kind)); }

} // namespace case_document

std::string write_case(const Case& value) {
  Case copy = value; // the description of the entries serves reading too and takes them by plain reference
  case_document::Writer writer;
  case_document::fields(writer, copy);
  case_document::Json document = {{"schema", case_schema_version}};
  document.update(writer.take());
  return document.dump(2) + "\n";
}

} // namespace v0
} // namespace fieldshaft
