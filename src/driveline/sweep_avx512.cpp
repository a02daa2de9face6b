// The sweep's kernel for processors with AVX-512.

#include "driveline/sweep_kernel.hpp"

#include <immintrin.h>

namespace {

using Lanes = __m512d;
constexpr long lane_count = 8;

inline Lanes fill(double x) { return _mm512_set1_pd(x); }
inline Lanes load(const double* from) { return _mm512_loadu_pd(from); }
inline Lanes fused(Lanes a, Lanes b, Lanes c) { return _mm512_fmadd_pd(a, b, c); }
inline Lanes larger(Lanes a, Lanes b) { return _mm512_max_pd(a, b); }
inline Lanes smaller(Lanes a, Lanes b) { return _mm512_min_pd(a, b); }
inline Lanes root(Lanes x) { return _mm512_sqrt_pd(x); }
inline Lanes size_of(Lanes x) { return _mm512_abs_pd(x); }
inline double largest(Lanes x) { return _mm512_reduce_max_pd(x); }
inline double smallest(Lanes x) { return _mm512_reduce_min_pd(x); }

} // namespace

#include "driveline/sweep_rows.inc"

namespace fieldshaft {
inline namespace v0 {
namespace sweeping {

void avx512_rows(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes) {
  rows_text(rows, row_count, rolls, extremes);
}

} // namespace sweeping
} // namespace v0
} // namespace fieldshaft
