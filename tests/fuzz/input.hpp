#pragma once
// Bytes read as numbers and choices, and the one way in which a target says that the library was wrong.

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <limits>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace fuzzing {

/// Ends the run: the input that led here is kept by the fuzzer.
inline void require(bool holds, const char* law) {
  if (holds) return;
  std::fprintf(stderr, "broken: %s\n", law);
  std::abort();
}

/// FNV-1a of an input, to draw lots that repeat and that no search over inputs can favour.
inline std::uint64_t hash(const std::uint8_t* data, std::size_t size) noexcept {
  std::uint64_t sum = 14695981039346656037U;
  for (std::size_t i = 0; i < size; ++i) sum = (sum ^ data[i]) * 1099511628211U;
  return sum ^ sum >> 32U;
}

/// The bytes of one input, used up from the front; zeros once they are gone.
class Bytes {
public:
  Bytes(const std::uint8_t* data, std::size_t size) : data_(data), size_(size) {}

  bool empty() const noexcept { return size_ == 0; }

  std::uint8_t byte() noexcept {
    if (size_ == 0) return 0;
    --size_;
    return *data_++;
  }

  /// From 0 to below `count`.
  std::size_t choice(std::size_t count) noexcept { return byte() % count; }

  /// From low to high in 65,536 steps.
  double between(double low, double high) noexcept {
    const unsigned steps = static_cast<unsigned>(byte()) << 8U | byte();
    return low + (high - low) * steps / 65535.0;
  }

  /// Any eight bytes as a number: all sizes, infinities and NaN.
  double any_number() noexcept {
    std::uint64_t bits = 0;
    for (int i = 0; i < 8; ++i) bits = bits << 8U | byte();
    double number = 0.0;
    std::memcpy(&number, &bits, sizeof number);
    return number;
  }

  /// Mostly an ordinary number, at times an end of the interval or any number at all.
  double number(double low, double high) noexcept {
    switch (choice(16)) {
    case 0: return low;
    case 1: return high;
    case 2: return any_number();
    case 3: return 0.0;
    default: return between(low, high);
    }
  }

  std::string_view rest() const noexcept { return {reinterpret_cast<const char*>(data_), size_}; }

private:
  const std::uint8_t* data_;
  std::size_t size_;
};

} // namespace fuzzing
