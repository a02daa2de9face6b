// The sweep over a grid: every kernel that this machine has against driveline_at at each point, and the threads that
// share it out.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/driveline/sweep.hpp>
#include <fieldshaft/hitch.hpp>

#include "close.hpp"
#include "random.hpp"

#include <atomic>
#include <limits>
#include <stdexcept>

using namespace fieldshaft;

namespace {

constexpr ProcessorKernel all_kernels[] = {ProcessorKernel::automatic, ProcessorKernel::portable, ProcessorKernel::avx2,
                                           ProcessorKernel::avx512};

struct Layout {
  Driveline driveline;
  Position pin;
  AttitudeGrid grid;
};

std::vector<Angle> evenly(Angle low, Angle high, int count) {
  std::vector<Angle> angles;
  for (int i = 0; i < count; ++i) angles.push_back(low + (count > 1 ? 1.0 * i / (count - 1) : 0.0) * (high - low));
  return angles;
}

Layout random_layout(RandomInputs& random) {
  Layout s;
  s.driveline.front_joint = metres(random.between(0.05, 0.15));
  s.driveline.rear_joint = metres(random.between(0.05, 0.15));
  s.driveline.input = Position(metres(-random.between(0.5, 1.2)), metres(random.between(-0.15, 0.15)),
                               metres(random.between(-0.1, 0.4)));
  s.driveline.input_direction = Direction::ahead(degrees(random.between(-5, 5)), degrees(random.between(-8, 8)));
  s.driveline.yoke_phase = degrees(random.between(-30, 30));
  s.pin = pin_position(
      {metres(random.between(0.35, 0.55)), metres(random.between(-0.1, 0.1)), metres(random.between(0.05, 0.35))});
  const auto axis = [&random](double most) {
    return evenly(degrees(-random.between(1, most)), degrees(random.between(1, most)), random.whole(1, 21));
  };
  s.grid = {axis(80), axis(20), axis(20)};
  return s;
}

/// The plain way: every point by itself.
DrivelineSweep point_by_point(const Layout& s) {
  DrivelineSweep best;
  bool first = true;
  const auto take = [&first](SweptExtreme& best_so_far, const SweptExtreme& here, auto value) {
    if (first || value(here.state) > value(best_so_far.state)) best_so_far = here;
  };
  for (const Angle& yaw : s.grid.yaw) {
    for (const Angle& pitch : s.grid.pitch) {
      for (const Angle& roll : s.grid.roll) {
        const Attitude at{yaw, pitch, roll};
        const SweptExtreme here{at, driveline_at(s.driveline, {s.pin, at})};
        take(best.front_angle, here, [](const DrivelineState& x) { return x.front_angle; });
        take(best.rear_angle, here, [](const DrivelineState& x) { return x.rear_angle; });
        take(best.difference, here, [](const DrivelineState& x) { return math::abs(x.difference); });
        take(best.longest, here, [](const DrivelineState& x) { return x.length; });
        take(best.shortest, here, [](const DrivelineState& x) { return -x.length; });
        first = false;
      }
    }
  }
  return best;
}

bool same(const SweptExtreme& a, const SweptExtreme& b) {
  return a.at.yaw == b.at.yaw && a.at.pitch == b.at.pitch && a.at.roll == b.at.roll &&
         a.state.length == b.state.length && a.state.front_angle == b.state.front_angle;
}

bool same(const DrivelineSweep& a, const DrivelineSweep& b) {
  return same(a.front_angle, b.front_angle) && same(a.rear_angle, b.rear_angle) && same(a.difference, b.difference) &&
         same(a.longest, b.longest) && same(a.shortest, b.shortest);
}

Layout wide_layout() {
  RandomInputs random;
  Layout s = random_layout(random);
  s.grid = {evenly(degrees(-60), degrees(60), 64), evenly(degrees(-15), degrees(15), 33),
            evenly(degrees(-10), degrees(10), 27)};
  return s;
}

} // namespace

TEST_CASE("every kernel of this machine finds the extremes that the single points have") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const Layout s = random_layout(random);
    const DrivelineSweep plain = point_by_point(s);
    for (const ProcessorKernel kernel : all_kernels) {
      if (!kernel_is_available(kernel)) {
        CHECK_THROWS_AS(driveline_sweep(s.driveline, s.pin, s.grid, run_in_turn, kernel), InputError);
        continue;
      }
      const DrivelineSweep swept = driveline_sweep(s.driveline, s.pin, s.grid, run_in_turn, kernel);
      const double angle_error = 1e-7;
      CHECK(swept.front_angle.state.front_angle.value() >= plain.front_angle.state.front_angle.value() - angle_error);
      CHECK(swept.front_angle.state.front_angle <= plain.front_angle.state.front_angle);
      CHECK(swept.rear_angle.state.rear_angle.value() >= plain.rear_angle.state.rear_angle.value() - angle_error);
      CHECK(swept.rear_angle.state.rear_angle <= plain.rear_angle.state.rear_angle);
      CHECK(math::abs(swept.difference.state.difference).value() >=
            math::abs(plain.difference.state.difference).value() - angle_error);
      CHECK(math::abs(swept.difference.state.difference) <= math::abs(plain.difference.state.difference));
      CHECK(swept.longest.state.length >= (1.0 - 1e-9) * plain.longest.state.length);
      CHECK(swept.longest.state.length <= plain.longest.state.length);
      CHECK(swept.shortest.state.length <= (1.0 + 1e-9) * plain.shortest.state.length);
      CHECK(swept.shortest.state.length >= plain.shortest.state.length);
    }
  }
}

TEST_CASE("the automatic and the portable kernel are on every machine") {
  CHECK(kernel_is_available(ProcessorKernel::automatic));
  CHECK(kernel_is_available(ProcessorKernel::portable));
}

TEST_CASE("a state of the sweep is that of its attitude, with its overlap") {
  Layout s = wide_layout();
  s.driveline.telescope = Telescope{metres(0.5), {metres(0.4), std::nullopt}, std::nullopt};
  const DrivelineSweep swept = driveline_sweep(s.driveline, s.pin, s.grid);
  const DrivelineState again = driveline_at(s.driveline, {s.pin, swept.longest.at});
  CHECK(again.length == swept.longest.state.length);
  REQUIRE(swept.longest.state.overlap);
  CHECK(*again.overlap == *swept.longest.state.overlap);
}

TEST_CASE("the bits do not depend on the number of threads") {
  const Layout s = wide_layout();
  const DrivelineSweep alone = driveline_sweep(s.driveline, s.pin, s.grid);
  for (const unsigned threads : {1U, 2U, 3U, 7U, 0U}) {
    const Executor executor = thread_executor(threads);
    for (int i = 0; i < 5; ++i) CHECK(same(driveline_sweep(s.driveline, s.pin, s.grid, executor), alone));
  }
}

TEST_CASE("threads run every task once, and hand on what a task throws") {
  const Executor executor = thread_executor(3);
  std::vector<std::atomic<int>> runs(1000);
  executor(runs.size(), [&runs](std::size_t i) { ++runs[i]; });
  for (const std::atomic<int>& run : runs) CHECK(run == 1);
  executor(0, [](std::size_t) { FAIL("there is no task"); });
  const auto failing = [](std::size_t i) {
    if (i == 17) throw std::runtime_error("task 17");
  };
  CHECK_THROWS_WITH_AS(executor(100, failing), "task 17", std::runtime_error);
  std::atomic<int> later{0};
  executor(10, [&later](std::size_t) { ++later; });
  CHECK(later == 10);
  CHECK_THROWS_WITH_AS(thread_executor(1025), doctest::Contains("thread_executor: threads = 1025"), InputError);
}

TEST_CASE("two callers may share the threads") {
  const Executor executor = thread_executor(2);
  const Executor callers = thread_executor(2);
  const Layout s = wide_layout();
  const DrivelineSweep alone = driveline_sweep(s.driveline, s.pin, s.grid);
  std::atomic<int> equal{0};
  callers(4, [&](std::size_t) { equal += same(driveline_sweep(s.driveline, s.pin, s.grid, executor), alone) ? 1 : 0; });
  CHECK(equal == 4);
}

TEST_CASE("grids that cannot be are refused by the name of the list") {
  const Layout s = wide_layout();
  const auto sweep = [&s](const AttitudeGrid& grid) { return driveline_sweep(s.driveline, s.pin, grid); };
  CHECK_THROWS_WITH_AS(sweep({{}, s.grid.pitch, s.grid.roll}), doctest::Contains("driveline_sweep: yaw = 0"),
                       InputError);
  CHECK_THROWS_WITH_AS(sweep({s.grid.yaw, {}, s.grid.roll}), doctest::Contains("driveline_sweep: pitch"), InputError);
  CHECK_THROWS_WITH_AS(sweep({s.grid.yaw, s.grid.pitch, std::vector<Angle>(100001)}),
                       doctest::Contains("driveline_sweep: roll"), InputError);
  const Angle nan = radians(std::numeric_limits<double>::quiet_NaN());
  CHECK_THROWS_WITH_AS(sweep({s.grid.yaw, s.grid.pitch, {nan}}), doctest::Contains("driveline_sweep: roll"),
                       InputError);
  CHECK_THROWS_WITH_AS(driveline_sweep(s.driveline, s.pin, s.grid, run_in_turn, static_cast<ProcessorKernel>(99)),
                       doctest::Contains("driveline_sweep: kernel"), InputError);
  Driveline bad = s.driveline;
  bad.front_joint = metres(-1);
  CHECK_THROWS_AS(driveline_sweep(bad, s.pin, s.grid), InputError);
}
