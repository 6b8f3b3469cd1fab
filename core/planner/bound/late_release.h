#pragma once

#include <memory>
#include <thread>

namespace warmbench::planner {

/// Destroys `what` in a thread of its own, which the end of the program waits for: to give a few hundred
/// megabytes back takes longer than somebody who has pressed Stop should wait. Nothing that `what` needs for
/// its end may go before it.
void releaseLater(std::shared_ptr<void> what);

/// Asks a thread to stop and does not wait for it: the next call does, or the end of the program. What the
/// thread works on must be its own; it may call `releaseLater`.
void endLater(std::jthread thread);

} // namespace warmbench::planner
