// The peaks in lanes of 8.

#include "peaks.hpp"

#include <immintrin.h>

namespace {

using Lanes = __m512d;
constexpr long lane_count = 8;

inline Lanes fill(double x) { return _mm512_set1_pd(x); }
inline Lanes load(const double* from) { return _mm512_loadu_pd(from); }
inline Lanes fused(Lanes a, Lanes b, Lanes c) { return _mm512_fmadd_pd(a, b, c); }
inline Lanes root(Lanes x) { return _mm512_sqrt_pd(x); }
inline double sum_of(Lanes x) {
  double lanes[lane_count];
  _mm512_storeu_pd(lanes, x);
  double sum = 0.0;
  for (const double lane : lanes) sum += lane;
  return sum;
}

} // namespace

#include "peaks_loops.inc"

const peaks::Loops peaks::avx512 = {"avx512", divisions_and_roots, multiply_adds, lane_count};
