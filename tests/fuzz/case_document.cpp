// Case documents: any text reads or is refused with problems; what was read is written and reads back the same.

#include "input.hpp"

#include <fieldshaft/case.hpp>

using namespace fieldshaft;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const CaseReading reading = try_read_case({reinterpret_cast<const char*>(data), size});
  fuzzing::require(reading.result.has_value() == reading.problems.empty(), "a case or problems, one of the two");
  for (const CaseProblem& problem : reading.problems) {
    fuzzing::require(!problem.value.empty() && !problem.expected.empty(), "a problem says what stands and what should");
  }
  if (!reading.result) return 0;
  const std::string written = write_case(*reading.result);
  const CaseReading again = try_read_case(written);
  fuzzing::require(again.result.has_value(), "what was written reads");
  fuzzing::require(write_case(*again.result) == written, "what was read back writes the same");
  return 0;
}
