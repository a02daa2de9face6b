#pragma once
// Random inputs for laws. The seed is printed and may be set: FIELDSHAFT_SEED=12345.

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <random>

class RandomInputs {
public:
  RandomInputs() : seed_(seed_from_environment()), engine_(seed_) { MESSAGE("seed " << seed_); }

  unsigned seed() const noexcept { return seed_; }

  /// Evenly from low to high.
  double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(engine_); }
  /// From low to high, as many small as large ones; both above 0.
  double across(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
  /// A whole number from low to high, both included.
  int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine_); }

private:
  static unsigned seed_from_environment() {
    const char* text = std::getenv("FIELDSHAFT_SEED"); // NOLINT(concurrency-mt-unsafe): read once, before any thread
    return text == nullptr ? 20240131U : static_cast<unsigned>(std::strtoul(text, nullptr, 10));
  }

  unsigned seed_;
  std::mt19937 engine_;
};
