#pragma once
// What an entry of the case document means, in words, by its path.

#include <string>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

/// "end of the stub to the front joint's centre, as coupled" for "driveline.front_joint"; the number of an entry in a
/// list, as in "tractor.pto.gears[2].pto_speed", does not matter. Empty for a path that the document does not have.
std::string_view meaning_of_entry(std::string_view path);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
