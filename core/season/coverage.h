#pragma once

#include "core/season/need.h"

namespace warmbench::season {

/// How a target stands, the worst that needs a look first.
enum class CoverageState : std::uint8_t {
    Short,    ///< not enough can be counted on, and it is time to do something or too late to
    Late,     ///< enough, but after its day
    Waiting,  ///< nothing is to be done before its season
    OnCourse, ///< enough, in time
    Met,      ///< potted on
};

/// A target as its batches go on.
struct TargetCoverage {
    TargetId target;
    CoverageState state = CoverageState::Waiting;
    int planned = 0;              ///< cuttings of batches not struck yet
    int struck = 0;               ///< cuttings
    double expected = 0;          ///< plants, those potted on with them
    rooting::Interval band{0, 0}; ///< of them, 90 %
    int sure = 0;                 ///< that can be counted on with the asked sureness
    int potted = 0;
    std::optional<Day> ready; ///< likely day on which its last batch, planned ones too, is potted on
    int lateDays = 0;
    TargetNeed need;
    std::vector<Phrase> remedies; ///< what can still be done, in words; empty where nothing needs to be
};

/// All targets, the worst first, then by their days. Bands of several batches are joined as independent:
/// distances from what is expected add as squares.
[[nodiscard]] std::vector<TargetCoverage> coverageOf(const HouseBook& book, const RecipeLibrary& library,
                                                     const PlanRequest& request,
                                                     const forecast::BookForecast& forecast);

} // namespace warmbench::season
