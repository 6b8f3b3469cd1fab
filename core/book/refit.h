#pragma once

#include "core/book/command.h"

namespace warmbench {

/// What a Refit or a ClearAway does to what stands in the house, to be told before it is done.
struct RefitEffect {
    /// Containers of a batch, with the first day that they are concerned on.
    struct Containers {
        BatchId batch;
        std::vector<int> containers;
        Day from;
        friend bool operator==(const Containers&, const Containers&) = default;
    };
    std::vector<Containers> unplaced;  ///< that lose their places from then on, and wait to be placed again
    std::vector<Containers> redrawn;   ///< that are shown on other slots on days that are over
    std::vector<Containers> unshown;   ///< for which there is no slot on days that are over
    std::vector<Containers> uncounted; ///< the same, of batches of which no container has one
    std::vector<ZoneId> cut;           ///< zones that were not named and become smaller
    std::vector<ZoneId> gone;          ///< zones that were not named and are taken away
    std::vector<MatRun> runs;          ///< of mats, that are taken out, or their days that are

    [[nodiscard]] bool empty() const {
        return unplaced.empty() && redrawn.empty() && unshown.empty() && uncounted.empty() && cut.empty() &&
               gone.empty() && runs.empty();
    }
};

/// Refused where the command would be.
[[nodiscard]] Result<RefitEffect> effectOf(const HouseBook& book, const Refit& refit);
[[nodiscard]] Result<RefitEffect> effectOf(const HouseBook& book, const ClearAway& clear);

/// A zone on another rectangle of its bench. Blocked slots stay where they are on the bench where it grows or
/// shrinks, go along where it moves as a whole, and are left out where they would be outside it.
[[nodiscard]] Zone reshaped(const Zone& zone, const SlotRect& onBench);

} // namespace warmbench
