#include "report/render.hpp"

#include "report/catalogue.hpp"
#include "report/say.hpp"

#include <fieldshaft/units/radian.hpp>
#include <fieldshaft/units/text.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {
namespace {

using report_texts::phrase;
using report_texts::say;

/// "turned 30.0° to the left" for one angle of a pose; nothing where it prints as zero.
std::string angle_text(Angle angle, const char* negative, const char* positive, UnitStyle style) {
  const std::string size = to_string(amount_of(math::abs(angle)), style);
  if (size == to_string(amount_of(Angle{}), style)) return "";
  return say(angle < Angle{} ? negative : positive, {{"angle", size}});
}

/// A trailed implement follows the ground, a mounted one tilts as it is lifted.
std::string pitch_text(const PoseAt& pose, UnitStyle style) {
  if (pose.lift) return angle_text(pose.pitch, "pose.front_up", "pose.front_down", style);
  return angle_text(pose.pitch, "pose.crest", "pose.hollow", style);
}

std::string lift_text(Length lift, UnitStyle style) {
  const std::string size = to_string(amount_of(math::abs(lift)), style);
  return say(lift < Length{} ? "pose.lift_below" : "pose.lift_above", {{"lift", size}});
}

} // namespace

std::string state_text(MachineState state) {
  switch (state) {
  case MachineState::working: return std::string(phrase("state.working"));
  case MachineState::turning: return std::string(phrase("state.turning"));
  case MachineState::transport: return std::string(phrase("state.transport"));
  case MachineState::any: break;
  }
  return "";
}

std::string pose_text(const PoseIn& at, UnitStyle style) {
  std::vector<std::string> parts = {angle_text(at.pose.yaw, "pose.left", "pose.right", style),
                                    pitch_text(at.pose, style),
                                    angle_text(at.pose.roll, "pose.right_up", "pose.left_up", style)};
  const bool level = std::all_of(parts.begin(), parts.end(), [](const std::string& part) { return part.empty(); });
  if (level) parts.push_back(say("pose.straight"));
  if (at.pose.lift) parts.push_back(lift_text(*at.pose.lift, style));
  std::string text = state_text(at.state);
  for (const std::string& part : parts) text += (text.empty() || part.empty() ? "" : ", ") + part;
  return text;
}

std::string fact_text(const Fact& fact, UnitStyle style) {
  if (const auto* text = std::get_if<std::string>(&fact.value)) return *text;
  if (const auto* named = std::get_if<PhraseId>(&fact.value)) return std::string(phrase(named->id));
  if (const auto* at = std::get_if<PoseIn>(&fact.value)) return pose_text(*at, style);
  return to_string(std::get<Amount>(fact.value), style);
}

std::string sentence(std::string_view id, const Finding& finding, UnitStyle style) {
  const report_texts::ValueOf value_of = [&](std::string_view name) -> std::optional<std::string> {
    if (name == "value" && finding.value) return to_string(*finding.value, style);
    if (name == "limit" && finding.limit) return to_string(*finding.limit, style);
    for (const Fact& fact : finding.facts) {
      if (name != fact.name) continue;
      const auto* named = std::get_if<PhraseId>(&fact.value); // whose own placeholders are the finding's too
      return named != nullptr ? say(named->id, value_of) : fact_text(fact, style);
    }
    return std::nullopt;
  };
  return say(id, value_of);
}

std::string condition(const Finding& finding, UnitStyle style) {
  if (finding.state == MachineState::any) return "";
  return finding.pose ? pose_text({finding.state, *finding.pose}, style) : state_text(finding.state);
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
