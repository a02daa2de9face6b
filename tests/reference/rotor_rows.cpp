#include <fieldshaft/rotor.hpp>

#include "rows.hpp"

using namespace fieldshaft;

namespace {

Flight flight_of(const rows::Row& row) {
  return throw_flight(row.get<Speed>("launch_speed"), row.get<Angle>("launch_angle"), row.get<Length>("launch_height"),
                      row.get<Mass>("mass"), row.get<Area>("area"), row.get<double>("drag_coefficient"),
                      row.get<Density>("air_density"), row.get_or<Acceleration>("gravity", standard_gravity));
}

void check_flight(const rows::Row& row) {
  const Flight flight = flight_of(row);
  row.expect("distance", flight.distance);
  row.expect("time", flight.time);
  row.expect("top", flight.top);
  row.expect("landing_speed", flight.landing_speed);
}

void check_distance(const rows::Row& row) {
  const Length distance =
      throw_distance(row.get<Speed>("launch_speed"), row.get<Angle>("launch_angle"), row.get<Length>("launch_height"),
                     row.get<Mass>("mass"), row.get<Area>("area"), row.get<double>("drag_coefficient"),
                     row.get<Density>("air_density"), row.get_or<Acceleration>("gravity", standard_gravity));
  row.expect("value", distance);
  CHECK(distance == flight_of(row).distance);
}

void check_farthest(const rows::Row& row) {
  const FarthestFlight farthest =
      farthest_throw(row.get<Speed>("launch_speed"), row.get<Length>("launch_height"), row.get<Mass>("mass"),
                     row.get<Area>("area"), row.get<double>("drag_coefficient"), row.get<Density>("air_density"));
  row.expect("distance", farthest.flight.distance);
}

void check_ratios(const rows::Row& row) {
  const OverspeedRatios ratios = overspeed_ratios(row.get<AngularSpeed>("rated_speed"), row.get<AngularSpeed>("speed"));
  row.expect("speed", ratios.speed);
  row.expect("energy", ratios.energy);
  row.expect("air_power", ratios.air_power);
  row.expect("torque_for_same_power", ratios.torque_for_same_power);
  row.expect("gearing_for_same_tip_speed", ratios.gearing_for_same_tip_speed);
}

void check_disc(const rows::Row& row) {
  row.expect("value", disc_hoop_stress(row.get<Length>("inner_radius"), row.get<Length>("outer_radius"),
                                       row.get<AngularSpeed>("speed"), row.get<Density>("density"),
                                       row.get<double>("poisson_ratio")));
}

void check_tip_speed(const rows::Row& row) {
  row.expect("value", tip_speed(row.get<AngularSpeed>("speed"), row.get<Length>("radius")));
}

void check_speed_for_tip_speed(const rows::Row& row) {
  row.expect("value", speed_for_tip_speed(row.get<Speed>("tip_speed"), row.get<Length>("radius")));
}

void check_wrapped_length(const rows::Row& row) {
  row.expect("value",
             wrapped_length(row.get<AngularSpeed>("speed"), row.get<Length>("radius"), row.get<Time>("reaction_time")));
}

void check_object_energy(const rows::Row& row) {
  row.expect("value", object_energy(row.get<Mass>("mass"), row.get<Speed>("speed")));
}

void check_object_speed(const rows::Row& row) {
  row.expect("value", object_speed_bound(row.get<Speed>("tip_speed"), row.get<double>("restitution")));
}

void check_blade_pull(const rows::Row& row) {
  row.expect("value", blade_pull(row.get<Mass>("mass"), row.get<Length>("radius"), row.get<AngularSpeed>("speed")));
}

void check_ring(const rows::Row& row) {
  row.expect("value", ring_hoop_stress(row.get<Speed>("rim_speed"), row.get<Density>("density")));
}

void check_rotor_energy(const rows::Row& row) {
  row.expect("value", rotor_energy(row.get<MomentOfInertia>("inertia"), row.get<AngularSpeed>("speed")));
}

void check_round_body(const rows::Row& row) {
  row.expect("value", round_body_area(row.get<Mass>("mass"), row.get<Density>("density")));
}

} // namespace

TEST_CASE("reference rows of rotor") {
  rows::run("rotor", {{"tip_speed", check_tip_speed},
                      {"speed_for_tip_speed", check_speed_for_tip_speed},
                      {"wrapped_length", check_wrapped_length},
                      {"overspeed_ratios", check_ratios},
                      {"object_energy", check_object_energy},
                      {"object_speed_bound", check_object_speed},
                      {"blade_pull", check_blade_pull},
                      {"ring_hoop_stress", check_ring},
                      {"disc_hoop_stress", check_disc},
                      {"rotor_energy", check_rotor_energy},
                      {"round_body_area", check_round_body},
                      {"throw_flight", check_flight},
                      {"throw_distance", check_distance},
                      {"farthest_throw", check_farthest}});
}
