#pragma once
// How unevenly a driveline with an intermediate bearing turns over a whole range of positions, with proved bounds.

#include <fieldshaft/driveline/chain_row.hpp>
#include <fieldshaft/driveline/envelope.hpp>

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

/// Greatest speed variation behind both sections of a driveline, over every attitude of a range, with proved bounds.
///
///   first, second, between  as for chain_at
///   pin, range, options     as for driveline_envelope; of the gaps that of the speed variation counts
/// The bounds hold for the rigid model as stated, without tolerances; where the budget runs out `proved` is false and
/// they still hold. Source: branch and bound with the slope of chain_row.hpp.
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

} // namespace v0
} // namespace fieldshaft
