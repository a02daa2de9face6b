#pragma once
// Rotor: tip speed, pull and energy of blades, stress in rings and discs, run-down, thrown objects.

#include <fieldshaft/rotor/blade.hpp>
#include <fieldshaft/rotor/disc.hpp>
#include <fieldshaft/rotor/energy.hpp>
#include <fieldshaft/rotor/flight.hpp>
#include <fieldshaft/rotor/practice.hpp>
#include <fieldshaft/rotor/run_down.hpp>
#include <fieldshaft/rotor/throw.hpp>
#include <fieldshaft/rotor/tip_speed.hpp>
