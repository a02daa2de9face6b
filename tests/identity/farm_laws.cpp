// Laws of farm studies over random farms.

#include <fieldshaft/fieldshaft.hpp>

#include "farms.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace fieldshaft;

namespace {

/// The verdict of an assessment on the screened checks alone.
VerdictCode code_on_screened_checks(const Assessment& assessment) {
  VerdictCode code;
  for (const Check check : screened_checks) {
    const Finding* finding = assessment.find(check);
    if (finding != nullptr) code = worse(code, {finding->status, check});
  }
  return code;
}

} // namespace

TEST_CASE("a screening says the same as whole assessments on the checks that it looks at") {
  RandomInputs random;
  std::size_t pairs = 0;
  std::array<std::size_t, 4> seen{};
  for (int round = 0; round < 40; ++round) {
    const Farm farm = random_farms::farm_of(random, 6, 6);
    const VerdictMatrix matrix = verdict_matrix(farm, StudyDepth::screening);
    for (std::size_t t = 0; t < farm.tractors.size(); ++t) {
      for (std::size_t i = 0; i < farm.implements.size(); ++i) {
        VerdictCode best(Status::stop, Check::pto_speed);
        for (const PairSetUp& set_up : pair_set_ups(farm, t, i)) {
          best = std::min(best, code_on_screened_checks(assess(case_of(farm, t, i, set_up))));
        }
        CAPTURE(farm.tractors[t].machine.name);
        CAPTURE(farm.implements[i].machine.name);
        CHECK(matrix.at(t, i) == best);
        ++seen[static_cast<std::size_t>(best.status())];
        ++pairs;
      }
    }
  }
  MESSAGE(pairs << " pairs: " << seen[0] << " ok, " << seen[1] << " caution, " << seen[2] << " not known, " << seen[3]
                << " stop");
  CHECK(*std::min_element(seen.begin(), seen.end()) > 0);
}
