#include "core/planner/packing/columns.h"

#include "core/planner/packing/hash.h"

#include <algorithm>
#include <unordered_set>

namespace warmbench::planner::packing {

namespace {

/// Column by column, containers begin in it in the order of their shapes.
class ColumnSearch {
public:
    ColumnSearch(const Cells& free, std::span<const Pieces> pieces, long steps)
        : m_room(static_cast<std::size_t>(free.cols()), 0), m_stepsLeft(steps) {
        for (int slot = free.next(0); slot < free.size(); slot = free.next(slot + 1))
            ++m_room[static_cast<std::size_t>(slot % free.cols())];
        m_spare = free.count();
        for (std::size_t index = 0; index < pieces.size(); ++index) {
            const Footprint& given = pieces[index].footprint;
            m_left.push_back(pieces[index].count);
            m_containersLeft += pieces[index].count;
            m_spare -= pieces[index].count * given.height * given.width;
            m_shapes.push_back({given, index});
            if (pieces[index].turn && given.height != given.width)
                m_shapes.push_back({{given.width, given.height}, index});
        }
        std::stable_sort(m_shapes.begin(), m_shapes.end(), [](const Shape& a, const Shape& b) {
            return a.footprint.height * a.footprint.width > b.footprint.height * b.footprint.width;
        });
    }

    Verdict run() {
        if (m_spare < 0) return Verdict::Cannot;
        if (column(0)) return Verdict::Packed;
        return m_stepsLeft < 0 ? Verdict::Unknown : Verdict::Cannot;
    }

private:
    struct Shape {
        Footprint footprint;
        std::size_t piece;
    };

    bool column(std::size_t col) { // NOLINT(misc-no-recursion)
        if (m_containersLeft == 0) return true;
        if (col == m_room.size()) return false;
        const std::uint64_t position = hash(col);
        if (m_failed.count(position) != 0) return false;
        if (begin(col, 0)) return true;
        if (m_stepsLeft >= 0) m_failed.insert(position);
        return false;
    }

    /// Containers of the shapes from `first` on begin in column `col`, or no more do.
    bool begin(std::size_t col, std::size_t first) { // NOLINT(misc-no-recursion)
        if (--m_stepsLeft < 0) return false;
        for (std::size_t at = first; at < m_shapes.size(); ++at) {
            const Shape& shape = m_shapes[at];
            if (m_left[shape.piece] == 0 || !fits(col, shape.footprint)) continue;
            take(col, shape, 1);
            const bool done = m_containersLeft == 0 || begin(col, at);
            take(col, shape, -1);
            if (done) return true;
        }
        if (m_room[col] > m_spare) return false;
        m_spare -= m_room[col];
        const bool done = column(col + 1);
        m_spare += m_room[col];
        return done;
    }

    /// There is room, and not also one column earlier: what can be moved there begins there.
    [[nodiscard]] bool fits(std::size_t col, const Footprint& shape) const {
        const std::size_t end = col + static_cast<std::size_t>(shape.width);
        if (end > m_room.size() || (col > 0 && m_room[col - 1] >= shape.height)) return false;
        return std::all_of(m_room.begin() + static_cast<std::ptrdiff_t>(col),
                           m_room.begin() + static_cast<std::ptrdiff_t>(end),
                           [&](int room) { return room >= shape.height; });
    }

    void take(std::size_t col, const Shape& shape, int sign) {
        for (std::size_t at = col; at < col + static_cast<std::size_t>(shape.footprint.width); ++at)
            m_room[at] -= sign * shape.footprint.height;
        m_left[shape.piece] -= sign;
        m_containersLeft -= sign;
    }

    [[nodiscard]] std::uint64_t hash(std::size_t col) const {
        Hash sum;
        for (std::size_t at = col == 0 ? 0 : col - 1; at < m_room.size(); ++at)
            sum.mix(static_cast<std::uint64_t>(m_room[at]));
        for (const int left : m_left) sum.mix(static_cast<std::uint64_t>(left));
        sum.mix(col);
        return sum.value();
    }

    std::vector<int> m_room; ///< by column, slots that are left
    long m_stepsLeft;
    int m_spare = 0; ///< slots from this column on that may stay empty
    int m_containersLeft = 0;
    std::vector<Shape> m_shapes; ///< larger first
    std::vector<int> m_left;
    std::unordered_set<std::uint64_t> m_failed;
};

} // namespace

Verdict fitColumns(const Cells& free, std::span<const Pieces> pieces, long steps) {
    return ColumnSearch(free, pieces, steps).run();
}

} // namespace warmbench::planner::packing
