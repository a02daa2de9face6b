#pragma once
// A document read quietly and aloud.

#include <fieldshaft/case.hpp>

#include <doctest/doctest.h>

#include <string>
#include <string_view>

/// What is wrong with a document, asked quietly and aloud: both say the same.
template <class Reading, class Result>
Reading read_twice(Reading (*quietly)(std::string_view), Result (*aloud)(std::string_view), std::string_view text) {
  Reading quiet = quietly(text);
  if (quiet.result) return quiet;
  std::string thrown;
  try {
    aloud(text);
  } catch (const fieldshaft::CaseError& error) {
    for (const fieldshaft::CaseProblem& problem : error.problems()) thrown += problem.message() + "\n";
  }
  std::string said;
  for (const fieldshaft::CaseProblem& problem : quiet.problems) said += problem.message() + "\n";
  CHECK(thrown == said);
  return quiet;
}
