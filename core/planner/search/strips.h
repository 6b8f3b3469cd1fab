#pragma once

#include "core/planner/packing/repack.h"

#include <cstdint>
#include <span>
#include <vector>

namespace warmbench::planner::search {

/// Gives slots to loads of single slots at once, along a line that runs to and fro over the bench, so that
/// neighbours on the line share an edge: each load, in the order of days, takes the shortest free piece of
/// line that holds it, else the longest pieces. Fits whenever the counts of the days do. Holds the working
/// memory.
class Strips {
public:
    /// Fills `slots`, by load, and returns the cost of scatter; of two lines, along rows or along columns,
    /// the better. Loads must be in the order of their first days, those with `fixed` slots first and from
    /// day 0.
    std::int64_t pack(const Zone& zone, int days, std::span<const packing::Load> loads,
                      std::int64_t scatterCost, std::vector<std::vector<SlotRect>>& slots);

private:
    struct Piece {
        int first;
        int length;
    };

    void layLine(const Zone& zone, bool alongRows);
    void packLine(int days, std::span<const packing::Load> loads, std::vector<std::vector<SlotRect>>& slots);
    void findPieces(int day);

    std::vector<SlotRect> m_line; ///< slots that are not blocked
    std::vector<char> m_joins;    ///< by place on the line: shares an edge with the one before
    std::vector<int> m_until;     ///< by place on the line: taken until this day
    std::vector<Piece> m_pieces;
    std::vector<std::vector<SlotRect>> m_other;
};

} // namespace warmbench::planner::search
