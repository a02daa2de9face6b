# Generated from the descriptions in bindings/python. Change those, not this file.
import typing
from collections.abc import Iterable
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from fieldshaft._cycles import (
    close_residue as close_residue,
    count_closed_cycles as count_closed_cycles,
    count_cycles as count_cycles,
    count_repeating_cycles as count_repeating_cycles,
    history_damage as history_damage,
    miner_damage as miner_damage,
)
from fieldshaft._cases import Case
from fieldshaft._constants import SiConstants
from fieldshaft._errors import InputError as InputError
from fieldshaft._records import Name, Record
from fieldshaft._records import Sourced as Sourced
from fieldshaft._records import Validated as Validated

__all__ = [
    "AngleCoupling",
    "AngleExtreme",
    "AngleInfluence",
    "AngleRange",
    "AngleSwing",
    "Attitude",
    "AttitudeGrid",
    "AttitudeRange",
    "BeamLine",
    "BeamMass",
    "BeamSegment",
    "BeamSupport",
    "BodyResult",
    "BoltGrade",
    "Branch",
    "BranchEnvelope",
    "ChainPart",
    "ChainState",
    "ClutchContact",
    "ClutchEngagement",
    "CoarsePitch",
    "CuttingSpeed",
    "DamageMethod",
    "DeviceSetting",
    "DeviceWindow",
    "Direction",
    "DrawbarCategory",
    "DrawbarDistance",
    "DrawbarHitch",
    "DrawbarPosition",
    "DrawbarPowerClass",
    "DriveShock",
    "Driveline",
    "DrivelineEnvelope",
    "DrivelineLimits",
    "DrivelineState",
    "DrivelineSweep",
    "DrivelineTolerance",
    "DrivelineUse",
    "Duty",
    "DutyLife",
    "EconomyAnswer",
    "EconomyMeasurement",
    "EconomySaving",
    "EnduranceConditions",
    "EnduranceFactors",
    "EnergyBalance",
    "EngineDrive",
    "EngineLine",
    "EnginePoint",
    "EnvelopeChange",
    "EnvelopeOptions",
    "EnvelopeTableRow",
    "ExcitationOrder",
    "FarthestFlight",
    "FatigueStrength",
    "FeedBasis",
    "FeedLimit",
    "FeedRate",
    "Flight",
    "ForcedResponse",
    "FourBarAngles",
    "FourBarBranch",
    "GearUse",
    "GrossEnginePower",
    "Ground",
    "HeldSpeed",
    "HitchAngleRange",
    "HitchCategory",
    "HitchPowerRange",
    "ImplementPower",
    "InputError",
    "Interference",
    "InvoluteGeometry",
    "InvoluteProfile",
    "InvoluteSpline",
    "JointAngleBand",
    "JointAnglePractice",
    "JointCouples",
    "JointDuty",
    "JointInRow",
    "JointPairExtremes",
    "LengthCheck",
    "LengthExtreme",
    "LengthInfluence",
    "LengthLimits",
    "LengthRange",
    "LevelLift",
    "LifeClass",
    "LiftLimit",
    "LimitCheck",
    "LimitKind",
    "LimiterKind",
    "LineBody",
    "LineBrake",
    "LineClutch",
    "LineCutOut",
    "LineEvent",
    "LineEventKind",
    "LineJoints",
    "LineLoad",
    "LineOverrun",
    "LineShaft",
    "LineShearBolt",
    "LinkResult",
    "LinkagePosition",
    "LoadKind",
    "LoadShock",
    "LowerLinkRods",
    "Machine",
    "MachineState",
    "Material",
    "MeanStressRule",
    "MeasuredEnergyPerMass",
    "MeasuredPower",
    "MeasuredPowerPerWidth",
    "MeasuredSpline",
    "Measurement",
    "ModeNode",
    "Money",
    "MountedChainEnvelope",
    "MountedClearance",
    "MountedEnvelope",
    "MountedRange",
    "MountedSurroundings",
    "MountedTolerance",
    "NetEnginePower",
    "NotchFactors",
    "NotchLoad",
    "NumberExtreme",
    "OlderValueClass",
    "OpenSection",
    "Overload",
    "OverrunCoast",
    "OverspeedGuard",
    "OverspeedRatios",
    "OwnershipCost",
    "PeakRatio",
    "PeakTorque",
    "Placement",
    "PlacementGoal",
    "PlacementParameter",
    "PlanarJointAngles",
    "Pose",
    "Position",
    "PowerInterval",
    "PowerPoint",
    "PowerShare",
    "ProcessorKernel",
    "ProfileSection",
    "PtoIdentification",
    "PtoLine",
    "PtoMatch",
    "PtoOption",
    "PtoOptions",
    "PtoOutput",
    "PtoPower",
    "PtoPowerRange",
    "PtoSpeedTolerance",
    "PtoType",
    "RecommendedPower",
    "RecommendedPowers",
    "RectangleSection",
    "RepairClass",
    "Rod",
    "Rotation",
    "RotorMachine",
    "RulePowers",
    "SaggingWeight",
    "SeasonUse",
    "SettingBasis",
    "SettingPractice",
    "ShaftLoad",
    "ShaftStep",
    "ShaftStresses",
    "ShapedProfile",
    "ShearRatio",
    "SimulationEnd",
    "SimulationResult",
    "SimulationSettings",
    "SimulationTrace",
    "SlackPose",
    "SleeveStress",
    "Slide",
    "SmallCycles",
    "SnLine",
    "SolidSection",
    "Source",
    "Sourced",
    "SpeedLimit",
    "SpeedRange",
    "SpeedShare",
    "SplineAllowables",
    "SplineCapacity",
    "SplineCutting",
    "SplineFactors",
    "SplineFit",
    "SplineForm",
    "SplineFractions",
    "SplineLimits",
    "SplineMode",
    "SplinePosition",
    "SplineRoot",
    "SplineSeat",
    "SplineSize",
    "SplineSizes",
    "SplineSteel",
    "SplineStress",
    "Standing",
    "Status",
    "StepLength",
    "SteppedShaft",
    "StraightProfile",
    "StraightSpline",
    "Strength",
    "StubArrangement",
    "StubHazard",
    "StubLoad",
    "StubPlace",
    "StubSafety",
    "StubSection",
    "StubShaft",
    "StubStress",
    "SupportKind",
    "SupportWheel",
    "SurfaceConstants",
    "SurfaceFinish",
    "Surroundings",
    "SweptExtreme",
    "Telescope",
    "TelescopeThrust",
    "ThreadSystem",
    "ThreePointLinkage",
    "TipSpeedLine",
    "TipSpeedRange",
    "TolerantEnvelope",
    "TorqueBand",
    "TorqueCycle",
    "TorqueExcitation",
    "TorqueSnLine",
    "TorqueSwing",
    "TorsionImpact",
    "TorsionSchool",
    "TorsionalExcitation",
    "TorsionalMode",
    "TorsionalTrain",
    "Traction",
    "TractorLimit",
    "TrainAnchor",
    "TrainInertia",
    "TrainShaft",
    "TriangleSection",
    "TubeAdvice",
    "TubeLengths",
    "TubeRules",
    "TubeSection",
    "TurnLimit",
    "TurnLimitAtPitch",
    "TurnLimits",
    "TwistExcitation",
    "Tyre",
    "UnevenProfileSection",
    "UseAngleLimits",
    "Validated",
    "ValueClass",
    "Wall",
    "WheelPlaces",
    "WhirlExtreme",
    "WhirlMember",
    "WhirlMiddle",
    "WhirlTelescope",
    "WidthLimit",
    "WindowState",
    "YearOfUse",
    "accumulated_repair",
    "adaptor_effect",
    "along",
    "angle_between",
    "ansi_b92_1_geometry",
    "application_factor",
    "attitude_of",
    "average_fuel_rate",
    "beam_critical_speeds",
    "beam_segment",
    "best_placement",
    "best_placement_between",
    "best_spline_position",
    "blade_pull",
    "bolt_grades",
    "branch_envelopes",
    "capital_recovery",
    "capital_recovery_factor",
    "chain_at",
    "chain_envelope",
    "check_length",
    "check_limits",
    "checked_tube_lengths",
    "close_residue",
    "clutch_engagement",
    "clutch_temperature_rise",
    "coarse_pitch",
    "coarse_pitches",
    "constants",
    "contains",
    "corner_concentration",
    "count_closed_cycles",
    "count_cycles",
    "count_repeating_cycles",
    "couple_bearing_force",
    "crest_pitch",
    "critical_length",
    "critical_speed",
    "cut_out_torque",
    "cycles_to_failure",
    "damage_life",
    "damaged_endurance",
    "device_setting",
    "device_window",
    "diameter_for_torque",
    "diameter_for_twist",
    "din_5480_geometry",
    "din_5480_shift",
    "direction_ahead",
    "disc_clutch_force",
    "disc_clutch_force_at_pressure",
    "disc_clutch_pressure",
    "disc_clutch_torque",
    "disc_hoop_stress",
    "disc_hoop_stress_at",
    "disc_radial_stress_at",
    "distance",
    "drawbar_category",
    "drawbar_distances",
    "drawbar_of_pto",
    "driveline_at",
    "driveline_envelope",
    "driveline_sweep",
    "dry_feed",
    "dry_matter",
    "dunkerley_critical_speed",
    "duty_life",
    "economy_answer",
    "economy_saving",
    "either_side",
    "endurance_factors",
    "endurance_limit",
    "engaged_length",
    "engine_line",
    "engine_line_without_rise",
    "engine_oil_rate",
    "engine_speed_at",
    "envelope_table",
    "equal_angle_pin_distance",
    "equal_angle_rear_joint",
    "equivalent_joint_angle",
    "equivalent_joint_angle_small",
    "equivalent_pto_power",
    "equivalent_reversed",
    "equivalent_row_angle",
    "equivalent_row_angle_small",
    "equivalent_shaft_length",
    "excess",
    "farthest_throw",
    "fastest_work",
    "fatigue_diameter",
    "fatigue_life_factor",
    "fatigue_safety_factor",
    "feed_basis_name",
    "find_bolt_grade",
    "find_machine",
    "find_material",
    "finite_life_strength",
    "forced_response",
    "four_bar_angles",
    "free_clutch_engagement",
    "front_joint_position",
    "fuel_cost",
    "fuel_rate",
    "fuel_rate_checked",
    "gear_ratio",
    "gear_uses",
    "geared_speed",
    "geared_torque",
    "governor_regulation",
    "greatest_feed",
    "greatest_length",
    "groove_concentration",
    "groove_width",
    "has_hazard",
    "history_damage",
    "hitch_category",
    "hollow_pitch",
    "hourly_cost",
    "identify_pto",
    "impact_diameter",
    "implement_power",
    "in_implement",
    "in_tractor",
    "interference_table",
    "involute_profile",
    "involute_spline",
    "is_nominal_speed",
    "is_remembered",
    "iso_4156_geometry",
    "joint_acceleration",
    "joint_angle_for_acceleration",
    "joint_angle_for_variation",
    "joint_bearing_force",
    "joint_bearing_life",
    "joint_bearing_life_checked",
    "joint_bearing_life_of_duties",
    "joint_couples",
    "joint_displacement",
    "joint_equal_speed_rotation",
    "joint_mean_duty",
    "joint_output_rotation",
    "joint_pair_acceleration",
    "joint_pair_extremes",
    "joint_pair_speed_ratio",
    "joint_peak_acceleration",
    "joint_peak_acceleration_rotation",
    "joint_peak_bearing_force",
    "joint_peak_couples",
    "joint_peak_displacement",
    "joint_pulse",
    "joint_speed_ratio",
    "joint_speed_variation",
    "joint_torque_swing",
    "kernel_is_available",
    "least_clearance",
    "least_critical_speed",
    "lever_can_disagree",
    "life_class",
    "lift_limit",
    "load_distribution_factor",
    "load_factor",
    "lobed_profile",
    "lost_blade_energy",
    "lugged_torque",
    "lumped_critical_speed",
    "machine_named",
    "machines",
    "materials",
    "measured_fuel_rate",
    "miner_damage",
    "mirrored",
    "mode_nodes",
    "mounted_chain_envelope",
    "mounted_driveline_envelope",
    "mounted_least_clearance",
    "mounted_pose",
    "nearest_machines",
    "notch_factor",
    "notch_sensitivity",
    "note_factor",
    "object_energy",
    "object_speed_bound",
    "older_fuel_rate",
    "older_remaining_value",
    "older_value_class_named",
    "overlap_at",
    "overload",
    "overrun_coast",
    "overrun_torque",
    "overspeed_ratios",
    "ownership_cost",
    "ownership_share",
    "partly_plastic_torque",
    "payback_years",
    "pin_position",
    "placement",
    "plain_train",
    "planar_centre_distance",
    "planar_joint_angles",
    "plastic_torque",
    "power_reserve",
    "powers_by_rule_from_drawbar",
    "powers_by_rule_from_engine",
    "practice_band",
    "pre_standard_pto_type",
    "pto_option",
    "pto_option_by_ratio",
    "pto_option_of_both",
    "pto_output",
    "pto_power",
    "pto_speed",
    "pto_speed_under",
    "pto_type",
    "pto_types",
    "pulling_power",
    "rayleigh_critical_speed",
    "real_interest",
    "real_interest_by_difference",
    "rear_joint_position",
    "recommended_power",
    "referred_inertia",
    "referred_yield",
    "relative_phase",
    "reliability_factor",
    "remaining_value",
    "repair_class_named",
    "repair_classes",
    "repair_cost",
    "ring_hoop_stress",
    "rotation",
    "rotor_energy",
    "round_body_area",
    "run_down_angle",
    "run_down_time",
    "sae_fractions",
    "sae_spline",
    "sag_critical_speed",
    "scaled_spline",
    "seat_divisor",
    "seen_from",
    "shaft_damping",
    "shaft_fatigue_safety_factor",
    "shaft_power",
    "shaft_stresses",
    "shaft_torque",
    "shaft_yield_safety_factor",
    "shear_bolt_band",
    "shear_bolt_band_of_grade",
    "shear_bolt_diameter",
    "shear_bolt_torque",
    "shear_endurance",
    "shear_ratio",
    "shear_ultimate",
    "shear_yield",
    "shoulder_concentration",
    "side_slope_roll",
    "simulate",
    "simulation_end_text",
    "size_factor",
    "slack_driveline_envelope",
    "slack_pose",
    "sleeve_stress",
    "slender_tube_excess",
    "slide_force",
    "slip_power",
    "slip_time_for_rise",
    "smallest_tractor",
    "sn_line",
    "sn_line_through",
    "specific_fuel",
    "specimen_endurance",
    "speed_for_tip_speed",
    "spline_allowables",
    "spline_length_for_torque",
    "spline_limits",
    "spline_of_geometry",
    "spline_position",
    "spline_power_capacity",
    "spline_root_concentration",
    "spline_size_for_torque",
    "spline_slide_force",
    "spline_step",
    "spline_stress",
    "spline_torque_capacity",
    "spring_compression",
    "spring_force",
    "square_profile",
    "steady_turn_angle",
    "steered_pose",
    "steered_wheel",
    "stepped_shaft",
    "stepped_stiffness",
    "stepped_yield_torque",
    "straight_profile_by_rule",
    "strength_at_section",
    "strength_fraction",
    "stub_angle_limit",
    "stub_fatigue_safety_factor",
    "stub_hazard_source",
    "stub_hazards",
    "stub_shaft_load",
    "stub_spline",
    "stub_spline_of_type",
    "stub_stress",
    "stub_yield_safety_factor",
    "surface_constants",
    "surface_factor",
    "taxes_insurance_housing",
    "telescope_critical_speed",
    "telescope_thrust",
    "temperature_factor",
    "thin_profile",
    "thread_depth_in_pitches",
    "thread_stress_diameter",
    "throw_distance",
    "throw_flight",
    "tip_speed",
    "tip_speed_over_ground",
    "tolerant_driveline_envelope",
    "tolerant_mounted_driveline_envelope",
    "tolerant_mounted_least_clearance",
    "tolerant_turn_limit",
    "top_link_for",
    "torque_band",
    "torque_for_twist",
    "torque_keeps_its_sense",
    "torque_reserve",
    "torque_rise",
    "torque_sn_line",
    "torsion_fatigue_diameter",
    "torsion_fatigue_safety_factor",
    "torsion_impact",
    "torsion_stress",
    "torsion_stress_at",
    "torsional_modes",
    "tractor_value_class",
    "trailed_pose",
    "train_speed_ratios",
    "transport_pitch",
    "tube_advice",
    "tube_lengths",
    "turf_tip_speed_line",
    "turn_limit",
    "turn_limit_of_surroundings",
    "turn_limit_over_pitch",
    "turn_limit_with_surroundings",
    "twist",
    "twist_rate",
    "two_inertia_frequency",
    "usable_for_pto_work",
    "uses_yield",
    "value_class_named",
    "value_classes",
    "wall_stress",
    "wear_life_factor",
    "wet_feed",
    "wheel_drop_roll",
    "whirl_line",
    "wide_angle_centre_shift",
    "wide_angle_far_angle",
    "wide_angle_residual",
    "wide_angle_shortening",
    "widest_implement",
    "with_adaptor",
    "with_less_roll_at_full_turn",
    "wrapped_length",
    "yield_torque",
]

constants: SiConstants

class Status(Name):
    ok = 'ok'
    caution = 'caution'
    not_known = 'not_known'
    stop = 'stop'

class MachineState(Name):
    any = 'any'
    working = 'working'
    turning = 'turning'
    transport = 'transport'

class Standing(Name):
    exact = 'exact'
    given = 'given'
    published = 'published'
    textbook = 'textbook'
    quoted = 'quoted'
    common_practice = 'common_practice'
    from_memory = 'from_memory'

class Measurement(Name):
    front_joint = 'front_joint'
    pin_distance = 'pin_distance'
    pin_lateral = 'pin_lateral'
    pin_drop = 'pin_drop'
    rear_joint = 'rear_joint'
    input_behind = 'input_behind'
    input_left = 'input_left'
    input_up = 'input_up'
    input_direction = 'input_direction'

class PlacementGoal(Name):
    least_worst_angle = 'least_worst_angle'
    least_angle_difference = 'least_angle_difference'

class PlacementParameter(Name):
    pin_distance = 'pin_distance'
    pin_drop = 'pin_drop'
    input_up = 'input_up'
    input_behind = 'input_behind'

class LimitKind(Name):
    none = 'none'
    front_angle = 'front_angle'
    rear_angle = 'rear_angle'
    difference = 'difference'
    longest = 'longest'
    shortest = 'shortest'
    clearance = 'clearance'

class DrivelineUse(Name):
    working = 'working'
    turning_driven = 'turning_driven'
    lifted_driven = 'lifted_driven'
    not_turning = 'not_turning'

class ProcessorKernel(Name):
    automatic = 'automatic'
    portable = 'portable'
    avx2 = 'avx2'
    avx512 = 'avx512'

class SupportKind(Name):
    simple = 'simple'
    clamped = 'clamped'
    spring = 'spring'

class SimulationEnd(Name):
    duration = 'duration'
    standstill = 'standstill'
    too_many_steps = 'too_many_steps'
    too_many_events = 'too_many_events'
    step_too_small = 'step_too_small'
    not_finite = 'not_finite'

class LineEventKind(Name):
    engages = 'engages'
    releases = 'releases'
    locks = 'locks'
    slips = 'slips'
    breaks = 'breaks'
    trips = 'trips'
    resets = 'resets'
    overruns = 'overruns'
    stops = 'stops'
    starts = 'starts'
    is_blocked = 'is_blocked'
    stalls = 'stalls'

class SmallCycles(Name):
    harmless = 'harmless'
    reduced_line = 'reduced_line'
    same_line = 'same_line'

class SurfaceFinish(Name):
    ground = 'ground'
    machined = 'machined'
    hot_rolled = 'hot_rolled'
    forged = 'forged'

class LoadKind(Name):
    bending = 'bending'
    axial = 'axial'
    torsion = 'torsion'

class LifeClass(Name):
    under_10_h = 'under_10_h'
    from_10_to_100_h = 'from_10_to_100_h'
    from_100_to_1000_h = 'from_100_to_1000_h'
    from_1000_to_10000_h = 'from_1000_to_10000_h'
    beyond_10000_h = 'beyond_10000_h'

class MeanStressRule(Name):
    goodman = 'goodman'
    gerber = 'gerber'
    soderberg = 'soderberg'
    asme_elliptic = 'asme_elliptic'

class NotchLoad(Name):
    bending = 'bending'
    torsion = 'torsion'

class TorsionSchool(Name):
    mean_ignored = 'mean_ignored'
    goodman_in_shear = 'goodman_in_shear'

class DamageMethod(Name):
    miner = 'miner'
    manson = 'manson'

class FourBarBranch(Name):
    open = 'open'
    crossed = 'crossed'

class ShearRatio(Name):
    maximum_shear = 'maximum_shear'
    distortion_energy = 'distortion_energy'
    tabulated = 'tabulated'
    two_thirds = 'two_thirds'
    torsion_test = 'torsion_test'

class ClutchContact(Name):
    uniform_wear = 'uniform_wear'
    uniform_pressure = 'uniform_pressure'

class LimiterKind(Name):
    slip_clutch = 'slip_clutch'
    shear_bolt = 'shear_bolt'
    cut_out_clutch = 'cut_out_clutch'

class SettingBasis(Name):
    mean_torque = 'mean_torque'
    rated_torque = 'rated_torque'

class ThreadSystem(Name):
    iso_metric = 'iso_metric'
    unified_inch = 'unified_inch'

class WindowState(Name):
    open = 'open'
    closed_by_margins = 'closed_by_margins'
    closed_by_scatter = 'closed_by_scatter'
    closed_by_part = 'closed_by_part'

class Traction(Name):
    two_wheel = 'two_wheel'
    front_assist = 'front_assist'
    four_wheel = 'four_wheel'
    tracks = 'tracks'

class Ground(Name):
    concrete = 'concrete'
    firm = 'firm'
    tilled = 'tilled'
    soft = 'soft'

class FeedBasis(Name):
    wet = 'wet'
    dry = 'dry'
    grain = 'grain'
    other_than_grain = 'other_than_grain'

class DrawbarPosition(Name):
    short_ = 'short'
    regular = 'regular'
    extended = 'extended'
    us_practice = 'us_practice'

class SplineForm(Name):
    straight = 'straight'
    involute = 'involute'

class StubArrangement(Name):
    fixed = 'fixed'
    two_stubs_out = 'two_stubs_out'
    exchanged_from_carrier = 'exchanged_from_carrier'
    bolted_with_separate_lever = 'bolted_with_separate_lever'
    reversible = 'reversible'
    lever_only = 'lever_only'

class StubHazard(Name):
    spline_at_other_speed = 'spline_at_other_speed'
    shifted_while_turning = 'shifted_while_turning'
    hot_stub = 'hot_stub'
    oil_lost = 'oil_lost'
    dirt_in_bore = 'dirt_in_bore'
    ring_not_seated = 'ring_not_seated'
    bolts_not_tightened = 'bolts_not_tightened'
    other_stub_turns = 'other_stub_turns'
    drawbar_not_reset = 'drawbar_not_reset'
    driveline_not_rechecked = 'driveline_not_rechecked'
    shield_left_off = 'shield_left_off'
    adaptor_fitted = 'adaptor_fitted'

class Rotation(Name):
    clockwise = 'clockwise'
    counter_clockwise = 'counter_clockwise'

class RotorMachine(Name):
    lawn_or_turf_mower = 'lawn_or_turf_mower'
    rotary_cutter = 'rotary_cutter'
    farm_mower = 'farm_mower'
    disc_or_drum_mower = 'disc_or_drum_mower'
    flail_mower = 'flail_mower'
    mulcher = 'mulcher'

class StubPlace(Name):
    root = 'root'
    groove = 'groove'

class SplineSteel(Name):
    brinell_160_200 = 'brinell_160_200'
    brinell_230_260 = 'brinell_230_260'
    brinell_302_351 = 'brinell_302_351'
    surface_hardened_c48_53 = 'surface_hardened_c48_53'
    case_hardened_c58_63 = 'case_hardened_c58_63'
    through_hardened_c42_46 = 'through_hardened_c42_46'

class SplineMode(Name):
    root_torsion = 'root_torsion'
    tooth_shear = 'tooth_shear'
    flank_pressure = 'flank_pressure'

class SplineCutting(Name):
    broached = 'broached'
    hobbed = 'hobbed'
    shaped = 'shaped'
    rolled = 'rolled'

class DriveShock(Name):
    uniform = 'uniform'
    light = 'light'
    medium = 'medium'

class LoadShock(Name):
    uniform = 'uniform'
    light = 'light'
    intermittent = 'intermittent'
    heavy = 'heavy'

class TorqueCycle(Name):
    unidirectional = 'unidirectional'
    reversed = 'reversed'

class SplineSeat(Name):
    fixed = 'fixed'
    sliding_unloaded = 'sliding_unloaded'
    flexible = 'flexible'
    sliding_under_load = 'sliding_under_load'

class SplineRoot(Name):
    usual = 'usual'
    flat = 'flat'
    fillet = 'fillet'

class SplineFit(Name):
    a_permanent = 'a_permanent'
    b_slides_unloaded = 'b_slides_unloaded'
    c_slides_loaded = 'c_slides_loaded'

class PowerInterval(Record):
    low: Any
    high: Any
    def __init__(self, low: ArrayLike, high: ArrayLike) -> None: ...

class GearUse(Record):
    gear: str
    pto_speed: float | None
    suits: bool | None
    set: float | None
    never_pass: float | None
    out_of_reach: bool
    pto_at_high_idle: float | None
    available: PowerInterval | None
    widest: float | None
    greatest_feed: float | None
    fastest: float | None
    missing: tuple[str, ...]
    def __init__(self, gear: str, pto_speed: float | None, suits: bool | None, set: float | None, never_pass: float | None, out_of_reach: bool, pto_at_high_idle: float | None, available: PowerInterval | None, widest: float | None, greatest_feed: float | None, fastest: float | None, missing: Iterable[str]) -> None: ...

class Money(Record):
    amount: float
    currency: str
    def __init__(self, amount: float, currency: str) -> None: ...

class SeasonUse(Record):
    hours: float
    fuel_price: Money | None
    def __init__(self, hours: float, fuel_price: Money | None = ...) -> None: ...

class EconomyAnswer(Record):
    plain: str
    economy: str
    plain_engine: float | None
    economy_engine: float | None
    available: PowerInterval | None
    fits: Status
    saved: float | None
    saving: float | None
    outside: str | None
    litres_a_season: float | None
    money_an_hour: Money | None
    money_a_season: Money | None
    pto_at_plain_engine: float | None
    pto_at_rated: float | None
    pto_at_high_idle: float | None
    never_pass: float | None
    missing: tuple[str, ...]
    def __init__(self, plain: str, economy: str, plain_engine: float | None, economy_engine: float | None, available: PowerInterval | None, fits: Status | str, saved: float | None, saving: float | None, outside: str | None, litres_a_season: float | None, money_an_hour: Money | None, money_a_season: Money | None, pto_at_plain_engine: float | None, pto_at_rated: float | None, pto_at_high_idle: float | None, never_pass: float | None, missing: Iterable[str]) -> None: ...

class Source(Record):
    text: str
    standing: Standing
    def __init__(self, text: str, standing: Standing | str) -> None: ...

class YearOfUse(Record):
    price: Money
    list_price: Money
    salvage: Money
    interest: float
    years: float
    annual_use: float
    def __init__(self, price: Money, list_price: Money, salvage: Money, interest: float, years: float, annual_use: float) -> None: ...

class OwnershipCost(Record):
    capital: Money
    tih: Money
    total: Money
    def __init__(self, capital: Money, tih: Money, total: Money) -> None: ...

class ValueClass(Record):
    name: str
    c1: float
    c2: float
    c3: float
    source: Source
    def __init__(self, name: str, c1: float, c2: float, c3: float, source: Source) -> None: ...

class OlderValueClass(Record):
    name: str
    first_year: float
    each_year: float
    source: Source
    def __init__(self, name: str, first_year: float, each_year: float, source: Source) -> None: ...

class RepairClass(Record):
    name: str
    life: float
    total_share: float
    factor: float
    exponent: float
    source: Source
    def __init__(self, name: str, life: float, total_share: float, factor: float, exponent: float, source: Source) -> None: ...

class Position(Record):
    forward: float
    left: float
    up: float
    def __init__(self, forward: float, left: float, up: float) -> None: ...

class Direction(Record):
    forward: float
    left: float
    up: float
    def __init__(self, forward: float, left: float, up: float) -> None: ...

class Slide(Record):
    closed_overlap: float
    greatest_travel: float | None
    def __init__(self, closed_overlap: float, greatest_travel: float | None = ...) -> None: ...

class Telescope(Record):
    closed_length: float
    slide: Slide
    second_slide: Slide | None
    def __init__(self, closed_length: float, slide: Slide, second_slide: Slide | None = ...) -> None: ...

class Driveline(Record):
    front_joint: float
    rear_joint: float
    input: Position
    input_direction: Direction
    yoke_phase: float
    output: Position
    output_direction: Direction
    wide_angle_front: bool
    wide_angle_rear: bool
    telescope: Telescope | None
    def __init__(self, front_joint: float, rear_joint: float, input: Position, input_direction: Direction = ..., yoke_phase: float = ..., output: Position = ..., output_direction: Direction = ..., wide_angle_front: bool = ..., wide_angle_rear: bool = ..., telescope: Telescope | None = ...) -> None: ...

class AngleRange(Record):
    low: float
    high: float
    def __init__(self, low: float = ..., high: float = ...) -> None: ...

class AngleCoupling(Record):
    yaw_share: float
    pitch_share: float
    roll_share: float
    limit: float
    def __init__(self, yaw_share: float = ..., pitch_share: float = ..., roll_share: float = ..., limit: float = ...) -> None: ...

class AttitudeRange(Record):
    yaw: AngleRange
    pitch: AngleRange
    roll: AngleRange
    couplings: tuple[AngleCoupling, ...]
    def __init__(self, yaw: AngleRange = ..., pitch: AngleRange = ..., roll: AngleRange = ..., couplings: Iterable[AngleCoupling] = ...) -> None: ...

class Branch(Record):
    driveline: Driveline
    hinge: Position
    folding: AttitudeRange
    torque_share: float
    def __init__(self, driveline: Driveline, hinge: Position, folding: AttitudeRange, torque_share: float) -> None: ...

class Attitude(Record):
    yaw: float
    pitch: float
    roll: float
    def __init__(self, yaw: float = ..., pitch: float = ..., roll: float = ...) -> None: ...

class AngleExtreme(Record):
    value: float
    lower: float
    upper: float
    gap: float
    at: Attitude
    proved: bool
    def __init__(self, value: float, lower: float, upper: float, gap: float, at: Attitude, proved: bool) -> None: ...

class LengthExtreme(Record):
    value: float
    lower: float
    upper: float
    gap: float
    at: Attitude
    proved: bool
    def __init__(self, value: float, lower: float, upper: float, gap: float, at: Attitude, proved: bool) -> None: ...

class NumberExtreme(Record):
    value: float
    lower: float
    upper: float
    gap: float
    at: Attitude
    proved: bool
    def __init__(self, value: float, lower: float, upper: float, gap: float, at: Attitude, proved: bool) -> None: ...

class DrivelineEnvelope(Record):
    front_angle: AngleExtreme
    rear_angle: AngleExtreme
    difference: AngleExtreme
    longest: LengthExtreme
    shortest: LengthExtreme
    speed_variation: NumberExtreme | None
    boxes: int
    def __init__(self, front_angle: AngleExtreme, rear_angle: AngleExtreme, difference: AngleExtreme, longest: LengthExtreme, shortest: LengthExtreme, speed_variation: NumberExtreme | None, boxes: int) -> None: ...

class BranchEnvelope(Record):
    envelope: DrivelineEnvelope
    torque: float
    def __init__(self, envelope: DrivelineEnvelope, torque: float) -> None: ...

class DrivelineState(Record):
    front_angle: float
    rear_angle: float
    difference: float
    length: float
    plane_angle: float
    phase: float
    speed_variation: float
    overlap: float | None
    def __init__(self, front_angle: float, rear_angle: float, difference: float, length: float, plane_angle: float, phase: float, speed_variation: float, overlap: float | None) -> None: ...

class ChainState(Record):
    first: DrivelineState
    second: DrivelineState
    bearing_phase: float
    equivalent_angle: float
    speed_variation: float
    def __init__(self, first: DrivelineState, second: DrivelineState, bearing_phase: float, equivalent_angle: float, speed_variation: float) -> None: ...

class EnvelopeChange(Record):
    before: DrivelineEnvelope
    after: DrivelineEnvelope
    def __init__(self, before: DrivelineEnvelope, after: DrivelineEnvelope) -> None: ...

class Rod(Record):
    from_: Position
    to: Position
    radius: float
    def __init__(self, from_: Position, to: Position, radius: float) -> None: ...

class Tyre(Record):
    centre: Position
    radius: float
    width: float
    def __init__(self, centre: Position, radius: float, width: float) -> None: ...

class Surroundings(Record):
    guard_radius: float
    on_tractor: tuple[Rod, ...]
    on_implement: tuple[Rod, ...]
    tyres: tuple[Tyre, ...]
    def __init__(self, guard_radius: float = ..., on_tractor: Iterable[Rod] = ..., on_implement: Iterable[Rod] = ..., tyres: Iterable[Tyre] = ...) -> None: ...

class DrivelineLimits(Record):
    front_angle: float | None
    rear_angle: float | None
    difference: float | None
    longest: float | None
    shortest: float | None
    def __init__(self, front_angle: float | None = ..., rear_angle: float | None = ..., difference: float | None = ..., longest: float | None = ..., shortest: float | None = ...) -> None: ...

class EnvelopeOptions(Record):
    angle_gap: float
    length_gap: float
    variation_gap: float
    budget: int
    with_speed_variation: bool
    limits: DrivelineLimits | None
    def __init__(self, angle_gap: float = ..., length_gap: float = ..., variation_gap: float = ..., budget: int = ..., with_speed_variation: bool = ..., limits: DrivelineLimits | None = ...) -> None: ...

class LiftLimit(Record):
    allowed: float
    broken: float
    kind: LimitKind
    at: Attitude
    low_end: bool
    def __init__(self, allowed: float, broken: float, kind: LimitKind | str, at: Attitude, low_end: bool) -> None: ...

class DrivelineTolerance(Record):
    front_joint: float
    pin_distance: float
    pin_lateral: float
    pin_drop: float
    rear_joint: float
    input_behind: float
    input_left: float
    input_up: float
    input_direction: float
    def __init__(self, front_joint: float = ..., pin_distance: float = ..., pin_lateral: float = ..., pin_drop: float = ..., rear_joint: float = ..., input_behind: float = ..., input_left: float = ..., input_up: float = ..., input_direction: float = ...) -> None: ...

class LinkagePosition(Record):
    lift: float
    sway: float
    difference: float
    def __init__(self, lift: float = ..., sway: float = ..., difference: float = ...) -> None: ...

class MountedEnvelope(Record):
    envelope: DrivelineEnvelope
    front_angle_at: LinkagePosition
    rear_angle_at: LinkagePosition
    difference_at: LinkagePosition
    longest_at: LinkagePosition
    shortest_at: LinkagePosition
    speed_variation_at: LinkagePosition
    def __init__(self, envelope: DrivelineEnvelope, front_angle_at: LinkagePosition, rear_angle_at: LinkagePosition, difference_at: LinkagePosition, longest_at: LinkagePosition, shortest_at: LinkagePosition, speed_variation_at: LinkagePosition) -> None: ...

class MountedChainEnvelope(Record):
    speed_variation: NumberExtreme
    at: LinkagePosition
    def __init__(self, speed_variation: NumberExtreme, at: LinkagePosition) -> None: ...

class LengthRange(Record):
    low: float
    high: float
    def __init__(self, low: float, high: float) -> None: ...

class MountedRange(Record):
    lift: LengthRange
    sway: LengthRange
    difference: LengthRange
    yaw: AngleRange
    roll: AngleRange
    pivot: Position | None
    def __init__(self, lift: LengthRange = ..., sway: LengthRange = ..., difference: LengthRange = ..., yaw: AngleRange = ..., roll: AngleRange = ..., pivot: Position | None = ...) -> None: ...

class LevelLift(Record):
    lift: float
    tolerance: float
    stated: bool
    def __init__(self, lift: float = ..., tolerance: float = ..., stated: bool = ...) -> None: ...

class MountedTolerance(Record):
    driveline: DrivelineTolerance
    lower_pivot_behind: float
    lower_pivot_below: float
    lower_link: float
    top_pivot_behind: float
    top_pivot_below: float
    top_link: float
    level: LevelLift
    mast: float
    span: float
    convergence: float
    wheel: float
    ground: float
    pivot: float
    def __init__(self, driveline: DrivelineTolerance = ..., lower_pivot_behind: float = ..., lower_pivot_below: float = ..., lower_link: float = ..., top_pivot_behind: float = ..., top_pivot_below: float = ..., top_link: float = ..., level: LevelLift = ..., mast: float = ..., span: float = ..., convergence: float = ..., wheel: float = ..., ground: float = ..., pivot: float = ...) -> None: ...

class Placement(Record):
    place: float
    worst: float
    envelope: DrivelineEnvelope
    def __init__(self, place: float, worst: float, envelope: DrivelineEnvelope) -> None: ...

class PlanarJointAngles(Record):
    front: Any
    rear: Any
    def __init__(self, front: ArrayLike, rear: ArrayLike) -> None: ...

class EnvelopeTableRow(Record):
    yaw: Any
    pitch: Any
    front_angle: Any
    rear_angle: Any
    difference: Any
    longest: Any
    shortest: Any
    def __init__(self, yaw: ArrayLike, pitch: ArrayLike, front_angle: ArrayLike, rear_angle: ArrayLike, difference: ArrayLike, longest: ArrayLike, shortest: ArrayLike) -> None: ...

class AngleInfluence(Record):
    measurement: Measurement
    amount: float
    def __init__(self, measurement: Measurement | str, amount: float) -> None: ...

class LengthInfluence(Record):
    measurement: Measurement
    amount: float
    def __init__(self, measurement: Measurement | str, amount: float) -> None: ...

class TolerantEnvelope(Record):
    envelope: DrivelineEnvelope
    front_angle: AngleInfluence
    rear_angle: AngleInfluence
    difference: AngleInfluence
    longest: LengthInfluence
    shortest: LengthInfluence
    def __init__(self, envelope: DrivelineEnvelope, front_angle: AngleInfluence, rear_angle: AngleInfluence, difference: AngleInfluence, longest: LengthInfluence, shortest: LengthInfluence) -> None: ...

class TubeRules(Record):
    minimum_overlap: Sourced
    overlap_share: Sourced
    clearance: Sourced
    def __init__(self, minimum_overlap: Sourced = ..., overlap_share: Sourced = ..., clearance: Sourced = ...) -> None: ...

class TubeLengths(Record):
    least_closed: Any
    greatest_closed: Any
    suits: Any
    cut: Any
    closed_after: Any
    overlap_at_longest: Any
    clearance_at_shortest: Any
    too_long: Any
    missing_tube: Any
    def __init__(self, least_closed: ArrayLike, greatest_closed: ArrayLike, suits: bool, cut: ArrayLike, closed_after: ArrayLike, overlap_at_longest: ArrayLike, clearance_at_shortest: ArrayLike, too_long: ArrayLike, missing_tube: ArrayLike) -> None: ...

class TubeAdvice(Record):
    tubes: TubeLengths
    longest_at: Attitude
    shortest_at: Attitude
    def __init__(self, tubes: TubeLengths, longest_at: Attitude, shortest_at: Attitude) -> None: ...

class LengthCheck(Record):
    model: float
    measured: float
    allowed: float
    agrees: bool
    def __init__(self, model: float, measured: float, allowed: float, agrees: bool) -> None: ...

class TurnLimit(Record):
    allowed: float
    broken: float
    kind: LimitKind
    at: Attitude
    straight_ahead: bool
    def __init__(self, allowed: float, broken: float, kind: LimitKind | str, at: Attitude, straight_ahead: bool) -> None: ...

class TurnLimits(Record):
    left: TurnLimit
    right: TurnLimit
    def __init__(self, left: TurnLimit, right: TurnLimit) -> None: ...

class LimitCheck(Record):
    holds: bool
    broken: LimitKind
    open: LimitKind
    at: Attitude
    def __init__(self, holds: bool, broken: LimitKind | str, open: LimitKind | str, at: Attitude) -> None: ...

class TurnLimitAtPitch(Record):
    pitch: float
    limits: TurnLimits
    def __init__(self, pitch: float, limits: TurnLimits) -> None: ...

class LowerLinkRods(Record):
    pivot_span: float
    hitch_span: float
    radius: float
    def __init__(self, pivot_span: float, hitch_span: float, radius: float) -> None: ...

class MountedSurroundings(Record):
    fixed: Surroundings
    links: LowerLinkRods | None
    def __init__(self, fixed: Surroundings, links: LowerLinkRods | None = ...) -> None: ...

class MountedClearance(Record):
    least: LengthExtreme
    at: LinkagePosition
    def __init__(self, least: LengthExtreme, at: LinkagePosition) -> None: ...

class JointAngleBand(Record):
    low: Sourced
    high: Sourced
    def __init__(self, low: Sourced, high: Sourced) -> None: ...

class UseAngleLimits(Record):
    working: JointAngleBand
    turning_driven: JointAngleBand
    lifted_driven: JointAngleBand
    not_turning: JointAngleBand
    def __init__(self, working: JointAngleBand, turning_driven: JointAngleBand, lifted_driven: JointAngleBand, not_turning: JointAngleBand) -> None: ...

class AttitudeGrid(Record):
    yaw: tuple[float, ...]
    pitch: tuple[float, ...]
    roll: tuple[float, ...]
    def __init__(self, yaw: Iterable[float], pitch: Iterable[float] = ..., roll: Iterable[float] = ...) -> None: ...

class SweptExtreme(Record):
    at: Attitude
    state: DrivelineState
    def __init__(self, at: Attitude, state: DrivelineState) -> None: ...

class DrivelineSweep(Record):
    front_angle: SweptExtreme
    rear_angle: SweptExtreme
    difference: SweptExtreme
    longest: SweptExtreme
    shortest: SweptExtreme
    def __init__(self, front_angle: SweptExtreme, rear_angle: SweptExtreme, difference: SweptExtreme, longest: SweptExtreme, shortest: SweptExtreme) -> None: ...

class BeamSegment(Record):
    length: float
    stiffness: float
    mass: float
    def __init__(self, length: float, stiffness: float, mass: float) -> None: ...

class BeamMass(Record):
    at: float
    mass: float
    def __init__(self, at: float, mass: float) -> None: ...

class BeamSupport(Record):
    at: float
    kind: SupportKind
    stiffness: float
    def __init__(self, at: float = ..., kind: SupportKind | str = ..., stiffness: float = ...) -> None: ...

class BeamLine(Record):
    segments: tuple[BeamSegment, ...]
    masses: tuple[BeamMass, ...]
    supports: tuple[BeamSupport, ...]
    def __init__(self, segments: Iterable[BeamSegment], masses: Iterable[BeamMass], supports: Iterable[BeamSupport]) -> None: ...

class WhirlMember(Record):
    tube: BeamSegment
    end_mass: float
    end_mass_from: float
    def __init__(self, tube: BeamSegment, end_mass: float = ..., end_mass_from: float = ...) -> None: ...

class WhirlMiddle(Record):
    tube: BeamSegment
    front_closed: float
    front_least: float
    rear_closed: float
    rear_least: float
    def __init__(self, tube: BeamSegment, front_closed: float = ..., front_least: float = ..., rear_closed: float = ..., rear_least: float = ...) -> None: ...

class WhirlTelescope(Record):
    front: WhirlMember
    rear: WhirlMember
    overlap_share: float
    front_support: BeamSupport
    rear_support: BeamSupport
    middle: WhirlMiddle | None
    def __init__(self, front: WhirlMember, rear: WhirlMember, overlap_share: float = ..., front_support: BeamSupport = ..., rear_support: BeamSupport = ..., middle: WhirlMiddle | None = ...) -> None: ...

class WhirlExtreme(Record):
    at: Any
    critical_speed: Any
    share: Any
    longest: Any
    at_longest: Any
    def __init__(self, at: ArrayLike, critical_speed: ArrayLike, share: ArrayLike, longest: ArrayLike, at_longest: ArrayLike) -> None: ...

class TrainInertia(Record):
    inertia: float
    drag: float
    def __init__(self, inertia: float, drag: float = ...) -> None: ...

class TrainShaft(Record):
    from_: int
    to: int
    stiffness: float
    ratio: float
    damping: float
    backlash: float
    def __init__(self, from_: int, to: int, stiffness: float, ratio: float = ..., damping: float = ..., backlash: float = ...) -> None: ...

class TrainAnchor(Record):
    inertia: int
    stiffness: float
    damping: float
    def __init__(self, inertia: int, stiffness: float, damping: float = ...) -> None: ...

class TorsionalTrain(Record):
    inertias: tuple[TrainInertia, ...]
    shafts: tuple[TrainShaft, ...]
    anchors: tuple[TrainAnchor, ...]
    def __init__(self, inertias: Iterable[TrainInertia], shafts: Iterable[TrainShaft] = ..., anchors: Iterable[TrainAnchor] = ...) -> None: ...

class TorsionalMode(Record):
    frequency: float
    amplitudes: tuple[float, ...]
    def __init__(self, frequency: float, amplitudes: Iterable[float]) -> None: ...

class ModeNode(Record):
    shaft: int
    share: float
    def __init__(self, shaft: int, share: float) -> None: ...

class SolidSection(Record):
    diameter: float
    def __init__(self, diameter: float) -> None: ...

class TubeSection(Record):
    outer_diameter: float
    inner_diameter: float
    def __init__(self, outer_diameter: float, inner_diameter: float) -> None: ...

class ProfileSection(Record):
    enclosed_area: float
    perimeter: float
    wall: float
    def __init__(self, enclosed_area: float, perimeter: float, wall: float) -> None: ...

class ShapedProfile(Record):
    enclosed_area: float
    perimeter: float
    wall: float
    second_moment: float
    def __init__(self, enclosed_area: float, perimeter: float, wall: float, second_moment: float) -> None: ...

class Wall(Record):
    width: float
    thickness: float
    def __init__(self, width: float, thickness: float) -> None: ...

class UnevenProfileSection(Record):
    enclosed_area: float
    walls: tuple[Wall, ...]
    def __init__(self, enclosed_area: float, walls: Iterable[Wall]) -> None: ...

class RectangleSection(Record):
    width: float
    height: float
    def __init__(self, width: float, height: float) -> None: ...

class TriangleSection(Record):
    side: float
    def __init__(self, side: float) -> None: ...

class OpenSection(Record):
    walls: tuple[Wall, ...]
    def __init__(self, walls: Iterable[Wall]) -> None: ...

class StepLength(Record):
    section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection
    length: float
    def __init__(self, section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, length: float) -> None: ...

class ExcitationOrder(Record):
    per_turn: float
    inertia: int
    def __init__(self, per_turn: float, inertia: int = ...) -> None: ...

class SpeedRange(Record):
    low: float
    high: float
    def __init__(self, low: float, high: float) -> None: ...

class Interference(Record):
    mode: int
    order: int
    natural: float
    critical_speed: float
    nearest: float
    separation: float
    swing: float
    def __init__(self, mode: int, order: int, natural: float, critical_speed: float, nearest: float, separation: float, swing: float) -> None: ...

class TorqueSwing(Record):
    amplitude: float
    phase: float
    def __init__(self, amplitude: float, phase: float = ...) -> None: ...

class AngleSwing(Record):
    amplitude: float
    phase: float
    def __init__(self, amplitude: float, phase: float = ...) -> None: ...

class TorqueExcitation(Record):
    inertia: int
    torque: TorqueSwing
    def __init__(self, inertia: int, torque: TorqueSwing) -> None: ...

class TwistExcitation(Record):
    shaft: int
    lead: AngleSwing
    def __init__(self, shaft: int, lead: AngleSwing) -> None: ...

class TorsionalExcitation(Record):
    frequency: float
    torques: tuple[TorqueExcitation, ...]
    leads: tuple[TwistExcitation, ...]
    def __init__(self, frequency: float, torques: Iterable[TorqueExcitation] = ..., leads: Iterable[TwistExcitation] = ...) -> None: ...

class ForcedResponse(Record):
    swings: tuple[AngleSwing, ...]
    torques: tuple[TorqueSwing, ...]
    def __init__(self, swings: Iterable[AngleSwing], torques: Iterable[TorqueSwing]) -> None: ...

class HeldSpeed(Record):
    def __init__(self) -> None: ...

class EnginePoint(Record):
    speed: float
    torque: float
    def __init__(self, speed: float, torque: float) -> None: ...

class EngineLine(Record):
    points: tuple[EnginePoint, ...]
    high_idle: float
    rated_speed: float | None
    def __init__(self, points: Iterable[EnginePoint], high_idle: float, rated_speed: float | None = ...) -> None: ...
    @property
    def rated(self) -> EnginePoint: ...
    @property
    def peak(self) -> EnginePoint: ...
    @property
    def rated_power(self) -> PtoPower: ...
    def torque_at(self, speed: ArrayLike) -> Any: ...
    def power_at(self, speed: ArrayLike) -> Any: ...
    def speed_under(self, load: ArrayLike) -> Any: ...
    def greatest_power(self) -> PowerPoint: ...

class EngineDrive(Record):
    line: EngineLine
    ratio: float
    def __init__(self, line: EngineLine, ratio: float) -> None: ...

class LineLoad(Record):
    friction: float
    viscous: float
    windage: float
    windage_speed: float
    def __init__(self, friction: float = ..., viscous: float = ..., windage: float = ..., windage_speed: float = ...) -> None: ...

class LineBrake(Record):
    from_: float
    torque: float
    def __init__(self, from_: float, torque: float) -> None: ...

class LineBody(Record):
    name: str
    inertia: float
    speed: float
    drive: None | HeldSpeed | EngineDrive
    load: LineLoad
    brakes: tuple[LineBrake, ...]
    blocked_at: float | None
    def __init__(self, name: str, inertia: float, speed: float = ..., drive: None | HeldSpeed | EngineDrive = ..., load: LineLoad = ..., brakes: Iterable[LineBrake] = ..., blocked_at: float | None = ...) -> None: ...

class LineJoints(Record):
    front: float
    rear: float
    phase: float
    rotation: float
    def __init__(self, front: float = ..., rear: float = ..., phase: float = ..., rotation: float = ...) -> None: ...

class LineShaft(Record):
    stiffness: float
    damping: float
    backlash: float
    ratio: float
    joints: LineJoints | None
    def __init__(self, stiffness: float, damping: float = ..., backlash: float = ..., ratio: float = ..., joints: LineJoints | None = ...) -> None: ...

class LineClutch(Record):
    torque: float
    engage_at: float
    ramp: float
    release_at: float | None
    break_away: float
    def __init__(self, torque: float, engage_at: float = ..., ramp: float = ..., release_at: float | None = ..., break_away: float = ...) -> None: ...

class LineShearBolt(Record):
    torque: float
    def __init__(self, torque: float) -> None: ...

class LineCutOut(Record):
    torque: float
    tripped_share: float
    def __init__(self, torque: float, tripped_share: float = ...) -> None: ...

class LineOverrun(Record):
    drag: float
    backwards: bool
    def __init__(self, drag: float = ..., backwards: bool = ...) -> None: ...

class PtoLine(Record):
    bodies: tuple[LineBody, ...]
    links: tuple[LineShaft | LineClutch | LineShearBolt | LineCutOut | LineOverrun, ...]
    def __init__(self, bodies: Iterable[LineBody], links: Iterable[LineShaft | LineClutch | LineShearBolt | LineCutOut | LineOverrun]) -> None: ...

class SimulationSettings(Record):
    duration: float
    until_standstill: bool
    relative_tolerance: float
    event_tolerance: float
    max_steps: int
    max_events: int
    sample_every: float
    def __init__(self, duration: float = ..., until_standstill: bool = ..., relative_tolerance: float = ..., event_tolerance: float = ..., max_steps: int = ..., max_events: int = ..., sample_every: float = ...) -> None: ...

class LineEvent(Record):
    time: float
    kind: LineEventKind
    index: int
    def __init__(self, time: float, kind: LineEventKind | str, index: int) -> None: ...

class PeakTorque(Record):
    torque: Any
    time: Any
    def __init__(self, torque: ArrayLike, time: ArrayLike) -> None: ...

class LinkResult(Record):
    peak: PeakTorque
    peak_driving: PeakTorque
    heat: float
    slip_time: float
    locked_at: float | None
    broken: bool
    tripped: bool
    def __init__(self, peak: PeakTorque, peak_driving: PeakTorque, heat: float, slip_time: float, locked_at: float | None, broken: bool, tripped: bool) -> None: ...

class BodyResult(Record):
    speed: float
    drive_work: float
    load_work: float
    standstill: float | None
    def __init__(self, speed: float, drive_work: float, load_work: float, standstill: float | None) -> None: ...

class EnergyBalance(Record):
    at_start: Any
    drive: Any
    load: Any
    heat: Any
    impact: Any
    motion: Any
    twist: Any
    error: Any
    def __init__(self, at_start: ArrayLike, drive: ArrayLike, load: ArrayLike, heat: ArrayLike, impact: ArrayLike, motion: ArrayLike, twist: ArrayLike, error: ArrayLike) -> None: ...

class SimulationTrace(Record):
    time: NDArray[np.float64]
    speeds: NDArray[np.float64]
    torques: NDArray[np.float64]
    def __init__(self, time: Any, speeds: Any, torques: Any) -> None: ...

class SimulationResult(Record):
    complete: bool
    end: SimulationEnd
    reached: float
    steps: int
    bodies: tuple[BodyResult, ...]
    links: tuple[LinkResult, ...]
    events: tuple[LineEvent, ...]
    energy: EnergyBalance
    trace: SimulationTrace
    def __init__(self, complete: bool, end: SimulationEnd | str, reached: float, steps: int, bodies: Iterable[BodyResult], links: Iterable[LinkResult], events: Iterable[LineEvent], energy: EnergyBalance, trace: SimulationTrace) -> None: ...

class SurfaceConstants(Record):
    coefficient: Any
    exponent: Any
    def __init__(self, coefficient: ArrayLike, exponent: ArrayLike) -> None: ...

class EnduranceFactors(Record):
    surface: float
    size: float
    load: float
    temperature: float
    reliability: float
    def __init__(self, surface: float = ..., size: float = ..., load: float = ..., temperature: float = ..., reliability: float = ...) -> None: ...

class EnduranceConditions(Record):
    finish: SurfaceFinish
    diameter: float
    load: LoadKind
    above_zero_celsius: float
    reliability: float
    def __init__(self, finish: SurfaceFinish | str, diameter: float, load: LoadKind | str = ..., above_zero_celsius: float = ..., reliability: float = ...) -> None: ...

class DutyLife(Record):
    damage_per_year: Any
    working_time: Any
    years: Any
    def __init__(self, damage_per_year: ArrayLike, working_time: ArrayLike, years: ArrayLike) -> None: ...

class FatigueStrength(Record):
    endurance: float
    ultimate: float
    yield_: float
    def __init__(self, endurance: float, ultimate: float, yield_: float) -> None: ...

class ShaftLoad(Record):
    bending_amplitude: float
    bending_mean: float
    torque_amplitude: float
    torque_mean: float
    def __init__(self, bending_amplitude: float = ..., bending_mean: float = ..., torque_amplitude: float = ..., torque_mean: float = ...) -> None: ...

class NotchFactors(Record):
    bending: float
    torsion: float
    def __init__(self, bending: float = ..., torsion: float = ...) -> None: ...

class ShaftStresses(Record):
    amplitude: Any
    mean: Any
    peak: Any
    def __init__(self, amplitude: ArrayLike, mean: ArrayLike, peak: ArrayLike) -> None: ...

class SnLine(Record):
    coefficient: float
    exponent: float
    endurance: float
    ultimate: float
    yield_: float
    either_sign: bool
    def __init__(self, coefficient: float, exponent: float, endurance: float, ultimate: float, yield_: float, either_sign: bool = ...) -> None: ...

class TorqueSnLine(Record):
    coefficient: float
    exponent: float
    endurance: float
    ultimate: float
    yield_: float
    either_sign: bool
    def __init__(self, coefficient: float, exponent: float, endurance: float, ultimate: float, yield_: float, either_sign: bool = ...) -> None: ...

class Duty(Record):
    amplitude: float
    mean: float
    frequency: float
    per_year: float
    def __init__(self, amplitude: float, mean: float, frequency: float, per_year: float) -> None: ...

class Pose(Record):
    pin: Position
    attitude: Attitude
    def __init__(self, pin: Position, attitude: Attitude = ...) -> None: ...

class HitchPowerRange(Record):
    low: Any
    high: Any
    def __init__(self, low: ArrayLike, high: ArrayLike) -> None: ...

class HitchCategory(Record):
    number: int
    narrow: bool
    power: Sourced | None
    span: Sourced | None
    lower_pin: Sourced | None
    upper_pin: Sourced | None
    mast_height: Sourced | None
    convergence: Sourced | None
    greatest_low_height: Sourced | None
    least_movement: Sourced | None
    least_transport_height: Sourced | None
    least_levelling: Sourced | None
    least_lateral_float: Sourced | None
    pto_to_lower_points: Sourced | None
    def __init__(self, number: int, narrow: bool, power: Sourced | None, span: Sourced | None, lower_pin: Sourced | None, upper_pin: Sourced | None, mast_height: Sourced | None, convergence: Sourced | None, greatest_low_height: Sourced | None, least_movement: Sourced | None, least_transport_height: Sourced | None, least_levelling: Sourced | None, least_lateral_float: Sourced | None, pto_to_lower_points: Sourced | None) -> None: ...

class HitchAngleRange(Record):
    low: Any
    high: Any
    def __init__(self, low: ArrayLike, high: ArrayLike) -> None: ...

class DrawbarHitch(Record):
    distance: float
    lateral: float
    drop: float
    def __init__(self, distance: float = ..., lateral: float = ..., drop: float = ...) -> None: ...

class WheelPlaces(Record):
    wheelbase: float
    overhang: float
    tongue: float
    pin_height: float
    def __init__(self, wheelbase: float = ..., overhang: float = ..., tongue: float = ..., pin_height: float = ...) -> None: ...

class FourBarAngles(Record):
    coupler: Any
    rocker: Any
    def __init__(self, coupler: ArrayLike, rocker: ArrayLike) -> None: ...

class ThreePointLinkage(Record):
    lower_pivot_behind: float
    lower_pivot_below: float
    lower_link: float
    top_pivot_behind: float
    top_pivot_below: float
    top_link: float
    mast_height: float
    mast_forward: float
    span: float
    convergence: float
    coupler_depth: float
    coupler_rise: float
    def __init__(self, lower_pivot_behind: float = ..., lower_pivot_below: float = ..., lower_link: float = ..., top_pivot_behind: float = ..., top_pivot_below: float = ..., top_link: float = ..., mast_height: float = ..., mast_forward: float = ..., span: float = ..., convergence: float = ..., coupler_depth: float = ..., coupler_rise: float = ...) -> None: ...

class SupportWheel(Record):
    behind: float
    below: float
    ground_below_pivot: float
    def __init__(self, behind: float = ..., below: float = ..., ground_below_pivot: float = ...) -> None: ...

class SlackPose(Record):
    pose: Pose
    top_link: Any
    def __init__(self, pose: Pose, top_link: ArrayLike) -> None: ...

class JointDuty(Record):
    share: float
    torque: float
    speed: float
    angle: float
    def __init__(self, share: float, torque: float, speed: float, angle: float) -> None: ...

class JointCouples(Record):
    output: Any
    driving: Any
    driven: Any
    def __init__(self, output: ArrayLike, driving: ArrayLike, driven: ArrayLike) -> None: ...

class JointPairExtremes(Record):
    equivalent_angle: Any
    largest_ratio: Any
    least_ratio: Any
    peak_acceleration: Any
    def __init__(self, equivalent_angle: ArrayLike, largest_ratio: ArrayLike, least_ratio: ArrayLike, peak_acceleration: ArrayLike) -> None: ...

class SplinePosition(Record):
    steps: Any
    yoke_phase: Any
    phase: Any
    equivalent_angle: Any
    def __init__(self, steps: ArrayLike, yoke_phase: ArrayLike, phase: ArrayLike, equivalent_angle: ArrayLike) -> None: ...

class JointInRow(Record):
    angle: float
    phase: float
    def __init__(self, angle: float, phase: float = ...) -> None: ...

class JointAnglePractice(Record):
    working: JointAngleBand
    turning: JointAngleBand
    at_rest: JointAngleBand
    def __init__(self, working: JointAngleBand, turning: JointAngleBand, at_rest: JointAngleBand) -> None: ...

class BoltGrade(Record):
    standard: str
    name: str
    size_above: float
    size_max: float
    ultimate_nominal: float
    ultimate_min: float
    ultimate_max: float
    yield_min: float
    proof: float
    hardness_max: str
    source: Source
    ultimate_max_source: Source
    def __init__(self, standard: str, name: str, size_above: float, size_max: float, ultimate_nominal: float, ultimate_min: float, ultimate_max: float, yield_min: float, proof: float, hardness_max: str, source: Source, ultimate_max_source: Source) -> None: ...

class Material(Record):
    name: str
    condition: str
    ultimate: float
    yield_: float
    section_min: float
    section_max: float
    source: Source
    hardness_brinell: Sourced | None
    youngs_modulus: float
    shear_modulus: float
    density: float
    poisson_ratio: float
    elastic_source: Source
    def __init__(self, name: str, condition: str, ultimate: float, yield_: float, section_min: float = ..., section_max: float = ..., source: Source = ..., hardness_brinell: Sourced | None = ..., youngs_modulus: float = ..., shear_modulus: float = ..., density: float = ..., poisson_ratio: float = ..., elastic_source: Source = ...) -> None: ...

class Strength(Record):
    ultimate: Any
    yield_: Any
    def __init__(self, ultimate: ArrayLike, yield_: ArrayLike) -> None: ...

class TorqueBand(Record):
    low: Any
    high: Any
    def __init__(self, low: ArrayLike, high: ArrayLike) -> None: ...

class DeviceSetting(Record):
    nominal: Any
    scatter: Any
    def __init__(self, nominal: ArrayLike, scatter: ArrayLike) -> None: ...

class ClutchEngagement(Record):
    time: Any
    heat: Any
    speed: Any
    locks: Any
    def __init__(self, time: ArrayLike, heat: ArrayLike, speed: ArrayLike, locks: bool) -> None: ...

class OverrunCoast(Record):
    time: Any
    angle: Any
    energy: Any
    def __init__(self, time: ArrayLike, angle: ArrayLike, energy: ArrayLike) -> None: ...

class SettingPractice(Record):
    limiter: LimiterKind
    basis: SettingBasis
    low: float
    high: float
    source: Source
    def __init__(self, limiter: LimiterKind | str, basis: SettingBasis | str, low: float, high: float, source: Source) -> None: ...

class CoarsePitch(Record):
    system: ThreadSystem
    diameter: float
    pitch: float
    def __init__(self, system: ThreadSystem | str, diameter: float, pitch: float) -> None: ...

class ChainPart(Record):
    name: str
    yield_torque: float
    speed_ratio: float
    efficiency: float
    def __init__(self, name: str, yield_torque: float, speed_ratio: float, efficiency: float = ...) -> None: ...

class DeviceWindow(Record):
    lowest: float
    highest: float
    state: WindowState
    weakest: int
    weakest_name: str
    weakest_torque: float
    open: bool
    def __init__(self, lowest: float, highest: float, state: WindowState | str, weakest: int, weakest_name: str, weakest_torque: float, open: bool) -> None: ...

class GrossEnginePower(Record):
    power: float
    def __init__(self, power: float) -> None: ...

class NetEnginePower(Record):
    power: float
    def __init__(self, power: float) -> None: ...

class PtoPower(Record):
    power: float
    def __init__(self, power: float) -> None: ...

class PtoPowerRange(Record):
    low: PtoPower
    usual: PtoPower
    high: PtoPower
    def __init__(self, low: PtoPower, usual: PtoPower, high: PtoPower) -> None: ...

class RulePowers(Record):
    engine: Any
    pto: Any
    drawbar: Any
    def __init__(self, engine: ArrayLike, pto: ArrayLike, drawbar: ArrayLike) -> None: ...

class EconomySaving(Record):
    plain: Any
    economy: Any
    saving: Any
    def __init__(self, plain: ArrayLike, economy: ArrayLike, saving: ArrayLike) -> None: ...

class ImplementPower(Record):
    low: Any
    mean: Any
    high: Any
    def __init__(self, low: ArrayLike, mean: ArrayLike, high: ArrayLike) -> None: ...

class FeedRate(Record):
    rate: float
    basis: FeedBasis
    def __init__(self, rate: float = ..., basis: FeedBasis | str = ...) -> None: ...

class Machine(Record):
    name: str
    constant: float
    per_width: float
    per_mass: float
    basis: FeedBasis
    range: float
    note: str
    source: Source
    def __init__(self, name: str, constant: float, per_width: float, per_mass: float, basis: FeedBasis | str, range: float, note: str = ..., source: Source = ...) -> None: ...

class PtoOption(Record):
    name: str
    nominal_speed: float
    engine_speed: float
    def __init__(self, name: str, nominal_speed: float, engine_speed: float) -> None: ...
    @property
    def ratio(self) -> float: ...

class PtoOutput(Record):
    speed: Any
    torque: Any
    power: Any
    def __init__(self, speed: ArrayLike, torque: ArrayLike, power: ArrayLike) -> None: ...

class PowerPoint(Record):
    speed: Any
    power: PtoPower
    def __init__(self, speed: ArrayLike, power: PtoPower) -> None: ...

class PtoOptions(Record):
    options: tuple[PtoOption, ...]
    def __init__(self, options: Iterable[PtoOption]) -> None: ...
    def find(self, name: str) -> PtoOption | None: ...
    def economy_of(self, name: str) -> PtoOption | None: ...

class WidthLimit(Record):
    safe: Any
    mean: Any
    optimistic: Any
    def __init__(self, safe: ArrayLike, mean: ArrayLike, optimistic: ArrayLike) -> None: ...

class TractorLimit(Record):
    safe: Any
    mean: Any
    optimistic: Any
    def __init__(self, safe: ArrayLike, mean: ArrayLike, optimistic: ArrayLike) -> None: ...

class SpeedLimit(Record):
    safe: Any
    mean: Any
    optimistic: Any
    def __init__(self, safe: ArrayLike, mean: ArrayLike, optimistic: ArrayLike) -> None: ...

class FeedLimit(Record):
    safe: Any
    mean: Any
    optimistic: Any
    def __init__(self, safe: ArrayLike, mean: ArrayLike, optimistic: ArrayLike) -> None: ...

class PowerShare(Record):
    low: Sourced
    usual: Sourced
    high: Sourced
    def __init__(self, low: Sourced, usual: Sourced, high: Sourced) -> None: ...

class EconomyMeasurement(Record):
    what: str
    low: float
    high: float
    source: Source
    def __init__(self, what: str, low: float, high: float, source: Source) -> None: ...

class MeasuredPowerPerWidth(Record):
    machine: str
    low: float
    high: float
    source: Source
    def __init__(self, machine: str, low: float, high: float, source: Source) -> None: ...

class MeasuredEnergyPerMass(Record):
    machine: str
    low: float
    high: float
    source: Source
    def __init__(self, machine: str, low: float, high: float, source: Source) -> None: ...

class MeasuredPower(Record):
    machine: str
    low: float
    high: float
    source: Source
    def __init__(self, machine: str, low: float, high: float, source: Source) -> None: ...

class PeakRatio(Record):
    machine: str
    low: float
    high: float
    source: Source
    def __init__(self, machine: str, low: float, high: float, source: Source) -> None: ...

class DrawbarDistance(Record):
    position: DrawbarPosition
    distance: Sourced
    def __init__(self, position: DrawbarPosition | str, distance: Sourced) -> None: ...

class DrawbarCategory(Record):
    number: int
    greatest_pto_power: Sourced | None
    pin_diameter: Sourced | None
    hole_diameter: Sourced | None
    def __init__(self, number: int, greatest_pto_power: Sourced | None, pin_diameter: Sourced | None, hole_diameter: Sourced | None) -> None: ...

class LengthLimits(Record):
    nominal: Any
    smallest: Any
    largest: Any
    def __init__(self, nominal: ArrayLike, smallest: ArrayLike, largest: ArrayLike) -> None: ...

class StraightProfile(Record):
    major_diameter: LengthLimits
    minor_diameter: LengthLimits
    tooth_width: LengthLimits
    def __init__(self, major_diameter: LengthLimits, minor_diameter: LengthLimits, tooth_width: LengthLimits) -> None: ...

class InvoluteProfile(Record):
    teeth: int
    module: float
    pressure_angle: float
    pitch_diameter: float
    major_diameter: float
    minor_diameter_flat: float
    minor_diameter_fillet: float
    tooth_thickness: float
    derived: Source
    def __init__(self, teeth: int, module: float, pressure_angle: float, pitch_diameter: float, major_diameter: float, minor_diameter_flat: float, minor_diameter_fillet: float, tooth_thickness: float, derived: Source) -> None: ...

class PtoType(Record):
    number: int
    name: str
    nominal_speed: float
    nominal_diameter: float
    named_diameter: float
    spline_count: int
    form: SplineForm
    identity: Source
    known_speeds: tuple[Sourced, ...]
    straight_rule: Sourced | None
    straight_standard: Sourced | None
    involute: Sourced | None
    useful_spline_length: Sourced | None
    groove_diameter: Sourced | None
    groove_radius: Sourced | None
    end_to_groove: Sourced | None
    cross_hole: Sourced | None
    shield_overlap: Sourced | None
    height: Sourced | None
    def __init__(self, number: int, name: str, nominal_speed: float, nominal_diameter: float, named_diameter: float, spline_count: int, form: SplineForm | str, identity: Source, known_speeds: Iterable[Sourced], straight_rule: Sourced | None, straight_standard: Sourced | None, involute: Sourced | None, useful_spline_length: Sourced | None, groove_diameter: Sourced | None, groove_radius: Sourced | None, end_to_groove: Sourced | None, cross_hole: Sourced | None, shield_overlap: Sourced | None, height: Sourced | None) -> None: ...

class PtoMatch(Record):
    type: PtoType
    diameter_difference: float
    count_difference: int
    def __init__(self, type: PtoType | int, diameter_difference: float, count_difference: int) -> None: ...

class PtoIdentification(Record):
    found: bool
    ambiguous: bool
    speed_is_proved: bool
    candidates: tuple[PtoMatch, ...]
    near_misses: tuple[PtoMatch, ...]
    def __init__(self, found: bool, ambiguous: bool, speed_is_proved: bool, candidates: Iterable[PtoMatch], near_misses: Iterable[PtoMatch]) -> None: ...

class RecommendedPower(Record):
    edition: str
    power: float
    source: Source
    def __init__(self, edition: str, power: float, source: Source) -> None: ...

class RecommendedPowers(Record):
    known: bool
    lowest: Sourced | None
    highest: Sourced | None
    editions: tuple[RecommendedPower, ...]
    def __init__(self, known: bool, lowest: Sourced | None, highest: Sourced | None, editions: Iterable[RecommendedPower]) -> None: ...

class DrawbarPowerClass(Record):
    number: Any
    low: Any
    high: Any
    def __init__(self, number: ArrayLike, low: ArrayLike, high: ArrayLike) -> None: ...

class PtoSpeedTolerance(Record):
    nominal: float
    tolerance: float
    source: Source
    def __init__(self, nominal: float, tolerance: float, source: Source) -> None: ...

class OverspeedGuard(Record):
    nominal: float
    printed_for: float
    guard: float
    source: Source
    def __init__(self, nominal: float, printed_for: float, guard: float, source: Source) -> None: ...

class OverspeedRatios(Record):
    speed: Any
    energy: Any
    air_power: Any
    torque_for_same_power: Any
    gearing_for_same_tip_speed: Any
    def __init__(self, speed: ArrayLike, energy: ArrayLike, air_power: ArrayLike, torque_for_same_power: ArrayLike, gearing_for_same_tip_speed: ArrayLike) -> None: ...

class TipSpeedLine(Record):
    scope: RotorMachine
    speed: float
    remark: str
    source: Source
    def __init__(self, scope: RotorMachine | str, speed: float, remark: str, source: Source) -> None: ...

class Flight(Record):
    distance: Any
    time: Any
    top: Any
    landing_speed: Any
    landing_angle: Any
    def __init__(self, distance: ArrayLike, time: ArrayLike, top: ArrayLike, landing_speed: ArrayLike, landing_angle: ArrayLike) -> None: ...

class FarthestFlight(Record):
    launch_angle: Any
    flight: Flight
    def __init__(self, launch_angle: ArrayLike, flight: Flight) -> None: ...

class TipSpeedRange(Record):
    machine: RotorMachine
    low: float
    high: float
    source: Source
    def __init__(self, machine: RotorMachine | str, low: float, high: float, source: Source) -> None: ...

class CuttingSpeed(Record):
    low: float
    high: float
    meaning: str
    source: Source
    def __init__(self, low: float, high: float, meaning: str, source: Source) -> None: ...

class TorsionImpact(Record):
    torque: Any
    stress: Any
    twist: Any
    def __init__(self, torque: ArrayLike, stress: ArrayLike, twist: ArrayLike) -> None: ...

class Overload(Record):
    core_diameter: Any
    twist_rate: Any
    permanent_twist: Any
    residual_surface: Any
    residual_core: Any
    def __init__(self, core_diameter: ArrayLike, twist_rate: ArrayLike, permanent_twist: ArrayLike, residual_surface: ArrayLike, residual_core: ArrayLike) -> None: ...

class StubSection(Record):
    diameter: float
    notch: NotchFactors
    def __init__(self, diameter: float = ..., notch: NotchFactors = ...) -> None: ...

class StubShaft(Record):
    root: StubSection
    groove: StubSection
    bore_diameter: float
    def __init__(self, root: StubSection, groove: StubSection = ..., bore_diameter: float = ...) -> None: ...

class StubLoad(Record):
    torque: float
    torque_amplitude: float
    joint_angle: float
    side_force: float
    overhang: float
    def __init__(self, torque: float, torque_amplitude: float = ..., joint_angle: float = ..., side_force: float = ..., overhang: float = ...) -> None: ...

class StubStress(Record):
    torsion: float
    bending: float
    equivalent: float
    place: StubPlace
    def __init__(self, torsion: float, bending: float, equivalent: float, place: StubPlace | str) -> None: ...

class StubSafety(Record):
    factor: float
    place: StubPlace
    def __init__(self, factor: float, place: StubPlace | str) -> None: ...

class ShaftStep(Record):
    section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection
    length: float
    torque: float
    shear_yield: float
    shear_modulus: float
    def __init__(self, section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, length: float, torque: float, shear_yield: float, shear_modulus: float) -> None: ...

class SteppedShaft(Record):
    twist: Any
    weakest: Any
    stress: Any
    safety_factor: Any
    def __init__(self, twist: ArrayLike, weakest: ArrayLike, stress: ArrayLike, safety_factor: ArrayLike) -> None: ...

class SaggingWeight(Record):
    weight: float
    sag: float
    def __init__(self, weight: float, sag: float) -> None: ...

class SpeedShare(Record):
    low: Sourced
    high: Sourced
    def __init__(self, low: Sourced, high: Sourced) -> None: ...

class SplineLimits(Record):
    root_torsion: float
    tooth_shear: float
    flank_pressure: float
    def __init__(self, root_torsion: float, tooth_shear: float, flank_pressure: float) -> None: ...

class SplineAllowables(Record):
    shear: Sourced
    flank_straight: Sourced | None
    flank_crowned: Sourced | None
    tensile: Sourced
    def __init__(self, shear: Sourced, flank_straight: Sourced | None, flank_crowned: Sourced | None, tensile: Sourced) -> None: ...

class SplineCapacity(Record):
    root_torsion: float
    tooth_shear: float
    flank_pressure: float
    governing: SplineMode
    torque: float
    lead: float
    def __init__(self, root_torsion: float, tooth_shear: float, flank_pressure: float, governing: SplineMode | str, torque: float, lead: float) -> None: ...

class SplineSize(Record):
    scale: float
    major_diameter: float
    governing: SplineMode
    def __init__(self, scale: float, major_diameter: float, governing: SplineMode | str) -> None: ...

class SplineFactors(Record):
    application: float
    load_distribution: float
    fatigue_life: float
    wear: float
    def __init__(self, application: float = ..., load_distribution: float = ..., fatigue_life: float = ..., wear: float = ...) -> None: ...

class InvoluteGeometry(Record):
    teeth: int
    module: float
    pressure_angle: float
    pitch_diameter: float
    base_diameter: float
    circular_pitch: float
    tooth_thickness: float
    shaft_major: float
    shaft_minor: float
    hub_major: float
    hub_minor: float
    engaged_height: float
    def __init__(self, teeth: int, module: float, pressure_angle: float, pitch_diameter: float, base_diameter: float, circular_pitch: float, tooth_thickness: float, shaft_major: float, shaft_minor: float, hub_major: float, hub_minor: float, engaged_height: float) -> None: ...

class SleeveStress(Record):
    wall: Any
    radial: Any
    centrifugal: Any
    tooth_bend: Any
    tensile: Any
    def __init__(self, wall: ArrayLike, radial: ArrayLike, centrifugal: ArrayLike, tooth_bend: ArrayLike, tensile: ArrayLike) -> None: ...

class TelescopeThrust(Record):
    front_axial: Any
    front_side: Any
    rear_axial: Any
    rear_side: Any
    def __init__(self, front_axial: ArrayLike, front_side: ArrayLike, rear_axial: ArrayLike, rear_side: ArrayLike) -> None: ...

class SplineSizes(Record):
    teeth: int
    major_diameter: float
    root_diameter: float
    bearing_diameter: float
    tooth_thickness: float
    engaged_height: float
    length: float
    sleeve_root: float
    flank_angle: float
    def __init__(self, teeth: int, major_diameter: float, root_diameter: float, bearing_diameter: float, tooth_thickness: float, engaged_height: float, length: float, sleeve_root: float, flank_angle: float = ...) -> None: ...

class SplineFractions(Record):
    height: Any
    minor: Any
    width: Any
    def __init__(self, height: ArrayLike, minor: ArrayLike, width: ArrayLike) -> None: ...

class SplineStress(Record):
    root_torsion: Any
    tooth_shear: Any
    flank_pressure: Any
    def __init__(self, root_torsion: ArrayLike, tooth_shear: ArrayLike, flank_pressure: ArrayLike) -> None: ...

class StraightSpline(Record):
    count: int
    major_diameter: float
    minor_diameter: float
    tooth_width: float
    length: float
    def __init__(self, count: int, major_diameter: float, minor_diameter: float, tooth_width: float, length: float) -> None: ...

class InvoluteSpline(Record):
    teeth: int
    module: float
    pressure_angle: float
    length: float
    root: SplineRoot
    def __init__(self, teeth: int, module: float, pressure_angle: float, length: float, root: SplineRoot | str = ...) -> None: ...

class MeasuredSpline(Record):
    sizes: SplineSizes
    def __init__(self, sizes: SplineSizes) -> None: ...

def gear_uses(case: Case) -> tuple[GearUse, ...]: ...
def economy_answer(case: Case, season: SeasonUse) -> EconomyAnswer: ...
def is_remembered(standing: Standing | str) -> bool: ...
def fuel_cost(rate: float, time: float, price_per_litre: Money) -> Money: ...
def hourly_cost(year: YearOfUse, repair_class: RepairClass | str) -> Validated: ...
@typing.overload
def real_interest(interest: float, inflation: float) -> float: ...
@typing.overload
def real_interest(interest: ArrayLike, inflation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def real_interest_by_difference(interest: float, inflation: float) -> float: ...
@typing.overload
def real_interest_by_difference(interest: ArrayLike, inflation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def capital_recovery_factor(interest: float, years: float) -> float: ...
@typing.overload
def capital_recovery_factor(interest: ArrayLike, years: ArrayLike) -> NDArray[np.float64]: ...
def capital_recovery(price: Money, salvage: Money, interest: float, years: float) -> Money: ...
def taxes_insurance_housing(price: Money, salvage: Money, rate: float = ...) -> Money: ...
def ownership_cost(price: Money, salvage: Money, interest: float, years: float, rate: float = ...) -> OwnershipCost: ...
@typing.overload
def ownership_share(salvage_share: float, years: float, interest: float, other: float = ...) -> float: ...
@typing.overload
def ownership_share(salvage_share: ArrayLike, years: ArrayLike, interest: ArrayLike, other: ArrayLike = ...) -> NDArray[np.float64]: ...
def payback_years(price: Money, saving: Money, interest: ArrayLike) -> Validated: ...
def value_classes() -> tuple[ValueClass, ...]: ...
def value_class_named(name: str) -> ValueClass: ...
def tractor_value_class(pto_power: float) -> ValueClass: ...
def remaining_value(value_class: ValueClass | str, years: ArrayLike, annual_use: ArrayLike) -> Validated: ...
def older_value_class_named(name: str) -> OlderValueClass: ...
@typing.overload
def older_remaining_value(value_class: OlderValueClass | str, years: float) -> float: ...
@typing.overload
def older_remaining_value(value_class: OlderValueClass | str, years: ArrayLike) -> NDArray[np.float64]: ...
def repair_classes() -> tuple[RepairClass, ...]: ...
def repair_class_named(name: str) -> RepairClass: ...
def accumulated_repair(repair_class: RepairClass | str, use: ArrayLike) -> Validated: ...
def repair_cost(list_price: Money, repair_class: RepairClass | str, from_: float, to: float) -> Validated: ...
def branch_envelopes(branches: Iterable[Branch], torque: float, options: EnvelopeOptions = ...) -> tuple[BranchEnvelope, ...]: ...
def seen_from(part: Pose, driveline: Driveline) -> Driveline: ...
def chain_at(first: Driveline, second: Driveline, between: float, pose: Pose) -> ChainState: ...
def chain_envelope(first: Driveline, second: Driveline, between: ArrayLike, pin: Position, range: AttitudeRange, options: EnvelopeOptions = ...) -> NumberExtreme: ...
def mounted_chain_envelope(first: Driveline, second: Driveline, between: ArrayLike, linkage: ThreePointLinkage, range: MountedRange, wheel: SupportWheel | None = ..., options: EnvelopeOptions = ...) -> MountedChainEnvelope: ...
def with_adaptor(driveline: Driveline, length: float) -> Driveline: ...
def adaptor_effect(driveline: Driveline, length: float, pin: Position, range: AttitudeRange, options: EnvelopeOptions = ...) -> EnvelopeChange: ...
def least_clearance(driveline: Driveline, pin: Position, range: AttitudeRange, around: Surroundings, gap: ArrayLike = ..., budget: ArrayLike = ...) -> LengthExtreme: ...
def mounted_least_clearance(driveline: Driveline, linkage: ThreePointLinkage, range: MountedRange, around: MountedSurroundings, gap: ArrayLike = ..., budget: ArrayLike = ...) -> MountedClearance: ...
def tolerant_mounted_least_clearance(driveline: Driveline, linkage: ThreePointLinkage, tolerance: MountedTolerance, range: MountedRange, around: MountedSurroundings, gap: ArrayLike = ..., budget: ArrayLike = ...) -> MountedClearance: ...
def turn_limit_of_surroundings(driveline: Driveline, pin: Position, range: AttitudeRange, around: Surroundings, clearance: float, fineness: float = ...) -> TurnLimits: ...
def turn_limit_with_surroundings(driveline: Driveline, pin: Position, range: AttitudeRange, limits: DrivelineLimits, around: Surroundings | None, clearance: float, options: EnvelopeOptions = ...) -> Validated: ...
def front_joint_position(driveline: Driveline) -> Position: ...
def rear_joint_position(driveline: Driveline) -> Position: ...
@typing.overload
def overlap_at(telescope: Telescope, length: float) -> float: ...
@typing.overload
def overlap_at(telescope: Telescope, length: ArrayLike) -> NDArray[np.float64]: ...
def greatest_length(telescope: Telescope) -> float | None: ...
def driveline_envelope(driveline: Driveline, pin: Position, range: AttitudeRange, options: EnvelopeOptions = ...) -> DrivelineEnvelope: ...
def lift_limit(driveline: Driveline, linkage: ThreePointLinkage, range: MountedRange, limits: DrivelineLimits, options: EnvelopeOptions = ...) -> LiftLimit: ...
def mounted_driveline_envelope(driveline: Driveline, linkage: ThreePointLinkage, range: MountedRange, options: EnvelopeOptions = ...) -> MountedEnvelope: ...
def tolerant_mounted_driveline_envelope(driveline: Driveline, linkage: ThreePointLinkage, tolerance: MountedTolerance, range: MountedRange, options: EnvelopeOptions = ...) -> MountedEnvelope: ...
def slack_driveline_envelope(driveline: Driveline, linkage: ThreePointLinkage, wheel: SupportWheel, tolerance: MountedTolerance, range: MountedRange, options: EnvelopeOptions = ...) -> MountedEnvelope: ...
def equal_angle_pin_distance(driveline: Driveline) -> float: ...
def equal_angle_rear_joint(driveline: Driveline, hitch: DrawbarHitch) -> float: ...
def placement(driveline: Driveline, hitch: DrawbarHitch, range: AttitudeRange, parameter: PlacementParameter | str, value: float, goal: PlacementGoal | str, options: EnvelopeOptions = ...) -> Placement: ...
def best_placement(driveline: Driveline, hitch: DrawbarHitch, range: AttitudeRange, parameter: PlacementParameter | str, places: Iterable[float], goal: PlacementGoal | str, options: EnvelopeOptions = ...) -> Placement: ...
def best_placement_between(driveline: Driveline, hitch: DrawbarHitch, range: AttitudeRange, parameter: PlacementParameter | str, from_: float, to: float, goal: PlacementGoal | str, options: EnvelopeOptions = ...) -> Placement: ...
@typing.overload
def planar_centre_distance(ahead: float, behind: float, turn: float) -> float: ...
@typing.overload
def planar_centre_distance(ahead: ArrayLike, behind: ArrayLike, turn: ArrayLike) -> NDArray[np.float64]: ...
def planar_joint_angles(ahead: ArrayLike, behind: ArrayLike, turn: ArrayLike) -> PlanarJointAngles: ...
def driveline_at(driveline: Driveline, pose: Pose) -> DrivelineState: ...
def envelope_table(driveline: Driveline, pin: Position, range: AttitudeRange, yaw_points: int, pitch_points: int, options: EnvelopeOptions = ...) -> tuple[EnvelopeTableRow, ...]: ...
def tolerant_driveline_envelope(driveline: Driveline, pin: Position, tolerance: DrivelineTolerance, range: AttitudeRange, options: EnvelopeOptions = ...) -> TolerantEnvelope: ...
def tube_lengths(telescope: Telescope, longest: ArrayLike, shortest: ArrayLike, rules: TubeRules = ...) -> TubeLengths: ...
def tube_advice(telescope: Telescope, longest: LengthExtreme, shortest: LengthExtreme, rules: TubeRules = ...) -> TubeAdvice: ...
def check_length(driveline: Driveline, pose: Pose, measured: ArrayLike, tolerance: ArrayLike, model_tolerance: ArrayLike) -> LengthCheck: ...
def checked_tube_lengths(telescope: Telescope, longest: LengthExtreme, shortest: LengthExtreme, checks: Iterable[LengthCheck], rules: TubeRules = ...) -> Validated: ...
def check_limits(envelope: DrivelineEnvelope, limits: DrivelineLimits) -> LimitCheck: ...
def turn_limit(driveline: Driveline, pin: Position, range: AttitudeRange, limits: DrivelineLimits, options: EnvelopeOptions = ...) -> TurnLimits: ...
def tolerant_turn_limit(driveline: Driveline, pin: Position, tolerance: DrivelineTolerance, range: AttitudeRange, limits: DrivelineLimits, fineness: float = ..., options: EnvelopeOptions = ...) -> TurnLimits: ...
def turn_limit_over_pitch(driveline: Driveline, pin: Position, range: AttitudeRange, limits: DrivelineLimits, points: int, options: EnvelopeOptions = ...) -> tuple[TurnLimitAtPitch, ...]: ...
@typing.overload
def wide_angle_far_angle(offset: float, behind: float, turn: float) -> float: ...
@typing.overload
def wide_angle_far_angle(offset: ArrayLike, behind: ArrayLike, turn: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def wide_angle_centre_shift(yoke_length: float, angle: float) -> float: ...
@typing.overload
def wide_angle_centre_shift(yoke_length: ArrayLike, angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def wide_angle_shortening(yoke_length: float, angle: float) -> float: ...
@typing.overload
def wide_angle_shortening(yoke_length: ArrayLike, angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def wide_angle_residual(angle: float, imbalance: float) -> float: ...
@typing.overload
def wide_angle_residual(angle: ArrayLike, imbalance: ArrayLike) -> NDArray[np.float64]: ...
def kernel_is_available(kernel: ProcessorKernel | str) -> bool: ...
def driveline_sweep(driveline: Driveline, pin: Position, grid: AttitudeGrid, threads: int = ..., kernel: ProcessorKernel | str = ...) -> DrivelineSweep: ...
def beam_segment(section: SolidSection | TubeSection | ShapedProfile, length: ArrayLike, youngs_modulus: ArrayLike, density: ArrayLike) -> BeamSegment: ...
def beam_critical_speeds(line: BeamLine, count: int = ..., elements: int = ...) -> tuple[float, ...]: ...
def slender_tube_excess(section: SolidSection | TubeSection, length: ArrayLike) -> Validated: ...
def whirl_line(telescope: WhirlTelescope, length: float, middle_share: float = ...) -> BeamLine: ...
@typing.overload
def telescope_critical_speed(telescope: WhirlTelescope, length: float) -> float: ...
@typing.overload
def telescope_critical_speed(telescope: WhirlTelescope, length: ArrayLike) -> NDArray[np.float64]: ...
def least_critical_speed(telescope: WhirlTelescope, shortest: ArrayLike, longest: ArrayLike, speed: ArrayLike) -> WhirlExtreme: ...
def plain_train(inertias: Iterable[float], stiffnesses: Iterable[float]) -> TorsionalTrain: ...
def train_speed_ratios(train: TorsionalTrain) -> tuple[float, ...]: ...
def torsional_modes(train: TorsionalTrain) -> tuple[TorsionalMode, ...]: ...
def mode_nodes(train: TorsionalTrain, mode: TorsionalMode) -> tuple[ModeNode, ...]: ...
def torque_keeps_its_sense(train: TorsionalTrain, steady: Iterable[float], swing: Iterable[float]) -> str | None: ...
@typing.overload
def two_inertia_frequency(first: float, second: float, stiffness: float) -> float: ...
@typing.overload
def two_inertia_frequency(first: ArrayLike, second: ArrayLike, stiffness: ArrayLike) -> NDArray[np.float64]: ...
def equivalent_shaft_length(steps: Iterable[StepLength], section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection) -> float: ...
@typing.overload
def joint_pulse(angle: float, pulse: int = ...) -> float: ...
@typing.overload
def joint_pulse(angle: ArrayLike, pulse: ArrayLike = ...) -> NDArray[np.float64]: ...
def interference_table(train: TorsionalTrain, orders: Iterable[ExcitationOrder], speeds: SpeedRange) -> tuple[Interference, ...]: ...
def forced_response(train: TorsionalTrain, excitation: TorsionalExcitation, steady: Iterable[float] = ...) -> Validated: ...
@typing.overload
def shaft_damping(stiffness: float, loss_factor: float, frequency: float) -> float: ...
@typing.overload
def shaft_damping(stiffness: ArrayLike, loss_factor: ArrayLike, frequency: ArrayLike) -> NDArray[np.float64]: ...
def joint_torque_swing(stiffness: ArrayLike, inertia: ArrayLike, angle: ArrayLike, speed: ArrayLike) -> Validated: ...
def simulation_end_text(end: SimulationEnd | str) -> str: ...
def simulate(line: PtoLine, settings: SimulationSettings = ...) -> SimulationResult: ...
def torque_sn_line(line: SnLine, diameter: ArrayLike, notch_factor: ArrayLike = ..., bore_ratio: ArrayLike = ...) -> TorqueSnLine: ...
def surface_constants(finish: SurfaceFinish | str) -> Sourced: ...
def load_factor(load: LoadKind | str) -> Sourced: ...
@typing.overload
def specimen_endurance(ultimate: float) -> float: ...
@typing.overload
def specimen_endurance(ultimate: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def surface_factor(finish: SurfaceFinish | str, ultimate: float) -> float: ...
@typing.overload
def surface_factor(finish: SurfaceFinish | str, ultimate: ArrayLike) -> NDArray[np.float64]: ...
def size_factor(diameter: ArrayLike) -> Validated: ...
def temperature_factor(above_zero_celsius: ArrayLike) -> Validated: ...
@typing.overload
def reliability_factor(reliability: float) -> float: ...
@typing.overload
def reliability_factor(reliability: ArrayLike) -> NDArray[np.float64]: ...
def endurance_factors(ultimate: ArrayLike, conditions: EnduranceConditions) -> Validated: ...
@typing.overload
def endurance_limit(ultimate: float, factors: EnduranceFactors) -> float: ...
@typing.overload
def endurance_limit(ultimate: ArrayLike, factors: EnduranceFactors) -> NDArray[np.float64]: ...
@typing.overload
def shear_endurance(endurance: float, ratio: float = ...) -> float: ...
@typing.overload
def shear_endurance(endurance: ArrayLike, ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def damage_life(damage: float, duration: float) -> float: ...
@typing.overload
def damage_life(damage: ArrayLike, duration: ArrayLike) -> NDArray[np.float64]: ...
def life_class(life: float) -> LifeClass: ...
def uses_yield(rule: MeanStressRule | str) -> bool: ...
@typing.overload
def fatigue_safety_factor(amplitude: float, mean: float, strength: FatigueStrength, rule: MeanStressRule | str) -> float: ...
@typing.overload
def fatigue_safety_factor(amplitude: ArrayLike, mean: ArrayLike, strength: FatigueStrength, rule: MeanStressRule | str) -> NDArray[np.float64]: ...
def notch_sensitivity(ultimate: ArrayLike, root_radius: ArrayLike, load: NotchLoad | str) -> Validated: ...
@typing.overload
def notch_factor(concentration: float, sensitivity: float = ...) -> float: ...
@typing.overload
def notch_factor(concentration: ArrayLike, sensitivity: ArrayLike = ...) -> NDArray[np.float64]: ...
def shaft_stresses(load: ShaftLoad, diameter: ArrayLike, notch: NotchFactors = ..., bore_ratio: ArrayLike = ...) -> ShaftStresses: ...
@typing.overload
def shaft_fatigue_safety_factor(load: ShaftLoad, diameter: float, strength: FatigueStrength, rule: MeanStressRule | str, notch: NotchFactors = ..., bore_ratio: float = ...) -> float: ...
@typing.overload
def shaft_fatigue_safety_factor(load: ShaftLoad, diameter: ArrayLike, strength: FatigueStrength, rule: MeanStressRule | str, notch: NotchFactors = ..., bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def shaft_yield_safety_factor(load: ShaftLoad, diameter: float, yield_: float, notch: NotchFactors = ..., bore_ratio: float = ...) -> float: ...
@typing.overload
def shaft_yield_safety_factor(load: ShaftLoad, diameter: ArrayLike, yield_: ArrayLike, notch: NotchFactors = ..., bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def fatigue_diameter(load: ShaftLoad, strength: FatigueStrength, rule: MeanStressRule | str, safety_factor: float, notch: NotchFactors = ..., bore_ratio: float = ...) -> float: ...
@typing.overload
def fatigue_diameter(load: ShaftLoad, strength: FatigueStrength, rule: MeanStressRule | str, safety_factor: ArrayLike, notch: NotchFactors = ..., bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def torsion_fatigue_safety_factor(torque_amplitude: float, torque_mean: float, diameter: float, shear_endurance: float, shear_ultimate: float, school: TorsionSchool | str, notch_factor: float = ..., bore_ratio: float = ...) -> float: ...
@typing.overload
def torsion_fatigue_safety_factor(torque_amplitude: ArrayLike, torque_mean: ArrayLike, diameter: ArrayLike, shear_endurance: ArrayLike, shear_ultimate: ArrayLike, school: TorsionSchool | str, notch_factor: ArrayLike = ..., bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def torsion_fatigue_diameter(torque_amplitude: float, torque_mean: float, shear_endurance: float, shear_ultimate: float, school: TorsionSchool | str, safety_factor: float, notch_factor: float = ..., bore_ratio: float = ...) -> float: ...
@typing.overload
def torsion_fatigue_diameter(torque_amplitude: ArrayLike, torque_mean: ArrayLike, shear_endurance: ArrayLike, shear_ultimate: ArrayLike, school: TorsionSchool | str, safety_factor: ArrayLike, notch_factor: ArrayLike = ..., bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
def strength_fraction(ultimate: ArrayLike) -> Validated: ...
def sn_line(strength: FatigueStrength, fraction: ArrayLike) -> SnLine: ...
def sn_line_through(first: ArrayLike, first_cycles: ArrayLike, second: ArrayLike, second_cycles: ArrayLike, ultimate: ArrayLike, yield_: ArrayLike) -> SnLine: ...
def equivalent_reversed(amplitude: ArrayLike, mean: ArrayLike, line: SnLine, rule: MeanStressRule | str) -> Validated: ...
def cycles_to_failure(amplitude: ArrayLike, line: SnLine) -> Validated: ...
def finite_life_strength(endurance: ArrayLike, cycles: ArrayLike, exponent: ArrayLike = ...) -> Validated: ...
def damaged_endurance(line: SnLine, amplitude: ArrayLike, used: ArrayLike, method: DamageMethod | str) -> Validated: ...
def duty_life(duties: Iterable[Duty], line: TorqueSnLine, rule: MeanStressRule | str, small_cycles: SmallCycles | str = ...) -> Validated: ...
def along(from_: Position, direction: Direction, length: ArrayLike) -> Position: ...
def angle_between(a: Direction, b: Direction) -> float: ...
def in_implement(pose: Pose, in_tractor: Position) -> Position: ...
def distance(from_: Position, to: Position) -> float: ...
def either_side(angle: ArrayLike) -> AngleRange: ...
def excess(coupling: AngleCoupling, attitude: Attitude) -> float: ...
def contains(range: AttitudeRange, attitude: Attitude) -> bool: ...
def with_less_roll_at_full_turn(range: AttitudeRange, share: float) -> AttitudeRange: ...
def rotation(attitude: Attitude) -> tuple[tuple[float, ...], ...]: ...
def attitude_of(matrix: Iterable[Iterable[float]]) -> Attitude: ...
def in_tractor(pose: Pose, in_implement: Position | Direction) -> Position | Direction: ...
def mirrored(item: Position | Direction | Attitude | Pose | AttitudeRange | Driveline) -> Position | Direction | Attitude | Pose | AttitudeRange | Driveline: ...
def direction_ahead(turn: ArrayLike, rise: ArrayLike) -> Direction: ...
def hitch_category(number: int, narrow: bool = ...) -> HitchCategory: ...
def pin_position(hitch: DrawbarHitch) -> Position: ...
def trailed_pose(hitch: DrawbarHitch, attitude: Attitude) -> Pose: ...
@typing.overload
def steady_turn_angle(radius: float, overhang: float, tongue: float) -> float: ...
@typing.overload
def steady_turn_angle(radius: ArrayLike, overhang: ArrayLike, tongue: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def hollow_pitch(wheels: WheelPlaces, radius: float) -> float: ...
@typing.overload
def hollow_pitch(wheels: WheelPlaces, radius: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def crest_pitch(wheels: WheelPlaces, radius: float) -> float: ...
@typing.overload
def crest_pitch(wheels: WheelPlaces, radius: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def wheel_drop_roll(drop: float, track: float) -> float: ...
@typing.overload
def wheel_drop_roll(drop: ArrayLike, track: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def side_slope_roll(tractor_slope: float, implement_slope: float) -> float: ...
@typing.overload
def side_slope_roll(tractor_slope: ArrayLike, implement_slope: ArrayLike) -> NDArray[np.float64]: ...
def four_bar_angles(crank: ArrayLike, coupler: ArrayLike, rocker: ArrayLike, ground: ArrayLike, crank_angle: ArrayLike, branch: FourBarBranch | str) -> FourBarAngles: ...
def mounted_pose(linkage: ThreePointLinkage, position: LinkagePosition) -> Pose: ...
@typing.overload
def transport_pitch(linkage: ThreePointLinkage, transport_lift: float) -> float: ...
@typing.overload
def transport_pitch(linkage: ThreePointLinkage, transport_lift: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def top_link_for(linkage: ThreePointLinkage, lift: float, pitch: float = ...) -> float: ...
@typing.overload
def top_link_for(linkage: ThreePointLinkage, lift: ArrayLike, pitch: ArrayLike = ...) -> NDArray[np.float64]: ...
def slack_pose(linkage: ThreePointLinkage, wheel: SupportWheel, lift: ArrayLike) -> SlackPose: ...
def steered_pose(headstock: Pose, pivot: Position, steer: ArrayLike) -> Pose: ...
def steered_wheel(wheel: SupportWheel, pivot: Position, steer: ArrayLike, roll: ArrayLike = ...) -> SupportWheel: ...
@typing.overload
def joint_acceleration(angle: float, rotation: float, speed: float) -> float: ...
@typing.overload
def joint_acceleration(angle: ArrayLike, rotation: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_peak_acceleration(angle: float, speed: float) -> float: ...
@typing.overload
def joint_peak_acceleration(angle: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_peak_acceleration_rotation(angle: float) -> float: ...
@typing.overload
def joint_peak_acceleration_rotation(angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_angle_for_acceleration(limit: float, speed: float) -> float: ...
@typing.overload
def joint_angle_for_acceleration(limit: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_bearing_force(arm: float, torque: float) -> float: ...
@typing.overload
def joint_bearing_force(arm: ArrayLike, torque: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_peak_bearing_force(arm: float, torque: float, angle: float) -> float: ...
@typing.overload
def joint_peak_bearing_force(arm: ArrayLike, torque: ArrayLike, angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_bearing_life(load_rating: float, arm: float, torque: float, speed: float, angle: float) -> float: ...
@typing.overload
def joint_bearing_life(load_rating: ArrayLike, arm: ArrayLike, torque: ArrayLike, speed: ArrayLike, angle: ArrayLike) -> NDArray[np.float64]: ...
def joint_bearing_life_checked(load_rating: ArrayLike, arm: ArrayLike, torque: ArrayLike, speed: ArrayLike, angle: ArrayLike) -> Validated: ...
def joint_mean_duty(duties: Iterable[JointDuty]) -> JointDuty: ...
@typing.overload
def joint_bearing_life_of_duties(load_rating: float, arm: float, duties: Iterable[JointDuty]) -> float: ...
@typing.overload
def joint_bearing_life_of_duties(load_rating: ArrayLike, arm: ArrayLike, duties: Iterable[JointDuty]) -> NDArray[np.float64]: ...
def joint_couples(torque: ArrayLike, angle: ArrayLike, rotation: ArrayLike) -> JointCouples: ...
def joint_peak_couples(torque: ArrayLike, angle: ArrayLike) -> JointCouples: ...
@typing.overload
def couple_bearing_force(couple: float, span: float) -> float: ...
@typing.overload
def couple_bearing_force(couple: ArrayLike, span: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_speed_ratio(angle: float, rotation: float) -> float: ...
@typing.overload
def joint_speed_ratio(angle: ArrayLike, rotation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_speed_variation(angle: float) -> float: ...
@typing.overload
def joint_speed_variation(angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_angle_for_variation(variation: float) -> float: ...
@typing.overload
def joint_angle_for_variation(variation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_output_rotation(angle: float, rotation: float) -> float: ...
@typing.overload
def joint_output_rotation(angle: ArrayLike, rotation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_displacement(angle: float, rotation: float) -> float: ...
@typing.overload
def joint_displacement(angle: ArrayLike, rotation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_peak_displacement(angle: float) -> float: ...
@typing.overload
def joint_peak_displacement(angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_equal_speed_rotation(angle: float) -> float: ...
@typing.overload
def joint_equal_speed_rotation(angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def equivalent_joint_angle(front: float, rear: float, phase: float) -> float: ...
@typing.overload
def equivalent_joint_angle(front: ArrayLike, rear: ArrayLike, phase: ArrayLike) -> NDArray[np.float64]: ...
def equivalent_joint_angle_small(front: ArrayLike, rear: ArrayLike, phase: ArrayLike) -> Validated: ...
def joint_pair_extremes(front: ArrayLike, rear: ArrayLike, phase: ArrayLike, speed: ArrayLike) -> JointPairExtremes: ...
@typing.overload
def joint_pair_speed_ratio(front: float, rear: float, phase: float, rotation: float) -> float: ...
@typing.overload
def joint_pair_speed_ratio(front: ArrayLike, rear: ArrayLike, phase: ArrayLike, rotation: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def joint_pair_acceleration(front: float, rear: float, phase: float, rotation: float, speed: float) -> float: ...
@typing.overload
def joint_pair_acceleration(front: ArrayLike, rear: ArrayLike, phase: ArrayLike, rotation: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def relative_phase(yoke_phase: float, plane_angle: float) -> float: ...
@typing.overload
def relative_phase(yoke_phase: ArrayLike, plane_angle: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def spline_step(positions: int) -> float: ...
@typing.overload
def spline_step(positions: ArrayLike) -> NDArray[np.float64]: ...
def spline_position(front: ArrayLike, rear: ArrayLike, plane_angle: ArrayLike, positions: ArrayLike, steps: ArrayLike) -> SplinePosition: ...
def best_spline_position(front: ArrayLike, rear: ArrayLike, plane_angle: ArrayLike, positions: ArrayLike) -> SplinePosition: ...
def equivalent_row_angle(row: Iterable[JointInRow]) -> float: ...
def equivalent_row_angle_small(row: Iterable[JointInRow]) -> Validated: ...
def bolt_grades() -> tuple[BoltGrade, ...]: ...
def find_bolt_grade(name: str, diameter: float) -> BoltGrade | None: ...
def materials() -> tuple[Material, ...]: ...
def find_material(name: str, condition: str) -> Material | None: ...
def strength_at_section(material: Material, diameter: ArrayLike) -> Validated: ...
def shear_ratio(ratio: ShearRatio | str) -> Sourced: ...
@typing.overload
def shear_yield(yield_: float, ratio: float | ShearRatio | str = ...) -> float: ...
@typing.overload
def shear_yield(yield_: ArrayLike, ratio: float | ShearRatio | str = ...) -> NDArray[np.float64]: ...
@typing.overload
def shear_ultimate(ultimate: float, ratio: float | ShearRatio | str = ...) -> float: ...
@typing.overload
def shear_ultimate(ultimate: ArrayLike, ratio: float | ShearRatio | str = ...) -> NDArray[np.float64]: ...
def torque_band(nominal: ArrayLike, scatter: ArrayLike) -> TorqueBand: ...
def device_setting(low: ArrayLike, high: ArrayLike) -> DeviceSetting: ...
@typing.overload
def disc_clutch_torque(outer_radius: float, inner_radius: float, axial_force: float, friction: float, surfaces: int, contact: ClutchContact | str) -> float: ...
@typing.overload
def disc_clutch_torque(outer_radius: ArrayLike, inner_radius: ArrayLike, axial_force: ArrayLike, friction: ArrayLike, surfaces: ArrayLike, contact: ClutchContact | str) -> NDArray[np.float64]: ...
@typing.overload
def disc_clutch_force(outer_radius: float, inner_radius: float, torque: float, friction: float, surfaces: int, contact: ClutchContact | str) -> float: ...
@typing.overload
def disc_clutch_force(outer_radius: ArrayLike, inner_radius: ArrayLike, torque: ArrayLike, friction: ArrayLike, surfaces: ArrayLike, contact: ClutchContact | str) -> NDArray[np.float64]: ...
@typing.overload
def disc_clutch_pressure(outer_radius: float, inner_radius: float, axial_force: float, contact: ClutchContact | str) -> float: ...
@typing.overload
def disc_clutch_pressure(outer_radius: ArrayLike, inner_radius: ArrayLike, axial_force: ArrayLike, contact: ClutchContact | str) -> NDArray[np.float64]: ...
@typing.overload
def disc_clutch_force_at_pressure(outer_radius: float, inner_radius: float, pressure: float, contact: ClutchContact | str) -> float: ...
@typing.overload
def disc_clutch_force_at_pressure(outer_radius: ArrayLike, inner_radius: ArrayLike, pressure: ArrayLike, contact: ClutchContact | str) -> NDArray[np.float64]: ...
@typing.overload
def spring_force(springs: int, rate: float, compression: float) -> float: ...
@typing.overload
def spring_force(springs: ArrayLike, rate: ArrayLike, compression: ArrayLike) -> NDArray[np.float64]: ...
def spring_compression(force: ArrayLike, springs: ArrayLike, rate: ArrayLike, compression_at_bind: ArrayLike) -> Validated: ...
def clutch_engagement(inertia: ArrayLike, speed: ArrayLike, clutch_torque: ArrayLike, load_torque: ArrayLike) -> ClutchEngagement: ...
def free_clutch_engagement(driving_inertia: ArrayLike, driving_speed: ArrayLike, driven_inertia: ArrayLike, driven_speed: ArrayLike, clutch_torque: ArrayLike, drive_torque: ArrayLike = ..., load_torque: ArrayLike = ...) -> ClutchEngagement: ...
@typing.overload
def slip_power(clutch_torque: float, slip_speed: float) -> float: ...
@typing.overload
def slip_power(clutch_torque: ArrayLike, slip_speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def clutch_temperature_rise(heat: float, mass: float, specific_heat: float = ...) -> float: ...
@typing.overload
def clutch_temperature_rise(heat: ArrayLike, mass: ArrayLike, specific_heat: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def slip_time_for_rise(clutch_torque: float, slip_speed: float, mass: float, rise: float, specific_heat: float = ...) -> float: ...
@typing.overload
def slip_time_for_rise(clutch_torque: ArrayLike, slip_speed: ArrayLike, mass: ArrayLike, rise: ArrayLike, specific_heat: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def referred_inertia(inertia: float, ratio: float) -> float: ...
@typing.overload
def referred_inertia(inertia: ArrayLike, ratio: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def overrun_torque(inertia: float, speed: float, stopping_time: float, friction_torque: float) -> float: ...
@typing.overload
def overrun_torque(inertia: ArrayLike, speed: ArrayLike, stopping_time: ArrayLike, friction_torque: ArrayLike) -> NDArray[np.float64]: ...
def overrun_coast(inertia: ArrayLike, speed: ArrayLike, friction_torque: ArrayLike, windage_torque: ArrayLike = ..., clutch_drag: ArrayLike = ...) -> OverrunCoast: ...
def cut_out_torque(trip_torque: ArrayLike, least_share: ArrayLike = ..., greatest_share: ArrayLike = ...) -> TorqueBand: ...
def practice_band(practice: SettingPractice, torque: ArrayLike) -> TorqueBand: ...
@typing.overload
def shear_bolt_torque(diameter: float, arm: float, shear_strength: float, bolts: int, planes: int) -> float: ...
@typing.overload
def shear_bolt_torque(diameter: ArrayLike, arm: ArrayLike, shear_strength: ArrayLike, bolts: ArrayLike, planes: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def shear_bolt_diameter(torque: float, arm: float, shear_strength: float, bolts: int, planes: int) -> float: ...
@typing.overload
def shear_bolt_diameter(torque: ArrayLike, arm: ArrayLike, shear_strength: ArrayLike, bolts: ArrayLike, planes: ArrayLike) -> NDArray[np.float64]: ...
def shear_bolt_band(diameter: ArrayLike, arm: ArrayLike, ultimate_min: ArrayLike, ultimate_max: ArrayLike, bolts: ArrayLike, planes: ArrayLike, least_ratio: ArrayLike = ..., greatest_ratio: ArrayLike = ...) -> TorqueBand: ...
def shear_bolt_band_of_grade(diameter: ArrayLike, arm: ArrayLike, grade: BoltGrade, bolts: ArrayLike, planes: ArrayLike, least_ratio: ArrayLike = ..., greatest_ratio: ArrayLike = ...) -> TorqueBand: ...
def thread_depth_in_pitches(system: ThreadSystem | str) -> Sourced: ...
def coarse_pitches() -> tuple[CoarsePitch, ...]: ...
def coarse_pitch(system: ThreadSystem | str, diameter: float) -> Sourced | None: ...
@typing.overload
def thread_stress_diameter(diameter: float, pitch: float, system: ThreadSystem | str = ...) -> float: ...
@typing.overload
def thread_stress_diameter(diameter: ArrayLike, pitch: ArrayLike, system: ThreadSystem | str = ...) -> NDArray[np.float64]: ...
@typing.overload
def referred_yield(yield_torque: float, speed_ratio: float, efficiency: float = ...) -> float: ...
@typing.overload
def referred_yield(yield_torque: ArrayLike, speed_ratio: ArrayLike, efficiency: ArrayLike = ...) -> NDArray[np.float64]: ...
def device_window(peak_working_torque: float, parts: Iterable[ChainPart], scatter: float, work_margin: float, strength_margin: float) -> DeviceWindow: ...
def pto_power(power: NetEnginePower | GrossEnginePower) -> PtoPowerRange: ...
def powers_by_rule_from_engine(engine: ArrayLike) -> RulePowers: ...
def powers_by_rule_from_drawbar(drawbar: ArrayLike) -> RulePowers: ...
def drawbar_of_pto(traction: Traction | str, ground: Ground | str) -> Sourced: ...
def equivalent_pto_power(drawbar: ArrayLike, transmission: ArrayLike, traction: ArrayLike, pto: ArrayLike, hydraulic: ArrayLike = ..., electric: ArrayLike = ...) -> PtoPower: ...
@typing.overload
def pulling_power(draft: float, mass: float, slope: float, speed: float) -> float: ...
@typing.overload
def pulling_power(draft: ArrayLike, mass: ArrayLike, slope: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def power_reserve(available: float, needed: float) -> float: ...
@typing.overload
def power_reserve(available: ArrayLike, needed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def torque_reserve(available: float, needed: float) -> float: ...
@typing.overload
def torque_reserve(available: ArrayLike, needed: ArrayLike) -> NDArray[np.float64]: ...
def economy_saving(rated_power: ArrayLike, power: ArrayLike, plain: ArrayLike, economy: ArrayLike, full_throttle: ArrayLike) -> Validated: ...
def engine_line(rated_power: PtoPower, rated_speed: float, torque_rise: float, peak_speed: float, high_idle: float) -> EngineLine: ...
def engine_line_without_rise(rated_power: PtoPower, rated_speed: float, high_idle: float) -> EngineLine: ...
@typing.overload
def torque_rise(peak: float, rated: float) -> float: ...
@typing.overload
def torque_rise(peak: ArrayLike, rated: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def lugged_torque(rated: float, torque_rise: float) -> float: ...
@typing.overload
def lugged_torque(rated: ArrayLike, torque_rise: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def governor_regulation(high_idle: float, rated_speed: float) -> float: ...
@typing.overload
def governor_regulation(high_idle: ArrayLike, rated_speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def fuel_rate(rated_power: float, load_fraction: float, speed_fraction: float = ...) -> float: ...
@typing.overload
def fuel_rate(rated_power: ArrayLike, load_fraction: ArrayLike, speed_fraction: ArrayLike = ...) -> NDArray[np.float64]: ...
def fuel_rate_checked(rated_power: ArrayLike, load_fraction: ArrayLike, speed_fraction: ArrayLike = ...) -> Validated: ...
@typing.overload
def specific_fuel(load_fraction: float, speed_fraction: float = ...) -> float: ...
@typing.overload
def specific_fuel(load_fraction: ArrayLike, speed_fraction: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def measured_fuel_rate(power: float, specific_use: float) -> float: ...
@typing.overload
def measured_fuel_rate(power: ArrayLike, specific_use: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def average_fuel_rate(rated_power: float) -> float: ...
@typing.overload
def average_fuel_rate(rated_power: ArrayLike) -> NDArray[np.float64]: ...
def older_fuel_rate(rated_power: ArrayLike, load_fraction: ArrayLike) -> Validated: ...
@typing.overload
def engine_oil_rate(rated_engine_power: float) -> float: ...
@typing.overload
def engine_oil_rate(rated_engine_power: ArrayLike) -> NDArray[np.float64]: ...
def implement_power(machine: Machine | str, width: ArrayLike, feed_rate: FeedRate = ...) -> ImplementPower: ...
def widest_implement(machine: Machine | str, power: ArrayLike, reserve: ArrayLike, feed_rate: FeedRate = ...) -> WidthLimit: ...
def greatest_feed(machine: Machine | str, power: ArrayLike, reserve: ArrayLike, width: ArrayLike = ...) -> FeedLimit: ...
def smallest_tractor(machine: Machine | str, width: ArrayLike, reserve: ArrayLike, feed_rate: FeedRate = ...) -> TractorLimit: ...
def fastest_work(machine: Machine | str, power: ArrayLike, reserve: ArrayLike, speed: ArrayLike, feed_rate: FeedRate, width: ArrayLike = ...) -> SpeedLimit: ...
def feed_basis_name(basis: FeedBasis | str) -> str: ...
def wet_feed(rate: float) -> FeedRate: ...
def dry_feed(rate: float) -> FeedRate: ...
def dry_matter(feed: FeedRate, moisture: float) -> FeedRate: ...
def note_factor(machine: Machine) -> float: ...
def machines() -> tuple[Machine, ...]: ...
def find_machine(name: str) -> Machine | None: ...
def nearest_machines(name: str) -> tuple[str, ...]: ...
def machine_named(name: str) -> Machine: ...
def pto_option(name: str, nominal_speed: float, engine_speed: float) -> PtoOption: ...
def pto_option_by_ratio(name: str, nominal_speed: float, ratio: float) -> PtoOption: ...
def pto_option_of_both(name: str, nominal_speed: float, engine_speed: float, ratio: float) -> PtoOption: ...
@typing.overload
def pto_speed(option: PtoOption, engine_speed: float) -> float: ...
@typing.overload
def pto_speed(option: PtoOption, engine_speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def engine_speed_at(option: PtoOption, pto_speed: float) -> float: ...
@typing.overload
def engine_speed_at(option: PtoOption, pto_speed: ArrayLike) -> NDArray[np.float64]: ...
def pto_output(option: PtoOption, line: EngineLine, engine_speed: ArrayLike) -> Validated: ...
def pto_speed_under(option: PtoOption, line: EngineLine, load: ArrayLike) -> Validated: ...
@typing.overload
def shaft_torque(power: float, speed: float) -> float: ...
@typing.overload
def shaft_torque(power: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def shaft_power(torque: float, speed: float) -> float: ...
@typing.overload
def shaft_power(torque: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def geared_speed(speed: float, ratio: float) -> float: ...
@typing.overload
def geared_speed(speed: ArrayLike, ratio: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def geared_torque(torque: float, ratio: float, efficiency: float = ...) -> float: ...
@typing.overload
def geared_torque(torque: ArrayLike, ratio: ArrayLike, efficiency: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def gear_ratio(input: float, output: float) -> float: ...
@typing.overload
def gear_ratio(input: ArrayLike, output: ArrayLike) -> NDArray[np.float64]: ...
def usable_for_pto_work(position: DrawbarPosition | str) -> Sourced: ...
def drawbar_distances(type: PtoType | int) -> tuple[DrawbarDistance, ...]: ...
def drawbar_category(number: int) -> DrawbarCategory: ...
def identify_pto(spline_count: int, diameter: float, measuring_tolerance: float = ...) -> PtoIdentification: ...
def recommended_power(type: PtoType | int, speed: float) -> RecommendedPowers: ...
def straight_profile_by_rule(diameter: float) -> Sourced | None: ...
def involute_profile(teeth: int, module: float, flat_depth: float, fillet_depth: float, source: Source, derived: Source) -> Sourced | None: ...
@typing.overload
def is_nominal_speed(speed: float, nominal: float) -> bool: ...
@typing.overload
def is_nominal_speed(speed: ArrayLike, nominal: ArrayLike) -> NDArray[np.bool_]: ...
def lever_can_disagree(arrangement: StubArrangement | str) -> bool: ...
def stub_hazard_source(hazard: StubHazard | str) -> Source: ...
def has_hazard(arrangement: StubArrangement | str, hazard: StubHazard | str) -> bool: ...
def stub_hazards(arrangement: StubArrangement | str) -> tuple[Sourced, ...]: ...
def pto_types() -> tuple[PtoType, ...]: ...
def pre_standard_pto_type() -> PtoType: ...
def pto_type(number: int) -> PtoType: ...
@typing.overload
def blade_pull(mass: float, radius: float, speed: float) -> float: ...
@typing.overload
def blade_pull(mass: ArrayLike, radius: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def object_energy(mass: float, speed: float) -> float: ...
@typing.overload
def object_energy(mass: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def object_speed_bound(tip_speed: float, restitution: float) -> float: ...
@typing.overload
def object_speed_bound(tip_speed: ArrayLike, restitution: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def ring_hoop_stress(rim_speed: float, density: float) -> float: ...
@typing.overload
def ring_hoop_stress(rim_speed: ArrayLike, density: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def disc_hoop_stress_at(radius: float, inner_radius: float, outer_radius: float, speed: float, density: float, poisson_ratio: float) -> float: ...
@typing.overload
def disc_hoop_stress_at(radius: ArrayLike, inner_radius: ArrayLike, outer_radius: ArrayLike, speed: ArrayLike, density: ArrayLike, poisson_ratio: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def disc_radial_stress_at(radius: float, inner_radius: float, outer_radius: float, speed: float, density: float, poisson_ratio: float) -> float: ...
@typing.overload
def disc_radial_stress_at(radius: ArrayLike, inner_radius: ArrayLike, outer_radius: ArrayLike, speed: ArrayLike, density: ArrayLike, poisson_ratio: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def disc_hoop_stress(inner_radius: float, outer_radius: float, speed: float, density: float, poisson_ratio: float) -> float: ...
@typing.overload
def disc_hoop_stress(inner_radius: ArrayLike, outer_radius: ArrayLike, speed: ArrayLike, density: ArrayLike, poisson_ratio: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def rotor_energy(inertia: float, speed: float) -> float: ...
@typing.overload
def rotor_energy(inertia: ArrayLike, speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def lost_blade_energy(mass: float, radius: float, speed: float, inertia: float = ...) -> float: ...
@typing.overload
def lost_blade_energy(mass: ArrayLike, radius: ArrayLike, speed: ArrayLike, inertia: ArrayLike = ...) -> NDArray[np.float64]: ...
def overspeed_ratios(rated_speed: ArrayLike, speed: ArrayLike) -> OverspeedRatios: ...
def turf_tip_speed_line() -> TipSpeedLine: ...
@typing.overload
def run_down_time(inertia: float, speed: float, friction_torque: float, windage_torque: float = ...) -> float: ...
@typing.overload
def run_down_time(inertia: ArrayLike, speed: ArrayLike, friction_torque: ArrayLike, windage_torque: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def run_down_angle(inertia: float, speed: float, friction_torque: float, windage_torque: float = ...) -> float: ...
@typing.overload
def run_down_angle(inertia: ArrayLike, speed: ArrayLike, friction_torque: ArrayLike, windage_torque: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def round_body_area(mass: float, density: float) -> float: ...
@typing.overload
def round_body_area(mass: ArrayLike, density: ArrayLike) -> NDArray[np.float64]: ...
def throw_flight(launch_speed: ArrayLike, launch_angle: ArrayLike, launch_height: ArrayLike, mass: ArrayLike, area: ArrayLike, drag_coefficient: ArrayLike, air_density: ArrayLike, gravity: ArrayLike = ...) -> Flight: ...
@typing.overload
def throw_distance(launch_speed: float, launch_angle: float, launch_height: float, mass: float, area: float, drag_coefficient: float, air_density: float, gravity: float = ...) -> float: ...
@typing.overload
def throw_distance(launch_speed: ArrayLike, launch_angle: ArrayLike, launch_height: ArrayLike, mass: ArrayLike, area: ArrayLike, drag_coefficient: ArrayLike, air_density: ArrayLike, gravity: ArrayLike = ...) -> NDArray[np.float64]: ...
def farthest_throw(launch_speed: ArrayLike, launch_height: ArrayLike, mass: ArrayLike, area: ArrayLike, drag_coefficient: ArrayLike, air_density: ArrayLike, gravity: ArrayLike = ...) -> FarthestFlight: ...
@typing.overload
def tip_speed(speed: float, radius: float) -> float: ...
@typing.overload
def tip_speed(speed: ArrayLike, radius: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def tip_speed_over_ground(tip_speed: float, ground_speed: float) -> float: ...
@typing.overload
def tip_speed_over_ground(tip_speed: ArrayLike, ground_speed: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def speed_for_tip_speed(tip_speed: float, radius: float) -> float: ...
@typing.overload
def speed_for_tip_speed(tip_speed: ArrayLike, radius: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def wrapped_length(speed: float, radius: float, reaction_time: float) -> float: ...
@typing.overload
def wrapped_length(speed: ArrayLike, radius: ArrayLike, reaction_time: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def groove_concentration(outer_diameter: float, groove_diameter: float, groove_radius: float, load: NotchLoad | str) -> float: ...
@typing.overload
def groove_concentration(outer_diameter: ArrayLike, groove_diameter: ArrayLike, groove_radius: ArrayLike, load: NotchLoad | str) -> NDArray[np.float64]: ...
def shoulder_concentration(larger_diameter: ArrayLike, smaller_diameter: ArrayLike, fillet_radius: ArrayLike, load: NotchLoad | str) -> Validated: ...
def spline_root_concentration(root_radius: ArrayLike, root_diameter: ArrayLike) -> Validated: ...
def corner_concentration(wall: ArrayLike, corner_radius: ArrayLike) -> Validated: ...
@typing.overload
def critical_speed(section: SolidSection | TubeSection | ShapedProfile | RectangleSection, length: float, youngs_modulus: float, density: float) -> float: ...
@typing.overload
def critical_speed(section: SolidSection | TubeSection | ShapedProfile | RectangleSection, length: ArrayLike, youngs_modulus: ArrayLike, density: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def critical_length(section: SolidSection | TubeSection, speed: float, youngs_modulus: float, density: float) -> float: ...
@typing.overload
def critical_length(section: SolidSection | TubeSection, speed: ArrayLike, youngs_modulus: ArrayLike, density: ArrayLike) -> NDArray[np.float64]: ...
def torsion_impact(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, length: ArrayLike, shear_modulus: ArrayLike, energy: ArrayLike) -> TorsionImpact: ...
@typing.overload
def impact_diameter(energy: float, length: float, shear_modulus: float, shear_stress: float) -> float: ...
@typing.overload
def impact_diameter(energy: ArrayLike, length: ArrayLike, shear_modulus: ArrayLike, shear_stress: ArrayLike) -> NDArray[np.float64]: ...
def lobed_profile(lobes: ArrayLike, circumscribed_diameter: ArrayLike, inscribed_diameter: ArrayLike, tip_radius: ArrayLike, wall: ArrayLike) -> ShapedProfile: ...
def square_profile(width: ArrayLike, wall: ArrayLike, corner_radius: ArrayLike = ...) -> ShapedProfile: ...
@typing.overload
def partly_plastic_torque(section: SolidSection | TubeSection, twist_rate: float, shear_yield: float, shear_modulus: float) -> float: ...
@typing.overload
def partly_plastic_torque(section: SolidSection | TubeSection, twist_rate: ArrayLike, shear_yield: ArrayLike, shear_modulus: ArrayLike) -> NDArray[np.float64]: ...
def overload(section: SolidSection | TubeSection, torque: ArrayLike, shear_yield: ArrayLike, shear_modulus: ArrayLike) -> Overload: ...
def thin_profile(section: ProfileSection) -> Validated: ...
@typing.overload
def wall_stress(enclosed_area: float, torque: float, wall: float) -> float: ...
@typing.overload
def wall_stress(enclosed_area: ArrayLike, torque: ArrayLike, wall: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def diameter_for_torque(torque: float, shear_stress: float, bore_ratio: float = ...) -> float: ...
@typing.overload
def diameter_for_torque(torque: ArrayLike, shear_stress: ArrayLike, bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def diameter_for_twist(torque: float, twist_rate: float, shear_modulus: float, bore_ratio: float = ...) -> float: ...
@typing.overload
def diameter_for_twist(torque: ArrayLike, twist_rate: ArrayLike, shear_modulus: ArrayLike, bore_ratio: ArrayLike = ...) -> NDArray[np.float64]: ...
def stub_shaft_load(load: StubLoad) -> ShaftLoad: ...
def stub_stress(stub: StubShaft, load: StubLoad) -> StubStress: ...
def stub_yield_safety_factor(stub: StubShaft, load: StubLoad, yield_: float) -> StubSafety: ...
def stub_fatigue_safety_factor(stub: StubShaft, load: StubLoad, strength: FatigueStrength, rule: MeanStressRule | str) -> StubSafety: ...
def stub_angle_limit(stub: StubShaft, load: StubLoad, strength: FatigueStrength, rule: MeanStressRule | str, safety_factor: ArrayLike) -> Validated: ...
@typing.overload
def torsion_stress(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, torque: float) -> float: ...
@typing.overload
def torsion_stress(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, torque: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def yield_torque(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, shear_yield: float) -> float: ...
@typing.overload
def yield_torque(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, shear_yield: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def plastic_torque(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, shear_yield: float) -> float: ...
@typing.overload
def plastic_torque(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, shear_yield: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def twist_rate(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, torque: float, shear_modulus: float) -> float: ...
@typing.overload
def twist_rate(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, torque: ArrayLike, shear_modulus: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def twist(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, torque: float, shear_modulus: float, length: float) -> float: ...
@typing.overload
def twist(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, torque: ArrayLike, shear_modulus: ArrayLike, length: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def torque_for_twist(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, twist_rate: float, shear_modulus: float) -> float: ...
@typing.overload
def torque_for_twist(section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection, twist_rate: ArrayLike, shear_modulus: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def torsion_stress_at(section: SolidSection | TubeSection, torque: float, radius: float) -> float: ...
@typing.overload
def torsion_stress_at(section: SolidSection | TubeSection, torque: ArrayLike, radius: ArrayLike) -> NDArray[np.float64]: ...
def stepped_shaft(steps: Iterable[ShaftStep]) -> SteppedShaft: ...
def stepped_yield_torque(steps: Iterable[ShaftStep]) -> float: ...
def stepped_stiffness(steps: Iterable[ShaftStep]) -> float: ...
@typing.overload
def lumped_critical_speed(section: SolidSection | TubeSection, length: float, youngs_modulus: float, mass: float) -> float: ...
@typing.overload
def lumped_critical_speed(section: SolidSection | TubeSection, length: ArrayLike, youngs_modulus: ArrayLike, mass: ArrayLike) -> NDArray[np.float64]: ...
def rayleigh_critical_speed(weights: Iterable[SaggingWeight]) -> float: ...
def dunkerley_critical_speed(speeds: Iterable[float]) -> float: ...
@typing.overload
def sag_critical_speed(load_sag: float, shaft_sag: float) -> float: ...
@typing.overload
def sag_critical_speed(load_sag: ArrayLike, shaft_sag: ArrayLike) -> NDArray[np.float64]: ...
def spline_allowables(steel: SplineSteel | str) -> SplineAllowables: ...
def spline_limits(steel: SplineSteel | str, crowned: bool = ...) -> Sourced | None: ...
def spline_torque_capacity(spline: StraightSpline | InvoluteSpline | MeasuredSpline, limits: SplineLimits, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: float = ...) -> SplineCapacity: ...
@typing.overload
def spline_power_capacity(spline: StraightSpline | InvoluteSpline | MeasuredSpline, limits: SplineLimits, speed: float, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: float = ...) -> float: ...
@typing.overload
def spline_power_capacity(spline: StraightSpline | InvoluteSpline | MeasuredSpline, limits: SplineLimits, speed: ArrayLike, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: ArrayLike = ...) -> NDArray[np.float64]: ...
def spline_length_for_torque(spline: StraightSpline | InvoluteSpline | MeasuredSpline, torque: ArrayLike, limits: SplineLimits, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: ArrayLike = ...) -> Validated: ...
def scaled_spline(spline: StraightSpline | InvoluteSpline | MeasuredSpline, scale: ArrayLike, scale_length: bool = ...) -> MeasuredSpline: ...
def spline_size_for_torque(spline: StraightSpline | InvoluteSpline | MeasuredSpline, torque: float, limits: SplineLimits, scale_length: bool = ..., factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: float = ...) -> SplineSize: ...
@typing.overload
def din_5480_shift(reference_diameter: float, module: float, teeth: int) -> float: ...
@typing.overload
def din_5480_shift(reference_diameter: ArrayLike, module: ArrayLike, teeth: ArrayLike) -> NDArray[np.float64]: ...
def din_5480_geometry(reference_diameter: ArrayLike, module: ArrayLike, teeth: ArrayLike, cutting: SplineCutting | str = ...) -> InvoluteGeometry: ...
def application_factor(drive: DriveShock | str, load: LoadShock | str) -> Sourced: ...
def load_distribution_factor(misalignment: ArrayLike, face_width: ArrayLike) -> Validated: ...
def fatigue_life_factor(cycles: ArrayLike, cycle: TorqueCycle | str = ...) -> Validated: ...
def wear_life_factor(turns: ArrayLike) -> Validated: ...
def seat_divisor(seat: SplineSeat | str) -> float: ...
def ansi_b92_1_geometry(teeth: ArrayLike, module: ArrayLike, pressure_angle: ArrayLike, root: SplineRoot | str = ...) -> InvoluteGeometry: ...
def iso_4156_geometry(teeth: ArrayLike, module: ArrayLike, pressure_angle: ArrayLike, root: SplineRoot | str = ...) -> InvoluteGeometry: ...
def involute_spline(teeth: int, diametral_pitch: float, pressure_angle: float, length: float, root: SplineRoot | str = ...) -> InvoluteSpline: ...
def sleeve_stress(spline: StraightSpline | InvoluteSpline | MeasuredSpline, torque: ArrayLike, outer_diameter: ArrayLike, speed: ArrayLike = ..., factors: SplineFactors = ..., tooth_form: ArrayLike = ...) -> SleeveStress: ...
@typing.overload
def slide_force(torque: float, bearing_diameter: float, friction: float, flank_angle: float = ...) -> float: ...
@typing.overload
def slide_force(torque: ArrayLike, bearing_diameter: ArrayLike, friction: ArrayLike, flank_angle: ArrayLike = ...) -> NDArray[np.float64]: ...
@typing.overload
def spline_slide_force(spline: StraightSpline | InvoluteSpline | MeasuredSpline, torque: float, friction: float) -> float: ...
@typing.overload
def spline_slide_force(spline: StraightSpline | InvoluteSpline | MeasuredSpline, torque: ArrayLike, friction: ArrayLike) -> NDArray[np.float64]: ...
def telescope_thrust(force: ArrayLike, front_angle: ArrayLike, rear_angle: ArrayLike) -> TelescopeThrust: ...
@typing.overload
def groove_width(major_diameter: float, groove_diameter: float, groove_radius: float) -> float: ...
@typing.overload
def groove_width(major_diameter: ArrayLike, groove_diameter: ArrayLike, groove_radius: ArrayLike) -> NDArray[np.float64]: ...
@typing.overload
def engaged_length(hub_length: float, useful_length: float, groove_width: float = ...) -> float: ...
@typing.overload
def engaged_length(hub_length: ArrayLike, useful_length: ArrayLike, groove_width: ArrayLike = ...) -> NDArray[np.float64]: ...
def sae_fractions(count: int, fit: SplineFit | str) -> Sourced: ...
def sae_spline(count: ArrayLike, fit: SplineFit | str, major_diameter: ArrayLike, length: ArrayLike) -> StraightSpline: ...
def spline_stress(spline: StraightSpline | InvoluteSpline | MeasuredSpline, torque: ArrayLike, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: ArrayLike = ...) -> SplineStress: ...
def stub_spline(type: PtoType | int, length: float) -> Sourced | None: ...
def stub_spline_of_type(type: PtoType | int) -> Sourced | None: ...
def spline_of_geometry(geometry: InvoluteGeometry, length: ArrayLike) -> MeasuredSpline: ...
