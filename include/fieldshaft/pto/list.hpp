#pragma once
// A short list that lives where it is made: answers of a few entries, at compile time too.

#include <fieldshaft/core/config.hpp>

#include <array>
#include <cstddef>
#include <initializer_list>

namespace fieldshaft {
inline namespace v0 {

/// Up to `Capacity` entries in the order in which they were added.
template <class T, std::size_t Capacity> class FixedList {
public:
  constexpr FixedList() = default;
  constexpr FixedList(std::initializer_list<T> entries) {
    for (const T& entry : entries) push_back(entry);
  }

  /// Adds an entry. One too many is an error of the caller: std::out_of_range, or the end of the program.
  constexpr void push_back(const T& entry) {
    entries_.at(size_) = entry;
    ++size_;
  }

  constexpr std::size_t size() const noexcept { return size_; }
  constexpr bool empty() const noexcept { return size_ == 0; }
  constexpr const T* begin() const noexcept { return entries_.data(); }
  constexpr const T* end() const noexcept { return entries_.data() + size_; }
  constexpr const T& operator[](std::size_t index) const noexcept { return entries_[index]; }

private:
  std::array<T, Capacity> entries_{};
  std::size_t size_ = 0;
};

} // namespace v0
} // namespace fieldshaft
