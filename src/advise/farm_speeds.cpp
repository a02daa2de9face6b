#include "advise/farm_speeds.hpp"

#include "assess/need.hpp"

#include <fieldshaft/pto.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

bool is_made_for(const FarmImplement& implement, AngularSpeed speed) {
  return implement.machine.input_speed && is_nominal_speed(*implement.machine.input_speed, speed);
}

bool has_speed(const std::vector<PtoGear>& gears, AngularSpeed speed) {
  return std::any_of(gears.begin(), gears.end(),
                     [&](const PtoGear& gear) { return gear.pto_speed && is_nominal_speed(*gear.pto_speed, speed); });
}

bool brings(const FarmOption& option, AngularSpeed speed) {
  return has_speed(option.gears, speed) ||
         std::any_of(option.implements.begin(), option.implements.end(),
                     [&](const FarmImplement& i) { return is_made_for(i, speed); }) ||
         std::any_of(option.tractors.begin(), option.tractors.end(),
                     [&](const FarmTractor& t) { return has_speed(t.machine.pto.gears, speed); });
}

/// More power than any edition recommends for a six-spline stub at 540 r/min: at 1000 the torque would be about half.
bool overloads_a_stub(const FarmImplement& implement) {
  const auto need = assessing::need_of(implement.machine).power;
  if (!is_made_for(implement, rpm(540)) || !need) return false;
  return need->low > recommended_power(pto_type(1), rpm(540)).highest().value();
}

SpeedNeed need_of(const SpeedAnswer& answer) {
  if (answer.implements.empty()) return SpeedNeed::not_needed;
  if (!answer.not_run.empty()) return SpeedNeed::to_run_at_all;
  return answer.single.empty() ? SpeedNeed::covered : SpeedNeed::for_backup;
}

SpeedAnswer answer_for(const Farm& farm, const FarmStudy& study, AngularSpeed speed) {
  SpeedAnswer answer;
  answer.speed = speed;
  for (std::size_t t = 0; t < farm.tractors.size(); ++t) {
    if (has_speed(farm.tractors[t].machine.pto.gears, speed)) answer.tractors.push_back(t);
  }
  for (std::size_t i = 0; i < farm.implements.size(); ++i) {
    if (overloads_a_stub(farm.implements[i]) && speed > rpm(540)) answer.overloaded.push_back(i);
    if (!is_made_for(farm.implements[i], speed)) continue;
    answer.implements.push_back(i);
    if (study.backup.runners[i] == 0) answer.not_run.push_back(i);
    if (study.backup.runners[i] == 1) answer.single.push_back(i);
  }
  for (std::size_t o = 0; o < farm.options.size(); ++o) {
    if (brings(farm.options[o], speed)) answer.options.push_back(o);
  }
  answer.need = need_of(answer);
  return answer;
}

} // namespace

std::vector<SpeedAnswer> speed_answers(const Farm& farm, const FarmStudy& study) {
  std::vector<SpeedAnswer> answers;
  for (const auto& nominal : nominal_pto_speeds) {
    SpeedAnswer answer = answer_for(farm, study, nominal.value);
    // 1000 is answered on every farm: it is the question that is asked.
    const bool asked = is_nominal_speed(nominal.value, rpm(1000));
    if (asked || !answer.tractors.empty() || !answer.implements.empty() || !answer.options.empty()) {
      answers.push_back(std::move(answer));
    }
  }
  return answers;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
