#include "core/planner/bound/late_release.h"

#include <mutex>
#include <system_error>
#include <utility>

namespace warmbench::planner {

namespace {

/// Threads that nobody waits for, one of each kind at a time: joined by the next, and at the end of the
/// program; there those that may still give something to be released come first.
struct Later {
    std::mutex ofReleasing;
    std::jthread releasing;
    std::mutex ofEnding;
    std::jthread ending;
};

Later& later() {
    static Later threads;
    return threads;
}

} // namespace

void releaseLater(std::shared_ptr<void> what) {
    const std::lock_guard lock(later().ofReleasing);
    try {
        later().releasing = std::jthread([what = std::move(what)]() mutable { what.reset(); });
    } catch (const std::system_error&) {
        // No thread is to be had: then what was taken along into the call above has been destroyed there.
    }
}

void endLater(std::jthread thread) {
    thread.request_stop();
    const std::lock_guard lock(later().ofEnding);
    later().ending = std::move(thread);
}

} // namespace warmbench::planner
