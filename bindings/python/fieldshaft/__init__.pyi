# Generated from the descriptions in bindings/python. Change those, not this file.
from collections.abc import Iterable, Sequence
from typing import Any

from numpy.typing import ArrayLike
from pint import Quantity
from pint.facets.plain import PlainQuantity

from fieldshaft import plots as plots
from fieldshaft import si as si
from fieldshaft._constants import Constants
from fieldshaft._advice import (
    Change as Change,
    Changeover as Changeover,
    Remedies as Remedies,
    Remedy as Remedy,
    RemedyOptions as RemedyOptions,
    changeover as changeover,
    changeover_between as changeover_between,
    remedies as remedies,
)
from fieldshaft._cases import (
    Assessment as Assessment,
    Case as Case,
    Finding as Finding,
    assess as assess,
    case_json_schema as case_json_schema,
    read_case as read_case,
    read_case_file as read_case_file,
)
from fieldshaft._documents import (
    CaseError as CaseError,
    CaseProblem as CaseProblem,
)
from fieldshaft._envelopes import (
    BranchEnvelopeOfCase as BranchEnvelopeOfCase,
    MeasuredEntry as MeasuredEntry,
    RangeOrigin as RangeOrigin,
    StateEnvelope as StateEnvelope,
    StateExtreme as StateExtreme,
    TurnAtPitch as TurnAtPitch,
)
from fieldshaft._farms import (
    Farm as Farm,
    FarmStudy as FarmStudy,
    farm_json_schema as farm_json_schema,
    read_farm as read_farm,
    read_farm_file as read_farm_file,
    screened_checks as screened_checks,
    study_farm as study_farm,
    study_pair as study_pair,
    with_options as with_options,
)
from fieldshaft._frames import (
    to_frame as to_frame,
)
from fieldshaft._quantity_cycles import (
    Cycles as Cycles,
    close_residue as close_residue,
    count_closed_cycles as count_closed_cycles,
    count_cycles as count_cycles,
    count_repeating_cycles as count_repeating_cycles,
    history_damage as history_damage,
    miner_damage as miner_damage,
)
from fieldshaft._reports import (
    ReportedValue as ReportedValue,
    to_html as to_html,
    to_json as to_json,
    to_markdown as to_markdown,
    to_text as to_text,
)
from fieldshaft._errors import InputError as InputError
from fieldshaft._quantities import QuantityRecord
from fieldshaft._records import Sourced as Sourced
from fieldshaft._records import Validated as Validated
from fieldshaft.si import (
    ClutchContact as ClutchContact,
    DamageMethod as DamageMethod,
    Direction as Direction,
    DrawbarPosition as DrawbarPosition,
    DriveShock as DriveShock,
    DrivelineUse as DrivelineUse,
    EconomyMeasurement as EconomyMeasurement,
    EnduranceFactors as EnduranceFactors,
    ExcitationOrder as ExcitationOrder,
    FeedBasis as FeedBasis,
    FourBarBranch as FourBarBranch,
    Ground as Ground,
    HeldSpeed as HeldSpeed,
    LifeClass as LifeClass,
    LimitKind as LimitKind,
    LimiterKind as LimiterKind,
    LineEventKind as LineEventKind,
    LoadKind as LoadKind,
    LoadShock as LoadShock,
    MachineState as MachineState,
    MeanStressRule as MeanStressRule,
    Measurement as Measurement,
    ModeNode as ModeNode,
    Money as Money,
    NotchFactors as NotchFactors,
    NotchLoad as NotchLoad,
    OlderValueClass as OlderValueClass,
    OverspeedRatios as OverspeedRatios,
    OwnershipCost as OwnershipCost,
    PeakRatio as PeakRatio,
    PlacementGoal as PlacementGoal,
    PlacementParameter as PlacementParameter,
    PowerShare as PowerShare,
    ProcessorKernel as ProcessorKernel,
    Rotation as Rotation,
    RotorMachine as RotorMachine,
    SettingBasis as SettingBasis,
    SettingPractice as SettingPractice,
    ShearRatio as ShearRatio,
    SimulationEnd as SimulationEnd,
    SmallCycles as SmallCycles,
    Source as Source,
    SpeedShare as SpeedShare,
    SplineCutting as SplineCutting,
    SplineFactors as SplineFactors,
    SplineFit as SplineFit,
    SplineForm as SplineForm,
    SplineFractions as SplineFractions,
    SplineMode as SplineMode,
    SplineRoot as SplineRoot,
    SplineSeat as SplineSeat,
    SplineSteel as SplineSteel,
    Standing as Standing,
    Status as Status,
    StubArrangement as StubArrangement,
    StubHazard as StubHazard,
    StubPlace as StubPlace,
    StubSafety as StubSafety,
    SupportKind as SupportKind,
    SurfaceConstants as SurfaceConstants,
    SurfaceFinish as SurfaceFinish,
    ThreadSystem as ThreadSystem,
    TorqueCycle as TorqueCycle,
    TorsionSchool as TorsionSchool,
    Traction as Traction,
    ValueClass as ValueClass,
    WindowState as WindowState,
)

__all__ = [
    "AngleCoupling",
    "AngleExtreme",
    "AngleInfluence",
    "AngleRange",
    "AngleSwing",
    "Assessment",
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
    "BranchEnvelopeOfCase",
    "Case",
    "CaseError",
    "CaseProblem",
    "ChainPart",
    "ChainState",
    "Change",
    "Changeover",
    "ClutchContact",
    "ClutchEngagement",
    "CoarsePitch",
    "CuttingSpeed",
    "Cycles",
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
    "Farm",
    "FarmStudy",
    "FarthestFlight",
    "FatigueStrength",
    "FeedBasis",
    "FeedLimit",
    "FeedRate",
    "Finding",
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
    "MeasuredEntry",
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
    "RangeOrigin",
    "RecommendedPower",
    "RecommendedPowers",
    "RectangleSection",
    "Remedies",
    "Remedy",
    "RemedyOptions",
    "RepairClass",
    "ReportedValue",
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
    "StateEnvelope",
    "StateExtreme",
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
    "TurnAtPitch",
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
    "assess",
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
    "case_json_schema",
    "chain_at",
    "chain_envelope",
    "changeover",
    "changeover_between",
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
    "farm_json_schema",
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
    "read_case",
    "read_case_file",
    "read_farm",
    "read_farm_file",
    "real_interest",
    "real_interest_by_difference",
    "rear_joint_position",
    "recommended_power",
    "referred_inertia",
    "referred_yield",
    "relative_phase",
    "reliability_factor",
    "remaining_value",
    "remedies",
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
    "screened_checks",
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
    "si",
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
    "study_farm",
    "study_pair",
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
    "to_frame",
    "to_html",
    "to_json",
    "to_markdown",
    "to_text",
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
    "with_options",
    "wrapped_length",
    "yield_torque",
]

__version__: str
constants: Constants

_Amount = Quantity[Any] | PlainQuantity[Any] | str
_QuantityLike = _Amount | Sequence[_Amount]
_Number = _Amount | ArrayLike

class PowerInterval(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, high: _QuantityLike) -> None: ...

class GearUse(QuantityRecord):
    gear: str
    pto_speed: Quantity[Any] | None
    suits: bool | None
    set: Quantity[Any] | None
    never_pass: Quantity[Any] | None
    out_of_reach: bool
    pto_at_high_idle: Quantity[Any] | None
    available: PowerInterval | None
    widest: Quantity[Any] | None
    greatest_feed: Quantity[Any] | None
    fastest: Quantity[Any] | None
    missing: tuple[str, ...]
    def __init__(self, gear: str, pto_speed: _QuantityLike | None, suits: bool | None, set: _QuantityLike | None, never_pass: _QuantityLike | None, out_of_reach: bool, pto_at_high_idle: _QuantityLike | None, available: PowerInterval | si.PowerInterval | None, widest: _QuantityLike | None, greatest_feed: _QuantityLike | None, fastest: _QuantityLike | None, missing: Iterable[str]) -> None: ...

class SeasonUse(QuantityRecord):
    hours: Quantity[Any]
    fuel_price: Money | None
    def __init__(self, hours: _QuantityLike, fuel_price: Money | None = ...) -> None: ...

class EconomyAnswer(QuantityRecord):
    plain: str
    economy: str
    plain_engine: Quantity[Any] | None
    economy_engine: Quantity[Any] | None
    available: PowerInterval | None
    fits: Status
    saved: Quantity[Any] | None
    saving: float | None
    outside: str | None
    litres_a_season: float | None
    money_an_hour: Money | None
    money_a_season: Money | None
    pto_at_plain_engine: Quantity[Any] | None
    pto_at_rated: Quantity[Any] | None
    pto_at_high_idle: Quantity[Any] | None
    never_pass: Quantity[Any] | None
    missing: tuple[str, ...]
    def __init__(self, plain: str, economy: str, plain_engine: _QuantityLike | None, economy_engine: _QuantityLike | None, available: PowerInterval | si.PowerInterval | None, fits: Status | str, saved: _QuantityLike | None, saving: _Number | None, outside: str | None, litres_a_season: _Number | None, money_an_hour: Money | None, money_a_season: Money | None, pto_at_plain_engine: _QuantityLike | None, pto_at_rated: _QuantityLike | None, pto_at_high_idle: _QuantityLike | None, never_pass: _QuantityLike | None, missing: Iterable[str]) -> None: ...

class YearOfUse(QuantityRecord):
    price: Money
    list_price: Money
    salvage: Money
    interest: float
    years: float
    annual_use: Quantity[Any]
    def __init__(self, price: Money, list_price: Money, salvage: Money, interest: _Number, years: _Number, annual_use: _QuantityLike) -> None: ...

class RepairClass(QuantityRecord):
    name: str
    life: Quantity[Any]
    total_share: float
    factor: float
    exponent: float
    source: Source
    def __init__(self, name: str, life: _QuantityLike, total_share: _Number, factor: _Number, exponent: _Number, source: Source) -> None: ...

class Position(QuantityRecord):
    forward: Quantity[Any]
    left: Quantity[Any]
    up: Quantity[Any]
    def __init__(self, forward: _QuantityLike, left: _QuantityLike, up: _QuantityLike) -> None: ...

class Slide(QuantityRecord):
    closed_overlap: Quantity[Any]
    greatest_travel: Quantity[Any] | None
    def __init__(self, closed_overlap: _QuantityLike, greatest_travel: _QuantityLike | None = ...) -> None: ...

class Telescope(QuantityRecord):
    closed_length: Quantity[Any]
    slide: Slide
    second_slide: Slide | None
    def __init__(self, closed_length: _QuantityLike, slide: Slide | si.Slide, second_slide: Slide | si.Slide | None = ...) -> None: ...

class Driveline(QuantityRecord):
    front_joint: Quantity[Any]
    rear_joint: Quantity[Any]
    input: Position
    input_direction: Direction
    yoke_phase: Quantity[Any]
    output: Position
    output_direction: Direction
    wide_angle_front: bool
    wide_angle_rear: bool
    telescope: Telescope | None
    def __init__(self, front_joint: _QuantityLike, rear_joint: _QuantityLike, input: Position | si.Position, input_direction: Direction = ..., yoke_phase: _QuantityLike = ..., output: Position | si.Position = ..., output_direction: Direction = ..., wide_angle_front: bool = ..., wide_angle_rear: bool = ..., telescope: Telescope | si.Telescope | None = ...) -> None: ...

class AngleRange(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike = ..., high: _QuantityLike = ...) -> None: ...

class AngleCoupling(QuantityRecord):
    yaw_share: float
    pitch_share: float
    roll_share: float
    limit: Quantity[Any]
    def __init__(self, yaw_share: _Number = ..., pitch_share: _Number = ..., roll_share: _Number = ..., limit: _QuantityLike = ...) -> None: ...

class AttitudeRange(QuantityRecord):
    yaw: AngleRange
    pitch: AngleRange
    roll: AngleRange
    couplings: tuple[AngleCoupling, ...]
    def __init__(self, yaw: AngleRange | si.AngleRange = ..., pitch: AngleRange | si.AngleRange = ..., roll: AngleRange | si.AngleRange = ..., couplings: Iterable[AngleCoupling | si.AngleCoupling] = ...) -> None: ...

class Branch(QuantityRecord):
    driveline: Driveline
    hinge: Position
    folding: AttitudeRange
    torque_share: float
    def __init__(self, driveline: Driveline | si.Driveline, hinge: Position | si.Position, folding: AttitudeRange | si.AttitudeRange, torque_share: _Number) -> None: ...

class Attitude(QuantityRecord):
    yaw: Quantity[Any]
    pitch: Quantity[Any]
    roll: Quantity[Any]
    def __init__(self, yaw: _QuantityLike = ..., pitch: _QuantityLike = ..., roll: _QuantityLike = ...) -> None: ...

class AngleExtreme(QuantityRecord):
    value: Quantity[Any]
    lower: Quantity[Any]
    upper: Quantity[Any]
    gap: Quantity[Any]
    at: Attitude
    proved: bool
    def __init__(self, value: _QuantityLike, lower: _QuantityLike, upper: _QuantityLike, gap: _QuantityLike, at: Attitude | si.Attitude, proved: bool) -> None: ...

class LengthExtreme(QuantityRecord):
    value: Quantity[Any]
    lower: Quantity[Any]
    upper: Quantity[Any]
    gap: Quantity[Any]
    at: Attitude
    proved: bool
    def __init__(self, value: _QuantityLike, lower: _QuantityLike, upper: _QuantityLike, gap: _QuantityLike, at: Attitude | si.Attitude, proved: bool) -> None: ...

class NumberExtreme(QuantityRecord):
    value: float
    lower: float
    upper: float
    gap: float
    at: Attitude
    proved: bool
    def __init__(self, value: _Number, lower: _Number, upper: _Number, gap: _Number, at: Attitude | si.Attitude, proved: bool) -> None: ...

class DrivelineEnvelope(QuantityRecord):
    front_angle: AngleExtreme
    rear_angle: AngleExtreme
    difference: AngleExtreme
    longest: LengthExtreme
    shortest: LengthExtreme
    speed_variation: NumberExtreme | None
    boxes: int
    def __init__(self, front_angle: AngleExtreme | si.AngleExtreme, rear_angle: AngleExtreme | si.AngleExtreme, difference: AngleExtreme | si.AngleExtreme, longest: LengthExtreme | si.LengthExtreme, shortest: LengthExtreme | si.LengthExtreme, speed_variation: NumberExtreme | si.NumberExtreme | None, boxes: int) -> None: ...

class BranchEnvelope(QuantityRecord):
    envelope: DrivelineEnvelope
    torque: Quantity[Any]
    def __init__(self, envelope: DrivelineEnvelope | si.DrivelineEnvelope, torque: _QuantityLike) -> None: ...

class DrivelineState(QuantityRecord):
    front_angle: Quantity[Any]
    rear_angle: Quantity[Any]
    difference: Quantity[Any]
    length: Quantity[Any]
    plane_angle: Quantity[Any]
    phase: Quantity[Any]
    speed_variation: float
    overlap: Quantity[Any] | None
    def __init__(self, front_angle: _QuantityLike, rear_angle: _QuantityLike, difference: _QuantityLike, length: _QuantityLike, plane_angle: _QuantityLike, phase: _QuantityLike, speed_variation: _Number, overlap: _QuantityLike | None) -> None: ...

class ChainState(QuantityRecord):
    first: DrivelineState
    second: DrivelineState
    bearing_phase: Quantity[Any]
    equivalent_angle: Quantity[Any]
    speed_variation: float
    def __init__(self, first: DrivelineState | si.DrivelineState, second: DrivelineState | si.DrivelineState, bearing_phase: _QuantityLike, equivalent_angle: _QuantityLike, speed_variation: _Number) -> None: ...

class EnvelopeChange(QuantityRecord):
    before: DrivelineEnvelope
    after: DrivelineEnvelope
    def __init__(self, before: DrivelineEnvelope | si.DrivelineEnvelope, after: DrivelineEnvelope | si.DrivelineEnvelope) -> None: ...

class Rod(QuantityRecord):
    from_: Position
    to: Position
    radius: Quantity[Any]
    def __init__(self, from_: Position | si.Position, to: Position | si.Position, radius: _QuantityLike) -> None: ...

class Tyre(QuantityRecord):
    centre: Position
    radius: Quantity[Any]
    width: Quantity[Any]
    def __init__(self, centre: Position | si.Position, radius: _QuantityLike, width: _QuantityLike) -> None: ...

class Surroundings(QuantityRecord):
    guard_radius: Quantity[Any]
    on_tractor: tuple[Rod, ...]
    on_implement: tuple[Rod, ...]
    tyres: tuple[Tyre, ...]
    def __init__(self, guard_radius: _QuantityLike = ..., on_tractor: Iterable[Rod | si.Rod] = ..., on_implement: Iterable[Rod | si.Rod] = ..., tyres: Iterable[Tyre | si.Tyre] = ...) -> None: ...

class DrivelineLimits(QuantityRecord):
    front_angle: Quantity[Any] | None
    rear_angle: Quantity[Any] | None
    difference: Quantity[Any] | None
    longest: Quantity[Any] | None
    shortest: Quantity[Any] | None
    def __init__(self, front_angle: _QuantityLike | None = ..., rear_angle: _QuantityLike | None = ..., difference: _QuantityLike | None = ..., longest: _QuantityLike | None = ..., shortest: _QuantityLike | None = ...) -> None: ...

class EnvelopeOptions(QuantityRecord):
    angle_gap: Quantity[Any]
    length_gap: Quantity[Any]
    variation_gap: float
    budget: int
    with_speed_variation: bool
    limits: DrivelineLimits | None
    def __init__(self, angle_gap: _QuantityLike = ..., length_gap: _QuantityLike = ..., variation_gap: _Number = ..., budget: int = ..., with_speed_variation: bool = ..., limits: DrivelineLimits | si.DrivelineLimits | None = ...) -> None: ...

class LiftLimit(QuantityRecord):
    allowed: Quantity[Any]
    broken: Quantity[Any]
    kind: LimitKind
    at: Attitude
    low_end: bool
    def __init__(self, allowed: _QuantityLike, broken: _QuantityLike, kind: LimitKind | str, at: Attitude | si.Attitude, low_end: bool) -> None: ...

class DrivelineTolerance(QuantityRecord):
    front_joint: Quantity[Any]
    pin_distance: Quantity[Any]
    pin_lateral: Quantity[Any]
    pin_drop: Quantity[Any]
    rear_joint: Quantity[Any]
    input_behind: Quantity[Any]
    input_left: Quantity[Any]
    input_up: Quantity[Any]
    input_direction: Quantity[Any]
    def __init__(self, front_joint: _QuantityLike = ..., pin_distance: _QuantityLike = ..., pin_lateral: _QuantityLike = ..., pin_drop: _QuantityLike = ..., rear_joint: _QuantityLike = ..., input_behind: _QuantityLike = ..., input_left: _QuantityLike = ..., input_up: _QuantityLike = ..., input_direction: _QuantityLike = ...) -> None: ...

class LinkagePosition(QuantityRecord):
    lift: Quantity[Any]
    sway: Quantity[Any]
    difference: Quantity[Any]
    def __init__(self, lift: _QuantityLike = ..., sway: _QuantityLike = ..., difference: _QuantityLike = ...) -> None: ...

class MountedEnvelope(QuantityRecord):
    envelope: DrivelineEnvelope
    front_angle_at: LinkagePosition
    rear_angle_at: LinkagePosition
    difference_at: LinkagePosition
    longest_at: LinkagePosition
    shortest_at: LinkagePosition
    speed_variation_at: LinkagePosition
    def __init__(self, envelope: DrivelineEnvelope | si.DrivelineEnvelope, front_angle_at: LinkagePosition | si.LinkagePosition, rear_angle_at: LinkagePosition | si.LinkagePosition, difference_at: LinkagePosition | si.LinkagePosition, longest_at: LinkagePosition | si.LinkagePosition, shortest_at: LinkagePosition | si.LinkagePosition, speed_variation_at: LinkagePosition | si.LinkagePosition) -> None: ...

class MountedChainEnvelope(QuantityRecord):
    speed_variation: NumberExtreme
    at: LinkagePosition
    def __init__(self, speed_variation: NumberExtreme | si.NumberExtreme, at: LinkagePosition | si.LinkagePosition) -> None: ...

class LengthRange(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, high: _QuantityLike) -> None: ...

class MountedRange(QuantityRecord):
    lift: LengthRange
    sway: LengthRange
    difference: LengthRange
    yaw: AngleRange
    roll: AngleRange
    pivot: Position | None
    def __init__(self, lift: LengthRange | si.LengthRange = ..., sway: LengthRange | si.LengthRange = ..., difference: LengthRange | si.LengthRange = ..., yaw: AngleRange | si.AngleRange = ..., roll: AngleRange | si.AngleRange = ..., pivot: Position | si.Position | None = ...) -> None: ...

class LevelLift(QuantityRecord):
    lift: Quantity[Any]
    tolerance: Quantity[Any]
    stated: bool
    def __init__(self, lift: _QuantityLike = ..., tolerance: _QuantityLike = ..., stated: bool = ...) -> None: ...

class MountedTolerance(QuantityRecord):
    driveline: DrivelineTolerance
    lower_pivot_behind: Quantity[Any]
    lower_pivot_below: Quantity[Any]
    lower_link: Quantity[Any]
    top_pivot_behind: Quantity[Any]
    top_pivot_below: Quantity[Any]
    top_link: Quantity[Any]
    level: LevelLift
    mast: Quantity[Any]
    span: Quantity[Any]
    convergence: Quantity[Any]
    wheel: Quantity[Any]
    ground: Quantity[Any]
    pivot: Quantity[Any]
    def __init__(self, driveline: DrivelineTolerance | si.DrivelineTolerance = ..., lower_pivot_behind: _QuantityLike = ..., lower_pivot_below: _QuantityLike = ..., lower_link: _QuantityLike = ..., top_pivot_behind: _QuantityLike = ..., top_pivot_below: _QuantityLike = ..., top_link: _QuantityLike = ..., level: LevelLift | si.LevelLift = ..., mast: _QuantityLike = ..., span: _QuantityLike = ..., convergence: _QuantityLike = ..., wheel: _QuantityLike = ..., ground: _QuantityLike = ..., pivot: _QuantityLike = ...) -> None: ...

class Placement(QuantityRecord):
    place: Quantity[Any]
    worst: Quantity[Any]
    envelope: DrivelineEnvelope
    def __init__(self, place: _QuantityLike, worst: _QuantityLike, envelope: DrivelineEnvelope | si.DrivelineEnvelope) -> None: ...

class PlanarJointAngles(QuantityRecord):
    front: Quantity[Any]
    rear: Quantity[Any]
    def __init__(self, front: _QuantityLike, rear: _QuantityLike) -> None: ...

class EnvelopeTableRow(QuantityRecord):
    yaw: Quantity[Any]
    pitch: Quantity[Any]
    front_angle: Quantity[Any]
    rear_angle: Quantity[Any]
    difference: Quantity[Any]
    longest: Quantity[Any]
    shortest: Quantity[Any]
    def __init__(self, yaw: _QuantityLike, pitch: _QuantityLike, front_angle: _QuantityLike, rear_angle: _QuantityLike, difference: _QuantityLike, longest: _QuantityLike, shortest: _QuantityLike) -> None: ...

class AngleInfluence(QuantityRecord):
    measurement: Measurement
    amount: Quantity[Any]
    def __init__(self, measurement: Measurement | str, amount: _QuantityLike) -> None: ...

class LengthInfluence(QuantityRecord):
    measurement: Measurement
    amount: Quantity[Any]
    def __init__(self, measurement: Measurement | str, amount: _QuantityLike) -> None: ...

class TolerantEnvelope(QuantityRecord):
    envelope: DrivelineEnvelope
    front_angle: AngleInfluence
    rear_angle: AngleInfluence
    difference: AngleInfluence
    longest: LengthInfluence
    shortest: LengthInfluence
    def __init__(self, envelope: DrivelineEnvelope | si.DrivelineEnvelope, front_angle: AngleInfluence | si.AngleInfluence, rear_angle: AngleInfluence | si.AngleInfluence, difference: AngleInfluence | si.AngleInfluence, longest: LengthInfluence | si.LengthInfluence, shortest: LengthInfluence | si.LengthInfluence) -> None: ...

class TubeRules(QuantityRecord):
    minimum_overlap: Sourced
    overlap_share: Sourced
    clearance: Sourced
    def __init__(self, minimum_overlap: Sourced = ..., overlap_share: Sourced = ..., clearance: Sourced = ...) -> None: ...

class TubeLengths(QuantityRecord):
    least_closed: Quantity[Any]
    greatest_closed: Quantity[Any]
    suits: bool
    cut: Quantity[Any]
    closed_after: Quantity[Any]
    overlap_at_longest: Quantity[Any]
    clearance_at_shortest: Quantity[Any]
    too_long: Quantity[Any]
    missing_tube: Quantity[Any]
    def __init__(self, least_closed: _QuantityLike, greatest_closed: _QuantityLike, suits: bool, cut: _QuantityLike, closed_after: _QuantityLike, overlap_at_longest: _QuantityLike, clearance_at_shortest: _QuantityLike, too_long: _QuantityLike, missing_tube: _QuantityLike) -> None: ...

class TubeAdvice(QuantityRecord):
    tubes: TubeLengths
    longest_at: Attitude
    shortest_at: Attitude
    def __init__(self, tubes: TubeLengths | si.TubeLengths, longest_at: Attitude | si.Attitude, shortest_at: Attitude | si.Attitude) -> None: ...

class LengthCheck(QuantityRecord):
    model: Quantity[Any]
    measured: Quantity[Any]
    allowed: Quantity[Any]
    agrees: bool
    def __init__(self, model: _QuantityLike, measured: _QuantityLike, allowed: _QuantityLike, agrees: bool) -> None: ...

class TurnLimit(QuantityRecord):
    allowed: Quantity[Any]
    broken: Quantity[Any]
    kind: LimitKind
    at: Attitude
    straight_ahead: bool
    def __init__(self, allowed: _QuantityLike, broken: _QuantityLike, kind: LimitKind | str, at: Attitude | si.Attitude, straight_ahead: bool) -> None: ...

class TurnLimits(QuantityRecord):
    left: TurnLimit
    right: TurnLimit
    def __init__(self, left: TurnLimit | si.TurnLimit, right: TurnLimit | si.TurnLimit) -> None: ...

class LimitCheck(QuantityRecord):
    holds: bool
    broken: LimitKind
    open: LimitKind
    at: Attitude
    def __init__(self, holds: bool, broken: LimitKind | str, open: LimitKind | str, at: Attitude | si.Attitude) -> None: ...

class TurnLimitAtPitch(QuantityRecord):
    pitch: Quantity[Any]
    limits: TurnLimits
    def __init__(self, pitch: _QuantityLike, limits: TurnLimits | si.TurnLimits) -> None: ...

class LowerLinkRods(QuantityRecord):
    pivot_span: Quantity[Any]
    hitch_span: Quantity[Any]
    radius: Quantity[Any]
    def __init__(self, pivot_span: _QuantityLike, hitch_span: _QuantityLike, radius: _QuantityLike) -> None: ...

class MountedSurroundings(QuantityRecord):
    fixed: Surroundings
    links: LowerLinkRods | None
    def __init__(self, fixed: Surroundings | si.Surroundings, links: LowerLinkRods | si.LowerLinkRods | None = ...) -> None: ...

class MountedClearance(QuantityRecord):
    least: LengthExtreme
    at: LinkagePosition
    def __init__(self, least: LengthExtreme | si.LengthExtreme, at: LinkagePosition | si.LinkagePosition) -> None: ...

class JointAngleBand(QuantityRecord):
    low: Sourced
    high: Sourced
    def __init__(self, low: Sourced, high: Sourced) -> None: ...

class UseAngleLimits(QuantityRecord):
    working: JointAngleBand
    turning_driven: JointAngleBand
    lifted_driven: JointAngleBand
    not_turning: JointAngleBand
    def __init__(self, working: JointAngleBand | si.JointAngleBand, turning_driven: JointAngleBand | si.JointAngleBand, lifted_driven: JointAngleBand | si.JointAngleBand, not_turning: JointAngleBand | si.JointAngleBand) -> None: ...

class AttitudeGrid(QuantityRecord):
    yaw: tuple[Quantity[Any], ...]
    pitch: tuple[Quantity[Any], ...]
    roll: tuple[Quantity[Any], ...]
    def __init__(self, yaw: Iterable[_QuantityLike], pitch: Iterable[_QuantityLike] = ..., roll: Iterable[_QuantityLike] = ...) -> None: ...

class SweptExtreme(QuantityRecord):
    at: Attitude
    state: DrivelineState
    def __init__(self, at: Attitude | si.Attitude, state: DrivelineState | si.DrivelineState) -> None: ...

class DrivelineSweep(QuantityRecord):
    front_angle: SweptExtreme
    rear_angle: SweptExtreme
    difference: SweptExtreme
    longest: SweptExtreme
    shortest: SweptExtreme
    def __init__(self, front_angle: SweptExtreme | si.SweptExtreme, rear_angle: SweptExtreme | si.SweptExtreme, difference: SweptExtreme | si.SweptExtreme, longest: SweptExtreme | si.SweptExtreme, shortest: SweptExtreme | si.SweptExtreme) -> None: ...

class BeamSegment(QuantityRecord):
    length: Quantity[Any]
    stiffness: Quantity[Any]
    mass: Quantity[Any]
    def __init__(self, length: _QuantityLike, stiffness: _QuantityLike, mass: _QuantityLike) -> None: ...

class BeamMass(QuantityRecord):
    at: Quantity[Any]
    mass: Quantity[Any]
    def __init__(self, at: _QuantityLike, mass: _QuantityLike) -> None: ...

class BeamSupport(QuantityRecord):
    at: Quantity[Any]
    kind: SupportKind
    stiffness: Quantity[Any]
    def __init__(self, at: _QuantityLike = ..., kind: SupportKind | str = ..., stiffness: _QuantityLike = ...) -> None: ...

class BeamLine(QuantityRecord):
    segments: tuple[BeamSegment, ...]
    masses: tuple[BeamMass, ...]
    supports: tuple[BeamSupport, ...]
    def __init__(self, segments: Iterable[BeamSegment | si.BeamSegment], masses: Iterable[BeamMass | si.BeamMass], supports: Iterable[BeamSupport | si.BeamSupport]) -> None: ...

class WhirlMember(QuantityRecord):
    tube: BeamSegment
    end_mass: Quantity[Any]
    end_mass_from: Quantity[Any]
    def __init__(self, tube: BeamSegment | si.BeamSegment, end_mass: _QuantityLike = ..., end_mass_from: _QuantityLike = ...) -> None: ...

class WhirlMiddle(QuantityRecord):
    tube: BeamSegment
    front_closed: Quantity[Any]
    front_least: Quantity[Any]
    rear_closed: Quantity[Any]
    rear_least: Quantity[Any]
    def __init__(self, tube: BeamSegment | si.BeamSegment, front_closed: _QuantityLike = ..., front_least: _QuantityLike = ..., rear_closed: _QuantityLike = ..., rear_least: _QuantityLike = ...) -> None: ...

class WhirlTelescope(QuantityRecord):
    front: WhirlMember
    rear: WhirlMember
    overlap_share: float
    front_support: BeamSupport
    rear_support: BeamSupport
    middle: WhirlMiddle | None
    def __init__(self, front: WhirlMember | si.WhirlMember, rear: WhirlMember | si.WhirlMember, overlap_share: _Number = ..., front_support: BeamSupport | si.BeamSupport = ..., rear_support: BeamSupport | si.BeamSupport = ..., middle: WhirlMiddle | si.WhirlMiddle | None = ...) -> None: ...

class WhirlExtreme(QuantityRecord):
    at: Quantity[Any]
    critical_speed: Quantity[Any]
    share: float
    longest: Quantity[Any]
    at_longest: Quantity[Any]
    def __init__(self, at: _QuantityLike, critical_speed: _QuantityLike, share: _Number, longest: _QuantityLike, at_longest: _QuantityLike) -> None: ...

class TrainInertia(QuantityRecord):
    inertia: Quantity[Any]
    drag: Quantity[Any]
    def __init__(self, inertia: _QuantityLike, drag: _QuantityLike = ...) -> None: ...

class TrainShaft(QuantityRecord):
    from_: int
    to: int
    stiffness: Quantity[Any]
    ratio: float
    damping: Quantity[Any]
    backlash: Quantity[Any]
    def __init__(self, from_: int, to: int, stiffness: _QuantityLike, ratio: _Number = ..., damping: _QuantityLike = ..., backlash: _QuantityLike = ...) -> None: ...

class TrainAnchor(QuantityRecord):
    inertia: int
    stiffness: Quantity[Any]
    damping: Quantity[Any]
    def __init__(self, inertia: int, stiffness: _QuantityLike, damping: _QuantityLike = ...) -> None: ...

class TorsionalTrain(QuantityRecord):
    inertias: tuple[TrainInertia, ...]
    shafts: tuple[TrainShaft, ...]
    anchors: tuple[TrainAnchor, ...]
    def __init__(self, inertias: Iterable[TrainInertia | si.TrainInertia], shafts: Iterable[TrainShaft | si.TrainShaft] = ..., anchors: Iterable[TrainAnchor | si.TrainAnchor] = ...) -> None: ...

class TorsionalMode(QuantityRecord):
    frequency: Quantity[Any]
    amplitudes: tuple[float, ...]
    def __init__(self, frequency: _QuantityLike, amplitudes: Iterable[_Number]) -> None: ...

class SolidSection(QuantityRecord):
    diameter: Quantity[Any]
    def __init__(self, diameter: _QuantityLike) -> None: ...

class TubeSection(QuantityRecord):
    outer_diameter: Quantity[Any]
    inner_diameter: Quantity[Any]
    def __init__(self, outer_diameter: _QuantityLike, inner_diameter: _QuantityLike) -> None: ...

class ProfileSection(QuantityRecord):
    enclosed_area: Quantity[Any]
    perimeter: Quantity[Any]
    wall: Quantity[Any]
    def __init__(self, enclosed_area: _QuantityLike, perimeter: _QuantityLike, wall: _QuantityLike) -> None: ...

class ShapedProfile(QuantityRecord):
    enclosed_area: Quantity[Any]
    perimeter: Quantity[Any]
    wall: Quantity[Any]
    second_moment: Quantity[Any]
    def __init__(self, enclosed_area: _QuantityLike, perimeter: _QuantityLike, wall: _QuantityLike, second_moment: _QuantityLike) -> None: ...

class Wall(QuantityRecord):
    width: Quantity[Any]
    thickness: Quantity[Any]
    def __init__(self, width: _QuantityLike, thickness: _QuantityLike) -> None: ...

class UnevenProfileSection(QuantityRecord):
    enclosed_area: Quantity[Any]
    walls: tuple[Wall, ...]
    def __init__(self, enclosed_area: _QuantityLike, walls: Iterable[Wall | si.Wall]) -> None: ...

class RectangleSection(QuantityRecord):
    width: Quantity[Any]
    height: Quantity[Any]
    def __init__(self, width: _QuantityLike, height: _QuantityLike) -> None: ...

class TriangleSection(QuantityRecord):
    side: Quantity[Any]
    def __init__(self, side: _QuantityLike) -> None: ...

class OpenSection(QuantityRecord):
    walls: tuple[Wall, ...]
    def __init__(self, walls: Iterable[Wall | si.Wall]) -> None: ...

class StepLength(QuantityRecord):
    section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection
    length: Quantity[Any]
    def __init__(self, section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, length: _QuantityLike) -> None: ...

class SpeedRange(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, high: _QuantityLike) -> None: ...

class Interference(QuantityRecord):
    mode: int
    order: int
    natural: Quantity[Any]
    critical_speed: Quantity[Any]
    nearest: Quantity[Any]
    separation: float
    swing: float
    def __init__(self, mode: int, order: int, natural: _QuantityLike, critical_speed: _QuantityLike, nearest: _QuantityLike, separation: _Number, swing: _Number) -> None: ...

class TorqueSwing(QuantityRecord):
    amplitude: Quantity[Any]
    phase: Quantity[Any]
    def __init__(self, amplitude: _QuantityLike, phase: _QuantityLike = ...) -> None: ...

class AngleSwing(QuantityRecord):
    amplitude: Quantity[Any]
    phase: Quantity[Any]
    def __init__(self, amplitude: _QuantityLike, phase: _QuantityLike = ...) -> None: ...

class TorqueExcitation(QuantityRecord):
    inertia: int
    torque: TorqueSwing
    def __init__(self, inertia: int, torque: TorqueSwing | si.TorqueSwing) -> None: ...

class TwistExcitation(QuantityRecord):
    shaft: int
    lead: AngleSwing
    def __init__(self, shaft: int, lead: AngleSwing | si.AngleSwing) -> None: ...

class TorsionalExcitation(QuantityRecord):
    frequency: Quantity[Any]
    torques: tuple[TorqueExcitation, ...]
    leads: tuple[TwistExcitation, ...]
    def __init__(self, frequency: _QuantityLike, torques: Iterable[TorqueExcitation | si.TorqueExcitation] = ..., leads: Iterable[TwistExcitation | si.TwistExcitation] = ...) -> None: ...

class ForcedResponse(QuantityRecord):
    swings: tuple[AngleSwing, ...]
    torques: tuple[TorqueSwing, ...]
    def __init__(self, swings: Iterable[AngleSwing | si.AngleSwing], torques: Iterable[TorqueSwing | si.TorqueSwing]) -> None: ...

class EnginePoint(QuantityRecord):
    speed: Quantity[Any]
    torque: Quantity[Any]
    def __init__(self, speed: _QuantityLike, torque: _QuantityLike) -> None: ...

class EngineLine(QuantityRecord):
    points: tuple[EnginePoint, ...]
    high_idle: Quantity[Any]
    rated_speed: Quantity[Any] | None
    def __init__(self, points: Iterable[EnginePoint | si.EnginePoint], high_idle: _QuantityLike, rated_speed: _QuantityLike | None = ...) -> None: ...
    @property
    def rated(self) -> EnginePoint: ...
    @property
    def peak(self) -> EnginePoint: ...
    @property
    def rated_power(self) -> PtoPower: ...
    def torque_at(self, speed: _QuantityLike) -> Validated: ...
    def power_at(self, speed: _QuantityLike) -> Validated: ...
    def speed_under(self, load: _QuantityLike) -> Validated: ...
    def greatest_power(self) -> PowerPoint: ...

class EngineDrive(QuantityRecord):
    line: EngineLine
    ratio: float
    def __init__(self, line: EngineLine | si.EngineLine, ratio: _Number) -> None: ...

class LineLoad(QuantityRecord):
    friction: Quantity[Any]
    viscous: Quantity[Any]
    windage: Quantity[Any]
    windage_speed: Quantity[Any]
    def __init__(self, friction: _QuantityLike = ..., viscous: _QuantityLike = ..., windage: _QuantityLike = ..., windage_speed: _QuantityLike = ...) -> None: ...

class LineBrake(QuantityRecord):
    from_: Quantity[Any]
    torque: Quantity[Any]
    def __init__(self, from_: _QuantityLike, torque: _QuantityLike) -> None: ...

class LineBody(QuantityRecord):
    name: str
    inertia: Quantity[Any]
    speed: Quantity[Any]
    drive: None | HeldSpeed | EngineDrive
    load: LineLoad
    brakes: tuple[LineBrake, ...]
    blocked_at: Quantity[Any] | None
    def __init__(self, name: str, inertia: _QuantityLike, speed: _QuantityLike = ..., drive: None | HeldSpeed | EngineDrive | si.EngineDrive = ..., load: LineLoad | si.LineLoad = ..., brakes: Iterable[LineBrake | si.LineBrake] = ..., blocked_at: _QuantityLike | None = ...) -> None: ...

class LineJoints(QuantityRecord):
    front: Quantity[Any]
    rear: Quantity[Any]
    phase: Quantity[Any]
    rotation: Quantity[Any]
    def __init__(self, front: _QuantityLike = ..., rear: _QuantityLike = ..., phase: _QuantityLike = ..., rotation: _QuantityLike = ...) -> None: ...

class LineShaft(QuantityRecord):
    stiffness: Quantity[Any]
    damping: Quantity[Any]
    backlash: Quantity[Any]
    ratio: float
    joints: LineJoints | None
    def __init__(self, stiffness: _QuantityLike, damping: _QuantityLike = ..., backlash: _QuantityLike = ..., ratio: _Number = ..., joints: LineJoints | si.LineJoints | None = ...) -> None: ...

class LineClutch(QuantityRecord):
    torque: Quantity[Any]
    engage_at: Quantity[Any]
    ramp: Quantity[Any]
    release_at: Quantity[Any] | None
    break_away: float
    def __init__(self, torque: _QuantityLike, engage_at: _QuantityLike = ..., ramp: _QuantityLike = ..., release_at: _QuantityLike | None = ..., break_away: _Number = ...) -> None: ...

class LineShearBolt(QuantityRecord):
    torque: Quantity[Any]
    def __init__(self, torque: _QuantityLike) -> None: ...

class LineCutOut(QuantityRecord):
    torque: Quantity[Any]
    tripped_share: float
    def __init__(self, torque: _QuantityLike, tripped_share: _Number = ...) -> None: ...

class LineOverrun(QuantityRecord):
    drag: Quantity[Any]
    backwards: bool
    def __init__(self, drag: _QuantityLike = ..., backwards: bool = ...) -> None: ...

class PtoLine(QuantityRecord):
    bodies: tuple[LineBody, ...]
    links: tuple[LineShaft | LineClutch | LineShearBolt | LineCutOut | LineOverrun, ...]
    def __init__(self, bodies: Iterable[LineBody | si.LineBody], links: Iterable[LineShaft | si.LineShaft | LineClutch | si.LineClutch | LineShearBolt | si.LineShearBolt | LineCutOut | si.LineCutOut | LineOverrun | si.LineOverrun]) -> None: ...

class SimulationSettings(QuantityRecord):
    duration: Quantity[Any]
    until_standstill: bool
    relative_tolerance: float
    event_tolerance: Quantity[Any]
    max_steps: int
    max_events: int
    sample_every: Quantity[Any]
    def __init__(self, duration: _QuantityLike = ..., until_standstill: bool = ..., relative_tolerance: _Number = ..., event_tolerance: _QuantityLike = ..., max_steps: int = ..., max_events: int = ..., sample_every: _QuantityLike = ...) -> None: ...

class LineEvent(QuantityRecord):
    time: Quantity[Any]
    kind: LineEventKind
    index: int
    def __init__(self, time: _QuantityLike, kind: LineEventKind | str, index: int) -> None: ...

class PeakTorque(QuantityRecord):
    torque: Quantity[Any]
    time: Quantity[Any]
    def __init__(self, torque: _QuantityLike, time: _QuantityLike) -> None: ...

class LinkResult(QuantityRecord):
    peak: PeakTorque
    peak_driving: PeakTorque
    heat: Quantity[Any]
    slip_time: Quantity[Any]
    locked_at: Quantity[Any] | None
    broken: bool
    tripped: bool
    def __init__(self, peak: PeakTorque | si.PeakTorque, peak_driving: PeakTorque | si.PeakTorque, heat: _QuantityLike, slip_time: _QuantityLike, locked_at: _QuantityLike | None, broken: bool, tripped: bool) -> None: ...

class BodyResult(QuantityRecord):
    speed: Quantity[Any]
    drive_work: Quantity[Any]
    load_work: Quantity[Any]
    standstill: Quantity[Any] | None
    def __init__(self, speed: _QuantityLike, drive_work: _QuantityLike, load_work: _QuantityLike, standstill: _QuantityLike | None) -> None: ...

class EnergyBalance(QuantityRecord):
    at_start: Quantity[Any]
    drive: Quantity[Any]
    load: Quantity[Any]
    heat: Quantity[Any]
    impact: Quantity[Any]
    motion: Quantity[Any]
    twist: Quantity[Any]
    error: float
    def __init__(self, at_start: _QuantityLike, drive: _QuantityLike, load: _QuantityLike, heat: _QuantityLike, impact: _QuantityLike, motion: _QuantityLike, twist: _QuantityLike, error: _Number) -> None: ...

class SimulationTrace(QuantityRecord):
    time: Quantity[Any]
    speeds: Quantity[Any]
    torques: Quantity[Any]
    def __init__(self, time: Any, speeds: Any, torques: Any) -> None: ...

class SimulationResult(QuantityRecord):
    complete: bool
    end: SimulationEnd
    reached: Quantity[Any]
    steps: int
    bodies: tuple[BodyResult, ...]
    links: tuple[LinkResult, ...]
    events: tuple[LineEvent, ...]
    energy: EnergyBalance
    trace: SimulationTrace
    def __init__(self, complete: bool, end: SimulationEnd | str, reached: _QuantityLike, steps: int, bodies: Iterable[BodyResult | si.BodyResult], links: Iterable[LinkResult | si.LinkResult], events: Iterable[LineEvent | si.LineEvent], energy: EnergyBalance | si.EnergyBalance, trace: SimulationTrace | si.SimulationTrace) -> None: ...

class EnduranceConditions(QuantityRecord):
    finish: SurfaceFinish
    diameter: Quantity[Any]
    load: LoadKind
    above_zero_celsius: Quantity[Any]
    reliability: float
    def __init__(self, finish: SurfaceFinish | str, diameter: _QuantityLike, load: LoadKind | str = ..., above_zero_celsius: _QuantityLike = ..., reliability: _Number = ...) -> None: ...

class DutyLife(QuantityRecord):
    damage_per_year: float
    working_time: Quantity[Any]
    years: float
    def __init__(self, damage_per_year: _Number, working_time: _QuantityLike, years: _Number) -> None: ...

class FatigueStrength(QuantityRecord):
    endurance: Quantity[Any]
    ultimate: Quantity[Any]
    yield_: Quantity[Any]
    def __init__(self, endurance: _QuantityLike, ultimate: _QuantityLike, yield_: _QuantityLike) -> None: ...

class ShaftLoad(QuantityRecord):
    bending_amplitude: Quantity[Any]
    bending_mean: Quantity[Any]
    torque_amplitude: Quantity[Any]
    torque_mean: Quantity[Any]
    def __init__(self, bending_amplitude: _QuantityLike = ..., bending_mean: _QuantityLike = ..., torque_amplitude: _QuantityLike = ..., torque_mean: _QuantityLike = ...) -> None: ...

class ShaftStresses(QuantityRecord):
    amplitude: Quantity[Any]
    mean: Quantity[Any]
    peak: Quantity[Any]
    def __init__(self, amplitude: _QuantityLike, mean: _QuantityLike, peak: _QuantityLike) -> None: ...

class SnLine(QuantityRecord):
    coefficient: Quantity[Any]
    exponent: float
    endurance: Quantity[Any]
    ultimate: Quantity[Any]
    yield_: Quantity[Any]
    either_sign: bool
    def __init__(self, coefficient: _QuantityLike, exponent: _Number, endurance: _QuantityLike, ultimate: _QuantityLike, yield_: _QuantityLike, either_sign: bool = ...) -> None: ...

class TorqueSnLine(QuantityRecord):
    coefficient: Quantity[Any]
    exponent: float
    endurance: Quantity[Any]
    ultimate: Quantity[Any]
    yield_: Quantity[Any]
    either_sign: bool
    def __init__(self, coefficient: _QuantityLike, exponent: _Number, endurance: _QuantityLike, ultimate: _QuantityLike, yield_: _QuantityLike, either_sign: bool = ...) -> None: ...

class Duty(QuantityRecord):
    amplitude: Quantity[Any]
    mean: Quantity[Any]
    frequency: Quantity[Any]
    per_year: Quantity[Any]
    def __init__(self, amplitude: _QuantityLike, mean: _QuantityLike, frequency: _QuantityLike, per_year: _QuantityLike) -> None: ...

class Pose(QuantityRecord):
    pin: Position
    attitude: Attitude
    def __init__(self, pin: Position | si.Position, attitude: Attitude | si.Attitude = ...) -> None: ...

class HitchPowerRange(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, high: _QuantityLike) -> None: ...

class HitchCategory(QuantityRecord):
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

class HitchAngleRange(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, high: _QuantityLike) -> None: ...

class DrawbarHitch(QuantityRecord):
    distance: Quantity[Any]
    lateral: Quantity[Any]
    drop: Quantity[Any]
    def __init__(self, distance: _QuantityLike = ..., lateral: _QuantityLike = ..., drop: _QuantityLike = ...) -> None: ...

class WheelPlaces(QuantityRecord):
    wheelbase: Quantity[Any]
    overhang: Quantity[Any]
    tongue: Quantity[Any]
    pin_height: Quantity[Any]
    def __init__(self, wheelbase: _QuantityLike = ..., overhang: _QuantityLike = ..., tongue: _QuantityLike = ..., pin_height: _QuantityLike = ...) -> None: ...

class FourBarAngles(QuantityRecord):
    coupler: Quantity[Any]
    rocker: Quantity[Any]
    def __init__(self, coupler: _QuantityLike, rocker: _QuantityLike) -> None: ...

class ThreePointLinkage(QuantityRecord):
    lower_pivot_behind: Quantity[Any]
    lower_pivot_below: Quantity[Any]
    lower_link: Quantity[Any]
    top_pivot_behind: Quantity[Any]
    top_pivot_below: Quantity[Any]
    top_link: Quantity[Any]
    mast_height: Quantity[Any]
    mast_forward: Quantity[Any]
    span: Quantity[Any]
    convergence: Quantity[Any]
    coupler_depth: Quantity[Any]
    coupler_rise: Quantity[Any]
    def __init__(self, lower_pivot_behind: _QuantityLike = ..., lower_pivot_below: _QuantityLike = ..., lower_link: _QuantityLike = ..., top_pivot_behind: _QuantityLike = ..., top_pivot_below: _QuantityLike = ..., top_link: _QuantityLike = ..., mast_height: _QuantityLike = ..., mast_forward: _QuantityLike = ..., span: _QuantityLike = ..., convergence: _QuantityLike = ..., coupler_depth: _QuantityLike = ..., coupler_rise: _QuantityLike = ...) -> None: ...

class SupportWheel(QuantityRecord):
    behind: Quantity[Any]
    below: Quantity[Any]
    ground_below_pivot: Quantity[Any]
    def __init__(self, behind: _QuantityLike = ..., below: _QuantityLike = ..., ground_below_pivot: _QuantityLike = ...) -> None: ...

class SlackPose(QuantityRecord):
    pose: Pose
    top_link: Quantity[Any]
    def __init__(self, pose: Pose | si.Pose, top_link: _QuantityLike) -> None: ...

class JointDuty(QuantityRecord):
    share: float
    torque: Quantity[Any]
    speed: Quantity[Any]
    angle: Quantity[Any]
    def __init__(self, share: _Number, torque: _QuantityLike, speed: _QuantityLike, angle: _QuantityLike) -> None: ...

class JointCouples(QuantityRecord):
    output: Quantity[Any]
    driving: Quantity[Any]
    driven: Quantity[Any]
    def __init__(self, output: _QuantityLike, driving: _QuantityLike, driven: _QuantityLike) -> None: ...

class JointPairExtremes(QuantityRecord):
    equivalent_angle: Quantity[Any]
    largest_ratio: float
    least_ratio: float
    peak_acceleration: Quantity[Any]
    def __init__(self, equivalent_angle: _QuantityLike, largest_ratio: _Number, least_ratio: _Number, peak_acceleration: _QuantityLike) -> None: ...

class SplinePosition(QuantityRecord):
    steps: int
    yoke_phase: Quantity[Any]
    phase: Quantity[Any]
    equivalent_angle: Quantity[Any]
    def __init__(self, steps: int, yoke_phase: _QuantityLike, phase: _QuantityLike, equivalent_angle: _QuantityLike) -> None: ...

class JointInRow(QuantityRecord):
    angle: Quantity[Any]
    phase: Quantity[Any]
    def __init__(self, angle: _QuantityLike, phase: _QuantityLike = ...) -> None: ...

class JointAnglePractice(QuantityRecord):
    working: JointAngleBand
    turning: JointAngleBand
    at_rest: JointAngleBand
    def __init__(self, working: JointAngleBand | si.JointAngleBand, turning: JointAngleBand | si.JointAngleBand, at_rest: JointAngleBand | si.JointAngleBand) -> None: ...

class BoltGrade(QuantityRecord):
    standard: str
    name: str
    size_above: Quantity[Any]
    size_max: Quantity[Any]
    ultimate_nominal: Quantity[Any]
    ultimate_min: Quantity[Any]
    ultimate_max: Quantity[Any]
    yield_min: Quantity[Any]
    proof: Quantity[Any]
    hardness_max: str
    source: Source
    ultimate_max_source: Source
    def __init__(self, standard: str, name: str, size_above: _QuantityLike, size_max: _QuantityLike, ultimate_nominal: _QuantityLike, ultimate_min: _QuantityLike, ultimate_max: _QuantityLike, yield_min: _QuantityLike, proof: _QuantityLike, hardness_max: str, source: Source, ultimate_max_source: Source) -> None: ...

class Material(QuantityRecord):
    name: str
    condition: str
    ultimate: Quantity[Any]
    yield_: Quantity[Any]
    section_min: Quantity[Any]
    section_max: Quantity[Any]
    source: Source
    hardness_brinell: Sourced | None
    youngs_modulus: Quantity[Any]
    shear_modulus: Quantity[Any]
    density: Quantity[Any]
    poisson_ratio: float
    elastic_source: Source
    def __init__(self, name: str, condition: str, ultimate: _QuantityLike, yield_: _QuantityLike, section_min: _QuantityLike = ..., section_max: _QuantityLike = ..., source: Source = ..., hardness_brinell: Sourced | None = ..., youngs_modulus: _QuantityLike = ..., shear_modulus: _QuantityLike = ..., density: _QuantityLike = ..., poisson_ratio: _Number = ..., elastic_source: Source = ...) -> None: ...

class Strength(QuantityRecord):
    ultimate: Quantity[Any]
    yield_: Quantity[Any]
    def __init__(self, ultimate: _QuantityLike, yield_: _QuantityLike) -> None: ...

class TorqueBand(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, high: _QuantityLike) -> None: ...

class DeviceSetting(QuantityRecord):
    nominal: Quantity[Any]
    scatter: float
    def __init__(self, nominal: _QuantityLike, scatter: _Number) -> None: ...

class ClutchEngagement(QuantityRecord):
    time: Quantity[Any]
    heat: Quantity[Any]
    speed: Quantity[Any]
    locks: bool
    def __init__(self, time: _QuantityLike, heat: _QuantityLike, speed: _QuantityLike, locks: bool) -> None: ...

class OverrunCoast(QuantityRecord):
    time: Quantity[Any]
    angle: Quantity[Any]
    energy: Quantity[Any]
    def __init__(self, time: _QuantityLike, angle: _QuantityLike, energy: _QuantityLike) -> None: ...

class CoarsePitch(QuantityRecord):
    system: ThreadSystem
    diameter: Quantity[Any]
    pitch: Quantity[Any]
    def __init__(self, system: ThreadSystem | str, diameter: _QuantityLike, pitch: _QuantityLike) -> None: ...

class ChainPart(QuantityRecord):
    name: str
    yield_torque: Quantity[Any]
    speed_ratio: float
    efficiency: float
    def __init__(self, name: str, yield_torque: _QuantityLike, speed_ratio: _Number, efficiency: _Number = ...) -> None: ...

class DeviceWindow(QuantityRecord):
    lowest: Quantity[Any]
    highest: Quantity[Any]
    state: WindowState
    weakest: int
    weakest_name: str
    weakest_torque: Quantity[Any]
    open: bool
    def __init__(self, lowest: _QuantityLike, highest: _QuantityLike, state: WindowState | str, weakest: int, weakest_name: str, weakest_torque: _QuantityLike, open: bool) -> None: ...

class GrossEnginePower(QuantityRecord):
    power: Quantity[Any]
    def __init__(self, power: _QuantityLike) -> None: ...

class NetEnginePower(QuantityRecord):
    power: Quantity[Any]
    def __init__(self, power: _QuantityLike) -> None: ...

class PtoPower(QuantityRecord):
    power: Quantity[Any]
    def __init__(self, power: _QuantityLike) -> None: ...

class PtoPowerRange(QuantityRecord):
    low: PtoPower
    usual: PtoPower
    high: PtoPower
    def __init__(self, low: PtoPower | si.PtoPower, usual: PtoPower | si.PtoPower, high: PtoPower | si.PtoPower) -> None: ...

class RulePowers(QuantityRecord):
    engine: Quantity[Any]
    pto: Quantity[Any]
    drawbar: Quantity[Any]
    def __init__(self, engine: _QuantityLike, pto: _QuantityLike, drawbar: _QuantityLike) -> None: ...

class EconomySaving(QuantityRecord):
    plain: Quantity[Any]
    economy: Quantity[Any]
    saving: float
    def __init__(self, plain: _QuantityLike, economy: _QuantityLike, saving: _Number) -> None: ...

class ImplementPower(QuantityRecord):
    low: Quantity[Any]
    mean: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, low: _QuantityLike, mean: _QuantityLike, high: _QuantityLike) -> None: ...

class FeedRate(QuantityRecord):
    rate: Quantity[Any]
    basis: FeedBasis
    def __init__(self, rate: _QuantityLike = ..., basis: FeedBasis | str = ...) -> None: ...

class Machine(QuantityRecord):
    name: str
    constant: Quantity[Any]
    per_width: Quantity[Any]
    per_mass: Quantity[Any]
    basis: FeedBasis
    range: float
    note: str
    source: Source
    def __init__(self, name: str, constant: _QuantityLike, per_width: _QuantityLike, per_mass: _QuantityLike, basis: FeedBasis | str, range: _Number, note: str = ..., source: Source = ...) -> None: ...

class PtoOption(QuantityRecord):
    name: str
    nominal_speed: Quantity[Any]
    engine_speed: Quantity[Any]
    def __init__(self, name: str, nominal_speed: _QuantityLike, engine_speed: _QuantityLike) -> None: ...
    @property
    def ratio(self) -> float: ...

class PtoOutput(QuantityRecord):
    speed: Quantity[Any]
    torque: Quantity[Any]
    power: Quantity[Any]
    def __init__(self, speed: _QuantityLike, torque: _QuantityLike, power: _QuantityLike) -> None: ...

class PowerPoint(QuantityRecord):
    speed: Quantity[Any]
    power: PtoPower
    def __init__(self, speed: _QuantityLike, power: PtoPower | si.PtoPower) -> None: ...

class PtoOptions(QuantityRecord):
    options: tuple[PtoOption, ...]
    def __init__(self, options: Iterable[PtoOption | si.PtoOption]) -> None: ...
    def find(self, name: str) -> PtoOption | None: ...
    def economy_of(self, name: str) -> PtoOption | None: ...

class WidthLimit(QuantityRecord):
    safe: Quantity[Any]
    mean: Quantity[Any]
    optimistic: Quantity[Any]
    def __init__(self, safe: _QuantityLike, mean: _QuantityLike, optimistic: _QuantityLike) -> None: ...

class TractorLimit(QuantityRecord):
    safe: Quantity[Any]
    mean: Quantity[Any]
    optimistic: Quantity[Any]
    def __init__(self, safe: _QuantityLike, mean: _QuantityLike, optimistic: _QuantityLike) -> None: ...

class SpeedLimit(QuantityRecord):
    safe: Quantity[Any]
    mean: Quantity[Any]
    optimistic: Quantity[Any]
    def __init__(self, safe: _QuantityLike, mean: _QuantityLike, optimistic: _QuantityLike) -> None: ...

class FeedLimit(QuantityRecord):
    safe: Quantity[Any]
    mean: Quantity[Any]
    optimistic: Quantity[Any]
    def __init__(self, safe: _QuantityLike, mean: _QuantityLike, optimistic: _QuantityLike) -> None: ...

class MeasuredPowerPerWidth(QuantityRecord):
    machine: str
    low: Quantity[Any]
    high: Quantity[Any]
    source: Source
    def __init__(self, machine: str, low: _QuantityLike, high: _QuantityLike, source: Source) -> None: ...

class MeasuredEnergyPerMass(QuantityRecord):
    machine: str
    low: Quantity[Any]
    high: Quantity[Any]
    source: Source
    def __init__(self, machine: str, low: _QuantityLike, high: _QuantityLike, source: Source) -> None: ...

class MeasuredPower(QuantityRecord):
    machine: str
    low: Quantity[Any]
    high: Quantity[Any]
    source: Source
    def __init__(self, machine: str, low: _QuantityLike, high: _QuantityLike, source: Source) -> None: ...

class DrawbarDistance(QuantityRecord):
    position: DrawbarPosition
    distance: Sourced
    def __init__(self, position: DrawbarPosition | str, distance: Sourced) -> None: ...

class DrawbarCategory(QuantityRecord):
    number: int
    greatest_pto_power: Sourced | None
    pin_diameter: Sourced | None
    hole_diameter: Sourced | None
    def __init__(self, number: int, greatest_pto_power: Sourced | None, pin_diameter: Sourced | None, hole_diameter: Sourced | None) -> None: ...

class LengthLimits(QuantityRecord):
    nominal: Quantity[Any]
    smallest: Quantity[Any]
    largest: Quantity[Any]
    def __init__(self, nominal: _QuantityLike, smallest: _QuantityLike, largest: _QuantityLike) -> None: ...

class StraightProfile(QuantityRecord):
    major_diameter: LengthLimits
    minor_diameter: LengthLimits
    tooth_width: LengthLimits
    def __init__(self, major_diameter: LengthLimits | si.LengthLimits, minor_diameter: LengthLimits | si.LengthLimits, tooth_width: LengthLimits | si.LengthLimits) -> None: ...

class InvoluteProfile(QuantityRecord):
    teeth: int
    module: Quantity[Any]
    pressure_angle: Quantity[Any]
    pitch_diameter: Quantity[Any]
    major_diameter: Quantity[Any]
    minor_diameter_flat: Quantity[Any]
    minor_diameter_fillet: Quantity[Any]
    tooth_thickness: Quantity[Any]
    derived: Source
    def __init__(self, teeth: int, module: _QuantityLike, pressure_angle: _QuantityLike, pitch_diameter: _QuantityLike, major_diameter: _QuantityLike, minor_diameter_flat: _QuantityLike, minor_diameter_fillet: _QuantityLike, tooth_thickness: _QuantityLike, derived: Source) -> None: ...

class PtoType(QuantityRecord):
    number: int
    name: str
    nominal_speed: Quantity[Any]
    nominal_diameter: Quantity[Any]
    named_diameter: Quantity[Any]
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
    def __init__(self, number: int, name: str, nominal_speed: _QuantityLike, nominal_diameter: _QuantityLike, named_diameter: _QuantityLike, spline_count: int, form: SplineForm | str, identity: Source, known_speeds: Iterable[Sourced], straight_rule: Sourced | None, straight_standard: Sourced | None, involute: Sourced | None, useful_spline_length: Sourced | None, groove_diameter: Sourced | None, groove_radius: Sourced | None, end_to_groove: Sourced | None, cross_hole: Sourced | None, shield_overlap: Sourced | None, height: Sourced | None) -> None: ...

class PtoMatch(QuantityRecord):
    type: PtoType
    diameter_difference: Quantity[Any]
    count_difference: int
    def __init__(self, type: PtoType | si.PtoType | int, diameter_difference: _QuantityLike, count_difference: int) -> None: ...

class PtoIdentification(QuantityRecord):
    found: bool
    ambiguous: bool
    speed_is_proved: bool
    candidates: tuple[PtoMatch, ...]
    near_misses: tuple[PtoMatch, ...]
    def __init__(self, found: bool, ambiguous: bool, speed_is_proved: bool, candidates: Iterable[PtoMatch | si.PtoMatch], near_misses: Iterable[PtoMatch | si.PtoMatch]) -> None: ...

class RecommendedPower(QuantityRecord):
    edition: str
    power: Quantity[Any]
    source: Source
    def __init__(self, edition: str, power: _QuantityLike, source: Source) -> None: ...

class RecommendedPowers(QuantityRecord):
    known: bool
    lowest: Sourced | None
    highest: Sourced | None
    editions: tuple[RecommendedPower, ...]
    def __init__(self, known: bool, lowest: Sourced | None, highest: Sourced | None, editions: Iterable[RecommendedPower | si.RecommendedPower]) -> None: ...

class DrawbarPowerClass(QuantityRecord):
    number: int
    low: Quantity[Any]
    high: Quantity[Any]
    def __init__(self, number: int, low: _QuantityLike, high: _QuantityLike) -> None: ...

class PtoSpeedTolerance(QuantityRecord):
    nominal: Quantity[Any]
    tolerance: Quantity[Any]
    source: Source
    def __init__(self, nominal: _QuantityLike, tolerance: _QuantityLike, source: Source) -> None: ...

class OverspeedGuard(QuantityRecord):
    nominal: Quantity[Any]
    printed_for: Quantity[Any]
    guard: Quantity[Any]
    source: Source
    def __init__(self, nominal: _QuantityLike, printed_for: _QuantityLike, guard: _QuantityLike, source: Source) -> None: ...

class TipSpeedLine(QuantityRecord):
    scope: RotorMachine
    speed: Quantity[Any]
    remark: str
    source: Source
    def __init__(self, scope: RotorMachine | str, speed: _QuantityLike, remark: str, source: Source) -> None: ...

class Flight(QuantityRecord):
    distance: Quantity[Any]
    time: Quantity[Any]
    top: Quantity[Any]
    landing_speed: Quantity[Any]
    landing_angle: Quantity[Any]
    def __init__(self, distance: _QuantityLike, time: _QuantityLike, top: _QuantityLike, landing_speed: _QuantityLike, landing_angle: _QuantityLike) -> None: ...

class FarthestFlight(QuantityRecord):
    launch_angle: Quantity[Any]
    flight: Flight
    def __init__(self, launch_angle: _QuantityLike, flight: Flight | si.Flight) -> None: ...

class TipSpeedRange(QuantityRecord):
    machine: RotorMachine
    low: Quantity[Any]
    high: Quantity[Any]
    source: Source
    def __init__(self, machine: RotorMachine | str, low: _QuantityLike, high: _QuantityLike, source: Source) -> None: ...

class CuttingSpeed(QuantityRecord):
    low: Quantity[Any]
    high: Quantity[Any]
    meaning: str
    source: Source
    def __init__(self, low: _QuantityLike, high: _QuantityLike, meaning: str, source: Source) -> None: ...

class TorsionImpact(QuantityRecord):
    torque: Quantity[Any]
    stress: Quantity[Any]
    twist: Quantity[Any]
    def __init__(self, torque: _QuantityLike, stress: _QuantityLike, twist: _QuantityLike) -> None: ...

class Overload(QuantityRecord):
    core_diameter: Quantity[Any]
    twist_rate: Quantity[Any]
    permanent_twist: Quantity[Any]
    residual_surface: Quantity[Any]
    residual_core: Quantity[Any]
    def __init__(self, core_diameter: _QuantityLike, twist_rate: _QuantityLike, permanent_twist: _QuantityLike, residual_surface: _QuantityLike, residual_core: _QuantityLike) -> None: ...

class StubSection(QuantityRecord):
    diameter: Quantity[Any]
    notch: NotchFactors
    def __init__(self, diameter: _QuantityLike = ..., notch: NotchFactors = ...) -> None: ...

class StubShaft(QuantityRecord):
    root: StubSection
    groove: StubSection
    bore_diameter: Quantity[Any]
    def __init__(self, root: StubSection | si.StubSection, groove: StubSection | si.StubSection = ..., bore_diameter: _QuantityLike = ...) -> None: ...

class StubLoad(QuantityRecord):
    torque: Quantity[Any]
    torque_amplitude: Quantity[Any]
    joint_angle: Quantity[Any]
    side_force: Quantity[Any]
    overhang: Quantity[Any]
    def __init__(self, torque: _QuantityLike, torque_amplitude: _QuantityLike = ..., joint_angle: _QuantityLike = ..., side_force: _QuantityLike = ..., overhang: _QuantityLike = ...) -> None: ...

class StubStress(QuantityRecord):
    torsion: Quantity[Any]
    bending: Quantity[Any]
    equivalent: Quantity[Any]
    place: StubPlace
    def __init__(self, torsion: _QuantityLike, bending: _QuantityLike, equivalent: _QuantityLike, place: StubPlace | str) -> None: ...

class ShaftStep(QuantityRecord):
    section: SolidSection | TubeSection | ProfileSection | ShapedProfile | UnevenProfileSection | RectangleSection | TriangleSection | OpenSection
    length: Quantity[Any]
    torque: Quantity[Any]
    shear_yield: Quantity[Any]
    shear_modulus: Quantity[Any]
    def __init__(self, section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, length: _QuantityLike, torque: _QuantityLike, shear_yield: _QuantityLike, shear_modulus: _QuantityLike) -> None: ...

class SteppedShaft(QuantityRecord):
    twist: Quantity[Any]
    weakest: int
    stress: Quantity[Any]
    safety_factor: float
    def __init__(self, twist: _QuantityLike, weakest: int, stress: _QuantityLike, safety_factor: _Number) -> None: ...

class SaggingWeight(QuantityRecord):
    weight: Quantity[Any]
    sag: Quantity[Any]
    def __init__(self, weight: _QuantityLike, sag: _QuantityLike) -> None: ...

class SplineLimits(QuantityRecord):
    root_torsion: Quantity[Any]
    tooth_shear: Quantity[Any]
    flank_pressure: Quantity[Any]
    def __init__(self, root_torsion: _QuantityLike, tooth_shear: _QuantityLike, flank_pressure: _QuantityLike) -> None: ...

class SplineAllowables(QuantityRecord):
    shear: Sourced
    flank_straight: Sourced | None
    flank_crowned: Sourced | None
    tensile: Sourced
    def __init__(self, shear: Sourced, flank_straight: Sourced | None, flank_crowned: Sourced | None, tensile: Sourced) -> None: ...

class SplineCapacity(QuantityRecord):
    root_torsion: Quantity[Any]
    tooth_shear: Quantity[Any]
    flank_pressure: Quantity[Any]
    governing: SplineMode
    torque: Quantity[Any]
    lead: float
    def __init__(self, root_torsion: _QuantityLike, tooth_shear: _QuantityLike, flank_pressure: _QuantityLike, governing: SplineMode | str, torque: _QuantityLike, lead: _Number) -> None: ...

class SplineSize(QuantityRecord):
    scale: float
    major_diameter: Quantity[Any]
    governing: SplineMode
    def __init__(self, scale: _Number, major_diameter: _QuantityLike, governing: SplineMode | str) -> None: ...

class InvoluteGeometry(QuantityRecord):
    teeth: int
    module: Quantity[Any]
    pressure_angle: Quantity[Any]
    pitch_diameter: Quantity[Any]
    base_diameter: Quantity[Any]
    circular_pitch: Quantity[Any]
    tooth_thickness: Quantity[Any]
    shaft_major: Quantity[Any]
    shaft_minor: Quantity[Any]
    hub_major: Quantity[Any]
    hub_minor: Quantity[Any]
    engaged_height: Quantity[Any]
    def __init__(self, teeth: int, module: _QuantityLike, pressure_angle: _QuantityLike, pitch_diameter: _QuantityLike, base_diameter: _QuantityLike, circular_pitch: _QuantityLike, tooth_thickness: _QuantityLike, shaft_major: _QuantityLike, shaft_minor: _QuantityLike, hub_major: _QuantityLike, hub_minor: _QuantityLike, engaged_height: _QuantityLike) -> None: ...

class SleeveStress(QuantityRecord):
    wall: Quantity[Any]
    radial: Quantity[Any]
    centrifugal: Quantity[Any]
    tooth_bend: Quantity[Any]
    tensile: Quantity[Any]
    def __init__(self, wall: _QuantityLike, radial: _QuantityLike, centrifugal: _QuantityLike, tooth_bend: _QuantityLike, tensile: _QuantityLike) -> None: ...

class TelescopeThrust(QuantityRecord):
    front_axial: Quantity[Any]
    front_side: Quantity[Any]
    rear_axial: Quantity[Any]
    rear_side: Quantity[Any]
    def __init__(self, front_axial: _QuantityLike, front_side: _QuantityLike, rear_axial: _QuantityLike, rear_side: _QuantityLike) -> None: ...

class SplineSizes(QuantityRecord):
    teeth: int
    major_diameter: Quantity[Any]
    root_diameter: Quantity[Any]
    bearing_diameter: Quantity[Any]
    tooth_thickness: Quantity[Any]
    engaged_height: Quantity[Any]
    length: Quantity[Any]
    sleeve_root: Quantity[Any]
    flank_angle: Quantity[Any]
    def __init__(self, teeth: int, major_diameter: _QuantityLike, root_diameter: _QuantityLike, bearing_diameter: _QuantityLike, tooth_thickness: _QuantityLike, engaged_height: _QuantityLike, length: _QuantityLike, sleeve_root: _QuantityLike, flank_angle: _QuantityLike = ...) -> None: ...

class SplineStress(QuantityRecord):
    root_torsion: Quantity[Any]
    tooth_shear: Quantity[Any]
    flank_pressure: Quantity[Any]
    def __init__(self, root_torsion: _QuantityLike, tooth_shear: _QuantityLike, flank_pressure: _QuantityLike) -> None: ...

class StraightSpline(QuantityRecord):
    count: int
    major_diameter: Quantity[Any]
    minor_diameter: Quantity[Any]
    tooth_width: Quantity[Any]
    length: Quantity[Any]
    def __init__(self, count: int, major_diameter: _QuantityLike, minor_diameter: _QuantityLike, tooth_width: _QuantityLike, length: _QuantityLike) -> None: ...

class InvoluteSpline(QuantityRecord):
    teeth: int
    module: Quantity[Any]
    pressure_angle: Quantity[Any]
    length: Quantity[Any]
    root: SplineRoot
    def __init__(self, teeth: int, module: _QuantityLike, pressure_angle: _QuantityLike, length: _QuantityLike, root: SplineRoot | str = ...) -> None: ...

class MeasuredSpline(QuantityRecord):
    sizes: SplineSizes
    def __init__(self, sizes: SplineSizes | si.SplineSizes) -> None: ...

def gear_uses(case: Case) -> tuple[GearUse, ...]: ...
def economy_answer(case: Case, season: SeasonUse | si.SeasonUse) -> EconomyAnswer: ...
def is_remembered(standing: Standing | str) -> bool: ...
def fuel_cost(rate: _QuantityLike, time: _QuantityLike, price_per_litre: Money) -> Money: ...
def hourly_cost(year: YearOfUse | si.YearOfUse, repair_class: RepairClass | si.RepairClass | str) -> Validated: ...
def real_interest(interest: _Number, inflation: _Number) -> Any: ...
def real_interest_by_difference(interest: _Number, inflation: _Number) -> Any: ...
def capital_recovery_factor(interest: _Number, years: _Number) -> Any: ...
def capital_recovery(price: Money, salvage: Money, interest: _Number, years: _Number) -> Money: ...
def taxes_insurance_housing(price: Money, salvage: Money, rate: _Number = ...) -> Money: ...
def ownership_cost(price: Money, salvage: Money, interest: _Number, years: _Number, rate: _Number = ...) -> OwnershipCost: ...
def ownership_share(salvage_share: _Number, years: _Number, interest: _Number, other: _Number = ...) -> Any: ...
def payback_years(price: Money, saving: Money, interest: _Number) -> Validated: ...
def value_classes() -> tuple[ValueClass, ...]: ...
def value_class_named(name: str) -> ValueClass: ...
def tractor_value_class(pto_power: _QuantityLike) -> ValueClass: ...
def remaining_value(value_class: ValueClass | str, years: _Number, annual_use: _QuantityLike) -> Validated: ...
def older_value_class_named(name: str) -> OlderValueClass: ...
def older_remaining_value(value_class: OlderValueClass | str, years: _Number) -> Any: ...
def repair_classes() -> tuple[RepairClass, ...]: ...
def repair_class_named(name: str) -> RepairClass: ...
def accumulated_repair(repair_class: RepairClass | si.RepairClass | str, use: _QuantityLike) -> Validated: ...
def repair_cost(list_price: Money, repair_class: RepairClass | si.RepairClass | str, from_: _QuantityLike, to: _QuantityLike) -> Validated: ...
def branch_envelopes(branches: Iterable[Branch | si.Branch], torque: _QuantityLike, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> tuple[BranchEnvelope, ...]: ...
def seen_from(part: Pose | si.Pose, driveline: Driveline | si.Driveline) -> Driveline: ...
def chain_at(first: Driveline | si.Driveline, second: Driveline | si.Driveline, between: _QuantityLike, pose: Pose | si.Pose) -> ChainState: ...
def chain_envelope(first: Driveline | si.Driveline, second: Driveline | si.Driveline, between: _QuantityLike, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> NumberExtreme: ...
def mounted_chain_envelope(first: Driveline | si.Driveline, second: Driveline | si.Driveline, between: _QuantityLike, linkage: ThreePointLinkage | si.ThreePointLinkage, range: MountedRange | si.MountedRange, wheel: SupportWheel | si.SupportWheel | None = ..., options: EnvelopeOptions | si.EnvelopeOptions = ...) -> MountedChainEnvelope: ...
def with_adaptor(driveline: Driveline | si.Driveline, length: _QuantityLike) -> Driveline: ...
def adaptor_effect(driveline: Driveline | si.Driveline, length: _QuantityLike, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> EnvelopeChange: ...
def least_clearance(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, around: Surroundings | si.Surroundings, gap: _QuantityLike = ..., budget: ArrayLike = ...) -> LengthExtreme: ...
def mounted_least_clearance(driveline: Driveline | si.Driveline, linkage: ThreePointLinkage | si.ThreePointLinkage, range: MountedRange | si.MountedRange, around: MountedSurroundings | si.MountedSurroundings, gap: _QuantityLike = ..., budget: ArrayLike = ...) -> MountedClearance: ...
def tolerant_mounted_least_clearance(driveline: Driveline | si.Driveline, linkage: ThreePointLinkage | si.ThreePointLinkage, tolerance: MountedTolerance | si.MountedTolerance, range: MountedRange | si.MountedRange, around: MountedSurroundings | si.MountedSurroundings, gap: _QuantityLike = ..., budget: ArrayLike = ...) -> MountedClearance: ...
def turn_limit_of_surroundings(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, around: Surroundings | si.Surroundings, clearance: _QuantityLike, fineness: _QuantityLike = ...) -> TurnLimits: ...
def turn_limit_with_surroundings(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, limits: DrivelineLimits | si.DrivelineLimits, around: Surroundings | si.Surroundings | None, clearance: _QuantityLike, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> Validated: ...
def front_joint_position(driveline: Driveline | si.Driveline) -> Position: ...
def rear_joint_position(driveline: Driveline | si.Driveline) -> Position: ...
def overlap_at(telescope: Telescope | si.Telescope, length: _QuantityLike) -> Quantity[Any]: ...
def greatest_length(telescope: Telescope | si.Telescope) -> Quantity[Any] | None: ...
def driveline_envelope(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> DrivelineEnvelope: ...
def lift_limit(driveline: Driveline | si.Driveline, linkage: ThreePointLinkage | si.ThreePointLinkage, range: MountedRange | si.MountedRange, limits: DrivelineLimits | si.DrivelineLimits, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> LiftLimit: ...
def mounted_driveline_envelope(driveline: Driveline | si.Driveline, linkage: ThreePointLinkage | si.ThreePointLinkage, range: MountedRange | si.MountedRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> MountedEnvelope: ...
def tolerant_mounted_driveline_envelope(driveline: Driveline | si.Driveline, linkage: ThreePointLinkage | si.ThreePointLinkage, tolerance: MountedTolerance | si.MountedTolerance, range: MountedRange | si.MountedRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> MountedEnvelope: ...
def slack_driveline_envelope(driveline: Driveline | si.Driveline, linkage: ThreePointLinkage | si.ThreePointLinkage, wheel: SupportWheel | si.SupportWheel, tolerance: MountedTolerance | si.MountedTolerance, range: MountedRange | si.MountedRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> MountedEnvelope: ...
def equal_angle_pin_distance(driveline: Driveline | si.Driveline) -> Quantity[Any]: ...
def equal_angle_rear_joint(driveline: Driveline | si.Driveline, hitch: DrawbarHitch | si.DrawbarHitch) -> Quantity[Any]: ...
def placement(driveline: Driveline | si.Driveline, hitch: DrawbarHitch | si.DrawbarHitch, range: AttitudeRange | si.AttitudeRange, parameter: PlacementParameter | str, value: _QuantityLike, goal: PlacementGoal | str, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> Placement: ...
def best_placement(driveline: Driveline | si.Driveline, hitch: DrawbarHitch | si.DrawbarHitch, range: AttitudeRange | si.AttitudeRange, parameter: PlacementParameter | str, places: Iterable[_QuantityLike], goal: PlacementGoal | str, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> Placement: ...
def best_placement_between(driveline: Driveline | si.Driveline, hitch: DrawbarHitch | si.DrawbarHitch, range: AttitudeRange | si.AttitudeRange, parameter: PlacementParameter | str, from_: _QuantityLike, to: _QuantityLike, goal: PlacementGoal | str, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> Placement: ...
def planar_centre_distance(ahead: _QuantityLike, behind: _QuantityLike, turn: _QuantityLike) -> Quantity[Any]: ...
def planar_joint_angles(ahead: _QuantityLike, behind: _QuantityLike, turn: _QuantityLike) -> PlanarJointAngles: ...
def driveline_at(driveline: Driveline | si.Driveline, pose: Pose | si.Pose) -> DrivelineState: ...
def envelope_table(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, yaw_points: int, pitch_points: int, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> tuple[EnvelopeTableRow, ...]: ...
def tolerant_driveline_envelope(driveline: Driveline | si.Driveline, pin: Position | si.Position, tolerance: DrivelineTolerance | si.DrivelineTolerance, range: AttitudeRange | si.AttitudeRange, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> TolerantEnvelope: ...
def tube_lengths(telescope: Telescope | si.Telescope, longest: _QuantityLike, shortest: _QuantityLike, rules: TubeRules | si.TubeRules = ...) -> TubeLengths: ...
def tube_advice(telescope: Telescope | si.Telescope, longest: LengthExtreme | si.LengthExtreme, shortest: LengthExtreme | si.LengthExtreme, rules: TubeRules | si.TubeRules = ...) -> TubeAdvice: ...
def check_length(driveline: Driveline | si.Driveline, pose: Pose | si.Pose, measured: _QuantityLike, tolerance: _QuantityLike, model_tolerance: _QuantityLike) -> LengthCheck: ...
def checked_tube_lengths(telescope: Telescope | si.Telescope, longest: LengthExtreme | si.LengthExtreme, shortest: LengthExtreme | si.LengthExtreme, checks: Iterable[LengthCheck | si.LengthCheck], rules: TubeRules | si.TubeRules = ...) -> Validated: ...
def check_limits(envelope: DrivelineEnvelope | si.DrivelineEnvelope, limits: DrivelineLimits | si.DrivelineLimits) -> LimitCheck: ...
def turn_limit(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, limits: DrivelineLimits | si.DrivelineLimits, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> TurnLimits: ...
def tolerant_turn_limit(driveline: Driveline | si.Driveline, pin: Position | si.Position, tolerance: DrivelineTolerance | si.DrivelineTolerance, range: AttitudeRange | si.AttitudeRange, limits: DrivelineLimits | si.DrivelineLimits, fineness: _QuantityLike = ..., options: EnvelopeOptions | si.EnvelopeOptions = ...) -> TurnLimits: ...
def turn_limit_over_pitch(driveline: Driveline | si.Driveline, pin: Position | si.Position, range: AttitudeRange | si.AttitudeRange, limits: DrivelineLimits | si.DrivelineLimits, points: int, options: EnvelopeOptions | si.EnvelopeOptions = ...) -> tuple[TurnLimitAtPitch, ...]: ...
def wide_angle_far_angle(offset: _QuantityLike, behind: _QuantityLike, turn: _QuantityLike) -> Quantity[Any]: ...
def wide_angle_centre_shift(yoke_length: _QuantityLike, angle: _QuantityLike) -> Quantity[Any]: ...
def wide_angle_shortening(yoke_length: _QuantityLike, angle: _QuantityLike) -> Quantity[Any]: ...
def wide_angle_residual(angle: _QuantityLike, imbalance: _QuantityLike) -> Quantity[Any]: ...
def kernel_is_available(kernel: ProcessorKernel | str) -> bool: ...
def driveline_sweep(driveline: Driveline | si.Driveline, pin: Position | si.Position, grid: AttitudeGrid | si.AttitudeGrid, threads: int = ..., kernel: ProcessorKernel | str = ...) -> DrivelineSweep: ...
def beam_segment(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ShapedProfile | si.ShapedProfile, length: _QuantityLike, youngs_modulus: _QuantityLike, density: _QuantityLike) -> BeamSegment: ...
def beam_critical_speeds(line: BeamLine | si.BeamLine, count: int = ..., elements: int = ...) -> tuple[Quantity[Any], ...]: ...
def slender_tube_excess(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection, length: _QuantityLike) -> Validated: ...
def whirl_line(telescope: WhirlTelescope | si.WhirlTelescope, length: _QuantityLike, middle_share: _Number = ...) -> BeamLine: ...
def telescope_critical_speed(telescope: WhirlTelescope | si.WhirlTelescope, length: _QuantityLike) -> Quantity[Any]: ...
def least_critical_speed(telescope: WhirlTelescope | si.WhirlTelescope, shortest: _QuantityLike, longest: _QuantityLike, speed: _QuantityLike) -> WhirlExtreme: ...
def plain_train(inertias: Iterable[_QuantityLike], stiffnesses: Iterable[_QuantityLike]) -> TorsionalTrain: ...
def train_speed_ratios(train: TorsionalTrain | si.TorsionalTrain) -> tuple[float, ...]: ...
def torsional_modes(train: TorsionalTrain | si.TorsionalTrain) -> tuple[TorsionalMode, ...]: ...
def mode_nodes(train: TorsionalTrain | si.TorsionalTrain, mode: TorsionalMode | si.TorsionalMode) -> tuple[ModeNode, ...]: ...
def torque_keeps_its_sense(train: TorsionalTrain | si.TorsionalTrain, steady: Iterable[_QuantityLike], swing: Iterable[_QuantityLike]) -> str | None: ...
def two_inertia_frequency(first: _QuantityLike, second: _QuantityLike, stiffness: _QuantityLike) -> Quantity[Any]: ...
def equivalent_shaft_length(steps: Iterable[StepLength | si.StepLength], section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection) -> Quantity[Any]: ...
def joint_pulse(angle: _QuantityLike, pulse: ArrayLike = ...) -> Quantity[Any]: ...
def interference_table(train: TorsionalTrain | si.TorsionalTrain, orders: Iterable[ExcitationOrder], speeds: SpeedRange | si.SpeedRange) -> tuple[Interference, ...]: ...
def forced_response(train: TorsionalTrain | si.TorsionalTrain, excitation: TorsionalExcitation | si.TorsionalExcitation, steady: Iterable[_QuantityLike] = ...) -> Validated: ...
def shaft_damping(stiffness: _QuantityLike, loss_factor: _Number, frequency: _QuantityLike) -> Quantity[Any]: ...
def joint_torque_swing(stiffness: _QuantityLike, inertia: _QuantityLike, angle: _QuantityLike, speed: _QuantityLike) -> Validated: ...
def simulation_end_text(end: SimulationEnd | str) -> str: ...
def simulate(line: PtoLine | si.PtoLine, settings: SimulationSettings | si.SimulationSettings = ...) -> SimulationResult: ...
def torque_sn_line(line: SnLine | si.SnLine, diameter: _QuantityLike, notch_factor: _Number = ..., bore_ratio: _Number = ...) -> TorqueSnLine: ...
def surface_constants(finish: SurfaceFinish | str) -> Sourced: ...
def load_factor(load: LoadKind | str) -> Sourced: ...
def specimen_endurance(ultimate: _QuantityLike) -> Quantity[Any]: ...
def surface_factor(finish: SurfaceFinish | str, ultimate: _QuantityLike) -> Any: ...
def size_factor(diameter: _QuantityLike) -> Validated: ...
def temperature_factor(above_zero_celsius: _QuantityLike) -> Validated: ...
def reliability_factor(reliability: _Number) -> Any: ...
def endurance_factors(ultimate: _QuantityLike, conditions: EnduranceConditions | si.EnduranceConditions) -> Validated: ...
def endurance_limit(ultimate: _QuantityLike, factors: EnduranceFactors) -> Quantity[Any]: ...
def shear_endurance(endurance: _QuantityLike, ratio: _Number = ...) -> Quantity[Any]: ...
def damage_life(damage: _Number, duration: _QuantityLike) -> Quantity[Any]: ...
def life_class(life: _QuantityLike) -> LifeClass: ...
def uses_yield(rule: MeanStressRule | str) -> bool: ...
def fatigue_safety_factor(amplitude: _QuantityLike, mean: _QuantityLike, strength: FatigueStrength | si.FatigueStrength, rule: MeanStressRule | str) -> Any: ...
def notch_sensitivity(ultimate: _QuantityLike, root_radius: _QuantityLike, load: NotchLoad | str) -> Validated: ...
def notch_factor(concentration: _Number, sensitivity: _Number = ...) -> Any: ...
def shaft_stresses(load: ShaftLoad | si.ShaftLoad, diameter: _QuantityLike, notch: NotchFactors = ..., bore_ratio: _Number = ...) -> ShaftStresses: ...
def shaft_fatigue_safety_factor(load: ShaftLoad | si.ShaftLoad, diameter: _QuantityLike, strength: FatigueStrength | si.FatigueStrength, rule: MeanStressRule | str, notch: NotchFactors = ..., bore_ratio: _Number = ...) -> Any: ...
def shaft_yield_safety_factor(load: ShaftLoad | si.ShaftLoad, diameter: _QuantityLike, yield_: _QuantityLike, notch: NotchFactors = ..., bore_ratio: _Number = ...) -> Any: ...
def fatigue_diameter(load: ShaftLoad | si.ShaftLoad, strength: FatigueStrength | si.FatigueStrength, rule: MeanStressRule | str, safety_factor: _Number, notch: NotchFactors = ..., bore_ratio: _Number = ...) -> Quantity[Any]: ...
def torsion_fatigue_safety_factor(torque_amplitude: _QuantityLike, torque_mean: _QuantityLike, diameter: _QuantityLike, shear_endurance: _QuantityLike, shear_ultimate: _QuantityLike, school: TorsionSchool | str, notch_factor: _Number = ..., bore_ratio: _Number = ...) -> Any: ...
def torsion_fatigue_diameter(torque_amplitude: _QuantityLike, torque_mean: _QuantityLike, shear_endurance: _QuantityLike, shear_ultimate: _QuantityLike, school: TorsionSchool | str, safety_factor: _Number, notch_factor: _Number = ..., bore_ratio: _Number = ...) -> Quantity[Any]: ...
def strength_fraction(ultimate: _QuantityLike) -> Validated: ...
def sn_line(strength: FatigueStrength | si.FatigueStrength, fraction: _Number) -> SnLine: ...
def sn_line_through(first: _QuantityLike, first_cycles: _Number, second: _QuantityLike, second_cycles: _Number, ultimate: _QuantityLike, yield_: _QuantityLike) -> SnLine: ...
def equivalent_reversed(amplitude: _QuantityLike, mean: _QuantityLike, line: SnLine | si.SnLine, rule: MeanStressRule | str) -> Validated: ...
def cycles_to_failure(amplitude: _QuantityLike, line: SnLine | si.SnLine) -> Validated: ...
def finite_life_strength(endurance: _QuantityLike, cycles: _Number, exponent: _Number = ...) -> Validated: ...
def damaged_endurance(line: SnLine | si.SnLine, amplitude: _QuantityLike, used: _Number, method: DamageMethod | str) -> Validated: ...
def duty_life(duties: Iterable[Duty | si.Duty], line: TorqueSnLine | si.TorqueSnLine, rule: MeanStressRule | str, small_cycles: SmallCycles | str = ...) -> Validated: ...
def along(from_: Position | si.Position, direction: Direction, length: _QuantityLike) -> Position: ...
def angle_between(a: Direction, b: Direction) -> Quantity[Any]: ...
def in_implement(pose: Pose | si.Pose, in_tractor: Position | si.Position) -> Position: ...
def distance(from_: Position | si.Position, to: Position | si.Position) -> Quantity[Any]: ...
def either_side(angle: _QuantityLike) -> AngleRange: ...
def excess(coupling: AngleCoupling | si.AngleCoupling, attitude: Attitude | si.Attitude) -> Quantity[Any]: ...
def contains(range: AttitudeRange | si.AttitudeRange, attitude: Attitude | si.Attitude) -> bool: ...
def with_less_roll_at_full_turn(range: AttitudeRange | si.AttitudeRange, share: _Number) -> AttitudeRange: ...
def rotation(attitude: Attitude | si.Attitude) -> tuple[tuple[float, ...], ...]: ...
def attitude_of(matrix: Iterable[Iterable[_Number]]) -> Attitude: ...
def in_tractor(pose: Pose | si.Pose, in_implement: Position | si.Position | Direction) -> Position | Direction: ...
def mirrored(item: Position | si.Position | Direction | Attitude | si.Attitude | Pose | si.Pose | AttitudeRange | si.AttitudeRange | Driveline | si.Driveline) -> Position | Direction | Attitude | Pose | AttitudeRange | Driveline: ...
def direction_ahead(turn: _QuantityLike, rise: _QuantityLike) -> Direction: ...
def hitch_category(number: int, narrow: bool = ...) -> HitchCategory: ...
def pin_position(hitch: DrawbarHitch | si.DrawbarHitch) -> Position: ...
def trailed_pose(hitch: DrawbarHitch | si.DrawbarHitch, attitude: Attitude | si.Attitude) -> Pose: ...
def steady_turn_angle(radius: _QuantityLike, overhang: _QuantityLike, tongue: _QuantityLike) -> Quantity[Any]: ...
def hollow_pitch(wheels: WheelPlaces | si.WheelPlaces, radius: _QuantityLike) -> Quantity[Any]: ...
def crest_pitch(wheels: WheelPlaces | si.WheelPlaces, radius: _QuantityLike) -> Quantity[Any]: ...
def wheel_drop_roll(drop: _QuantityLike, track: _QuantityLike) -> Quantity[Any]: ...
def side_slope_roll(tractor_slope: _Number, implement_slope: _Number) -> Quantity[Any]: ...
def four_bar_angles(crank: _QuantityLike, coupler: _QuantityLike, rocker: _QuantityLike, ground: _QuantityLike, crank_angle: _QuantityLike, branch: FourBarBranch | str) -> FourBarAngles: ...
def mounted_pose(linkage: ThreePointLinkage | si.ThreePointLinkage, position: LinkagePosition | si.LinkagePosition) -> Pose: ...
def transport_pitch(linkage: ThreePointLinkage | si.ThreePointLinkage, transport_lift: _QuantityLike) -> Quantity[Any]: ...
def top_link_for(linkage: ThreePointLinkage | si.ThreePointLinkage, lift: _QuantityLike, pitch: _QuantityLike = ...) -> Quantity[Any]: ...
def slack_pose(linkage: ThreePointLinkage | si.ThreePointLinkage, wheel: SupportWheel | si.SupportWheel, lift: _QuantityLike) -> SlackPose: ...
def steered_pose(headstock: Pose | si.Pose, pivot: Position | si.Position, steer: _QuantityLike) -> Pose: ...
def steered_wheel(wheel: SupportWheel | si.SupportWheel, pivot: Position | si.Position, steer: _QuantityLike, roll: _QuantityLike = ...) -> SupportWheel: ...
def joint_acceleration(angle: _QuantityLike, rotation: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def joint_peak_acceleration(angle: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def joint_peak_acceleration_rotation(angle: _QuantityLike) -> Quantity[Any]: ...
def joint_angle_for_acceleration(limit: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def joint_bearing_force(arm: _QuantityLike, torque: _QuantityLike) -> Quantity[Any]: ...
def joint_peak_bearing_force(arm: _QuantityLike, torque: _QuantityLike, angle: _QuantityLike) -> Quantity[Any]: ...
def joint_bearing_life(load_rating: _QuantityLike, arm: _QuantityLike, torque: _QuantityLike, speed: _QuantityLike, angle: _QuantityLike) -> Quantity[Any]: ...
def joint_bearing_life_checked(load_rating: _QuantityLike, arm: _QuantityLike, torque: _QuantityLike, speed: _QuantityLike, angle: _QuantityLike) -> Validated: ...
def joint_mean_duty(duties: Iterable[JointDuty | si.JointDuty]) -> JointDuty: ...
def joint_bearing_life_of_duties(load_rating: _QuantityLike, arm: _QuantityLike, duties: Iterable[JointDuty | si.JointDuty]) -> Quantity[Any]: ...
def joint_couples(torque: _QuantityLike, angle: _QuantityLike, rotation: _QuantityLike) -> JointCouples: ...
def joint_peak_couples(torque: _QuantityLike, angle: _QuantityLike) -> JointCouples: ...
def couple_bearing_force(couple: _QuantityLike, span: _QuantityLike) -> Quantity[Any]: ...
def joint_speed_ratio(angle: _QuantityLike, rotation: _QuantityLike) -> Any: ...
def joint_speed_variation(angle: _QuantityLike) -> Any: ...
def joint_angle_for_variation(variation: _Number) -> Quantity[Any]: ...
def joint_output_rotation(angle: _QuantityLike, rotation: _QuantityLike) -> Quantity[Any]: ...
def joint_displacement(angle: _QuantityLike, rotation: _QuantityLike) -> Quantity[Any]: ...
def joint_peak_displacement(angle: _QuantityLike) -> Quantity[Any]: ...
def joint_equal_speed_rotation(angle: _QuantityLike) -> Quantity[Any]: ...
def equivalent_joint_angle(front: _QuantityLike, rear: _QuantityLike, phase: _QuantityLike) -> Quantity[Any]: ...
def equivalent_joint_angle_small(front: _QuantityLike, rear: _QuantityLike, phase: _QuantityLike) -> Validated: ...
def joint_pair_extremes(front: _QuantityLike, rear: _QuantityLike, phase: _QuantityLike, speed: _QuantityLike) -> JointPairExtremes: ...
def joint_pair_speed_ratio(front: _QuantityLike, rear: _QuantityLike, phase: _QuantityLike, rotation: _QuantityLike) -> Any: ...
def joint_pair_acceleration(front: _QuantityLike, rear: _QuantityLike, phase: _QuantityLike, rotation: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def relative_phase(yoke_phase: _QuantityLike, plane_angle: _QuantityLike) -> Quantity[Any]: ...
def spline_step(positions: ArrayLike) -> Quantity[Any]: ...
def spline_position(front: _QuantityLike, rear: _QuantityLike, plane_angle: _QuantityLike, positions: ArrayLike, steps: ArrayLike) -> SplinePosition: ...
def best_spline_position(front: _QuantityLike, rear: _QuantityLike, plane_angle: _QuantityLike, positions: ArrayLike) -> SplinePosition: ...
def equivalent_row_angle(row: Iterable[JointInRow | si.JointInRow]) -> Quantity[Any]: ...
def equivalent_row_angle_small(row: Iterable[JointInRow | si.JointInRow]) -> Validated: ...
def bolt_grades() -> tuple[BoltGrade, ...]: ...
def find_bolt_grade(name: str, diameter: _QuantityLike) -> BoltGrade | None: ...
def materials() -> tuple[Material, ...]: ...
def find_material(name: str, condition: str) -> Material | None: ...
def strength_at_section(material: Material | si.Material, diameter: _QuantityLike) -> Validated: ...
def shear_ratio(ratio: ShearRatio | str) -> Sourced: ...
def shear_yield(yield_: _QuantityLike, ratio: _Number | ShearRatio | str = ...) -> Quantity[Any]: ...
def shear_ultimate(ultimate: _QuantityLike, ratio: _Number | ShearRatio | str = ...) -> Quantity[Any]: ...
def torque_band(nominal: _QuantityLike, scatter: _Number) -> TorqueBand: ...
def device_setting(low: _QuantityLike, high: _QuantityLike) -> DeviceSetting: ...
def disc_clutch_torque(outer_radius: _QuantityLike, inner_radius: _QuantityLike, axial_force: _QuantityLike, friction: _Number, surfaces: ArrayLike, contact: ClutchContact | str) -> Quantity[Any]: ...
def disc_clutch_force(outer_radius: _QuantityLike, inner_radius: _QuantityLike, torque: _QuantityLike, friction: _Number, surfaces: ArrayLike, contact: ClutchContact | str) -> Quantity[Any]: ...
def disc_clutch_pressure(outer_radius: _QuantityLike, inner_radius: _QuantityLike, axial_force: _QuantityLike, contact: ClutchContact | str) -> Quantity[Any]: ...
def disc_clutch_force_at_pressure(outer_radius: _QuantityLike, inner_radius: _QuantityLike, pressure: _QuantityLike, contact: ClutchContact | str) -> Quantity[Any]: ...
def spring_force(springs: ArrayLike, rate: _QuantityLike, compression: _QuantityLike) -> Quantity[Any]: ...
def spring_compression(force: _QuantityLike, springs: ArrayLike, rate: _QuantityLike, compression_at_bind: _QuantityLike) -> Validated: ...
def clutch_engagement(inertia: _QuantityLike, speed: _QuantityLike, clutch_torque: _QuantityLike, load_torque: _QuantityLike) -> ClutchEngagement: ...
def free_clutch_engagement(driving_inertia: _QuantityLike, driving_speed: _QuantityLike, driven_inertia: _QuantityLike, driven_speed: _QuantityLike, clutch_torque: _QuantityLike, drive_torque: _QuantityLike = ..., load_torque: _QuantityLike = ...) -> ClutchEngagement: ...
def slip_power(clutch_torque: _QuantityLike, slip_speed: _QuantityLike) -> Quantity[Any]: ...
def clutch_temperature_rise(heat: _QuantityLike, mass: _QuantityLike, specific_heat: _QuantityLike = ...) -> Quantity[Any]: ...
def slip_time_for_rise(clutch_torque: _QuantityLike, slip_speed: _QuantityLike, mass: _QuantityLike, rise: _QuantityLike, specific_heat: _QuantityLike = ...) -> Quantity[Any]: ...
def referred_inertia(inertia: _QuantityLike, ratio: _Number) -> Quantity[Any]: ...
def overrun_torque(inertia: _QuantityLike, speed: _QuantityLike, stopping_time: _QuantityLike, friction_torque: _QuantityLike) -> Quantity[Any]: ...
def overrun_coast(inertia: _QuantityLike, speed: _QuantityLike, friction_torque: _QuantityLike, windage_torque: _QuantityLike = ..., clutch_drag: _QuantityLike = ...) -> OverrunCoast: ...
def cut_out_torque(trip_torque: _QuantityLike, least_share: _Number = ..., greatest_share: _Number = ...) -> TorqueBand: ...
def practice_band(practice: SettingPractice, torque: _QuantityLike) -> TorqueBand: ...
def shear_bolt_torque(diameter: _QuantityLike, arm: _QuantityLike, shear_strength: _QuantityLike, bolts: ArrayLike, planes: ArrayLike) -> Quantity[Any]: ...
def shear_bolt_diameter(torque: _QuantityLike, arm: _QuantityLike, shear_strength: _QuantityLike, bolts: ArrayLike, planes: ArrayLike) -> Quantity[Any]: ...
def shear_bolt_band(diameter: _QuantityLike, arm: _QuantityLike, ultimate_min: _QuantityLike, ultimate_max: _QuantityLike, bolts: ArrayLike, planes: ArrayLike, least_ratio: _Number = ..., greatest_ratio: _Number = ...) -> TorqueBand: ...
def shear_bolt_band_of_grade(diameter: _QuantityLike, arm: _QuantityLike, grade: BoltGrade | si.BoltGrade, bolts: ArrayLike, planes: ArrayLike, least_ratio: _Number = ..., greatest_ratio: _Number = ...) -> TorqueBand: ...
def thread_depth_in_pitches(system: ThreadSystem | str) -> Sourced: ...
def coarse_pitches() -> tuple[CoarsePitch, ...]: ...
def coarse_pitch(system: ThreadSystem | str, diameter: _QuantityLike) -> Sourced | None: ...
def thread_stress_diameter(diameter: _QuantityLike, pitch: _QuantityLike, system: ThreadSystem | str = ...) -> Quantity[Any]: ...
def referred_yield(yield_torque: _QuantityLike, speed_ratio: _Number, efficiency: _Number = ...) -> Quantity[Any]: ...
def device_window(peak_working_torque: _QuantityLike, parts: Iterable[ChainPart | si.ChainPart], scatter: _Number, work_margin: _Number, strength_margin: _Number) -> DeviceWindow: ...
def pto_power(power: NetEnginePower | si.NetEnginePower | GrossEnginePower | si.GrossEnginePower) -> PtoPowerRange: ...
def powers_by_rule_from_engine(engine: _QuantityLike) -> RulePowers: ...
def powers_by_rule_from_drawbar(drawbar: _QuantityLike) -> RulePowers: ...
def drawbar_of_pto(traction: Traction | str, ground: Ground | str) -> Sourced: ...
def equivalent_pto_power(drawbar: _QuantityLike, transmission: _Number, traction: _Number, pto: _QuantityLike, hydraulic: _QuantityLike = ..., electric: _QuantityLike = ...) -> PtoPower: ...
def pulling_power(draft: _QuantityLike, mass: _QuantityLike, slope: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def power_reserve(available: _QuantityLike, needed: _QuantityLike) -> Any: ...
def torque_reserve(available: _QuantityLike, needed: _QuantityLike) -> Any: ...
def economy_saving(rated_power: _QuantityLike, power: _QuantityLike, plain: _QuantityLike, economy: _QuantityLike, full_throttle: _QuantityLike) -> Validated: ...
def engine_line(rated_power: PtoPower | si.PtoPower, rated_speed: _QuantityLike, torque_rise: _Number, peak_speed: _QuantityLike, high_idle: _QuantityLike) -> EngineLine: ...
def engine_line_without_rise(rated_power: PtoPower | si.PtoPower, rated_speed: _QuantityLike, high_idle: _QuantityLike) -> EngineLine: ...
def torque_rise(peak: _QuantityLike, rated: _QuantityLike) -> Any: ...
def lugged_torque(rated: _QuantityLike, torque_rise: _Number) -> Quantity[Any]: ...
def governor_regulation(high_idle: _QuantityLike, rated_speed: _QuantityLike) -> Any: ...
def fuel_rate(rated_power: _QuantityLike, load_fraction: _Number, speed_fraction: _Number = ...) -> Quantity[Any]: ...
def fuel_rate_checked(rated_power: _QuantityLike, load_fraction: _Number, speed_fraction: _Number = ...) -> Validated: ...
def specific_fuel(load_fraction: _Number, speed_fraction: _Number = ...) -> Quantity[Any]: ...
def measured_fuel_rate(power: _QuantityLike, specific_use: _QuantityLike) -> Quantity[Any]: ...
def average_fuel_rate(rated_power: _QuantityLike) -> Quantity[Any]: ...
def older_fuel_rate(rated_power: _QuantityLike, load_fraction: _Number) -> Validated: ...
def engine_oil_rate(rated_engine_power: _QuantityLike) -> Quantity[Any]: ...
def implement_power(machine: Machine | si.Machine | str, width: _QuantityLike, feed_rate: FeedRate | si.FeedRate = ...) -> ImplementPower: ...
def widest_implement(machine: Machine | si.Machine | str, power: _QuantityLike, reserve: _Number, feed_rate: FeedRate | si.FeedRate = ...) -> WidthLimit: ...
def greatest_feed(machine: Machine | si.Machine | str, power: _QuantityLike, reserve: _Number, width: _QuantityLike = ...) -> FeedLimit: ...
def smallest_tractor(machine: Machine | si.Machine | str, width: _QuantityLike, reserve: _Number, feed_rate: FeedRate | si.FeedRate = ...) -> TractorLimit: ...
def fastest_work(machine: Machine | si.Machine | str, power: _QuantityLike, reserve: _Number, speed: _QuantityLike, feed_rate: FeedRate | si.FeedRate, width: _QuantityLike = ...) -> SpeedLimit: ...
def feed_basis_name(basis: FeedBasis | str) -> str: ...
def wet_feed(rate: _QuantityLike) -> FeedRate: ...
def dry_feed(rate: _QuantityLike) -> FeedRate: ...
def dry_matter(feed: FeedRate | si.FeedRate, moisture: _Number) -> FeedRate: ...
def note_factor(machine: Machine | si.Machine) -> float: ...
def machines() -> tuple[Machine, ...]: ...
def find_machine(name: str) -> Machine | None: ...
def nearest_machines(name: str) -> tuple[str, ...]: ...
def machine_named(name: str) -> Machine: ...
def pto_option(name: str, nominal_speed: _QuantityLike, engine_speed: _QuantityLike) -> PtoOption: ...
def pto_option_by_ratio(name: str, nominal_speed: _QuantityLike, ratio: _Number) -> PtoOption: ...
def pto_option_of_both(name: str, nominal_speed: _QuantityLike, engine_speed: _QuantityLike, ratio: _Number) -> PtoOption: ...
def pto_speed(option: PtoOption | si.PtoOption, engine_speed: _QuantityLike) -> Quantity[Any]: ...
def engine_speed_at(option: PtoOption | si.PtoOption, pto_speed: _QuantityLike) -> Quantity[Any]: ...
def pto_output(option: PtoOption | si.PtoOption, line: EngineLine | si.EngineLine, engine_speed: _QuantityLike) -> Validated: ...
def pto_speed_under(option: PtoOption | si.PtoOption, line: EngineLine | si.EngineLine, load: _QuantityLike) -> Validated: ...
def shaft_torque(power: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def shaft_power(torque: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def geared_speed(speed: _QuantityLike, ratio: _Number) -> Quantity[Any]: ...
def geared_torque(torque: _QuantityLike, ratio: _Number, efficiency: _Number = ...) -> Quantity[Any]: ...
def gear_ratio(input: _QuantityLike, output: _QuantityLike) -> Any: ...
def usable_for_pto_work(position: DrawbarPosition | str) -> Sourced: ...
def drawbar_distances(type: PtoType | si.PtoType | int) -> tuple[DrawbarDistance, ...]: ...
def drawbar_category(number: int) -> DrawbarCategory: ...
def identify_pto(spline_count: int, diameter: _QuantityLike, measuring_tolerance: _QuantityLike = ...) -> PtoIdentification: ...
def recommended_power(type: PtoType | si.PtoType | int, speed: _QuantityLike) -> RecommendedPowers: ...
def straight_profile_by_rule(diameter: _QuantityLike) -> Sourced | None: ...
def involute_profile(teeth: int, module: _QuantityLike, flat_depth: _Number, fillet_depth: _Number, source: Source, derived: Source) -> Sourced | None: ...
def is_nominal_speed(speed: _QuantityLike, nominal: _QuantityLike) -> Any: ...
def lever_can_disagree(arrangement: StubArrangement | str) -> bool: ...
def stub_hazard_source(hazard: StubHazard | str) -> Source: ...
def has_hazard(arrangement: StubArrangement | str, hazard: StubHazard | str) -> bool: ...
def stub_hazards(arrangement: StubArrangement | str) -> tuple[Sourced, ...]: ...
def pto_types() -> tuple[PtoType, ...]: ...
def pre_standard_pto_type() -> PtoType: ...
def pto_type(number: int) -> PtoType: ...
def blade_pull(mass: _QuantityLike, radius: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def object_energy(mass: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def object_speed_bound(tip_speed: _QuantityLike, restitution: _Number) -> Quantity[Any]: ...
def ring_hoop_stress(rim_speed: _QuantityLike, density: _QuantityLike) -> Quantity[Any]: ...
def disc_hoop_stress_at(radius: _QuantityLike, inner_radius: _QuantityLike, outer_radius: _QuantityLike, speed: _QuantityLike, density: _QuantityLike, poisson_ratio: _Number) -> Quantity[Any]: ...
def disc_radial_stress_at(radius: _QuantityLike, inner_radius: _QuantityLike, outer_radius: _QuantityLike, speed: _QuantityLike, density: _QuantityLike, poisson_ratio: _Number) -> Quantity[Any]: ...
def disc_hoop_stress(inner_radius: _QuantityLike, outer_radius: _QuantityLike, speed: _QuantityLike, density: _QuantityLike, poisson_ratio: _Number) -> Quantity[Any]: ...
def rotor_energy(inertia: _QuantityLike, speed: _QuantityLike) -> Quantity[Any]: ...
def lost_blade_energy(mass: _QuantityLike, radius: _QuantityLike, speed: _QuantityLike, inertia: _QuantityLike = ...) -> Quantity[Any]: ...
def overspeed_ratios(rated_speed: _QuantityLike, speed: _QuantityLike) -> OverspeedRatios: ...
def turf_tip_speed_line() -> TipSpeedLine: ...
def run_down_time(inertia: _QuantityLike, speed: _QuantityLike, friction_torque: _QuantityLike, windage_torque: _QuantityLike = ...) -> Quantity[Any]: ...
def run_down_angle(inertia: _QuantityLike, speed: _QuantityLike, friction_torque: _QuantityLike, windage_torque: _QuantityLike = ...) -> Quantity[Any]: ...
def round_body_area(mass: _QuantityLike, density: _QuantityLike) -> Quantity[Any]: ...
def throw_flight(launch_speed: _QuantityLike, launch_angle: _QuantityLike, launch_height: _QuantityLike, mass: _QuantityLike, area: _QuantityLike, drag_coefficient: _Number, air_density: _QuantityLike, gravity: _QuantityLike = ...) -> Flight: ...
def throw_distance(launch_speed: _QuantityLike, launch_angle: _QuantityLike, launch_height: _QuantityLike, mass: _QuantityLike, area: _QuantityLike, drag_coefficient: _Number, air_density: _QuantityLike, gravity: _QuantityLike = ...) -> Quantity[Any]: ...
def farthest_throw(launch_speed: _QuantityLike, launch_height: _QuantityLike, mass: _QuantityLike, area: _QuantityLike, drag_coefficient: _Number, air_density: _QuantityLike, gravity: _QuantityLike = ...) -> FarthestFlight: ...
def tip_speed(speed: _QuantityLike, radius: _QuantityLike) -> Quantity[Any]: ...
def tip_speed_over_ground(tip_speed: _QuantityLike, ground_speed: _QuantityLike) -> Quantity[Any]: ...
def speed_for_tip_speed(tip_speed: _QuantityLike, radius: _QuantityLike) -> Quantity[Any]: ...
def wrapped_length(speed: _QuantityLike, radius: _QuantityLike, reaction_time: _QuantityLike) -> Quantity[Any]: ...
def groove_concentration(outer_diameter: _QuantityLike, groove_diameter: _QuantityLike, groove_radius: _QuantityLike, load: NotchLoad | str) -> Any: ...
def shoulder_concentration(larger_diameter: _QuantityLike, smaller_diameter: _QuantityLike, fillet_radius: _QuantityLike, load: NotchLoad | str) -> Validated: ...
def spline_root_concentration(root_radius: _QuantityLike, root_diameter: _QuantityLike) -> Validated: ...
def corner_concentration(wall: _QuantityLike, corner_radius: _QuantityLike) -> Validated: ...
def critical_speed(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ShapedProfile | si.ShapedProfile | RectangleSection | si.RectangleSection, length: _QuantityLike, youngs_modulus: _QuantityLike, density: _QuantityLike) -> Quantity[Any]: ...
def critical_length(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection, speed: _QuantityLike, youngs_modulus: _QuantityLike, density: _QuantityLike) -> Quantity[Any]: ...
def torsion_impact(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, length: _QuantityLike, shear_modulus: _QuantityLike, energy: _QuantityLike) -> TorsionImpact: ...
def impact_diameter(energy: _QuantityLike, length: _QuantityLike, shear_modulus: _QuantityLike, shear_stress: _QuantityLike) -> Quantity[Any]: ...
def lobed_profile(lobes: ArrayLike, circumscribed_diameter: _QuantityLike, inscribed_diameter: _QuantityLike, tip_radius: _QuantityLike, wall: _QuantityLike) -> ShapedProfile: ...
def square_profile(width: _QuantityLike, wall: _QuantityLike, corner_radius: _QuantityLike = ...) -> ShapedProfile: ...
def partly_plastic_torque(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection, twist_rate: _QuantityLike, shear_yield: _QuantityLike, shear_modulus: _QuantityLike) -> Quantity[Any]: ...
def overload(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection, torque: _QuantityLike, shear_yield: _QuantityLike, shear_modulus: _QuantityLike) -> Overload: ...
def thin_profile(section: ProfileSection | si.ProfileSection) -> Validated: ...
def wall_stress(enclosed_area: _QuantityLike, torque: _QuantityLike, wall: _QuantityLike) -> Quantity[Any]: ...
def diameter_for_torque(torque: _QuantityLike, shear_stress: _QuantityLike, bore_ratio: _Number = ...) -> Quantity[Any]: ...
def diameter_for_twist(torque: _QuantityLike, twist_rate: _QuantityLike, shear_modulus: _QuantityLike, bore_ratio: _Number = ...) -> Quantity[Any]: ...
def stub_shaft_load(load: StubLoad | si.StubLoad) -> ShaftLoad: ...
def stub_stress(stub: StubShaft | si.StubShaft, load: StubLoad | si.StubLoad) -> StubStress: ...
def stub_yield_safety_factor(stub: StubShaft | si.StubShaft, load: StubLoad | si.StubLoad, yield_: _QuantityLike) -> StubSafety: ...
def stub_fatigue_safety_factor(stub: StubShaft | si.StubShaft, load: StubLoad | si.StubLoad, strength: FatigueStrength | si.FatigueStrength, rule: MeanStressRule | str) -> StubSafety: ...
def stub_angle_limit(stub: StubShaft | si.StubShaft, load: StubLoad | si.StubLoad, strength: FatigueStrength | si.FatigueStrength, rule: MeanStressRule | str, safety_factor: _Number) -> Validated: ...
def torsion_stress(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, torque: _QuantityLike) -> Quantity[Any]: ...
def yield_torque(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, shear_yield: _QuantityLike) -> Quantity[Any]: ...
def plastic_torque(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, shear_yield: _QuantityLike) -> Quantity[Any]: ...
def twist_rate(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, torque: _QuantityLike, shear_modulus: _QuantityLike) -> Quantity[Any]: ...
def twist(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, torque: _QuantityLike, shear_modulus: _QuantityLike, length: _QuantityLike) -> Quantity[Any]: ...
def torque_for_twist(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection | ProfileSection | si.ProfileSection | ShapedProfile | si.ShapedProfile | UnevenProfileSection | si.UnevenProfileSection | RectangleSection | si.RectangleSection | TriangleSection | si.TriangleSection | OpenSection | si.OpenSection, twist_rate: _QuantityLike, shear_modulus: _QuantityLike) -> Quantity[Any]: ...
def torsion_stress_at(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection, torque: _QuantityLike, radius: _QuantityLike) -> Quantity[Any]: ...
def stepped_shaft(steps: Iterable[ShaftStep | si.ShaftStep]) -> SteppedShaft: ...
def stepped_yield_torque(steps: Iterable[ShaftStep | si.ShaftStep]) -> Quantity[Any]: ...
def stepped_stiffness(steps: Iterable[ShaftStep | si.ShaftStep]) -> Quantity[Any]: ...
def lumped_critical_speed(section: SolidSection | si.SolidSection | TubeSection | si.TubeSection, length: _QuantityLike, youngs_modulus: _QuantityLike, mass: _QuantityLike) -> Quantity[Any]: ...
def rayleigh_critical_speed(weights: Iterable[SaggingWeight | si.SaggingWeight]) -> Quantity[Any]: ...
def dunkerley_critical_speed(speeds: Iterable[_QuantityLike]) -> Quantity[Any]: ...
def sag_critical_speed(load_sag: _QuantityLike, shaft_sag: _QuantityLike) -> Quantity[Any]: ...
def spline_allowables(steel: SplineSteel | str) -> SplineAllowables: ...
def spline_limits(steel: SplineSteel | str, crowned: bool = ...) -> Sourced | None: ...
def spline_torque_capacity(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, limits: SplineLimits | si.SplineLimits, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: _QuantityLike = ...) -> SplineCapacity: ...
def spline_power_capacity(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, limits: SplineLimits | si.SplineLimits, speed: _QuantityLike, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: _QuantityLike = ...) -> Quantity[Any]: ...
def spline_length_for_torque(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, torque: _QuantityLike, limits: SplineLimits | si.SplineLimits, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: _QuantityLike = ...) -> Validated: ...
def scaled_spline(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, scale: _Number, scale_length: bool = ...) -> MeasuredSpline: ...
def spline_size_for_torque(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, torque: _QuantityLike, limits: SplineLimits | si.SplineLimits, scale_length: bool = ..., factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: _QuantityLike = ...) -> SplineSize: ...
def din_5480_shift(reference_diameter: _QuantityLike, module: _QuantityLike, teeth: ArrayLike) -> Quantity[Any]: ...
def din_5480_geometry(reference_diameter: _QuantityLike, module: _QuantityLike, teeth: ArrayLike, cutting: SplineCutting | str = ...) -> InvoluteGeometry: ...
def application_factor(drive: DriveShock | str, load: LoadShock | str) -> Sourced: ...
def load_distribution_factor(misalignment: _Number, face_width: _QuantityLike) -> Validated: ...
def fatigue_life_factor(cycles: _Number, cycle: TorqueCycle | str = ...) -> Validated: ...
def wear_life_factor(turns: _Number) -> Validated: ...
def seat_divisor(seat: SplineSeat | str) -> float: ...
def ansi_b92_1_geometry(teeth: ArrayLike, module: _QuantityLike, pressure_angle: _QuantityLike, root: SplineRoot | str = ...) -> InvoluteGeometry: ...
def iso_4156_geometry(teeth: ArrayLike, module: _QuantityLike, pressure_angle: _QuantityLike, root: SplineRoot | str = ...) -> InvoluteGeometry: ...
def involute_spline(teeth: int, diametral_pitch: _QuantityLike, pressure_angle: _QuantityLike, length: _QuantityLike, root: SplineRoot | str = ...) -> InvoluteSpline: ...
def sleeve_stress(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, torque: _QuantityLike, outer_diameter: _QuantityLike, speed: _QuantityLike = ..., factors: SplineFactors = ..., tooth_form: _Number = ...) -> SleeveStress: ...
def slide_force(torque: _QuantityLike, bearing_diameter: _QuantityLike, friction: _Number, flank_angle: _QuantityLike = ...) -> Quantity[Any]: ...
def spline_slide_force(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, torque: _QuantityLike, friction: _Number) -> Quantity[Any]: ...
def telescope_thrust(force: _QuantityLike, front_angle: _QuantityLike, rear_angle: _QuantityLike) -> TelescopeThrust: ...
def groove_width(major_diameter: _QuantityLike, groove_diameter: _QuantityLike, groove_radius: _QuantityLike) -> Quantity[Any]: ...
def engaged_length(hub_length: _QuantityLike, useful_length: _QuantityLike, groove_width: _QuantityLike = ...) -> Quantity[Any]: ...
def sae_fractions(count: int, fit: SplineFit | str) -> Sourced: ...
def sae_spline(count: ArrayLike, fit: SplineFit | str, major_diameter: _QuantityLike, length: _QuantityLike) -> StraightSpline: ...
def spline_stress(spline: StraightSpline | si.StraightSpline | InvoluteSpline | si.InvoluteSpline | MeasuredSpline | si.MeasuredSpline, torque: _QuantityLike, factors: SplineFactors = ..., seat: SplineSeat | str = ..., bore_diameter: _QuantityLike = ...) -> SplineStress: ...
def stub_spline(type: PtoType | si.PtoType | int, length: _QuantityLike) -> Sourced | None: ...
def stub_spline_of_type(type: PtoType | si.PtoType | int) -> Sourced | None: ...
def spline_of_geometry(geometry: InvoluteGeometry | si.InvoluteGeometry, length: _QuantityLike) -> MeasuredSpline: ...
