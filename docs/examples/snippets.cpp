// The pieces of C++ that README and handbook show, compiled and run; a test compares the pages with this file.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/materials.hpp>
#include <fieldshaft/power.hpp>
#include <fieldshaft/units.hpp>
#include <fieldshaft/units/text.hpp>

#include <cmath>
#include <fstream>
#include <iostream>
#include <iterator>

namespace {

int read_and_report(const std::string& case_text) {
  // clang-format off
  using namespace fieldshaft;
  const CaseReading reading = try_read_case(case_text);            // a JSON document, every quantity text with its unit
  for (const CaseProblem& problem : reading.problems) std::cerr << problem.message() << '\n';
  if (!reading.result) return 2;
  const Assessment assessment = assess(*reading.result);           // findings: value, limit, margin, source, status
  std::cout << to_text(assessment);                                // or to_markdown, to_html, to_json
  const Status verdict = assessment.verdict();                     // ok, caution, not_known or stop
  return verdict == Status::ok || verdict == Status::caution ? 0 : 1;
  // clang-format on
}

bool one_formula() {
  const fieldshaft::Torque torque = fieldshaft::shaft_torque(fieldshaft::horsepower(90), fieldshaft::rpm(540));
  return std::fabs(fieldshaft::in(torque, fieldshaft::unit::newton_metre) - 1186.818) <
         1e-3; // 90 * 745.69987 / 56.548668
}

bool units() {
  // clang-format off
  using namespace fieldshaft;
  const Power power = horsepower(85);          // mechanical horsepower, 550 ft lbf/s = 745.69987158227022 W
  const Power other = metric_horsepower(85);   // 75 kgf m/s = 735.49875 W; never the same name
  const AngularSpeed speed = rpm(540);         // 56.548667764616276 rad/s, to the last digit
  const double kilowatts_of_it = in(power, unit::kilowatt);
  // clang-format on
  return std::fabs(kilowatts_of_it - 63.384489) < 1e-6 && other < power && speed.value() == 56.548667764616276;
}

bool text() {
  // clang-format off
  using namespace fieldshaft;
  const Length diameter = parse<Length>("1 3/8 in");
  const Measured<Length> pin = parse_measured<Length>("600 mm ± 10 mm");
  to_string(amount_of(shaft_torque(kilowatts(50), rpm(540))), UnitStyle::us);   // "652 lbf·ft"
  // clang-format on
  return diameter == inches(1.375) && std::fabs(in(pin.value, unit::millimetre) - 600.0) < 1e-9 &&
         to_string(amount_of(shaft_torque(kilowatts(50), rpm(540))), UnitStyle::us) == "652 lbf·ft";
}

std::size_t farm_page(const std::string& text) {
  // clang-format off
  using namespace fieldshaft;
  const Farm farm = read_farm(text);                 // throws CaseError with every problem of the document
  FarmStudySettings settings;
  settings.remedies = true;                          // search what would bring the other pairs to work
  const FarmStudy study = study_farm(farm, settings);
  std::cout << to_text(study);                       // or to_markdown, to_html, to_json
  // clang-format on
  return study.tractors.size();
}

std::size_t farm_on_threads(const fieldshaft::Farm& farm) {
  using namespace fieldshaft;
  FarmStudySettings settings;
  settings.executor = thread_executor(2);
  const FarmStudy study = study_farm(farm, settings);
  return study.tractors.size();
}

bool impossible_input() {
  using namespace fieldshaft;
  try {
    shaft_torque(kilowatts(50), rpm(0));
  } catch (const InputError& error) {
    std::cerr << error.what() << '\n'; // also error.parameter(), error.value(), error.allowed()
    return error.parameter() == "speed";
  }
  return false;
}

bool own_material_and_machine() {
  using namespace fieldshaft;
  const Material steel =
      make_material("stub of the shop", "by its mill certificate", megapascals(950), megapascals(800));
  const Machine machine =
      make_machine("bale shredder of the shop", kilowatts(6), {}, kilowatt_hours_per_tonne(2.5), FeedBasis::wet, 0.25);
  const ImplementPower need = implement_power(machine, {}, {tonnes_per_hour(10), FeedBasis::wet});
  return shear_yield(steel) < megapascals(462) && std::fabs(in(need.mean, unit::kilowatt) - 31.0) < 1e-9;
}

std::string text_of(const char* path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

/// snippets CASE FARM: exit status 0 if every piece gives what the pages say.
int main(int argc, char** argv) {
  if (argc != 3) return 2;
  fieldshaft::Farm farm = fieldshaft::read_farm(text_of(argv[2]));
  farm.tractors.resize(1); // one pair is enough to show a study
  farm.implements.resize(1);
  farm.drivelines.clear();
  farm.options.clear();
  const bool right = read_and_report(text_of(argv[1])) == 0 && one_formula() && units() && text() &&
                     impossible_input() && own_material_and_machine() && farm_page(fieldshaft::write_farm(farm)) == 1 &&
                     farm_on_threads(farm) == 1;
  return right ? 0 : 1;
}
