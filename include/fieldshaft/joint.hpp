#pragma once
// Joints: kinematics of one Cardan joint, of a pair and of a row; phase, couples, bearing life, angles of practice.

#include <fieldshaft/joint/acceleration.hpp>
#include <fieldshaft/joint/bearing.hpp>
#include <fieldshaft/joint/couples.hpp>
#include <fieldshaft/joint/kinematics.hpp>
#include <fieldshaft/joint/pair.hpp>
#include <fieldshaft/joint/phase.hpp>
#include <fieldshaft/joint/practice.hpp>
#include <fieldshaft/joint/row.hpp>
