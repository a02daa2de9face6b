#pragma once
// Laws of assessments: random cases made worse, turned round, or written in another way.

#include "law.hpp"

#include <fieldshaft/fieldshaft.hpp>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <future>
#include <limits>
#include <map>
#include <sstream>

namespace case_laws {

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

inline const std::vector<Json>& examples() {
  static const std::vector<Json> all = [] {
    std::vector<Json> documents;
    for (const auto& entry : std::filesystem::directory_iterator(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases")) {
      std::ifstream file(entry.path());
      documents.push_back(Json::parse(file));
    }
    std::sort(documents.begin(), documents.end(), [](const Json& a, const Json& b) { return a["title"] < b["title"]; });
    return documents;
  }();
  return all;
}

/// The text of a quantity with its number (and tolerance) replaced: "400 mm ± 5 mm" at 1.1 is "440 mm ± 5 mm".
inline Json times(const Json& value, double factor) {
  if (!value.is_string()) return value;
  const std::string text = value.get<std::string>();
  char* end = nullptr;
  const double number = std::strtod(text.c_str(), &end);
  if (end == text.c_str()) return value;
  std::ostringstream scaled;
  scaled.precision(17);
  scaled << number * factor << end;
  return scaled.str();
}

/// Calls `f` with every text of a document.
template <class F> void each_text(Json& value, F&& f) {
  if (value.is_structured()) {
    for (Json& entry : value) each_text(entry, f);
  } else if (value.is_string()) {
    f(value);
  }
}

inline bool reads(const Json& document) { return try_read_case(document.dump()).result.has_value(); }

/// An example with about one quantity of four changed by up to a sixth; one in four without its overload device, which
/// hides the torque of engine and implement from every other part.
inline Json any_case(RandomInputs& r) {
  for (;;) {
    Json document = examples()[static_cast<std::size_t>(r.whole(0, static_cast<int>(examples().size()) - 1))];
    for (const char* part : {"tractor", "implement", "driveline", "overload"}) {
      if (!document.contains(part)) continue;
      each_text(document[part], [&r](Json& text) {
        if (r.whole(0, 3) == 0) text = times(text, r.between(0.86, 1.16));
      });
    }
    if (r.whole(0, 3) == 0) document["overload"] = "none";
    if (reads(document)) return document;
  }
}

/// The worst of a check: its status, and the least margin that a finding of that status has to its limit.
struct Outcome {
  Status status = Status::ok;
  double margin = std::numeric_limits<double>::infinity();
};
using Outcomes = std::map<Check, Outcome>;

inline Outcomes outcomes_of(const Assessment& assessment) {
  Outcomes worst;
  for (const Finding& finding : assessment.findings) {
    Outcome& of_check = worst[finding.check];
    if (finding.status < of_check.status) continue;
    if (finding.status > of_check.status) of_check = {finding.status, std::numeric_limits<double>::infinity()};
    if (finding.margin) of_check.margin = std::min(of_check.margin, *finding.margin);
  }
  return worst;
}

inline Assessment assessed(const Json& document) { return assess(read_case(document.dump())); }
inline Outcomes outcomes_of(const Json& document) { return outcomes_of(assessed(document)); }

inline bool is_of(Check check, const std::vector<Check>& some) {
  return some.empty() || std::find(some.begin(), some.end(), check) != some.end();
}

/// Findings that were held against each other so far: a law that compares nothing would hold of anything.
inline long& compared() {
  static long count = 0;
  return count;
}

/// Margins of formulas may differ by rounding, those of proved extremes by the gap that the proof leaves.
constexpr double margin_rounding = 1e-9;
constexpr double margin_gap = 0.02;

/// No check of the list (all, if it is empty) is better after the change than before, in status or in margin. Returns
/// whether one of them is worse.
inline bool check_not_better(const Json& before, const Json& after, const std::vector<Check>& checks = {}) {
  if (!reads(after)) return false; // the change made a contradiction, which is refused
  const Outcomes was = outcomes_of(before);
  const Outcomes is = outcomes_of(after);
  const double room = before.contains("range") ? margin_gap : margin_rounding;
  bool worse_one = false;
  for (const auto& entry : was) {
    const Check check = entry.first;
    const Outcome& old = entry.second;
    if (!is_of(check, checks) || is.count(check) == 0) continue;
    const Outcome& now = is.at(check);
    INFO(std::string(check_id(check)), ": ", status_name(old.status), " became ", status_name(now.status), ", ",
         old.margin, " became ", now.margin, "\n", before.dump(), "\n", after.dump());
    ++compared();
    CHECK(!(now.status < old.status));
    const bool same_limit = now.status == old.status; // a margin goes by the limit that the status goes by
    if (same_limit && is_finite(old.margin) && is_finite(now.margin)) {
      CHECK(now.margin <= old.margin + room * std::max(1.0, std::abs(old.margin)));
    }
    worse_one = worse_one || now.status > old.status || (same_limit && now.margin < old.margin);
  }
  return worse_one;
}

inline void check_same(const Json& before, const Json& after) {
  const Outcomes was = outcomes_of(before);
  const Outcomes is = outcomes_of(after);
  const double room = before.contains("range") ? margin_gap : margin_rounding;
  for (const auto& entry : was) {
    const auto found = is.find(entry.first);
    INFO(std::string(check_id(entry.first)), "\n", before.dump(), "\n", after.dump());
    REQUIRE(found != is.end());
    CHECK(found->second.status == entry.second.status);
    const double margin = entry.second.margin;
    if (is_finite(margin)) CHECK(std::abs(found->second.margin - margin) <= room * std::max(1.0, std::abs(margin)));
  }
  CHECK(was.size() == is.size());
}

inline const std::vector<Check> strength = {Check::permitted_power, Check::root_torsion,   Check::root_torsion_at_angle,
                                            Check::tooth_shear,     Check::flank_pressure, Check::tube_torsion,
                                            Check::joint_rating};
inline const std::vector<Check> geometry = {Check::working_angle,    Check::turning_angle,   Check::transport_angle,
                                            Check::angle_difference, Check::speed_variation, Check::overlap,
                                            Check::clearance,        Check::turn_limit};

/// The document with next to nothing left of its working range, which proves itself at once: what does not go by the
/// range stays as it was.
inline Json narrowed(Json document) {
  if (!document.contains("range")) return document;
  for (const char* name : {"working", "turning", "transport"}) {
    if (!document["range"].contains(name)) continue;
    Json& state = document["range"][name];
    if (state.contains("lift")) {
      state["lift"] = {state["lift"][0], state["lift"][0]};
      continue;
    }
    Json narrow = {{"yaw", {"-1 deg", "1 deg"}}, {"pitch", {"0 deg", "0 deg"}}, {"roll", {"0 deg", "0 deg"}}};
    if (state.contains("driven")) narrow["driven"] = state["driven"];
    state = narrow;
  }
  return document;
}

/// One random case and the same with the entry at `pointer` times `low` to `high`: no check of the list gets better.
inline bool worsen_once(RandomInputs& r, const Json::json_pointer& at, double low, double high,
                        const std::vector<Check>& checks, bool whole_range) {
  Json before = any_case(r);
  while (!before.contains(at)) before = any_case(r);
  if (!whole_range) before = narrowed(before);
  Json after = before;
  const double factor = r.between(low, high);
  after[at] = after[at].is_number() ? Json(after[at].get<double>() * factor) : times(after[at], factor);
  return check_not_better(before, after, checks);
}

/// The law of an entry that makes checks worse as it grows or shrinks: tried on one case as it is, and on some of which
/// little range is left. An entry that nothing gets worse by is one that no check reads.
inline void worsen(RandomInputs& r, const char* pointer, double low, double high, const std::vector<Check>& checks) {
  const Json::json_pointer at(pointer);
  bool worse_one = worsen_once(r, at, low, high, checks, true);
  for (int i = 0; i < 20; ++i) worse_one = worsen_once(r, at, low, high, checks, false) || worse_one;
  CHECK_MESSAGE(worse_one, std::string(pointer), " makes nothing worse");
}

/// One of the measurements that may carry a tolerance, made looser.
inline Json loosened(RandomInputs& r, Json document) {
  std::vector<Json*> measured;
  each_text(document, [&measured](Json& text) {
    if (text.get<std::string>().find("±") != std::string::npos) measured.push_back(&text);
  });
  if (measured.empty()) return document;
  Json& text = *measured[static_cast<std::size_t>(r.whole(0, static_cast<int>(measured.size()) - 1))];
  const std::string whole = text.get<std::string>();
  const std::size_t tolerance = whole.find("±") + std::string("±").size();
  text = whole.substr(0, tolerance) + " " + times(whole.substr(tolerance), r.between(1.0, 4.0)).get<std::string>();
  return document;
}

/// The ends of every angle interval of every state, further apart.
inline Json widened(RandomInputs& r, Json document) {
  for (auto& state : document["range"]) {
    for (const char* angle : {"yaw", "pitch", "roll"}) {
      if (!state.contains(angle)) continue;
      Json& range = state[angle];
      if (!range.is_array() || range[0].get<std::string>().front() != '-') continue;
      for (Json& end : range) end = times(end, r.between(1.0, 1.5));
    }
  }
  return document;
}

/// The same amount in another unit, to the last digit or two.
inline std::string in_other_unit(const std::string& text) {
  static const struct {
    const char* from;
    const char* to;
    double factor;
  } units[] = {{"mm", "in", 1 / 25.4}, {"deg", "rad", pi / 180}, {"r/min", "rad/s", pi / 30},
               {"kW", "W", 1000},      {"N·m", "kN·m", 1e-3},    {"m/s", "km/h", 3.6},
               {"MPa", "Pa", 1e6},     {"kg", "g", 1000},        {"h", "min", 60}};
  char* end = nullptr;
  const double number = std::strtod(text.c_str(), &end);
  if (end == text.c_str()) return text;
  const std::string rest = end;
  for (const auto& unit : units) {
    const std::string from = std::string(" ") + unit.from;
    if (rest.rfind(from, 0) != 0 || (rest.size() > from.size() && rest[from.size()] != ' ')) continue;
    std::ostringstream out;
    out.precision(17);
    out << number * unit.factor << ' ' << unit.to;
    const std::size_t more = rest.find("±");
    if (more != std::string::npos) out << " ± " << in_other_unit(rest.substr(more + std::string("± ").size()));
    return out.str();
  }
  return text;
}

inline Json in_other_units(Json document) {
  for (const char* part : {"tractor", "implement", "driveline", "overload", "range", "limits"}) {
    if (document.contains(part)) {
      each_text(document[part], [](Json& text) { text = in_other_unit(text.get<std::string>()); });
    }
  }
  return document;
}

/// Every object with its keys in another order.
inline Json shuffled(RandomInputs& r, const Json& value) {
  if (value.is_array()) {
    Json list = Json::array();
    for (const Json& entry : value) list.push_back(shuffled(r, entry));
    return list;
  }
  if (!value.is_object()) return value;
  std::vector<std::string> keys;
  for (const auto& item : value.items()) keys.push_back(item.key());
  for (std::size_t i = keys.size(); i > 1; --i) {
    std::swap(keys[i - 1], keys[static_cast<std::size_t>(r.whole(0, static_cast<int>(i) - 1))]);
  }
  Json object = Json::object();
  for (const std::string& key : keys) object[key] = shuffled(r, value[key]);
  return object;
}

inline std::string negative(const std::string& text) { return text.front() == '-' ? text.substr(1) : "-" + text; }

/// Left for right: lateral offsets, yaw, roll and yoke phase.
inline Json mirror_image(Json document) {
  for (const char* at : {"/tractor/hitch/lateral", "/implement/input/lateral", "/driveline/yoke_phase"}) {
    const Json::json_pointer pointer(at);
    if (document.contains(pointer)) document[pointer] = negative(document[pointer].get<std::string>());
  }
  for (auto& state : document["range"]) {
    for (const char* angle : {"yaw", "roll"}) {
      if (!state.contains(angle) || !state[angle].is_array()) continue;
      state[angle] = {negative(state[angle][1]), negative(state[angle][0])};
    }
  }
  return document;
}

inline const Law laws[] = {
    {"more power need never improves a finding of strength", 4,
     [](RandomInputs& r) { worsen(r, "/implement/power_need", 1.0, 3.0, strength); }},
    {"more power need never improves the power reserve", 3,
     [](RandomInputs& r) { worsen(r, "/implement/power_need", 1.0, 3.0, {Check::power_reserve}); }},
    {"a stronger tractor never improves a finding of strength", 4,
     [](RandomInputs& r) { worsen(r, "/tractor/power", 1.0, 3.0, strength); }},
    {"more torque rise never improves a finding of strength", 3,
     [](RandomInputs& r) { worsen(r, "/tractor/engine/torque_rise", 1.0, 2.0, strength); }},
    {"an engine that gives more than the implement asks is what the parts must carry where no device is fitted", 3,
     [](RandomInputs& r) {
       bool worse_one = false;
       for (int i = 0; i < 20; ++i) {
         Json before = narrowed(any_case(r));
         const Json::json_pointer rise("/tractor/engine/torque_rise");
         if (!before.contains(rise)) continue;
         before["overload"] = "none";
         before["implement"]["peak_factor"] = 1.0;
         before["implement"].erase("torque_swing");
         Json after = before;
         after[rise] = times(after[rise], 1.5);
         worse_one = check_not_better(before, after, strength) || worse_one;
       }
       CHECK(worse_one);
     }},
    {"a higher peak factor never improves a finding of strength", 3,
     [](RandomInputs& r) { worsen(r, "/implement/peak_factor", 1.0, 3.0, strength); }},
    {"a higher setting of the overload device never improves a finding of strength", 4,
     [](RandomInputs& r) { worsen(r, "/overload/setting", 1.0, 3.0, strength); }},
    {"more scatter of the overload device never improves a finding of strength or of its window", 3,
     [](RandomInputs& r) {
       std::vector<Check> checks = strength;
       checks.push_back(Check::overload_window);
       worsen(r, "/overload/scatter", 1.0, 3.0, checks);
     }},
    {"a weaker joint never improves a finding", 3,
     [](RandomInputs& r) { worsen(r, "/driveline/joint_rating", 0.2, 1.0, {}); }},
    {"a thinner tube never improves its torsion", 3,
     [](RandomInputs& r) { worsen(r, "/driveline/tube/outer_diameter", 0.86, 1.0, {Check::tube_torsion}); }},
    {"a shorter hub never improves its teeth", 3,
     [](RandomInputs& r) {
       worsen(r, "/driveline/hub_length", 0.2, 1.0, {Check::tooth_shear, Check::flank_pressure});
     }},
    {"less permitted power never improves a finding", 3,
     [](RandomInputs& r) { worsen(r, "/implement/permitted_power", 0.2, 1.0, {Check::permitted_power}); }},
    {"less closed overlap never improves the overlap", 3,
     [](RandomInputs& r) { worsen(r, "/driveline/closed_overlap", 0.3, 1.0, {Check::overlap}); }},
    {"a longer closed driveline never improves the clearance", 3,
     [](RandomInputs& r) { worsen(r, "/driveline/closed_length", 1.0, 1.4, {Check::clearance}); }},
    {"a longer blade never improves its tip speed", 3,
     [](RandomInputs& r) { worsen(r, "/implement/rotor/tip_radius", 1.0, 2.0, {Check::tip_speed}); }},
    {"a lower permitted tip speed never improves the tip speed", 3,
     [](RandomInputs& r) { worsen(r, "/implement/rotor/highest_tip_speed", 0.3, 1.0, {Check::tip_speed}); }},
    {"a higher idle speed never improves the overspeed", 3,
     [](RandomInputs& r) { worsen(r, "/tractor/engine/high_idle", 1.0, 1.3, {Check::overspeed_at_high_idle}); }},
    {"a longer wanted life never improves a finding", 3,
     [](RandomInputs& r) { worsen(r, "/limits/wanted_life", 1.0, 20.0, {}); }},
    {"a wider range never improves a finding of the driveline", 4,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       check_not_better(before, widened(r, before), geometry);
     }},
    {"a looser measurement never improves a finding, and never turns stop into ok", 4,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       check_not_better(before, loosened(r, before));
     }},
    {"the units of the input never change a finding", 4,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       check_same(before, in_other_units(before));
     }},
    {"the order of keys never changes a report, to the last letter", 3,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       CHECK(to_text(assessed(before)) == to_text(assessed(shuffled(r, before))));
     }},
    {"mirroring left and right changes no finding", 4,
     [](RandomInputs& r) {
       Json before = any_case(r);
       const auto measured = [](const Json& document) { // a furrow or a turning radius has a side of its own
         return document["range"].dump().find("radius") != std::string::npos;
       };
       while (before.contains("fouling") || !before.contains("range") || measured(before)) before = any_case(r);
       before["implement"]["input"]["lateral"] = std::to_string(r.between(-60, 60)) + " mm ± 4 mm";
       for (auto& state : before["range"]) {
         if (state.contains("yaw") && state["yaw"].is_array())
           state["yaw"][1] = times(state["yaw"][1], r.between(0, 1));
       }
       check_same(before, mirror_image(before));
     }},
    {"a case written and read again has the same findings", 3,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       check_same(before, Json::parse(write_case(read_case(before.dump()))));
     }},
    {"names, title and note change no finding", 3,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       Json after = before;
       after["title"] = "another";
       after["note"] = "another (invented)";
       after["tractor"]["name"] = "another";
       after["implement"]["name"] = "another";
       check_same(before, after);
     }},
    {"prices change no finding", 3,
     [](RandomInputs& r) {
       const Json before = any_case(r);
       Json after = before;
       after["prices"] = {{"cut_tubes", "80 EUR"}};
       check_same(before, after);
     }},
    {"a missing guard is never better than one that is there, one that is not stated never ok", 3,
     [](RandomInputs& r) {
       Json present = any_case(r);
       present["driveline"]["guard"] = "present";
       Json absent = present;
       absent["driveline"]["guard"] = "absent";
       check_not_better(present, absent);
       absent["driveline"].erase("guard");
       CHECK(outcomes_of(absent).at(Check::driveline_guard).status != Status::ok);
     }},
    {"the verdict is the worst finding, and no pass rests on a missing or impossible number", 4,
     [](RandomInputs& r) {
       const Assessment assessment = assessed(any_case(r));
       Status worst = Status::ok;
       for (const Finding& finding : assessment.findings) {
         worst = worse(worst, finding.status);
         if (finding.status != Status::ok) continue;
         CHECK(finding.missing.empty());
         CHECK((!finding.value || is_finite(finding.value->si)));
         CHECK((!finding.margin || *finding.margin >= 0.0));
       }
       CHECK(assessment.verdict() == worst);
     }},
    {"a case assessed in two threads at once has one report", 3,
     [](RandomInputs& r) {
       const Case value = read_case(any_case(r).dump());
       const auto report = [&value] { return to_json(assess(value)); };
       auto other = std::async(std::launch::async, report);
       CHECK(report() == other.get());
     }},
    {"metric and US reports give one verdict", 3,
     [](RandomInputs& r) {
       const Assessment assessment = assessed(any_case(r));
       const Json metric = Json::parse(to_json(assessment, UnitStyle::metric));
       const Json us = Json::parse(to_json(assessment, UnitStyle::us));
       CHECK(metric["verdict"] == us["verdict"]);
       REQUIRE(metric["findings"].size() == us["findings"].size());
       for (std::size_t i = 0; i < us["findings"].size(); ++i) {
         CHECK(metric["findings"][i]["status"] == us["findings"][i]["status"]);
       }
     }},
    {"every remedy heals what it claims and makes nothing worse", 1,
     [](RandomInputs& r) {
       RemedyOptions options;
       options.most_cases = 40;
       options.most_ranges = 20;
       options.most_sets = 2;
       const Case value = read_case(any_case(r).dump());
       const Outcomes was = outcomes_of(assess(value));
       for (const Remedy& remedy : remedies(value, options).sets) {
         const Outcomes is = outcomes_of(assess(remedy.changed));
         for (const Check check : remedy.healed) {
           INFO(std::string(check_id(check)), "\n", write_case(value), "\n", write_case(remedy.changed));
           CHECK((is.count(check) == 0 || is.at(check).status <= Status::caution));
         }
         for (const auto& entry : is) {
           CAPTURE(std::string(check_id(entry.first)));
           const auto before = was.find(entry.first);
           CHECK(entry.second.status <= (before == was.end() ? Status::caution : before->second.status));
         }
       }
     }},
};

} // namespace case_laws
