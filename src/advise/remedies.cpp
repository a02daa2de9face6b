// The search for remedies: breadth first through changed cases, each assessed.

#include <fieldshaft/advise/remedies.hpp>

#include "advise/change.hpp"
#include "advise/proposals.hpp"
#include "advise/quick.hpp"
#include "assess/checks.hpp"
#include "assess/worse.hpp"

#include <fieldshaft/case/read.hpp>

#include <algorithm>
#include <set>
#include <unordered_set>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// A changed case with the changes that led to it, in the order in which they were made.
struct Node {
  Case value;
  Assessment assessment;
  std::vector<Proposal> changes;
};

/// What a set changes, whatever the amounts: two cuts are the same change.
using ChangeSet = std::set<std::string>;

std::string name_of(const Proposal& proposal) {
  const bool several = proposal.kind == ChangeKind::refit_guard || proposal.kind == ChangeKind::limit_turn ||
                       proposal.kind == ChangeKind::limit_lift;
  return std::string(change_id(proposal.kind)) + (several ? "/" + proposal.label : "");
}

ChangeSet names_of(const std::vector<Proposal>& changes) {
  ChangeSet names;
  for (const Proposal& change : changes) names.insert(name_of(change));
  return names;
}

/// A change that undoes or overrides an earlier one of the same name is no second change.
bool has_change(const Node& node, const Proposal& proposal) {
  return names_of(node.changes).count(name_of(proposal)) == 1;
}

bool includes(const ChangeSet& all, const ChangeSet& part) {
  return std::includes(all.begin(), all.end(), part.begin(), part.end());
}

/// The worst status of a check over all parts; nothing where it was not examined.
std::optional<Status> status_of(const Assessment& assessment, Check check) {
  std::optional<Status> status;
  for (const Finding& finding : assessment.findings) {
    if (finding.check == check) status = status ? worse(*status, finding.status) : finding.status;
  }
  return status;
}

/// The status of a check of one part.
std::optional<Status> status_of(const Assessment& assessment, Check check, const std::string& part) {
  const Finding* finding = assessment.find(check, part);
  return finding != nullptr ? std::optional<Status>(finding->status) : std::nullopt;
}

bool nothing_worse(const Assessment& after, const Assessment& base) {
  return assessing::worsened(after, base) == nullptr;
}

/// Whether a finding stands in the way: worse than accepted, and not for want of data.
bool stands_in_the_way(const Finding& finding, Status accept) {
  if (finding.status == Status::not_known) return false;
  return finding.status > accept;
}

bool among(const std::vector<Check>& checks, Check check) {
  return std::find(checks.begin(), checks.end(), check) != checks.end();
}

std::vector<Check> in_the_way(const Assessment& assessment, Status accept) {
  std::vector<Check> checks;
  for (const Finding& finding : assessment.findings) {
    if (stands_in_the_way(finding, accept)) checks.push_back(finding.check);
  }
  return checks;
}

/// What stands in the way after a change: also what did before and is now not known, for nothing shows it healed.
std::vector<Check> still_in_the_way(const Assessment& after, const std::vector<Check>& before, Status accept) {
  std::vector<Check> checks = in_the_way(after, accept);
  for (const Check check : before) {
    if (status_of(after, check) == Status::not_known && !among(checks, check)) checks.push_back(check);
  }
  return checks;
}

/// Whether a finding has become better: by its status, or by its margin.
bool is_better(const Finding& before, const Assessment& after) {
  const auto status = status_of(after, before.check, before.part);
  if (!status) return true;
  if (*status != before.status) return *status < before.status;
  const Finding* same = after.find(before.check, before.part);
  constexpr double rounding = 1e-9;
  return same != nullptr && same->margin && before.margin && *same->margin > *before.margin + rounding;
}

class Search {
public:
  Search(const Case& value, const RemedyOptions& options) : options_(options), start_(value) {}

  Remedies run() {
    const assessing::DrivelineOverRange range = assessing::driveline_over_range(start_);
    found_.before = assessing::assess_over(start_, range, assessing::Depth::whole);
    states_.know(start_, range);
    found_.state_first = missing_of(found_.before);
    const auto quick = assessed_quickly(start_, states_);
    if (!quick) return std::move(found_);
    base_ = *quick;
    const int examined_before = states_.examined();
    const Node root{start_, base_, {}};
    remember(root);
    set_goal();
    search_from(root);
    take_best();
    note_hopeless_tips();
    found_.search.ranges = states_.examined() - examined_before;
    return std::move(found_);
  }

private:
  static std::vector<std::string> missing_of(const Assessment& assessment) {
    std::set<std::string> paths;
    for (const Finding& finding : assessment.findings) paths.insert(finding.missing.begin(), finding.missing.end());
    return {paths.begin(), paths.end()};
  }

  Proposals proposals_at(const Node& node, const Finding& finding) {
    return proposals_for({node.value, node.assessment, states_, options_}, finding);
  }

  /// Stops for which no change is known are set apart: the rest can still be healed.
  void set_goal() {
    for (const Finding& finding : base_.findings) {
      if (!stands_in_the_way(finding, options_.accept)) continue;
      (has_remedies(finding.check) ? goal_ : found_.without_remedy).push_back(finding.check);
    }
    for (const Finding& finding : found_.before.findings) { // that a search does not look at
      const bool left_out = base_.find(finding.check) == nullptr && finding.check == Check::fouling;
      if (left_out && stands_in_the_way(finding, options_.accept)) found_.without_remedy.push_back(finding.check);
    }
  }

  bool within_bounds() const {
    return found_.search.cases < options_.most_cases && states_.examined() < options_.most_ranges;
  }

  bool remember(const Node& node) { return seen_.insert(write_case(node.value)).second; }

  /// Whether a finding calls for a change: it stands in the way, or has become worse.
  bool calls(const Finding& finding, Status accept) const {
    const bool hopeless = among(found_.without_remedy, finding.check);
    return (stands_in_the_way(finding, accept) && !hopeless) || assessing::is_worse(finding, base_);
  }

  /// The changes that the findings of a changed case call for.
  Proposals calls_of(const Node& node, bool cautions_too) {
    Proposals all;
    for (const Finding& finding : node.assessment.findings) {
      if (!calls(finding, cautions_too ? Status::ok : options_.accept)) continue;
      for (Proposal& proposal : proposals_at(node, finding)) add(all, std::move(proposal));
    }
    std::stable_sort(all.begin(), all.end(), [](const Proposal& a, const Proposal& b) { return a.kind < b.kind; });
    return all;
  }

  std::optional<Node> changed(const Node& node, const Proposal& proposal) {
    if (has_change(node, proposal)) return std::nullopt;
    Node next{node.value, {}, node.changes};
    proposal.apply(next.value);
    next.changes.push_back(proposal);
    if (!remember(next)) return std::nullopt;
    ++found_.search.cases;
    auto assessment = assessed_quickly(next.value, states_);
    if (!assessment) return std::nullopt;
    next.assessment = *std::move(assessment);
    return next;
  }

  /// A change that makes none of the findings better that called for one is not followed further.
  bool gains(const Node& before, const Node& after) const {
    return std::any_of(before.assessment.findings.begin(), before.assessment.findings.end(),
                       [&](const Finding& f) { return calls(f, options_.accept) && is_better(f, after.assessment); });
  }

  /// What still stands in the way of the goal; nothing worse may come in its place.
  std::vector<Check> left_of(const Assessment& assessment) const {
    std::vector<Check> left;
    for (const Check check : still_in_the_way(assessment, goal_, options_.accept)) {
      if (!among(found_.without_remedy, check)) left.push_back(check);
    }
    return left;
  }

  bool holds_a_remedy(const ChangeSet& names) const {
    return std::any_of(accepted_.begin(), accepted_.end(), [&](const ChangeSet& one) { return includes(names, one); });
  }

  void search_from(const Node& root) {
    std::vector<Node> level = first_level(root);
    int last = goal_.empty() ? 0 : options_.most_changes;
    for (int size = 1; size <= last && !level.empty(); ++size) {
      for (const Node& node : level) judge(node);
      if (!accepted_.empty()) last = std::min(last, smallest_ + options_.beyond_smallest);
      if (!found_.search.cut_off) found_.search.complete_size = size;
      if (size == last) return;
      level = most_promising_first(std::move(level));
      std::vector<Node> next = next_level(level);
      if (found_.search.cut_off && accepted_.empty() && next.empty()) return follow_the_best(std::move(level), size);
      level = std::move(next);
    }
  }

  /// A search that its bounds ended goes on from the few best cases alone, so that what nearly heals is brought to an
  /// end.
  void follow_the_best(std::vector<Node> level, int size) {
    constexpr std::size_t followed = 3;
    const int most = found_.search.cases + options_.most_cases / 5;
    for (; size < options_.most_changes && accepted_.empty() && !level.empty(); ++size) {
      if (level.size() > followed) level.erase(level.begin() + followed, level.end());
      std::vector<Node> next;
      for (const Node& node : level) {
        for (const Proposal& proposal : calls_of(node, false)) {
          if (found_.search.cases >= most) return;
          auto one = changed(node, proposal);
          if (one && gains(node, *one)) next.push_back(*std::move(one));
        }
      }
      for (const Node& node : next) judge(node);
      level = most_promising_first(std::move(next));
    }
  }

  /// What a changed case has against it: so that a search that is cut off has followed the best of each size.
  std::size_t objections(const Assessment& assessment) const {
    return static_cast<std::size_t>(
        std::count_if(assessment.findings.begin(), assessment.findings.end(),
                      [&](const Finding& finding) { return calls(finding, options_.accept); }));
  }

  std::vector<Node> most_promising_first(std::vector<Node> level) const {
    std::stable_sort(level.begin(), level.end(),
                     [&](const Node& a, const Node& b) { return objections(a.assessment) < objections(b.assessment); });
    return level;
  }

  /// The single changes, among them those that only a caution calls for.
  std::vector<Node> first_level(const Node& root) {
    std::vector<Node> level;
    for (const Proposal& proposal : calls_of(root, true)) {
      if (!within_bounds()) break;
      if (auto next = changed(root, proposal)) level.push_back(*std::move(next));
    }
    found_.search.cut_off = !within_bounds();
    note_singles(root, level);
    level.erase(std::remove_if(level.begin(), level.end(), [&](const Node& node) { return !gains(root, node); }),
                level.end());
    return level;
  }

  std::vector<Node> next_level(const std::vector<Node>& level) {
    std::vector<Node> next;
    for (const Node& node : level) {
      if (holds_a_remedy(names_of(node.changes))) continue;
      for (const Proposal& proposal : calls_of(node, false)) {
        if (!within_bounds()) {
          found_.search.cut_off = true;
          return next;
        }
        ChangeSet names = names_of(node.changes);
        names.insert(name_of(proposal));
        if (holds_a_remedy(names)) continue;
        auto one = changed(node, proposal);
        if (one && gains(node, *one)) next.push_back(*std::move(one));
      }
    }
    return next;
  }

  void note_singles(const Node& root, const std::vector<Node>& level) {
    for (const Finding& before : base_.findings) {
      if (before.status != Status::stop && before.status != Status::caution) continue;
      SingleRemedies single{before.check, before.status, {}};
      for (const Node& node : level) {
        const auto after = status_of(node.assessment, before.check, before.part);
        const bool healed = !after || (*after < before.status && *after != Status::not_known);
        if (healed && nothing_worse(node.assessment, base_))
          single.changes.push_back(described(root.value, node).front());
      }
      if (!single.changes.empty()) found_.by_finding.push_back(std::move(single));
    }
  }

  /// Takes a changed case as a remedy if nothing is left or, as long as none is found, as the best so far.
  void judge(const Node& node) {
    if (!nothing_worse(node.assessment, base_)) return;
    const std::vector<Check> left = left_of(node.assessment);
    if (left.size() >= goal_.size()) return;
    const ChangeSet names = names_of(node.changes);
    if (left.empty()) {
      if (holds_a_remedy(names)) return;
      if (accepted_.empty()) smallest_ = static_cast<int>(names.size());
      accepted_.push_back(names);
    }
    candidates_.push_back({node, left});
  }

  struct Candidate {
    Node node;
    std::vector<Check> left;
  };

  /// Each change with its entries and its price, in the order in which it is made.
  static std::vector<Change> described(const Case& start, const Node& node) {
    std::vector<Change> changes;
    Case before = start;
    for (const Proposal& proposal : node.changes) {
      Case after = before;
      proposal.apply(after);
      changes.push_back(
          {proposal.kind, proposal.facts, entries_between(before, after), price_of(proposal.kind, start.prices)});
      before = std::move(after);
    }
    return changes;
  }

  /// Whether a candidate with fewer changes heals as much.
  bool holds_another(const Candidate& candidate) const {
    const ChangeSet names = names_of(candidate.node.changes);
    return std::any_of(candidates_.begin(), candidates_.end(), [&](const Candidate& other) {
      const ChangeSet few = names_of(other.node.changes);
      return few.size() < names.size() && other.left.size() <= candidate.left.size() && includes(names, few);
    });
  }

  /// The candidates with the least left, cheapest first where they have prices, then smallest, each verified by a full
  /// assessment.
  void take_best() {
    std::size_t least = goal_.size();
    for (const Candidate& candidate : candidates_) least = std::min(least, candidate.left.size());
    std::vector<Remedy> remedies;
    for (const Candidate& candidate : candidates_) {
      if (candidate.left.size() == least && !holds_another(candidate)) remedies.push_back(remedy_of(candidate));
    }
    std::stable_sort(remedies.begin(), remedies.end(), [](const Remedy& a, const Remedy& b) { return before(a, b); });
    for (Remedy& remedy : remedies) {
      if (static_cast<int>(found_.sets.size()) >= options_.most_sets) break;
      if (verify(remedy)) found_.sets.push_back(std::move(remedy));
    }
  }

  /// Tips that nothing heals because a rotor within their limits would no longer cut.
  void note_hopeless_tips() {
    if (!too_slow_to_cut(start_, base_)) return;
    for (const Check check : {Check::tip_speed, Check::overspeed_at_high_idle}) {
      const bool healed = !found_.sets.empty() && !among(found_.sets.front().left, check);
      if (among(goal_, check) && !healed) found_.without_remedy.push_back(check);
    }
  }

  static bool before(const Remedy& a, const Remedy& b) {
    if (a.price.has_value() && b.price.has_value() && *a.price != *b.price) return *a.price < *b.price;
    if (a.changes.size() != b.changes.size()) return a.changes.size() < b.changes.size();
    if (a.price.has_value() != b.price.has_value()) return a.price.has_value();
    return false;
  }

  Remedy remedy_of(const Candidate& candidate) const {
    Remedy remedy;
    remedy.changes = described(start_, candidate.node);
    remedy.price = price_of(remedy.changes);
    remedy.changed = candidate.node.value;
    return remedy;
  }

  /// The full assessment decides, with every check that the search left out.
  bool verify(Remedy& remedy) {
    const AssessmentResult result = try_assess(remedy.changed);
    if (!result.result || !nothing_worse(*result.result, found_.before)) return false;
    remedy.after = *result.result;
    for (const Finding& finding : remedy.after.findings) {
      const auto was = status_of(found_.before, finding.check, finding.part);
      const bool newly = !was || *was == Status::not_known;
      if (finding.status == Status::caution && newly) remedy.new_cautions.push_back(finding.check);
    }
    const std::vector<Check> before = in_the_way(found_.before, options_.accept);
    remedy.left = still_in_the_way(remedy.after, before, options_.accept);
    for (const Check check : before) {
      if (!among(remedy.left, check)) remedy.healed.push_back(check);
    }
    return !remedy.healed.empty();
  }

  RemedyOptions options_;
  Case start_;
  Assessment base_;
  States states_;
  Remedies found_;
  std::vector<Check> goal_;
  std::unordered_set<std::string> seen_;
  std::vector<ChangeSet> accepted_;
  std::vector<Candidate> candidates_;
  int smallest_ = 0;
};

} // namespace
} // namespace advising

Remedies remedies(const Case& value, const RemedyOptions& options) {
  check::at_least(options.most_changes, 1.0, {"remedies", "most_changes", ""});
  check::not_negative(options.beyond_smallest, {"remedies", "beyond_smallest", ""});
  check::at_least(options.most_sets, 1.0, {"remedies", "most_sets", ""});
  check::at_least(options.most_cases, 1.0, {"remedies", "most_cases", ""});
  check::at_least(options.most_ranges, 1.0, {"remedies", "most_ranges", ""});
  check::within(options.least_need, 0.0, 1.0, {"remedies", "least_need", ""});
  if (options.accept > Status::caution) {
    fail_input("remedies", "accept", status_name(options.accept), "ok or caution");
  }
  return advising::Search(value, options).run();
}

} // namespace v0
} // namespace fieldshaft
