#include "assess/fouling.hpp"

#include "assess/checks.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

void name_missing(std::vector<std::string>& missing, const Place& place, const std::string& path) {
  for (std::string& entry : place_missing(place, path)) missing.push_back(std::move(entry));
}

void name_missing(std::vector<std::string>& missing, const std::vector<Bar>& bars, const std::string& path) {
  for (std::size_t i = 0; i < bars.size(); ++i) {
    const std::string at = path + "[" + std::to_string(i) + "]";
    name_missing(missing, bars[i].from, at + ".from");
    name_missing(missing, bars[i].to, at + ".to");
    if (!bars[i].diameter) missing.push_back(at + ".diameter");
  }
}

void name_missing(std::vector<std::string>& missing, const std::vector<TyreCase>& tyres) {
  for (std::size_t i = 0; i < tyres.size(); ++i) {
    const std::string at = "fouling.tyres[" + std::to_string(i) + "]";
    name_missing(missing, tyres[i].centre, at + ".centre");
    if (!tyres[i].diameter) missing.push_back(at + ".diameter");
    if (!tyres[i].width) missing.push_back(at + ".width");
  }
}

/// A list without a part says nothing of such parts. Of a mounted machine it is the links that have to be stated.
void name_missing(std::vector<std::string>& missing, const Case& value) {
  const FoulingParts& parts = value.fouling;
  if (is_trailed(value)) {
    for (auto& path : unstated({{!parts.tractor.empty(), "fouling.tractor"},
                                {!parts.implement.empty(), "fouling.implement"},
                                {!parts.tyres.empty(), "fouling.tyres"}})) {
      missing.push_back(std::move(path));
    }
    return;
  }
  const LowerLinks links = parts.lower_links.value_or(LowerLinks{});
  for (auto& path : unstated({{links.pivot_span.has_value(), "fouling.lower_links.pivot_span"},
                              {links.hitch_span.has_value(), "fouling.lower_links.hitch_span"},
                              {links.diameter.has_value(), "fouling.lower_links.diameter"}})) {
    missing.push_back(std::move(path));
  }
}

Length tolerance_of(const Place& place) {
  return place.behind->tolerance + place.left->tolerance + place.above->tolerance;
}

Rod rod_of(const Bar& bar) { return {position_of(bar.from), position_of(bar.to), 0.5 * *bar.diameter}; }

Rod moved(const Rod& rod, const Position& by) { return {rod.from + by, rod.to + by, rod.radius}; }

/// What may foul is followed with a tight top link only, and of a machine that does not steer behind the links.
bool is_followed(const Case& value) {
  if (is_trailed(value)) return true;
  return !is_semi_mounted(value) &&
         std::none_of(states_with_positions.begin(), states_with_positions.end(), [&](MachineState state) {
           const Stated<StateRange>& range = range_of(value, state);
           return range && range->top_link == TopLink::slack;
         });
}

Tyre tyre_of(const TyreCase& tyre) { return {position_of(tyre.centre), 0.5 * *tyre.diameter, *tyre.width}; }

/// No two parts come nearer to each other by more than all that their places and the driveline's may be off together.
/// What the linkage may be off is reckoned with where it moves.
Length tolerance_of(const FoulingParts& parts, const DrivelineTolerance& driveline) {
  const auto bar_tolerance = [](const std::vector<Bar>& bars) {
    Length most{};
    for (const Bar& bar : bars) most = std::max({most, tolerance_of(bar.from), tolerance_of(bar.to)});
    return most;
  };
  Length tyre{};
  for (const TyreCase& t : parts.tyres) tyre = std::max(tyre, tolerance_of(t.centre));
  const Length joints =
      driveline.front_joint + driveline.rear_joint + driveline.input_behind + driveline.input_left + driveline.input_up;
  const Length pin = driveline.pin_distance + driveline.pin_lateral + driveline.pin_drop;
  const Length links = parts.lower_links ? 0.5 * std::max(parts.lower_links->pivot_span->tolerance,
                                                          parts.lower_links->hitch_span->tolerance)
                                         : Length{};
  return joints + pin + bar_tolerance(parts.tractor) + bar_tolerance(parts.implement) + tyre + links;
}

/// The least clearance of one kind of parts in one state.
struct Nearest {
  Length room{};
  MachineState state = MachineState::any;
  PoseAt pose;
  std::string part;
  const char* against = "";
};

/// One part after the other, so that the report can name the one that fouls first.
template <class Look> void each_part(const Case& value, const Surroundings& around, const Look& look) {
  const FoulingParts& parts = value.fouling;
  for (std::size_t i = 0; i < around.on_tractor.size(); ++i) {
    look({around.guard_radius, {around.on_tractor[i]}, {}, {}}, parts.tractor[i].name, "fouling.driveline");
  }
  for (std::size_t i = 0; i < around.on_implement.size(); ++i) {
    look({around.guard_radius, {}, {around.on_implement[i]}, {}}, parts.implement[i].name, "fouling.driveline");
  }
  for (std::size_t i = 0; i < around.tyres.size(); ++i) {
    look({around.guard_radius, {}, {}, {around.tyres[i]}}, parts.tyres[i].name, "fouling.driveline");
    look({around.guard_radius, {}, around.on_implement, {around.tyres[i]}}, parts.tyres[i].name, "fouling.tongue");
  }
}

/// The same for a mounted machine, the links as parts of their own.
Nearest nearest_mounted(const Case& value, const DrivelineOverRange& range, const FoulingData& data) {
  Nearest nearest;
  bool first = true;
  for (const StateExtremes& state : range.states) {
    const MountedRange positions = positions_of(value, state.state);
    const auto look = [&](const MountedSurroundings& one, const std::string& part, const char* against) {
      const MountedClearance clear = mounted_clearance(value, positions, {true, true, {}, one, {}});
      const Length room = clear.least.lower - data.tolerance;
      if (!first && room >= nearest.room) return;
      first = false;
      const Attitude& at = clear.least.at;
      nearest = {room, state.state, {at.yaw, at.pitch, at.roll, clear.at.lift}, part, against};
    };
    each_part(value, data.around.fixed, [&](const Surroundings& one, const std::string& part, const char* against) {
      look({one, {}}, part, against);
    });
    if (data.around.links)
      look({{data.around.fixed.guard_radius, {}, {}, {}}, data.around.links}, "", "fouling.driveline");
  }
  return nearest;
}

Nearest nearest_part(const Case& value, const DrivelineOverRange& range, const FoulingData& data) {
  const Driveline driveline = driveline_of(value);
  const Position pin = pin_of(value);
  Nearest nearest;
  bool first = true;
  for (const StateExtremes& state : range.states) {
    const AttitudeRange attitudes = attitudes_of(value, state.state);
    each_part(value, data.around.fixed, [&](const Surroundings& one, const std::string& part, const char* against) {
      const Extreme<Length> least = least_clearance(driveline, pin, attitudes, one);
      const Length room = least.lower - data.tolerance;
      if (!first && room >= nearest.room) return;
      first = false;
      nearest = {room, state.state, {least.at.yaw, least.at.pitch, least.at.roll, std::nullopt}, part, against};
    });
  }
  return nearest;
}

} // namespace

FoulingData fouling_data(const Case& value) {
  const FoulingParts& parts = value.fouling;
  FoulingData data;
  data.stated = !parts.tractor.empty() || !parts.implement.empty() || !parts.tyres.empty() || parts.lower_links;
  name_missing(data.missing, parts.tractor, "fouling.tractor");
  name_missing(data.missing, parts.implement, "fouling.implement");
  name_missing(data.missing, parts.tyres);
  name_missing(data.missing, value);
  if (!value.driveline.guard_diameter) data.missing.emplace_back("driveline.guard_diameter");
  for (std::string& path : layout_missing(value)) data.missing.push_back(std::move(path));
  data.followed = is_followed(value);
  if (!data.complete()) return data;
  Surroundings& around = data.around.fixed;
  around.guard_radius = 0.5 * *value.driveline.guard_diameter;
  for (const Bar& bar : parts.tractor) around.on_tractor.push_back(rod_of(bar));
  for (const Bar& bar : parts.implement) around.on_implement.push_back(moved(rod_of(bar), coupler_offset(value)));
  for (const TyreCase& tyre : parts.tyres) around.tyres.push_back(tyre_of(tyre));
  data.tolerance =
      tolerance_of(parts, is_trailed(value) ? trailed_tolerance(value) : mounted_tolerance(value).driveline);
  if (parts.lower_links) {
    const LowerLinks& links = *parts.lower_links;
    data.around.links = LowerLinkRods{links.pivot_span->value, links.hitch_span->value, 0.5 * *links.diameter};
  }
  return data;
}

MountedClearance mounted_clearance(const Case& value, const MountedRange& positions, const FoulingData& data) {
  return least_clearance(driveline_of(value), linkage_of(value), mounted_tolerance(value), positions, data.around);
}

LimitBand fouling_band(const Case& value) {
  LimitBand band{amount_of(millimetres(50.0)),
                 amount_of(Length{}),
                 LimitSense::at_least,
                 {{"50 mm to anything that may foul: a rule of thumb and default of this library; parts deflect",
                   Standing::common_practice},
                  rigid_model}};
  if (value.limits.fouling_clearance) {
    band.strictest = amount_of(*value.limits.fouling_clearance);
    band.basis.front() = {"room to leave as the case states it", Standing::given};
  }
  return band;
}

void check_fouling(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const FoulingData data = fouling_data(value);
  if (!data.stated && value.tractor.hitch.kind == HitchKind::three_point) {
    findings.not_examined(Check::fouling, {"fouling.lower_links", "driveline.guard_diameter"});
    return;
  }
  if (!data.stated) {
    findings.not_examined(Check::fouling,
                          {"fouling.tractor", "fouling.implement", "fouling.tyres", "driveline.guard_diameter"});
    return;
  }
  if (!data.followed) { // no entry mends that
    findings.add(not_known(Check::fouling, "fouling.not_followed", {}));
    return;
  }
  std::vector<std::string> missing = data.missing;
  for (std::string& path : range.missing_for_all()) missing.push_back(std::move(path));
  if (!missing.empty()) {
    findings.add(not_known(Check::fouling, "fouling.unstated", missing));
    return;
  }
  const bool trailed = is_trailed(value);
  const Nearest nearest = trailed ? nearest_part(value, range, data) : nearest_mounted(value, range, data);
  Finding finding = compare(Check::fouling, amount_of(nearest.room), fouling_band(value),
                            nearest.room < Length{} ? "fouling.touches" : "fouling.room");
  const bool by_links = nearest.part.empty();
  finding.state = nearest.state;
  finding.pose = nearest.pose;
  finding.facts = {by_links ? fact("part", PhraseId{"fouling.part.links"}) : fact("part", nearest.part),
                   fact("against", PhraseId{nearest.against}), fact("tolerance", data.tolerance)};
  if (finding.status != Status::ok) finding.advice = {trailed ? "fouling.keep_clear" : "fouling.keep_clear_mounted"};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
