#pragma once
// PTO: interface types, identification from count and tape, recommended power, stub arrangements, drawbar distances.

#include <fieldshaft/pto/drawbar.hpp>
#include <fieldshaft/pto/identify.hpp>
#include <fieldshaft/pto/list.hpp>
#include <fieldshaft/pto/location.hpp>
#include <fieldshaft/pto/power.hpp>
#include <fieldshaft/pto/profile.hpp>
#include <fieldshaft/pto/speed.hpp>
#include <fieldshaft/pto/stub.hpp>
#include <fieldshaft/pto/type.hpp>
