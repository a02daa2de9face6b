#pragma once
// Reports: of an assessment, of remedies, of a changeover, of a farm study.

#include <fieldshaft/report/changeover.hpp>
#include <fieldshaft/report/farm.hpp>
#include <fieldshaft/report/remedies.hpp>
#include <fieldshaft/report/report.hpp>
