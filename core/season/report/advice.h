#pragma once

#include "core/season/report/season_report.h"

namespace warmbench::season {

enum class AdviceKind : std::uint8_t { Target, Take, Way, Stock, Heat };

/// Something to do otherwise next year, and what speaks for it.
struct Advice {
    AdviceKind kind = AdviceKind::Target;
    std::string subject;  ///< a target, a taxon and wood, a stock
    std::string what;     ///< to do
    std::string evidence; ///< counts, with their interval
    bool thin = false;    ///< too little to change anything by; to be watched
};

/// What a season says of the next one: what rests on enough first, then what is too thin to act on. Takes are
/// compared with recipes and with one another by intervals that allow for batches differing; a target's
/// cuttings are reckoned by her own figures (take::ownFigures) at the nursery's sureness.
[[nodiscard]] std::vector<Advice> adviceOf(const HouseBook& book, const SeasonReport& report);

/// A mat's idle heat is worth a word from this part of all heat on.
inline constexpr double idleThatMatters = 0.05;

} // namespace warmbench::season
