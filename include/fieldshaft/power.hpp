#pragma once
// Power: torque and gear trains, power bases, the engine line, PTO options, fuel, and what implements need.

#include <fieldshaft/power/basis.hpp>
#include <fieldshaft/power/economy.hpp>
#include <fieldshaft/power/engine.hpp>
#include <fieldshaft/power/fuel.hpp>
#include <fieldshaft/power/implement.hpp>
#include <fieldshaft/power/machine.hpp>
#include <fieldshaft/power/measured.hpp>
#include <fieldshaft/power/pto_option.hpp>
#include <fieldshaft/power/torque.hpp>
