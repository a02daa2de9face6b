// Laws of farm studies over random farms.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>

#include "farms.hpp"
#include "random.hpp"

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

namespace {

/// A matrix of random verdicts, many of them good ones.
VerdictMatrix random_matrix(RandomInputs& random, std::size_t tractors, std::size_t implements) {
  VerdictMatrix matrix(tractors, implements);
  for (std::size_t t = 0; t < tractors; ++t) {
    for (std::size_t i = 0; i < implements; ++i) {
      matrix.row(t)[i] = {static_cast<Status>(random.whole(0, 3)), static_cast<Check>(random.whole(0, 20))};
    }
  }
  return matrix;
}

/// Implements that none of the tractors runs which are left.
std::vector<std::size_t> still_without(const VerdictMatrix& matrix, const std::vector<std::size_t>& down) {
  std::vector<std::size_t> still;
  for (std::size_t i = 0; i < matrix.implements(); ++i) {
    bool runs = false;
    for (std::size_t t = 0; t < matrix.tractors(); ++t) {
      const bool up = std::find(down.begin(), down.end(), t) == down.end();
      runs = runs || (up && matrix.runs(t, i));
    }
    if (!runs) still.push_back(i);
  }
  return still;
}

const Standstill* find_standstill(const std::vector<Standstill>& list, const std::vector<std::size_t>& tractors) {
  for (const Standstill& entry : list) {
    if (entry.tractors == tractors) return &entry;
  }
  return nullptr;
}

std::vector<std::size_t> together(std::vector<std::size_t> all, const Standstill* more) {
  if (more != nullptr) all.insert(all.end(), more->implements.begin(), more->implements.end());
  std::sort(all.begin(), all.end());
  return all;
}

} // namespace

TEST_CASE("standstills read off the matrix are those of taking the tractors away") {
  RandomInputs random;
  for (int round = 0; round < 200; ++round) {
    const VerdictMatrix matrix = random_matrix(random, 5, 7);
    const Backup backup = backup_of(matrix);
    CHECK(backup.never == still_without(matrix, {}));
    for (std::size_t a = 0; a < 5; ++a) {
      const auto one = together(backup.never, find_standstill(backup.singles, {a}));
      CHECK(one == still_without(matrix, {a}));
      for (std::size_t b = a + 1; b < 5; ++b) {
        auto two = together(one, find_standstill(backup.singles, {b}));
        two = together(two, find_standstill(backup.pairs, {a, b}));
        CHECK(two == still_without(matrix, {a, b}));
      }
    }
  }
}

TEST_CASE("another tractor never takes a backup away") {
  RandomInputs random;
  for (int round = 0; round < 60; ++round) {
    Farm farm = random_farms::farm_of(random, 5, 6);
    const Backup before = backup_of(verdict_matrix(farm, StudyDepth::screening));
    farm.tractors.push_back(random_farms::tractor_of(random, 6));
    const Backup after = backup_of(verdict_matrix(farm, StudyDepth::screening));
    for (std::size_t i = 0; i < 6; ++i) CHECK(after.runners[i] >= before.runners[i]);
    CHECK(after.never.size() <= before.never.size());
  }
}

TEST_CASE("the order of machines, gears and drivelines does not change a verdict") {
  RandomInputs random;
  for (int round = 0; round < 60; ++round) {
    const Farm farm = random_farms::farm_of(random, 5, 6);
    Farm turned = farm;
    std::reverse(turned.tractors.begin(), turned.tractors.end());
    std::reverse(turned.implements.begin(), turned.implements.end());
    std::reverse(turned.drivelines.begin(), turned.drivelines.end());
    for (FarmTractor& tractor : turned.tractors) {
      std::reverse(tractor.machine.pto.gears.begin(), tractor.machine.pto.gears.end());
      std::reverse(tractor.machine.pto.other_stubs.begin(), tractor.machine.pto.other_stubs.end());
    }
    const VerdictMatrix one = verdict_matrix(farm, StudyDepth::screening);
    const VerdictMatrix two = verdict_matrix(turned, StudyDepth::screening);
    for (std::size_t t = 0; t < 5; ++t) {
      for (std::size_t i = 0; i < 6; ++i) CHECK(one.at(t, i) == two.at(4 - t, 5 - i));
    }
  }
}

TEST_CASE("every executor gives the same matrix, and equal machines the same verdicts") {
  RandomInputs random;
  Farm farm = random_farms::farm_of(random, 150, 130);
  for (int i = 0; i < 40; ++i) { // machines that are there already, under other names
    farm.tractors.push_back(farm.tractors[static_cast<std::size_t>(i)]);
    farm.tractors.back().machine.name = "twin " + std::to_string(i);
  }
  const VerdictMatrix in_turn = verdict_matrix(farm, StudyDepth::screening);
  for (const unsigned threads : {1U, 2U, 3U, 7U}) {
    const VerdictMatrix shared = verdict_matrix(farm, StudyDepth::screening, thread_executor(threads));
    for (std::size_t t = 0; t < farm.tractors.size(); ++t) {
      CHECK(std::equal(in_turn.row(t), in_turn.row(t) + in_turn.implements(), shared.row(t)));
    }
  }
  for (std::size_t twin = 0; twin < 40; ++twin) {
    CHECK(std::equal(in_turn.row(twin), in_turn.row(twin) + in_turn.implements(), in_turn.row(150 + twin)));
  }
}

TEST_CASE("a whole assessment is never better than the screening") {
  RandomInputs random;
  for (int round = 0; round < 4; ++round) {
    const Farm farm = random_farms::farm_of(random, 3, 4);
    const VerdictMatrix whole = verdict_matrix(farm, StudyDepth::certified);
    const VerdictMatrix screened = verdict_matrix(farm, StudyDepth::screening);
    for (std::size_t t = 0; t < 3; ++t) {
      for (std::size_t i = 0; i < 4; ++i) CHECK(!(whole.at(t, i) < screened.at(t, i)));
    }
  }
}
