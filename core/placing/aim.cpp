#include "core/placing/aim.h"

#include <algorithm>
#include <queue>

namespace warmbench::placing {
namespace {

/// How well a place is chosen, the less the better: how far the middle of the container lies from the middle
/// of the slot aimed at, in half slots, the further of the two ways; then how little it leans on others of
/// the patch, so that this grows as a rectangle and not as a star.
struct Distance {
    int further = 0;
    int leaning = 0; ///< below 0: containers beside it
    int sum = 0;     ///< of both ways
    friend auto operator<=>(const Distance&, const Distance&) = default;
};

struct Candidate {
    Distance distance;
    Slot corner;
    friend auto operator<=>(const Candidate&, const Candidate&) = default;
};

using Queue = std::priority_queue<Candidate, std::vector<Candidate>, std::greater<>>;

class Patch {
public:
    Patch(const planner::packing::Cells& free, Footprint footprint, Slot aim)
        : m_free(free), m_size(footprint), m_aim(aim), m_leaning(static_cast<std::size_t>(free.size()), 0) {}

    void fill(int count) {
        while (static_cast<int>(m_places.size()) < count) {
            if (m_beside.empty() && !seed()) return;
            const Slot corner = m_beside.top().corner;
            m_beside.pop();
            const SlotRect rect = at(corner);
            if (!m_free.covers(rect)) continue;
            m_free.remove(rect);
            m_places.push_back(rect);
            pushBeside(corner);
        }
    }
    [[nodiscard]] std::vector<SlotRect> sorted() && {
        std::sort(m_places.begin(), m_places.end());
        return std::move(m_places);
    }

private:
    [[nodiscard]] SlotRect at(Slot corner) const {
        return {corner.row, corner.col, m_size.height, m_size.width};
    }
    [[nodiscard]] Candidate candidate(Slot corner, int leaning) const {
        const int rows = std::abs(2 * corner.row + m_size.height - 2 * m_aim.row - 1);
        const int cols = std::abs(2 * corner.col + m_size.width - 2 * m_aim.col - 1);
        return {{std::max(rows, cols), leaning, rows + cols}, corner};
    }
    void push(Slot corner) {
        const SlotRect rect = at(corner);
        if (!rect.within(m_free.rows(), m_free.cols())) return;
        if (!m_free.covers(rect)) return;
        // One that was there before with less to lean on comes later and is taken by then.
        int& leaning = m_leaning[static_cast<std::size_t>(corner.row * m_free.cols() + corner.col)];
        m_beside.push(candidate(corner, --leaning));
    }
    void pushBeside(Slot corner) {
        for (int col = 1 - m_size.width; col < m_size.width; ++col) {
            push({corner.row - m_size.height, corner.col + col});
            push({corner.row + m_size.height, corner.col + col});
        }
        for (int row = 1 - m_size.height; row < m_size.height; ++row) {
            push({corner.row + row, corner.col - m_size.width});
            push({corner.row + row, corner.col + m_size.width});
        }
    }
    /// Begins anew at the nearest place that is free; false where none is. All places are put in order once.
    bool seed() {
        if (!m_listed) {
            m_listed = true;
            planner::packing::Cells corners;
            m_free.corners(m_size, corners);
            for (int slot = corners.next(0); slot < corners.size(); slot = corners.next(slot + 1))
                m_all.push_back(candidate({slot / corners.cols(), slot % corners.cols()}, 0));
            std::sort(m_all.begin(), m_all.end());
        }
        for (; m_next < m_all.size(); ++m_next)
            if (m_free.covers(at(m_all[m_next].corner))) {
                m_beside.push(m_all[m_next++]);
                return true;
            }
        return false;
    }

    planner::packing::Cells m_free;
    Footprint m_size;
    Slot m_aim;
    std::vector<int> m_leaning; ///< by first corner
    Queue m_beside;             ///< beside what is placed
    std::vector<Candidate> m_all;
    std::size_t m_next = 0;
    bool m_listed = false;
    std::vector<SlotRect> m_places;
};

} // namespace

std::vector<SlotRect> slotsRound(const planner::packing::Cells& free, Footprint footprint, int count,
                                 Slot aim) {
    Patch patch(free, footprint, aim);
    patch.fill(count);
    return std::move(patch).sorted();
}

} // namespace warmbench::placing
