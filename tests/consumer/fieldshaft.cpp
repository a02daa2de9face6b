#include <fieldshaft/fieldshaft.hpp>

#include <cstdio>

// A case that states next to nothing: the answer must be "not known", never a pass.
int main() {
  const auto reading = fieldshaft::try_read_case(
      R"({"schema": "fieldshaft-case/1", "tractor": {"name": "a"}, "implement": {"name": "b"}, "driveline": {}})");
  if (!reading.result) return 2;
  const fieldshaft::Assessment assessment = fieldshaft::assess(*reading.result);
  std::printf("%s", fieldshaft::to_text(assessment).c_str());
  return assessment.verdict() == fieldshaft::Status::not_known ? 0 : 1;
}
