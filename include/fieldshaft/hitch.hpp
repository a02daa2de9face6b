#pragma once
// Hitch: where drawbar, three-point linkage and steering pivot hold the implement, and the ranges that field work asks
// for.

#include <fieldshaft/hitch/category.hpp>
#include <fieldshaft/hitch/drawbar.hpp>
#include <fieldshaft/hitch/field_range.hpp>
#include <fieldshaft/hitch/four_bar.hpp>
#include <fieldshaft/hitch/linkage.hpp>
#include <fieldshaft/hitch/steered.hpp>
