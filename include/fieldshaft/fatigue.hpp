#pragma once
// Fatigue: strength of a part, mean stress, shafts under swinging load.

#include <fieldshaft/fatigue/mean_stress.hpp>
#include <fieldshaft/fatigue/shaft.hpp>
