#pragma once
// Hitch: where drawbar and three-point linkage hold the implement.

#include <fieldshaft/hitch/drawbar.hpp>
