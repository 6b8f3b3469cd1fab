#pragma once

#include <cstddef>
#include <cstdint>

namespace warmbench::planner::search {

/// A moment of a search that cools one or more times.
struct Cooling {
    double progress = 0; ///< 0 at the beginning to 1 at the end of all
    int cycles = 1;
    double warmth = 0.15; ///< of the first heat, 0 to 1: less when there is little time to cool down again

    /// The cooling that suits so many rounds for a number of batches, at its beginning.
    [[nodiscard]] static Cooling forRounds(double rounds, std::size_t batches);
    /// The cycle of the moment, from 0; one of odd number goes on from the best.
    [[nodiscard]] int cycle() const;
    /// Heat of the moment, where a batch costs so much on average; in its unit.
    [[nodiscard]] std::int64_t heat(double meanCost) const;

private:
    [[nodiscard]] double along() const; ///< in cycles
};

} // namespace warmbench::planner::search
