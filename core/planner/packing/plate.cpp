#include "core/planner/packing/plate.h"

#include <algorithm>
#include <unordered_set>

namespace warmbench::planner::packing {

namespace {

struct Shape {
    Footprint footprint;
    std::size_t piece; ///< entry of the pieces
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
            m_shapes.push_back({swapped ? turned : given, index});
            if (pieces[index].turn && given != turned) m_shapes.push_back({swapped ? given : turned, index});
        }
        std::stable_sort(m_shapes.begin(), m_shapes.end(), [](const Shape& a, const Shape& b) {
            return a.footprint.height * a.footprint.width > b.footprint.height * b.footprint.width;
        });
    }

    Verdict run() {
        if (m_spare < 0) return Verdict::Cannot;
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
        for (const Shape& shape : m_shapes)
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

    bool begins(int slot, const Shape& shape) { // NOLINT(misc-no-recursion)
        const SlotRect rect{slot / m_open.cols(), slot % m_open.cols(), shape.footprint.height,
                            shape.footprint.width};
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
        std::uint64_t sum = 0;
        const auto mix = [&sum](std::uint64_t value) { // the finalizer of SplitMix64
            sum += value + 0x9e3779b97f4a7c15U;
            sum = (sum ^ (sum >> 30)) * 0xbf58476d1ce4e5b9U;
            sum = (sum ^ (sum >> 27)) * 0x94d049bb133111ebU;
            sum ^= sum >> 31;
        };
        for (int word = slot / 64; word < m_open.words(); ++word) mix(m_open.data()[word]);
        for (const int left : m_left) mix(static_cast<std::uint64_t>(left));
        return sum;
    }

    Cells m_open; ///< undecided slots
    bool m_swapped;
    int m_spare = 0; ///< undecided slots that may stay empty
    int m_containersLeft = 0;
    long m_stepsLeft;
    std::vector<Shape> m_shapes; ///< larger first
    std::vector<int> m_left;     ///< containers not yet placed, by piece
    std::unordered_set<std::uint64_t> m_failed;
    std::vector<std::vector<SlotRect>>& m_slots;
};

} // namespace

Verdict packPlate(const Cells& free, std::span<const Pieces> pieces, long steps,
                  std::vector<std::vector<SlotRect>>& slots) {
    slots.assign(pieces.size(), {});
    const bool swapped = free.cols() > free.rows();
    return PlateSearch(swapped ? transposed(free) : free, swapped, pieces, steps, slots).run();
}

} // namespace warmbench::planner::packing
