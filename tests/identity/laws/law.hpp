#pragma once
// A law that holds whatever the inputs are, by the sentence that names it.

#include "close.hpp"
#include "random.hpp"

/// One law of the list: what holds, how many random inputs a run of the tests tries, and one try.
struct Law {
  const char* name;
  int tries;
  void (*hold)(RandomInputs& random);
};
