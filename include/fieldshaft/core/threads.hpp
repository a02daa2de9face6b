#pragma once
// An executor with threads of its own. Part of the compiled library.

#include <fieldshaft/core/executor.hpp>

namespace fieldshaft {
inline namespace v0 {

/// An executor that keeps a number of threads for its whole life and shares the tasks out among them.
///
///   threads  from 1 to 1024; 0: as many as the machine runs at once
/// Copies share the threads; they end with the last copy. The executor may be used from several threads; a task must
/// not use the executor that runs it. Throws InputError for a number out of range.
Executor thread_executor(unsigned threads = 0);

} // namespace v0
} // namespace fieldshaft
