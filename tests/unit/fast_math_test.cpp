// Built with -ffast-math, which takes NaN and infinity for impossible: the fronts of every module, the laws of the
// formulas, the kernels of the sweep and the comparison of a value with its limit (tests/CMakeLists.txt compiles those
// anew for it).

#include <fieldshaft/cost.hpp>
#include <fieldshaft/driveline.hpp>
#include <fieldshaft/driveline/sweep.hpp>
#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/hitch.hpp>
#include <fieldshaft/materials.hpp>

#include "assess/context.hpp"
#include "close.hpp"
#include "driveline/sweep_kernel.hpp"
#include "laws/formula_laws.hpp"

#include <array>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>
#include <string>

using namespace fieldshaft;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

/// A call with good numbers passes; with NaN or an infinity in any one of their places it is refused.
template <std::size_t N, class Call> void refuses(const char* name, const std::array<double, N>& good, Call call) {
  INFO(std::string(name));
  CHECK_NOTHROW(call(good.data()));
  for (std::size_t i = 0; i < N; ++i) {
    for (const double bad : {not_a_number, -not_a_number, infinity, -infinity}) {
      std::array<double, N> numbers = good;
      numbers[i] = bad;
      INFO("parameter ", i);
      CHECK_THROWS_AS(call(numbers.data()), InputError);
    }
  }
}

Driveline line_with(Length front_joint) {
  Driveline line;
  line.front_joint = front_joint;
  line.rear_joint = metres(0.06);
  line.input = Position(metres(-0.7), Length{}, metres(0.25));
  return line;
}

} // namespace

TEST_CASE("fronts of formulas refuse NaN and infinities with -ffast-math") {
  using D = const double*;
  refuses<2>("shear_yield", {3e8, 0.58}, [](D x) { shear_yield(pascals(x[0]), x[1]); });
  refuses<1>("identify_pto", {0.035}, [](D x) { identify_pto(6, metres(x[0])); });
  refuses<2>("shaft_torque", {5e4, 56.0}, [](D x) { shaft_torque(watts(x[0]), radians_per_second(x[1])); });
  refuses<3>("geared_torque", {500.0, 2.0, 0.9}, [](D x) { geared_torque(newton_metres(x[0]), x[1], x[2]); });
  refuses<3>("fuel_rate", {5e4, 0.5, 0.9}, [](D x) { fuel_rate(watts(x[0]), x[1], x[2]); });
  refuses<2>("tip_speed", {100.0, 0.8}, [](D x) { tip_speed(radians_per_second(x[0]), metres(x[1])); });
  refuses<3>("blade_pull", {2.0, 0.8, 100.0},
             [](D x) { blade_pull(kilograms(x[0]), metres(x[1]), radians_per_second(x[2])); });
  refuses<5>("disc_hoop_stress", {0.1, 0.4, 100.0, 7850.0, 0.3}, [](D x) {
    disc_hoop_stress(metres(x[0]), metres(x[1]), radians_per_second(x[2]), kilograms_per_cubic_metre(x[3]), x[4]);
  });
  refuses<2>("joint_speed_ratio", {0.3, 0.2}, [](D x) { joint_speed_ratio(radians(x[0]), radians(x[1])); });
  refuses<3>("equivalent_joint_angle", {0.3, 0.2, 0.1},
             [](D x) { equivalent_joint_angle(radians(x[0]), radians(x[1]), radians(x[2])); });
  refuses<3>("joint_couples", {500.0, 0.3, 0.2},
             [](D x) { joint_couples(newton_metres(x[0]), radians(x[1]), radians(x[2])); });
  refuses<5>("joint_bearing_life", {2e4, 0.03, 500.0, 56.0, 0.2}, [](D x) {
    joint_bearing_life(newtons(x[0]), metres(x[1]), newton_metres(x[2]), radians_per_second(x[3]), radians(x[4]));
  });
  refuses<6>("spline_stress", {0.0348, 0.0289, 0.0086, 0.06, 500.0, 1.0}, [](D x) {
    SplineFactors factors;
    factors.application = x[5];
    spline_stress(StraightSpline(6, metres(x[0]), metres(x[1]), metres(x[2]), metres(x[3])), newton_metres(x[4]),
                  factors);
  });
  refuses<3>("torsion_stress", {0.06, 0.05, 500.0},
             [](D x) { torsion_stress(TubeSection(metres(x[0]), metres(x[1])), newton_metres(x[2])); });
  refuses<4>("critical_speed", {0.06, 1.2, 2e11, 7850.0}, [](D x) {
    critical_speed(SolidSection(metres(x[0])), metres(x[1]), pascals(x[2]), kilograms_per_cubic_metre(x[3]));
  });
  refuses<5>("fatigue_safety_factor", {1e8, 2e8, 2e8, 7e8, 5e8}, [](D x) {
    fatigue_safety_factor(pascals(x[0]), pascals(x[1]), {pascals(x[2]), pascals(x[3]), pascals(x[4])},
                          MeanStressRule::goodman);
  });
  refuses<3>("miner_damage", {4e8, 1e7, 20.0}, [](D x) {
    miner_damage(std::vector<Cycle<Stress>>{{pascals(x[0]), pascals(x[1]), x[2]}},
                 {pascals(9e8), -0.1, pascals(2e8), pascals(9e8), pascals(7e8)}, MeanStressRule::goodman);
  });
  refuses<4>("disc_clutch_torque", {0.08, 0.05, 5000.0, 0.3}, [](D x) {
    disc_clutch_torque(metres(x[0]), metres(x[1]), newtons(x[2]), x[3], 4, ClutchContact::uniform_wear);
  });
  refuses<4>("clutch_engagement", {5.0, 56.0, 900.0, 100.0}, [](D x) {
    clutch_engagement(kilogram_square_metres(x[0]), radians_per_second(x[1]), newton_metres(x[2]), newton_metres(x[3]));
  });
  refuses<3>("shear_bolt_torque", {0.01, 0.05, 4e8},
             [](D x) { shear_bolt_torque(metres(x[0]), metres(x[1]), pascals(x[2]), 1, 1); });
}

TEST_CASE("fronts of the geometry refuse NaN and infinities with -ffast-math") {
  using D = const double*;
  refuses<3>("rotation", {0.3, 0.1, 0.05}, [](D x) { rotation({radians(x[0]), radians(x[1]), radians(x[2])}); });
  refuses<3>("pin_position", {0.4, 0.02, 0.2}, [](D x) { pin_position({metres(x[0]), metres(x[1]), metres(x[2])}); });
  refuses<3>("steady_turn_angle", {6.0, 0.5, 2.0},
             [](D x) { steady_turn_angle(metres(x[0]), metres(x[1]), metres(x[2])); });
  refuses<4>("driveline_at", {-0.4, 0.3, 0.1, 0.05}, [](D x) {
    driveline_at(line_with(metres(0.06)),
                 {Position(metres(x[0]), Length{}, metres(-0.25)), {radians(x[1]), radians(x[2]), radians(x[3])}});
  });
  refuses<4>("driveline_envelope", {0.06, -0.4, 0.3, 0.1}, [](D x) {
    AttitudeRange range;
    range.yaw = {radians(-0.3), radians(x[2])};
    range.pitch = {radians(-0.1), radians(x[3])};
    driveline_envelope(line_with(metres(x[0])), Position(metres(x[1]), Length{}, metres(-0.25)), range);
  });
  refuses<3>("driveline_sweep", {0.3, 0.1, 0.05}, [](D x) {
    driveline_sweep(line_with(metres(0.06)), Position(metres(-0.4), Length{}, metres(-0.25)),
                    {{radians(x[0])}, {radians(x[1])}, {radians(x[2])}});
  });
}

TEST_CASE("NaN and infinity in a history are refused by index with -ffast-math, also in pieces") {
  const SnLine<double> line{10.0, -0.2, 0.1, 1e9, 1e9};
  for (const double bad : {not_a_number, infinity}) {
    for (const std::size_t index : {0U, 40U, 4096U, 4999U}) {
      std::vector<double> history(5000);
      for (std::size_t i = 0; i < history.size(); ++i) history[i] = static_cast<double>(i % 700);
      history[index] = bad;
      const std::string place = "[" + std::to_string(index) + "]";
      CHECK_THROWS_WITH_AS(count_cycles(history), doctest::Contains(place.c_str()), InputError);
      for (const double gate : {0.0, 1.0, 1e6}) {
        CHECK_THROWS_WITH_AS(history_damage(history, line, MeanStressRule::goodman, SmallCycles::harmless, {gate, 0.0}),
                             doctest::Contains(place.c_str()), InputError);
      }
    }
  }
}

TEST_CASE("counting gives the same rows with -ffast-math") {
  const std::vector<double> history = {-2, 1, -3, 5, -1, 3, -4, 4, -2};
  const double ranges[] = {3, 4, 4, 8, 9, 8, 6};
  const std::vector<Cycle<>> rows = count_cycles(history);
  REQUIRE(rows.size() == 7);
  for (std::size_t i = 0; i < rows.size(); ++i) CHECK(rows[i].range == ranges[i]);
}

TEST_CASE("an endless life keeps its class with -ffast-math") {
  CHECK(life_class(damage_life(0.0, seconds(6))) == LifeClass::beyond_10000_h);
  CHECK_THROWS_AS(life_class(seconds(not_a_number)), InputError);
}

TEST_CASE("the laws of the formulas hold with -ffast-math") {
  RandomInputs random;
  for (const Law& law : formula_laws::laws) {
    INFO(std::string(law.name));
    for (int i = 0; i < law.tries / 10 + 1; ++i) law.hold(random);
  }
}

TEST_CASE("texts on plain numbers give what the fronts give with -ffast-math") {
  constexpr double few_roundings = 4e-16; // two operations may be ordered otherwise, 1.1e-16 each
  RandomInputs r;
  for (int i = 0; i < 500; ++i) {
    const double torque = r.across(1, 1e4);
    const double angle = r.between(0, 1.0);
    const double rotation = r.between(-3, 3);
    const double radius = r.between(0.02, 0.5);
    const double speed = r.across(5, 300);
    CHECK_CLOSE(text::shaft_power(torque, speed), shaft_power(newton_metres(torque), radians_per_second(speed)).value(),
                few_roundings);
    CHECK_CLOSE(text::tip_speed(speed, radius), tip_speed(radians_per_second(speed), metres(radius)).value(),
                few_roundings);
    CHECK_CLOSE(text::blade_pull(2.0, radius, speed),
                blade_pull(kilograms(2), metres(radius), radians_per_second(speed)).value(), few_roundings);
    CHECK_CLOSE(text::joint_speed_ratio(angle, rotation), joint_speed_ratio(radians(angle), radians(rotation)),
                few_roundings);
    CHECK_CLOSE(text::joint_speed_variation(angle), joint_speed_variation(radians(angle)), few_roundings);
    CHECK_CLOSE(text::rotor_energy(radius, speed),
                rotor_energy(kilogram_square_metres(radius), radians_per_second(speed)).value(), few_roundings);
    CHECK_CLOSE(text::shear_bolt_torque(0.01, radius, 4e8, 2.0, 1.0),
                shear_bolt_torque(metres(0.01), metres(radius), pascals(4e8), 2, 1).value(), few_roundings);
  }
}

TEST_CASE("the kernels of the sweep give a plain loop's extremes with -ffast-math") {
  using namespace fieldshaft::sweeping;
  struct Kernel {
    ProcessorKernel needed;
    RowKernel rows;
  };
  const Kernel kernels[] = {
    {ProcessorKernel::portable, portable_rows},
#if defined(FIELDSHAFT_X86_KERNELS)
    {ProcessorKernel::avx2, avx2_rows},
    {ProcessorKernel::avx512, avx512_rows}
#endif
  };
  RandomInputs r;
  for (int round = 0; round < 200; ++round) {
    std::vector<double> cosines, sines;
    const double widest = r.between(0.01, 0.5);
    for (int i = 0; i < 24; ++i) {
      cosines.push_back(std::cos(widest * (i - 12) / 12.0));
      sines.push_back(std::sin(widest * (i - 12) / 12.0));
    }
    const auto part = [&r](double from, double to) {
      return Linear{r.between(from, to), r.between(-0.05, 0.05), r.between(-0.2, 0.2)};
    };
    const Row row{part(1.0, 1.5), part(0.5, 0.6), part(0.5, 0.6)};
    RowExtremes plain{1.0, 1.0, 1.0, 0.0, 1e300};
    for (std::size_t i = 0; i < cosines.size(); ++i) {
      const auto at = [&](const Linear& l) { return l.constant + l.cosine * cosines[i] + l.sine * sines[i]; };
      const double square = at(row.length_square);
      const double front = std::acos(at(row.front) / std::sqrt(square));
      const double rear = std::acos(at(row.rear) / std::sqrt(square));
      const auto signed_square = [](double x) { return x * std::abs(x); };
      plain.front = std::min(plain.front, signed_square(std::cos(front)));
      plain.rear = std::min(plain.rear, signed_square(std::cos(rear)));
      plain.difference = std::min(plain.difference, std::cos(front - rear));
      plain.longest = std::max(plain.longest, square);
      plain.shortest = std::min(plain.shortest, square);
    }
    for (const Kernel& kernel : kernels) {
      if (!kernel_is_available(kernel.needed)) continue;
      RowExtremes found{};
      kernel.rows(&row, 1, {cosines.data(), sines.data(), static_cast<long>(cosines.size())}, &found);
      const double rounding = 1e-14; // a cosine of an arc cosine, and about ten operations
      CHECK(std::abs(found.front - plain.front) < rounding);
      CHECK(std::abs(found.rear - plain.rear) < rounding);
      CHECK(std::abs(found.difference - plain.difference) < rounding);
      CHECK(std::abs(found.longest - plain.longest) < rounding);
      CHECK(std::abs(found.shortest - plain.shortest) < rounding);
    }
  }
}

TEST_CASE("NaN is within no limit with -ffast-math") {
  for (const LimitSense sense : {LimitSense::at_most, LimitSense::at_least}) {
    assessing::LimitBand band{};
    band.sense = sense;
    band.strictest = band.loosest = amount_of(newton_metres(100));
    const auto status = [&band](double value) {
      return assessing::compare(Check::master_shield, amount_of(newton_metres(value)), band, nullptr).status;
    };
    CHECK(status(not_a_number) == Status::stop);
    CHECK(status(sense == LimitSense::at_most ? 99.0 : 101.0) == Status::ok);
    CHECK(status(sense == LimitSense::at_most ? 101.0 : 99.0) == Status::stop);
  }
}

TEST_CASE("no example with NaN for its need is assessed, with -ffast-math") {
  int stated = 0;
  for (const auto& entry : std::filesystem::directory_iterator(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases")) {
    std::ifstream file(entry.path());
    std::stringstream text;
    text << file.rdbuf();
    Case value = read_case(text.str());
    if (!value.implement.power_need) continue;
    INFO(entry.path().string());
    ++stated;
    value.implement.power_need = watts(not_a_number);
    CHECK_THROWS_AS(assess(value), InputError);
  }
  CHECK(stated > 5);
}
