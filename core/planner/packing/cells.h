#pragma once

#include "core/planner/problem.h"

#include <bit>
#include <cstdint>
#include <vector>

namespace warmbench::planner::packing {

/// A set of the slots of one grid of `rows` x `cols`, one bit a slot, row by row without gaps; slot
/// `row * cols + col` is bit `slot % 64` of word `slot / 64`. Bits past the last slot are always 0.
/// Only sets of the same grid go together. Nothing here allocates but the constructor and `reshape`.
class Cells {
public:
    Cells() = default;
    Cells(int rows, int cols) { reshape(rows, cols); }

    /// The empty set of another grid.
    void reshape(int rows, int cols);

    [[nodiscard]] int rows() const { return m_rows; }
    [[nodiscard]] int cols() const { return m_cols; }
    [[nodiscard]] int size() const { return m_rows * m_cols; }
    [[nodiscard]] int words() const { return static_cast<int>(m_words.size()); }
    [[nodiscard]] std::uint64_t* data() { return m_words.data(); }
    [[nodiscard]] const std::uint64_t* data() const { return m_words.data(); }

    [[nodiscard]] bool has(int slot) const { return (m_words[word(slot)] >> (slot & 63)) & 1; }
    [[nodiscard]] bool has(int row, int col) const { return has(row * m_cols + col); }
    void add(int slot) { m_words[word(slot)] |= std::uint64_t{1} << (slot & 63); }
    void remove(int slot) { m_words[word(slot)] &= ~(std::uint64_t{1} << (slot & 63)); }

    void clear();
    void fill();
    void add(const SlotRect& rect);
    void remove(const SlotRect& rect);
    /// Every slot of `rect`, which must lie within the grid, is in the set.
    [[nodiscard]] bool covers(const SlotRect& rect) const;

    [[nodiscard]] int count() const;
    [[nodiscard]] bool empty() const;
    /// The first slot not before `slot`, or `size()`.
    [[nodiscard]] int next(int slot) const;

    void unite(const Cells& other);
    void intersect(const Cells& other);
    void subtract(const Cells& other);
    void complement();

    /// Into `out`: the slots at which a container of `footprint` can have its first corner (least row and
    /// column) so that it covers slots of this set only. `out` must be another object; it takes this grid.
    void corners(const Footprint& footprint, Cells& out) const;
    /// Into `out`: the slots that share an edge with a slot of this set, and the set itself.
    void grown(Cells& out) const;

    friend bool operator==(const Cells&, const Cells&) = default;

private:
    static std::size_t word(int slot) { return static_cast<std::size_t>(slot) >> 6; }
    /// This set and (`keep`) the same moved by `by` slots towards slot 0.
    void intersectShiftedDown(int by);

    int m_rows = 0;
    int m_cols = 0;
    std::vector<std::uint64_t> m_words;
};

/// The two share part of an edge.
[[nodiscard]] bool touch(const SlotRect& a, const SlotRect& b);

/// Number of connected groups of containers, 0 of none; containers are connected that share part of an edge.
[[nodiscard]] int groups(const std::vector<SlotRect>& containers);

} // namespace warmbench::planner::packing
