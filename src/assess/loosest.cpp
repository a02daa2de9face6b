#include "assess/loosest.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

using detail::Triple;

double seen(Uneven of, const DrivelineState& state) {
  return of == Uneven::variation ? state.speed_variation : math::abs(state.difference).value();
}

struct Found {
  double value = -std::numeric_limits<double>::infinity();
  Triple at{};
};

/// The corners of a box of positions, and its middle.
std::vector<Triple> corners(const Triple& low, const Triple& high) {
  std::vector<Triple> all{{0.5 * (low[0] + high[0]), 0.5 * (low[1] + high[1]), 0.5 * (low[2] + high[2])}};
  for (unsigned corner = 0; corner < 8; ++corner) {
    Triple at{};
    bool again = false; // an interval of one value has one end
    for (unsigned axis = 0; axis < 3; ++axis) {
      const bool upper = (corner >> axis & 1U) != 0;
      again = again || (upper && !(high[axis] > low[axis]));
      at[axis] = upper ? high[axis] : low[axis];
    }
    if (!again) all.push_back(at);
  }
  return all;
}

/// By ever smaller steps to where a quantity is greatest.
Found climbed(Found top, const Triple& low, const Triple& high, const std::function<double(const Triple&)>& of) {
  for (int halving = 2; halving <= 6; ++halving) {
    const double share = std::ldexp(1.0, -halving);
    for (std::size_t axis = 0; axis < 3; ++axis) {
      if (!(high[axis] > low[axis])) continue;
      for (const double side : {-1.0, 1.0}) {
        Triple at = top.at;
        at[axis] = std::clamp(at[axis] + side * share * (high[axis] - low[axis]), low[axis], high[axis]);
        const double value = of(at);
        if (value > top.value) top = {value, at};
      }
    }
  }
  return top;
}

Loosest of_trailed(const Case& value, MachineState state, Uneven of) {
  const Driveline line = driveline_of(value);
  const Position pin = pin_of(value);
  const DrivelineTolerance tolerance = trailed_tolerance(value);
  const detail::Domain domain = detail::domain(attitudes_of(value, state));
  const auto allowed = [&](const Triple& at) {
    return std::all_of(domain.couplings.begin(), domain.couplings.end(), [&](const detail::HalfSpace& c) {
      return c.share[0] * at[0] + c.share[1] * at[1] + c.share[2] * at[2] <= c.limit + c.rounding;
    });
  };
  const auto greatest = [&](const Triple& at) {
    if (!allowed(at)) return -std::numeric_limits<double>::infinity();
    return detail::greatest_within(line, pin, tolerance, detail::attitude(at),
                                   [of](const DrivelineState& s) { return seen(of, s); });
  };
  Found top;
  for (const Triple& at : corners(domain.low, domain.high)) {
    const double found = greatest(at);
    if (found > top.value) top = {found, at};
  }
  top = climbed(top, domain.low, domain.high, greatest);
  return {top.value, {radians(top.at[0]), radians(top.at[1]), radians(top.at[2]), std::nullopt}};
}

Loosest of_mounted(const Case& value, MachineState state, Uneven of) {
  ThreePointLinkage linkage = linkage_of(value);
  const bool slack = positions_in(value, state).slack;
  if (slack && !(linkage.top_link > Length{})) linkage.top_link = metres(1.0); // any: it hangs slack
  detail::LinkageMotion motion(linkage, positions_of(value, state), mounted_tolerance(value));
  if (slack) motion.stand_on(support_wheel_of(value));
  const Driveline line = detail::coupled(driveline_of(value), motion);
  Found top;
  for (const Triple& at : corners(motion.low, motion.high)) {
    const double found =
        detail::MountedElsewhere(line, motion, at).greatest([of](const DrivelineState& s) { return seen(of, s); });
    if (found > top.value) top = {found, at};
  }
  const Triple attitude = detail::linkage_cell(motion, top.at, {}).attitude;
  return {top.value, {radians(attitude[0]), radians(attitude[1]), radians(attitude[2]), motion.position(top.at).lift}};
}

} // namespace

Loosest loosest(const Case& value, MachineState state, Uneven of) {
  return is_trailed(value) ? of_trailed(value, state, of) : of_mounted(value, state, of);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
