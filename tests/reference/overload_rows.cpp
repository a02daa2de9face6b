#include <fieldshaft/overload.hpp>

#include "rows.hpp"

#include <vector>

using namespace fieldshaft;

namespace {

using rows::Json;
using rows::read;
using rows::Row;

ClutchContact contact_of(const Row& row) {
  const std::map<std::string, ClutchContact> contacts = {{"uniform_wear", ClutchContact::uniform_wear},
                                                         {"uniform_pressure", ClutchContact::uniform_pressure}};
  return contacts.at(row.given("contact").get<std::string>());
}
int whole(const Row& row, const std::string& name) { return row.given(name).get<int>(); }
Length outer(const Row& row) { return row.get<Length>("outer_radius"); }
Length inner(const Row& row) { return row.get<Length>("inner_radius"); }

void expect_engagement(const Row& row, const ClutchEngagement& engagement) {
  CHECK(engagement.locks);
  row.expect("time", engagement.time);
  row.expect("heat", engagement.heat);
  row.expect("speed", engagement.speed);
}
void expect_band(const Row& row, const TorqueBand& band) {
  row.expect("low", band.low);
  row.expect("high", band.high);
}

const std::map<std::string, rows::Runner> clutches = {
    {"disc_clutch_torque",
     [](const Row& row) {
       row.expect("value", disc_clutch_torque(outer(row), inner(row), row.get<Force>("axial_force"),
                                              row.get<double>("friction"), whole(row, "surfaces"), contact_of(row)));
     }},
    {"disc_clutch_force",
     [](const Row& row) {
       row.expect("value", disc_clutch_force(outer(row), inner(row), row.get<Torque>("torque"),
                                             row.get<double>("friction"), whole(row, "surfaces"), contact_of(row)));
     }},
    {"disc_clutch_pressure",
     [](const Row& row) {
       row.expect("value",
                  disc_clutch_pressure(outer(row), inner(row), row.get<Force>("axial_force"), contact_of(row)));
     }},
    {"disc_clutch_force_at_pressure",
     [](const Row& row) {
       row.expect("value",
                  disc_clutch_force_at_pressure(outer(row), inner(row), row.get<Stress>("pressure"), contact_of(row)));
     }},
    {"spring_force",
     [](const Row& row) {
       row.expect("value",
                  spring_force(whole(row, "springs"), row.get<ForcePerLength>("rate"), row.get<Length>("compression")));
     }},
    {"spring_compression",
     [](const Row& row) {
       const Validated<Length> compression =
           spring_compression(row.get<Force>("force"), whole(row, "springs"), row.get<ForcePerLength>("rate"),
                              row.get<Length>("compression_at_bind"));
       CHECK(compression.valid());
       row.expect("value", compression.value);
     }},
};

const std::map<std::string, rows::Runner> slips = {
    {"clutch_engagement",
     [](const Row& row) {
       expect_engagement(row, clutch_engagement(row.get<MomentOfInertia>("inertia"), row.get<AngularSpeed>("speed"),
                                                row.get<Torque>("clutch_torque"), row.get<Torque>("load_torque")));
     }},
    {"free_clutch_engagement",
     [](const Row& row) {
       expect_engagement(row,
                         free_clutch_engagement(
                             row.get<MomentOfInertia>("driving_inertia"), row.get<AngularSpeed>("driving_speed"),
                             row.get<MomentOfInertia>("driven_inertia"), row.get<AngularSpeed>("driven_speed"),
                             row.get<Torque>("clutch_torque"), row.get_or<Torque>("drive_torque", newton_metres(0))));
     }},
    {"clutch_temperature_rise",
     [](const Row& row) {
       row.expect("value", clutch_temperature_rise(row.get<Energy>("heat"), row.get<Mass>("mass")));
     }},
    {"slip_power",
     [](const Row& row) {
       row.expect("value", slip_power(row.get<Torque>("clutch_torque"), row.get<AngularSpeed>("slip_speed")));
     }},
    {"slip_time_for_rise",
     [](const Row& row) {
       row.expect("value", slip_time_for_rise(row.get<Torque>("clutch_torque"), row.get<AngularSpeed>("slip_speed"),
                                              row.get<Mass>("mass"), row.get<TemperatureDifference>("rise")));
     }},
};

const std::map<std::string, rows::Runner> bolts = {
    {"shear_bolt_torque",
     [](const Row& row) {
       row.expect("value",
                  shear_bolt_torque(row.get<Length>("diameter"), row.get<Length>("arm"),
                                    row.get<Stress>("shear_strength"), whole(row, "bolts"), whole(row, "planes")));
     }},
    {"shear_bolt_diameter",
     [](const Row& row) {
       row.expect("value",
                  shear_bolt_diameter(row.get<Torque>("torque"), row.get<Length>("arm"),
                                      row.get<Stress>("shear_strength"), whole(row, "bolts"), whole(row, "planes")));
     }},
    {"shear_bolt_band",
     [](const Row& row) {
       expect_band(row,
                   shear_bolt_band(row.get<Length>("diameter"), row.get<Length>("arm"), row.get<Stress>("ultimate_min"),
                                   row.get<Stress>("ultimate_max"), whole(row, "bolts"), whole(row, "planes")));
     }},
    {"thread_stress_diameter",
     [](const Row& row) {
       const bool inch = row.has("system") && row.given("system") == "unified_inch";
       const Length diameter = thread_stress_diameter(row.get<Length>("diameter"), row.get<Length>("pitch"),
                                                      inch ? ThreadSystem::unified_inch : ThreadSystem::iso_metric);
       row.expect("area", Area(pi / 4.0 * diameter * diameter));
     }},
};

const std::map<std::string, rows::Runner> settings = {
    {"referred_inertia",
     [](const Row& row) {
       row.expect("value", referred_inertia(row.get<MomentOfInertia>("inertia"), row.get<double>("ratio")));
     }},
    {"overrun_torque",
     [](const Row& row) {
       row.expect("value", overrun_torque(row.get<MomentOfInertia>("inertia"), row.get<AngularSpeed>("speed"),
                                          row.get<Time>("stopping_time"), row.get<Torque>("friction_torque")));
     }},
    {"overrun_coast",
     [](const Row& row) {
       const OverrunCoast coast = overrun_coast(row.get<MomentOfInertia>("inertia"), row.get<AngularSpeed>("speed"),
                                                row.get<Torque>("friction_torque"), row.get<Torque>("windage_torque"),
                                                row.get<Torque>("clutch_drag"));
       row.expect("time", coast.time);
       row.expect("angle", coast.angle);
       row.expect("energy", coast.energy);
     }},
    {"cut_out_torque", [](const Row& row) { expect_band(row, cut_out_torque(row.get<Torque>("trip_torque"))); }},
    {"torque_band",
     [](const Row& row) { expect_band(row, torque_band(row.get<Torque>("nominal"), row.get<double>("scatter"))); }},
    {"device_window",
     [](const Row& row) {
       std::vector<ChainPart> parts;
       for (const Json& part : row.given("parts")) {
         parts.push_back(
             {part.at(0).get_ref<const std::string&>(), read<Torque>(part.at(1)), read<double>(part.at(2))});
       }
       const DeviceWindow window =
           device_window(row.get<Torque>("peak_working_torque"), parts, row.get<double>("scatter"),
                         row.get<double>("work_margin"), row.get<double>("strength_margin"));
       row.expect("lowest", window.lowest);
       row.expect("highest", window.highest);
       row.expect("weakest", static_cast<double>(window.weakest));
       row.expect("weakest_torque", window.weakest_torque);
       row.expect("open", window.open() ? 1.0 : 0.0);
     }},
};

} // namespace

TEST_CASE("reference rows of overload") {
  std::map<std::string, rows::Runner> all = clutches;
  for (const auto& group : {slips, bolts, settings}) all.insert(group.begin(), group.end());
  rows::run("overload", all);
}
