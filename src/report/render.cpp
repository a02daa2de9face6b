#include "report/render.hpp"

#include "report/catalogue.hpp"

#include <fieldshaft/units/text.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {
namespace {

using report_texts::phrase;

std::string filled(std::string_view name, const Finding& finding, UnitStyle style) {
  if (name == "value" && finding.value) return to_string(*finding.value, style);
  if (name == "limit" && finding.limit) return to_string(*finding.limit, style);
  for (const Fact& fact : finding.facts) {
    if (name != fact.name) continue;
    return fact_text(fact, style);
  }
  return "{" + std::string(name) + "}"; // left visible; a test looks for it
}

std::string count_of(std::size_t n, const char* one, const char* many) {
  return std::to_string(n) + " " + (n == 1 ? one : many);
}

/// A value that has crossed a limit must not be rounded onto it: "35.0° (limit 35.0°)" would explain nothing.
std::string distinct(Amount amount, Amount other, UnitStyle style) {
  std::string text = to_string(amount, style);
  if (amount.si == other.si || text != to_string(other, style)) return text;
  const PrintUnit unit = print_unit(amount.kind, style, amount.si);
  const std::string number = format_number(amount.si / unit.factor, unit.decimals + 3);
  return *unit.symbol == '\0' ? number : number + " " + unit.symbol;
}

const char* limit_word(LimitSense sense) {
  switch (sense) {
  case LimitSense::at_least: return "at least ";
  case LimitSense::at_most: return "at most ";
  case LimitSense::equal:
  case LimitSense::none: return "";
  }
  return "";
}

std::string state_text(MachineState state) {
  switch (state) {
  case MachineState::working: return std::string(phrase("state.working"));
  case MachineState::turning: return std::string(phrase("state.turning"));
  case MachineState::transport: return std::string(phrase("state.transport"));
  case MachineState::any: break;
  }
  return "";
}

std::string margin_text(double margin) {
  const std::string percent = format_number(100.0 * std::abs(margin), std::abs(margin) < 0.1 ? 1 : 0) + " %";
  return percent + (margin >= 0.0 ? " in hand" : " beyond");
}

} // namespace

std::string pose_text(const PoseIn& at, UnitStyle style) {
  std::string text = state_text(at.state);
  const auto add = [&](const char* name, auto quantity) {
    text += (text.empty() ? "" : ", ") + std::string(name) + " " + to_string(amount_of(quantity), style);
  };
  if (at.pose.lift) add("lift", *at.pose.lift);
  add("yaw", at.pose.yaw);
  add("pitch", at.pose.pitch);
  add("roll", at.pose.roll);
  return text;
}

std::string fact_text(const Fact& fact, UnitStyle style) {
  if (const auto* text = std::get_if<std::string>(&fact.value)) return *text;
  if (const auto* named = std::get_if<PhraseId>(&fact.value)) return std::string(phrase(named->id));
  if (const auto* at = std::get_if<PoseIn>(&fact.value)) return pose_text(*at, style);
  return to_string(std::get<Amount>(fact.value), style);
}

std::string sentence(std::string_view id, const Finding& finding, UnitStyle style) {
  const std::string_view text = phrase(id);
  if (text.empty()) return "[" + std::string(id) + "]";
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t open = text.find('{', at);
    const std::size_t close = open == std::string_view::npos ? open : text.find('}', open);
    if (close == std::string_view::npos) {
      result += text.substr(at);
      break;
    }
    result += text.substr(at, open - at);
    result += filled(text.substr(open + 1, close - open - 1), finding, style);
    at = close + 1;
  }
  return result;
}

std::string numbers(const Finding& finding, UnitStyle style) {
  if (!finding.value) return "";
  if (!finding.limit) return to_string(*finding.value, style);
  std::string text = distinct(*finding.value, *finding.limit, style) + " (limit: " + limit_word(finding.sense) +
                     distinct(*finding.limit, *finding.value, style);
  if (finding.margin) text += ", " + margin_text(*finding.margin);
  return text + ")";
}

std::string condition(const Finding& finding, UnitStyle style) {
  if (finding.state == MachineState::any) return "";
  return finding.pose ? pose_text({finding.state, *finding.pose}, style) : state_text(finding.state);
}

std::string basis(const Finding& finding) {
  std::string text;
  for (const Source& source : finding.basis) {
    text += text.empty() ? "" : "; ";
    text += std::string(source.text) + " [" + standing_name(source.standing) + "]";
  }
  return text;
}

std::string headline(const Assessment& assessment) {
  const std::size_t checks = assessment.findings.size();
  const std::string in_checks = " in " + count_of(checks, "check", "checks");
  // A pass that rests on remembered limits says so in its first line.
  const std::string rest = std::string(" ") + std::string(phrase("report.not_all")) +
                           (assessment.rests_on_memory() ? " " + std::string(phrase("report.memory")) : std::string());
  switch (assessment.verdict()) {
  case Status::stop:
    return "STOP: " + count_of(assessment.count(Status::stop), "objection", "objections") + in_checks +
           (assessment.count(Status::not_known) > 0
                ? ", " + std::to_string(assessment.count(Status::not_known)) + " not known"
                : std::string()) +
           ". Do not run this combination as it is.";
  case Status::not_known:
    return "NOT KNOWN: " + count_of(assessment.count(Status::not_known), "check", "checks") + " of " +
           std::to_string(checks) + " cannot be decided with what the case states.";
  case Status::caution:
    return "CAUTION: no objection" + in_checks + ", " +
           count_of(assessment.count(Status::caution), "caution", "cautions") + "." + rest;
  case Status::ok: return "NO OBJECTION" + in_checks + "." + rest;
  }
  return "";
}

std::vector<const Finding*> with_status(const Assessment& assessment, Status status) {
  std::vector<const Finding*> found;
  for (const Finding& finding : assessment.findings) {
    if (finding.status == status) found.push_back(&finding);
  }
  return found;
}

std::vector<std::string> what_to_change(const Assessment& assessment, UnitStyle style) {
  std::vector<std::string> texts;
  for (const Status status : {Status::stop, Status::not_known, Status::caution}) {
    for (const Finding* finding : with_status(assessment, status)) {
      for (const char* id : finding->advice) {
        std::string text = sentence(id, *finding, style);
        if (std::find(texts.begin(), texts.end(), text) == texts.end()) texts.push_back(std::move(text));
      }
    }
  }
  return texts;
}

std::vector<std::string> cautions() {
  std::vector<std::string> texts;
  for (const char* id : {"caution.standstill", "caution.guards", "caution.speed", "caution.thrown", "caution.manual"}) {
    texts.emplace_back(phrase(id));
  }
  return texts;
}

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
