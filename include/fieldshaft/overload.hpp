#pragma once
// Overload devices: slip clutch, shear bolt, cut-out and overrunning clutch, engagement heat, and where to set them.

#include <fieldshaft/overload/band.hpp>
#include <fieldshaft/overload/disc_clutch.hpp>
#include <fieldshaft/overload/engagement.hpp>
#include <fieldshaft/overload/overrun.hpp>
#include <fieldshaft/overload/practice.hpp>
#include <fieldshaft/overload/shear_bolt.hpp>
#include <fieldshaft/overload/thread.hpp>
#include <fieldshaft/overload/window.hpp>
