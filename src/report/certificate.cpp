#include "report/certificate.hpp"

#include "report/render.hpp"
#include "report/say.hpp"

#include <fieldshaft/units/text.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {
namespace {

using report_texts::say;

std::string rounded(Amount amount, UnitStyle style, double (*to_whole)(double), double allowance) {
  const PrintUnit unit = print_unit(amount.kind, style, amount.si);
  const double step = std::pow(10.0, -unit.decimals) * unit.factor;
  // A share of rounding in the division must not move a bound by a whole step.
  return to_string(Amount{to_whole(amount.si / step + allowance) * step, amount.kind}, style);
}

/// A gap is smaller than what is printed of the value: one digit more, rounded up.
std::string gap_text(Amount gap, UnitStyle style) {
  const PrintUnit unit = print_unit(gap.kind, style, gap.si);
  const int decimals = unit.decimals + 1;
  const double step = std::pow(10.0, -decimals);
  const std::string symbol = unit.symbol;
  const std::string number = format_number(std::ceil(gap.si / unit.factor / step - 1e-9) * step, decimals);
  return number + (symbol == "°" ? "" : " ") + symbol;
}

std::string from_to(const AmountRange& range, UnitStyle style) {
  return say("certificate.from_to", {{"low", to_string(range.low, style)}, {"high", to_string(range.high, style)}});
}

std::string positions_of(const StateEnvelope& envelope, UnitStyle style) {
  const char* yaw = envelope.steers_about_pivot ? "certificate.steering" : "certificate.yaw";
  std::string text = say(yaw, {{"range", from_to(envelope.yaw, style)}});
  if (envelope.pitch) text += ", " + say("certificate.pitch", {{"range", from_to(*envelope.pitch, style)}});
  text += ", " + say("certificate.roll", {{"range", from_to(envelope.roll, style)}});
  if (envelope.roll_at_full_turn)
    text += ", " + say("certificate.less_roll", {{"share", to_string(*envelope.roll_at_full_turn, style)}});
  if (envelope.lift) text += ", " + say("certificate.lift", {{"range", from_to(*envelope.lift, style)}});
  if (envelope.slack_top_link) text += ", " + say("certificate.slack");
  return text;
}

const StateExtreme& greater_angle(const StateEnvelope& envelope) {
  return envelope.front_angle.bound.si >= envelope.rear_angle.bound.si ? envelope.front_angle : envelope.rear_angle;
}

std::string state_sentence(const StateEnvelope& envelope, UnitStyle style) {
  const auto at = [&](const StateExtreme& extreme) { return pose_text({MachineState::any, extreme.pose}, style); };
  return say("certificate.state", {{"state", state_text(envelope.state)},
                                   {"positions", positions_of(envelope, style)},
                                   {"front", rounded_up(envelope.front_angle.bound, style)},
                                   {"front_at", at(envelope.front_angle)},
                                   {"rear", rounded_up(envelope.rear_angle.bound, style)},
                                   {"rear_at", at(envelope.rear_angle)},
                                   {"shortest", rounded_down(envelope.shortest.bound, style)},
                                   {"shortest_at", at(envelope.shortest)},
                                   {"longest", rounded_up(envelope.longest.bound, style)},
                                   {"longest_at", at(envelope.longest)}});
}

std::string measured_text(const MeasuredEntry& entry, UnitStyle style) {
  const std::string value = entry.entry + " " + to_string(entry.value, style);
  return entry.tolerance.si > 0.0 ? value + " ± " + to_string(entry.tolerance, style) : value;
}

/// What the measurements of a range say nothing of.
const char* left_out_by(const RangeOrigin& origin) {
  if (origin.of == "yaw" && origin.from.size() > 3) return "certificate.steady_turns"; // of radii, not of a sway
  return origin.of == "pitch" ? "certificate.even_ground" : nullptr;
}

const char* phrase_of(const RangeOrigin& origin) {
  if (origin.of == "yaw") return "certificate.yaw";
  if (origin.of == "pitch") return "certificate.pitch";
  return origin.of == "roll" ? "certificate.roll" : "certificate.top_link";
}

/// Which angles of a state follow from measurements, and from which.
void add_origins(std::vector<std::string>& sentences, const StateEnvelope& envelope, UnitStyle style) {
  for (const RangeOrigin& origin : envelope.origins) {
    std::string entries;
    for (const MeasuredEntry& entry : origin.from)
      entries += (entries.empty() ? "" : ", ") + measured_text(entry, style);
    std::string sentence =
        say("certificate.measured", {{"state", state_text(envelope.state)},
                                     {"angle", say(phrase_of(origin), {{"range", from_to(origin.range, style)}})},
                                     {"entries", entries}});
    sentences.push_back(std::move(sentence));
  }
}

/// What no position of the stated ranges shows, in the words of the whole.
std::string not_within(const std::vector<StateEnvelope>& states) {
  std::string text;
  const auto add = [&text](const char* phrase) {
    const std::string sentence = say(phrase);
    if (text.find(sentence) == std::string::npos) text += " " + sentence;
  };
  for (const StateEnvelope& state : states) {
    for (const RangeOrigin& origin : state.origins) {
      if (const char* left_out = left_out_by(origin)) add(left_out);
    }
    if (state.slack_top_link) add("certificate.level_ground");
  }
  return text;
}

/// The state whose extreme is the worst.
template <class Of, class Worse>
const StateEnvelope& worst_state(const std::vector<StateEnvelope>& all, const Of& of, const Worse& worse) {
  return *std::max_element(all.begin(), all.end(), [&](const StateEnvelope& a, const StateEnvelope& b) {
    return worse(of(b).bound.si, of(a).bound.si);
  });
}

/// The extremes over all states.
struct Overall {
  const StateExtreme* angle;
  const StateExtreme* longest;
  const StateExtreme* shortest;
};

Overall overall(const std::vector<StateEnvelope>& all) {
  const auto longest = [](const StateEnvelope& e) -> const StateExtreme& { return e.longest; };
  const auto shortest = [](const StateEnvelope& e) -> const StateExtreme& { return e.shortest; };
  return {&greater_angle(worst_state(all, greater_angle, std::greater<>())),
          &longest(worst_state(all, longest, std::greater<>())), &shortest(worst_state(all, shortest, std::less<>()))};
}

/// How near the bounds are.
std::string near_sentence(const Overall& worst, UnitStyle style) {
  const double length_gap = std::max(worst.longest->gap.si, worst.shortest->gap.si);
  return say("certificate.attained", {{"angle_gap", gap_text(worst.angle->gap, style)},
                                      {"length_gap", gap_text({length_gap, Kind::length}, style)}});
}

std::string whole_sentence(const Overall& worst, const std::vector<StateEnvelope>& states, UnitStyle style) {
  constexpr std::size_t all_states = 3; // work, turning, transport
  return say(states.size() == all_states ? "certificate.whole" : "certificate.some_states",
             {{"angle", rounded_up(worst.angle->bound, style)},
              {"shortest", rounded_down(worst.shortest->bound, style)},
              {"longest", rounded_up(worst.longest->bound, style)},
              {"near", near_sentence(worst, style)}});
}

/// On what joints the bounds rest, where one is a wide-angle joint.
void add_wide_angle(std::vector<std::string>& sentences, const WideAngleJoints& joints, UnitStyle style) {
  if (!joints.all_stated) sentences.push_back(say("certificate.one_point"));
  std::string yokes;
  const auto add = [&](const std::optional<Amount>& yoke, const char* end) {
    if (!yoke) return;
    yokes += yokes.empty() ? "" : ", ";
    yokes += say("certificate.crosses.one", {{"yoke", to_string(*yoke, style)}, {"end", say(end)}});
  };
  add(joints.front_yoke, "joint.front");
  add(joints.rear_yoke, "joint.rear");
  if (joints.all_stated && !yokes.empty()) sentences.push_back(say("certificate.crosses", {{"yokes", yokes}}));
}

void add_matters_most(std::vector<std::string>& sentences, const Overall& worst, UnitStyle style) {
  const std::pair<const char*, const StateExtreme*> extremes[] = {{"certificate.most.angle", worst.angle},
                                                                  {"certificate.most.longest", worst.longest},
                                                                  {"certificate.most.shortest", worst.shortest}};
  for (const auto& [phrase, extreme] : extremes) {
    if (!extreme->most) continue;
    sentences.push_back(
        say(phrase, {{"entry", extreme->most->entry}, {"moves", to_string(extreme->most->moves, style)}}));
  }
}

} // namespace

std::string rounded_up(Amount amount, UnitStyle style) {
  return rounded(amount, style, static_cast<double (*)(double)>(std::ceil), -1e-9);
}

std::string rounded_down(Amount amount, UnitStyle style) {
  return rounded(amount, style, static_cast<double (*)(double)>(std::floor), 1e-9);
}

std::vector<std::string> certificate(const Assessment& assessment, UnitStyle style) {
  if (assessment.envelopes.empty()) return {};
  const Finding* hand = assessment.find(Check::hand_check);
  if (hand != nullptr && hand->status >= Status::not_known) return {say("certificate.hand")};
  const Overall worst = overall(assessment.envelopes);
  std::vector<std::string> sentences{whole_sentence(worst, assessment.envelopes, style) +
                                     not_within(assessment.envelopes)};
  for (const StateEnvelope& envelope : assessment.envelopes) {
    sentences.push_back(state_sentence(envelope, style));
    add_origins(sentences, envelope, style);
  }
  add_wide_angle(sentences, assessment.wide_angle_joints, style);
  add_matters_most(sentences, worst, style);
  return sentences;
}

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
