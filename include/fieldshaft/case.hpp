#pragma once
// A case: tractor, implement, driveline, working range; read from a document and written to one.

#include <fieldshaft/case/case.hpp>
#include <fieldshaft/case/read.hpp>
