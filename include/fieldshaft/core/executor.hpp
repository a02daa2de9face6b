#pragma once
// Who runs the tasks of a wide loop: the caller decides.

#include <cstddef>
#include <functional>

namespace fieldshaft {
inline namespace v0 {

/// Runs task(0) to task(count - 1), in any order and on any threads, and returns when all of them are done.
///
/// What a task throws ends the call: an executor passes one of the exceptions on to its caller, after the other tasks
/// have ended. Results of the library do not depend on the executor: they are the same bits for any number of threads.
using Executor = std::function<void(std::size_t count, const std::function<void(std::size_t)>& task)>;

/// One after the other in the caller's thread: the default everywhere.
inline void run_in_turn(std::size_t count, const std::function<void(std::size_t)>& task) {
  for (std::size_t i = 0; i < count; ++i) task(i);
}

} // namespace v0
} // namespace fieldshaft
