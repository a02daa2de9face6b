// The published engagements of overload.json again, by simulation in place of the closed form.

#include "rows.hpp"

#include <fieldshaft/dynamics.hpp>

using namespace fieldshaft;

namespace {

LineBody body(MomentOfInertia inertia, AngularSpeed speed) { return {"body", inertia, speed}; }

/// A drive that pulls alike at every speed, or a friction that holds back.
void drive_by(LineBody& body, Torque torque) {
  if (torque.value() < 0.0) body.load.friction = -torque;
  if (torque.value() > 0.0) body.drive = EngineDrive{EngineLine({{rpm(1), torque}, {rpm(9000), torque}}, rpm(9001)), 1};
}

void compare(const rows::Row& row, const PtoLine& line) {
  SimulationSettings settings;
  settings.duration = seconds(700);
  const SimulationResult result = simulate(line, settings);
  REQUIRE(result.complete);
  REQUIRE(result.links[0].locked_at);
  row.expect("time", *result.links[0].locked_at);
  row.expect("heat", result.links[0].heat);
  settings.duration = *result.links[0].locked_at;
  row.expect("speed", simulate(line, settings).bodies[1].speed);
}

void held_drive(const rows::Row& row) {
  PtoLine line{
      {body(kilogram_square_metres(1), row.get<AngularSpeed>("speed")), body(row.get<MomentOfInertia>("inertia"), {})},
      {LineClutch{row.get<Torque>("clutch_torque")}}};
  line.bodies[0].drive = HeldSpeed{};
  line.bodies[1].load.friction = row.get<Torque>("load_torque");
  compare(row, line);
}

void free_drive(const rows::Row& row) {
  PtoLine line{{body(row.get<MomentOfInertia>("driving_inertia"), row.get<AngularSpeed>("driving_speed")),
                body(row.get<MomentOfInertia>("driven_inertia"), row.get<AngularSpeed>("driven_speed"))},
               {LineClutch{row.get<Torque>("clutch_torque")}}};
  drive_by(line.bodies[0], row.get_or("drive_torque", newton_metres(0)));
  line.bodies[1].load.friction = row.get_or("load_torque", newton_metres(0));
  compare(row, line);
}

} // namespace

TEST_CASE("published engagements by simulation") {
  std::ifstream file(std::string(FIELDSHAFT_ROWS_DIR) + "/overload.json");
  REQUIRE(file.good());
  const rows::Json table = rows::Json::parse(file);
  int compared = 0;
  for (const rows::Json& row : table) {
    const std::string formula = row.at("formula");
    CAPTURE(row.at("id").get<std::string>());
    if (formula == "clutch_engagement") held_drive(rows::Row(row));
    if (formula == "free_clutch_engagement") free_drive(rows::Row(row));
    compared += formula == "clutch_engagement" || formula == "free_clutch_engagement";
  }
  CHECK(compared >= 9);
}
