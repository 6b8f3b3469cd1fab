#pragma once

#include "core/planner/problem.h"

#include <cstdint>
#include <string>
#include <vector>

namespace warmbench::planner {

struct PlacedBatch {
    int batch = 0;
    int strikeDay = 0;
    std::vector<PlacedStay> stays;
};

struct UnplacedBatch {
    int batch = 0;
    std::string reason; ///< the rule that held it back, in words
    /// Thousandths that it costs to place it, where that is more than its value; 0 where another rule held it
    /// back. Not written into files.
    std::int64_t dearerThanValue = 0;
};

/// A placed batch that is late or off its ideal heat.
struct Compromise {
    int batch = 0;
    std::string reason; ///< what it loses and why it is not better, in words
};

struct MatRun {
    int from = 0;
    int to = 0;       ///< first day after
    int setPoint = 0; ///< index of the zone's setPoints
};

struct ZoneRuns {
    int zone = 0;
    std::vector<MatRun> runs; ///< in order, not overlapping; days in no run are off
};

/// All in thousandths of a currency unit, exact.
struct Cost {
    std::int64_t unplaced = 0;
    std::int64_t late = 0;
    std::int64_t offIdeal = 0;
    std::int64_t mats = 0;
    std::int64_t moves = 0;
    std::int64_t scatter = 0;
    std::int64_t changes = 0; ///< of the plan that was made before

    [[nodiscard]] std::int64_t total() const {
        return unplaced + late + offIdeal + mats + moves + scatter + changes;
    }
    friend bool operator==(const Cost&, const Cost&) = default;
};

struct Answer {
    std::vector<PlacedBatch> placed;     ///< in the order of the batches
    std::vector<UnplacedBatch> unplaced; ///< in the order of the batches
    std::vector<ZoneRuns> mats;          ///< zones in order, only those that run
    Cost cost;
    std::int64_t bound = 0; ///< thousandths, proven lower bound of the total; 0 where none is known
};

} // namespace warmbench::planner
