#pragma once
// What the processor gives at most, measured in the lanes of the sweep's kernels: plain loops, no headers, so that a
// file built for one processor leaves nothing in the program that another could trip over.

namespace peaks {

/// Numbers in one lane-wide step.
struct Loops {
  const char* name;
  /// A sum of 1/x and a sum of roots over `count` numbers, a multiple of 8: one division and one root each.
  double (*divisions_and_roots)(const double* from, long count);
  /// `steps` times twelve independent multiply-adds in all lanes.
  double (*multiply_adds)(long steps);
  long lanes;
};

constexpr long chains = 12; // more than latency times throughput of any processor so far (4 cycles, 2 a cycle)

extern const Loops avx2;
extern const Loops avx512;

} // namespace peaks
