// The headings of the checks.

#include "report/catalogue.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {

std::string_view title_of(Check check) noexcept {
  switch (check) {
  case Check::pto_speed: return "PTO speed against implement speed";
  case Check::stub_and_lever: return "Stub against speed lever";
  case Check::spline_fit: return "Spline of stub and yoke";
  case Check::adaptor: return "Adaptor between stub and driveline";
  case Check::pto_rotation: return "Rotation of PTO and implement";
  case Check::pto_place: return "Place and drive of the PTO";
  case Check::power_need: return "Power need by the published table";
  case Check::interface_power: return "Implement power against the recommendation for the PTO type";
  case Check::tractor_power_through_interface: return "Tractor power against the recommendation for the PTO type";
  case Check::power_reserve: return "Tractor power against need";
  case Check::permitted_power: return "Tractor power against the implement's permitted input";
  case Check::whole_load: return "Tractor power against PTO, pull, climb and hydraulics together";
  case Check::root_torsion: return "Stub: torsion at the smallest section";
  case Check::root_torsion_at_angle: return "Stub: torsion with the bending that the joint angle adds";
  case Check::tooth_shear: return "Stub: shear of the spline teeth";
  case Check::flank_pressure: return "Stub: pressure on the spline flanks";
  case Check::tube_torsion: return "Driveline: torsion of the telescoping member";
  case Check::joint_rating: return "Driveline: torque against the joints' rating";
  case Check::overload_window: return "Overload device: setting between work and damage";
  case Check::start_up: return "Start: torque that can arrive when the PTO is engaged";
  case Check::simulated_start: return "Start: highest torque in a simulated engagement";
  case Check::clutch_heat: return "Start: heat in the tractor's PTO clutch";
  case Check::simulated_blockage: return "Blocked rotor: highest torque in a simulated blockage";
  case Check::braked_stop: return "Stop: highest torque when the tractor brakes its PTO";
  case Check::pulsing_torque: return "Driveline: torque under all pulses at working speeds";
  case Check::joint_bearing_life: return "Joints: life of the needle bearings";
  case Check::fatigue_life: return "Stub: life under joint bending and changing torque";
  case Check::drawbar_distance: return "Drawbar: shaft end to hitch pin";
  case Check::linkage: return "Three-point linkage against its category";
  case Check::working_angle: return "Joint angle in work";
  case Check::turning_angle: return "Joint angle while turning";
  case Check::transport_angle: return "Joint angle in transport";
  case Check::joint_lock: return "Joint angle against the lock of the yokes";
  case Check::wide_angle_centre: return "Wide-angle joint: its centre over the hitch pin";
  case Check::angle_difference: return "Difference of the two joint angles";
  case Check::speed_variation: return "Uneven running of the implement's shaft";
  case Check::inertia_excitation: return "Uneven running of the shaft between the joints";
  case Check::chain_variation: return "Uneven running behind both sections of the driveline";
  case Check::yoke_phase: return "Phase of the yokes: how the telescope is put together";
  case Check::joint_torque_swing: return "Torque that uneven joints add";
  case Check::overlap: return "Telescope: overlap at the longest";
  case Check::clearance: return "Telescope: clearance at the shortest";
  case Check::whirling: return "Whirling of the driveline over its lengths";
  case Check::cut_list: return "Telescope: lengths to cut";
  case Check::guard_tubes: return "Guard tubes over the range";
  case Check::turn_limit: return "How far to turn";
  case Check::lift_limit: return "How high to lift";
  case Check::fouling: return "Fouling of driveline, tongue or links";
  case Check::hand_check: return "Length measured by hand against the model";
  case Check::resonance: return "Resonance of the torsional line at working speeds";
  case Check::fixed_section: return "Joint angles behind the intermediate bearing";
  case Check::branch_angle: return "Branch: joint angles over its folding";
  case Check::branch_variation: return "Branch: uneven running";
  case Check::branch_telescope: return "Branch: telescope over its folding";
  case Check::branch_strength: return "Branch: joints and tube against its torque";
  case Check::tip_speed: return "Rotor: blade tip speed";
  case Check::overspeed_at_high_idle: return "PTO speed with the engine at high idle";
  case Check::overspeed_in_other_gears: return "PTO speed in the other gears";
  case Check::run_down: return "Rotor: how long it runs on";
  case Check::master_shield: return "Guard: master shield of the tractor";
  case Check::driveline_guard: return "Guard: driveline";
  case Check::input_guard: return "Guard: implement's input connection";
  }
  return "";
}

std::string_view subject_of(Check check) noexcept {
  switch (check) {
  case Check::branch_angle:
  case Check::branch_variation:
  case Check::branch_telescope:
  case Check::branch_strength: return "branches of the driveline";
  case Check::fixed_section:
  case Check::chain_variation: return "an intermediate bearing";
  case Check::wide_angle_centre: return "wide-angle joints";
  case Check::linkage:
  case Check::lift_limit: return "a three-point linkage";
  case Check::drawbar_distance:
  case Check::turn_limit: return "a drawbar";
  case Check::power_need: return "a need from the published table";
  case Check::overspeed_in_other_gears: return "other gears of the tractor";
  case Check::tip_speed:
  case Check::run_down: return "a rotor";
  default: return title_of(check);
  }
}

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
