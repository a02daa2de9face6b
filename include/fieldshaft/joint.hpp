#pragma once
// Joints: kinematics of one Cardan joint, of a pair and of a row; couples, bearing life, angles of practice.

#include <fieldshaft/joint/acceleration.hpp>
#include <fieldshaft/joint/kinematics.hpp>
#include <fieldshaft/joint/pair.hpp>
