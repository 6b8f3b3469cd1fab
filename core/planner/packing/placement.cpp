#include "core/planner/packing/placement.h"

#include "core/planner/packing/plate.h"

#include <algorithm>
#include <bit>

namespace warmbench::planner::packing {

namespace {

constexpr long packSteps = 2000;    ///< nodes of exact search for one stay, when growing has failed
constexpr int ownContact = 1 << 16; ///< sharing an edge with the rest of the stay comes before all else
constexpr int sideContact = 64;     ///< for each edge of a slot on a wall, a neighbour or the stay itself
constexpr int timeContact =
    48; ///< for each slot that was taken until the day before, or is from the day after

/// Slots around `of`, corners left out, that `rect` covers; they do not overlap.
int sharedEdge(const SlotRect& of, const SlotRect& rect) {
    const int cols = std::min(of.col + of.width, rect.col + rect.width) - std::max(of.col, rect.col);
    const int rows = std::min(of.row + of.height, rect.row + rect.height) - std::max(of.row, rect.row);
    if (cols > 0) return rect.row + rect.height == of.row || of.row + of.height == rect.row ? cols : 0;
    return rows > 0 && (rect.col + rect.width == of.col || of.col + of.width == rect.col) ? rows : 0;
}

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
    m_best.clear();
    m_wayCount = 0;
    if (stay.footprint.height * stay.footprint.width > 1) sumUp();
    addWay(stay.footprint);
    if (stay.turn && stay.footprint.height != stay.footprint.width)
        addWay({stay.footprint.width, stay.footprint.height});
}

void Placer::addWay(const Footprint& footprint) {
    Way& way = m_ways[m_wayCount++];
    way.footprint = footprint;
    m_free.corners(footprint, way.fits);
    const std::int64_t most = std::int64_t{2} * footprint.height * footprint.width * timeContact +
                              2 * (footprint.height + footprint.width) * sideContact +
                              (m_free.cols() + 1) * sideContact;
    way.isSmall = most < ownContact;
    way.worth.resize(static_cast<std::size_t>(m_free.size()));
    for (int slot = way.fits.next(0); slot < way.fits.size(); slot = way.fits.next(slot + 1))
        way.worth[static_cast<std::size_t>(slot)] =
            worth({slot / m_free.cols(), slot % m_free.cols(), footprint.height, footprint.width});
}

/// Puts one container after the other where it is worth most, in the ways [firstWay, lastWay).
void Placer::grow(const Stay& stay, std::size_t firstWay, std::size_t lastWay, Lean lean) {
    m_open = m_free;
    m_placed.clear();
    for (std::size_t way = firstWay; way < lastWay; ++way) {
        m_ways[way].fitsNow = m_ways[way].fits;
        m_ways[way].worthNow = m_ways[way].worth;
        m_ways[way].beside = m_ways[way].fits;
        m_ways[way].beside.clear();
        if (lean != Lean::None) leanTo(m_ways[way], lean);
    }
    for (int count = 0; count < stay.containers; ++count) {
        if (!findBest(firstWay, lastWay)) return;
        stand(m_bestRect, firstWay, lastWay);
    }
    keepBetter();
}

void Placer::leanTo(Way& way, Lean lean) const {
    const int cols = m_free.cols();
    for (int slot = way.fits.next(0); slot < way.fits.size(); slot = way.fits.next(slot + 1))
        way.worthNow[static_cast<std::size_t>(slot)] +=
            (lean == Lean::Left ? cols - slot % cols : slot % cols) * sideContact;
}

bool Placer::findBest(std::size_t firstWay, std::size_t lastWay) {
    // What is beside the rest of the stay is worth more than all that is not, unless it is very large.
    bool besideFirst = true;
    for (std::size_t at = firstWay; at < lastWay; ++at) besideFirst = besideFirst && m_ways[at].isSmall;
    return (besideFirst && findBestOf(firstWay, lastWay, true)) || findBestOf(firstWay, lastWay, false);
}

bool Placer::findBestOf(std::size_t firstWay, std::size_t lastWay, bool beside) {
    int best = -1;
    for (std::size_t at = firstWay; at < lastWay; ++at) {
        const Way& way = m_ways[at];
        for (int word = 0; word < way.fitsNow.words(); ++word) {
            std::uint64_t bits = way.fitsNow.data()[word];
            if (beside) bits &= way.beside.data()[word];
            for (; bits != 0; bits &= bits - 1) {
                const int slot = word * 64 + std::countr_zero(bits);
                const int value = way.worthNow[static_cast<std::size_t>(slot)];
                if (value <= best) continue;
                best = value;
                const int cols = way.fitsNow.cols();
                m_bestRect = {slot / cols, slot % cols, way.footprint.height, way.footprint.width};
            }
        }
    }
    return best >= 0;
}

void Placer::stand(const SlotRect& rect, std::size_t firstWay, std::size_t lastWay) {
    m_open.remove(rect);
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
                if (other.overlaps(rect)) {
                    way.fitsNow.remove(slot);
                    continue;
                }
                const int shared = sharedEdge(other, rect);
                if (shared == 0) continue;
                int& worthNow = way.worthNow[static_cast<std::size_t>(slot)];
                worthNow += shared * sideContact;
                if (way.beside.has(slot)) continue;
                way.beside.add(slot);
                worthNow += ownContact;
            }
    }
}

/// Sums from the first corner on, so that what a place is worth is had from its corners.
void Placer::sumUp() {
    const int rows = m_free.rows();
    const int cols = m_free.cols();
    m_walls.reset(rows + 2, cols + 2);
    m_times.reset(rows, cols);
    for (int row = -1; row <= rows; ++row)
        for (int col = -1; col <= cols; ++col) {
            const bool outside = row < 0 || col < 0 || row == rows || col == cols;
            m_walls.add(row + 1, col + 1, outside || !m_free.has(row, col) ? sideContact : 0);
            if (!outside) m_times.add(row, col, timeWorth(row, col));
        }
}

int Placer::timeWorth(int row, int col) const {
    return (m_before.has(row, col) ? 0 : timeContact) + (m_after.has(row, col) ? 0 : timeContact);
}

/// What a place is worth before any of the stay is placed.
int Placer::worth(const SlotRect& rect) const {
    const int aisle = rect.row * 32 / m_free.rows();
    if (rect.height * rect.width > 1) {
        // All around but the corners, one row and column on.
        const SlotRect high{rect.row, rect.col + 1, rect.height + 2, rect.width};
        const SlotRect wide{rect.row + 1, rect.col, rect.height, rect.width + 2};
        return m_walls.over(high) + m_walls.over(wide) + m_times.over(rect) + aisle;
    }
    int value = timeWorth(rect.row, rect.col) + aisle;
    around(rect, [&](int row, int col) {
        const bool outside = row < 0 || col < 0 || row >= m_free.rows() || col >= m_free.cols();
        if (outside || !m_free.has(row, col)) value += sideContact;
    });
    return value;
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
