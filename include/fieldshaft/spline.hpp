#pragma once
// Spline: forms of splined shafts, their stresses, capacities and sizes.

#include <fieldshaft/spline/factors.hpp>
#include <fieldshaft/spline/involute.hpp>
#include <fieldshaft/spline/spline.hpp>
#include <fieldshaft/spline/straight.hpp>
#include <fieldshaft/spline/stress.hpp>
