#pragma once
// The reversals of a history, found in one pass at the speed of the memory while the history runs one way.

#include <fieldshaft/core/check.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string>

namespace fieldshaft {
inline namespace v0 {

/// What is left out of a history before its cycles are counted; by default nothing.
struct ReversalFilter {
  double gate = 0.0; ///< a swing of at most this size is no reversal (noise), in the unit of the history; at least 0
  double grid = 0.0; ///< reversals are rounded to whole multiples of this, at least 0; zero: not rounded
};

namespace detail {

/// Samples that are looked at together: long enough to pay off, short enough that a block with a reversal costs little.
inline constexpr std::size_t scan_block = 32;
/// Samples of this size and above, as well as NaN and the infinities, are refused: their range could overflow.
inline constexpr double sample_limit = 8.98846567431158e307; // 2^1023
inline constexpr const char* sample_allowed = "a finite number below 2^1023 in size";

constexpr std::uint64_t bits_of(double value) noexcept { return FIELDSHAFT_BIT_CAST(std::uint64_t, value); }

/// The top bit of the result is set for NaN, the infinities and anything of 2^1023 or more in size: the exponent then
/// overflows into the sign. A bit test, so that it also holds under -ffast-math.
constexpr std::uint64_t oversize_bit(double value) noexcept {
  return (bits_of(value) & 0x7fffffffffffffffULL) + 0x0020000000000000ULL;
}

constexpr bool usable(double sample) noexcept { return oversize_bit(sample) >> 63 == 0; }

[[noreturn]] FIELDSHAFT_COLD inline void fail_sample(const char* function, double value, std::uint64_t index) {
  fail_input(function, "history[" + std::to_string(index) + "]", check::text_of(value, ""), sample_allowed);
}

/// The number of samples before the first that is no usable number.
inline std::size_t usable_samples(const double* history, std::size_t size) noexcept {
  std::size_t i = 0;
  for (; i + scan_block <= size; i += scan_block) {
    std::uint64_t bits[4] = {}; // four lanes: twice as fast as one where the compiler does not unroll
    for (std::size_t j = 0; j < scan_block; j += 4) {
      for (std::size_t lane = 0; lane < 4; ++lane) bits[lane] |= oversize_bit(history[i + j + lane]);
    }
    if ((bits[0] | bits[1] | bits[2] | bits[3]) >> 63 != 0) break;
  }
  while (i < size && usable(history[i])) ++i;
  return i;
}

/// What a block is like: whether all of its samples are usable numbers, and whether none of them lies below (rising) or
/// above (falling) the one before it.
struct BlockLook {
  bool usable;
  bool runs_on;
};

/// Reads history[-1] too. The sign bits of differences and the oversize bits say it all; the loops vectorise.
inline BlockLook look_at_block(const double* history, bool rising) noexcept {
  const double* const before = history - 1;
  std::uint64_t oversize = 0;
  std::uint64_t turned = 0;
  if (rising) {
    for (std::size_t j = 0; j < scan_block; ++j) {
      oversize |= oversize_bit(history[j]);
      turned |= bits_of(history[j] - before[j]);
    }
  } else {
    for (std::size_t j = 0; j < scan_block; ++j) {
      oversize |= oversize_bit(history[j]);
      turned |= bits_of(before[j] - history[j]);
    }
  }
  return {oversize >> 63 == 0, turned >> 63 == 0};
}

/// Finds the reversals of a history that comes in pieces. The first sample and, at the end, the last one count as
/// reversals; equal neighbours count once. `use(reversals, count, first_is_peak)` gets them in order; they alternate.
class TurningPoints {
public:
  /// Reads up to the first sample that is no usable number, and returns its index, or the size.
  template <class Use> std::size_t feed(const double* history, std::size_t size, Use&& use) {
    std::size_t i = 0;
    for (; !moving_ && i < size; ++i) {
      if (!usable(history[i])) return i;
      start(history[i], use);
    }
    if (i == 0 && size > 0) i = collect(history, 1, use); // a look at a block needs the sample before it
    for (; i > 0 && i + scan_block <= size; i += scan_block) {
      const BlockLook look = look_at_block(history + i, rising_);
      if (!look.usable) break;
      if (look.runs_on) {
        last_ = history[i + scan_block - 1];
      } else {
        collect_usable(history + i, scan_block, use);
      }
    }
    return i + collect(history + i, std::min(scan_block, size - i), use);
  }

  /// Hands on the last sample; the next feed begins a new history.
  template <class Use> void finish(Use&& use) {
    if (moving_) use(&last_, std::size_t{1}, rising_);
    *this = TurningPoints();
  }

private:
  /// Samples up to the first move, which decides whether the first sample is a peak or a valley.
  template <class Use> void start(double sample, Use&& use) {
    if (begun_ && sample != last_) {
      rising_ = sample > last_;
      moving_ = true;
      use(&last_, std::size_t{1}, !rising_);
    }
    begun_ = true;
    last_ = sample;
  }

  template <class Use> std::size_t collect(const double* history, std::size_t size, Use&& use) {
    const std::size_t count = usable_samples(history, size);
    collect_usable(history, count, use);
    return count;
  }

  /// Looks at every sample of up to one block, without a branch: a noisy history cannot be predicted.
  template <class Use> void collect_usable(const double* history, std::size_t size, Use&& use) {
    double reversals[scan_block];
    std::size_t count = 0;
    const bool first_is_peak = rising_;
    unsigned rising = rising_ ? 1 : 0;
    double last = last_;
    for (std::size_t j = 0; j < size; ++j) {
      const double sample = history[j];
      const unsigned above = sample > last ? 1 : 0;
      const unsigned below = sample < last ? 1 : 0;
      const unsigned now_rising = above | (rising & (below ^ 1U));
      reversals[count] = last;
      count += now_rising ^ rising;
      rising = now_rising;
      last = sample;
    }
    last_ = last;
    rising_ = rising != 0;
    if (count > 0) use(static_cast<const double*>(reversals), count, first_is_peak);
  }

  double last_ = 0.0;
  bool begun_ = false;
  bool moving_ = false;
  bool rising_ = false;
};

inline double rounded(double value, ReversalFilter filter) noexcept {
  return filter.grid > 0.0 ? filter.grid * std::round(value / filter.grid) : value;
}

/// A hysteresis filter on reversals: only a swing of more than the gate makes the extreme before it a reversal.
class ReversalGate {
public:
  explicit ReversalGate(ReversalFilter filter) : filter_(filter) {}

  bool active() const noexcept { return filter_.gate > 0.0 || filter_.grid > 0.0; }

  template <class Use> void offer(double value, Use&& use) {
    value = rounded(value, filter_);
    if (state_ == State::empty) {
      state_ = State::begun;
      extreme_ = value;
      return;
    }
    const bool on = state_ == State::moving && (rising_ ? value >= extreme_ : value <= extreme_);
    if (on) {
      extreme_ = value;
    } else if (std::abs(value - extreme_) > filter_.gate) {
      use(&extreme_, std::size_t{1}, value < extreme_);
      rising_ = value > extreme_;
      extreme_ = value;
      state_ = State::moving;
    }
  }

  template <class Use> void finish(Use&& use) {
    if (state_ == State::moving) use(&extreme_, std::size_t{1}, rising_);
    *this = ReversalGate(filter_);
  }

private:
  enum class State { empty, begun, moving };

  ReversalFilter filter_;
  State state_ = State::empty;
  double extreme_ = 0.0;
  bool rising_ = false;
};

/// Checked samples in pieces become alternating reversals, through the gate where there is one.
class ReversalSource {
public:
  ReversalSource(const char* function, ReversalFilter filter) : function_(function), gate_(filter) {
    fieldshaft::check::not_negative(filter.gate, {function, "filter.gate", ""});
    fieldshaft::check::not_negative(filter.grid, {function, "filter.grid", ""});
  }

  /// InputError at the first unusable sample, before any of the piece has been used.
  void check(const double* history, std::size_t size) const {
    const std::size_t count = usable_samples(history, size);
    if (count < size) fail_sample(function_, history[count], seen_ + count);
  }

  /// One pass up to the first unusable sample; returns its index in the piece, or the size.
  template <class Use> std::size_t take(const double* history, std::size_t size, Use&& use) {
    const std::size_t count =
        gate_.active() ? points_.feed(history, size, gated(use)) : points_.feed(history, size, use);
    seen_ += count;
    return count;
  }

  /// One pass: InputError at the first unusable sample, after those before it have been used.
  template <class Use> void stream(const double* history, std::size_t size, Use&& use) {
    const std::size_t count = take(history, size, use);
    if (count < size) fail_sample(function_, history[count], seen_);
  }

  template <class Use> void finish(Use&& use) {
    if (gate_.active()) {
      points_.finish(gated(use));
      gate_.finish(use);
    } else {
      points_.finish(use);
    }
    seen_ = 0;
  }

private:
  template <class Use> auto gated(Use& use) {
    return [this, &use](const double* reversals, std::size_t count, bool) {
      for (std::size_t i = 0; i < count; ++i) gate_.offer(reversals[i], use);
    };
  }

  const char* function_;
  ReversalGate gate_;
  TurningPoints points_;
  std::uint64_t seen_ = 0;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
