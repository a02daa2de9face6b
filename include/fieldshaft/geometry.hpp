#pragma once
// Geometry: points and directions with units, the attitude and pose of an implement, and ranges of attitudes.

#include <fieldshaft/geometry/attitude.hpp>
#include <fieldshaft/geometry/direction.hpp>
#include <fieldshaft/geometry/pose.hpp>
#include <fieldshaft/geometry/position.hpp>
#include <fieldshaft/geometry/range.hpp>
