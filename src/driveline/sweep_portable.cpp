// The sweep's kernel for any processor: two lanes that every compiler knows how to hold.

#include "driveline/sweep_kernel.hpp"

namespace {

using Lanes = double __attribute__((vector_size(16)));
constexpr long lane_count = 2;

inline Lanes fill(double x) { return Lanes{x, x}; }
inline Lanes load(const double* from) { return Lanes{from[0], from[1]}; }
inline Lanes fused(Lanes a, Lanes b, Lanes c) { return a * b + c; }
inline Lanes larger(Lanes a, Lanes b) { return a > b ? a : b; }
inline Lanes smaller(Lanes a, Lanes b) { return a < b ? a : b; }
inline Lanes root(Lanes x) { return Lanes{__builtin_sqrt(x[0]), __builtin_sqrt(x[1])}; }
inline Lanes size_of(Lanes x) { return Lanes{__builtin_fabs(x[0]), __builtin_fabs(x[1])}; }
inline double largest(Lanes x) { return x[0] > x[1] ? x[0] : x[1]; }
inline double smallest(Lanes x) { return x[0] < x[1] ? x[0] : x[1]; }

} // namespace

#include "driveline/sweep_rows.inc"

namespace fieldshaft {
inline namespace v0 {
namespace sweeping {

void portable_rows(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes) {
  rows_text(rows, row_count, rolls, extremes);
}

} // namespace sweeping
} // namespace v0
} // namespace fieldshaft
