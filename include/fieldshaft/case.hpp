#pragma once
// A case: tractor, implement, driveline, working range; a farm: many of them. Read from documents and written to them.

#include <fieldshaft/case/case.hpp>
#include <fieldshaft/case/farm.hpp>
#include <fieldshaft/case/read.hpp>
