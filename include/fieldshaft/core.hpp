#pragma once
// Errors, input checks, sources and validity: what every other module stands on.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/config.hpp>
#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/core/error.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
