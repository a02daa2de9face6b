#pragma once
// Counted cycles in bins of range, and of mean where wanted: a record of any length in fixed memory.

#include <fieldshaft/fatigue/rainflow.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Equal bins from `low` on: bin i holds low + i width up to, but without, low + (i + 1) width.
template <class Q = double> struct Bins {
  Q low;
  Q width; ///< above 0
  std::size_t count;
};

/// Counts of cycles by range and mean. It may be handed to a CycleCounter as its sink; plain numbers are then SI
/// numbers.
template <class Q = double> class CycleHistogram {
public:
  /// Bins of range, from zero on, whatever the mean.
  CycleHistogram(Q range_width, std::size_t range_bins)
      : CycleHistogram(Bins<Q>{range_width * 0.0, range_width, range_bins},
                       Bins<Q>{range_width * 0.0, range_width, 0}) {}

  /// Bins of range and of mean.
  CycleHistogram(Bins<Q> ranges, Bins<Q> means) : ranges_(ranges), means_(means) {
    constexpr const char* function = "CycleHistogram";
    check::not_negative(detail::number_of(ranges.low), {function, "ranges.low", ""});
    check::positive(detail::number_of(ranges.width), {function, "ranges.width", ""});
    check::finite(detail::number_of(means.low), {function, "means.low", ""});
    check::positive(detail::number_of(means.width), {function, "means.width", ""});
    check::positive(static_cast<double>(ranges.count), {function, "ranges.count", ""});
    counts_.resize(ranges.count * columns());
  }

  template <class R> void operator()(const Cycle<R>& cycle) {
    static_assert(std::is_same_v<R, Q> || std::is_same_v<R, double>, "cycles in the unit of the bins");
    const std::size_t row = bin(detail::number_of(cycle.range), ranges_);
    const std::size_t column = means_.count == 0 ? 0 : bin(detail::number_of(cycle.mean), means_);
    if (row < ranges_.count && column < columns()) {
      counts_[row * columns() + column] += cycle.count;
    } else {
      outside_ += cycle.count;
    }
  }

  /// Cycles in a bin; the second index is 0 where the means are not binned.
  double count(std::size_t range_bin, std::size_t mean_bin = 0) const {
    check::below(static_cast<double>(range_bin), static_cast<double>(ranges_.count),
                 {"CycleHistogram::count", "range_bin", ""});
    check::below(static_cast<double>(mean_bin), static_cast<double>(columns()),
                 {"CycleHistogram::count", "mean_bin", ""});
    return counts_[range_bin * columns() + mean_bin];
  }

  /// Cycles that no bin holds. Damage worked out from the bins leaves them out: widen the bins until this is zero.
  double outside() const noexcept { return outside_; }

  /// A row for every bin that is not empty: the upper edge of its range, which is on the safe side, and the middle of
  /// its means (zero where they are not binned).
  std::vector<Cycle<Q>> cycles() const {
    std::vector<Cycle<Q>> rows;
    for (std::size_t row = 0; row < ranges_.count; ++row) {
      for (std::size_t column = 0; column < columns(); ++column) {
        const double n = counts_[row * columns() + column];
        if (n <= 0.0) continue;
        const Q range = ranges_.low + static_cast<double>(row + 1) * ranges_.width;
        const Q middle = means_.low + (static_cast<double>(column) + 0.5) * means_.width;
        rows.push_back({range, means_.count == 0 ? range * 0.0 : middle, n});
      }
    }
    return rows;
  }

private:
  std::size_t columns() const noexcept { return means_.count == 0 ? 1 : means_.count; }

  /// The bin of a value; the number of bins or more if none holds it.
  static std::size_t bin(double value, const Bins<Q>& bins) noexcept {
    const double place = (value - detail::number_of(bins.low)) / detail::number_of(bins.width);
    return place >= 0.0 && place < static_cast<double>(bins.count) ? static_cast<std::size_t>(place) : bins.count;
  }

  Bins<Q> ranges_;
  Bins<Q> means_;
  std::vector<double> counts_;
  double outside_ = 0.0;
};

} // namespace v0
} // namespace fieldshaft
