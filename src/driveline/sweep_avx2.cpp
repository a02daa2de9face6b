// The sweep's kernel for processors with AVX2 and fused multiply-add.

#include "driveline/sweep_kernel.hpp"

#include <immintrin.h>

namespace {

using Lanes = __m256d;
constexpr long lane_count = 4;

inline Lanes fill(double x) { return _mm256_set1_pd(x); }
inline Lanes load(const double* from) { return _mm256_loadu_pd(from); }
inline Lanes fused(Lanes a, Lanes b, Lanes c) { return _mm256_fmadd_pd(a, b, c); }
inline Lanes larger(Lanes a, Lanes b) { return _mm256_max_pd(a, b); }
inline Lanes smaller(Lanes a, Lanes b) { return _mm256_min_pd(a, b); }
inline Lanes root(Lanes x) { return _mm256_sqrt_pd(x); }
inline Lanes size_of(Lanes x) { return _mm256_andnot_pd(_mm256_set1_pd(-0.0), x); }
inline double largest(Lanes x) {
  const __m128d half = _mm_max_pd(_mm256_castpd256_pd128(x), _mm256_extractf128_pd(x, 1));
  return _mm_cvtsd_f64(_mm_max_sd(half, _mm_unpackhi_pd(half, half)));
}
inline double smallest(Lanes x) {
  const __m128d half = _mm_min_pd(_mm256_castpd256_pd128(x), _mm256_extractf128_pd(x, 1));
  return _mm_cvtsd_f64(_mm_min_sd(half, _mm_unpackhi_pd(half, half)));
}

} // namespace

#include "driveline/sweep_rows.inc"

namespace fieldshaft {
inline namespace v0 {
namespace sweeping {

void avx2_rows(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes) {
  rows_text(rows, row_count, rolls, extremes);
}

} // namespace sweeping
} // namespace v0
} // namespace fieldshaft
