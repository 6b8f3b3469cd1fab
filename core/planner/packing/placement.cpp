#include "core/planner/packing/placement.h"

#include "core/planner/packing/alike.h"

#include <algorithm>

namespace warmbench::planner::packing {

namespace {

constexpr long packSteps = 2000;    ///< nodes of exact search for one stay, when growing has failed
constexpr int ownContact = 1 << 16; ///< sharing an edge with the rest of the stay comes before all else
constexpr int sideContact = 64;     ///< for each edge of a slot on a wall, a neighbour or the stay itself
constexpr int timeContact =
    48; ///< for each slot that was taken until the day before, or is from the day after

/// Calls `visit(row, col)` for every slot around `rect`, corners left out, outside the grid too.
template <class Visit>
void around(const SlotRect& rect, Visit visit) {
    for (int col = rect.col; col < rect.col + rect.width; ++col) {
        visit(rect.row - 1, col);
        visit(rect.row + rect.height, col);
    }
    for (int row = rect.row; row < rect.row + rect.height; ++row) {
        visit(row, rect.col - 1);
        visit(row, rect.col + rect.width);
    }
}

} // namespace

bool Placer::place(const Occupancy& zone, const Stay& stay, std::vector<SlotRect>& slots) {
    if (keepPreferred(zone, stay, slots)) return true;
    look(zone, stay);
    const bool turns = stay.turn && stay.footprint.height != stay.footprint.width;
    for (const int variant : {0, 1, 2}) {
        grow(stay, Turns::AsGiven, variant);
        if (!turns) continue;
        grow(stay, Turns::Turned, variant);
        grow(stay, Turns::Either, variant);
    }
    if (m_best.empty() && !pack(stay)) return false;
    slots = m_best;
    return true;
}

bool Placer::placeQuickly(const Occupancy& zone, const Stay& stay, std::vector<SlotRect>& slots) {
    if (keepPreferred(zone, stay, slots)) return true;
    look(zone, stay);
    const bool turns = stay.turn && stay.footprint.height != stay.footprint.width;
    grow(stay, turns ? Turns::Either : Turns::AsGiven, 0);
    if (m_best.empty() && !pack(stay)) return false;
    slots = m_best;
    return true;
}

bool Placer::keepPreferred(const Occupancy& zone, const Stay& stay, std::vector<SlotRect>& slots) const {
    slots.clear();
    if (stay.prefer.size() != static_cast<std::size_t>(stay.containers)) return false;
    for (const SlotRect& rect : stay.prefer)
        if (!zone.isFree(rect, stay.from, stay.to)) return false;
    slots.assign(stay.prefer.begin(), stay.prefer.end());
    return true;
}

void Placer::look(const Occupancy& zone, const Stay& stay) {
    zone.freeOver(stay.from, stay.to, m_free);
    zone.freeOnDay(stay.from - 1, m_before);
    zone.freeOnDay(stay.to, m_after);
    m_best.clear();
}

void Placer::grow(const Stay& stay, Turns turns, int variant) {
    m_open = m_free;
    m_mine = m_free;
    m_mine.clear();
    m_placed.clear();
    const Footprint turned{stay.footprint.width, stay.footprint.height};
    for (int count = 0; count < stay.containers; ++count) {
        m_bestWorth = -1;
        bool found = false;
        if (turns != Turns::Turned) found = addBest(stay.footprint, variant);
        if (turns != Turns::AsGiven) found = addBest(turned, variant) || found;
        if (!found) return;
        m_open.remove(m_bestRect);
        m_mine.add(m_bestRect);
        m_placed.push_back(m_bestRect);
    }
    keepBetter();
}

bool Placer::addBest(Footprint footprint, int variant) {
    m_open.corners(footprint, m_corners);
    bool found = false;
    for (int slot = m_corners.next(0); slot < m_corners.size(); slot = m_corners.next(slot + 1)) {
        const SlotRect rect{slot / m_open.cols(), slot % m_open.cols(), footprint.height, footprint.width};
        const int value = worth(rect, variant);
        if (value <= m_bestWorth) continue;
        m_bestWorth = value;
        m_bestRect = rect;
        found = true;
    }
    return found;
}

int Placer::worth(const SlotRect& rect, int variant) const {
    int value = 0;
    bool own = false;
    around(rect, [&](int row, int col) {
        const bool outside = row < 0 || col < 0 || row >= m_open.rows() || col >= m_open.cols();
        if (outside || !m_open.has(row, col)) value += sideContact;
        if (!outside && m_mine.has(row, col)) own = true;
    });
    if (own) value += ownContact;
    for (int row = rect.row; row < rect.row + rect.height; ++row)
        for (int col = rect.col; col < rect.col + rect.width; ++col)
            value += (m_before.has(row, col) ? 0 : timeContact) + (m_after.has(row, col) ? 0 : timeContact);
    if (variant == 1) value += (m_open.cols() - rect.col) * sideContact; // from the left end of the bench
    if (variant == 2) value += rect.col * sideContact;                   // from the right end
    return value + rect.row * 32 / m_open.rows();
}

int Placer::exposure() const {
    int sides = 0;
    for (const SlotRect& rect : m_placed)
        around(rect, [&](int row, int col) {
            const bool outside = row < 0 || col < 0 || row >= m_open.rows() || col >= m_open.cols();
            if (!outside && m_open.has(row, col)) ++sides;
        });
    return sides;
}

void Placer::keepBetter() {
    long score = static_cast<long>(groups(m_placed)) * (1 << 20) + exposure() * 64L;
    for (const SlotRect& rect : m_placed)
        for (int row = rect.row; row < rect.row + rect.height; ++row)
            for (int col = rect.col; col < rect.col + rect.width; ++col)
                score +=
                    (m_before.has(row, col) ? timeContact : 0) + (m_after.has(row, col) ? timeContact : 0);
    if (!m_best.empty() && score >= m_bestScore) return;
    m_bestScore = score;
    m_best = m_placed;
}

bool Placer::pack(const Stay& stay) {
    return packAlike(m_free, stay.containers, stay.footprint, stay.turn, packSteps, m_best) == Alike::Packed;
}

} // namespace warmbench::planner::packing
