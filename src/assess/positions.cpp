#include "assess/positions.hpp"

#include <fieldshaft/hitch.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

AngleRange angle_range(const Interval<Angle>& interval) { return {interval.low, interval.high}; }

/// A measurement with the path of its entry.
struct Named {
  std::string entry;
  const Stated<MeasuredLength>& length;
};

using Entries = std::vector<Named>;

bool turns_measured(const StateRange& range) {
  return !range.yaw && (range.left_turn_radius || range.right_turn_radius);
}

bool ground_measured(const StateRange& range) { return !range.pitch && (range.hollow_radius || range.crest_radius); }

bool drop_measured(const StateRange& range) { return !range.roll && !range.side_slope && range.wheel_drop; }

/// A turn asks where pin and axles stand along the machine. The pin beside the middle makes left and right differ.
Entries turn_entries(const Case& value, const StateRange& range, const std::string& path) {
  return {{path + ".left_turn_radius", range.left_turn_radius},
          {path + ".right_turn_radius", range.right_turn_radius},
          {"tractor.rear_axle_ahead", value.tractor.rear_axle_ahead},
          {"tractor.hitch.distance", value.tractor.hitch.distance},
          {"tractor.hitch.lateral", value.tractor.hitch.lateral},
          {"implement.tongue_length", value.implement.tongue_length}};
}

/// Hollow and crest ask for the axles along the machine and for the height of the pin.
Entries ground_entries(const Case& value, const StateRange& range, const std::string& path) {
  return {{path + ".hollow_radius", range.hollow_radius},
          {path + ".crest_radius", range.crest_radius},
          {"tractor.wheelbase", value.tractor.wheelbase},
          {"tractor.rear_axle_ahead", value.tractor.rear_axle_ahead},
          {"tractor.hitch.distance", value.tractor.hitch.distance},
          {"implement.tongue_length", value.implement.tongue_length},
          {"tractor.shaft_height", value.tractor.shaft_height},
          {"tractor.hitch.drop", value.tractor.hitch.drop}};
}

Entries drop_entries(const Case& value, const StateRange& range, const std::string& path) {
  const WheelDrop& drop = *range.wheel_drop;
  return {{path + ".wheel_drop.tractor_left", drop.tractor_left},
          {path + ".wheel_drop.tractor_right", drop.tractor_right},
          {"tractor.track", value.tractor.track},
          {path + ".wheel_drop.implement_left", drop.implement_left},
          {path + ".wheel_drop.implement_right", drop.implement_right},
          {"implement.track", value.implement.track}};
}

void name_missing(std::vector<std::string>& missing, const Entries& entries) {
  for (const Named& entry : entries) {
    if (!entry.length) missing.push_back(entry.entry);
  }
}

/// The greatest of f over the ends of all tolerances. Every f here rises or falls with each of its measurements, or
/// first falls and then rises (the pitch with the tongue), so that nothing between the ends is greater.
template <std::size_t n, class F> Angle greatest_at_ends(const std::array<MeasuredLength, n>& measured, const F& f) {
  Angle greatest{};
  std::array<Length, n> at{};
  std::size_t loose = 0; // those with a tolerance
  for (std::size_t i = 0; i < n; ++i) {
    if (measured[i].tolerance > Length{}) loose |= std::size_t{1} << i;
  }
  for (std::size_t corner = 0; corner < (std::size_t{1} << n); ++corner) {
    if ((corner & ~loose) != 0) continue;
    for (std::size_t i = 0; i < n; ++i) {
      const double side = ((corner >> i) & 1U) != 0 ? 1.0 : -1.0;
      at[i] = measured[i].value + side * measured[i].tolerance;
    }
    greatest = std::max(greatest, f(at));
  }
  return greatest;
}

/// Yaw is below 0 to the left. A pin to the left of the middle is nearer to the centre of a left turn.
AngleRange yaw_of_turns(const Case& value, const StateRange& range) {
  const auto turn = [&](const MeasuredLength& radius, double side) {
    const std::array<MeasuredLength, 5> measured{radius, *value.tractor.hitch.lateral, *value.tractor.rear_axle_ahead,
                                                 *value.tractor.hitch.distance, *value.implement.tongue_length};
    return greatest_at_ends(measured, [side](const std::array<Length, 5>& m) {
      return steady_turn_angle(m[0] + side * m[1], m[2] + m[3], m[4]);
    });
  };
  return {-turn(*range.left_turn_radius, -1.0), turn(*range.right_turn_radius, 1.0)};
}

/// Pitch is below 0 on a crest. Level ground lies between.
AngleRange pitch_of_ground(const Case& value, const StateRange& range) {
  const Tractor& tractor = value.tractor;
  const auto pitch = [&](const MeasuredLength& radius, bool hollow) {
    const std::array<MeasuredLength, 7> measured{radius,
                                                 *tractor.wheelbase,
                                                 *tractor.rear_axle_ahead,
                                                 *tractor.hitch.distance,
                                                 *value.implement.tongue_length,
                                                 *tractor.shaft_height,
                                                 *tractor.hitch.drop};
    return greatest_at_ends(measured, [hollow](const std::array<Length, 7>& m) {
      const WheelPlaces wheels{m[1], m[2] + m[3], m[4], m[5] - m[6]};
      return hollow ? hollow_pitch(wheels, m[0]) : -crest_pitch(wheels, m[0]);
    });
  };
  return {-pitch(*range.crest_radius, false), pitch(*range.hollow_radius, true)};
}

/// Roll is above 0 with the implement's left side up: its right wheel low, or the tractor's left one.
AngleRange roll_of_drops(const Case& value, const StateRange& range) {
  const auto lean = [](const Stated<MeasuredLength>& drop, const Stated<MeasuredLength>& track) {
    return greatest_at_ends(std::array<MeasuredLength, 2>{*drop, *track},
                            [](const std::array<Length, 2>& m) { return wheel_drop_roll(m[0], m[1]); });
  };
  const WheelDrop& drop = *range.wheel_drop;
  const Stated<MeasuredLength>& own = value.implement.track;
  const Stated<MeasuredLength>& of_tractor = value.tractor.track;
  return {-(lean(drop.implement_left, own) + lean(drop.tractor_right, of_tractor)),
          lean(drop.implement_right, own) + lean(drop.tractor_left, of_tractor)};
}

/// asin(part/whole) at the end of the whole's tolerance that makes it greater.
AngleRange angles_of(const LengthRange& part, const MeasuredLength& whole, const char* entry) {
  const Length shortest = whole.value - whole.tolerance;
  const auto angle = [&](Length l) {
    check::within(l.value(), -shortest.value(), shortest.value(), {"positions", entry, "m"});
    return l == Length{} ? Angle{} : radians(std::asin(l / shortest));
  };
  return {angle(part.low), angle(part.high)};
}

/// A sway to the left turns the implement's front end to the right of the links' meeting point: yaw below 0.
AngleRange yaw_of_sway(const Case& value, const LengthRange& sway) {
  const AngleRange turned = angles_of(sway, *value.tractor.hitch.convergence, "sway");
  return {-turned.high, -turned.low};
}

AngleRange yaw_in(const Case& value, const StateRange& range) {
  if (turns_measured(range)) return yaw_of_turns(value, range);
  if (range.sway) return yaw_of_sway(value, {range.sway->low, range.sway->high});
  return angle_range(*range.yaw);
}

AngleRange roll_in(const Case& value, const StateRange& range) {
  if (range.roll) return angle_range(*range.roll);
  if (range.lower_link_difference)
    return angles_of({range.lower_link_difference->low, range.lower_link_difference->high}, *value.tractor.hitch.span,
                     "lower_link_difference");
  if (drop_measured(range)) return roll_of_drops(value, range);
  const Angle most = range.side_slope->value + range.side_slope->tolerance;
  return {-most, most};
}

template <class Range> AmountRange amounts_of(const Range& range) {
  return {amount_of(range.low), amount_of(range.high)};
}

RangeOrigin origin(const char* of, const AngleRange& range, const Entries& entries) {
  RangeOrigin origin{of, amounts_of(range), {}};
  for (const Named& entry : entries) {
    if (entry.length)
      origin.from.push_back({entry.entry, amount_of(entry.length->value), amount_of(entry.length->tolerance)});
  }
  return origin;
}

} // namespace

const Stated<StateRange>& range_of(const Case& value, MachineState state) {
  if (state == MachineState::turning) return value.range.turning;
  return state == MachineState::transport ? value.range.transport : value.range.working;
}

std::string range_path(MachineState state) {
  if (state == MachineState::turning) return "range.turning";
  return state == MachineState::transport ? "range.transport" : "range.working";
}

bool is_trailed(const Case& value) { return value.tractor.hitch.kind == HitchKind::drawbar; }

bool is_semi_mounted(const Case& value) { return !is_trailed(value) && value.implement.steering_pivot; }

bool has_support_wheels(const Case& value) {
  return value.implement.support_wheels && value.implement.support_wheels->present;
}

std::vector<std::string> wheels_missing(const Case& value) {
  if (!has_support_wheels(value)) return {"implement.support_wheels"};
  const SupportWheels& wheels = value.implement.support_wheels->item;
  return unstated({{wheels.behind.has_value(), "implement.support_wheels.behind"},
                   {wheels.below.has_value(), "implement.support_wheels.below"},
                   {value.tractor.shaft_height.has_value(), "tractor.shaft_height"}});
}

namespace {

void name_trailed(std::vector<std::string>& missing, const Case& value, const StateRange& range,
                  const std::string& path) {
  if (turns_measured(range)) name_missing(missing, turn_entries(value, range, path));
  if (!turns_measured(range) && !range.yaw) missing.push_back(path + ".yaw");
  if (drop_measured(range)) name_missing(missing, drop_entries(value, range, path));
  if (!drop_measured(range) && !range.roll && !range.side_slope) missing.push_back(path + ".roll");
  if (ground_measured(range)) name_missing(missing, ground_entries(value, range, path));
  if (!ground_measured(range) && !range.pitch) missing.push_back(path + ".pitch");
}

void name_mounted(std::vector<std::string>& missing, const Case& value, const StateRange& range,
                  const std::string& path) {
  const Hitch& hitch = value.tractor.hitch;
  if (!range.sway && !range.yaw) missing.push_back(path + ".yaw");
  if (range.sway && !hitch.convergence) missing.emplace_back("tractor.hitch.convergence");
  if (!range.lower_link_difference && !range.roll) missing.push_back(path + ".roll");
  if (range.lower_link_difference && !hitch.span) missing.emplace_back("tractor.hitch.span");
  if (!range.lift) missing.push_back(path + ".lift");
  if (has_support_wheels(value) && !range.top_link) missing.push_back(path + ".top_link");
  if (range.top_link != TopLink::slack) return;
  for (std::string& entry : wheels_missing(value)) missing.push_back(std::move(entry));
}

} // namespace

std::vector<std::string> positions_missing(const Case& value, MachineState state) {
  const StateRange range = range_of(value, state).value_or(StateRange{});
  const std::string path = range_path(state);
  std::vector<std::string> missing;
  if (is_trailed(value)) {
    name_trailed(missing, value, range, path);
  } else {
    name_mounted(missing, value, range, path);
  }
  if (!range.driven) missing.push_back(path + ".driven");
  return missing;
}

Positions positions_in(const Case& value, MachineState state) {
  const StateRange& range = *range_of(value, state);
  Positions positions;
  positions.yaw = yaw_in(value, range);
  positions.roll = roll_in(value, range);
  if (is_trailed(value)) {
    positions.pitch = ground_measured(range) ? pitch_of_ground(value, range) : angle_range(*range.pitch);
    positions.roll_at_full_turn = range.roll_at_full_turn.value_or(1.0);
    return positions;
  }
  positions.lift = {range.lift->low, range.lift->high};
  if (range.sway) positions.sway = LengthRange{range.sway->low, range.sway->high};
  if (range.lower_link_difference)
    positions.difference = LengthRange{range.lower_link_difference->low, range.lower_link_difference->high};
  positions.slack = range.top_link == TopLink::slack;
  return positions;
}

namespace {

/// An interval that moves along with a measured length.
RangeOrigin origin_of_links(const char* of, const AngleRange& range, const std::string& path,
                            const Interval<Length>& moves, const char* entry, const MeasuredLength& length) {
  const Amount none = amount_of(Length{});
  return {of,
          amounts_of(range),
          {{path + "[0]", amount_of(moves.low), none},
           {path + "[1]", amount_of(moves.high), none},
           {entry, amount_of(length.value), amount_of(length.tolerance)}}};
}

} // namespace

std::vector<RangeOrigin> range_origins(const Case& value, MachineState state) {
  const StateRange& range = *range_of(value, state);
  const Positions positions = positions_in(value, state);
  const std::string path = range_path(state);
  std::vector<RangeOrigin> origins;
  if (turns_measured(range)) origins.push_back(origin("yaw", positions.yaw, turn_entries(value, range, path)));
  if (ground_measured(range)) origins.push_back(origin("pitch", positions.pitch, ground_entries(value, range, path)));
  if (drop_measured(range)) origins.push_back(origin("roll", positions.roll, drop_entries(value, range, path)));
  if (!range.roll && range.side_slope) {
    origins.push_back(
        {"roll",
         amounts_of(positions.roll),
         {{path + ".side_slope", amount_of(range.side_slope->value), amount_of(range.side_slope->tolerance)}}});
  }
  if (range.sway) {
    origins.push_back(origin_of_links("yaw", positions.yaw, path + ".sway", *range.sway, "tractor.hitch.convergence",
                                      *value.tractor.hitch.convergence));
  }
  if (range.lower_link_difference) {
    origins.push_back(origin_of_links("roll", positions.roll, path + ".lower_link_difference",
                                      *range.lower_link_difference, "tractor.hitch.span", *value.tractor.hitch.span));
  }
  return origins;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
