#pragma once
// Shaft: sections in torsion and bending, overload, notches, the loaded PTO stub, and the critical speed of a member.

#include <fieldshaft/shaft/bar.hpp>
#include <fieldshaft/shaft/concentration.hpp>
#include <fieldshaft/shaft/critical.hpp>
#include <fieldshaft/shaft/impact.hpp>
#include <fieldshaft/shaft/lobed.hpp>
#include <fieldshaft/shaft/plastic.hpp>
#include <fieldshaft/shaft/profile.hpp>
#include <fieldshaft/shaft/section.hpp>
#include <fieldshaft/shaft/size.hpp>
#include <fieldshaft/shaft/stub.hpp>
#include <fieldshaft/shaft/torsion.hpp>
#include <fieldshaft/shaft/train.hpp>
#include <fieldshaft/shaft/whirl_estimates.hpp>
