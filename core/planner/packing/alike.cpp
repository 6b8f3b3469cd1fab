#include "core/planner/packing/alike.h"

#include <algorithm>

namespace warmbench::planner::packing {

namespace {

struct Search {
    Cells open;
    int wanted;
    Footprint footprint;
    bool turn;
    long steps;
    std::vector<SlotRect>& slots;

    /// `spare`: slots from `slot` on that may stay empty.
    bool run(int slot, int spare) { // NOLINT(misc-no-recursion)
        if (static_cast<int>(slots.size()) == wanted) return true;
        slot = open.next(slot);
        if (slot == open.size() || --steps < 0) return false;
        if (tryAt(slot, footprint, spare)) return true;
        if (turn && footprint.height != footprint.width &&
            tryAt(slot, {footprint.width, footprint.height}, spare))
            return true;
        return spare > 0 && run(slot + 1, spare - 1);
    }

    bool tryAt(int slot, Footprint shape, int spare) { // NOLINT(misc-no-recursion)
        const SlotRect rect{slot / open.cols(), slot % open.cols(), shape.height, shape.width};
        if (!rect.within(open.rows(), open.cols()) || !open.covers(rect)) return false;
        open.remove(rect);
        slots.push_back(rect);
        if (run(slot + 1, spare)) return true;
        slots.pop_back();
        open.add(rect);
        return false;
    }
};

} // namespace

Alike packAlike(const Cells& free, int count, Footprint footprint, bool turn, long steps,
                std::vector<SlotRect>& slots) {
    slots.clear();
    const int spare = free.count() - count * footprint.height * footprint.width;
    if (spare < 0) return Alike::Impossible;
    Search search{free, count, footprint, turn, steps, slots};
    if (search.run(0, spare)) return Alike::Packed;
    slots.clear();
    return search.steps < 0 ? Alike::StepsUp : Alike::Impossible;
}

} // namespace warmbench::planner::packing
