#pragma once
// Shaft: sections in torsion and bending, and the critical speed of a uniform member.

#include <fieldshaft/shaft/critical.hpp>
#include <fieldshaft/shaft/profile.hpp>
#include <fieldshaft/shaft/section.hpp>
#include <fieldshaft/shaft/torsion.hpp>
