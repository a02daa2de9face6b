#include <fieldshaft/dynamics/pair_ratios.hpp>

#include "dynamics/pair_kernel.hpp"

#include <fieldshaft/driveline/sweep.hpp>
#include <fieldshaft/joint/pair.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace {

#if defined(FIELDSHAFT_X86_KERNELS)
constexpr pair::Kernel widest_kernel = pair::avx2_ratios;
#else
constexpr pair::Kernel widest_kernel = pair::portable_ratios;
#endif

pair::Coefficients coefficients(Angle front, Angle rear, Angle phase) noexcept {
  const double c1 = math::cos(front);
  const double c2 = math::cos(rear);
  // R turns by phase + 90°: (cos, -sin; sin, cos) = (-sin p, -cos p; cos p, -sin p).
  const double sine = math::sin(phase);
  const double cosine = math::cos(phase);
  const double a = -sine * std::sqrt(c2 * c1);
  const double b = -cosine * std::sqrt(c2 / c1);
  const double c = cosine * std::sqrt(c1 / c2);
  const double d = -sine / std::sqrt(c1 * c2);
  const double along = a * a + c * c;
  const double across = b * b + d * d;
  return {0.5 * (along + across), 0.5 * (along - across), a * b + c * d};
}

} // namespace

void joint_pair_speed_ratios(Angle front, Angle rear, Angle phase, const double* rotations, double* ratios,
                             std::size_t count) {
  constexpr const char* function = "joint_pair_speed_ratios";
  check::joint_angle(front, function, "front");
  check::joint_angle(rear, function, "rear");
  check::finite(phase.value(), {function, "phase", "rad"});
  bool wide = false;
  for (std::size_t i = 0; i < count; ++i) {
    check::finite(rotations[i], {function, "rotations", "rad"});
    wide = wide || std::abs(rotations[i]) > pair::widest_rotation;
  }
  if (wide) {
    for (std::size_t i = 0; i < count; ++i) {
      ratios[i] = text::joint_pair_speed_ratio(front.value(), rear.value(), phase.value(), rotations[i]);
    }
    return;
  }
  const pair::Kernel kernel = kernel_is_available(ProcessorKernel::avx2) ? widest_kernel : pair::portable_ratios;
  kernel(coefficients(front, rear, phase), rotations, ratios, count);
}

} // namespace v0
} // namespace fieldshaft
