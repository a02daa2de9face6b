#pragma once
// Reports: of an assessment, of remedies, of a changeover.

#include <fieldshaft/report/changeover.hpp>
#include <fieldshaft/report/remedies.hpp>
#include <fieldshaft/report/report.hpp>
