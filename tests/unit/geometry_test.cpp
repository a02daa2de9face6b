#include <fieldshaft/geometry.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double rounding = 1e-15; // a few roundings of numbers near 1

Pose turned(const Attitude& attitude) { return {Position(), attitude}; }

bool same(const Position& a, const Position& b) { return distance(a, b).value() <= rounding; }

} // namespace

TEST_CASE("a position keeps metres and names its axes") {
  const Position p(metres(1.0), inches(2.0), millimetres(3.0));
  CHECK(p.forward() == metres(1.0));
  CHECK(p.left() == inches(2.0));
  CHECK(p.up() == millimetres(3.0));
  CHECK(same(p + p, 2.0 * p));
  CHECK(same(p - p, Position()));
  CHECK(same(-p, Position() - p));
  CHECK(distance(Position(metres(1), metres(2), metres(3)), Position(metres(4), metres(6), metres(3))) == metres(5));
  CHECK_THROWS_WITH_AS(Position(metres(not_a_number), metres(0), metres(0)),
                       "Position: forward = nan m; allowed: a finite number", InputError);
  CHECK_THROWS_AS(Position(metres(0), metres(not_a_number), metres(0)), InputError);
  CHECK_THROWS_AS(Position(metres(0), metres(0), metres(std::numeric_limits<double>::infinity())), InputError);
}

TEST_CASE("a direction has length one and angles between directions keep their digits") {
  CHECK(Direction(0, 3, 4).up() == 0.8);
  CHECK(Direction().forward() == 1.0);
  CHECK_THROWS_AS(Direction(0, 0, 0), InputError);
  CHECK_THROWS_AS(Direction(not_a_number, 0, 0), InputError);
  CHECK_CLOSE(angle_between(Direction(), Direction(0, 1, 0)).value(), pi / 2, rounding);
  CHECK_CLOSE(angle_between(Direction(), -Direction()).value(), pi, rounding);
  const Angle tiny = radians(1e-9); // the arc cosine of the scalar product would give 0
  CHECK_CLOSE(angle_between(Direction(), Direction::ahead(tiny, Angle{})).value(), 1e-9, 1e-12);
  const Direction rising = Direction::ahead(degrees(90), degrees(30));
  CHECK_CLOSE(rising.left(), std::cos(pi / 6), rounding);
  CHECK_CLOSE(rising.up(), 0.5, 1e-15);
  CHECK(same(along(Position(), Direction(0, 0, 2), metres(3)), Position(metres(0), metres(0), metres(3))));
}

TEST_CASE("yaw below 0: the tractor turns left, so the implement's rear swings to the tractor's left") {
  const Position rear(metres(-2), metres(0), metres(0));
  const Position seen = in_tractor(turned({degrees(-30), {}, {}}), rear);
  CHECK(seen.left().value() == doctest::Approx(1.0));
  CHECK(seen.forward().value() == doctest::Approx(-std::sqrt(3.0)));
}

TEST_CASE("pitch above 0: a hollow, the implement's front end goes down") {
  const Position front(metres(1), metres(0), metres(0));
  CHECK(in_tractor(turned({{}, degrees(10), {}}), front).up() < metres(0));
  CHECK(in_tractor(turned({{}, degrees(-10), {}}), front).up() > metres(0));
}

TEST_CASE("roll above 0: the implement's left side goes up") {
  const Position left(metres(0), metres(1), metres(0));
  CHECK(in_tractor(turned({{}, {}, degrees(10)}), left).up() > metres(0));
}

TEST_CASE("the three turns are applied in the order roll, pitch, yaw") {
  const Position p =
      in_tractor(turned({degrees(90), degrees(90), degrees(90)}), Position(metres(0), metres(1), metres(0)));
  // Left goes up by roll, up goes forward by pitch, forward goes left by yaw.
  CHECK(same(p, Position(metres(0), metres(1), metres(0))));
  const Pose pose{Position(metres(-0.4), metres(0.1), metres(-0.2)), {degrees(20), degrees(-7), degrees(5)}};
  const Position q(metres(-1.5), metres(0.3), metres(0.4));
  CHECK(same(in_implement(pose, in_tractor(pose, q)), q));
  CHECK(same(in_tractor(pose, Position()), pose.pin));
  CHECK_THROWS_AS(rotation({degrees(not_a_number), {}, {}}), InputError);
  CHECK_THROWS_AS(rotation({{}, degrees(not_a_number), {}}), InputError);
  CHECK_THROWS_AS(rotation({{}, {}, degrees(not_a_number)}), InputError);
}

TEST_CASE("a mirrored pose carries a mirrored point to the mirrored place, bit by bit") {
  const Pose pose{Position(metres(-0.4), metres(0.1), metres(-0.2)), {degrees(20), degrees(-7), degrees(5)}};
  const Position p(metres(-1.5), metres(0.3), metres(0.4));
  const Position one = mirrored(in_tractor(pose, p));
  const Position other = in_tractor(mirrored(pose), mirrored(p));
  CHECK(one.metres() == other.metres());
  const Direction d(0.9, 0.1, -0.2);
  CHECK(mirrored(in_tractor(pose, d)).unit() == in_tractor(mirrored(pose), mirrored(d)).unit());
}

TEST_CASE("a range holds what lies in its intervals and keeps its couplings") {
  AttitudeRange range{either_side(degrees(60)), {degrees(-5), degrees(10)}, either_side(degrees(10)), {}};
  CHECK(contains(range, {degrees(60), degrees(10), degrees(-10)}));
  CHECK_FALSE(contains(range, {degrees(61), {}, {}}));
  CHECK_FALSE(contains(range, {{}, degrees(-6), {}}));
  range = with_less_roll_at_full_turn(range, 0.5);
  CHECK(range.couplings.size() == 4);
  for (const double side : {-1.0, 1.0}) {
    for (const double turn : {-1.0, 1.0}) {
      CHECK(contains(range, {{}, {}, side * degrees(10)}));
      CHECK(contains(range, {turn * degrees(60), {}, side * degrees(4.999)}));
      CHECK_FALSE(contains(range, {turn * degrees(60), {}, side * degrees(5.001)}));
      CHECK(contains(range, {turn * degrees(30), {}, side * degrees(7.499)}));
      CHECK_FALSE(contains(range, {turn * degrees(30), {}, side * degrees(7.501)}));
    }
  }
}

TEST_CASE("ranges that cannot be are refused with their name") {
  const AttitudeRange good{either_side(degrees(60)), {}, either_side(degrees(10)), {}};
  CHECK_THROWS_AS(with_less_roll_at_full_turn(good, 1.5), InputError);
  CHECK_THROWS_AS(with_less_roll_at_full_turn(good, not_a_number), InputError);
  AttitudeRange one_sided = good;
  one_sided.yaw = {degrees(10), degrees(20)};
  CHECK_THROWS_AS(with_less_roll_at_full_turn(one_sided, 0.5), InputError);
  AttitudeRange leaning = good;
  leaning.roll = {degrees(5), degrees(10)};
  CHECK_THROWS_WITH_AS(with_less_roll_at_full_turn(leaning, 0.5),
                       doctest::Contains("with_less_roll_at_full_turn: roll = 0 rad"), InputError);
  AttitudeRange reversed = good;
  reversed.pitch = {degrees(1), degrees(-1)};
  CHECK_THROWS_WITH_AS(check::attitude_range(reversed, "f"),
                       "f: pitch = -0.0174532925 rad; allowed: a finite number, at least 0.0174532925 rad", InputError);
  AttitudeRange wide = good;
  wide.roll = either_side(degrees(181));
  CHECK_THROWS_AS(check::attitude_range(wide, "f"), InputError);
  AttitudeRange coupled = good;
  coupled.couplings.push_back({not_a_number, 0, 0, {}});
  CHECK_THROWS_AS(check::attitude_range(coupled, "f"), InputError);
}

TEST_CASE("a mirrored range holds the mirrored attitudes") {
  AttitudeRange range{{degrees(-20), degrees(60)}, {degrees(-5), degrees(10)}, {degrees(-3), degrees(10)}, {}};
  range.couplings.push_back({0.1, 0.2, 1.0, degrees(9)});
  const AttitudeRange other = mirrored(range);
  for (const Attitude& a : {Attitude{degrees(50), degrees(3), degrees(2)}, Attitude{degrees(-30), {}, {}},
                            Attitude{degrees(60), degrees(10), degrees(9)}, Attitude{{}, {}, degrees(-4)}}) {
    CHECK(contains(range, a) == contains(other, mirrored(a)));
  }
}

TEST_CASE("the attitude of a matrix is the one it was made from") {
  for (const Attitude& a : {Attitude{degrees(30), degrees(-20), degrees(10)},
                            Attitude{degrees(-170), degrees(89), degrees(-80)}, Attitude{}}) {
    const Attitude back = attitude_of(rotation(a));
    CHECK(back.yaw.value() == doctest::Approx(a.yaw.value()));
    CHECK(back.pitch.value() == doctest::Approx(a.pitch.value()));
    CHECK(back.roll.value() == doctest::Approx(a.roll.value()));
  }
  const Attitude upright = attitude_of(rotation({degrees(20), degrees(90), degrees(5)}));
  CHECK(upright.roll == Angle{});
  CHECK((rotation(upright) - rotation({degrees(20), degrees(90), degrees(5)})).norm() < 1e-12);
}
