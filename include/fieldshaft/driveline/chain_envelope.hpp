#pragma once
// How unevenly a driveline with an intermediate bearing turns over a whole range of positions, with proved bounds.

#include <fieldshaft/driveline/chain_row.hpp>
#include <fieldshaft/driveline/mounted.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// ln k of both sections, bounded over a box by its slope alone.
class ChainObjective {
public:
  ChainObjective(const Shafts& shafts, const ChainRow& row, const Position& pin, double gap)
      : shafts_(shafts), row_(row), pin_(pin), gap_(gap) {}

  double value(const Triple& at) const { return row_.unevenness({pin_, attitude(at)}); }
  Expansion expand(const Triple& at, double size) const {
    const Turn turn(at);
    const double least = shafts_.least_length(std::sqrt(shafts_.square(turn).value), size) * (1.0 - 1e-12);
    Expansion e;
    e.jet.value = value(at);
    if (least > 1e-6) e.spread = row_.change(shafts_, turn, chain_turns(shafts_, size, 0.0, least));
    return e;
  }
  double slope_rounding() const noexcept { return 0.0; } // no expansion, no slope that is looked at
  double target(double best) const noexcept {
    return unevenness_of_variation(variation_of_unevenness(std::max(0.0, best)) + gap_);
  }

private:
  const Shafts& shafts_;
  const ChainRow& row_;
  Position pin_;
  double gap_;
};

/// Variation of the whole row: its value and bound, both with what rounding may do to them.
inline Extreme<double> chain_extreme(double value, double upper, const Attitude& at, double gap) {
  constexpr double infinite = std::numeric_limits<double>::infinity();
  if (!(value < infinite)) return {infinite, infinite, infinite, 0.0, at, true};
  constexpr double spare = 2e-9;
  const double lower = std::max(0.0, value - spare * (1.0 + value));
  const double most = std::max(value, upper) + spare * (1.0 + std::max(value, upper));
  return {value, lower, most, most - lower, at, most - lower <= gap};
}

inline void check_chain(const Driveline& first, const Driveline& second, Angle between,
                        const EnvelopeOptions& options) {
  constexpr const char* name = "chain_envelope";
  check::driveline(first, name);
  check::driveline(second, name);
  check::finite(between.value(), {name, "between", "rad"});
  check::envelope_options(options, name);
}

inline Extreme<double> chain_over(const Driveline& first, const Driveline& second, Angle between, const Position& pin,
                                  const AttitudeRange& range, const EnvelopeOptions& options) {
  const Shafts shafts(lines(first, pin));
  const ChainRow row(first, second, between);
  const ChainObjective objective(shafts, row, pin, 0.98 * options.variation_gap);
  const SearchResult r = Search<ChainObjective>(objective, domain(range), options.budget).run();
  if (!r.found) fail_input("chain_envelope", "range", "no attitude keeps all couplings", "a range that is not empty");
  return chain_extreme(variation_of_unevenness(r.value), variation_of_unevenness(r.upper), attitude(r.at),
                       options.variation_gap);
}

} // namespace detail

/// Greatest speed variation behind both sections of a driveline, over every attitude of a range, with proved bounds.
///
///   first, second, between  as for chain_at
///   pin, range, options     as for driveline_envelope; of the gaps that of the speed variation counts
/// The bounds hold for the rigid model as stated, without tolerances. Where the budget runs out `proved` is false and
/// they still hold. Source: branch and bound with the slope of chain_row.hpp. Example: a second section that runs
/// straight: the envelope's speed variation of the first alone.
inline Extreme<double> chain_envelope(const Driveline& first, const Driveline& second, Angle between,
                                      const Position& pin, const AttitudeRange& range,
                                      const EnvelopeOptions& options = {}) {
  detail::check_chain(first, second, between, options);
  check::attitude_range(range, "chain_envelope");
  return detail::chain_over(first, second, between, pin, range, options);
}

/// The greatest of a mounted machine, and where its linkage stands then.
struct MountedChainEnvelope {
  Extreme<double> speed_variation;
  LinkagePosition at;
};

/// The same for a machine on a three-point linkage.
///
///   linkage, range  as for the envelope of a mounted implement
///   wheel           stated: it stands on its own wheel with the top link slack
inline MountedChainEnvelope chain_envelope(const Driveline& first, const Driveline& second, Angle between,
                                           const ThreePointLinkage& linkage, const MountedRange& range,
                                           const std::optional<SupportWheel>& wheel = {},
                                           const EnvelopeOptions& options = {}) {
  detail::check_chain(first, second, between, options);
  detail::check_mounted(first, linkage, range, {}, options);
  detail::LinkageMotion motion(linkage, range);
  if (wheel) motion.stand_on(*wheel);
  const Driveline line = detail::coupled(first, motion);
  const detail::ChainRow row(line, second, between);
  const detail::SearchResult r = detail::MountedSearch(line, motion, detail::MountedGoal::chain,
                                                       0.98 * options.variation_gap, options.budget, &row)
                                     .run();
  const Attitude at = detail::attitude(detail::linkage_cell(motion, r.at, {}).attitude);
  return {detail::chain_extreme(r.value, r.upper, at, options.variation_gap), motion.position(r.at)};
}

} // namespace v0
} // namespace fieldshaft
