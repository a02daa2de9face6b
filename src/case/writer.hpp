#pragma once
// The visitor that writes a document from the description of its entries.

#include "case/choices.hpp"
#include "case/document.hpp"
#include "case/fields.hpp"
#include "case/price.hpp"

#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

/// A number to its last digit; reading it gives the same number.
std::string exact_number(double value);
std::string exact_text(double si, Kind kind);

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
  void price(const char* key, const Stated<Money>& value, PricePer per, const char*) {
    if (value)
      document_[key] = exact_number(value->amount) + " " + std::string(value->currency.code()) + suffix_of(per);
  }
  void names(const char* key, const std::vector<std::string>& values, const char*) {
    if (!values.empty()) document_[key] = values;
  }

private:
  template <class T> void write_object(const char* key, T& value, bool always) {
    Writer inner;
    fields(inner, value);
    if (always || !inner.empty()) document_[key] = inner.take();
  }

  Json document_ = Json::object();
};

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
