#pragma once
// Fatigue: strength of a part, shafts under swinging load, counting of load cycles, damage and life.

#include <fieldshaft/fatigue/cycle.hpp>
#include <fieldshaft/fatigue/damage.hpp>
#include <fieldshaft/fatigue/endurance.hpp>
#include <fieldshaft/fatigue/four_point.hpp>
#include <fieldshaft/fatigue/histogram.hpp>
#include <fieldshaft/fatigue/life.hpp>
#include <fieldshaft/fatigue/mean_stress.hpp>
#include <fieldshaft/fatigue/notch.hpp>
#include <fieldshaft/fatigue/pieces.hpp>
#include <fieldshaft/fatigue/rainflow.hpp>
#include <fieldshaft/fatigue/shaft.hpp>
#include <fieldshaft/fatigue/sn_line.hpp>
