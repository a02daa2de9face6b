// The peaks in lanes of 4.

#include "peaks.hpp"

#include <immintrin.h>

namespace {

using Lanes = __m256d;
constexpr long lane_count = 4;

inline Lanes fill(double x) { return _mm256_set1_pd(x); }
inline Lanes load(const double* from) { return _mm256_loadu_pd(from); }
inline Lanes fused(Lanes a, Lanes b, Lanes c) { return _mm256_fmadd_pd(a, b, c); }
inline Lanes root(Lanes x) { return _mm256_sqrt_pd(x); }
inline double sum_of(Lanes x) {
  double lanes[lane_count];
  _mm256_storeu_pd(lanes, x);
  double sum = 0.0;
  for (const double lane : lanes) sum += lane;
  return sum;
}

} // namespace

#include "peaks_loops.inc"

const peaks::Loops peaks::avx2 = {"avx2", divisions_and_roots, multiply_adds, lane_count};
