// A farm after some of its options.

#include <fieldshaft/advise/farm_pair.hpp>

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

void apply(const FarmOption& option, Farm& farm) {
  if (option.replaces) farm.implements.erase(find_machine(farm.implements, *option.replaces, "replaces"));
  append(farm.tractors, option.tractors);
  append(farm.implements, option.implements);
  append(farm.drivelines, option.drivelines);
  if (option.tractor) give_tractor(option, *find_machine(farm.tractors, *option.tractor, "tractor"));
}

} // namespace

Farm with_options(const Farm& farm, const std::vector<std::size_t>& options) {
  Farm changed = farm;
  for (const std::size_t option : options) {
    if (option >= farm.options.size()) {
      fail_input("with_options", "options", std::to_string(option), "places in the farm's list of options");
    }
    apply(farm.options[option], changed);
  }
  changed.options.clear();
  for (std::size_t i = 0; i < farm.options.size(); ++i) {
    if (std::find(options.begin(), options.end(), i) == options.end()) changed.options.push_back(farm.options[i]);
  }
  return changed;
}

} // namespace v0
} // namespace fieldshaft
