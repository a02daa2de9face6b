// Whether the driveline's yoke fits the tractor's stub.

#include "assess/checks.hpp"
#include "assess/interface.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

void check_fit(const Case& value, Findings& findings) {
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  const ResolvedInterface yoke = resolve(value.driveline.tractor_yoke);
  const auto missing = unstated({{stub.stated, "tractor.pto.stub"}, {yoke.stated, "driveline.tractor_yoke"}});
  if (!missing.empty()) {
    findings.add(not_known(Check::spline_fit, "fit.unstated", missing));
    return;
  }
  Finding finding = make_finding(Check::spline_fit, Status::ok, "fit.same");
  if (stub.type == nullptr || yoke.type == nullptr) {
    finding = make_finding(Check::spline_fit, Status::not_known, "fit.unidentified");
    const PtoType* near = stub.type == nullptr ? stub.near : yoke.near;
    finding.facts.push_back(near != nullptr ? fact("near", std::string(near->name))
                                            : fact("near", PhraseId{"interface.none_near"}));
    finding.advice = {"fit.measure"};
  } else if (stub.type != yoke.type) {
    finding = make_finding(Check::spline_fit, Status::stop, "fit.different");
    finding.advice = {"fit.change_yoke"};
  }
  finding.facts.push_back(interface_fact("stub", stub));
  finding.facts.push_back(interface_fact("yoke", yoke));
  if (stub.type != nullptr) finding.basis = {stub.type->identity};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
