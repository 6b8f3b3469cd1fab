#include "core/planner/bound/late_release.h"

#include <mutex>
#include <system_error>
#include <thread>
#include <utility>

namespace warmbench::planner {

void releaseLater(std::shared_ptr<void> what) {
    static std::mutex one;
    static std::jthread releasing; // one at a time; joined by the next, and at the end
    const std::lock_guard lock(one);
    try {
        releasing = std::jthread([what = std::move(what)]() mutable { what.reset(); });
    } catch (const std::system_error&) {
        // No thread is to be had: then what was taken along into the call above has been destroyed there.
    }
}

} // namespace warmbench::planner
