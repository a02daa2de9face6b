#pragma once
// The farm document described once, on top of the description of the case document.

#include "case/fields.hpp"
#include "case/price.hpp"

#include <fieldshaft/case/farm.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

inline constexpr Bounds hours_of_a_year{0.0, 8784.0 * 3600.0, false, false};
inline constexpr Bounds years_of_study{0.0, 100.0, true, false};
inline constexpr Bounds yearly_interest{0.0, 1.0, false, false};

template <class V> void fields(V& v, MachineCost& cost) {
  v.price("price", cost.price, PricePer::thing, "price paid or asked, with its currency: \"2400 EUR\"");
  v.price("list_price", cost.list_price, PricePer::thing, "price of the same machine new, today");
  v.field("age", cost.age, not_negative, "age in years");
  v.field("hours_so_far", cost.hours_so_far, not_negative, "hours that it has run");
  v.text("value_class", cost.value_class, "class of machines for what it will still be worth, such as baler");
  v.text("repair_class", cost.repair_class, "class of machines for its repairs, such as mower, rotary");
  v.price("value_at_end", cost.value_at_end, PricePer::thing,
          "what it will still be worth at the end of the study, in place of the class");
}

template <class V> void fields(V& v, FarmTractor& tractor) {
  fields(v, tractor.machine);
  v.list("other_hitches", tractor.other_hitches, "linkage beside the drawbar, or another hole of the drawbar");
  v.list("bars", tractor.bars, "bars on the tractor, such as the drawbar; from the end of the stub");
  v.list("tyres", tractor.tyres, "tyres beside the driveline and the tongue");
  fields(v, tractor.cost);
  v.field("hours", tractor.hours, hours_of_a_year, "hours of use in a year, all work together");
  v.field("share_down", tractor.share_down, fraction, "share of the season in which it is out of service: \"5 %\"");
}

template <class V> void fields(V& v, FarmImplement& implement) {
  fields(v, implement.machine);
  v.choice("hitch", implement.hitch, "what the implement hangs on");
  v.object("range", implement.range, "positions that the implement takes");
  v.object("limits", implement.limits, "limits that replace the defaults");
  v.list("bars", implement.bars, "bars on the implement, such as the tongue; from the pin");
  fields(v, implement.cost);
  v.field("hours", implement.hours, hours_of_a_year, "hours of work in a season");
  v.price("hire_price", implement.hire_price, PricePer::hour,
          "price of an hour where a contractor does the job because no tractor of the farm can");
}

template <class V> void fields(V& v, FarmDriveline& driveline) {
  v.text("name", driveline.name, Need::required, "what its owner calls it");
  v.names("serves", driveline.serves, "names of the implements on which it is used");
  fields(v, driveline.driveline);
  v.fitted("overload", driveline.overload, "overload device, or \"none\"");
}

template <class V> void fields(V& v, FarmOption& option) {
  v.text("name", option.name, Need::required, "what the change is, in a few words");
  fields(v, option.cost);
  v.text("tractor", option.tractor, "name of the tractor that gets the gears and stubs");
  v.list("gears", option.gears, "positions of the PTO speed lever that the tractor gets");
  v.list("stubs", option.stubs, "stubs that the tractor gets");
  v.choice("arrangement", option.arrangement, "how stub and speed of that tractor are chosen afterwards");
  v.list("tractors", option.tractors, "tractors that the farm gets");
  v.list("implements", option.implements, "implements that the farm gets");
  v.list("drivelines", option.drivelines, "drivelines that the farm gets");
  v.text("replaces", option.replaces, "name of the implement that is given up");
  v.price("sold_for", option.sold_for, PricePer::thing, "what that implement brings");
}

template <class V> void fields(V& v, Farm& farm) {
  v.text("title", farm.title, Need::optional, "one line that names the farm");
  v.text("note", farm.note, Need::optional, "remarks; carried into the report");
  v.text("currency", farm.currency, "currency of every price: three capital letters such as EUR");
  v.field("interest", farm.interest, yearly_interest, "interest a year: \"5 %\"");
  v.field("years", farm.years, years_of_study, "years over which the options are weighed");
  v.price("fuel_price", farm.fuel_price, PricePer::litre, "price of fuel: \"1.20 EUR/L\"");
  v.object("prices", farm.prices, "what changes of a pair cost, work included: \"120 EUR\"");
  v.list("tractors", farm.tractors, "the tractors, each as in a case, with its costs");
  v.list("implements", farm.implements, "the implements, each as in a case, with range, hours and costs");
  v.list("drivelines", farm.drivelines, "the drivelines, each as in a case, with the implements that it serves");
  v.list("options", farm.options, "changes that the farm weighs, each with its price");
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
