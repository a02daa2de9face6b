#pragma once
// Laws of the driveline's geometry: mirroring, scaling, wider ranges, tolerances.

#include "law.hpp"

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

namespace geometry_laws {

using namespace fieldshaft;

struct Layout {
  Driveline driveline;
  Position pin;
  AttitudeRange range;
};

inline Layout any_layout(RandomInputs& r) {
  Layout s;
  s.driveline.front_joint = metres(r.between(0.03, 0.2));
  s.driveline.rear_joint = metres(r.between(0.03, 0.2));
  s.driveline.input =
      Position(metres(-r.between(0.4, 1.3)), metres(r.between(-0.2, 0.2)), metres(r.between(-0.2, 0.5)));
  s.driveline.input_direction = Direction::ahead(degrees(r.between(-8, 8)), degrees(r.between(-8, 8)));
  s.driveline.yoke_phase = degrees(r.whole(0, 1) == 0 ? 0.0 : r.between(-90, 90));
  s.pin = Position(metres(-r.between(0.3, 0.6)), metres(r.between(-0.15, 0.15)), metres(-r.between(0, 0.4)));
  const auto interval = [&r](double most) {
    const double low = r.between(-most, most);
    return AngleRange{degrees(low), degrees(low + r.between(0, most))};
  };
  s.range.yaw = interval(40);
  s.range.pitch = interval(12);
  s.range.roll = interval(12);
  return s;
}

inline EnvelopeOptions coarse() {
  EnvelopeOptions options;
  options.angle_gap = degrees(0.1);
  options.length_gap = millimetres(1.0);
  options.variation_gap = 5e-3;
  options.budget = 4000;
  return options;
}

inline DrivelineEnvelope envelope_of(const Layout& s, const EnvelopeOptions& options = coarse()) {
  return driveline_envelope(s.driveline, s.pin, s.range, options);
}

inline Attitude any_attitude(RandomInputs& r, const AttitudeRange& range) {
  const auto pick = [&r](const AngleRange& a) { return a.low + r.between(0, 1) * (a.high - a.low); };
  return {pick(range.yaw), pick(range.pitch), pick(range.roll)};
}

inline DrivelineState state_of(const Layout& s, const Attitude& at) { return driveline_at(s.driveline, {s.pin, at}); }

inline Layout mirror_image(Layout s) {
  s.driveline = mirrored(s.driveline);
  s.pin = mirrored(s.pin);
  s.range = mirrored(s.range);
  return s;
}

inline Layout scaled(Layout s, double by) {
  const auto grown = [by](const Position& p) { return Position(by * p.forward(), by * p.left(), by * p.up()); };
  s.driveline.front_joint *= by;
  s.driveline.rear_joint *= by;
  s.driveline.input = grown(s.driveline.input);
  s.pin = grown(s.pin);
  return s;
}

/// The layout with each of the measurements that a tolerance was stated for at one end of it.
inline Layout at_ends(RandomInputs& r, Layout s, const DrivelineTolerance& t) {
  const auto end = [&r](Length most) { return r.whole(0, 1) == 0 ? most : -most; };
  s.driveline.front_joint += end(t.front_joint);
  s.pin = s.pin + Position(end(t.pin_distance), Length{}, Length{});
  s.driveline.input = s.driveline.input + Position(end(t.input_behind), Length{}, end(t.input_up));
  return s;
}

/// Some part of a range.
inline AttitudeRange part_of(RandomInputs& r, AttitudeRange range) {
  for (AngleRange* a : {&range.yaw, &range.pitch, &range.roll}) {
    const double low = r.between(0, 0.5);
    const double high = r.between(low, 1.0);
    const Angle width = a->high - a->low;
    *a = {a->low + low * width, a->low + high * width};
  }
  return range;
}

/// Bounds of the same extreme, the second's lengths `by` times as large, must have a value in common.
template <class Q> void check_same(const Extreme<Q>& a, const Extreme<Q>& b, double by = 1.0) {
  CHECK(by * a.lower <= b.upper);
  CHECK(b.lower <= by * a.upper);
}

inline void check_same(const DrivelineEnvelope& a, const DrivelineEnvelope& b, double by = 1.0) {
  check_same(a.front_angle, b.front_angle);
  check_same(a.rear_angle, b.rear_angle);
  check_same(a.difference, b.difference);
  check_same(a.longest, b.longest, by);
  check_same(a.shortest, b.shortest, by);
  check_same(*a.speed_variation, *b.speed_variation);
}

/// The bounds of a wider question must reach what the narrower one attains.
inline void check_covers(const DrivelineEnvelope& wide, const DrivelineEnvelope& narrow) {
  CHECK(wide.front_angle.upper >= narrow.front_angle.lower);
  CHECK(wide.rear_angle.upper >= narrow.rear_angle.lower);
  CHECK(wide.difference.upper >= narrow.difference.lower);
  CHECK(wide.longest.upper >= narrow.longest.lower);
  CHECK(wide.shortest.lower <= narrow.shortest.upper);
}

inline void check_equal(const DrivelineEnvelope& a, const DrivelineEnvelope& b) {
  CHECK(a.front_angle.upper == b.front_angle.upper);
  CHECK(a.rear_angle.upper == b.rear_angle.upper);
  CHECK(a.difference.upper == b.difference.upper);
  CHECK(a.longest.upper == b.longest.upper);
  CHECK(a.shortest.lower == b.shortest.lower);
  CHECK(a.speed_variation->upper == b.speed_variation->upper);
}

inline double turn_allowed(const Layout& s, double angle) {
  DrivelineLimits limits;
  limits.front_angle = degrees(angle);
  limits.rear_angle = degrees(angle);
  AttitudeRange range{either_side(degrees(60)), either_side(degrees(2)), either_side(degrees(2)), {}};
  const TurnLimit left = turn_limit(s.driveline, s.pin, range, limits, coarse()).left;
  return left.straight_ahead ? left.allowed.value() : 0.0;
}

inline const Law laws[] = {
    {"a mirrored position has the same angles and length, to the last digit", 2000,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       const Attitude at = any_attitude(r, s.range);
       const DrivelineState here = state_of(s, at);
       const DrivelineState there = state_of(mirror_image(s), mirrored(at));
       CHECK(here.front_angle == there.front_angle);
       CHECK(here.rear_angle == there.rear_angle);
       CHECK(here.length == there.length);
     }},
    {"a mirrored layout has the mirrored envelope, to the last digit", 40,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       check_equal(envelope_of(s), envelope_of(mirror_image(s)));
     }},
    {"a larger range never shrinks the envelope", 60,
     [](RandomInputs& r) {
       Layout s = any_layout(r);
       const DrivelineEnvelope wide = envelope_of(s);
       s.range = part_of(r, s.range);
       check_covers(wide, envelope_of(s));
     }},
    {"the worse half of a range is as bad as the whole", 40,
     [](RandomInputs& r) {
       Layout s = any_layout(r);
       const DrivelineEnvelope whole = envelope_of(s);
       const AngleRange yaw = s.range.yaw;
       s.range.yaw.high = 0.5 * (yaw.low + yaw.high);
       const DrivelineEnvelope low = envelope_of(s);
       s.range.yaw = {s.range.yaw.high, yaw.high};
       const DrivelineEnvelope high = envelope_of(s);
       CHECK(whole.front_angle.lower <= std::max(low.front_angle.upper, high.front_angle.upper));
       CHECK(whole.longest.lower <= std::max(low.longest.upper, high.longest.upper));
       CHECK(whole.shortest.upper >= std::min(low.shortest.lower, high.shortest.lower));
     }},
    {"scaling every length scales the distances and keeps the angles", 60,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       const double by = r.across(0.1, 10);
       check_same(envelope_of(s), envelope_of(scaled(s, by)), by);
     }},
    {"at one position, twice the size is twice the length at the same angles", 2000,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       const Attitude at = any_attitude(r, s.range);
       const DrivelineState once = state_of(s, at);
       const DrivelineState twice = state_of(scaled(s, 2.0), at);
       CHECK(twice.length == 2.0 * once.length);
       CHECK(twice.front_angle == once.front_angle);
       CHECK(twice.rear_angle == once.rear_angle);
     }},
    {"more effort or finer gaps give bounds on the same extremes", 40,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       EnvelopeOptions hasty = coarse();
       hasty.budget = r.whole(1, 200);
       check_same(envelope_of(s), envelope_of(s, hasty));
       check_same(envelope_of(s), envelope_of(s, EnvelopeOptions{}));
     }},
    {"no position of the range lies outside its envelope", 60,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       const DrivelineEnvelope e = envelope_of(s);
       for (int i = 0; i < 300; ++i) {
         const DrivelineState at = state_of(s, any_attitude(r, s.range));
         CHECK(at.front_angle <= e.front_angle.upper);
         CHECK(at.rear_angle <= e.rear_angle.upper);
         CHECK(math::abs(at.difference) <= e.difference.upper);
         CHECK(at.length <= e.longest.upper);
         CHECK(at.length >= e.shortest.lower);
       }
     }},
    {"yoke phase moves neither angles nor length", 2000,
     [](RandomInputs& r) {
       Layout s = any_layout(r);
       const Attitude at = any_attitude(r, s.range);
       const DrivelineState before = state_of(s, at);
       s.driveline.yoke_phase = degrees(r.between(-90, 90));
       const DrivelineState after = state_of(s, at);
       CHECK(before.length == after.length);
       CHECK(before.front_angle == after.front_angle);
       CHECK(before.rear_angle == after.rear_angle);
     }},
    {"yokes half a turn apart are yokes in line", 2000,
     [](RandomInputs& r) {
       Layout s = any_layout(r);
       const Attitude at = any_attitude(r, s.range);
       const double before = state_of(s, at).speed_variation;
       s.driveline.yoke_phase += degrees(180);
       CHECK(std::abs(state_of(s, at).speed_variation - before) < 1e-9);
     }},
    {"a joint moved along its shaft changes the length by no more than it moves", 2000,
     [](RandomInputs& r) {
       Layout s = any_layout(r);
       const Attitude at = any_attitude(r, s.range);
       const Length before = state_of(s, at).length;
       const Length move = metres(r.between(0, 0.1));
       s.driveline.front_joint += move;
       CHECK(math::abs(state_of(s, at).length - before) <= (1 + 1e-12) * move + metres(1e-15));
     }},
    {"what a driveline gains in length it loses in overlap", 2000,
     [](RandomInputs& r) {
       Telescope t;
       t.closed_length = metres(r.between(0.4, 1.2));
       t.slide.closed_overlap = t.closed_length * r.between(0.3, 0.9);
       const Length length = t.closed_length * r.between(1, 1.4);
       const Length more = metres(r.between(0, 0.3));
       CHECK(std::abs((overlap_at(t, length) - overlap_at(t, length + more) - more).value()) < 1e-14);
     }},
    {"tolerances never shrink the envelope, and no layout at their ends leaves it", 30,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       DrivelineTolerance t;
       t.front_joint = millimetres(r.between(0, 5));
       t.pin_distance = millimetres(r.between(0, 10));
       t.input_behind = millimetres(r.between(0, 10));
       t.input_up = millimetres(r.between(0, 10));
       const DrivelineEnvelope exact = envelope_of(s);
       const DrivelineEnvelope e = driveline_envelope(s.driveline, s.pin, t, s.range, coarse()).envelope;
       check_covers(e, exact);
       for (const Attitude& at : {exact.difference.at, exact.front_angle.at, exact.rear_angle.at, exact.longest.at}) {
         for (int i = 0; i < 20; ++i) {
           const DrivelineState state = state_of(at_ends(r, s, t), at);
           CHECK(state.front_angle <= e.front_angle.upper);
           CHECK(state.rear_angle <= e.rear_angle.upper);
           CHECK(math::abs(state.difference) <= e.difference.upper);
           CHECK(state.length <= e.longest.upper);
           CHECK(state.length >= e.shortest.lower);
         }
       }
     }},
    {"a laxer limit never allows less turn", 20,
     [](RandomInputs& r) {
       const Layout s = any_layout(r);
       const double angle = r.between(15, 30);
       CHECK(turn_allowed(s, angle) <= turn_allowed(s, angle + r.between(1, 15)) + degrees(0.2).value());
     }},
};

} // namespace geometry_laws
