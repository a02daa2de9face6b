#pragma once
// Cost: what a machine loses in value, what owning, repairing and running it costs, and when a purchase pays.

#include <fieldshaft/cost/money.hpp>
#include <fieldshaft/cost/operation.hpp>
#include <fieldshaft/cost/ownership.hpp>
#include <fieldshaft/cost/remaining_value.hpp>
#include <fieldshaft/cost/repair.hpp>
