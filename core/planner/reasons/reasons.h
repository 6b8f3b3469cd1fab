#pragma once

#include "core/planner/answer.h"
#include "core/planner/search/state.h"

#include <functional>
#include <vector>

namespace warmbench::planner {

/// Writes for each batch that the answer leaves out the rule that held it back and, where they can be found,
/// the cheapest ways out: slots, hands or stock that are short and when, another strike day. `plans` and
/// `held` are those of the answer. Found by placing the batch into the finished plan with one rule lifted at
/// a time; in a house where that is more work than planning, for the dearest batches only. Of others, and
/// from `stopped` on, which is asked at short intervals, stock or hands are told where every day is short of
/// them, else the rule is only named.
void giveReasons(const Problem& problem, const std::vector<search::Plan>& plans, const std::vector<int>& held,
                 const std::function<bool()>& stopped, Answer& answer);

} // namespace warmbench::planner
