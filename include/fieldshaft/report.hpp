#pragma once
// Reports of an assessment.

#include <fieldshaft/report/report.hpp>
