// Checks the input of an implement that a shop builds: spline, input shaft and shear bolt, by formulas alone.
//
// The machine is invented: a trailed mower of 45 kW at 540 r/min, as first drawn and as altered. Every limit is
// printed with where it comes from. The figures hold for sound parts; a drawing is no permission to build: guards, the
// manuals of tractor and driveline and a licensed engineer's word, where the law asks for it, come first.
//
// Exit status: 0 when the last design passes, 1 otherwise.

#include <fieldshaft/materials.hpp>
#include <fieldshaft/overload.hpp>
#include <fieldshaft/power.hpp>
#include <fieldshaft/shaft.hpp>
#include <fieldshaft/spline.hpp>

#include <algorithm>
#include <cstdio>

namespace {

using namespace fieldshaft;

constexpr double yield_margin = 1.25; // the shop's own choice
constexpr double bolt_margin = 1.1;   // over the peak of the work, the shop's own choice

struct Design {
  const char* name;
  const Material* steel;
  Length shaft_diameter; // the smallest section, without splines
  Length spline_length;
  SplineSeat seat;      // how the yoke sits
  SplineSteel hardness; // the class whose lower end the steel reaches
  Length bolt_diameter;
  Length bolt_arm;
};

/// What the machine asks for.
struct Duty {
  Torque mean;
  Torque peak;
  Angle joint_angle; // the greatest while driven
};

void print_torque(const char* label, Torque torque) {
  std::printf("  %-34s %7.0f N·m  %6.0f lbf·ft\n", label, in(torque, unit::newton_metre), in(torque, unit::pound_foot));
}

bool judge(const char* label, double value, double limit, const char* unit, bool passes, const char* basis) {
  std::printf("  %-34s %7.2f %-4s limit %7.2f  %s  (%s)\n", label, value, unit, limit, passes ? "ok  " : "STOP", basis);
  return passes;
}

/// The six-tooth spline that the driveline's yoke slides on.
StraightSpline input_spline(const Design& design) {
  return sae_spline(6, SplineFit::b_slides_unloaded, inches(1.375), design.spline_length);
}

/// Torsion at the root and wear of the flanks.
bool spline_holds(const Design& design, const Duty& duty) {
  const StraightSpline spline = input_spline(design);
  const Stress shear_limit = shear_yield(*design.steel) / yield_margin;
  const double torsion = in(spline_stress(spline, duty.peak).root_torsion, unit::megapascal);
  const double flank = in(spline_stress(spline, duty.mean, {}, design.seat).flank_pressure, unit::megapascal);
  const Datum<SplineLimits> allowed = spline_limits(design.hardness);
  const Stress wear_limit = allowed.value().flank_pressure;
  const bool root = judge("root torsion at the peak", torsion, in(shear_limit, unit::megapascal), "MPa",
                          torsion <= in(shear_limit, unit::megapascal), "0.577 of the yield over the margin");
  const bool flanks = judge("flank pressure at the mean torque", flank, in(wear_limit, unit::megapascal), "MPa",
                            flank <= in(wear_limit, unit::megapascal), allowed.source().text);
  return root && flanks;
}

/// Torsion and the bending couple of the angled joint at the shaft's smallest section.
bool shaft_holds(const Design& design, const Duty& duty) {
  StubShaft shaft;
  shaft.root.diameter = design.shaft_diameter;
  StubLoad load;
  load.torque = duty.peak;
  load.joint_angle = duty.joint_angle;
  const double factor = stub_yield_safety_factor(shaft, load, design.steel->yield).factor;
  return judge("shaft, safety against yield", factor, yield_margin, "", factor >= yield_margin,
               design.steel->source.text);
}

/// The bolt must hold the peak at its weakest and save spline and shaft at its strongest.
bool bolt_fits(const Design& design, const Duty& duty) {
  const BoltGrade* grade = find_bolt_grade("8.8", design.bolt_diameter);
  if (grade == nullptr) return judge("shear bolt", 0, 0, "", false, "no such bolt of grade 8.8");
  const TorqueBand band = shear_bolt_band(design.bolt_diameter, design.bolt_arm, *grade, 1, 1);
  const Stress limit = shear_yield(*design.steel);
  const Torque shaft = yield_torque(SolidSection(design.shaft_diameter), limit);
  const Torque spline = yield_torque(SolidSection(input_spline(design).root_diameter()), limit);
  const Torque weakest = std::min(shaft, spline);
  print_torque("bolt goes, at the least", band.low);
  print_torque("bolt goes, at the most", band.high);
  print_torque("weaker of shaft and spline yields", weakest);
  const bool holds = judge("bolt over the peak of the work", band.low / duty.peak, bolt_margin, "", //
                           band.low >= bolt_margin * duty.peak, grade->source.text);
  const bool saves = judge("weaker part over the bolt", weakest / band.high, yield_margin, "",
                           weakest >= yield_margin * band.high, "the margin");
  return holds && saves;
}

bool design_passes(const Design& design, const Duty& duty) {
  std::printf("\n%s: %s, %s; shaft %.0f mm (%.3f in), spline %.0f mm, bolt M%.0f at %.0f mm\n", design.name,
              design.steel->name, design.steel->condition, in(design.shaft_diameter, unit::millimetre),
              in(design.shaft_diameter, unit::inch), in(design.spline_length, unit::millimetre),
              in(design.bolt_diameter, unit::millimetre), in(design.bolt_arm, unit::millimetre));
  const bool spline = spline_holds(design, duty);
  const bool shaft = shaft_holds(design, duty);
  const bool bolt = bolt_fits(design, duty);
  std::printf("  %s\n", spline && shaft && bolt ? "no objection in these five checks" : "to be altered");
  return spline && shaft && bolt;
}

} // namespace

int main() {
  const Torque mean = shaft_torque(kilowatts(45), rpm(540));
  const Duty duty{mean, 1.6 * mean, degrees(20)}; // 1.6 times the mean in the heaviest crop: invented
  std::printf("Input of an invented mower: 45 kW (%.1f hp) at 540 r/min\n", in(kilowatts(45), unit::horsepower));
  print_torque("mean torque", duty.mean);
  print_torque("peak torque", duty.peak);

  const Design drawn{"As drawn",
                     find_material("1045", "cold drawn"),
                     millimetres(32),
                     millimetres(75),
                     SplineSeat::sliding_unloaded,
                     SplineSteel::brinell_160_200,
                     millimetres(10),
                     millimetres(75)};
  const Design altered{"As altered, the yoke clamped",
                       find_material("4140", "oil quenched, tempered 425 °C"),
                       millimetres(45),
                       millimetres(100),
                       SplineSeat::fixed,
                       SplineSteel::brinell_302_351,
                       millimetres(8),
                       millimetres(62)};
  design_passes(drawn, duty);
  return design_passes(altered, duty) ? 0 : 1;
}
