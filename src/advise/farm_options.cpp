// A farm after some of its options.

#include "advise/farm_set_up.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace {

template <class List> auto find_machine(List& list, const std::string& name, const char* parameter) {
  const auto found =
      std::find_if(list.begin(), list.end(), [&](const auto& machine) { return machine.machine.name == name; });
  if (found == list.end())
    fail_input("with_options", parameter, "\"" + name + "\"", "the name of a machine of the farm");
  return found;
}

template <class List> void append(List& list, const List& more) { list.insert(list.end(), more.begin(), more.end()); }

void give_tractor(const FarmOption& option, FarmTractor& tractor) {
  append(tractor.machine.pto.gears, option.gears);
  append(tractor.machine.pto.other_stubs, option.stubs);
  if (option.arrangement) tractor.machine.pto.arrangement = option.arrangement;
}

bool has_implement(const std::vector<FarmImplement>& implements, const std::string& name) {
  return std::any_of(implements.begin(), implements.end(),
                     [&](const FarmImplement& implement) { return implement.machine.name == name; });
}

/// A driveline serves what is there; one that serves nothing any more goes with its implement.
template <class IsThere> void keep_serving(std::vector<FarmDriveline>& drivelines, IsThere is_there) {
  for (FarmDriveline& driveline : drivelines) {
    auto& serves = driveline.serves;
    serves.erase(std::remove_if(serves.begin(), serves.end(), [&](const auto& name) { return !is_there(name); }),
                 serves.end());
  }
  drivelines.erase(
      std::remove_if(drivelines.begin(), drivelines.end(), [](const FarmDriveline& d) { return d.serves.empty(); }),
      drivelines.end());
}

/// What is left of an option on the farm after others; nothing where it has become pointless.
std::optional<FarmOption> left_of(FarmOption option, const Farm& farm) {
  const bool had_drivelines = !option.drivelines.empty();
  keep_serving(option.drivelines, [&](const std::string& name) {
    return has_implement(farm.implements, name) || has_implement(option.implements, name);
  });
  const bool other_change = option.tractor || option.replaces || !option.tractors.empty() || !option.implements.empty();
  if (had_drivelines && option.drivelines.empty() && !other_change) return std::nullopt;
  return option;
}

void apply(const FarmOption& option, Farm& farm) {
  if (option.replaces) farm.implements.erase(find_machine(farm.implements, *option.replaces, "replaces"));
  append(farm.tractors, option.tractors);
  append(farm.implements, option.implements);
  append(farm.drivelines, option.drivelines);
  if (option.tractor) give_tractor(option, *find_machine(farm.tractors, *option.tractor, "tractor"));
  if (option.replaces) {
    keep_serving(farm.drivelines, [&](const std::string& name) { return has_implement(farm.implements, name); });
  }
}

template <class List, class NameOf> bool share_a_name(const List& a, const List& b, NameOf name_of) {
  return std::any_of(a.begin(), a.end(), [&](const auto& one) {
    return std::any_of(b.begin(), b.end(), [&](const auto& other) { return name_of(one) == name_of(other); });
  });
}

const auto machine_name = [](const auto& machine) -> const std::string& { return machine.machine.name; };
const auto own_name = [](const auto& thing) -> const std::string& { return thing.name; };

void refuse_both(const Farm& farm, std::size_t a, std::size_t b) {
  fail_input("with_options", "options", "\"" + farm.options[a].name + "\" with \"" + farm.options[b].name + "\"",
             "options that do not replace the same implement, add things of one name, or stand twice");
}

} // namespace

namespace advising {

bool exclude_each_other(const FarmOption& a, const FarmOption& b) {
  if (a.replaces && a.replaces == b.replaces) return true;
  const bool same_gears = a.tractor && a.tractor == b.tractor && share_a_name(a.gears, b.gears, own_name);
  return same_gears || share_a_name(a.tractors, b.tractors, machine_name) ||
         share_a_name(a.implements, b.implements, machine_name) || share_a_name(a.drivelines, b.drivelines, own_name);
}

} // namespace advising

Farm with_options(const Farm& farm, const std::vector<std::size_t>& options) {
  for (std::size_t n = 0; n < options.size(); ++n) {
    if (options[n] >= farm.options.size()) {
      fail_input("with_options", "options", std::to_string(options[n]), "places in the farm's list of options");
    }
    for (std::size_t m = 0; m < n; ++m) {
      const bool twice = options[m] == options[n];
      if (twice || advising::exclude_each_other(farm.options[options[m]], farm.options[options[n]])) {
        refuse_both(farm, options[m], options[n]);
      }
    }
  }
  Farm changed = farm;
  for (const std::size_t option : options) apply(farm.options[option], changed);
  changed.options.clear();
  for (const FarmOption& left : farm.options) {
    const bool can_be_taken = std::none_of(options.begin(), options.end(), [&](std::size_t taken) {
      return &farm.options[taken] == &left || advising::exclude_each_other(farm.options[taken], left);
    });
    if (!can_be_taken) continue;
    if (auto option = left_of(left, changed)) changed.options.push_back(*std::move(option));
  }
  return changed;
}

} // namespace v0
} // namespace fieldshaft
