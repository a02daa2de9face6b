#pragma once
// What to do: verified remedies, the steps of a changeover, answers that start from the other end.

#include <fieldshaft/advise/change.hpp>
#include <fieldshaft/advise/changeover.hpp>
#include <fieldshaft/advise/farm.hpp>
#include <fieldshaft/advise/remedies.hpp>
