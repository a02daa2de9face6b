#pragma once
// What a farm holds: its tractors, implements and drivelines, what they cost, and the changes that it weighs.
//
// Tractor, implement and driveline are described as in a case. As there, a datum that is not stated stays empty.

#include <fieldshaft/case/read.hpp>
#include <fieldshaft/cost/money.hpp>

namespace fieldshaft {
inline namespace v0 {

/// What owning a machine costs.
struct MachineCost {
  Stated<Money> price;              ///< paid, or asked
  Stated<Money> list_price;         ///< of the same machine new, today; the price where it is not stated
  Stated<double> age;               ///< in years, at the start of the study
  Stated<Time> hours_so_far;        ///< at the start of the study
  Stated<std::string> value_class;  ///< of `value_classes`, for what it is worth at the end
  Stated<std::string> repair_class; ///< of `repair_classes`
  Stated<Money> value_at_end;       ///< in place of the class
};

struct FarmTractor {
  Tractor machine; ///< its hitch, stub and selected gear are those of today; the study tries the others
  std::vector<Hitch> other_hitches; ///< the linkage beside the drawbar, or another hole of the drawbar
  std::vector<Bar> bars;            ///< on the tractor, that a driveline may foul
  std::vector<TyreCase> tyres;
  MachineCost cost;
  Stated<Time> hours;        ///< in a year, all work together
  Stated<double> share_down; ///< share of the season in which it is out of service
};

struct FarmImplement {
  Implement machine;
  Stated<HitchKind> hitch; ///< what it hangs on
  WorkingRange range;
  Limits limits;
  std::vector<Bar> bars; ///< on the implement, that a driveline may foul
  MachineCost cost;
  Stated<Time> hours;       ///< in a season
  Stated<Money> hire_price; ///< of an hour, for the job done by a contractor where no tractor of the farm can
};

struct FarmDriveline {
  std::string name;
  DrivelineCase driveline;
  Stated<Fitted<OverloadDevice>> overload;
  std::vector<std::string> serves; ///< names of the implements on which it is used
};

/// A change that the farm weighs: whatever it adds, at a price.
struct FarmOption {
  std::string name;
  MachineCost cost;
  Stated<std::string> tractor; ///< the tractor that gets the gears and stubs below
  std::vector<PtoGear> gears;
  std::vector<OtherStub> stubs;
  Stated<StubArrangement> arrangement; ///< of that tractor afterwards
  std::vector<FarmTractor> tractors;
  std::vector<FarmImplement> implements;
  std::vector<FarmDriveline> drivelines;
  Stated<std::string> replaces; ///< name of the implement that is given up
  Stated<Money> sold_for;       ///< what that implement brings
};

struct Farm {
  std::string title;
  std::string note;
  Stated<std::string> currency; ///< of every price
  Stated<double> interest;      ///< a year, as a share
  Stated<double> years;         ///< over which options are weighed
  Stated<Money> fuel_price;     ///< of a litre
  Prices prices;                ///< of changes to a pair, for its remedies
  std::vector<FarmTractor> tractors;
  std::vector<FarmImplement> implements;
  std::vector<FarmDriveline> drivelines;
  std::vector<FarmOption> options;
};

/// Version of the farm document that this library reads and writes: the value of its "schema" entry.
inline constexpr const char* farm_schema_version = "fieldshaft-farm/1";

/// A farm, or the problems that kept it from being read. Exactly one of the two is there.
struct FarmReading {
  std::optional<Farm> result;
  std::vector<CaseProblem> problems;
};

/// Reads a farm; never throws for a bad document.
FarmReading try_read_farm(std::string_view text);

/// Reads a farm, or throws CaseError with every problem of the document.
Farm read_farm(std::string_view text);

/// Every contradiction of a farm built in code: names that stand twice or that nothing bears, prices in two currencies.
std::vector<CaseProblem> farm_contradictions(const Farm& farm);

/// A farm as a document that reads back to the same farm. Quantities are written in SI units to the last digit.
std::string write_farm(const Farm& farm);

/// The JSON Schema (draft 2020-12) of the farm document.
std::string farm_json_schema();

} // namespace v0
} // namespace fieldshaft
