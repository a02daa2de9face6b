// For processors with AVX2 and FMA: built for them, and called only there.

#include "dynamics/pair_kernel.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace pair {

void avx2_ratios(const Coefficients& c, const double* rotations, double* ratios, std::size_t count) noexcept {
  pair_loop(c, rotations, ratios, count);
}

} // namespace pair
} // namespace v0
} // namespace fieldshaft
