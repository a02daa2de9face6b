#include <fieldshaft/fatigue.hpp>

#include "close.hpp"
#include "random.hpp"
#include "textbook_rainflow.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

using namespace fieldshaft;

namespace {

constexpr MeanStressRule every_rule[] = {MeanStressRule::goodman, MeanStressRule::gerber, MeanStressRule::soderberg,
                                         MeanStressRule::asme_elliptic};

/// Coarse levels (many equal ones), fine noise, slow waves with noise, or long runs one way.
std::vector<double> random_history(RandomInputs& random) {
  std::vector<double> history(static_cast<std::size_t>(random.whole(0, random.whole(1, 3000))));
  const int kind = random.whole(0, 3);
  const double step = random.across(1e-3, 1.0);
  double level = 0.0;
  for (std::size_t i = 0; i < history.size(); ++i) {
    const double angle = step * static_cast<double>(i);
    switch (kind) {
    case 0: history[i] = random.whole(-4, 4); break;
    case 1: history[i] = random.between(-1, 1); break;
    case 2: history[i] = std::sin(angle) + 0.3 * std::sin(7.3 * angle) + 1e-3 * step * random.between(-1, 1); break;
    default: history[i] = level += std::floor(random.between(-1.0, 1.3)) + (random.whole(0, 60) == 0 ? -9.0 : 0.0);
    }
  }
  return history;
}

using Key = std::tuple<double, double, double>;
template <class Rows> std::vector<Key> sorted(const Rows& rows) {
  std::vector<Key> keys;
  keys.reserve(rows.size());
  for (const Cycle<>& row : rows) keys.emplace_back(row.range, row.mean, row.count);
  std::sort(keys.begin(), keys.end());
  return keys;
}
std::vector<Key> in_order(const std::vector<Cycle<>>& rows) {
  std::vector<Key> keys;
  keys.reserve(rows.size());
  for (const Cycle<>& row : rows) keys.emplace_back(row.range, row.mean, row.count);
  return keys;
}

/// The count of every range and mean: two halves weigh what a whole cycle does.
std::map<std::pair<double, double>, double> counts(const std::vector<Cycle<>>& rows) {
  std::map<std::pair<double, double>, double> counts;
  for (const Cycle<>& row : rows) counts[{row.range, row.mean}] += row.count;
  return counts;
}

struct Rows {
  std::vector<Cycle<>> rows;
  void operator()(const Cycle<>& cycle) { rows.push_back(cycle); }
};

/// Counts in pieces of any length; the tasks run from the last to the first.
std::vector<Cycle<>> counted_apart(const std::vector<double>& history, ReversalFilter filter, std::size_t length) {
  const auto backwards = [](std::size_t count, const auto& task) {
    for (std::size_t i = count; i > 0; --i) task(i - 1);
  };
  const auto pieces = detail::count_pieces("", history.data(), history.size(), filter, Rows{}, backwards, length);
  Rows all;
  for (const auto& piece : pieces) all.rows.insert(all.rows.end(), piece.sink.rows.begin(), piece.sink.rows.end());
  detail::count_on("", pieces, filter, all);
  return all.rows;
}

double total(const std::vector<Cycle<>>& rows) {
  double sum = 0.0;
  for (const Cycle<>& row : rows) sum += row.count;
  return sum;
}

ShaftLoad random_load(RandomInputs& random) {
  return {newton_metres(random.between(1, 900)), newton_metres(random.between(-900, 900)),
          newton_metres(random.between(0, 900)), newton_metres(random.between(-900, 900))};
}
FatigueStrength random_strength(RandomInputs& random) {
  const double ultimate = random.between(300, 1500);
  return {megapascals(ultimate * random.between(0.1, 0.5)), megapascals(ultimate),
          megapascals(ultimate * random.between(0.5, 0.95))};
}

} // namespace

TEST_CASE("the counter gives the rows of the standard's wording, in order") {
  RandomInputs random;
  for (int i = 0; i < 4000; ++i) {
    const std::vector<double> history = random_history(random);
    REQUIRE(in_order(count_cycles(history)) == in_order(textbook::rainflow(history)));
  }
}

TEST_CASE("pieces of any size give the same rows as the whole") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const std::vector<double> history = random_history(random);
    std::vector<Cycle<>> rows;
    CycleCounter counter([&rows](const Cycle<>& cycle) { rows.push_back(cycle); });
    for (std::size_t at = 0; at < history.size();) {
      const auto size = std::min(history.size() - at, static_cast<std::size_t>(random.whole(0, random.whole(1, 200))));
      counter.feed(history.data() + at, size);
      at += size;
    }
    counter.finish();
    REQUIRE(in_order(rows) == in_order(count_cycles(history)));
  }
}

TEST_CASE("pieces counted apart, in any order, have the counts of the standard's wording") {
  RandomInputs random;
  for (int i = 0; i < 3000; ++i) {
    const std::vector<double> history = random_history(random);
    const auto length = static_cast<std::size_t>(random.whole(1, random.whole(1, 300)));
    REQUIRE(counts(counted_apart(history, {}, length)) == counts(textbook::rainflow(history)));
  }
}

TEST_CASE("pieces counted apart have the counts of a filter that runs through the whole") {
  RandomInputs random;
  for (int i = 0; i < 3000; ++i) {
    const std::vector<double> history = random_history(random);
    const auto length = static_cast<std::size_t>(random.whole(1, random.whole(1, 300)));
    const ReversalFilter filter{random.whole(0, 2) == 0 ? 0.0 : random.between(0.0, 1.5),
                                random.whole(0, 1) == 0 ? 0.0 : random.across(0.01, 1.0)};
    REQUIRE(counts(counted_apart(history, filter, length)) == counts(count_cycles(history, filter)));
  }
}

TEST_CASE("counts add up: every reversal but the first ends half a cycle") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const std::vector<double> history = random_history(random);
    const std::size_t reversals = textbook::reversals(history).size();
    const double expected = reversals < 2 ? 0.0 : 0.5 * static_cast<double>(reversals - 1);
    REQUIRE(total(count_cycles(history)) == expected);
  }
}

TEST_CASE("turned upside down, moved or stretched, the history keeps its cycles") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const std::vector<double> history = random_history(random);
    std::vector<double> changed = history;
    for (double& sample : changed) sample *= -4.0;
    const std::vector<Cycle<>> before = count_cycles(history);
    const std::vector<Cycle<>> after = count_cycles(changed);
    REQUIRE(after.size() == before.size());
    for (std::size_t j = 0; j < before.size(); ++j) {
      REQUIRE(after[j].range == 4.0 * before[j].range);
      REQUIRE(after[j].mean == -4.0 * before[j].mean);
      REQUIRE(after[j].count == before[j].count);
    }
  }
}

TEST_CASE("a repeating history: the same cycles from any start, and as closed cycles with the closed residue") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    std::vector<double> history = random_history(random);
    const std::vector<Cycle<>> rows = count_repeating_cycles(history);
    for (const Cycle<>& row : rows) REQUIRE(row.count == 1.0);
    const ClosedCycles<> closed = count_closed_cycles(history);
    std::vector<Cycle<>> both = closed.cycles;
    for (const Cycle<>& row : close_residue(closed.residue)) both.push_back(row);
    REQUIRE(sorted(both) == sorted(rows));
    if (history.empty()) continue;
    std::rotate(history.begin(), history.begin() + random.whole(0, static_cast<int>(history.size()) - 1),
                history.end());
    REQUIRE(sorted(count_repeating_cycles(history)) == sorted(rows));
  }
}

TEST_CASE("whole cycles of the standard are closed cycles, the residue makes up the rest") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const std::vector<double> history = random_history(random);
    const ClosedCycles<> closed = count_closed_cycles(history);
    REQUIRE(total(closed.cycles) + 0.5 * static_cast<double>(closed.residue.size()) ==
            doctest::Approx(total(count_cycles(history)) + (closed.residue.empty() ? 0.0 : 0.5)));
    std::vector<Cycle<>> both = closed.cycles;
    for (const Cycle<>& row : count_cycles(closed.residue)) both.push_back(row);
    const auto damage = [](const std::vector<Cycle<>>& rows) {
      double sum = 0.0;
      for (const Cycle<>& row : rows) sum += row.count * row.range * row.range * row.range;
      return sum;
    };
    CHECK_CLOSE(damage(both), damage(count_cycles(history)), 1e-10);
  }
}

TEST_CASE("a gate removes exactly the closed cycles that do not exceed it") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const std::vector<double> history = random_history(random);
    const double gate = random.between(0.0, 1.5);
    std::vector<Cycle<>> large;
    for (const Cycle<>& row : count_repeating_cycles(history)) {
      if (row.range > gate) large.push_back(row);
    }
    REQUIRE(sorted(count_repeating_cycles(history, {gate, 0.0})) == sorted(large));
  }
}

TEST_CASE("the open reversals have strictly falling ranges, so that a grid bounds their number") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const std::vector<double> history = random_history(random);
    if (history.empty()) continue;
    const double grid = random.across(0.01, 1.0);
    const auto [low, high] = std::minmax_element(history.begin(), history.end());
    CycleCounter counter([](const Cycle<>&) {}, {0.0, grid});
    for (const double& sample : history) {
      counter.feed(&sample, 1);
      REQUIRE(static_cast<double>(counter.open_reversals()) <= (*high - *low) / grid + 3.0);
    }
  }
}

TEST_CASE("a histogram keeps every cycle, and its upper edges are on the safe side") {
  RandomInputs random;
  const SnLine<double> line{10.0, -0.2, 0.1, 1e9, 1e9};
  for (int i = 0; i < 200; ++i) {
    const std::vector<double> history = random_history(random);
    CycleHistogram<> histogram(0.5, 20000);
    const std::vector<Cycle<>> rows = count_cycles(history);
    for (const Cycle<>& row : rows) histogram(row);
    CHECK(histogram.outside() == 0.0);
    CHECK(total(histogram.cycles()) == doctest::Approx(total(rows)));
    const double exact = miner_damage(rows, line, MeanStressRule::goodman, SmallCycles::same_line).value;
    CHECK(miner_damage(histogram.cycles(), line, MeanStressRule::goodman, SmallCycles::same_line).value >= exact);
  }
}

TEST_CASE("damage grows with every range, mean and count, and adds up over lists") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const FatigueStrength strength = random_strength(random);
    const SnLine<Stress> line = sn_line(strength, random.between(0.75, 0.9));
    const MeanStressRule rule = every_rule[random.whole(0, 3)];
    const auto small = static_cast<SmallCycles>(random.whole(0, 2));
    Cycle<Stress> cycle{strength.ultimate * random.between(0, 1.5), strength.ultimate * random.between(-0.4, 0.4),
                        random.across(0.5, 1e4)};
    const auto damage = [&](const Cycle<Stress>& c) { return miner_damage(&c, 1, line, rule, small).value; };
    const double first = damage(cycle);
    Cycle<Stress> worse = cycle;
    worse.range *= random.between(1.0, 1.2);
    worse.mean += strength.ultimate * random.between(0.0, 0.05);
    CHECK(damage(worse) >= first);
    worse = cycle;
    worse.count *= 2.0;
    CHECK_CLOSE(damage(worse), 2.0 * first, 1e-14);
    const std::vector<Cycle<Stress>> twice = {cycle, cycle};
    CHECK_CLOSE(miner_damage(twice, line, rule, small).value, 2.0 * first, 1e-14);
  }
}

TEST_CASE("one cycle's damage is one over the cycles to failure of its reversed equal") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const FatigueStrength strength = random_strength(random);
    const SnLine<Stress> line = sn_line(strength, 0.9);
    const MeanStressRule rule = every_rule[random.whole(0, 3)];
    const Stress amplitude = strength.ultimate * random.between(0.0, 0.8);
    const Stress mean = strength.ultimate * random.between(-0.3, 0.3);
    const Cycle<Stress> cycle{2.0 * amplitude, mean, 1.0};
    const Stress reversed = equivalent_reversed(amplitude, mean, line, rule).value;
    CHECK_CLOSE(miner_damage(&cycle, 1, line, rule).value, 1.0 / cycles_to_failure(reversed, line).value, 1e-11);
  }
}

TEST_CASE("the needed diameter has the wanted safety factor, and the printed Gerber form agrees") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const ShaftLoad load = random_load(random);
    const FatigueStrength strength = random_strength(random);
    const NotchFactors notch{random.between(1, 3), random.between(1, 3)};
    const double n = random.between(0.5, 4);
    const double bore = random.between(0, 0.95);
    for (const MeanStressRule rule : every_rule) {
      const Length d = fatigue_diameter(load, strength, rule, n, notch, bore);
      CHECK_CLOSE(shaft_fatigue_safety_factor(load, d, strength, rule, notch, bore), n, 1e-12);
    }
    const double a = detail::amplitude_moment(load, notch).value();
    const double b = detail::mean_moment(load, notch).value();
    const double se = strength.endurance.value();
    const double sut = strength.ultimate.value();
    const double root = std::sqrt(1.0 + std::pow(2.0 * b * se / (a * sut), 2));
    const double printed = std::cbrt(8.0 * n * a / (pi * se) * (1.0 + root));
    CHECK_CLOSE(fatigue_diameter(load, strength, MeanStressRule::gerber, n, notch).value(), printed, 1e-13);
  }
}

TEST_CASE("Soderberg asks for the most, and more load never for less") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    ShaftLoad load = random_load(random);
    const FatigueStrength strength = random_strength(random);
    const auto d = [&](MeanStressRule rule) { return fatigue_diameter(load, strength, rule, 2.0); };
    CHECK(d(MeanStressRule::soderberg) >= d(MeanStressRule::goodman) * (1 - 1e-14));
    CHECK(d(MeanStressRule::goodman) >= d(MeanStressRule::gerber) * (1 - 1e-14));
    CHECK(d(MeanStressRule::soderberg) >= d(MeanStressRule::asme_elliptic) * (1 - 1e-14));
    const Length before = d(MeanStressRule::gerber);
    load.torque_amplitude *= 1.1;
    load.bending_amplitude *= 1.1;
    CHECK(d(MeanStressRule::gerber) > before);
  }
}

TEST_CASE("torque alone is the shaft formula without bending, with the shear strengths by distortion energy") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const FatigueStrength strength = random_strength(random);
    ShaftLoad load;
    load.torque_amplitude = newton_metres(random.between(10, 900));
    load.torque_mean = newton_metres(random.between(-900, 900));
    const double k = random.between(1, 2.5);
    const Length d = fatigue_diameter(load, strength, MeanStressRule::goodman, 1.7, {1.0, k});
    const Length other =
        torsion_fatigue_diameter(load.torque_amplitude, load.torque_mean, strength.endurance / std::sqrt(3.0),
                                 strength.ultimate / std::sqrt(3.0), TorsionSchool::goodman_in_shear, 1.7, k);
    CHECK_CLOSE(d.value(), other.value(), 1e-13);
    CHECK_CLOSE(torsion_fatigue_safety_factor(load.torque_amplitude, load.torque_mean, other,
                                              strength.endurance / std::sqrt(3.0), strength.ultimate / std::sqrt(3.0),
                                              TorsionSchool::goodman_in_shear, k),
                1.7, 1e-12);
  }
}

TEST_CASE("the deviate of a share is the inverse of the normal distribution") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const double share = 1.0 - random.across(1e-9, 0.5);
    const double z = text::normal_deviate(share);
    CHECK_CLOSE(0.5 * std::erfc(z / std::sqrt(2.0)), 1.0 - share, 1e-7);
  }
}
