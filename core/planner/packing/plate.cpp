#include "core/planner/packing/plate.h"

#include "core/planner/packing/columns.h"
#include "core/planner/packing/conservative.h"
#include "core/planner/packing/hash.h"

#include <algorithm>
#include <unordered_set>

namespace warmbench::planner::packing {

namespace {

constexpr long easySteps = 2000; ///< of search, before other proofs are tried

struct PlacedShape {
    Footprint footprint;
    std::size_t piece;      ///< entry of the pieces
    std::vector<char> rows; ///< by row, whether a container's corner may lie there
    std::vector<char> cols; ///< by column
};

SlotRect transposed(const SlotRect& rect) {
    return {rect.col, rect.row, rect.width, rect.height};
}

Cells transposed(const Cells& cells) {
    Cells out(cells.cols(), cells.rows());
    for (int slot = cells.next(0); slot < cells.size(); slot = cells.next(slot + 1))
        out.add((slot % cells.cols()) * cells.rows() + slot / cells.cols());
    return out;
}

/// The grid's rows run along its short side, so that few slots lie between what is decided and what is not.
class PlateSearch {
public:
    PlateSearch(Cells free, bool swapped, std::span<const Pieces> pieces, long steps,
                std::vector<std::vector<SlotRect>>& slots)
        : m_open(std::move(free)), m_swapped(swapped), m_stepsLeft(steps), m_slots(slots) {
        m_spare = m_open.count();
        for (std::size_t index = 0; index < pieces.size(); ++index) {
            const Footprint& given = pieces[index].footprint;
            const Footprint turned{given.width, given.height};
            m_left.push_back(pieces[index].count);
            m_spare -= pieces[index].count * given.height * given.width;
            m_containersLeft += pieces[index].count;
            m_shapes.push_back({swapped ? turned : given, index, {}, {}});
            if (pieces[index].turn && given != turned)
                m_shapes.push_back({swapped ? given : turned, index, {}, {}});
        }
        std::stable_sort(m_shapes.begin(), m_shapes.end(), [](const PlacedShape& a, const PlacedShape& b) {
            return a.footprint.height * a.footprint.width > b.footprint.height * b.footprint.width;
        });
    }

    Verdict run() {
        if (m_spare < 0) return Verdict::Cannot;
        findPatterns();
        if (from(0)) return Verdict::Packed;
        return m_stepsLeft < 0 ? Verdict::Unknown : Verdict::Cannot;
    }

private:
    /// All slots before `slot` are decided. The slots that may still stay empty follow from the rest.
    bool from(int slot) { // NOLINT(misc-no-recursion)
        if (m_containersLeft == 0) return true;
        slot = m_open.next(slot);
        if (slot == m_open.size() || --m_stepsLeft < 0) return false;
        const std::uint64_t position = hash(slot);
        if (m_failed.count(position) != 0) return false;
        for (const PlacedShape& shape : m_shapes)
            if (m_left[shape.piece] > 0 && begins(slot, shape)) return true;
        if (m_spare > 0) {
            --m_spare;
            m_open.remove(slot);
            if (from(slot + 1)) return true;
            m_open.add(slot);
            ++m_spare;
        }
        if (m_stepsLeft >= 0) m_failed.insert(position);
        return false;
    }

    /// Containers can be pushed towards the first row and column until each rests on a wall, a slot that is
    /// not free or another container: then their corners lie on sums of lengths (normal patterns, Herz 1972,
    /// Christofides and Whitlock 1977).
    void findPatterns() {
        for (PlacedShape& shape : m_shapes) {
            shape.rows = sums(shape.piece, m_open.rows(), false);
            shape.cols = sums(shape.piece, m_open.cols(), true);
        }
    }

    /// By place along one axis, whether a container of `piece` may begin there.
    [[nodiscard]] std::vector<char> sums(std::size_t piece, int length, bool alongCols) const {
        std::vector<char> reached(static_cast<std::size_t>(length), 0);
        for (int slot = m_open.next(0); slot < m_open.size(); slot = m_open.next(slot + 1)) {
            const int row = slot / m_open.cols();
            const int col = slot % m_open.cols();
            const bool rests =
                alongCols ? col == 0 || !m_open.has(slot - 1) : row == 0 || !m_open.has(slot - m_open.cols());
            if (rests) reached[static_cast<std::size_t>(alongCols ? col : row)] = 1;
        }
        for (std::size_t other = 0; other < m_left.size(); ++other)
            for (int count = m_left[other] - (other == piece ? 1 : 0); count > 0; --count)
                for (int at = length - 1; at >= 0; --at)
                    for (const PlacedShape& shape : m_shapes) {
                        const int step = alongCols ? shape.footprint.width : shape.footprint.height;
                        if (shape.piece == other && at >= step &&
                            reached[static_cast<std::size_t>(at - step)])
                            reached[static_cast<std::size_t>(at)] = 1;
                    }
        return reached;
    }

    bool begins(int slot, const PlacedShape& shape) { // NOLINT(misc-no-recursion)
        const SlotRect rect{slot / m_open.cols(), slot % m_open.cols(), shape.footprint.height,
                            shape.footprint.width};
        if (!shape.rows[static_cast<std::size_t>(rect.row)] ||
            !shape.cols[static_cast<std::size_t>(rect.col)])
            return false;
        if (!rect.within(m_open.rows(), m_open.cols()) || !m_open.covers(rect)) return false;
        m_open.remove(rect);
        --m_left[shape.piece];
        --m_containersLeft;
        if (from(slot + rect.width)) {
            m_slots[shape.piece].push_back(m_swapped ? transposed(rect) : rect);
            return true;
        }
        m_open.add(rect);
        ++m_left[shape.piece];
        ++m_containersLeft;
        return false;
    }

    /// Of the open slots, all of them at or after `slot`, and of the containers left.
    [[nodiscard]] std::uint64_t hash(int slot) const {
        Hash sum;
        for (int word = slot / 64; word < m_open.words(); ++word) sum.mix(m_open.data()[word]);
        for (const int left : m_left) sum.mix(static_cast<std::uint64_t>(left));
        return sum.value();
    }

    Cells m_open; ///< undecided slots
    bool m_swapped;
    int m_spare = 0; ///< undecided slots that may stay empty
    int m_containersLeft = 0;
    long m_stepsLeft;
    std::vector<PlacedShape> m_shapes; ///< larger first
    std::vector<int> m_left;           ///< containers not yet placed, by piece
    std::unordered_set<std::uint64_t> m_failed;
    std::vector<std::vector<SlotRect>>& m_slots;
};

} // namespace

Verdict packPlate(const Cells& free, std::span<const Pieces> pieces, long steps,
                  std::vector<std::vector<SlotRect>>& slots) {
    slots.assign(pieces.size(), {});
    const Cells across = transposed(free);
    const bool swapped = free.cols() > free.rows();
    const auto search = [&](long limit) {
        return PlateSearch(swapped ? across : free, swapped, pieces, limit, slots).run();
    };
    const Verdict soon = search(std::min(steps, easySteps));
    if (soon != Verdict::Unknown || steps <= easySteps) return soon;
    if (tooMuch(free.rows(), free.cols(), pieces)) return Verdict::Cannot;
    std::vector<Pieces> turned(pieces.begin(), pieces.end());
    for (Pieces& one : turned) std::swap(one.footprint.height, one.footprint.width);
    if (fitColumns(free, pieces, steps / 4) == Verdict::Cannot) return Verdict::Cannot;
    if (fitColumns(across, turned, steps / 4) == Verdict::Cannot) return Verdict::Cannot;
    return search(steps);
}

} // namespace warmbench::planner::packing
