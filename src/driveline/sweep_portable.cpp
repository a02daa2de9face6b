// The sweep's kernel for any processor: two lanes side by side, which compilers join.

#include "driveline/sweep_kernel.hpp"

#include <math.h>

namespace {

struct Lanes {
  double a, b;
};
constexpr long lane_count = 2;

inline Lanes operator*(Lanes x, Lanes y) { return {x.a * y.a, x.b * y.b}; }
inline Lanes operator/(Lanes x, Lanes y) { return {x.a / y.a, x.b / y.b}; }
inline Lanes operator-(Lanes x, Lanes y) { return {x.a - y.a, x.b - y.b}; }
inline double larger(double x, double y) { return x > y ? x : y; }
inline double smaller(double x, double y) { return x < y ? x : y; }

inline Lanes fill(double x) { return {x, x}; }
inline Lanes load(const double* from) { return {from[0], from[1]}; }
inline Lanes fused(Lanes x, Lanes y, Lanes z) { return {x.a * y.a + z.a, x.b * y.b + z.b}; }
inline Lanes larger(Lanes x, Lanes y) { return {larger(x.a, y.a), larger(x.b, y.b)}; }
inline Lanes smaller(Lanes x, Lanes y) { return {smaller(x.a, y.a), smaller(x.b, y.b)}; }
inline Lanes root(Lanes x) { return {sqrt(x.a), sqrt(x.b)}; }
inline Lanes size_of(Lanes x) { return {fabs(x.a), fabs(x.b)}; }
inline double largest(Lanes x) { return larger(x.a, x.b); }
inline double smallest(Lanes x) { return smaller(x.a, x.b); }

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
