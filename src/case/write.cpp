// The visitor that writes a case as a document.

#include <fieldshaft/case/read.hpp>

#include "case/choices.hpp"
#include "case/document.hpp"
#include "case/fields.hpp"

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace {

using namespace case_document;

std::string exact_number(double value) {
  char buffer[64];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value).ptr;
  return {buffer, end};
}

std::string exact_text(double si, Kind kind) { return exact_number(si) + " " + std::string(si_symbol(kind)); }

class Writer {
public:
  Json take() { return std::move(document_); }
  bool empty() const { return document_.empty(); }

  void text(const char* key, const std::string& value, Need need, const char*) {
    if (need == Need::required || !value.empty()) document_[key] = value;
  }
  void text(const char* key, const Stated<std::string>& value, const char*) {
    if (value) document_[key] = *value;
  }
  void field(const char* key, const Stated<double>& value, Bounds, const char*) {
    if (value) document_[key] = *value;
  }
  template <class Q> void field(const char* key, const Stated<Q>& value, Bounds, const char*) {
    if (value) document_[key] = exact_text(value->value(), kind_of<Q>);
  }
  template <class Q> void field(const char* key, const Stated<Measured<Q>>& value, Bounds, const char*) {
    if (!value) return;
    std::string text = exact_text(value->value.value(), kind_of<Q>);
    if (value->tolerance.value() > 0.0) text += " ± " + exact_text(value->tolerance.value(), kind_of<Q>);
    document_[key] = text;
  }
  template <class E> void choice(const char* key, const Stated<E>& value, const char*) {
    if (!value) return;
    for (const auto& option : Words<E>::list) {
      if (option.value == *value) document_[key] = option.word;
    }
  }
  template <class Q> void interval(const char* key, const Stated<Interval<Q>>& value, Bounds, const char*) {
    if (!value) return;
    document_[key] = {exact_text(value->low.value(), kind_of<Q>), exact_text(value->high.value(), kind_of<Q>)};
  }
  template <class T> void object(const char* key, T& value, const char*) { write_object(key, value, false); }
  template <class T> void required_object(const char* key, T& value, const char*) { write_object(key, value, true); }
  template <class T> void part(const char* key, Stated<T>& value, const char*) {
    if (value) write_object(key, *value, true);
  }
  template <class T> void fitted(const char* key, Stated<Fitted<T>>& value, const char*) {
    if (!value) return;
    if (value->present) {
      write_object(key, value->item, true);
    } else {
      document_[key] = "none";
    }
  }
  template <class T> void list(const char* key, std::vector<T>& values, const char*) {
    if (values.empty()) return;
    Json entries = Json::array();
    for (T& value : values) {
      Writer inner;
      fields(inner, value);
      entries.push_back(inner.take());
    }
    document_[key] = std::move(entries);
  }

private:
  template <class T> void write_object(const char* key, T& value, bool always) {
    Writer inner;
    fields(inner, value);
    if (always || !inner.empty()) document_[key] = inner.take();
  }

  Json document_ = Json::object();
};

} // namespace

std::string write_case(const Case& value) {
  Case copy = value; // the description of the entries serves reading too and takes them by plain reference
  Writer writer;
  fields(writer, copy);
  Json document = {{"schema", case_schema_version}};
  document.update(writer.take());
  return document.dump(2) + "\n";
}

} // namespace v0
} // namespace fieldshaft
