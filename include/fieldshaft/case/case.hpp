#pragma once
// What a case holds: tractor, implement, driveline, overload device, working range and limits.
//
// A datum that the document does not state stays empty (`Stated`), and empty is never taken for a value:
// "none" and "unstated" differ.

#include <fieldshaft/cost/money.hpp>
#include <fieldshaft/power/basis.hpp>
#include <fieldshaft/power/machine.hpp>
#include <fieldshaft/pto.hpp>
#include <fieldshaft/units/text.hpp>

#include <optional>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A datum that may be missing from the case.
template <class T> using Stated = std::optional<T>;

/// A part that is fitted or is known not to be: "none" in the document is `present == false`.
template <class T> struct Fitted {
  bool present = false;
  T item{};
};

/// A length measured on the machine, with its tolerance: "600 mm ± 10 mm".
using MeasuredLength = Measured<Length>;

template <class Q> struct Interval {
  Q low{};
  Q high{};
};

/// Which power the stated figure is. The three differ by 10 % and more and are never mixed silently.
enum class PowerBasis { pto, net_engine, gross_engine };

/// The state of a guard or shield. Unstated is `Stated` without value.
enum class GuardState { present, damaged, absent };

/// How a yoke sits on its spline.
enum class YokeSeat { clearance, clamped };

enum class JointKind { plain, wide_angle };

enum class HitchKind { drawbar, three_point };

/// The category of a three-point linkage.
enum class LinkageCategory { one, one_narrow, two, two_narrow, three, three_narrow, four, four_narrow };

/// Whether the top link holds the implement, or hangs slack while the implement stands on its own wheels.
enum class TopLink { tight, slack };

enum class DeviceKind { friction_clutch, shear_bolt, cut_out_clutch };

enum class DevicePlace { tractor_end, implement_end };

/// A steel by name from the catalogue, or by its own strengths.
struct SteelChoice {
  Stated<std::string> name;
  Stated<std::string> condition;
  Stated<Stress> yield;
  Stated<Stress> ultimate;
  Stated<double> hardness; ///< Brinell
};

/// A PTO interface: one of the standard types, or what was counted and measured.
struct Interface {
  Stated<double> type; ///< 1 to 4; 0 is the pre-standard 1 1/8 in shaft
  Stated<double> spline_count;
  Stated<MeasuredLength> diameter;
};

/// A further stub that the tractor has, or that its manual allows in place of the one that is out.
struct OtherStub {
  Interface interface;
  SteelChoice steel; ///< that of the stub which is out says nothing of this one
};

/// One position of the tractor's PTO speed lever.
struct PtoGear {
  std::string name;
  Stated<AngularSpeed> pto_speed;    ///< nominal
  Stated<AngularSpeed> engine_speed; ///< at which the nominal PTO speed is reached
};

/// On which side of the tractor the stub stands.
enum class PtoPlace { rear, front, mid };

/// What turns it: the engine through the speed gears, or the wheels, in step with the ground.
enum class PtoDrive { engine, ground };

struct TractorPto {
  Stated<PtoPlace> place;
  Stated<PtoDrive> drive;
  Stated<Rotation> rotation; ///< seen facing the end of the stub
  Stated<StubArrangement> arrangement;
  Interface stub;
  SteelChoice stub_steel;
  std::vector<OtherStub> other_stubs;
  std::vector<PtoGear> gears;
  Stated<std::string> selected; ///< name of the gear that is engaged
  Stated<Torque> clutch_torque; ///< at which the PTO clutch of the tractor slips, at the PTO shaft
  Stated<Torque> brake_torque;  ///< with which it stops the PTO once the clutch is let go; 0: it has no brake
  Stated<GuardState> master_shield;
  Stated<GuardState> other_stub_cap; ///< over the stub that stands out unused, where two do
};

/// A point of the full-load curve or the governor line: torque of the engine or its power, of the basis that
/// `Tractor::power_basis` names.
struct CurvePoint {
  Stated<AngularSpeed> speed; ///< of the engine
  Stated<Torque> torque;      ///< at the engine's speed; one of the two
  Stated<Power> power;
};

struct Engine {
  Stated<AngularSpeed> rated_speed;
  Stated<AngularSpeed> high_idle;
  Stated<double> torque_rise;    ///< (peak torque - rated torque) / rated torque
  std::vector<CurvePoint> curve; ///< in place of it: by rising speed, one at rated speed, the governor line above it
};

/// A coupler between the ends of the links and the implement.
struct QuickCoupler {
  Stated<MeasuredLength> depth; ///< link ends to the implement's lower hitch points, rearwards
  Stated<MeasuredLength> rise;  ///< and upwards
};

/// The hitch. A drawbar uses distance, drop and lateral; a three-point linkage the rest.
struct Hitch {
  Stated<HitchKind> kind;
  Stated<MeasuredLength> distance; ///< PTO shaft end to pin, horizontally
  Stated<MeasuredLength> drop;     ///< PTO shaft axis down to the contact height of the pin
  Stated<MeasuredLength> lateral;  ///< pin left of the PTO axis
  Stated<MeasuredLength> lower_pivot_behind;
  Stated<MeasuredLength> lower_pivot_below;
  Stated<MeasuredLength> lower_link;
  Stated<MeasuredLength> top_pivot_behind;
  Stated<MeasuredLength> top_pivot_below;
  Stated<MeasuredLength> top_link;
  Stated<MeasuredLength> level_at;    ///< instead of the top link's length: the lift at which the machine stands level
  Stated<MeasuredLength> span;        ///< between the lower hitch points; a height difference asks for it
  Stated<MeasuredLength> convergence; ///< where the lower links meet ahead of the lower hitch points; sway asks for it
  Stated<LinkageCategory> category;
  Stated<Fitted<QuickCoupler>> quick_coupler;
};

struct Tractor {
  std::string name;
  Stated<Power> power;
  Stated<PowerBasis> power_basis;
  Stated<MeasuredLength> wheelbase;       ///< front to rear axle
  Stated<MeasuredLength> rear_axle_ahead; ///< rear axle ahead of the end of the stub
  Stated<MeasuredLength> shaft_height;    ///< axis of the stub above the ground
  Stated<MeasuredLength> track;           ///< between the middles of the rear wheels
  Stated<Mass> mass;                      ///< with ballast and what it carries
  Stated<Traction> traction;
  Engine engine;
  TractorPto pto;
  Hitch hitch;
};

/// A rotor: its speed is stated for a stated input speed, so that the ratio cannot be read upside down.
struct RotorCase {
  Stated<Length> tip_radius;
  Stated<AngularSpeed> input_speed;
  Stated<AngularSpeed> rotor_speed;
  Stated<Speed> highest_tip_speed; ///< from the operator's manual, if it gives one
};

/// The wheels that carry the rear of a mounted machine while its top link hangs slack.
struct SupportWheels {
  Stated<MeasuredLength> behind; ///< lower hitch points to the wheels' lowest point, rearwards
  Stated<MeasuredLength> below;  ///< and downwards, the machine level
};

/// The upright pivot about which a semi-mounted machine steers behind the lower links, on its headstock.
struct SteeringPivot {
  Stated<MeasuredLength> behind;  ///< lower hitch points to the pivot, rearwards
  Stated<MeasuredLength> lateral; ///< left of the middle between them
};

/// The power input connection: where the implement's input shaft ends, in the implement frame.
struct InputConnection {
  Stated<MeasuredLength> behind;  ///< hitch pin (or lower hitch points) to the shaft end, rearwards
  Stated<MeasuredLength> above;   ///< shaft axis above the pin's contact height (or the lower hitch points)
  Stated<MeasuredLength> lateral; ///< left of the pin
  Stated<Length> bearing_span;    ///< between the two bearings that carry the input shaft
  Stated<Measured<Angle>> yaw;    ///< where the shaft points: to the left; unstated: straight forward
  Stated<Measured<Angle>> pitch;  ///< and downwards
  Stated<GuardState> guard;
};

/// A place measured from the end of the stub (on the tractor) or from the pin (on the implement).
struct Place {
  Stated<MeasuredLength> behind;
  Stated<MeasuredLength> left;
  Stated<MeasuredLength> above;
};

/// A tube of the telescope: round, or any closed profile by area, perimeter and wall.
struct TubeProfile {
  Stated<Length> outer_diameter;
  Stated<Length> inner_diameter;
  Stated<Area> enclosed_area;
  Stated<Length> perimeter;
  Stated<Length> wall;
  Stated<SecondMomentOfArea> second_moment; ///< of a profile, about the axis for which it is least
};

/// Where the splitter's shaft of a branch points; `direct`: the splitter drives it itself, without a driveline.
enum class BranchSide { left, right, rear, direct };

struct OverloadDevice {
  Stated<DeviceKind> kind;
  Stated<Torque> setting; ///< nominal torque at which it slips, shears or trips, at its own place
  Stated<double> scatter; ///< plus and minus, as a fraction of the setting
  Stated<DevicePlace> place;
};

/// A driveline from a splitter gearbox on the implement to a part that folds about a hinge. Places are those of the
/// unfolded machine, from the pin or the lower hitch points.
struct BranchCase {
  std::string name;
  Stated<BranchSide> side;
  Stated<double> torque_share;          ///< of the torque that enters the splitter
  Stated<AngularSpeed> speed;           ///< of the branch while the implement's input turns at its input_speed
  Place output;                         ///< end of the splitter's shaft
  Place hinge;                          ///< axis about which the part folds: along the machine, at the rear across it
  Place input;                          ///< end of the folding part's input shaft, which points back at the splitter
  Stated<Interval<Angle>> fold;         ///< while its driveline turns; positive: up
  Stated<Interval<Angle>> fold_at_rest; ///< as far as it folds with the driveline on, PTO off, as for transport
  Stated<bool> coupled_at_rest;         ///< no: the driveline is taken off before the part folds further than `fold`
  Stated<JointKind> front_joint_kind;   ///< at the splitter
  Stated<JointKind> rear_joint_kind;
  Stated<MeasuredLength> front_joint; ///< end of the splitter's shaft to the joint centre, along that shaft
  Stated<MeasuredLength> rear_joint;
  Stated<MeasuredLength> front_coupling_yoke; ///< wide-angle: between its two crosses
  Stated<MeasuredLength> rear_coupling_yoke;
  Stated<Angle> front_joint_lock; ///< angle at which the joint's yokes touch
  Stated<Angle> rear_joint_lock;
  Stated<Angle> yoke_phase;
  Stated<MeasuredLength> closed_length;
  Stated<MeasuredLength> closed_overlap;
  Stated<Torque> joint_rating;
  TubeProfile tube; ///< the weaker member
  SteelChoice tube_steel;
  Stated<Fitted<OverloadDevice>> overload; ///< of its own, with its setting at the branch's speed
};

struct Implement {
  std::string name;
  Stated<AngularSpeed> input_speed;
  Stated<Rotation> rotation; ///< that the PTO must have for it, seen facing the end of the tractor's stub
  Stated<Power> power_need;
  Stated<std::string> machine; ///< row of the published table: gives the need, or is what power_need is compared with
  Stated<Length> width;        ///< working width
  Stated<MassRate> feed_rate;
  Stated<FeedBasis> feed_basis; ///< what the feed rate weighs
  Stated<double> moisture;      ///< of the wet material: water over the whole
  Stated<bool> note_applies;    ///< what the row's note multiplies its need for: straw, a short chop
  Stated<double> peak_factor;   ///< peak torque over mean torque at the input
  Stated<double> torque_swing;  ///< how far the torque swings about its mean in steady work, as a share of it
  Stated<Power> permitted_power;
  Stated<Force> draft; ///< pull that it asks on level ground, its rolling included
  Stated<Power> hydraulic_power;
  Stated<Mass> mass;
  Stated<MeasuredLength> mast_height;  ///< mounted: upper hitch point above the lower ones
  Stated<MeasuredLength> mast_forward; ///< and ahead of them; unstated: straight above
  Stated<MeasuredLength> lower_pin;    ///< diameter of the lower hitch pins
  Stated<MeasuredLength> upper_pin;    ///< and of the upper one
  Stated<Fitted<SupportWheels>> support_wheels;
  Stated<SteeringPivot> steering_pivot; ///< semi-mounted; unstated: it does not steer behind the links
  Stated<MeasuredLength> tongue_length; ///< trailed: pin to the implement's axle, rearwards
  Stated<MeasuredLength> track;         ///< between the middles of its wheels
  InputConnection input;
  Stated<Fitted<RotorCase>> rotor;
  std::vector<BranchCase> branches; ///< behind a splitter gearbox; none stated: there is none
};

/// A part between the tractor's stub and the driveline's yoke.
struct Adaptor {
  Stated<Length> length;
};

/// A length of the driveline measured by hand at one pose, engine off: joint centre to joint centre.
struct HandCheck {
  Stated<MeasuredLength> length;
  Stated<Measured<Angle>> yaw;
  Stated<Measured<Angle>> pitch; ///< trailed
  Stated<Measured<Angle>> roll;
  Stated<MeasuredLength> lift; ///< mounted
  Stated<TopLink> top_link;    ///< mounted, with support wheels
};

/// The member between the other two of a telescope that has three.
struct MiddleMember {
  Stated<MeasuredLength> closed_overlap; ///< with the member at the implement, fully closed
  Stated<Length> greatest_travel;        ///< of that slide, where a stop ends it
  TubeProfile tube;
};

/// A part of the working time of a driveline.
struct DutyPart {
  std::string name;
  Stated<double> share;           ///< of the working time; the shares of all parts together make 1
  Stated<Power> power;            ///< mean, through the driveline
  Stated<AngularSpeed> pto_speed; ///< unstated: that of the engaged gear
  Stated<Angle> joint_angle;      ///< of the joint that bends more
};

/// A second driveline behind a bearing that the implement carries. It does not move within the implement.
struct FixedSection {
  Place from; ///< rear end of the bearing's shaft, from the pin or the lower hitch points
  Place to;   ///< end of the machine's input shaft
  Stated<JointKind> front_joint_kind;
  Stated<JointKind> rear_joint_kind;
  Stated<MeasuredLength> front_joint; ///< end of the bearing's shaft to the joint centre, rearwards
  Stated<MeasuredLength> rear_joint;
  Stated<Angle> yoke_phase;
  Stated<Angle> bearing_phase; ///< rear yoke of the bearing's shaft turned against its front yoke
};

struct DrivelineCase {
  Interface tractor_yoke;
  Stated<YokeSeat> seat;
  Stated<Length> hub_length;
  Stated<JointKind> front_joint_kind;
  Stated<JointKind> rear_joint_kind;
  Stated<MeasuredLength> front_coupling_yoke; ///< wide-angle: between its two crosses
  Stated<MeasuredLength> rear_coupling_yoke;
  Stated<Angle> front_joint_lock; ///< angle at which the joint's yokes touch
  Stated<Angle> rear_joint_lock;
  Stated<Angle> yoke_phase; ///< rear yoke of the intermediate shaft turned against its front yoke; 0: in line
  Stated<Torque> joint_rating;
  Stated<Force> bearing_rating;       ///< dynamic load rating of one needle bearing of the weaker joint's cross
  Stated<Length> bearing_arm;         ///< centre of that cross to the middle of a bearing
  std::vector<DutyPart> duties;       ///< none: the heaviest work all the time
  Stated<MeasuredLength> front_joint; ///< PTO shaft end to the front joint centre, along the shaft, no adaptor fitted
  Stated<MeasuredLength> rear_joint;  ///< shaft end of the input connection to the rear joint centre, forwards
  Stated<MeasuredLength> closed_length;
  Stated<MeasuredLength> closed_overlap; ///< overlap of the telescoping members when closed
  Stated<Length> greatest_travel;        ///< of that slide, where a stop ends it
  Stated<MiddleMember> middle_member;    ///< unstated: two members, and `closed_overlap` is that of the two
  std::vector<HandCheck> hand_checks;
  Stated<MeasuredLength> guard_closed_length;  ///< joint centre to joint centre with the guard tubes pushed together
  Stated<MeasuredLength> guard_closed_overlap; ///< overlap of the guard tubes then
  Stated<Length> guard_diameter;               ///< outside of the driveline's guard
  TubeProfile tube;                            ///< the weaker member
  TubeProfile other_tube;                      ///< the other member
  Stated<double> telescope_positions;          ///< in which the members can be pushed together in one turn
  SteelChoice tube_steel;
  Stated<GuardState> guard;
  Stated<Fitted<Adaptor>> adaptor;
  Stated<FixedSection> fixed_section; ///< then implement.input is the front end of the bearing's shaft
};

/// How much lower one wheel stands than the other of its axle, as in a furrow. Unstated is not nothing: "0 mm" says so.
struct WheelDrop {
  Stated<MeasuredLength> tractor_left; ///< the tractor's left wheel below its right one
  Stated<MeasuredLength> tractor_right;
  Stated<MeasuredLength> implement_left;
  Stated<MeasuredLength> implement_right;
};

/// The positions of the implement in one state of the machine: as angles, or by what can be measured in the field.
struct StateRange {
  Stated<Interval<Angle>> yaw;   ///< negative: the tractor turns left; semi-mounted: about the steering pivot
  Stated<Interval<Angle>> pitch; ///< positive: hollow
  Stated<Interval<Angle>> roll;  ///< positive: the implement's left side up
  Stated<Interval<Length>> lift; ///< mounted: lower hitch points above the height of their front pivots
  Stated<Interval<Length>> sway; ///< mounted, instead of yaw: lower hitch points to the left
  Stated<Interval<Length>> lower_link_difference; ///< mounted, instead of roll: left lower hitch point above the right
  Stated<TopLink> top_link;                       ///< mounted, with support wheels
  Stated<MeasuredLength> left_turn_radius;        ///< instead of yaw: steady, of the middle of the tractor's rear axle
  Stated<MeasuredLength> right_turn_radius;       ///< and to the right
  Stated<MeasuredLength> hollow_radius;           ///< instead of pitch: of the ground along the driving direction
  Stated<MeasuredLength> crest_radius;            ///< and of a crest
  Stated<Measured<Angle>> side_slope;             ///< instead of roll: between the side slopes of tractor and implement
  Stated<WheelDrop> wheel_drop;                   ///< instead of roll
  Stated<double> roll_at_full_turn;               ///< trailed: share of the roll that is left there; unstated: all
  Stated<bool> driven;                            ///< the PTO turns in this state
};

struct WorkingRange {
  Stated<StateRange> working;
  Stated<StateRange> turning;
  Stated<StateRange> transport;
  Stated<Speed> ground_speed; ///< in the heaviest work
  Stated<Angle> slope;        ///< steepest climb in work, along the way of travel
  Stated<Ground> ground;
};

/// Limits that the user sets in place of the defaults.
struct Limits {
  Stated<Angle> working_angle;
  Stated<Angle> turning_angle; ///< trailed, semi-mounted: in a turn, driven
  Stated<Angle> lifted_angle;  ///< mounted: raised at the headland, driven
  Stated<Angle> transport_angle;
  Stated<Angle> wide_working_angle; ///< of wide-angle joints, in place of those above
  Stated<Angle> wide_turning_angle;
  Stated<Angle> wide_lifted_angle;
  Stated<Angle> wide_transport_angle;
  Stated<Length> wide_angle_centre; ///< greatest distance of a wide-angle joint's centre from over the pin
  Stated<Angle> angle_difference;
  Stated<Length> minimum_overlap;
  Stated<Length> minimum_clearance;
  Stated<double> power_reserve;
  Stated<double> yield_margin;
  Stated<Speed> tip_speed;
  Stated<AngularSpeed> pto_speed; ///< ceiling of the implement by its manual
  Stated<Time> wanted_life;
  Stated<Stress> flank_pressure;
  Stated<Length> fouling_clearance;    ///< room to leave between the driveline's guard and what may foul it
  Stated<double> critical_speed_share; ///< greatest speed of the driveline over its critical speed
  Stated<double> resonance_separation; ///< least distance of pulses from a natural frequency, as a share of it
  Stated<Energy> clutch_heat;          ///< greatest heat of one start in the tractor's PTO clutch
};

/// A straight bar, tube or link that may foul: drawbar, tongue, lower link.
struct Bar {
  std::string name;
  Place from;
  Place to;
  Stated<Length> diameter; ///< of a cylinder that holds it
};

struct TyreCase {
  std::string name;
  Place centre;
  Stated<Length> diameter;
  Stated<Length> width;
};

/// What is not known of the lower links from the side view: they move with the lift.
struct LowerLinks {
  Stated<MeasuredLength> pivot_span; ///< middle to middle of their front pivots
  Stated<MeasuredLength> hitch_span; ///< middle to middle of the lower hitch points
  Stated<Length> diameter;           ///< of a cylinder that holds a link
};

/// What the driveline may foul. A list without a part says nothing of such parts.
struct FoulingParts {
  std::vector<Bar> tractor;    ///< drawbar, frame
  std::vector<Bar> implement;  ///< tongue
  std::vector<TyreCase> tyres; ///< of the tractor
  Stated<LowerLinks> lower_links;
};

/// What changes cost, work included, all in one currency. What is unstated has no price, which is not nothing.
struct Prices {
  Stated<Money> change_over;      ///< another stub of the tractor, lever and drawbar set for it
  Stated<Money> move_drawbar;     ///< the pin into another position
  Stated<Money> set_device;       ///< another setting of the overload device, tested
  Stated<Money> fit_device;       ///< an overload device where there is none
  Stated<Money> cut_tubes;        ///< members and guard tubes cut, ends dressed
  Stated<Money> longer_driveline; ///< longer telescoping members
  Stated<Money> stronger_tube;
  Stated<Money> stronger_joints;
  Stated<Money> wide_angle_joint;
  Stated<Money> change_yoke;     ///< another tractor yoke, clamping or longer ones too
  Stated<Money> align_yokes;     ///< put the telescoping members together anew
  Stated<Money> place_of_input;  ///< hitch extension, or the input connection moved
  Stated<Money> guard;           ///< one guard or shield fitted
  Stated<Money> rotor_gear;      ///< another gearbox between input and rotor
  Stated<Money> implement_speed; ///< another gearbox, or another implement, for the other PTO speed
  Stated<Money> less_power;      ///< what a smaller width or feed loses over the time looked at
};

/// What a turning mass keeps its speed to.
enum class MassDrive { engine, pto, geared };

/// A turning mass of the line, at its own speed.
struct LineMass {
  std::string name;
  Stated<MomentOfInertia> inertia;
  Stated<MassDrive> turns_with;
  Stated<AngularSpeed> speed; ///< of a geared mass while the implement's input turns at implement.input_speed
};

/// A shaft between two masses; all its figures at the speed of `from`.
struct LineShaftCase {
  std::string from;
  std::string to;
  Stated<TorsionalStiffness> stiffness;
  Stated<Angle> backlash;
  Stated<bool> joints; ///< it is the driveline, and the joints are in it
};

/// Something that pulses in step with a mass: blades that meet the crop, strokes of a plunger, cylinders of the engine.
struct LinePulse {
  std::string name;
  std::string of; ///< name of the mass
  Stated<double> per_turn;
  Stated<Torque> torque; ///< amplitude about the mean, at that mass
};

/// The line from engine to rotor as masses and shafts, to look for torsional vibration.
struct TorsionCase {
  std::vector<LineMass> masses;
  std::vector<LineShaftCase> shafts;
  std::vector<LinePulse> pulses;             ///< beside those of the joints
  Stated<Interval<AngularSpeed>> pto_speeds; ///< at which the machine works
  Stated<double> damping;                    ///< of each swing, as a share of critical damping
};

/// What the simulation of start, blocked rotor and run-down needs beside the rest of the case.
struct StartCase {
  Stated<Time> clutch_ramp;                  ///< in which the tractor's PTO clutch closes
  Stated<MomentOfInertia> tractor_inertia;   ///< of what turns between PTO clutch and driveline, at the PTO's speed
  Stated<MomentOfInertia> driveline_inertia; ///< of driveline and the half of the overload device that turns with it
  Stated<TorsionalStiffness> driveline_stiffness;
  Stated<Angle> backlash;                ///< whole play of stub, telescope and joints
  Stated<MomentOfInertia> rotor_inertia; ///< of all that runs on with the rotor, at the rotor's own speed
  Stated<Torque> rotor_friction;         ///< at the rotor, alike at every speed
  Stated<Torque> rotor_windage;          ///< of the air, at the rotor's working speed
  Stated<bool> overrunning_clutch;       ///< fitted: the rotor runs on while the driveline stands
};

/// How much such work is done, and what fuel costs: for the money that an economy gear saves.
struct SeasonOfWork {
  Stated<Time> hours;
  Stated<Money> fuel_price; ///< of one litre
};

struct Case {
  std::string title;
  std::string note;
  Tractor tractor;
  Implement implement;
  DrivelineCase driveline;
  Stated<Fitted<OverloadDevice>> overload;
  WorkingRange range;
  FoulingParts fouling;
  Stated<TorsionCase> torsion;
  Stated<StartCase> start;
  Limits limits;
  Prices prices;
  SeasonOfWork season;
};

} // namespace v0
} // namespace fieldshaft
