#pragma once
// Dynamics of the driveline: whirling, torsional vibration, starting and stopping. Part of the compiled library.

#include <fieldshaft/dynamics/train.hpp>
