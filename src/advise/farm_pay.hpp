#pragma once
// Weighing the options of a farm.

#include "advise/farm_judge.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace advising {

PayOff pay_off(FarmJudge& judge, std::size_t option);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
