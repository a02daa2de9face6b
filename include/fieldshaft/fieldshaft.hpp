#pragma once
// The main job in one include: read a case, assess it, report.

#include <fieldshaft/advise.hpp>
#include <fieldshaft/assess.hpp>
#include <fieldshaft/case.hpp>
#include <fieldshaft/report.hpp>
