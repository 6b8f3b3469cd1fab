#pragma once

#include <memory>

namespace warmbench::planner {

/// Destroys `what` in a thread of its own, which the end of the program waits for: to give a few hundred
/// megabytes back takes longer than somebody who has pressed Stop should wait. Nothing that `what` needs for
/// its end may go before it.
void releaseLater(std::shared_ptr<void> what);

} // namespace warmbench::planner
