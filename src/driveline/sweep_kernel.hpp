#pragma once
// What the kernels of a sweep share: plain structures, no templates and no headers, so that a file built for one
// processor leaves nothing in the program that another processor could trip over.

namespace fieldshaft {
inline namespace v0 {
namespace sweeping {

/// Constant, share of the roll's cosine, share of its sine.
struct Linear {
  double constant;
  double cosine;
  double sine;
};

/// One yaw and pitch: all that depends on the roll is linear in its cosine and sine.
struct Row {
  Linear length_square; ///< of the joint centre distance [m²]
  Linear front;         ///< cosine of the front joint times the distance [m]
  Linear rear;          ///< cosine of the rear joint times the distance [m]
};

/// The extremes of a row. Angles by the signed square of their cosine: the smaller, the larger the angle.
struct RowExtremes {
  double front;
  double rear;
  double difference; ///< cosine of the difference
  double longest;    ///< square [m²]
  double shortest;   ///< square [m²]
};

/// Cosines and sines of the rolls, as many as `count`, a multiple of 8.
struct Rolls {
  const double* cosines;
  const double* sines;
  long count;
};

using RowKernel = void (*)(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes);

void portable_rows(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes);
void avx2_rows(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes);
void avx512_rows(const Row* rows, long row_count, Rolls rolls, RowExtremes* extremes);

} // namespace sweeping
} // namespace v0
} // namespace fieldshaft
