#pragma once

#include <cstddef>
#include <cstdint>

namespace warmbench::planner::search {

/// Houses of so many batches are small: a search of one goes on excursions. In larger ones, what is gained
/// elsewhere hides what one costs.
inline constexpr std::size_t mostOfSmallHouse = 64;

/// How freely a search goes on from what is dearer.
struct Heat {
    std::int64_t dearer = 0;   ///< by so many thousandths on average
    std::int64_t firmness = 0; ///< leaving a batch out counts for so many 1024ths of its cost more
};

/// A moment of a search that cools one or more times.
struct Cooling {
    double progress = 0; ///< 0 at the beginning to 1 at the end of all
    int cycles = 1;
    double warmth = 0.15;   ///< of the first heat, 0 to 1: less when there is little time to cool down again
    bool isOfLarge = false; ///< of a house that is not small
    bool goesOn = false;    ///< from a good plan: no cooling begins anew

    /// The cooling that suits so many rounds for a number of batches, at its beginning.
    [[nodiscard]] static Cooling forRounds(double rounds, std::size_t batches);
    /// The cycle of the moment, from 0; one of odd number goes on from the best.
    [[nodiscard]] int cycle() const;
    /// Heat of the moment, where a batch costs so many thousandths on average.
    [[nodiscard]] Heat heat(double meanCost) const;

private:
    [[nodiscard]] double along() const; ///< in cycles
};

} // namespace warmbench::planner::search
