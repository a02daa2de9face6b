#pragma once
// Spline: forms of splined shafts, their stresses, capacities and sizes.

#include <fieldshaft/spline/allowable.hpp>
#include <fieldshaft/spline/capacity.hpp>
#include <fieldshaft/spline/din_5480.hpp>
#include <fieldshaft/spline/factor_tables.hpp>
#include <fieldshaft/spline/factors.hpp>
#include <fieldshaft/spline/involute.hpp>
#include <fieldshaft/spline/sleeve.hpp>
#include <fieldshaft/spline/slide.hpp>
#include <fieldshaft/spline/spline.hpp>
#include <fieldshaft/spline/straight.hpp>
#include <fieldshaft/spline/stress.hpp>
#include <fieldshaft/spline/stub.hpp>
