#pragma once

#include "core/planner/packing/occupancy.h"

#include <array>
#include <span>
#include <vector>

namespace warmbench::planner::packing {

/// What one stay asks of a zone: `containers` alike, on the same slots over [from, to).
struct Stay {
    int from = 0;
    int to = 1; ///< first day after
    int containers = 1;
    Footprint footprint;
    bool turn = false;                ///< each container may be turned by a quarter
    std::span<const SlotRect> prefer; ///< the slots of the stay before: taken as they are when they are free
};

/// Finds slots for single stays. Holds the working memory, so one Placer is kept and used again: after the
/// first calls on zones of a size it allocates nothing. Not for two threads at a time.
class Placer {
public:
    /// Fills `slots` with one free place for each container, in as few connected groups as it can, close to
    /// walls and to neighbours in space and time so that what is left stays whole, and nearer the aisle (the
    /// last row) where all else is equal. False, with `slots` empty, when it finds none; for containers of
    /// one slot that is when none exists. Deterministic. The occupancy is not changed.
    [[nodiscard]] bool place(const Occupancy& zone, const Stay& stay, std::vector<SlotRect>& slots);

    /// As `place`, but looks once only: a third of the time, less compact.
    [[nodiscard]] bool placeQuickly(const Occupancy& zone, const Stay& stay, std::vector<SlotRect>& slots);

private:
    /// One way to turn the containers of a stay, and what each of their places is worth.
    struct Way {
        Footprint footprint;
        Cells fits;             ///< first corners on what is free
        std::vector<int> worth; ///< by first corner
        Cells fitsNow;          ///< the same beside what has been placed of the stay
        std::vector<int> worthNow;
        bool isSmall = false; ///< nothing is worth as much as an edge in common with the rest
        Cells beside;         ///< of these, what has an edge in common with what has been placed
    };
    /// Sums of a grid of numbers over rectangles, each from four of them.
    class Sums {
    public:
        void reset(int rows, int cols) {
            m_cols = cols + 1;
            m_sums.assign(place(rows + 1, 0), 0);
        }
        /// The number at a place; row by row, from left to right.
        void add(int row, int col, int value) {
            sum(row + 1, col + 1) = value + sum(row, col + 1) + sum(row + 1, col) - sum(row, col);
        }
        [[nodiscard]] int over(const SlotRect& rect) const {
            const int end = rect.row + rect.height;
            const int right = rect.col + rect.width;
            return sum(end, right) - sum(rect.row, right) - sum(end, rect.col) + sum(rect.row, rect.col);
        }

    private:
        [[nodiscard]] std::size_t place(int row, int col) const {
            return static_cast<std::size_t>(row) * static_cast<std::size_t>(m_cols) +
                   static_cast<std::size_t>(col);
        }
        [[nodiscard]] int& sum(int row, int col) { return m_sums[place(row, col)]; }
        [[nodiscard]] int sum(int row, int col) const { return m_sums[place(row, col)]; }

        int m_cols = 1;
        std::vector<int> m_sums;
    };
    /// Where a stay would begin, all else being equal.
    enum class Lean : std::uint8_t { None, Left, Right };

    [[nodiscard]] bool keepPreferred(const Occupancy& zone, const Stay& stay,
                                     std::vector<SlotRect>& slots) const;
    void look(const Occupancy& zone, const Stay& stay);
    void addWay(const Footprint& footprint);
    void grow(const Stay& stay, std::size_t firstWay, std::size_t lastWay, Lean lean);
    void leanTo(Way& way, Lean lean) const;
    [[nodiscard]] bool findBest(std::size_t firstWay, std::size_t lastWay);
    [[nodiscard]] bool findBestOf(std::size_t firstWay, std::size_t lastWay, bool beside);
    void stand(const SlotRect& rect, std::size_t firstWay, std::size_t lastWay);
    void sumUp();
    [[nodiscard]] int timeWorth(int row, int col) const;
    [[nodiscard]] int worth(const SlotRect& rect) const;
    [[nodiscard]] int exposure() const;
    void keepBetter();
    [[nodiscard]] bool pack(const Stay& stay);

    Cells m_free;   ///< over the whole stay, before anything of it is placed
    Cells m_open;   ///< of these, what is still free
    Cells m_before; ///< free on the day before the stay
    Cells m_after;  ///< free on the day after it
    Sums m_walls; ///< one row and column on: what a place has on a wall or a neighbour, of containers of some
                  ///< slots
    Sums m_times; ///< what a place has in time
    std::array<Way, 2> m_ways;
    std::size_t m_wayCount = 0;
    SlotRect m_bestRect;
    std::vector<SlotRect> m_placed;
    std::vector<SlotRect> m_best;
    std::vector<std::vector<SlotRect>> m_packed;
    long m_bestScore = 0;
};

} // namespace warmbench::planner::packing
