#pragma once
// Comparison of numbers in tests: relative for sizes, with the difference in the message.

#include <doctest/doctest.h>

#include <cmath>

/// |a - b| <= tolerance * max(|a|, |b|); two zeros are equal, NaN never is.
inline bool close(double a, double b, double tolerance) {
  return std::abs(a - b) <= tolerance * std::fmax(std::abs(a), std::abs(b));
}

#define CHECK_CLOSE(actual, expected, tolerance)                                                                       \
  do {                                                                                                                 \
    const double close_actual_ = (actual);                                                                             \
    const double close_expected_ = (expected);                                                                         \
    CHECK_MESSAGE(close(close_actual_, close_expected_, (tolerance)),                                                  \
                  #actual " = " << close_actual_ << ", expected " << close_expected_);                                 \
  } while (false)
