#pragma once
// Where the PTO shaft sits and what must stay clear of it. Heights and shield overlap by type are in PtoType.

#include <fieldshaft/pto/profile.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// Least distance from the centre of the shaft end to any part of the tractor that stands still. The texts disagree.
inline constexpr std::array pto_clearance_radii = {
    Sourced<Length>{millimetres(80), {"ILO code of practice on tractors, cl. 8.1.1", Standing::published}},
    Sourced<Length>{millimetres(76), {"ISO 500, clearance zone", Standing::from_memory}},
};

/// How far the shaft may lie to either side of the tractor's centre line.
inline constexpr Sourced<Length> pto_lateral_tolerance{millimetres(50), {"ISO 500", Standing::from_memory}};

/// The master shield bears an operator of this mass who steps on it, without being bent for good.
inline constexpr Sourced<Mass> master_shield_load{
    pounds(250), {"29 CFR 1928.57(b)(1)(ii), as quoted in an OSHA letter of 1976-07-02", Standing::published}};

/// Least overlap of the implement's guard and the guard of the driveline, in line.
inline constexpr Sourced<Length> implement_guard_overlap{millimetres(50),
                                                         {"ISO 4254-1, cl. 6.4", Standing::from_memory}};

} // namespace v0
} // namespace fieldshaft
