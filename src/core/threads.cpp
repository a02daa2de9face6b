#include <fieldshaft/core/threads.hpp>

#include <fieldshaft/core/check.hpp>

#include <boost/asio/post.hpp>
#include <boost/asio/thread_pool.hpp>

#include <atomic>
#include <condition_variable>
#include <exception>
#include <memory>
#include <mutex>
#include <thread>

namespace fieldshaft {
inline namespace v0 {
namespace {

/// One call of the executor: workers take the next task until none is left.
class Round {
public:
  Round(std::size_t count, const std::function<void(std::size_t)>& task, unsigned workers)
      : count_(count), task_(task), working_(workers) {}

  void work() {
    for (std::size_t i = next_++; i < count_; i = next_++) {
      try {
        task_(i);
      } catch (...) {
        keep(std::current_exception());
      }
    }
    const std::lock_guard lock(mutex_);
    if (--working_ == 0) done_.notify_all();
  }

  /// Waits for the last worker; throws what a task threw.
  void finish() {
    std::unique_lock lock(mutex_);
    done_.wait(lock, [this] { return working_ == 0; });
    if (failure_) std::rethrow_exception(failure_);
  }

private:
  void keep(std::exception_ptr failure) {
    const std::lock_guard lock(mutex_);
    if (!failure_) failure_ = std::move(failure);
    next_ = count_; // nothing more is begun
  }

  const std::size_t count_;
  const std::function<void(std::size_t)>& task_;
  std::atomic<std::size_t> next_{0};
  std::mutex mutex_;
  std::condition_variable done_;
  unsigned working_;
  std::exception_ptr failure_;
};

} // namespace

Executor thread_executor(unsigned threads) {
  check::within(threads, 0.0, 1024.0, {"thread_executor", "threads", ""});
  const unsigned here = std::thread::hardware_concurrency();
  const unsigned workers = threads != 0 ? threads : (here != 0 ? here : 1U);
  auto pool = std::make_shared<boost::asio::thread_pool>(workers);
  return [pool, workers](std::size_t count, const std::function<void(std::size_t)>& task) {
    if (count == 0) return;
    Round round(count, task, workers);
    for (unsigned i = 0; i < workers; ++i) boost::asio::post(*pool, [&round] { round.work(); });
    round.finish();
  };
}

} // namespace v0
} // namespace fieldshaft
