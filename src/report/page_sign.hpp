#pragma once
// The signs of HTML pages, each of its own outline, so that they differ without colour and when printed in black.

#include <fieldshaft/assess/finding.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace pages {

/// Octagon, triangle, square and circle in a field of 24 by 24.
constexpr const char* sign_drawing(Status status) noexcept {
  switch (status) {
  case Status::ok:
    return R"(<circle cx="12" cy="12" r="10" fill="none" stroke-width="2.5"/>)"
           R"(<path d="M7 12.5l3.5 3.5L17 8.5" fill="none" stroke-width="2.5"/>)";
  case Status::caution:
    return R"(<path d="M12 2L23 21H1z" fill="currentColor" stroke-width="1"/>)"
           R"(<path d="M12 8.5v6M12 16.5v2.5" fill="none" stroke="#fff" stroke-width="2.5"/>)";
  case Status::not_known:
    return R"(<rect x="2" y="2" width="20" height="20" fill="none" stroke-width="2.5"/>)"
           R"(<path d="M8.5 9.5a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 16.7v2.3" fill="none" stroke-width="2.5"/>)";
  case Status::stop: break;
  }
  return R"(<path d="M8 1h8l7 7v8l-7 7H8l-7-7V8z" fill="currentColor" stroke-width="1"/>)"
         R"(<path d="M7.5 7.5l9 9M16.5 7.5l-9 9" fill="none" stroke="#fff" stroke-width="3"/>)";
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
