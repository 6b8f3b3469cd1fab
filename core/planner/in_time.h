#pragma once

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <stop_token>
#include <thread>

namespace warmbench::planner {

/// Calls `work` on this thread with a token that asks it to stop after `seconds`, and when `stop` does; not
/// at all where there is no time for it.
template <class Work>
void inTime(double seconds, const std::stop_token& stop, Work work) {
    if (seconds <= 0 || stop.stop_requested()) return;
    std::stop_source late;
    const std::stop_callback passOn(stop, [&] { late.request_stop(); });
    std::mutex waiting;
    std::condition_variable_any done;
    const std::jthread clock([&](const std::stop_token& ended) {
        std::unique_lock lock(waiting);
        done.wait_for(lock, ended, std::chrono::duration<double>(seconds), [] { return false; });
        late.request_stop();
    });
    work(late.get_token());
}

} // namespace warmbench::planner
