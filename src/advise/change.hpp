#pragma once
// Changes written out: the entries of the document that they touch, and their prices.

#include <fieldshaft/advise/change.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// Every entry that differs between two cases, as text that a document takes.
std::vector<EntryChange> entries_between(const Case& before, const Case& after);

/// A case with some entries as another case has them, given by their paths; unstated where they are unstated there.
Case with_entries_of(const Case& other, const std::vector<std::string>& paths, const Case& value);

/// What a kind of change costs by the case; nothing where it states no price. What only the operator does costs
/// nothing, where the case states prices at all.
std::optional<Money> price_of(ChangeKind kind, const Prices& prices);

/// The price of several changes together; nothing if one of them has none.
std::optional<Money> price_of(const std::vector<Change>& changes);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
