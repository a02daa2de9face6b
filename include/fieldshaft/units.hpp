#pragma once
// Quantities, named units, the radian and the elementary functions. Text in and out: fieldshaft/units/text.hpp.

#include <fieldshaft/units/quantity.hpp>
#include <fieldshaft/units/radian.hpp>
#include <fieldshaft/units/unit.hpp>
