#pragma once
// The visitor that writes the JSON Schema of a document from the description of its entries.

#include "case/choices.hpp"
#include "case/document.hpp"
#include "case/fields.hpp"
#include "case/price.hpp"
#include "case/reader.hpp"

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

inline constexpr const char* number_pattern =
    "[+-]?([0-9]+[ "
    "-])?[0-9]+/[0-9]+(\\.[0-9]+)?|[0-9]*\\s*[½¼¾⅛⅜⅝⅞]|[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?";

/// A regular expression for the texts of a quantity: number and unit, with a tolerance where it is measured.
std::string quantity_pattern(Kind kind, bool measured);

class SchemaWriter {
public:
  void text(const char* key, std::string&, Need need, const char* meaning) {
    add(key, {{"type", "string"}, {"description", meaning}});
    if (need != Need::required) return;
    properties_[key]["minLength"] = 1;
    required_.push_back(key);
  }
  void text(const char* key, Stated<std::string>&, const char* meaning) {
    add(key, {{"type", "string"}, {"description", meaning}});
  }
  void field(const char* key, Stated<double>&, Bounds bounds, const char* meaning) {
    Json number = {{"type", "number"}};
    if (is_finite(bounds.low)) number[bounds.low_open ? "exclusiveMinimum" : "minimum"] = bounds.low;
    if (is_finite(bounds.high)) number[bounds.high_open ? "exclusiveMaximum" : "maximum"] = bounds.high;
    const std::string pattern = std::string("^\\s*(") + number_pattern + ")\\s*%?\\s*$";
    add(key, {{"description", described(meaning, bounds, Kind::number)},
              {"anyOf", {number, {{"type", "string"}, {"pattern", pattern}}}}});
  }
  template <class Q> void field(const char* key, Stated<Q>&, Bounds bounds, const char* meaning) {
    add(key, quantity(kind_of<Q>, bounds, meaning, false));
  }
  template <class Q> void field(const char* key, Stated<Measured<Q>>&, Bounds bounds, const char* meaning) {
    add(key, quantity(kind_of<Q>, bounds, meaning, true));
  }
  template <class E> void choice(const char* key, Stated<E>&, const char* meaning) {
    Json words = Json::array();
    for (const auto& option : Words<E>::list) words.push_back(option.word);
    add(key, {{"enum", words}, {"description", meaning}});
  }
  template <class Q> void interval(const char* key, Stated<Interval<Q>>&, Bounds bounds, const char* meaning) {
    add(key, {{"type", "array"},
              {"minItems", 2},
              {"maxItems", 2},
              {"items", quantity(kind_of<Q>, bounds, "lowest and highest value", false)},
              {"description", meaning}});
  }
  template <class T> void object(const char* key, T& value, const char* meaning) { add(key, of(value, meaning)); }
  template <class T> void required_object(const char* key, T& value, const char* meaning) {
    object(key, value, meaning);
    required_.push_back(key);
  }
  template <class T> void part(const char* key, Stated<T>&, const char* meaning) {
    T value{};
    add(key, of(value, meaning));
  }
  template <class T> void fitted(const char* key, Stated<Fitted<T>>&, const char* meaning) {
    T value{};
    add(key, {{"description", meaning}, {"anyOf", {{{"const", "none"}}, of(value, meaning)}}});
  }
  template <class T> void list(const char* key, std::vector<T>&, const char* meaning) {
    T value{};
    add(key, {{"type", "array"}, {"items", of(value, meaning)}, {"description", meaning}});
  }

  void price(const char* key, Stated<Money>&, PricePer per, const char* meaning) {
    add(key, {{"type", "string"}, {"pattern", price_pattern(per)}, {"description", meaning}});
  }
  void names(const char* key, std::vector<std::string>&, const char* meaning) {
    add(key, {{"type", "array"}, {"items", {{"type", "string"}, {"minLength", 1}}}, {"description", meaning}});
  }

  Json take() {
    Json schema = {{"type", "object"}, {"properties", properties_}, {"additionalProperties", false}};
    if (!required_.empty()) schema["required"] = required_;
    return schema;
  }
  void require(const char* key, Json schema) {
    add(key, std::move(schema));
    required_.push_back(key);
  }

private:
  template <class T> static Json of(T& value, const char* meaning) {
    SchemaWriter inner;
    fields(inner, value);
    Json schema = inner.take();
    schema["description"] = meaning;
    return schema;
  }
  static std::string described(const std::string& meaning, Bounds bounds, Kind kind) {
    const std::string range = bounds_text(bounds, kind);
    return range.empty() ? meaning : meaning + " (" + range + ")";
  }
  static Json quantity(Kind kind, Bounds bounds, const char* meaning, bool measured) {
    return {{"type", "string"},
            {"pattern", quantity_pattern(kind, measured)},
            {"description", described(meaning, bounds, kind)}};
  }
  void add(const char* key, Json schema) { properties_[key] = std::move(schema); }

  Json properties_ = Json::object();
  std::vector<std::string> required_;
};

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
