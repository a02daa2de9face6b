#pragma once
// Money: an amount with its currency. Two currencies never mix.

#include <fieldshaft/core/check.hpp>

#include <string>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {

/// A currency by its code of three capital letters (ISO 4217): Currency("EUR").
class Currency {
public:
  /// Not explicit, so that Money{5, "EUR"} may be written.
  constexpr Currency(const char* code) : Currency(std::string_view(code)) {}
  constexpr explicit Currency(std::string_view code) : code_{} {
    bool good = code.size() == 3;
    for (std::size_t i = 0; good && i < 3; ++i) {
      good = code[i] >= 'A' && code[i] <= 'Z';
      code_[i] = code[i];
    }
    if (!good) fail_input("Currency", "code", "\"" + std::string(code) + "\"", "three capital letters such as EUR");
  }

  constexpr std::string_view code() const noexcept { return {code_, 3}; }
  friend constexpr bool operator==(const Currency& a, const Currency& b) noexcept { return a.code() == b.code(); }
  friend constexpr bool operator!=(const Currency& a, const Currency& b) noexcept { return !(a == b); }

private:
  char code_[3];
};

/// An amount of money. Sums, differences and ratios of two currencies are an InputError; nothing converts them.
struct Money {
  double amount;
  Currency currency;
};

namespace detail {
inline void same_currency(const Money& a, const Money& b, const char* function) {
  if (a.currency != b.currency) {
    fail_input(function, "currency", std::string(b.currency.code()), std::string(a.currency.code()) + ", as the other");
  }
}
/// An amount that may be asked for: finite, not negative, of the currency of `other`.
inline void check_price(const Money& price, check::Place place) { check::not_negative(price.amount, place); }
inline void check_price(const Money& price, const Money& other, check::Place place) {
  check_price(price, place);
  same_currency(other, price, place.function);
}
} // namespace detail

inline Money operator+(const Money& a, const Money& b) {
  detail::same_currency(a, b, "Money +");
  return {a.amount + b.amount, a.currency};
}
inline Money operator-(const Money& a, const Money& b) {
  detail::same_currency(a, b, "Money -");
  return {a.amount - b.amount, a.currency};
}
inline double operator/(const Money& a, const Money& b) {
  detail::same_currency(a, b, "Money /");
  return a.amount / b.amount;
}
constexpr Money operator*(double factor, const Money& money) noexcept {
  return {factor * money.amount, money.currency};
}
constexpr Money operator*(const Money& money, double factor) noexcept { return factor * money; }
constexpr Money operator/(const Money& money, double divisor) noexcept {
  return {money.amount / divisor, money.currency};
}
inline bool operator==(const Money& a, const Money& b) noexcept {
  return a.amount == b.amount && a.currency == b.currency;
}
inline bool operator!=(const Money& a, const Money& b) noexcept { return !(a == b); }
inline bool operator<(const Money& a, const Money& b) {
  detail::same_currency(a, b, "Money <");
  return a.amount < b.amount;
}

} // namespace v0
} // namespace fieldshaft
