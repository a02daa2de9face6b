#pragma once
// Dynamics of the driveline: whirling, torsional vibration, starting and stopping. Part of the compiled library.

#include <fieldshaft/dynamics/beam.hpp>
#include <fieldshaft/dynamics/interference.hpp>
#include <fieldshaft/dynamics/line.hpp>
#include <fieldshaft/dynamics/modes.hpp>
#include <fieldshaft/dynamics/pair_ratios.hpp>
#include <fieldshaft/dynamics/response.hpp>
#include <fieldshaft/dynamics/simulation.hpp>
#include <fieldshaft/dynamics/train.hpp>
#include <fieldshaft/dynamics/whirl.hpp>
