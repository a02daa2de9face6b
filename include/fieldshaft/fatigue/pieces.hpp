#pragma once
// A long history counted in pieces, which an executor may share out among threads. A cycle that a piece closes is
// closed in the whole, wherever the piece was cut; the reversals that the pieces leave open are counted on in their
// order.

#include <fieldshaft/fatigue/four_point.hpp>

#include <algorithm>
#include <utility>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

namespace detail {

/// Samples of a piece: so many that what it leaves open weighs nothing, and the same for any number of threads.
inline constexpr std::size_t piece_length = 262144;

/// Runs tasks as run_in_turn does, without a std::function.
struct InTurn {
  template <class Task> void operator()(std::size_t count, const Task& task) const {
    for (std::size_t i = 0; i < count; ++i) task(i);
  }
};

/// What a piece leaves: its closed cycles in a sink of its own, and its open reversals.
template <class Sink> struct CountedPiece {
  Sink sink;
  std::vector<double> open = {};
  std::size_t used = 0; ///< samples before the first that is no usable number
};

/// Counts one piece. Cycles that do not exceed the gate are dropped here, which is what a gate that has begun to move
/// makes of them; what stays open meets the gate itself later.
template <class Sink> class PieceCounter {
public:
  PieceCounter(const char* function, ReversalFilter filter, const Sink& empty)
      : piece_{empty}, gate_(filter.gate), source_(function, {0.0, filter.grid}), open_(FourPoints{}) {}

  void stream(const double* history, std::size_t size) {
    if (spoilt_ || size == 0) return;
    if (piece_.used == 0) first_ = history[0];
    const std::size_t count = source_.take(history, size, adder());
    piece_.used += count;
    spoilt_ = count < size;
  }

  CountedPiece<Sink> finish() {
    source_.finish(adder());
    piece_.open.assign(open_.data(), open_.data() + open_.size());
    if (piece_.open.empty() && piece_.used > 0) piece_.open.push_back(first_); // a level that its neighbours may pass
    return std::move(piece_);
  }

private:
  auto adder() {
    return [this](const double* reversals, std::size_t count, bool first_is_peak) {
      const auto large = [this](const Cycle<double>& cycle) {
        if (cycle.range > gate_) piece_.sink(cycle);
      };
      open_.add(reversals, count, first_is_peak, large);
    };
  }

  CountedPiece<Sink> piece_;
  double gate_;
  ReversalSource source_;
  OpenReversals<FourPoints> open_;
  double first_ = 0.0;
  bool spoilt_ = false;
};

/// Index of the first sample that makes a gate move, or that is no usable number; else the size. Those between it and
/// the first one change nothing.
template <class Q> std::size_t first_move(const Q* history, std::size_t size, ReversalFilter filter) noexcept {
  if (!(filter.gate > 0.0) || size == 0) return 0;
  const double first = rounded(number_of(history[0]), filter);
  std::size_t i = 0;
  while (i < size && usable(number_of(history[i])) &&
         !(std::abs(rounded(number_of(history[i]), filter) - first) > filter.gate)) {
    ++i;
  }
  return i;
}

/// The pieces of a history in their order; InputError at the first sample that is no usable number.
template <class Q, class Sink, class Run>
std::vector<CountedPiece<Sink>> count_pieces(const char* function, const Q* history, std::size_t size,
                                             ReversalFilter filter, const Sink& empty, const Run& run,
                                             std::size_t length = piece_length) {
  static_cast<void>(ReversalSource(function, filter)); // checks the filter
  const std::size_t start = first_move(history, size, filter);
  std::vector<CountedPiece<Sink>> pieces((size - start + length - 1) / length, CountedPiece<Sink>{empty});
  const auto first_of = [start, length](std::size_t piece) { return start + piece * length; };
  run(pieces.size(), [&](std::size_t i) {
    PieceCounter<Sink> counter(function, filter, empty); // the task's own: neighbours share no cache line
    std::size_t read = 0;
    stream_all(counter, history + first_of(i), std::min(length, size - first_of(i)), read);
    pieces[i] = counter.finish();
  });
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const std::size_t end = first_of(i) + pieces[i].used;
    if (end < std::min(first_of(i + 1), size)) fail_sample(function, number_of(history[end]), end);
  }
  if (start > 0) pieces.insert(pieces.begin(), CountedPiece<Sink>{empty, {number_of(history[0])}, 1});
  return pieces;
}

/// Counts on what the pieces left open, by the standard's rule for the ends.
template <class Sink, class Total>
void count_on(const char* function, const std::vector<CountedPiece<Sink>>& pieces, ReversalFilter filter,
              Total& total) {
  CycleCounter<Total&> counter(total, filter, function, false);
  for (const auto& piece : pieces) counter.stream(piece.open.data(), piece.open.size());
  counter.finish();
}

} // namespace detail

/// Cycles of a long history [rows of range and mean in its unit, and count], its pieces counted as tasks of an
/// executor.
///
///   history, filter  as for count_cycles
///   executor         runs task(0) to task(n - 1), as an Executor does
/// For every range and mean the count is that of count_cycles without an executor; where equal ranges follow on one
/// another at the start, two halves may come as one whole. The rows stand in another order: for each piece of a fixed
/// length the cycles that it closes, then those of what the pieces left open. Rows and order are the same for any
/// executor. Source: ASTM E1049-85 (2017), section 5.4.4.
/// Example: -2, 1, -3, 5, -1, 3, -4, 4, -2 gives 4 (-1 to 3), then the halves 3, 4, 8, 9, 8, 6.
template <class Q, class Run>
std::vector<Cycle<Q>> count_cycles(const Q* history, std::size_t size, ReversalFilter filter, const Run& executor) {
  constexpr const char* function = "count_cycles";
  auto pieces =
      detail::count_pieces(function, history, size, filter, detail::RowCollector<Q>{detail::piece_length}, executor);
  std::size_t count = 0;
  for (const auto& piece : pieces) count += piece.sink.rows.size() + piece.open.size();
  detail::RowCollector<Q> all{size};
  all.rows.reserve(count);
  for (auto& piece : pieces) {
    const std::vector<Cycle<Q>> rows = std::move(piece.sink.rows); // freed here, so that no row is long held twice
    all.rows.insert(all.rows.end(), rows.begin(), rows.end());
  }
  detail::count_on(function, pieces, filter, all);
  return std::move(all.rows);
}
template <class Q, class Run>
std::vector<Cycle<Q>> count_cycles(const std::vector<Q>& history, ReversalFilter filter, const Run& executor) {
  return count_cycles(history.data(), history.size(), filter, executor);
}

} // namespace v0
} // namespace fieldshaft
