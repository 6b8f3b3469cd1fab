#pragma once

#include "core/planner/problem.h"

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

/// Rule 5: who covers which slot from which day to which. For core/planner/verify only.
namespace warmbench::planner::verify {

/// A slot entry as an answer gives it; it may leave the grid.
struct Rect {
    std::int64_t row = 0;
    std::int64_t col = 0;
    std::int64_t height = 1;
    std::int64_t width = 1;
    friend auto operator<=>(const Rect&, const Rect&) = default;
};

[[nodiscard]] inline Rect asRect(const SlotRect& rect) {
    return {rect.row, rect.col, rect.height, rect.width};
}

[[nodiscard]] inline bool isWithin(const Rect& rect, const Zone& zone) {
    return rect.row + rect.height <= zone.rows && rect.col + rect.width <= zone.cols;
}

/// Calls `visit(slot)` for each slot of a rectangle on the grid, numbered row by row.
template <class Visit>
void forEachSlot(const Rect& rect, const Zone& zone, Visit visit) {
    for (std::int64_t row = rect.row; row < rect.row + rect.height; ++row)
        for (std::int64_t col = rect.col; col < rect.col + rect.width; ++col) visit(row * zone.cols + col);
}

/// All covered slots of the house over the days of the horizon.
class SlotUse {
public:
    explicit SlotUse(const Problem& problem) : m_problem(problem) {}

    /// `who` covers the slots of a zone, numbered row by row, on the days from <= day < to.
    void add(int zone, const std::vector<std::int64_t>& slots, std::int64_t from, std::int64_t to,
             std::string who) {
        to = std::min<std::int64_t>(to, m_problem.days);
        if (from >= to) return;
        const auto name = static_cast<std::uint32_t>(m_names.size());
        m_names.push_back(std::move(who));
        for (const std::int64_t slot : slots) m_uses.push_back({zone, slot, from, to, name});
    }
    /// One sentence for each two that cover the same slot on the same day.
    [[nodiscard]] std::vector<std::string> clashes();

private:
    struct Use {
        int zone;
        std::int64_t slot;
        std::int64_t from;
        std::int64_t to;
        std::uint32_t who; ///< index of m_names
    };
    const Problem& m_problem;
    std::vector<Use> m_uses;
    std::vector<std::string> m_names;
};

} // namespace warmbench::planner::verify
