#pragma once
// Power: torque and gear trains.

#include <fieldshaft/power/torque.hpp>
