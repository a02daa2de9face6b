// Three-point linkages of any size: a pose closes with its bars at their lengths, or the input is refused.

#include "input.hpp"

#include <fieldshaft/core/error.hpp>
#include <fieldshaft/hitch.hpp>

using namespace fieldshaft;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzzing::Bytes bytes(data, size);
  ThreePointLinkage l;
  l.lower_pivot_behind = metres(bytes.number(-0.5, 0.3));
  l.lower_pivot_below = metres(bytes.number(-0.2, 0.4));
  l.lower_link = metres(bytes.number(0.3, 1.4));
  l.top_pivot_behind = metres(bytes.number(-0.4, 0.4));
  l.top_pivot_below = metres(bytes.number(-0.8, 0.1));
  l.top_link = metres(bytes.number(0.3, 1.2));
  l.mast_height = metres(bytes.number(0.2, 0.9));
  l.mast_forward = metres(bytes.number(-0.2, 0.2));
  const Length lift = metres(bytes.number(-0.8, 0.8));
  try {
    const Pose pose = mounted_pose(l, {lift, {}, {}});
    const Position lower(-l.lower_pivot_behind, Length{}, -l.lower_pivot_below);
    const Position top(-l.top_pivot_behind, Length{}, -l.top_pivot_below);
    const Position upper = in_tractor(pose, Position(l.mast_forward, Length{}, l.mast_height));
    const double reach = l.lower_link.value() + l.top_link.value() + l.mast_height.value() +
                         std::abs(l.mast_forward.value()) + distance(lower, top).value() +
                         distance(lower, Position()).value();
    if (reach < 1e100) { // beyond it, squares of lengths leave the numbers
      fuzzing::require(std::abs((distance(pose.pin, lower) - l.lower_link).value()) <= 1e-9 * reach, "lower link");
      fuzzing::require(std::abs((distance(upper, top) - l.top_link).value()) <= 1e-6 * reach, "top link");
    }
  } catch (const InputError&) {
    return 0; // refused with words
  }
  return 0;
}
