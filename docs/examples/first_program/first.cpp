#include <fieldshaft/fieldshaft.hpp>

#include <fstream>
#include <iostream>
#include <iterator>

int main(int argc, char** argv) {
  using namespace fieldshaft;
  const char* name = argc > 1 ? argv[1] : "case.json";
  std::ifstream file(name);
  if (!file) {
    std::cerr << name << " cannot be opened\n";
    return 2;
  }
  const std::string text(std::istreambuf_iterator<char>(file), {});
  const CaseReading reading = try_read_case(text);
  for (const CaseProblem& problem : reading.problems) std::cerr << problem.message() << '\n';
  if (!reading.result) return 2;
  const Assessment assessment = assess(*reading.result);
  std::cout << to_text(assessment);
  const Status verdict = assessment.verdict();
  return verdict == Status::ok || verdict == Status::caution ? 0 : 1;
}
