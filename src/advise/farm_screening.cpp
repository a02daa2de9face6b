#include "advise/farm_screening.hpp"

#include "advise/farm_set_up.hpp"
#include "assess/checks.hpp"
#include "assess/interface.hpp"
#include "assess/loads.hpp"
#include "assess/need.hpp"
#include "assess/place.hpp"
#include "assess/speed.hpp"

#include <algorithm>
#include <cstring>
#include <limits>
#include <numeric>
#include <unordered_map>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

template <class Q> double value_or_unknown(const Stated<Q>& quantity) { return quantity ? quantity->value() : unknown; }

std::int32_t spline_number(const assessing::ResolvedInterface& interface) {
  if (!interface.stated) return spline_unstated;
  return interface.type == nullptr ? spline_unidentified : interface.type->number;
}

/// The checks of an assessment, run on a case of which only one side is stated.
class OneSide {
public:
  explicit OneSide(const Case& value) : value_(value) {}

  OneSide& run(void (*checks)(const Case&, assessing::Findings&)) {
    assessing::Findings findings(assessment_);
    checks(value_, findings);
    return *this;
  }
  /// The worst of some of the checks that were run. One that was not examined counts nothing.
  VerdictCode worst_of(std::initializer_list<Check> checks) const {
    VerdictCode code;
    for (const Check check : checks) {
      const Finding* finding = assessment_.find(check);
      if (finding != nullptr) code = worse(code, {finding->status, check});
    }
    return code;
  }

private:
  const Case& value_;
  Assessment assessment_;
};

RotationNumber rotation_number(const Stated<Rotation>& rotation) {
  if (!rotation) return rotation_unknown;
  return *rotation == Rotation::clockwise ? rotation_clockwise : rotation_counter_clockwise;
}

LeverState lever_state(const assessing::ResolvedInterface& stub, const PtoGear* gear) {
  if (stub.type == nullptr || gear == nullptr || !gear->pto_speed) return LeverState::not_known;
  return is_nominal_speed(*gear->pto_speed, stub.type->nominal_speed) ? LeverState::agrees : LeverState::disagrees;
}

} // namespace

TractorSide tractor_side(const FarmTractor& tractor, const PairSetUp& set_up, Stated<HitchKind> hitch) {
  Case value;
  set_up_tractor(tractor, set_up, hitch, value);
  const assessing::ResolvedInterface stub = assessing::resolve(value.tractor.pto.stub);
  const PtoGear* gear = assessing::selected_gear(value);
  TractorSide side{unknown,
                   unknown,
                   unknown,
                   unknown,
                   unknown,
                   unknown,
                   unknown,
                   spline_number(stub),
                   lever_state(stub, gear),
                   rotation_unknown,
                   0,
                   {},
                   {}};
  if (const auto rotation = assessing::rotation_of(value.tractor.pto)) side.rotation = rotation_number(rotation->value);
  side.rotation_stated = value.tractor.pto.rotation ? 1 : 0;
  if (gear != nullptr && gear->pto_speed) side.pto_speed = gear->pto_speed->value();
  if (gear != nullptr && gear->pto_speed && stub.type != nullptr) {
    const RecommendedPowers powers = recommended_power(*stub.type, *gear->pto_speed);
    if (powers.known()) {
      side.recommended_low = powers.lowest().value().value();
      side.recommended_high = powers.highest().value().value();
    }
  }
  if (const auto power = assessing::tractor_power(value).greatest) {
    side.pto_low = power->low.value();
    side.pto_high = power->high.value();
  }
  if (gear != nullptr) {
    if (const auto power = assessing::gear_power(value, *gear).available) {
      side.gear_low = power->low.value();
      side.gear_high = power->high.value();
    }
  }
  OneSide one(value);
  one.run(assessing::check_place)
      .run(assessing::check_power)
      .run(assessing::check_drawbar)
      .run(assessing::check_guards);
  side.own = one.worst_of({Check::pto_place, Check::drawbar_distance, Check::master_shield});
  if (value.tractor.pto.drive == PtoDrive::ground) side.own = worse(side.own, {Status::not_known, Check::pto_speed});
  side.doubted = one.worst_of({Check::tractor_power_through_interface});
  return side;
}

ImplementSide implement_side(const FarmImplement& implement, const FarmDriveline* driveline) {
  Case value;
  set_up_implement(implement, driveline, value);
  ImplementSide side{value_or_unknown(implement.machine.input_speed),
                     unknown,
                     unknown,
                     unknown,
                     unknown,
                     value_or_unknown(implement.machine.permitted_power),
                     spline_number(assessing::resolve(value.driveline.tractor_yoke)),
                     rotation_number(implement.machine.rotation),
                     {}};
  if (implement.machine.input_speed) {
    side.speed_tolerance = assessing::speed_tolerance(*implement.machine.input_speed).value();
  }
  if (const auto need = assessing::need_of(implement.machine).power) {
    side.need_mean = need->mean.value();
    side.need = need->high.value();
  }
  side.kept_share = 1.0 - assessing::wanted_reserve(value);
  OneSide one(value);
  one.run(assessing::check_adaptor).run(assessing::check_guards);
  side.own = one.worst_of({Check::adaptor, Check::driveline_guard, Check::input_guard});
  return side;
}

namespace {

bool known(double value) noexcept { return value == value; }

/// A value against a band, as `assess` compares them; unknown if one of them is.
VerdictCode at_most(Check check, double value, double strictest, double loosest) noexcept {
  if (!known(value) || !known(strictest) || !known(loosest)) return {Status::not_known, check};
  if (value <= strictest) return {};
  return {value <= loosest ? Status::caution : Status::stop, check};
}

/// The same for a need with a range: ok where its high end is, a stop where its mean is.
VerdictCode need_at_most(Check check, const ImplementSide& implement, double strictest, double loosest) noexcept {
  const VerdictCode high = at_most(check, implement.need, strictest, loosest);
  const bool softer = high.status() == Status::stop && implement.need_mean <= loosest;
  return softer ? VerdictCode{Status::caution, check} : high;
}

VerdictCode speed_code(const TractorSide& tractor, const ImplementSide& implement) noexcept {
  if (!known(tractor.pto_speed) || !known(implement.speed)) return {Status::not_known, Check::pto_speed};
  const double off = tractor.pto_speed - implement.speed;
  const bool match = (off < 0.0 ? -off : off) <= implement.speed_tolerance;
  return match ? VerdictCode{} : VerdictCode{Status::stop, Check::pto_speed};
}

VerdictCode lever_code(const TractorSide& tractor, const ImplementSide& implement) {
  if (tractor.lever == LeverState::agrees) return {};
  if (tractor.lever == LeverState::not_known) return {Status::not_known, Check::stub_and_lever};
  const bool as_implement = known(implement.speed) && is_nominal_speed(AngularSpeed::from_value(tractor.pto_speed),
                                                                       AngularSpeed::from_value(implement.speed));
  return {as_implement ? Status::caution : Status::stop, Check::stub_and_lever};
}

VerdictCode fit_code(std::int32_t stub, std::int32_t yoke) noexcept {
  if (stub < 0 || yoke < 0) return {Status::not_known, Check::spline_fit};
  return stub == yoke ? VerdictCode{} : VerdictCode{Status::stop, Check::spline_fit};
}

VerdictCode rotation_code(const TractorSide& tractor, const ImplementSide& implement) noexcept {
  const bool asked = tractor.rotation_stated == 1 || implement.rotation != rotation_unknown;
  if (!asked) return {};
  const bool known = tractor.rotation != rotation_unknown && implement.rotation != rotation_unknown;
  if (!known) return {Status::not_known, Check::pto_rotation};
  return tractor.rotation == implement.rotation ? VerdictCode{} : VerdictCode{Status::stop, Check::pto_rotation};
}

VerdictCode permitted_code(const TractorSide& tractor, const ImplementSide& implement) noexcept {
  const bool even_low = implement.permitted < tractor.pto_low;
  const double loosest = even_low ? implement.permitted : std::max(implement.permitted, tractor.pto_high);
  return at_most(Check::permitted_power, tractor.pto_high, implement.permitted, loosest);
}

} // namespace

VerdictCode screened(const TractorSide& tractor, const ImplementSide& implement) noexcept {
  const VerdictCode speed = speed_code(tractor, implement);
  if (speed.status() == Status::stop) return speed; // no code is worse than a stop of the first check
  VerdictCode code = worse(speed, worse(tractor.own, implement.own));
  code = worse(code, lever_code(tractor, implement));
  code = worse(code, fit_code(tractor.stub, implement.yoke));
  code = worse(code, rotation_code(tractor, implement));
  code = worse(code, permitted_code(tractor, implement));
  code = worse(code, tractor.doubted);
  code =
      worse(code, need_at_most(Check::interface_power, implement, tractor.recommended_low, tractor.recommended_high));
  return worse(
      code, need_at_most(Check::power_reserve, implement, tractor.gear_low * implement.kept_share, tractor.gear_high));
}

// The matrix -----------------------------------------------------------------------------------------------

namespace {

constexpr std::size_t kinds = 3; // hung on the drawbar, on the linkage, unstated

std::size_t kind_number(Stated<HitchKind> kind) noexcept {
  if (!kind) return 2;
  return *kind == HitchKind::drawbar ? 0 : 1;
}
Stated<HitchKind> kind_of_number(std::size_t number) noexcept {
  if (number == 2) return std::nullopt;
  return number == 0 ? HitchKind::drawbar : HitchKind::three_point;
}

void append_bytes(std::string& key, double value) {
  char bytes[sizeof value];
  std::memcpy(bytes, &value, sizeof value);
  key.append(bytes, sizeof value);
}
void append_code(std::string& key, VerdictCode code) {
  key += static_cast<char>(code.status());
  key += static_cast<char>(code.governing().value_or(Check::pto_speed));
}
void append_bytes(std::string& key, const TractorSide& side) {
  for (const double value : {side.pto_speed, side.recommended_low, side.recommended_high, side.gear_low, side.gear_high,
                             side.pto_low, side.pto_high}) {
    append_bytes(key, value);
  }
  key += static_cast<char>(side.stub);
  key += static_cast<char>(side.lever);
  key += static_cast<char>(side.rotation);
  key += static_cast<char>(side.rotation_stated);
  append_code(key, side.own);
  append_code(key, side.doubted);
}
void append_bytes(std::string& key, const ImplementSide& side) {
  for (const double value :
       {side.speed, side.speed_tolerance, side.need_mean, side.need, side.kept_share, side.permitted}) {
    append_bytes(key, value);
  }
  key += static_cast<char>(side.yoke);
  key += static_cast<char>(side.rotation);
  append_code(key, side.own);
}

/// Lists of sides, one list for each machine; equal lists are kept once.
template <class Side> class Groups {
public:
  void add(std::size_t machine, const std::vector<Side>& sides) {
    std::string key;
    for (const Side& side : sides) append_bytes(key, side);
    const auto [found, fresh] = known_.try_emplace(std::move(key), machines_.size());
    if (fresh) {
      sides_.insert(sides_.end(), sides.begin(), sides.end());
      starts_.push_back(sides_.size());
      machines_.emplace_back();
    }
    machines_[found->second].push_back(machine);
  }
  std::size_t size() const noexcept { return machines_.size(); }
  const Side* begin_of(std::size_t group) const noexcept { return sides_.data() + starts_[group]; }
  const Side* end_of(std::size_t group) const noexcept { return sides_.data() + starts_[group + 1]; }
  const std::vector<std::size_t>& machines(std::size_t group) const noexcept { return machines_[group]; }

private:
  std::vector<Side> sides_;
  std::vector<std::size_t> starts_{0};
  std::vector<std::vector<std::size_t>> machines_;
  std::unordered_map<std::string, std::size_t> known_;
};

/// Machines are prepared in blocks of this many, so that a task is worth handing to a thread.
constexpr std::size_t block_size = 64;

/// One list of sides for each machine, made by the executor and put together in order.
template <class Side, class Make>
Groups<Side> groups_of(const std::vector<std::size_t>& machines, const Executor& executor, Make make) {
  std::vector<std::vector<Side>> lists(machines.size());
  executor((machines.size() + block_size - 1) / block_size, [&](std::size_t block) {
    const std::size_t end = std::min(machines.size(), (block + 1) * block_size);
    for (std::size_t i = block * block_size; i < end; ++i) lists[i] = make(machines[i]);
  });
  Groups<Side> groups;
  for (std::size_t i = 0; i < machines.size(); ++i) groups.add(machines[i], lists[i]);
  return groups;
}

std::vector<TractorSide> sides_of_tractor(const FarmTractor& tractor, Stated<HitchKind> kind) {
  std::vector<TractorSide> sides;
  for (const PairSetUp& set_up : tractor_set_ups(tractor, kind)) sides.push_back(tractor_side(tractor, set_up, kind));
  return sides;
}

std::vector<ImplementSide> sides_of_implement(const Farm& farm, std::size_t implement,
                                              const DrivelinesOfImplements& drivelines) {
  std::vector<ImplementSide> sides;
  for (const std::size_t place : drivelines.of(implement)) {
    sides.push_back(implement_side(farm.implements[implement], driveline_at(farm, place)));
  }
  return sides;
}

VerdictCode best_code(const Groups<TractorSide>& tractors, std::size_t tractor, const Groups<ImplementSide>& implements,
                      std::size_t implement) noexcept {
  VerdictCode best(Status::stop, Check::pto_speed); // the worst there is
  for (const TractorSide* front = tractors.begin_of(tractor); front != tractors.end_of(tractor); ++front) {
    for (const ImplementSide* rear = implements.begin_of(implement); rear != implements.end_of(implement); ++rear) {
      best = std::min(best, screened(*front, *rear));
    }
  }
  return best;
}

/// Compares every group of tractors with every group of implements and writes the answer for all of their machines.
void fill_matrix(const Groups<TractorSide>& tractors, const Groups<ImplementSide>& implements, const Executor& executor,
                 VerdictMatrix& matrix) {
  executor(tractors.size(), [&](std::size_t tractor) {
    VerdictCode* const first = matrix.row(tractors.machines(tractor).front());
    for (std::size_t group = 0; group < implements.size(); ++group) {
      const VerdictCode code = best_code(tractors, tractor, implements, group);
      for (const std::size_t implement : implements.machines(group)) first[implement] = code;
    }
    for (const std::size_t other : tractors.machines(tractor)) {
      VerdictCode* const row = matrix.row(other);
      if (row == first) continue;
      for (std::size_t group = 0; group < implements.size(); ++group) {
        for (const std::size_t implement : implements.machines(group)) row[implement] = first[implement];
      }
    }
  });
}

} // namespace

VerdictMatrix screened_matrix(const Farm& farm, const Executor& executor) {
  VerdictMatrix matrix(farm.tractors.size(), farm.implements.size());
  const DrivelinesOfImplements drivelines(farm);
  std::vector<std::size_t> tractors(farm.tractors.size());
  std::iota(tractors.begin(), tractors.end(), std::size_t{0});
  std::array<std::vector<std::size_t>, kinds> of_kind;
  for (std::size_t i = 0; i < farm.implements.size(); ++i) of_kind[kind_number(farm.implements[i].hitch)].push_back(i);
  for (std::size_t number = 0; number < kinds; ++number) {
    if (of_kind[number].empty()) continue;
    const Stated<HitchKind> kind = kind_of_number(number);
    const auto fronts = groups_of<TractorSide>(tractors, executor,
                                               [&](std::size_t i) { return sides_of_tractor(farm.tractors[i], kind); });
    const auto rears = groups_of<ImplementSide>(of_kind[number], executor,
                                                [&](std::size_t i) { return sides_of_implement(farm, i, drivelines); });
    fill_matrix(fronts, rears, executor, matrix);
  }
  return matrix;
}

} // namespace advising

VerdictMatrix verdict_matrix(const Farm& farm, StudyDepth depth, const Executor& executor) {
  if (depth == StudyDepth::screening) return advising::screened_matrix(farm, executor);
  VerdictMatrix matrix(farm.tractors.size(), farm.implements.size());
  const std::size_t implements = farm.implements.size();
  executor(farm.tractors.size() * implements, [&](std::size_t pair) {
    const std::size_t tractor = pair / implements;
    matrix.row(tractor)[pair % implements] = verdict_code(study_pair(farm, tractor, pair % implements).assessment);
  });
  return matrix;
}

} // namespace v0
} // namespace fieldshaft
