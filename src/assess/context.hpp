#pragma once
// What the checks of an assessment share: the case, what follows from it, and small helpers that make findings.

#include <fieldshaft/assess/assess.hpp>

#include <initializer_list>
#include <string>
#include <utility>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Collects findings; each check adds at least one or names itself as not examined.
class Findings {
public:
  explicit Findings(Assessment& assessment) : assessment_(assessment) {}
  void add(Finding finding) { assessment_.findings.push_back(std::move(finding)); }
  void not_examined(Check check) { assessment_.not_examined.push_back(check); }
  /// Of whose subject the case says nothing: the entries that would have to be stated.
  void not_examined(Check check, std::vector<std::string> entries) {
    not_examined(check);
    assessment_.unasked.push_back({check, std::move(entries)});
  }

private:
  Assessment& assessment_;
};

/// A limit that schools or editions may give differently: ok up to the strictest, stop beyond the loosest,
/// caution between. With one school both are the same.
struct LimitBand {
  Amount strictest;
  Amount loosest;
  LimitSense sense = LimitSense::at_most;
  std::vector<Source> basis;
};

Finding make_finding(Check check, Status status, const char* reason);

/// A finding that compares a value with a band and sets status, limit and margin.
/// The limit shown is the strictest while the value is within it, else the one that was passed.
Finding compare(Check check, Amount value, const LimitBand& band, const char* reason);

/// `not_known`, with the entries of the case that would have to be stated.
Finding not_known(Check check, const char* reason, std::vector<std::string> missing);

/// The one with the worse status, of alike ones that with less margin.
const Finding& worse_of(const Finding& a, const Finding& b);

template <class Q> Fact fact(const char* name, Q quantity) { return {name, amount_of(quantity)}; }
inline Fact fact(const char* name, std::string text) { return {name, std::move(text)}; }
inline Fact fact(const char* name, PhraseId phrase) { return {name, phrase}; }
inline Fact fact(const char* name, PoseIn at) { return {name, at}; }

/// Paths of the entries that are unstated: pairs of (is it stated, its path).
std::vector<std::string> unstated(std::initializer_list<std::pair<bool, const char*>> entries);

/// The gear that the case says is engaged, if the case says so and lists it.
const PtoGear* selected_gear(const Case& value);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
