#include "assess/tube.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// What decides the strength of a tube's steel is the thickness it was made in.
Length wall_of(const TubeProfile& tube) {
  if (tube.wall) return *tube.wall;
  if (!tube.outer_diameter) return millimetres(1.0);
  return tube.inner_diameter ? 0.5 * (*tube.outer_diameter - *tube.inner_diameter) : *tube.outer_diameter;
}

} // namespace

TubeOfCase resolve_tube(const TubeProfile& tube, const SteelChoice& steel, const std::string& path) {
  TubeOfCase found;
  found.steel = resolve_steel(steel, wall_of(tube), (path + "tube_steel").c_str());
  found.missing = found.steel.missing;
  if (tube.enclosed_area && tube.perimeter && tube.wall) {
    found.section = ProfileSection(*tube.enclosed_area, *tube.perimeter, *tube.wall);
  } else if (tube.outer_diameter && tube.inner_diameter) {
    const bool solid = *tube.inner_diameter == Length{};
    found.section = solid ? Section(SolidSection(*tube.outer_diameter))
                          : Section(TubeSection(*tube.outer_diameter, *tube.inner_diameter));
  } else if (tube.outer_diameter) {
    found.missing.push_back(path + "tube" + ".inner_diameter");
  } else {
    found.missing.push_back(path + "tube");
  }
  return found;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
