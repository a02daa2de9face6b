// Laws of beams and torsional trains over random inputs.

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/shaft.hpp>

#include "close.hpp"
#include "random.hpp"

#include <algorithm>
#include <numeric>

using namespace fieldshaft;

namespace {

/// A tree of 2 to 12 inertias with gears.
TorsionalTrain random_train(RandomInputs& random) {
  TorsionalTrain train;
  const int count = random.whole(2, 12);
  for (int i = 0; i < count; ++i) {
    train.inertias.push_back({kilogram_square_metres(random.across(0.01, 10)), {}});
    if (i == 0) continue;
    const auto to = static_cast<std::size_t>(i);
    train.shafts.push_back({static_cast<std::size_t>(random.whole(0, i - 1)), to,
                            newton_metres_per_radian(random.across(1e3, 1e5)), random.across(0.25, 4)});
  }
  return train;
}

/// The same train with every inertia and stiffness brought to the speed of the first, by hand.
TorsionalTrain referred(const TorsionalTrain& train) {
  const std::vector<double> ratios = train_speed_ratios(train);
  TorsionalTrain plain = train;
  for (std::size_t i = 0; i < ratios.size(); ++i) plain.inertias[i].inertia *= ratios[i] * ratios[i];
  for (TrainShaft& shaft : plain.shafts) {
    shaft.stiffness *= ratios[shaft.from] * ratios[shaft.from];
    shaft.damping *= ratios[shaft.from] * ratios[shaft.from];
    shaft.ratio = 1.0;
  }
  return plain;
}

double motion_product(const TorsionalTrain& train, const TorsionalMode& a, const TorsionalMode& b) {
  double sum = 0.0;
  for (std::size_t i = 0; i < train.inertias.size(); ++i) {
    sum += train.inertias[i].inertia.value() * a.amplitudes[i] * b.amplitudes[i];
  }
  return sum;
}

double twist_of(const TrainShaft& shaft, const TorsionalMode& mode) {
  return mode.amplitudes[shaft.from] - mode.amplitudes[shaft.to] / shaft.ratio;
}

double strain_product(const TorsionalTrain& train, const TorsionalMode& a, const TorsionalMode& b) {
  double sum = 0.0;
  for (const TrainShaft& shaft : train.shafts) sum += shaft.stiffness.value() * twist_of(shaft, a) * twist_of(shaft, b);
  return sum;
}

double angular(const TorsionalMode& mode) { return 2.0 * pi * mode.frequency.value(); }

BeamLine random_line(RandomInputs& random) {
  BeamLine line;
  double length = 0.0;
  for (int i = random.whole(1, 4); i > 0; --i) {
    const double part = random.between(0.2, 0.8);
    const double outer = random.between(0.04, 0.08);
    const TubeSection tube(metres(outer), metres(outer * random.between(0.5, 0.9)));
    line.segments.push_back(beam_segment(tube, metres(part), gigapascals(207), kilograms_per_cubic_metre(7850)));
    length += part;
  }
  line.supports = {{metres(0), SupportKind::simple, {}}, {metres(length * (1.0 - 1e-12)), SupportKind::simple, {}}};
  return line;
}

double lowest(const BeamLine& line) { return beam_critical_speeds(line).front().value(); }

} // namespace

TEST_CASE("modes are orthogonal in motion and in strain, and share their energy evenly") {
  RandomInputs random;
  for (int round = 0; round < 300; ++round) {
    const TorsionalTrain train = random_train(random);
    const std::vector<TorsionalMode> modes = torsional_modes(train);
    const double highest = angular(modes.back());
    for (std::size_t i = 0; i < modes.size(); ++i) {
      const double own = motion_product(train, modes[i], modes[i]);
      const double strain = strain_product(train, modes[i], modes[i]);
      CHECK(std::abs(strain - angular(modes[i]) * angular(modes[i]) * own) <= 1e-11 * highest * highest * own);
      for (std::size_t j = 0; j < i; ++j) {
        const double other = motion_product(train, modes[j], modes[j]);
        CHECK(std::abs(motion_product(train, modes[i], modes[j])) <= 1e-9 * std::sqrt(own * other));
        CHECK(std::abs(strain_product(train, modes[i], modes[j])) <=
              1e-11 * highest * highest * std::sqrt(own * other));
      }
    }
  }
}

TEST_CASE("gears only refer: the train at the first one's speed has the same frequencies") {
  RandomInputs random;
  for (int round = 0; round < 300; ++round) {
    const TorsionalTrain train = random_train(random);
    const std::vector<TorsionalMode> modes = torsional_modes(train);
    const std::vector<TorsionalMode> plain = torsional_modes(referred(train));
    const std::vector<double> ratios = train_speed_ratios(train);
    for (std::size_t i = 1; i < modes.size(); ++i) CHECK_CLOSE(angular(modes[i]), angular(plain[i]), 1e-9);
    CHECK(modes[0].frequency == hertz(0));
    const double first = modes[0].amplitudes[0];
    for (std::size_t i = 0; i < ratios.size(); ++i) CHECK_CLOSE(modes[0].amplitudes[i], first * ratios[i], 1e-12);
  }
}

TEST_CASE("the torque of each mode balances: no outside torque acts on a free train") {
  RandomInputs random;
  for (int round = 0; round < 300; ++round) {
    const TorsionalTrain train = random_train(random);
    const std::vector<double> ratios = train_speed_ratios(train);
    for (const TorsionalMode& mode : torsional_modes(train)) {
      if (mode.frequency == hertz(0)) continue;
      double sum = 0.0;
      double size = 0.0;
      for (std::size_t i = 0; i < ratios.size(); ++i) {
        const double part = train.inertias[i].inertia.value() * mode.amplitudes[i] * ratios[i];
        sum += part;
        size += std::abs(part);
      }
      CHECK(std::abs(sum) <= 1e-9 * size);
    }
  }
}

TEST_CASE("a stiffer shaft never lowers a frequency, a heavier inertia never raises one") {
  RandomInputs random;
  for (int round = 0; round < 200; ++round) {
    const TorsionalTrain train = random_train(random);
    TorsionalTrain stiffer = train;
    stiffer.shafts[static_cast<std::size_t>(random.whole(0, static_cast<int>(train.shafts.size()) - 1))].stiffness *=
        1.7;
    TorsionalTrain heavier = train;
    heavier.inertias.back().inertia *= 1.7;
    const std::vector<TorsionalMode> modes = torsional_modes(train);
    const double rounding = 1e-9 * angular(modes.back());
    for (std::size_t i = 1; i < modes.size(); ++i) {
      CHECK(angular(torsional_modes(stiffer)[i]) >= angular(modes[i]) - rounding);
      CHECK(angular(torsional_modes(heavier)[i]) <= angular(modes[i]) + rounding);
    }
  }
}

TEST_CASE("the sum of the squares of all frequencies is the trace: stiffness over inertia, shaft by shaft") {
  RandomInputs random;
  for (int round = 0; round < 300; ++round) {
    const TorsionalTrain train = random_train(random);
    double squares = 0.0;
    for (const TorsionalMode& mode : torsional_modes(train)) squares += angular(mode) * angular(mode);
    double trace = 0.0;
    for (const TrainShaft& shaft : train.shafts) {
      const double k = shaft.stiffness.value();
      trace += k / train.inertias[shaft.from].inertia.value() +
               k / (shaft.ratio * shaft.ratio * train.inertias[shaft.to].inertia.value());
    }
    CHECK_CLOSE(squares, trace, 1e-12);
  }
}

TEST_CASE("power in equals power lost in the dampers, and swinging is mutual") {
  RandomInputs random;
  for (int round = 0; round < 200; ++round) {
    TorsionalTrain train = random_train(random);
    for (TrainShaft& shaft : train.shafts) {
      shaft.damping = newton_metre_seconds_per_radian(shaft.stiffness.value() * random.across(1e-5, 1e-3));
    }
    for (TrainInertia& mass : train.inertias) mass.drag = newton_metre_seconds_per_radian(random.across(0.01, 1));
    const Frequency frequency = hertz(random.across(1, 100));
    const double w = 2.0 * pi * frequency.value();
    const std::size_t last = train.inertias.size() - 1;
    const auto driven_at = [&](std::size_t at) {
      return forced_response(train, {frequency, {{at, {newton_metres(100), {}}}}, {}}).value;
    };
    const ForcedResponse here = driven_at(0);
    const ForcedResponse there = driven_at(last);
    CHECK_CLOSE(here.swings[last].amplitude.value(), there.swings[0].amplitude.value(), 1e-7);
    // Work of a turn of the phase: pi T A sin(lag); lost: pi c w A² for each damper.
    double lost = 0.0;
    for (std::size_t i = 0; i <= last; ++i) {
      lost += train.inertias[i].drag.value() * w * here.swings[i].amplitude.value() * here.swings[i].amplitude.value();
    }
    for (std::size_t i = 0; i < train.shafts.size(); ++i) {
      const double k = train.shafts[i].stiffness.value();
      const double c = train.shafts[i].damping.value();
      const double twist = here.torques[i].amplitude.value() / std::hypot(k, c * w);
      lost += c * w * twist * twist;
    }
    const double given = -100.0 * here.swings[0].amplitude.value() * math::sin(here.swings[0].phase);
    CHECK_CLOSE(given, lost, 1e-6);
  }
}

TEST_CASE("many rotations of a pair at once give what each gives alone") {
  RandomInputs random;
  for (int round = 0; round < 300; ++round) {
    const Angle front = degrees(random.between(0, 70));
    const Angle rear = degrees(random.between(0, 70));
    const Angle phase = degrees(random.between(-180, 180));
    const double reach = random.across(1, 1e6); // beyond 1e5 rad another path
    std::vector<double> rotations(97);
    for (double& rotation : rotations) rotation = random.between(-reach, reach);
    std::vector<double> ratios(rotations.size());
    joint_pair_speed_ratios(front, rear, phase, rotations.data(), ratios.data(), rotations.size());
    const double k = joint_pair_extremes(front, rear, phase, rpm(540)).largest_ratio;
    const double rounding = (1e-14 + 4e-16 * reach) * k * k;
    for (std::size_t i = 0; i < rotations.size(); ++i) {
      CHECK_CLOSE(ratios[i], joint_pair_speed_ratio(front, rear, phase, radians(rotations[i])), rounding);
    }
  }
}

TEST_CASE("the pulses of a joint add up to its lead") {
  RandomInputs random;
  for (int round = 0; round < 300; ++round) {
    const Angle angle = degrees(random.between(0, 50));
    const Angle rotation = degrees(random.between(0, 360));
    Angle sum{};
    for (int n = 1; n <= 20; ++n) sum += joint_pulse(angle, n) * math::sin(2.0 * n * rotation);
    CHECK(std::abs((sum - joint_displacement(angle, rotation)).value()) < 1e-12);
  }
}

TEST_CASE("the torque swing of a joint is the forced response of an inertia behind a steady drive") {
  RandomInputs random;
  for (int round = 0; round < 200; ++round) {
    const TorsionalStiffness k = newton_metres_per_radian(random.across(1e3, 1e5));
    const MomentOfInertia behind = kilogram_square_metres(random.across(0.1, 30));
    const Angle angle = degrees(random.between(1, 40));
    const AngularSpeed speed = rpm(random.between(300, 1100));
    const Validated<Torque> swing = joint_torque_swing(k, behind, angle, speed);
    if (!swing.valid()) continue;
    const TorsionalTrain train = plain_train({1e9 * behind, behind}, {k});
    const TorsionalExcitation joint{hertz(2.0 * speed.value() / (2.0 * pi)), {}, {{0, {joint_pulse(angle), {}}}}};
    CHECK_CLOSE(forced_response(train, joint).value.torques[0].amplitude.value(), swing.value.value(), 1e-6);
  }
}

TEST_CASE("at its critical speed an order pulses at the natural frequency") {
  RandomInputs random;
  for (int round = 0; round < 200; ++round) {
    const TorsionalTrain train = random_train(random);
    const std::vector<double> ratios = train_speed_ratios(train);
    std::vector<ExcitationOrder> orders;
    for (std::size_t i = 0; i < ratios.size(); ++i) orders.push_back({random.across(0.5, 12), i});
    const SpeedRange speeds{rpm(500), rpm(600)};
    for (const Interference& row : interference_table(train, orders, speeds)) {
      const ExcitationOrder& order = orders[row.order];
      const double pulses = row.critical_speed.value() * ratios[order.inertia] * order.per_turn / (2.0 * pi);
      CHECK_CLOSE(pulses, row.natural.value(), 1e-12);
      const bool within = row.critical_speed >= speeds.low && row.critical_speed <= speeds.high;
      CHECK((row.separation == 0.0) == within);
    }
  }
}

TEST_CASE("a line lies between its bounds: all of the slowest piece, Dunkerley below") {
  RandomInputs random;
  for (int round = 0; round < 200; ++round) {
    BeamLine line = random_line(random);
    const double bare = lowest(line);
    double length = 0.0;
    for (const BeamSegment& segment : line.segments) length += segment.length.value();
    // Turned round, it is the same line.
    BeamLine reversed = line;
    std::reverse(reversed.segments.begin(), reversed.segments.end());
    CHECK_CLOSE(lowest(reversed), bare, 1e-7);
    // A mass: slower; never slower than Dunkerley's estimate from line and mass alone.
    const Length at = metres(length * random.between(0.2, 0.8));
    const Mass mass = kilograms(random.across(0.5, 20));
    BeamLine loaded = line;
    loaded.masses = {{at, mass}};
    BeamLine light = loaded;
    for (BeamSegment& segment : light.segments) segment.mass *= 1e-9;
    const double slow = lowest(loaded);
    const AngularSpeed dunkerley =
        dunkerley_critical_speed({radians_per_second(bare), radians_per_second(lowest(light))});
    CHECK(slow < bare);
    CHECK(slow >= dunkerley.value() * (1.0 - 1e-6));
    // Stretched by two throughout: a quarter of the speed.
    for (BeamSegment& segment : line.segments) segment.length *= 2.0;
    line.supports.back().at *= 2.0;
    CHECK_CLOSE(lowest(line), 0.25 * bare, 1e-7);
  }
}

TEST_CASE("the least critical speed of a telescope undercuts every length of its range") {
  RandomInputs random;
  for (int round = 0; round < 20; ++round) {
    const double length = random.between(0.5, 1.0);
    const auto member = [&](double outer) {
      const TubeSection tube(metres(outer), metres(0.85 * outer));
      return WhirlMember{beam_segment(tube, metres(length), gigapascals(207), kilograms_per_cubic_metre(7850)),
                         kilograms(random.between(0, 5)), metres(random.between(0.0, 0.3 * length))};
    };
    WhirlTelescope telescope{member(0.06), member(0.048)};
    telescope.overlap_share = random.between(0, 1);
    const Length shortest = metres(1.1 * length);
    const Length longest = metres(1.8 * length);
    const WhirlExtreme least = least_critical_speed(telescope, shortest, longest, rpm(600));
    for (int i = 0; i < 50; ++i) {
      const Length at = metres(length * random.between(1.1, 1.8));
      CHECK(telescope_critical_speed(telescope, at).value() >= least.critical_speed.value() * (1.0 - 1e-5));
    }
  }
}
