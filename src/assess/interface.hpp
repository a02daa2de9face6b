#pragma once
// From what a case says of a PTO interface to the standard type it is.

#include "assess/context.hpp"

#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// The one type that fits what is stated, or why there is none.
struct ResolvedInterface {
  const PtoType* type = nullptr;
  bool stated = false;           ///< the case states something
  bool ambiguous = false;        ///< several types fit
  const PtoType* near = nullptr; ///< when none fits: the type that a wrong reading may have meant
};

ResolvedInterface resolve(const Interface& interface);

/// The type's name as a fact; a phrase that says so when there is none.
Fact interface_fact(const char* name, const ResolvedInterface& interface);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
