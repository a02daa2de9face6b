#pragma once
// The visitor that fills a case from a document and notes every wrong entry.

#include "case/choices.hpp"
#include "case/document.hpp"
#include "case/fields.hpp"
#include "case/price.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

std::string bounds_text(Bounds bounds, Kind kind);
bool inside(double value, Bounds bounds) noexcept;

class Reader {
public:
  Reader(const Json& object, std::string path, std::vector<CaseProblem>& problems)
      : object_(object), path_(std::move(path)), problems_(problems) {}

  void text(const char* key, std::string& target, Need need, const char* meaning);
  void text(const char* key, Stated<std::string>& target, const char* meaning);
  void field(const char* key, Stated<double>& target, Bounds bounds, const char* meaning);

  template <class Q> void field(const char* key, Stated<Q>& target, Bounds bounds, const char*) {
    if (const auto amount = amount_at(key, kind_of<Q>, bounds, false)) target = Q::from_value(amount->value.si);
  }
  template <class Q> void field(const char* key, Stated<Measured<Q>>& target, Bounds bounds, const char*) {
    if (const auto amount = amount_at(key, kind_of<Q>, bounds, true)) {
      target = Measured<Q>{Q::from_value(amount->value.si), Q::from_value(amount->tolerance)};
    }
  }
  template <class E> void choice(const char* key, Stated<E>& target, const char*) {
    const Json* value = find(key);
    if (value == nullptr) return;
    std::string words;
    for (const auto& option : Words<E>::list) {
      if (value->is_string() && value->template get_ref<const std::string&>() == option.word) target = option.value;
      words += (words.empty() ? "" : ", ") + ("\"" + std::string(option.word) + "\"");
    }
    if (!target) problem(key, shown(*value), "one of " + words);
  }
  template <class Q> void interval(const char* key, Stated<Interval<Q>>& target, Bounds bounds, const char*) {
    const Json* value = find(key);
    if (value == nullptr) return;
    if (!value->is_array() || value->size() != 2) {
      problem(key, shown(*value), "a list of two: the lowest and the highest value");
      return;
    }
    const auto low = amount_of((*value)[0], std::string(key) + "[0]", kind_of<Q>, bounds, false);
    const auto high = amount_of((*value)[1], std::string(key) + "[1]", kind_of<Q>, bounds, false);
    if (!low || !high) return;
    if (low->value.si > high->value.si) {
      problem(key, shown((*value)[0]) + " above " + shown((*value)[1]), "the lower value first");
      return;
    }
    target = Interval<Q>{Q::from_value(low->value.si), Q::from_value(high->value.si)};
  }
  template <class T> void object(const char* key, T& target, const char*) {
    if (const Json* value = find(key)) read_object(*value, key, target);
  }
  template <class T> void required_object(const char* key, T& target, const char* meaning) {
    if (find(key) == nullptr) {
      problem(key, "missing", std::string("an object: ") + meaning);
    } else {
      object(key, target, meaning);
    }
  }
  template <class T> void part(const char* key, Stated<T>& target, const char*) {
    if (const Json* value = find(key)) read_object(*value, key, target.emplace());
  }
  template <class T> void fitted(const char* key, Stated<Fitted<T>>& target, const char*) {
    const Json* value = find(key);
    if (value == nullptr) return;
    if (value->is_string() && *value == "none") {
      target = Fitted<T>{};
    } else if (value->is_object()) {
      target.emplace().present = true;
      read_object(*value, key, target->item);
    } else {
      problem(key, shown(*value), "\"none\" or an object");
    }
  }
  template <class T> void list(const char* key, std::vector<T>& target, const char*) {
    const Json* value = find(key);
    if (value == nullptr) return;
    if (!value->is_array()) {
      problem(key, shown(*value), "a list");
      return;
    }
    for (std::size_t i = 0; i < value->size(); ++i) {
      read_object((*value)[i], std::string(key) + "[" + std::to_string(i) + "]", target.emplace_back());
    }
  }
  void price(const char* key, Stated<Money>& target, PricePer per, const char* meaning);
  void names(const char* key, std::vector<std::string>& target, const char* meaning);

  /// Every key that no entry asked for is misspelt or misplaced.
  void refuse_unknown_keys();

private:
  const Json* find(const char* key);
  std::string at(const std::string& key) const { return path_.empty() ? key : path_ + "." + key; }
  void problem(const std::string& key, std::string value, std::string expected);
  std::optional<MeasuredAmount> amount_at(const char* key, Kind kind, Bounds bounds, bool measured);
  std::optional<MeasuredAmount> amount_of(const Json& value, const std::string& key, Kind kind, Bounds bounds,
                                          bool measured);

  template <class T> void read_object(const Json& value, const std::string& key, T& target) {
    if (!value.is_object()) {
      problem(key, shown(value), "an object");
      return;
    }
    Reader inner(value, at(key), problems_);
    fields(inner, target);
    inner.refuse_unknown_keys();
  }

  const Json& object_;
  std::string path_;
  std::vector<CaseProblem>& problems_;
  std::vector<std::string> known_;
};

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
