#include "core/planner/packing/placement.h"

#include "core/planner/packing/plate.h"

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
    for (const Lean lean : {Lean::None, Lean::Left, Lean::Right}) {
        grow(stay, 0, m_wayCount, lean);
        if (m_wayCount == 1) continue;
        grow(stay, 0, 1, lean);
        grow(stay, 1, 2, lean);
    }
    if (m_best.empty() && !pack(stay)) return false;
    slots = m_best;
    return true;
}

bool Placer::placeQuickly(const Occupancy& zone, const Stay& stay, std::vector<SlotRect>& slots) {
    if (keepPreferred(zone, stay, slots)) return true;
    look(zone, stay);
    grow(stay, 0, m_wayCount, Lean::Left);
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
    m_open = m_free;
    m_mine = m_free;
    m_mine.clear();
    m_best.clear();
    m_wayCount = 0;
    addWay(stay.footprint);
    if (stay.turn && stay.footprint.height != stay.footprint.width)
        addWay({stay.footprint.width, stay.footprint.height});
}

void Placer::addWay(const Footprint& footprint) {
    Way& way = m_ways[m_wayCount++];
    way.footprint = footprint;
    m_free.corners(footprint, way.fits);
    way.worth.resize(static_cast<std::size_t>(m_free.size()));
    for (int slot = way.fits.next(0); slot < way.fits.size(); slot = way.fits.next(slot + 1))
        way.worth[static_cast<std::size_t>(slot)] =
            worth({slot / m_free.cols(), slot % m_free.cols(), footprint.height, footprint.width});
}

/// Puts one container after the other where it is worth most, in the ways [firstWay, lastWay).
void Placer::grow(const Stay& stay, std::size_t firstWay, std::size_t lastWay, Lean lean) {
    m_open = m_free;
    m_mine.clear();
    m_placed.clear();
    for (std::size_t way = firstWay; way < lastWay; ++way) {
        m_ways[way].fitsNow = m_ways[way].fits;
        m_ways[way].worthNow = m_ways[way].worth;
    }
    for (int count = 0; count < stay.containers; ++count) {
        if (!findBest(firstWay, lastWay, lean)) return;
        stand(m_bestRect, firstWay, lastWay);
    }
    keepBetter();
}

bool Placer::findBest(std::size_t firstWay, std::size_t lastWay, Lean lean) {
    int best = -1;
    for (std::size_t at = firstWay; at < lastWay; ++at) {
        const Way& way = m_ways[at];
        const int cols = way.fitsNow.cols();
        for (int slot = way.fitsNow.next(0); slot < way.fitsNow.size(); slot = way.fitsNow.next(slot + 1)) {
            int value = way.worthNow[static_cast<std::size_t>(slot)];
            if (lean == Lean::Left) value += (cols - slot % cols) * sideContact;
            if (lean == Lean::Right) value += slot % cols * sideContact;
            if (value <= best) continue;
            best = value;
            m_bestRect = {slot / cols, slot % cols, way.footprint.height, way.footprint.width};
        }
    }
    return best >= 0;
}

void Placer::stand(const SlotRect& rect, std::size_t firstWay, std::size_t lastWay) {
    m_open.remove(rect);
    m_mine.add(rect);
    m_placed.push_back(rect);
    for (std::size_t at = firstWay; at < lastWay; ++at) {
        Way& way = m_ways[at];
        const Footprint& shape = way.footprint;
        for (int row = std::max(0, rect.row - shape.height);
             row <= std::min(m_open.rows() - shape.height, rect.row + rect.height); ++row)
            for (int col = std::max(0, rect.col - shape.width);
                 col <= std::min(m_open.cols() - shape.width, rect.col + rect.width); ++col) {
                const int slot = row * m_open.cols() + col;
                const SlotRect other{row, col, shape.height, shape.width};
                if (!way.fitsNow.has(slot)) continue;
                if (other.overlaps(rect))
                    way.fitsNow.remove(slot);
                else
                    way.worthNow[static_cast<std::size_t>(slot)] = worth(other);
            }
    }
}

int Placer::worth(const SlotRect& rect) const {
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

/// Searches on the slots that a container can cover at all; where these are too few, not even that.
bool Placer::pack(const Stay& stay) {
    m_open.clear();
    for (std::size_t at = 0; at < m_wayCount; ++at) {
        const Way& way = m_ways[at];
        for (int slot = way.fits.next(0); slot < way.fits.size(); slot = way.fits.next(slot + 1))
            m_open.add(SlotRect{slot / m_open.cols(), slot % m_open.cols(), way.footprint.height,
                                way.footprint.width});
    }
    if (m_open.count() < stay.containers * stay.footprint.height * stay.footprint.width) return false;
    const Pieces pieces{stay.footprint, stay.turn, stay.containers};
    if (packPlate(m_open, {&pieces, 1}, packSteps, m_packed) != Verdict::Packed) return false;
    m_best = m_packed.front();
    return true;
}

} // namespace warmbench::planner::packing
