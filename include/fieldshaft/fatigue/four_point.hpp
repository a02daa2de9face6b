#pragma once
// Rainflow by four points: the cycles that a history closes, and the residue that it leaves open.

#include <fieldshaft/fatigue/rainflow.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace detail {

/// Of four reversals A, B, C, D in a row, B to C is a cycle if it lies within A to D; A is then followed by D.
struct FourPoints {
  template <bool Peak, class Sink> std::size_t close(double* points, std::size_t open, double value, Sink& sink) const {
    while (open >= 3 && within<Peak>(points[open - 3], points[open - 2], points[open - 1], value)) {
      emit_cycle(points[open - 2], points[open - 1], 1.0, sink);
      open -= 2;
    }
    return open;
  }

private:
  /// min(B, C) >= min(A, D) and max(B, C) <= max(A, D), where D is a peak (or a valley).
  template <bool Peak> static bool within(double a, double b, double c, double d) noexcept {
    return Peak ? d >= b && a <= c : d <= b && a >= c;
  }
};

} // namespace detail

/// The cycles that a history closes, and the reversals that stay open: swings that grow, then swings that shrink.
template <class Q = double> struct ClosedCycles {
  std::vector<Cycle<Q>> cycles;
  std::vector<Q> residue;
};

/// Counts closed cycles of a history that comes in pieces, by the four-point method.
///
/// As CycleCounter, but every cycle is whole, and what is open at the end is kept as the residue. Residues of pieces of
/// a record that were counted apart, fed one after the other, close the cycles that span the pieces.
template <class Sink> class ClosedCycleCounter {
public:
  explicit ClosedCycleCounter(Sink sink, ReversalFilter filter = {})
      : ClosedCycleCounter(std::forward<Sink>(sink), filter, "ClosedCycleCounter") {}

  void feed(const double* history, std::size_t size) {
    source_.check(history, size);
    stream(history, size);
  }
  void stream(const double* history, std::size_t size) { source_.stream(history, size, adder()); }

  /// Ends the history and hands out its residue; the next feed begins a new history.
  std::vector<double> finish() {
    source_.finish(adder());
    std::vector<double> residue(open_.data(), open_.data() + open_.size());
    open_.clear();
    return residue;
  }

  std::size_t open_reversals() const noexcept { return open_.size(); }
  const Sink& sink() const noexcept { return sink_; }

  /// For the functions below, which name themselves in messages.
  ClosedCycleCounter(Sink sink, ReversalFilter filter, const char* function)
      : sink_(std::forward<Sink>(sink)), source_(function, filter), open_(detail::FourPoints{}) {}

private:
  auto adder() {
    return [this](const double* reversals, std::size_t count, bool first_is_peak) {
      open_.add(reversals, count, first_is_peak, sink_);
    };
  }

  Sink sink_;
  detail::ReversalSource source_;
  detail::OpenReversals<detail::FourPoints> open_;
};

/// Closed cycles and residue of a history [in its unit].
///
/// Four reversals A, B, C, D: B to C is a cycle if min(B, C) >= min(A, D) and max(B, C) <= max(A, D)
///   history, filter  as for count_cycles
/// Exact. Source: four-point form of rainflow counting, as published for open software.
/// Example: -2, 1, -3, 5, -1, 3, -4, 4, -2 closes -1 to 3 and leaves -2, 1, -3, 5, -4, 4, -2.
template <class Q> ClosedCycles<Q> count_closed_cycles(const Q* history, std::size_t size, ReversalFilter filter = {}) {
  detail::RowCollector<Q> rows{size};
  ClosedCycleCounter<detail::RowCollector<Q>&> counter(rows, filter, "count_closed_cycles");
  detail::stream_all(counter, history, size, rows.read);
  const std::vector<double> open = counter.finish();
  std::vector<Q> residue(open.size());
  std::transform(open.begin(), open.end(), residue.begin(), [](double value) { return detail::from_number<Q>(value); });
  return {std::move(rows.rows), std::move(residue)};
}
template <class Q> ClosedCycles<Q> count_closed_cycles(const std::vector<Q>& history, ReversalFilter filter = {}) {
  return count_closed_cycles(history.data(), history.size(), filter);
}

/// Cycles that a residue closes when its history repeats [rows].
///
///   residue  of count_closed_cycles; its cycles and these are together those of count_repeating_cycles
/// Exact: the residue is run through twice, and the second round closes all that the repetition closes.
/// Example: -2, 1, -3, 5, -4, 4, -2 gives ranges 3, 7 and 9.
template <class Q> std::vector<Cycle<Q>> close_residue(const std::vector<Q>& residue) {
  detail::RowCollector<Q> rows{2 * residue.size()};
  ClosedCycleCounter<detail::RowCollector<Q>&> counter(rows, {}, "close_residue");
  detail::stream_all(counter, residue.data(), residue.size(), rows.read);
  detail::stream_all(counter, residue.data(), residue.size(), rows.read);
  counter.finish();
  return std::move(rows.rows);
}

} // namespace v0
} // namespace fieldshaft
