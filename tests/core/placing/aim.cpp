#include "core/placing/aim.h"

#include "core/planner/packing/cells.h"

#include <catch2/catch.hpp>

#include <string>

using namespace warmbench;
using namespace warmbench::placing;
using planner::packing::Cells;

namespace {

/// `.` is free.
Cells cellsOf(const std::vector<std::string>& rows) {
    Cells cells(static_cast<int>(rows.size()), static_cast<int>(rows.front().size()));
    for (int row = 0; row < cells.rows(); ++row)
        for (int col = 0; col < cells.cols(); ++col)
            if (rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(col)] == '.')
                cells.add(row * cells.cols() + col);
    return cells;
}

/// The grid with the places on it as letters.
std::vector<std::string> drawn(std::vector<std::string> rows, const std::vector<SlotRect>& places) {
    char letter = 'a';
    for (const SlotRect& place : places) {
        for (int row = place.row; row < place.row + place.height; ++row)
            for (int col = place.col; col < place.col + place.width; ++col)
                rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(col)] = letter;
        ++letter;
    }
    return rows;
}

using Rows = std::vector<std::string>;

} // namespace

TEST_CASE("Pots gather round the slot aimed at as a compact patch") {
    const Rows open{"......", "......", "......", "......"};
    CHECK(drawn(open, slotsRound(cellsOf(open), {1, 1}, 1, {2, 3})) ==
          Rows{"......", "......", "...a..", "......"});
    CHECK(drawn(open, slotsRound(cellsOf(open), {1, 1}, 9, {1, 2})) ==
          Rows{".abc..", ".def..", ".ghi..", "......"});
    const auto four = slotsRound(cellsOf(open), {1, 1}, 4, {1, 1});
    CHECK(planner::packing::groups(four) == 1);
    CHECK(drawn(open, four) == Rows{"ab....", "cd....", "......", "......"});
}

TEST_CASE("Pots keep to free slots, and go on elsewhere where what is free is in pieces") {
    const Rows rows{"..#...", "..#...", "..#..."};
    CHECK(drawn(rows, slotsRound(cellsOf(rows), {1, 1}, 7, {0, 0})) == Rows{"ab#c..", "de#...", "fg#..."});
    CHECK(slotsRound(cellsOf(rows), {1, 1}, 99, {0, 0}).size() == 15);
    CHECK(slotsRound(cellsOf({"##", "##"}), {1, 1}, 3, {0, 0}).empty());
    // Aimed at a slot that is taken: the nearest that is free.
    CHECK(drawn(rows, slotsRound(cellsOf(rows), {1, 1}, 1, {1, 2})) == Rows{"..#...", ".a#...", "..#..."});
}

TEST_CASE("Trays lie as they are turned") {
    const Rows open{"......", "......", "......", "......", "......", "......"};
    CHECK(drawn(open, slotsRound(cellsOf(open), {1, 3}, 3, {1, 1})) ==
          Rows{"aaa...", "bbb...", "ccc...", "......", "......", "......"});
    CHECK(drawn(open, slotsRound(cellsOf(open), {3, 1}, 3, {1, 1})) ==
          Rows{"abc...", "abc...", "abc...", "......", "......", "......"});
    const Rows narrow{"..", "..", ".."};
    CHECK(slotsRound(cellsOf(narrow), {1, 3}, 1, {0, 0}).empty());
}
