#pragma once
// The loop over rotations, written once and built for each kind of processor.

#include <fieldshaft/core/config.hpp>

#include <cstddef>
#include <cstdint>

namespace fieldshaft {
inline namespace v0 {
namespace pair {

/// 1/ratio = p + q cos 2t + s sin 2t.
struct Coefficients {
  double p, q, s;
};

using Kernel = void (*)(const Coefficients&, const double* rotations, double* ratios, std::size_t count) noexcept;

void portable_ratios(const Coefficients& c, const double* rotations, double* ratios, std::size_t count) noexcept;
void avx2_ratios(const Coefficients& c, const double* rotations, double* ratios, std::size_t count) noexcept;

/// Rotations within this are reduced to an eighth of a turn without loss [rad].
constexpr double widest_rotation = 1e5;

} // namespace pair

namespace {

inline std::uint64_t bits_of(double value) noexcept { return FIELDSHAFT_BIT_CAST(std::uint64_t, value); }
inline double double_of(std::uint64_t bits) noexcept { return FIELDSHAFT_BIT_CAST(double, bits); }

/// Without branches, so that compilers turn it into vectors. Sine and cosine by their series about the nearest quarter
/// turn: within an eighth of a turn the terms left out are below 1e-16.
inline void pair_loop(const pair::Coefficients& c, const double* rotations, double* ratios,
                      std::size_t count) noexcept {
  constexpr double whole = 6755399441055744.0; // 1.5 * 2^52: adding it rounds to whole numbers
  // Half of pi in three parts of 33 bits and less (fdlibm), so that whole multiples of the first two are exact.
  constexpr double half_pi_1 = 1.57079632673412561417e+00;
  constexpr double half_pi_2 = 6.07710050630396597660e-11;
  constexpr double half_pi_3 = 2.02226624879595063154e-21;
  for (std::size_t i = 0; i < count; ++i) {
    const double x = 2.0 * rotations[i];
    const double shifted = x * 0.63661977236758134308 + whole;
    const double n = shifted - whole;
    const double r = ((x - n * half_pi_1) - n * half_pi_2) - n * half_pi_3;
    const double z = r * r;
    const double sine =
        r + r * z *
                (-1.0 / 6.0 +
                 z * (1.0 / 120.0 + z * (-1.0 / 5040.0 +
                                         z * (1.0 / 362880.0 + z * (-1.0 / 39916800.0 +
                                                                    z * (1.0 / 6227020800.0 - z / 1307674368000.0))))));
    const double cosine =
        1.0 +
        z * (-0.5 + z * (1.0 / 24.0 +
                         z * (-1.0 / 720.0 + z * (1.0 / 40320.0 + z * (-1.0 / 3628800.0 +
                                                                       z * (1.0 / 479001600.0 - z / 87178291200.0))))));
    const std::uint64_t quarter = bits_of(shifted);
    const std::uint64_t odd = std::uint64_t{0} - (quarter & 1U);
    const std::uint64_t sine_sign = (quarter & 2U) << 62U;
    const std::uint64_t cosine_sign = ((quarter + 1U) & 2U) << 62U;
    const double sin_x = double_of(((bits_of(sine) & ~odd) | (bits_of(cosine) & odd)) ^ sine_sign);
    const double cos_x = double_of(((bits_of(cosine) & ~odd) | (bits_of(sine) & odd)) ^ cosine_sign);
    ratios[i] = 1.0 / (c.p + c.q * cos_x + c.s * sin_x);
  }
}

} // namespace
} // namespace v0
} // namespace fieldshaft
