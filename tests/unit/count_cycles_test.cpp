#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fatigue.hpp>
#include <fieldshaft/units/text.hpp>

#include "close.hpp"

#include <cstring>
#include <limits>
#include <string>

using namespace fieldshaft;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();
const std::vector<double> standard_history = {-2, 1, -3, 5, -1, 3, -4, 4, -2};

/// "range/mean/count" of every row.
template <class Q> std::string written(const std::vector<Cycle<Q>>& rows) {
  std::string text;
  for (const Cycle<Q>& row : rows) {
    text += format_number(detail::number_of(row.range), 1) + "/" + format_number(detail::number_of(row.mean), 1) + "/" +
            format_number(row.count, 1) + " ";
  }
  return text;
}

std::string counted(const std::vector<double>& history, ReversalFilter filter = {}) {
  return written(count_cycles(history, filter));
}

/// A smooth wave longer than several blocks and chunks.
std::vector<double> wave(std::size_t size) {
  std::vector<double> history(size);
  for (std::size_t i = 0; i < size; ++i) history[i] = std::sin(0.01 * static_cast<double>(i));
  return history;
}

} // namespace

TEST_CASE("the history of the standard, rows in the order in which they close") {
  CHECK(counted(standard_history) ==
        "3.0/-0.5/0.5 4.0/-1.0/0.5 4.0/1.0/1.0 8.0/1.0/0.5 9.0/0.5/0.5 8.0/0.0/0.5 6.0/1.0/0.5 ");
}

TEST_CASE("short histories and plateaus have right answers") {
  CHECK(counted({}).empty());
  CHECK(counted({3}).empty());
  CHECK(counted({3, 3, 3}).empty());
  CHECK(counted({1, 4}) == "3.0/2.5/0.5 ");
  CHECK(counted({4, 1}) == "3.0/2.5/0.5 ");
  CHECK(counted({1, 1, 4, 4, 4}) == "3.0/2.5/0.5 ");
  CHECK(counted({1, 2, 3, 4}) == "3.0/2.5/0.5 ");
  CHECK(counted({0, 2, 0}) == "2.0/1.0/0.5 2.0/1.0/0.5 ");
  CHECK(counted({0, 2, 2, 1, 1, 2, 2, 0}) == counted({0, 2, 1, 2, 0}));
  CHECK(counted({0.0, -0.0, 0.0}).empty());
  CHECK(count_cycles(static_cast<const double*>(nullptr), 0).empty());
  CHECK(count_repeating_cycles(std::vector<double>{}).empty());
  CHECK(count_repeating_cycles(std::vector<double>{2, 2}).empty());
  CHECK(count_closed_cycles(std::vector<double>{}).residue.empty());
}

TEST_CASE("a long plateau between blocks is skipped, also on the way down") {
  std::vector<double> history(200, 1.0);
  history.insert(history.end(), 200, 3.0);
  history.insert(history.end(), 200, 2.0);
  history.insert(history.end(), 200, 0.0);
  history.insert(history.end(), 77, 5.0);
  CHECK(counted(history) == counted({1, 3, 0, 5}));
}

TEST_CASE("NaN, infinity and sizes that would overflow are refused by index") {
  CHECK_THROWS_WITH_AS(counted({1, 2, not_a_number, 4}),
                       "count_cycles: history[2] = nan; allowed: a finite number below 2^1023 in size", InputError);
  for (const std::size_t bad : {0U, 1U, 31U, 32U, 33U, 63U, 4095U, 4096U, 4097U, 8191U, 9998U, 9999U}) {
    for (const double value : {not_a_number, -not_a_number, infinity, -infinity, 1e308, -1e308}) {
      std::vector<double> history = wave(10000);
      history[bad] = value;
      CHECK_THROWS_WITH_AS(counted(history), doctest::Contains(("history[" + std::to_string(bad) + "]").c_str()),
                           InputError);
      CHECK_THROWS_WITH_AS(count_repeating_cycles(history),
                           doctest::Contains(("count_repeating_cycles: history[" + std::to_string(bad) + "]").c_str()),
                           InputError);
    }
  }
  CHECK(counted({-8.9e307, 8.9e307}).size() > 300);
  CHECK_NOTHROW(counted({1e-320, 2e-320, 1e-320}));
}

TEST_CASE("a bad piece changes nothing, and its index counts from the start of the history") {
  std::vector<Cycle<>> rows;
  CycleCounter counter([&rows](const Cycle<>& cycle) { rows.push_back(cycle); });
  counter.feed(standard_history.data(), 5);
  const std::size_t before = rows.size();
  const std::vector<double> bad = {3, -4, not_a_number, 4};
  CHECK_THROWS_WITH_AS(counter.feed(bad.data(), bad.size()), doctest::Contains("history[7]"), InputError);
  CHECK(rows.size() == before);
  counter.feed(standard_history.data() + 5, 4);
  counter.finish();
  CHECK(written(rows) == counted(standard_history));
}

TEST_CASE("streamed in one pass, a bad sample is refused after those before it have been counted") {
  std::vector<Cycle<>> rows;
  CycleCounter counter([&rows](const Cycle<>& cycle) { rows.push_back(cycle); });
  std::vector<double> history = standard_history;
  history.insert(history.begin() + 7, not_a_number);
  CHECK_THROWS_WITH_AS(counter.stream(history.data(), history.size()), doctest::Contains("history[7]"), InputError);
  counter.stream(history.data() + 8, 2);
  counter.finish();
  CHECK(written(rows) == counted(standard_history));
}

TEST_CASE("fed sample by sample, and used again after finish") {
  std::vector<Cycle<>> rows;
  CycleCounter counter([&rows](const Cycle<>& cycle) { rows.push_back(cycle); });
  for (int round = 0; round < 2; ++round) {
    rows.clear();
    for (const double sample : standard_history) {
      counter.feed(&sample, 0);
      counter.feed(&sample, 1);
    }
    counter.finish();
    CHECK(written(rows) == counted(standard_history));
    CHECK(counter.open_reversals() == 0);
  }
  rows.clear();
  counter.finish();
  CHECK(rows.empty());
}

TEST_CASE("quantities are counted as their SI numbers and keep their unit") {
  std::vector<Torque> history;
  for (std::size_t i = 0; i < 9000; ++i) history.push_back(newton_metres(standard_history[i % 8]));
  std::vector<double> numbers;
  numbers.reserve(history.size());
  for (const Torque& torque : history) numbers.push_back(torque.value());
  const std::vector<Cycle<Torque>> rows = count_cycles(history);
  CHECK(rows[0].range == newton_metres(3));
  CHECK(written(rows) == counted(numbers));
}

TEST_CASE("the memory of a counter does not grow with the length of the history") {
  double cycles = 0.0;
  CycleCounter counter([&cycles](const Cycle<>& cycle) { cycles += cycle.count; });
  std::size_t most = 0;
  std::vector<double> piece(4096);
  unsigned state = 1;
  for (int i = 0; i < 500; ++i) {
    for (double& sample : piece) {
      state = state * 1664525U + 1013904223U;
      sample = static_cast<double>(state >> 8);
    }
    counter.feed(piece.data(), piece.size());
    most = std::max(most, counter.open_reversals());
  }
  counter.finish();
  CHECK(cycles > 600000.0);
  CHECK(most < 100);
}

TEST_CASE("only ever smaller swings make the memory grow, and a grid bounds that") {
  std::vector<double> decaying;
  decaying.reserve(10000);
  for (int i = 0; i < 10000; ++i) decaying.push_back((i % 2 == 0 ? 1.0 : -1.0) * (1.0 - 1e-5 * i));
  const auto open_after = [&](ReversalFilter filter) {
    CycleCounter counter([](const Cycle<>&) {}, filter);
    counter.feed(decaying.data(), decaying.size());
    return counter.open_reversals();
  };
  CHECK(open_after({}) > 9000);
  CHECK(open_after({0.0, 0.01}) <= 2.0 / 0.01 + 2);
}

TEST_CASE("a gate leaves out small swings and keeps the large ones whole") {
  const std::vector<double> noisy = {0, 0.1, 0.05, 5, 4.9, 5.1, -3, -2.9, -3.1, 2, 1.9, 2};
  CHECK(counted(noisy, {0.5, 0.0}) == counted({0, 5.1, -3.1, 2}));
  CHECK(counted({1, 1.2, 0.9, 1.1}, {0.5, 0.0}).empty());
  CHECK(counted({0, 1, 0}, {1.0, 0.0}).empty());
  CHECK(counted({0, 1.01, 0}, {1.0, 0.0}) == counted({0, 1.01, 0}));
  CHECK_THROWS_AS(counted(noisy, {-1.0, 0.0}), InputError);
  CHECK_THROWS_AS(counted(noisy, {0.0, not_a_number}), InputError);
}

TEST_CASE("a grid rounds reversals") {
  CHECK(counted({0.1, 2.9, 1.2, 5.1}, {0.0, 1.0}) == counted({0, 3, 1, 5}));
  CHECK(counted({0.1, 0.3, 0.2}, {0.0, 1.0}).empty());
}

TEST_CASE("repeating history: whole cycles, wherever the record begins") {
  CHECK(written(count_repeating_cycles(standard_history)) == "4.0/1.0/1.0 3.0/-0.5/1.0 7.0/0.5/1.0 9.0/0.5/1.0 ");
  CHECK(written(count_repeating_cycles(std::vector<double>{0, 2})) == "2.0/1.0/1.0 ");
}

TEST_CASE("four points: closed cycles, residue, and the residue closed by repetition") {
  const ClosedCycles<> closed = count_closed_cycles(standard_history);
  CHECK(written(closed.cycles) == "4.0/1.0/1.0 ");
  CHECK(closed.residue == std::vector<double>{-2, 1, -3, 5, -4, 4, -2});
  CHECK(written(close_residue(closed.residue)) == "3.0/-0.5/1.0 7.0/0.5/1.0 9.0/0.5/1.0 ");
  CHECK(close_residue(std::vector<double>{}).empty());
  CHECK(close_residue(std::vector<double>{1}).empty());
}

TEST_CASE("pieces of a record counted apart: their residues close what spans them") {
  std::vector<Cycle<>> apart;
  const auto append = [&apart](const Cycle<>& cycle) { apart.push_back(cycle); };
  std::vector<double> residues;
  for (const std::size_t from : {0U, 4U}) {
    ClosedCycleCounter counter(append);
    counter.feed(standard_history.data() + from, from == 0 ? 4 : 5);
    for (const double reversal : counter.finish()) residues.push_back(reversal);
  }
  ClosedCycleCounter counter(append);
  counter.feed(residues.data(), residues.size());
  CHECK(counter.finish() == count_closed_cycles(standard_history).residue);
  CHECK(written(apart) == written(count_closed_cycles(standard_history).cycles));
}

TEST_CASE("histogram by range, by range and mean, and what lies outside") {
  CycleHistogram<> by_range(1.0, 10);
  for (const Cycle<>& cycle : count_cycles(standard_history)) by_range(cycle);
  CHECK(by_range.count(3) == 0.5);
  CHECK(by_range.count(4) == 1.5);
  CHECK(by_range.count(6) == 0.5);
  CHECK(by_range.count(8) == 1.0);
  CHECK(by_range.count(9) == 0.5);
  CHECK(by_range.outside() == 0.0);
  CHECK(written(by_range.cycles()) == "4.0/0.0/0.5 5.0/0.0/1.5 7.0/0.0/0.5 9.0/0.0/1.0 10.0/0.0/0.5 ");
  CHECK_THROWS_AS(by_range.count(10), InputError);
  CHECK_THROWS_AS(by_range.count(3, 1), InputError);

  CycleHistogram<> by_both(Bins<>{2.0, 2.0, 3}, Bins<>{-1.0, 1.0, 2});
  for (const Cycle<>& cycle : count_cycles(standard_history)) by_both(cycle);
  CHECK(by_both.count(0, 0) == 0.5); // 3 about -0.5
  CHECK(by_both.count(1, 0) == 0.5); // 4 about -1
  CHECK(by_both.count(1, 1) == 0.0); // 4 about 1 lies outside the means
  CHECK(by_both.outside() == 3.0);
  CHECK_THROWS_AS(CycleHistogram<>(0.0, 3), InputError);
  CHECK_THROWS_AS(CycleHistogram<>(1.0, 0), InputError);
}

TEST_CASE("damage of a history in one pass is that of its rows") {
  const SnLine<Torque> line{newton_metres(4000), -0.1, newton_metres(1000), newton_metres(9000),
                            newton_metres(7000), true};
  std::vector<Torque> history;
  history.reserve(standard_history.size());
  for (const double value : standard_history) history.push_back(newton_metres(450 * value));
  const double direct = miner_damage(count_cycles(history), line, MeanStressRule::gerber).value;
  CHECK(direct > 0.0);
  CHECK_CLOSE(history_damage(history, line, MeanStressRule::gerber).value, direct, 1e-14);
}

TEST_CASE("an executor gives the same rows and the same bits of damage for any number of threads") {
  const SnLine<double> line{10.0, -0.2, 0.1, 100.0, 100.0};
  const auto damage = [&](const std::vector<double>& history, const auto& executor) {
    return history_damage(history, line, MeanStressRule::goodman, SmallCycles::same_line, {1e-3, 0.0}, executor).value;
  };
  const auto rows = [](const std::vector<double>& history, const auto& executor) {
    return count_cycles(history, {1e-3, 0.0}, executor);
  };
  std::vector<double> noisy = wave(3 * detail::piece_length + 1000); // three pieces and a bit
  unsigned state = 1;
  for (double& sample : noisy) {
    state = state * 1664525U + 1013904223U;
    sample += 0.5 * static_cast<double>(state >> 8) / (1 << 24);
  }
  for (const std::vector<double>& history : {noisy, wave(2 * detail::piece_length), standard_history, {}}) {
    const double in_turn = damage(history, run_in_turn);
    const std::vector<Cycle<>> of_one = rows(history, run_in_turn);
    CHECK_CLOSE(
        in_turn,
        miner_damage(count_cycles(history, {1e-3, 0.0}), line, MeanStressRule::goodman, SmallCycles::same_line).value,
        1e-11);
    for (const unsigned threads : {1U, 2U, 5U}) {
      const Executor executor = thread_executor(threads);
      CHECK(detail::bits_of(damage(history, executor)) == detail::bits_of(in_turn));
      const std::vector<Cycle<>> of_threads = rows(history, executor);
      REQUIRE(of_threads.size() == of_one.size());
      const std::size_t bytes = of_one.size() * sizeof(Cycle<>);
      CHECK((bytes == 0 || std::memcmp(of_threads.data(), of_one.data(), bytes) == 0));
    }
  }
  CHECK(written(count_cycles(standard_history, {}, run_in_turn)) ==
        "4.0/1.0/1.0 3.0/-0.5/0.5 4.0/-1.0/0.5 8.0/1.0/0.5 9.0/0.5/0.5 8.0/0.0/0.5 6.0/1.0/0.5 ");
}

TEST_CASE("with an executor the first bad sample of the history is refused, whichever piece is counted first") {
  const SnLine<double> line{10.0, -0.2, 0.1, 100.0, 100.0};
  const Executor executor = thread_executor(2);
  for (const std::size_t bad : {std::size_t{0}, std::size_t{5000}, detail::piece_length, 2 * detail::piece_length}) {
    std::vector<double> history = wave(2 * detail::piece_length + 1);
    history[bad] = infinity;
    history.back() = not_a_number;
    const std::string place = "history[" + std::to_string(bad) + "]";
    for (const double gate : {0.0, 0.25, 1e9}) {
      CHECK_THROWS_WITH_AS(
          history_damage(history, line, MeanStressRule::goodman, SmallCycles::harmless, {gate, 0.0}, executor),
          doctest::Contains(("history_damage: " + place).c_str()), InputError);
      CHECK_THROWS_WITH_AS(count_cycles(history, {gate, 0.0}, executor),
                           doctest::Contains(("count_cycles: " + place).c_str()), InputError);
    }
  }
  CHECK_THROWS_WITH_AS(count_cycles(standard_history, {-1.0, 0.0}, executor), doctest::Contains("filter.gate"),
                       InputError);
}

TEST_CASE("bins that cannot be, and bins that a histogram does not have, are refused by name") {
  const Bins<> ranges{0.0, 1.0, 3};
  const Bins<> means{-1.0, 1.0, 2};
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto refused = [](auto call) -> std::string {
    try {
      call();
    } catch (const InputError& error) {
      return error.function() + ": " + error.parameter();
    }
    return "nothing";
  };
  CHECK(refused([&] { CycleHistogram<>(Bins<>{-1.0, 1.0, 3}, means); }) == "CycleHistogram: ranges.low");
  CHECK(refused([&] { CycleHistogram<>(ranges, Bins<>{nan, 1.0, 2}); }) == "CycleHistogram: means.low");
  CHECK(refused([&] { CycleHistogram<>(ranges, Bins<>{-1.0, 0.0, 2}); }) == "CycleHistogram: means.width");
  const CycleHistogram<> both(ranges, means);
  CHECK(both.count(2, 1) == 0.0);
  CHECK(refused([&] { both.count(3, 1); }) == "CycleHistogram::count: range_bin");
  CHECK(refused([&] { both.count(2, 2); }) == "CycleHistogram::count: mean_bin");
}
