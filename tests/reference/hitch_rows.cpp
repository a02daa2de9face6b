#include <fieldshaft/hitch.hpp>

#include "rows.hpp"

using namespace fieldshaft;
using rows::Row;

namespace {

void expect_four_bar(const Row& row) {
  const auto length = [&row](const char* name) { return row.get<Length>(name); };
  const FourBarBranch branch =
      row.given("branch").get<std::string>() == "open" ? FourBarBranch::open : FourBarBranch::crossed;
  const FourBarAngles angles = four_bar_angles(length("crank"), length("coupler"), length("rocker"), length("ground"),
                                               row.get<Angle>("crank_angle"), branch);
  row.expect("coupler", angles.coupler);
  row.expect("rocker", angles.rocker);
}

} // namespace

TEST_CASE("reference rows of hitch") {
  rows::run("hitch",
            {
                {"four_bar_angles", expect_four_bar},
                {"steady_turn_angle",
                 [](const Row& row) {
                   row.expect("value", steady_turn_angle(row.get<Length>("radius"), row.get<Length>("overhang"),
                                                         row.get<Length>("tongue")));
                 }},
                {"wheel_drop_roll",
                 [](const Row& row) {
                   row.expect("value", wheel_drop_roll(row.get<Length>("drop"), row.get<Length>("track")));
                 }},
                {"side_slope_roll",
                 [](const Row& row) {
                   row.expect("value",
                              side_slope_roll(row.get<double>("tractor_slope"), row.get<double>("implement_slope")));
                 }},
            });
}
