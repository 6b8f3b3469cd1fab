#include "core/placing/other_days.h"

#include "core/book/query.h"
#include "core/placing/stay_moves.h"

#include <algorithm>

namespace warmbench::placing {

Result<Command> otherDays(const HouseBook& book, StayId id, Day from, Day to) {
    const Stay& stay = book.get<Stay>(id);
    const Batch& batch = book.get<Batch>(stay.batch);
    const bool strikes = batch.state == BatchState::Planned && stay.from == batch.strikeDay;
    if (!strikes || from == stay.from) return setStayDays(book, id, from, to);
    PlanBatch plan{batch.id, from, {}};
    const int begins = from - stay.from;
    const int ends = to - stay.to;
    for (const Stay* one : staysInOrder(book, batch.id)) {
        plan.stays.push_back(*one);
        Stay& moved = plan.stays.back();
        // All that begin with it are struck with it; what follows comes as much later as it ends.
        const bool first = one->from == stay.from;
        moved.from = one->from + (first ? begins : ends);
        moved.to = one->to + ends;
    }
    return Command{plan};
}

} // namespace warmbench::placing
