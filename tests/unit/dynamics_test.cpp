#include <fieldshaft/dynamics.hpp>

#include "close.hpp"

#include <functional>
#include <limits>
#include <string>

using namespace fieldshaft;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

/// The function and parameter that an error names, as "function: parameter".
std::string refused(const std::function<void()>& call) {
  try {
    call();
  } catch (const InputError& error) {
    return error.function() + ": " + error.parameter();
  }
  return "nothing";
}

BeamSegment tube_60(Length length) {
  return beam_segment(TubeSection(millimetres(60), millimetres(52)), length, gigapascals(207),
                      kilograms_per_cubic_metre(7850));
}
BeamSegment tube_48(Length length) {
  return beam_segment(TubeSection(millimetres(48), millimetres(40)), length, gigapascals(207),
                      kilograms_per_cubic_metre(7850));
}
BeamSupport simple(Length at) { return {at, SupportKind::simple, {}}; }
BeamSupport clamped(Length at) { return {at, SupportKind::clamped, {}}; }

/// sqrt(w) L (m/(E I))^(1/4) of the lowest speeds of the uniform tube with these supports.
std::vector<double> wave_numbers(const std::vector<BeamSupport>& supports, int count) {
  const BeamSegment tube = tube_60(metres(1.2));
  std::vector<double> numbers;
  for (const AngularSpeed& speed : beam_critical_speeds({{tube}, {}, supports}, count, 60)) {
    const double scale = std::sqrt(tube.mass.value() / tube.stiffness.value());
    numbers.push_back(1.2 * std::sqrt(speed.value() * scale));
  }
  return numbers;
}

MomentOfInertia inertia(double n) { return kilogram_square_metres(n); }
TorsionalStiffness stiffness(double n) { return newton_metres_per_radian(n); }

TorsionalTrain two(double first = 2.0, double second = 3.0, double k = 5000.0) {
  return plain_train({inertia(first), inertia(second)}, {stiffness(k)});
}

double natural(const TorsionalTrain& train, std::size_t mode) {
  return 2.0 * pi * torsional_modes(train).at(mode).frequency.value();
}

TorsionalExcitation pulse(double frequency, std::size_t at, double torque) {
  return {hertz(frequency), {{at, {newton_metres(torque), {}}}}, {}};
}

WhirlTelescope telescope(double share = 0.0) {
  WhirlTelescope made{{tube_60(metres(0.8)), {}, {}}, {tube_48(metres(0.8)), {}, {}}};
  made.overlap_share = share;
  return made;
}

} // namespace

TEST_CASE("a uniform beam has the wave numbers of its supports") {
  // Roots of sin x, cos x cosh x = -1, cos x cosh x = 1 and tan x = tanh x, to all digits.
  const std::vector<double> pinned = wave_numbers({simple(metres(0)), simple(metres(1.2))}, 3);
  for (std::size_t i = 0; i < 3; ++i) CHECK_CLOSE(pinned[i], pi * static_cast<double>(i + 1), 3e-7);
  CHECK_CLOSE(pinned[0], pi, 3e-9);
  CHECK_CLOSE(wave_numbers({clamped(metres(0))}, 2)[0], 1.8751040687119611, 3e-9);
  CHECK_CLOSE(wave_numbers({clamped(metres(0))}, 2)[1], 4.6940911329741746, 2e-8);
  CHECK_CLOSE(wave_numbers({clamped(metres(0)), clamped(metres(1.2))}, 1)[0], 4.7300407448627040, 2e-8);
  CHECK_CLOSE(wave_numbers({clamped(metres(0)), simple(metres(1.2))}, 1)[0], 3.9266023120479188, 2e-8);
}

TEST_CASE("a stiff beam on two springs moves as a mass") {
  const BeamSegment stiff{metres(1), newton_square_metres(1e8), kilograms_per_metre(3)};
  const ForcePerLength spring = newtons_per_millimetre(10);
  const BeamLine line{
      {stiff}, {}, {{metres(0), SupportKind::spring, spring}, {metres(1), SupportKind::spring, spring}}};
  const std::vector<AngularSpeed> speeds = beam_critical_speeds(line, 2);
  CHECK_CLOSE(speeds[0].value(), std::sqrt(2.0 * 1e4 / 3.0), 1e-5);
  CHECK_CLOSE(speeds[1].value(), std::sqrt(6.0 * 1e4 / 3.0), 1e-5); // k L²/2 over m L²/12, tilting
}

TEST_CASE("a mass at a support changes nothing, in the middle it slows, a support in the middle quickens fourfold") {
  const std::vector<BeamSupport> ends{simple(metres(0)), simple(metres(1.2))};
  const AngularSpeed bare = beam_critical_speeds({{tube_60(metres(1.2))}, {}, ends}).front();
  const auto with_mass = [&](double at) {
    return beam_critical_speeds({{tube_60(metres(1.2))}, {{metres(at), kilograms(5)}}, ends}).front();
  };
  CHECK_CLOSE(with_mass(0.0).value(), bare.value(), 1e-12);
  CHECK(with_mass(0.6) < 0.7 * bare);
  const BeamLine held{{tube_60(metres(1.2))}, {}, {ends[0], ends[1], simple(metres(0.6))}};
  CHECK_CLOSE(beam_critical_speeds(held, 1, 60).front().value(), 4.0 * bare.value(), 1e-5);
  const BeamLine cut{{tube_60(metres(0.5)), tube_60(metres(0.7))}, {}, ends};
  CHECK_CLOSE(beam_critical_speeds(cut).front().value(), bare.value(), 1e-5);
}

TEST_CASE("beams refuse what cannot be, by name") {
  const auto speeds = [](const BeamLine& line, int count = 1, int elements = 12) {
    return refused([&] { beam_critical_speeds(line, count, elements); });
  };
  const std::vector<BeamSupport> ends{simple(metres(0)), simple(metres(1))};
  const BeamLine good{{tube_60(metres(1))}, {}, ends};
  const std::string name = "beam_critical_speeds: ";
  CHECK(speeds(good) == "nothing");
  CHECK(speeds(good, 0) == name + "count");
  CHECK(speeds(good, 21) == name + "count");
  CHECK(speeds(good, 1, 7) == name + "elements");
  CHECK(speeds(good, 1, 201) == name + "elements");
  CHECK(speeds({{}, {}, ends}) == name + "line.segments");
  const auto with = [&](double length, double bending, double mass) {
    return speeds({{{metres(length), newton_square_metres(bending), kilograms_per_metre(mass)}}, {}, ends});
  };
  CHECK(with(0, 1, 1) == name + "line.segments.length");
  CHECK(with(1, 0, 1) == name + "line.segments.stiffness");
  CHECK(with(1, not_a_number, 1) == name + "line.segments.stiffness");
  CHECK(with(1, 1, -1) == name + "line.segments.mass");
  CHECK(speeds({good.segments, {{metres(1.1), kilograms(1)}}, ends}) == name + "line.masses.at");
  CHECK(speeds({good.segments, {{metres(0.5), kilograms(-1)}}, ends}) == name + "line.masses.mass");
  CHECK(speeds({good.segments, {}, {}}) == name + "line.supports");
  CHECK(speeds({good.segments, {}, {ends[0], ends[0]}}) == name + "line.supports");
  CHECK(speeds({good.segments, {}, {ends[0], simple(metres(-0.1))}}) == name + "line.supports.at");
  CHECK(speeds({good.segments, {}, {ends[0], {metres(1), SupportKind::spring, {}}}}) ==
        name + "line.supports.stiffness");
  CHECK(speeds({{tube_60(metres(1)), {metres(1), newton_square_metres(1e308), kilograms_per_metre(1)}}, {}, ends}) ==
        name + "line");
  const TubeSection tube(millimetres(60), millimetres(52));
  const auto made = [&](double length, double modulus, double density) {
    return refused(
        [&] { beam_segment(tube, metres(length), gigapascals(modulus), kilograms_per_cubic_metre(density)); });
  };
  CHECK(made(0, 207, 7850) == "beam_segment: length");
  CHECK(made(1, 0, 7850) == "beam_segment: youngs_modulus");
  CHECK(made(1, 207, infinity) == "beam_segment: density");
  CHECK(refused([&] { slender_tube_excess(tube, metres(0)); }) == "slender_tube_excess: length");
}

TEST_CASE("shear matters little in a slender tube, and a stout one is said to be outside") {
  const TubeSection tube(millimetres(60), millimetres(52));
  CHECK(slender_tube_excess(tube, metres(1.2)).valid());
  CHECK_CLOSE(slender_tube_excess(tube, metres(1.2)).value, 0.0052, 0.01);
  CHECK_CLOSE(slender_tube_excess(tube, metres(0.6)).value / slender_tube_excess(tube, metres(1.2)).value, 4.0, 1e-12);
  CHECK(!slender_tube_excess(tube, metres(0.3)).valid());
  const ShapedProfile square = square_profile(millimetres(40), millimetres(4));
  const BeamSegment segment = beam_segment(square, metres(1), gigapascals(207), kilograms_per_cubic_metre(7850));
  CHECK_CLOSE(segment.stiffness.value(), 207e9 * square.second_moment().value(), 1e-14);
  CHECK_CLOSE(segment.mass.value(), 7850 * square.area().value(), 1e-14);
}

TEST_CASE("a telescope is a front piece, an overlap and a rear piece") {
  const BeamLine line = whirl_line(telescope(), metres(1.3));
  REQUIRE(line.segments.size() == 3);
  CHECK_CLOSE(line.segments[0].length.value(), 0.5, 1e-14);
  CHECK_CLOSE(line.segments[1].length.value(), 0.3, 1e-14);
  CHECK_CLOSE(line.segments[2].length.value(), 0.5, 1e-14);
  CHECK(line.segments[1].stiffness == line.segments[0].stiffness);
  CHECK(line.segments[1].mass == line.segments[0].mass + line.segments[2].mass);
  const BeamLine tight = whirl_line(telescope(1.0), metres(1.3));
  CHECK(tight.segments[1].stiffness == line.segments[0].stiffness + line.segments[2].stiffness);
  CHECK(whirl_line(telescope(), metres(0.8)).segments.size() == 1);
  CHECK(telescope_critical_speed(telescope(1.0), metres(1.3)) > telescope_critical_speed(telescope(), metres(1.3)));
}

TEST_CASE("the least critical speed is that of the longest position unless a mass sits elsewhere") {
  const WhirlExtreme plain = least_critical_speed(telescope(), metres(0.9), metres(1.4), rpm(600));
  CHECK(plain.at == metres(1.4));
  CHECK(plain.critical_speed == plain.at_longest);
  CHECK_CLOSE(plain.share, static_cast<double>(rpm(600) / plain.critical_speed), 1e-14);
  CHECK_CLOSE(in(plain.critical_speed, unit::rpm), 3927.02, 1e-5);
  WhirlTelescope soft = telescope();
  soft.rear_support = {{}, SupportKind::spring, newtons_per_millimetre(500)};
  CHECK(least_critical_speed(soft, metres(0.9), metres(1.4), rpm(600)).critical_speed < plain.critical_speed);
  // A heavy clutch at the end of the rear member: it comes to the middle as the telescope closes.
  WhirlTelescope loaded = telescope();
  loaded.front.end_mass = kilograms(40);
  loaded.front.end_mass_from = metres(0.45);
  const WhirlExtreme worst = least_critical_speed(loaded, metres(0.81), metres(1.59), rpm(600));
  for (double length = 0.81; length < 1.59; length += 0.01) {
    CHECK(telescope_critical_speed(loaded, metres(length)) >= 0.999999 * worst.critical_speed);
  }
}

TEST_CASE("telescopes refuse what cannot be, by name") {
  const auto line = [](const WhirlTelescope& made, double length) {
    return refused([&] { whirl_line(made, metres(length)); });
  };
  CHECK(line(telescope(), 0.79) == "whirl_line: length");
  CHECK(line(telescope(), 1.6) == "whirl_line: length");
  CHECK(line(telescope(), not_a_number) == "whirl_line: length");
  CHECK(line(telescope(1.1), 1.0) == "whirl_line: telescope.overlap_share");
  WhirlTelescope bad = telescope();
  bad.front.tube.length = metres(0);
  CHECK(line(bad, 0.9) == "whirl_line: telescope.front.tube.length");
  bad = telescope();
  bad.rear.end_mass_from = metres(0.9);
  CHECK(line(bad, 1.0) == "whirl_line: telescope.rear.end_mass_from");
  const auto least = [](double shortest, double longest, double speed) {
    return refused([&] { least_critical_speed(telescope(), metres(shortest), metres(longest), rpm(speed)); });
  };
  CHECK(least(1.0, 1.2, 0.0) == "least_critical_speed: speed");
  CHECK(least(1.2, 1.0, 540.0) == "least_critical_speed: longest");
  CHECK(least(0.5, 1.0, 540.0) == "least_critical_speed: length");
}

TEST_CASE("three members: a uniform line has its closed form, and a middle one of no account leaves two") {
  // End to end, all of one tube.
  const BeamSegment tube = tube_60(metres(0.5));
  WhirlTelescope even{{tube, {}, {}}, {tube, {}, {}}};
  even.middle = WhirlMiddle{tube, {}, {}, {}, {}};
  CHECK(whirl_line(even, metres(1.5)).segments.size() == 3);
  const double closed_form = (pi / 1.5) * (pi / 1.5) * std::sqrt((tube.stiffness / tube.mass).value());
  CHECK_CLOSE(telescope_critical_speed(even, metres(1.5)).value(), closed_form, 1e-5); // few elements, as any line
  // A middle member without stiffness and mass to speak of, where the outer two overlap anyway.
  WhirlTelescope two = telescope();
  const double alone = telescope_critical_speed(two, metres(1.3)).value();
  two.middle = WhirlMiddle{{metres(0.8), 1e-9 * tube.stiffness, 1e-9 * tube.mass}, metres(0.6), {}, metres(0.6), {}};
  CHECK_CLOSE(telescope_critical_speed(two, metres(1.3)).value(), alone, 1e-6);
}

TEST_CASE("three members: the middle one's place is looked at from end to end, and stops keep it from them") {
  WhirlTelescope three{{tube_60(metres(0.7)), {}, {}}, {tube_60(metres(0.7)), {}, {}}};
  three.middle = WhirlMiddle{tube_48(metres(0.7)), metres(0.6), {}, metres(0.6), {}};
  const Length length = metres(1.6); // 900 mm when closed; 700 mm out of 1200
  const double least = telescope_critical_speed(three, length).value();
  for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
    CHECK(beam_critical_speeds(whirl_line(three, length, share)).front().value() >= least * (1.0 - 1e-12));
  }
  // Alike from both ends.
  CHECK_CLOSE(beam_critical_speeds(whirl_line(three, length, 0.25)).front().value(),
              beam_critical_speeds(whirl_line(three, length, 0.75)).front().value(), 1e-9);
  // Drawn out, the middle tube alone spans: slower than two tubes that still overlap by as much.
  three.middle->front_least = three.middle->rear_least = metres(0.2);
  CHECK(telescope_critical_speed(three, length).value() >= least * (1.0 - 1e-12));
  CHECK(least_critical_speed(three, metres(0.91), metres(1.69), rpm(1000)).at > metres(1.6));
  const auto line = [](const WhirlTelescope& made, double at, double share = 0.0) {
    return refused([&] { whirl_line(made, metres(at), share); });
  };
  CHECK(line(three, 0.89) == "whirl_line: length");
  CHECK(line(three, 1.71) == "whirl_line: length");
  CHECK(line(three, 1.0, 1.1) == "whirl_line: middle_share");
  const auto middle = [&](Length WhirlMiddle::*part, double value) {
    WhirlTelescope bad = three;
    *bad.middle.*part = metres(value);
    return line(bad, 1.0);
  };
  CHECK(middle(&WhirlMiddle::front_least, 0.65) == "whirl_line: telescope.middle.front_least");
  CHECK(middle(&WhirlMiddle::rear_least, 0.65) == "whirl_line: telescope.middle.rear_least");
  CHECK(middle(&WhirlMiddle::front_closed, 0.75) == "whirl_line: telescope.middle.front_closed");
  CHECK(middle(&WhirlMiddle::rear_closed, 0.75) == "whirl_line: telescope.middle.rear_closed");
  three.middle->tube.length = Length{};
  CHECK(line(three, 1.0) == "whirl_line: telescope.middle.tube.length");
}

TEST_CASE("two and three inertias have their closed forms") {
  const double expected = std::sqrt(5000.0 * (1.0 / 2.0 + 1.0 / 3.0));
  CHECK(torsional_modes(two())[0].frequency == hertz(0));
  CHECK_CLOSE(natural(two(), 1), expected, 1e-14);
  CHECK_CLOSE(2.0 * pi * two_inertia_frequency(inertia(2), inertia(3), stiffness(5000)).value(), expected, 1e-15);
  const TorsionalMode mode = torsional_modes(two())[1];
  CHECK_CLOSE(mode.amplitudes[0], 1.0, 1e-15);
  CHECK_CLOSE(mode.amplitudes[1], -2.0 / 3.0, 1e-14);
  const std::vector<ModeNode> nodes = mode_nodes(two(), mode);
  REQUIRE(nodes.size() == 1);
  CHECK(nodes[0].shaft == 0);
  CHECK_CLOSE(nodes[0].share, 3.0 / 5.0, 1e-14);
  // Three: w⁴ - w² (a + b) + c = 0.
  const double i1 = 0.3, i2 = 0.6, i3 = 0.18, k1 = 132001.87, k2 = 198002.80;
  const double b = k1 * (1 / i1 + 1 / i2) + k2 * (1 / i2 + 1 / i3);
  const double c = k1 * k2 * (i1 + i2 + i3) / (i1 * i2 * i3);
  const double root = std::sqrt(b * b - 4.0 * c);
  const TorsionalTrain three = plain_train({inertia(i1), inertia(i2), inertia(i3)}, {stiffness(k1), stiffness(k2)});
  CHECK_CLOSE(natural(three, 1), std::sqrt(0.5 * (b - root)), 1e-13);
  CHECK_CLOSE(natural(three, 2), std::sqrt(0.5 * (b + root)), 1e-13);
  CHECK(mode_nodes(three, torsional_modes(three)[1]).size() == 1);
  CHECK(mode_nodes(three, torsional_modes(three)[2]).size() == 2);
}

TEST_CASE("a single free inertia only turns, a held one swings") {
  const TorsionalTrain free = plain_train({inertia(2)}, {});
  REQUIRE(torsional_modes(free).size() == 1);
  CHECK(torsional_modes(free)[0].frequency == hertz(0));
  TorsionalTrain held = free;
  held.anchors = {{0, stiffness(800), {}}};
  CHECK_CLOSE(natural(held, 0), 20.0, 1e-15);
}

TEST_CASE("a branched train: three equal arms on one hub") {
  TorsionalTrain star{{{inertia(3)}, {inertia(1)}, {inertia(1)}, {inertia(1)}},
                      {{0, 1, stiffness(100)}, {0, 2, stiffness(100)}, {0, 3, stiffness(100)}},
                      {}};
  CHECK(natural(star, 0) == 0.0);
  CHECK_CLOSE(natural(star, 1), 10.0, 1e-14);
  CHECK_CLOSE(natural(star, 2), 10.0, 1e-14);
  CHECK_CLOSE(natural(star, 3), std::sqrt(100.0 * (1.0 + 3.0 / 3.0)), 1e-14);
}

TEST_CASE("gears: ratios multiply along the line, and a loop must close") {
  TorsionalTrain train{
      {{inertia(1)}, {inertia(1)}, {inertia(1)}}, {{0, 1, stiffness(100), 2.0}, {2, 1, stiffness(100), 0.5}}, {}};
  const std::vector<double> ratios = train_speed_ratios(train);
  CHECK(ratios == std::vector<double>{1.0, 2.0, 4.0});
  CHECK(torsional_modes(train)[0].amplitudes == std::vector<double>{0.25, 0.5, 1.0});
  train.shafts.push_back({0, 2, stiffness(50), 4.0});
  CHECK(refused([&] { check_train(train, "f"); }) == "nothing");
  train.shafts.back().ratio = 3.0;
  CHECK(refused([&] { check_train(train, "f"); }) == "f: train.shafts.ratio");
}

TEST_CASE("trains refuse what cannot be, by name") {
  const auto check = [](const TorsionalTrain& train) { return refused([&] { check_train(train, "f"); }); };
  CHECK(check({}) == "f: train.inertias");
  CHECK(check({{{inertia(0)}}, {}, {}}) == "f: train.inertias.inertia");
  CHECK(check({{{inertia(-1)}}, {}, {}}) == "f: train.inertias.inertia");
  CHECK(check({{{inertia(1), newton_metre_seconds_per_radian(-1)}}, {}, {}}) == "f: train.inertias.drag");
  CHECK(check({{{inertia(1)}, {inertia(1)}}, {}, {}}) == "f: train.shafts");
  const auto shaft = [&](TrainShaft made) { return check({{{inertia(1)}, {inertia(1)}}, {made}, {}}); };
  CHECK(shaft({0, 1, stiffness(1)}) == "nothing");
  CHECK(shaft({2, 1, stiffness(1)}) == "f: train.shafts.from");
  CHECK(shaft({0, 2, stiffness(1)}) == "f: train.shafts.to");
  CHECK(shaft({1, 1, stiffness(1)}) == "f: train.shafts.to");
  CHECK(shaft({0, 1, stiffness(0)}) == "f: train.shafts.stiffness");
  CHECK(shaft({0, 1, stiffness(not_a_number)}) == "f: train.shafts.stiffness");
  CHECK(shaft({0, 1, stiffness(1), 0.0}) == "f: train.shafts.ratio");
  CHECK(shaft({0, 1, stiffness(1), -2.0}) == "f: train.shafts.ratio");
  CHECK(shaft({0, 1, stiffness(1), 1.0, newton_metre_seconds_per_radian(-1)}) == "f: train.shafts.damping");
  CHECK(shaft({0, 1, stiffness(1), 1.0, {}, degrees(-1)}) == "f: train.shafts.backlash");
  const auto anchor = [&](TrainAnchor made) { return check({{{inertia(1)}}, {}, {made}}); };
  CHECK(anchor({1, stiffness(1), {}}) == "f: train.anchors.inertia");
  CHECK(anchor({0, stiffness(0), {}}) == "f: train.anchors.stiffness");
  CHECK(anchor({0, stiffness(1), newton_metre_seconds_per_radian(infinity)}) == "f: train.anchors.damping");
  CHECK(refused([] { plain_train({inertia(1)}, {stiffness(1)}); }) == "plain_train: stiffnesses");
  CHECK(refused([] { plain_train({}, {}); }) == "plain_train: train.inertias");
  CHECK(refused([] { train_speed_ratios({}); }) == "train_speed_ratios: train.inertias");
  CHECK(refused([] { torsional_modes({}); }) == "torsional_modes: train.inertias");
  const TorsionalTrain spread = plain_train({inertia(1), inertia(1), inertia(1)}, {stiffness(1), stiffness(1e13)});
  CHECK(refused([&] { torsional_modes(spread); }) == "torsional_modes: train");
  CHECK(refused([] { mode_nodes(two(), {hertz(1), {1.0}}); }) == "mode_nodes: mode.amplitudes");
  CHECK(refused([] { two_inertia_frequency(inertia(0), inertia(1), stiffness(1)); }) == "two_inertia_frequency: first");
  CHECK(refused([] { two_inertia_frequency(inertia(1), inertia(0), stiffness(1)); }) ==
        "two_inertia_frequency: second");
  CHECK(refused([] { two_inertia_frequency(inertia(1), inertia(1), stiffness(0)); }) ==
        "two_inertia_frequency: stiffness");
  CHECK(refused([] { equivalent_shaft_length({}, SolidSection(metres(0.05))); }) == "equivalent_shaft_length: steps");
  const SolidSection solid(metres(0.05));
  CHECK(refused([&] {
          equivalent_shaft_length({{solid, metres(0)}}, solid);
        }) == "equivalent_shaft_length: steps.length");
  CHECK(equivalent_shaft_length({{solid, metres(2)}}, solid) == metres(2));
}

TEST_CASE("orders meet natural frequencies at the speeds that they should") {
  const std::vector<ExcitationOrder> orders{{2.0, 0}, {1.0, 1}};
  TorsionalTrain geared = two();
  geared.shafts[0].ratio = 2.0;
  const double w = natural(geared, 1);
  const std::vector<Interference> table = interference_table(geared, orders, {rpm(100), rpm(200)});
  REQUIRE(table.size() == 2);
  for (const Interference& row : table) CHECK_CLOSE(row.critical_speed.value(), 0.5 * w, 1e-13); // both pulse twice
  const AngularSpeed critical = table[0].critical_speed;
  const auto separation = [&](double low, double high) {
    return interference_table(geared, orders, {low * critical, high * critical})[0];
  };
  CHECK(separation(0.9, 1.1).separation == 0.0);
  CHECK_CLOSE(separation(0.5, 0.8).separation, 0.2, 1e-12);
  CHECK_CLOSE(separation(1.3, 1.5).separation, 0.3, 1e-12);
  CHECK(separation(1.3, 1.5).nearest == 1.3 * critical);
  CHECK(table[0].swing > 0.0);
  CHECK(interference_table(plain_train({inertia(1)}, {}), {{2.0, 0}}, {rpm(0), rpm(1)}).empty());
}

TEST_CASE("the interference table refuses what cannot be, by name") {
  const auto table = [](const std::vector<ExcitationOrder>& orders, SpeedRange speeds) {
    return refused([&] { interference_table(two(), orders, speeds); });
  };
  const SpeedRange good{rpm(500), rpm(600)};
  CHECK(table({}, good) == "interference_table: orders");
  CHECK(table({{0.0, 0}}, good) == "interference_table: orders.per_turn");
  CHECK(table({{1.0, 2}}, good) == "interference_table: orders.inertia");
  CHECK(table({{1.0, 0}}, {rpm(-1), rpm(600)}) == "interference_table: speeds.low");
  CHECK(table({{1.0, 0}}, {rpm(0), rpm(0)}) == "interference_table: speeds.high");
  CHECK(table({{1.0, 0}}, {rpm(600), rpm(500)}) == "interference_table: speeds.high");
  CHECK(refused([] { interference_table({}, {{1.0, 0}}, {rpm(0), rpm(1)}); }) == "interference_table: train.inertias");
  CHECK(refused([] { joint_pulse(degrees(90)); }) == "joint_pulse: angle");
  CHECK(refused([] { joint_pulse(degrees(10), 0); }) == "joint_pulse: pulse");
  CHECK(joint_pulse(degrees(0)).value() == 0.0);
}

TEST_CASE("one damped inertia swings as its closed form says") {
  const TorsionalTrain one{{{inertia(2)}}, {}, {{0, stiffness(5000), newton_metre_seconds_per_radian(10)}}};
  for (const double frequency : {1.0, 5.0, 7.957747154594767, 20.0}) {
    const double w = 2.0 * pi * frequency;
    const Swing<Angle> swing = forced_response(one, pulse(frequency, 0, 100)).value.swings[0];
    CHECK_CLOSE(swing.amplitude.value(), 100.0 / std::hypot(5000.0 - 2.0 * w * w, 10.0 * w), 1e-12);
    CHECK_CLOSE(swing.phase.value(), -std::atan2(10.0 * w, 5000.0 - 2.0 * w * w), 1e-10);
  }
}

TEST_CASE("a lead in a slow line twists nothing, and in a fast one the shaft alone") {
  const auto with_lead = [](double frequency) {
    return forced_response(two(), {hertz(frequency), {}, {{0, {radians(0.01), {}}}}}).value;
  };
  CHECK(with_lead(0.001).torques[0].amplitude < newton_metres(1e-4));
  CHECK_CLOSE(with_lead(5000.0).torques[0].amplitude.value(), 50.0, 1e-4);
  // Between: the relative swing of two inertias, w²/(w² - w0²) times the lead.
  const double w = 2.0 * pi * 15.0;
  const double w0 = natural(two(), 1);
  CHECK_CLOSE(with_lead(15.0).torques[0].amplitude.value(), 50.0 * w * w / (w * w - w0 * w0), 1e-12);
}

TEST_CASE("an undamped train at resonance has no end, and play wants the torque to keep its sense") {
  const double resonance = natural(two(), 1) / (2.0 * pi);
  const Validated<ForcedResponse> endless = forced_response(two(), pulse(resonance, 0, 1));
  CHECK(std::string(endless.outside) == outside_undamped);
  CHECK(endless.value.torques[0].amplitude.value() == infinity);
  CHECK(endless.value.swings[1].amplitude.value() == infinity);
  TorsionalTrain loose = two();
  loose.shafts[0].backlash = degrees(1);
  const double swing = forced_response(two(), pulse(5, 0, 100)).value.torques[0].amplitude.value();
  CHECK(!forced_response(loose, pulse(5, 0, 100)).valid());
  CHECK(forced_response(loose, pulse(5, 0, 100), {newton_metres(1.01 * swing)}).valid());
  CHECK(forced_response(loose, pulse(5, 0, 100), {newton_metres(-1.01 * swing)}).valid());
  CHECK(std::string(forced_response(loose, pulse(5, 0, 100), {newton_metres(0.99 * swing)}).outside) ==
        outside_backlash);
  CHECK(forced_response(two(), pulse(5, 0, 100), {newton_metres(0)}).valid());
  CHECK(std::string(torque_keeps_its_sense(loose, {newton_metres(300)}, {newton_metres(350)})) == outside_backlash);
}

TEST_CASE("the forced response refuses what cannot be, by name") {
  const auto response = [](const TorsionalExcitation& excitation, const std::vector<Torque>& steady = {}) {
    return refused([&] { forced_response(two(), excitation, steady); });
  };
  const std::string name = "forced_response: excitation.";
  CHECK(response(pulse(0, 0, 1)) == name + "frequency");
  CHECK(response(pulse(1, 2, 1)) == name + "torques.inertia");
  CHECK(response(pulse(1, 0, -1)) == name + "torques.torque.amplitude");
  CHECK(response({hertz(1), {{0, {newton_metres(1), radians(infinity)}}}, {}}) == name + "torques.torque.phase");
  CHECK(response({hertz(1), {}, {{1, {radians(0.1), {}}}}}) == name + "leads.shaft");
  CHECK(response({hertz(1), {}, {{0, {radians(-0.1), {}}}}}) == name + "leads.lead.amplitude");
  CHECK(response({hertz(1), {}, {{0, {radians(0.1), radians(not_a_number)}}}}) == name + "leads.lead.phase");
  CHECK(response(pulse(1, 0, 1), {newton_metres(1), newton_metres(1)}) == "torque_keeps_its_sense: steady");
  CHECK(response(pulse(1, 0, 1), {newton_metres(infinity)}) == "torque_keeps_its_sense: steady");
  CHECK(refused([] { forced_response({}, pulse(1, 0, 1)); }) == "forced_response: train.inertias");
  CHECK(refused([] { torque_keeps_its_sense(two(), {newton_metres(1)}, {}); }) == "torque_keeps_its_sense: swing");
  CHECK(refused([] { torque_keeps_its_sense(two(), {newton_metres(1)}, {newton_metres(-1)}); }) ==
        "torque_keeps_its_sense: swing");
  CHECK(refused([] { shaft_damping(stiffness(0), 0.02, hertz(10)); }) == "shaft_damping: stiffness");
  CHECK(refused([] { shaft_damping(stiffness(1), 0.0, hertz(10)); }) == "shaft_damping: loss_factor");
  CHECK(refused([] { shaft_damping(stiffness(1), 0.02, hertz(0)); }) == "shaft_damping: frequency");
}

TEST_CASE("an uneven joint twists a soft driveline by its lead, and damping decides near the natural frequency") {
  const auto swing = [](double inertia_behind, double angle, double speed) {
    return joint_torque_swing(stiffness(9000), inertia(inertia_behind), degrees(angle), rpm(speed));
  };
  CHECK_CLOSE(swing(10, 14, 540).value.value(), 145.954, 1e-5);
  CHECK_CLOSE(swing(1e9, 14, 540).value.value(), 9000.0 * joint_pulse(degrees(14)).value(), 1e-9);
  CHECK(swing(10, 0, 540).value == newton_metres(0));
  const double natural_rpm = 0.5 * std::sqrt(900.0) * 30.0 / pi; // two pulses in a turn
  CHECK(!swing(10, 14, 1.05 * natural_rpm).valid());
  CHECK(!swing(10, 14, 0.95 * natural_rpm).valid());
  CHECK(swing(10, 14, 1.15 * natural_rpm).valid());
  CHECK(refused([] { joint_torque_swing(stiffness(0), inertia(1), degrees(1), rpm(1)); }) ==
        "joint_torque_swing: stiffness");
  CHECK(refused([&] { swing(0, 1, 1); }) == "joint_torque_swing: inertia");
  CHECK(refused([&] { swing(1, 90, 1); }) == "joint_torque_swing: angle");
  CHECK(refused([&] { swing(1, 1, 0); }) == "joint_torque_swing: speed");
}

TEST_CASE("many rotations of a pair: in place, none at all, and refused by name") {
  std::vector<double> rotations{0.0, 0.5 * pi, pi};
  joint_pair_speed_ratios(degrees(20), degrees(10), {}, rotations.data(), rotations.data(), 3);
  CHECK_CLOSE(rotations[0], 1.048010521, 1e-9);
  CHECK_CLOSE(rotations[1], 1.0 / 1.048010521, 1e-9);
  CHECK_CLOSE(rotations[2], rotations[0], 1e-14);
  joint_pair_speed_ratios(degrees(20), degrees(10), {}, nullptr, nullptr, 0);
  const auto ratios = [](double front, double rear, double phase, double rotation) {
    double ratio = -1.0;
    const std::string problem =
        refused([&] { joint_pair_speed_ratios(degrees(front), degrees(rear), radians(phase), &rotation, &ratio, 1); });
    if (problem != "nothing") CHECK(ratio == -1.0);
    return problem;
  };
  CHECK(ratios(20, 10, 0, 1e9) == "nothing");
  CHECK(ratios(90, 10, 0, 0) == "joint_pair_speed_ratios: front");
  CHECK(ratios(20, -1, 0, 0) == "joint_pair_speed_ratios: rear");
  CHECK(ratios(20, 10, not_a_number, 0) == "joint_pair_speed_ratios: phase");
  CHECK(ratios(20, 10, 0, infinity) == "joint_pair_speed_ratios: rotations");
}
