#pragma once
// Driveline: angles and length at a pose, proved over a range of poses, and what follows for tubes and turning.

#include <fieldshaft/driveline/branch.hpp>
#include <fieldshaft/driveline/chain.hpp>
#include <fieldshaft/driveline/chain_envelope.hpp>
#include <fieldshaft/driveline/change.hpp>
#include <fieldshaft/driveline/clearance.hpp>
#include <fieldshaft/driveline/driveline.hpp>
#include <fieldshaft/driveline/envelope.hpp>
#include <fieldshaft/driveline/lift.hpp>
#include <fieldshaft/driveline/measurement.hpp>
#include <fieldshaft/driveline/mounted.hpp>
#include <fieldshaft/driveline/mounted_clearance.hpp>
#include <fieldshaft/driveline/placement.hpp>
#include <fieldshaft/driveline/planar.hpp>
#include <fieldshaft/driveline/state.hpp>
#include <fieldshaft/driveline/table.hpp>
#include <fieldshaft/driveline/tolerance.hpp>
#include <fieldshaft/driveline/tube.hpp>
#include <fieldshaft/driveline/turn.hpp>
#include <fieldshaft/driveline/use_limits.hpp>
#include <fieldshaft/driveline/wide_angle.hpp>
