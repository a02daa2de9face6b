#pragma once
// Cycles of a load history by the rainflow method of ASTM E1049-85, in one pass and in pieces.

#include <fieldshaft/fatigue/cycle.hpp>
#include <fieldshaft/fatigue/turning_points.hpp>

#include <algorithm>
#include <type_traits>
#include <utility>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

namespace detail {

template <class Sink> void emit_cycle(double from, double to, double count, Sink& sink) {
  sink(Cycle<double>{std::abs(from - to), 0.5 * from + 0.5 * to, count});
}

/// Steps 2 to 6 of section 5.4.4 (or 5.4.5 for a repeating history) for one more reversal. The newest range is at least
/// as large as the one before it exactly where the new reversal reaches the last one of its own kind.
struct ThreePoints {
  bool repeating;

  template <bool Peak, class Sink> std::size_t close(double* points, std::size_t open, double value, Sink& sink) const {
    while (open >= 2 && (Peak ? value >= points[open - 2] : value <= points[open - 2])) {
      if (open == 2 && !repeating) { // the range holds the starting point: half a cycle, and a new start
        emit_cycle(points[0], points[1], 0.5, sink);
        points[0] = points[1];
        return 1;
      }
      emit_cycle(points[open - 2], points[open - 1], 1.0, sink);
      open -= 2;
    }
    return open;
  }
};

/// The reversals whose cycles are open, in memory that grows only with their number.
template <class Rule> class OpenReversals {
public:
  explicit OpenReversals(Rule rule) : rule_(rule), points_(64) {}

  std::size_t size() const noexcept { return size_; }
  const double* data() const noexcept { return points_.data(); }
  void clear() noexcept { size_ = 0; }

  template <class Sink> void add(const double* reversals, std::size_t count, bool first_is_peak, Sink& sink) {
    if (points_.size() < size_ + count) points_.resize(2 * (size_ + count));
    double* const points = points_.data();
    std::size_t open = size_;
    std::size_t i = 0;
    if (!first_is_peak && count > 0) open = push<false>(points, open, reversals[i++], sink);
    for (; i + 1 < count; i += 2) {
      open = push<true>(points, open, reversals[i], sink);
      open = push<false>(points, open, reversals[i + 1], sink);
    }
    if (i < count) open = push<true>(points, open, reversals[i], sink);
    size_ = open;
  }

private:
  template <bool Peak, class Sink> std::size_t push(double* points, std::size_t open, double value, Sink& sink) const {
    open = rule_.template close<Peak>(points, open, value, sink);
    points[open] = value;
    return open + 1;
  }

  Rule rule_;
  std::vector<double> points_;
  std::size_t size_ = 0;
};

/// Samples handed on at a time from a long history.
inline constexpr std::size_t stream_chunk = 4096;

/// Streams a long history to a counter, quantities as their SI numbers; `read` counts along.
template <class Counter, class Q>
void stream_all(Counter& counter, const Q* history, std::size_t size, std::size_t& read) {
  for (std::size_t i = 0; i < size; i += stream_chunk) {
    const std::size_t count = std::min(stream_chunk, size - i);
    if constexpr (std::is_same_v<Q, double>) {
      counter.stream(history + i, count);
    } else {
      double numbers[stream_chunk];
      std::transform(history + i, history + i + count, numbers, [](const Q& q) { return q.value(); });
      counter.stream(numbers, count);
    }
    read += count;
  }
}

/// Checks a whole history, as a counter would.
struct SampleCheck {
  const char* function;
  std::size_t read = 0;

  void stream(const double* history, std::size_t size) const {
    const std::size_t count = usable_samples(history, size);
    if (count < size) fail_sample(function, history[count], read + count);
  }
};

/// Collects rows. Those of a noisy history fill more memory than the history itself, so that the room for all of them
/// is foreseen from the share of the history that has been read.
template <class Q> struct RowCollector {
  std::size_t samples;
  std::size_t read = 0;
  std::vector<Cycle<Q>> rows = {};

  void operator()(const Cycle<double>& cycle) {
    if (rows.size() == rows.capacity()) grow();
    rows.push_back({from_number<Q>(cycle.range), from_number<Q>(cycle.mean), cycle.count});
  }

  FIELDSHAFT_COLD void grow() {
    const double share = static_cast<double>(read) / static_cast<double>(samples);
    const double all = share > 0.0 ? 1.1 * static_cast<double>(rows.size()) / share : 0.0;
    rows.reserve(std::max(2 * rows.size() + 16, static_cast<std::size_t>(all)));
  }
};

} // namespace detail

/// Counts the cycles of a history that comes in pieces, by ASTM E1049-85, section 5.4.4 (rainflow).
///
/// `sink` is called with every Cycle<double> as soon as it closes, in that order; what is still open at the end comes
/// as half cycles from finish(). The memory holds only the reversals whose cycles are open. Their ranges fall strictly
/// from the oldest to the newest, so that their number does not depend on the length of the history but on how many
/// ever smaller swings stand inside one another: tens in practice. Only a history that never stops shrinking makes it
/// grow; `filter.grid` then bounds it, at two more than the span of the history over the grid.
///   history  samples in one unit, finite and below 2^1023 in size; else InputError names the index from the start of
///            the whole history, and nothing of the piece has been counted
template <class Sink> class CycleCounter {
public:
  explicit CycleCounter(Sink sink, ReversalFilter filter = {})
      : CycleCounter(std::forward<Sink>(sink), filter, "CycleCounter", false) {}

  void feed(const double* history, std::size_t size) {
    source_.check(history, size);
    stream(history, size);
  }

  /// As feed, in one pass over a piece of any length: what stands before a bad sample has then been counted.
  void stream(const double* history, std::size_t size) { source_.stream(history, size, adder()); }

  /// Counts what is open as half cycles, oldest first; the next feed begins a new history.
  void finish() {
    source_.finish(adder());
    const double* const points = open_.data();
    for (std::size_t i = 0; i + 1 < open_.size(); ++i) detail::emit_cycle(points[i], points[i + 1], 0.5, sink_);
    open_.clear();
  }

  /// Reversals that are kept because their cycles are open.
  std::size_t open_reversals() const noexcept { return open_.size(); }
  const Sink& sink() const noexcept { return sink_; }

  /// For the functions below, which name themselves in messages and choose what becomes of the starting point.
  CycleCounter(Sink sink, ReversalFilter filter, const char* function, bool repeating)
      : sink_(std::forward<Sink>(sink)), source_(function, filter), open_(detail::ThreePoints{repeating}) {}

private:
  auto adder() {
    return [this](const double* reversals, std::size_t count, bool first_is_peak) {
      open_.add(reversals, count, first_is_peak, sink_);
    };
  }

  Sink sink_;
  detail::ReversalSource source_;
  detail::OpenReversals<detail::ThreePoints> open_;
};

/// Cycles of a history [rows of range and mean in its unit, and count].
///
/// Rainflow counting by ASTM E1049-85, section 5.4.4: the starting point's ranges and what is left at the end count as
/// half cycles; rows in the order in which the cycles close.
///   history  samples of one unit (a quantity or a plain number), finite; equal neighbours count once; none, one or
///   only
///            equal samples have no cycle, two different ones half a cycle
///   filter   what is left out first; by default nothing
/// Exact. Source: ASTM E1049-85 (2017), section 5.4.4.
/// Example: -2, 1, -3, 5, -1, 3, -4, 4, -2 gives ranges 3, 4, 8, 9, 8, 6 as half cycles and 4 (-1 to 3) as a whole one.
template <class Q> std::vector<Cycle<Q>> count_cycles(const Q* history, std::size_t size, ReversalFilter filter = {}) {
  detail::RowCollector<Q> rows{size};
  CycleCounter<detail::RowCollector<Q>&> counter(rows, filter, "count_cycles", false);
  detail::stream_all(counter, history, size, rows.read);
  counter.finish();
  return std::move(rows.rows);
}
template <class Q> std::vector<Cycle<Q>> count_cycles(const std::vector<Q>& history, ReversalFilter filter = {}) {
  return count_cycles(history.data(), history.size(), filter);
}

/// Cycles of a history that repeats over and over [rows of range and mean in its unit, and count].
///
/// Simplified rainflow counting by ASTM E1049-85, section 5.4.5: the history is taken from its highest sample round to
/// it again, so that every cycle is whole.
///   history, filter  as for count_cycles
/// Exact. Source: ASTM E1049-85 (2017), section 5.4.5.
/// Example: -2, 1, -3, 5, -1, 3, -4, 4, -2 gives ranges 4, 3, 7 and 9.
template <class Q>
std::vector<Cycle<Q>> count_repeating_cycles(const Q* history, std::size_t size, ReversalFilter filter = {}) {
  constexpr const char* function = "count_repeating_cycles";
  detail::SampleCheck check{function};
  detail::stream_all(check, history, size, check.read);
  detail::RowCollector<Q> rows{size};
  CycleCounter<detail::RowCollector<Q>&> counter(rows, filter, function, true);
  const auto top = static_cast<std::size_t>(std::max_element(history, history + size) - history);
  detail::stream_all(counter, history + top, size - top, rows.read);
  detail::stream_all(counter, history, std::min(top + 1, size), rows.read);
  counter.finish();
  return std::move(rows.rows);
}
template <class Q>
std::vector<Cycle<Q>> count_repeating_cycles(const std::vector<Q>& history, ReversalFilter filter = {}) {
  return count_repeating_cycles(history.data(), history.size(), filter);
}

} // namespace v0
} // namespace fieldshaft
