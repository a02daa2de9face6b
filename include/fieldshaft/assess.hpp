#pragma once
// Findings and verdict of a case.

#include <fieldshaft/assess/assess.hpp>
#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/assess/gears.hpp>
