#pragma once
// The error that an impossible input raises, and the one place that raises it.

#include <fieldshaft/core/config.hpp>

#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <string>

namespace fieldshaft {
inline namespace v0 {

/// An input that cannot be: not finite, a negative length, a minimum above its maximum.
/// The message names the function, the parameter, the value with its unit and the allowed range.
class InputError : public std::invalid_argument {
public:
  InputError(std::string function, std::string parameter, std::string value, std::string allowed)
      : std::invalid_argument(function + ": " + parameter + " = " + value + "; allowed: " + allowed),
        function_(std::move(function)), parameter_(std::move(parameter)), value_(std::move(value)),
        allowed_(std::move(allowed)) {}

  const std::string& function() const noexcept { return function_; }
  const std::string& parameter() const noexcept { return parameter_; }
  const std::string& value() const noexcept { return value_; }
  const std::string& allowed() const noexcept { return allowed_; }

private:
  std::string function_;
  std::string parameter_;
  std::string value_;
  std::string allowed_;
};

/// Raises InputError; where exceptions are switched off it prints the same message and ends the program,
/// because going on with an impossible input could end in a wrong pass.
[[noreturn]] FIELDSHAFT_COLD inline void fail_input(const std::string& function, const std::string& parameter,
                                                    const std::string& value, const std::string& allowed) {
#if FIELDSHAFT_HAS_EXCEPTIONS
  throw InputError(function, parameter, value, allowed);
#else
  std::fprintf(stderr, "%s: %s = %s; allowed: %s\n", function.c_str(), parameter.c_str(), value.c_str(),
               allowed.c_str());
  std::abort();
#endif
}

} // namespace v0
} // namespace fieldshaft
