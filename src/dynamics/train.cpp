#include <fieldshaft/dynamics/train.hpp>

#include <cmath>
#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace {

void check_index(std::size_t index, const TorsionalTrain& train, const char* function, const char* parameter) {
  const std::size_t count = train.inertias.size();
  if (index >= count) {
    fail_input(function, parameter, std::to_string(index), "an index below " + std::to_string(count));
  }
}

void check_parts(const TorsionalTrain& train, const char* function) {
  if (train.inertias.empty()) fail_input(function, "train.inertias", "none", "at least one");
  for (const TrainInertia& mass : train.inertias) {
    check::positive(mass.inertia.value(), {function, "train.inertias.inertia", "kg·m²"});
    check::not_negative(mass.drag.value(), {function, "train.inertias.drag", "N·m·s/rad"});
  }
  for (const TrainShaft& shaft : train.shafts) {
    check_index(shaft.from, train, function, "train.shafts.from");
    check_index(shaft.to, train, function, "train.shafts.to");
    if (shaft.from == shaft.to) {
      fail_input(function, "train.shafts.to", std::to_string(shaft.to), "another inertia than train.shafts.from");
    }
    check::positive(shaft.stiffness.value(), {function, "train.shafts.stiffness", "N·m/rad"});
    check::positive(shaft.ratio, {function, "train.shafts.ratio", ""});
    check::not_negative(shaft.damping.value(), {function, "train.shafts.damping", "N·m·s/rad"});
    check::not_negative(shaft.backlash.value(), {function, "train.shafts.backlash", "rad"});
  }
  for (const TrainAnchor& anchor : train.anchors) {
    check_index(anchor.inertia, train, function, "train.anchors.inertia");
    check::positive(anchor.stiffness.value(), {function, "train.anchors.stiffness", "N·m/rad"});
    check::not_negative(anchor.damping.value(), {function, "train.anchors.damping", "N·m·s/rad"});
  }
}

/// Walks along the shafts from the first inertia; 0 stands for an inertia that no shaft has reached.
std::vector<double> walked_ratios(const TorsionalTrain& train) {
  std::vector<double> speed(train.inertias.size(), 0.0);
  speed.front() = 1.0;
  for (bool reached_more = true; reached_more;) {
    reached_more = false;
    for (const TrainShaft& shaft : train.shafts) {
      if (speed[shaft.from] > 0.0 && speed[shaft.to] == 0.0) {
        speed[shaft.to] = speed[shaft.from] * shaft.ratio;
        reached_more = true;
      } else if (speed[shaft.to] > 0.0 && speed[shaft.from] == 0.0) {
        speed[shaft.from] = speed[shaft.to] / shaft.ratio;
        reached_more = true;
      }
    }
  }
  return speed;
}

/// Ratios are products of whole teeth over whole teeth: rounding is far below this.
constexpr double ratio_tolerance = 1e-9;

void check_joined(const TorsionalTrain& train, const std::vector<double>& speed, const char* function) {
  for (std::size_t i = 0; i < speed.size(); ++i) {
    if (speed[i] > 0.0) continue;
    fail_input(function, "train.shafts", "no shaft to inertia " + std::to_string(i), "a shaft to every inertia");
  }
  for (const TrainShaft& shaft : train.shafts) {
    const double round_loop = speed[shaft.from] * shaft.ratio / speed[shaft.to];
    if (std::abs(round_loop - 1.0) <= ratio_tolerance) continue;
    fail_input(function, "train.shafts.ratio", check::text_of(shaft.ratio, ""),
               check::text_of(speed[shaft.to] / speed[shaft.from], "") + ", as the other shafts of its loop demand");
  }
}

} // namespace

TorsionalTrain plain_train(const std::vector<MomentOfInertia>& inertias,
                           const std::vector<TorsionalStiffness>& stiffnesses) {
  if (!inertias.empty() && stiffnesses.size() + 1 != inertias.size()) {
    fail_input("plain_train", "stiffnesses", std::to_string(stiffnesses.size()) + " of them",
               "one fewer than the " + std::to_string(inertias.size()) + " inertias");
  }
  TorsionalTrain train;
  train.inertias.reserve(inertias.size());
  for (const MomentOfInertia& inertia : inertias) train.inertias.push_back({inertia});
  train.shafts.reserve(stiffnesses.size());
  for (std::size_t i = 0; i < stiffnesses.size(); ++i) train.shafts.push_back({i, i + 1, stiffnesses[i]});
  check_train(train, "plain_train");
  return train;
}

void check_train(const TorsionalTrain& train, const char* function) {
  check_parts(train, function);
  check_joined(train, walked_ratios(train), function);
}

std::vector<double> train_speed_ratios(const TorsionalTrain& train) {
  check_parts(train, "train_speed_ratios");
  std::vector<double> speed = walked_ratios(train);
  check_joined(train, speed, "train_speed_ratios");
  return speed;
}

} // namespace v0
} // namespace fieldshaft
