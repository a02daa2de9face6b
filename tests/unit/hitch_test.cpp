#include <fieldshaft/hitch.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
}

TEST_CASE("the pin of a drawbar lies behind and below the shaft end") {
  const Position pin = pin_position({inches(14), millimetres(20), inches(8)});
  CHECK(pin.forward() == -inches(14));
  CHECK(pin.left() == millimetres(20));
  CHECK(pin.up() == -inches(8));
  const Pose pose = trailed_pose({inches(14), Length{}, inches(8)}, {degrees(10), {}, {}});
  CHECK(pose.pin.forward() == -inches(14));
  CHECK(pose.attitude.yaw == degrees(10));
  CHECK_THROWS_AS(pin_position({-inches(14), Length{}, inches(8)}), InputError);
  CHECK_THROWS_AS(pin_position({metres(not_a_number), Length{}, inches(8)}), InputError);
  CHECK_THROWS_AS(pin_position({inches(14), metres(not_a_number), inches(8)}), InputError);
  CHECK_THROWS_AS(pin_position({inches(14), Length{}, metres(not_a_number)}), InputError);
}

namespace {

ThreePointLinkage ordinary_linkage() {
  ThreePointLinkage l;
  l.lower_pivot_behind = millimetres(-250);
  l.lower_pivot_below = millimetres(150);
  l.lower_link = millimetres(880);
  l.top_pivot_behind = millimetres(-150);
  l.top_pivot_below = millimetres(-350);
  l.mast_height = millimetres(610);
  l.span = millimetres(825);
  l.convergence = millimetres(2000);
  l.top_link = top_link_for(l, millimetres(-100));
  return l;
}

/// Lower and top links of equal length, pivots as far apart as mast and lower points: a parallelogram.
ThreePointLinkage parallel_linkage() {
  ThreePointLinkage l;
  l.lower_pivot_below = millimetres(200);
  l.lower_link = millimetres(800);
  l.top_pivot_below = millimetres(-300);
  l.top_link = millimetres(800);
  l.mast_height = millimetres(500);
  return l;
}

Position mast_top(const ThreePointLinkage& l, const Pose& pose) {
  return in_tractor(pose, Position(l.mast_forward, Length{}, l.mast_height));
}

} // namespace

TEST_CASE("four-bar: refused inputs") {
  const auto bars = [](double a, double b, double c, double d, double angle) {
    return four_bar_angles(metres(a), metres(b), metres(c), metres(d), degrees(angle), FourBarBranch::open);
  };
  CHECK_THROWS_AS(bars(0, 1, 1, 1, 0), InputError);
  CHECK_THROWS_AS(bars(1, -1, 1, 1, 0), InputError);
  CHECK_THROWS_AS(bars(1, 1, not_a_number, 1, 0), InputError);
  CHECK_THROWS_AS(bars(1, 1, 1, 0, 0), InputError);
  CHECK_THROWS_AS(bars(1, 1, 1, 1, not_a_number), InputError);
  CHECK_THROWS_AS(bars(1, 1, 1, 5, 0), InputError);
}

TEST_CASE("parallel links lift without pitching") {
  const ThreePointLinkage l = parallel_linkage();
  for (const double lift : {-300.0, 0.0, 250.0, 500.0}) {
    const Pose pose = mounted_pose(l, {millimetres(lift), {}, {}});
    CHECK(math::abs(pose.attitude.pitch).value() < 1e-12);
    CHECK_CLOSE(pose.pin.up().value() + 1.0, (millimetres(lift) - l.lower_pivot_below).value() + 1.0, 1e-14);
  }
  CHECK(math::abs(transport_pitch(l, millimetres(400))).value() < 1e-12);
  CHECK_CLOSE(top_link_for(l, millimetres(123)).value(), 0.8, 1e-14);
}

TEST_CASE("a mounted pose keeps every link's length") {
  const ThreePointLinkage l = ordinary_linkage();
  const Position lower(-l.lower_pivot_behind, Length{}, -l.lower_pivot_below);
  const Position top(-l.top_pivot_behind, Length{}, -l.top_pivot_below);
  for (int lift = -400; lift <= 600; lift += 50) {
    const Pose pose = mounted_pose(l, {millimetres(lift), {}, {}});
    CHECK_CLOSE(distance(lower, pose.pin).value(), l.lower_link.value(), 1e-13);
    CHECK_CLOSE(distance(top, mast_top(l, pose)).value(), l.top_link.value(), 1e-13);
  }
  CHECK(math::abs(mounted_pose(l, {millimetres(-100), {}, {}}).attitude.pitch).value() < 1e-12); // set level there
  CHECK(transport_pitch(l, millimetres(500)) > degrees(5)); // links that converge forwards tip the rear up
}

TEST_CASE("the top link for a pitch gives that pitch") {
  ThreePointLinkage l = ordinary_linkage();
  l.mast_forward = millimetres(-60);
  for (const double pitch : {-6.0, 0.0, 4.0}) {
    l.top_link = top_link_for(l, millimetres(150), degrees(pitch));
    CHECK(mounted_pose(l, {millimetres(150), {}, {}}).attitude.pitch.value() ==
          doctest::Approx(degrees(pitch).value()).epsilon(1e-10));
  }
}

TEST_CASE("sway to the left swings the rear further left, a higher left link rolls the implement") {
  const ThreePointLinkage l = ordinary_linkage();
  const Pose pose = mounted_pose(l, {Length{}, millimetres(100), millimetres(80)});
  CHECK(pose.pin.left() == millimetres(100));
  CHECK_CLOSE(pose.attitude.yaw.value(), -std::asin(0.05), 1e-14);
  CHECK_CLOSE(pose.attitude.roll.value(), std::asin(80.0 / 825.0), 1e-14);
  // The lower hitch points stay at the convergence distance from the point where the links meet.
  const Pose straight = mounted_pose(l, {});
  const Position meeting = straight.pin + Position(l.convergence, Length{}, Length{});
  CHECK_CLOSE(distance(meeting, pose.pin).value(), l.convergence.value(), 1e-13);
}

TEST_CASE("a quick coupler moves the implement's own hitch points back and up") {
  ThreePointLinkage l = ordinary_linkage();
  const Pose without = mounted_pose(l, {millimetres(-100), {}, {}});
  l.coupler_depth = millimetres(100);
  l.coupler_rise = millimetres(20);
  const Pose with = mounted_pose(l, {millimetres(-100), {}, {}});
  CHECK((without.pin - with.pin).forward().value() == doctest::Approx(0.1));
  CHECK((with.pin - without.pin).up().value() == doctest::Approx(0.02));
}

TEST_CASE("a slack top link: the wheels decide the pitch and the link must reach") {
  const ThreePointLinkage l = ordinary_linkage();
  const SupportWheel wheel{metres(2), millimetres(450), millimetres(550)};
  const SlackPose level = slack_pose(l, wheel, millimetres(-100)); // hitch points 450 mm above ground
  CHECK(math::abs(level.pose.attitude.pitch).value() < 1e-12);
  CHECK_CLOSE(level.top_link.value(), l.top_link.value(), 1e-12);
  for (const double lift : {-200.0, 0.0, 100.0}) {
    const SlackPose s = slack_pose(l, wheel, millimetres(lift));
    const Position foot = in_tractor(s.pose, Position(-wheel.behind, Length{}, -wheel.below));
    CHECK_CLOSE((foot.up() + l.lower_pivot_below + wheel.ground_below_pivot).value() + 1.0, 1.0, 1e-13);
    CHECK((s.pose.attitude.pitch < Angle{}) == (lift > -100.0)); // lifted: front end up
    const Position top(-l.top_pivot_behind, Length{}, -l.top_pivot_below);
    CHECK_CLOSE(distance(top, mast_top(l, s.pose)).value(), s.top_link.value(), 1e-13);
  }
  CHECK_THROWS_AS(slack_pose(l, {metres(0), {}, {}}, Length{}), InputError);
  CHECK_THROWS_AS(slack_pose(l, {metres(0.3), {}, metres(1)}, Length{}), InputError);
  CHECK_THROWS_AS(slack_pose(l, {metres(2), metres(-1), metres(1)}, Length{}), InputError);
  CHECK_THROWS_AS(slack_pose(l, {metres(2), metres(1), metres(not_a_number)}, Length{}), InputError);
}

TEST_CASE("linkages that cannot close and heights out of reach are refused with the height") {
  const ThreePointLinkage l = ordinary_linkage();
  CHECK_THROWS_WITH_AS(mounted_pose(l, {millimetres(900), {}, {}}),
                       "mounted_pose: lift = 0.9 m; allowed: from -0.88 m to 0.88 m, both included", InputError);
  ThreePointLinkage longer = l;
  longer.top_link = metres(3);
  CHECK_THROWS_WITH_AS(mounted_pose(longer, {millimetres(100), {}, {}}),
                       "mounted_pose: lift = 0.1 m; allowed: a height at which the linkage closes", InputError);
  // Links 1 m long and level, a mast of 0.5 m above pivots that lie where its top comes to stand.
  ThreePointLinkage met;
  met.lower_link = metres(1);
  met.mast_height = metres(0.5);
  met.top_pivot_behind = metres(1);
  met.top_pivot_below = metres(-0.5);
  CHECK_THROWS_WITH_AS(top_link_for(met, Length{}), doctest::Contains("top_link_for: top link = 0 m"), InputError);
  const auto broken = [&l](Length ThreePointLinkage::*member, double value) {
    ThreePointLinkage other = l;
    other.*member = metres(value);
    return other;
  };
  for (Length ThreePointLinkage::*member :
       {&ThreePointLinkage::lower_pivot_behind, &ThreePointLinkage::lower_pivot_below, &ThreePointLinkage::lower_link,
        &ThreePointLinkage::top_pivot_behind, &ThreePointLinkage::top_pivot_below, &ThreePointLinkage::top_link,
        &ThreePointLinkage::mast_height, &ThreePointLinkage::mast_forward, &ThreePointLinkage::span,
        &ThreePointLinkage::convergence, &ThreePointLinkage::coupler_depth, &ThreePointLinkage::coupler_rise})
    CHECK_THROWS_AS(mounted_pose(broken(member, not_a_number), {}), InputError);
  CHECK_THROWS_AS(mounted_pose(broken(&ThreePointLinkage::lower_link, 0), {}), InputError);
  CHECK_THROWS_AS(mounted_pose(broken(&ThreePointLinkage::convergence, 0), {{}, millimetres(50), {}}), InputError);
  CHECK_THROWS_AS(mounted_pose(broken(&ThreePointLinkage::span, 0), {{}, {}, millimetres(50)}), InputError);
  CHECK_THROWS_AS(mounted_pose(l, {{}, metres(3), {}}), InputError);
  CHECK_THROWS_AS(mounted_pose(l, {{}, {}, metres(1)}), InputError);
  CHECK_THROWS_AS(mounted_pose(l, {metres(not_a_number), {}, {}}), InputError);
  CHECK_THROWS_AS(top_link_for(l, metres(1)), InputError);
  CHECK_THROWS_AS(top_link_for(l, Length{}, degrees(not_a_number)), InputError);
}

TEST_CASE("a semi-mounted machine steers behind its headstock") {
  const Pose headstock{Position(metres(-0.8), Length{}, metres(-0.3)), {{}, degrees(4), {}}};
  const Position pivot(metres(-0.5), Length{}, metres(0.1));
  const Pose straight = steered_pose(headstock, pivot, Angle{});
  CHECK(distance(straight.pin, in_tractor(headstock, pivot)).value() == 0.0);
  CHECK(straight.attitude.pitch.value() == doctest::Approx(degrees(4).value()));
  const Pose turned = steered_pose(headstock, pivot, degrees(-40));
  const Position rear = in_tractor(turned, Position(metres(-2), Length{}, Length{}));
  CHECK(rear.left() > metres(1)); // left turn: its rear swings to the tractor's left
  // The pivot's axis stays that of the headstock.
  const Direction axis = in_tractor(headstock, Direction(0, 0, 1));
  CHECK(angle_between(axis, in_tractor(turned, Direction(0, 0, 1))).value() < 1e-12);
}

TEST_CASE("ranges from what can be measured") {
  CHECK_CLOSE(in(steady_turn_angle(metres(5), metres(0.9), metres(3)), unit::degree), 46.39718102729637, 1e-13);
  CHECK_CLOSE(steady_turn_angle(metres(5), Length{}, metres(5)).value(), pi / 2, 1e-14);
  CHECK_THROWS_AS(steady_turn_angle(metres(3), metres(1), metres(3.2)), InputError);
  CHECK_THROWS_AS(steady_turn_angle(metres(0), metres(1), metres(1)), InputError);
  CHECK_THROWS_AS(steady_turn_angle(metres(3), metres(-1), metres(1)), InputError);
  CHECK_THROWS_AS(steady_turn_angle(metres(3), metres(1), metres(not_a_number)), InputError);
  const WheelPlaces wheels{metres(2.5), metres(0.9), metres(3), metres(0.5)};
  CHECK(hollow_pitch(wheels, metres(20)) > degrees(12));
  CHECK(crest_pitch(wheels, metres(20)) < degrees(-11));
  CHECK(math::abs(hollow_pitch(wheels, metres(1e6))).value() < 1e-5);
  CHECK_THROWS_AS(hollow_pitch(wheels, metres(1)), InputError);
  CHECK_THROWS_AS(crest_pitch(wheels, metres(not_a_number)), InputError);
  CHECK_THROWS_AS(hollow_pitch({metres(0), {}, metres(3), {}}, metres(20)), InputError);
  CHECK_THROWS_AS(hollow_pitch({metres(2), metres(-1), metres(3), {}}, metres(20)), InputError);
  CHECK_THROWS_AS(hollow_pitch({metres(2), {}, metres(0), {}}, metres(20)), InputError);
  CHECK_THROWS_AS(hollow_pitch({metres(2), {}, metres(3), metres(-1)}, metres(20)), InputError);
  // A tongue longer than the hollow is wide: no wheel behind it finds the ground.
  CHECK_THROWS_WITH_AS(hollow_pitch({metres(2), {}, metres(9), {}}, metres(3)),
                       doctest::Contains("hollow_pitch: cosine of the triangle of pin, wheel and centre = "),
                       InputError);
  CHECK_CLOSE(in(wheel_drop_roll(millimetres(250), metres(1.8)), unit::degree), 7.983556145555409, 1e-13);
  CHECK_THROWS_AS(wheel_drop_roll(metres(2), metres(1.8)), InputError);
  CHECK_THROWS_AS(wheel_drop_roll(metres(0.1), metres(0)), InputError);
  CHECK_CLOSE(in(side_slope_roll(0.0, 0.2), unit::degree), 11.309932474020213, 1e-13);
  CHECK(side_slope_roll(0.15, 0.15) == Angle{});
  CHECK_THROWS_AS(side_slope_roll(not_a_number, 0.2), InputError);
  CHECK_THROWS_AS(side_slope_roll(0.2, not_a_number), InputError);
}

TEST_CASE("categories: narrow ones have the span of the next smaller, and every datum has a standing") {
  for (int number = 1; number <= 4; ++number) {
    const HitchCategory wide = hitch_category(number);
    const HitchCategory narrow = hitch_category(number, true);
    if (number > 1) CHECK(narrow.span.value() == hitch_category(number - 1).span.value());
    CHECK(narrow.mast_height.value() == wide.mast_height.value());
    CHECK(narrow.span.value() < wide.span.value());
    CHECK(wide.convergence.value().low < wide.convergence.value().high);
    CHECK(is_remembered(wide.least_movement.source().standing));
  }
  CHECK(hitch_category(2).span.value() == millimetres(825));
  CHECK(hitch_category(2).mast_height.source().standing == Standing::published);
  CHECK(hitch_category(3).lower_pin.source().standing == Standing::common_practice);
  CHECK(hitch_category(1, true).span.value() == inches(20));
  CHECK_THROWS_AS(hitch_category(0), InputError);
  CHECK_THROWS_AS(hitch_category(5), InputError);
}
