#pragma once

#include "core/book/progress.h"
#include "core/crop/safety.h"
#include "core/round/due.h"
#include "core/round/round.h"
#include "core/season/materials.h"

#include <set>

namespace warmbench::season {

/// Cuttings of one wood to be taken from one stock.
struct Taking {
    std::optional<StockId> stock; ///< nothing where the batches name none
    TaxonId taxon;
    Wood wood = Wood::Softwood;
    int cuttings = 0;
    Phrase lookFor; ///< length, nodes and what to leave, by the recipe
};

/// A mat whose set-point is another one from this day on; nothing: off.
struct MatChange {
    ZoneId zone;
    std::optional<Celsius> before;
    std::optional<Celsius> now;
};

/// Something amiss with a batch where it stands.
struct DayTrouble {
    StayId stay;
    Trouble trouble;
};

/// All that a day asks for.
struct DayWork {
    Day day;
    std::vector<Taking> takings;    ///< for the strikes, by stock
    Materials materials;            ///< for the strikes
    std::vector<BatchId> strikes;   ///< planned for the day, and those of days before that are still planned
    std::vector<round::Stop> stops; ///< of the round, without those that were looked at on that day
    std::vector<round::Due> due;    ///< to be weaned or potted on
    std::vector<MatChange> mats;
    std::vector<BatchId> behind;      ///< likely to be ready so much later than planned that it matters
    std::vector<DayTrouble> troubles; ///< too cold, too warm, a wrong cover, dying; of what stands
    std::set<Hazard> hazards;         ///< of all of it
};

/// The work of the day that the forecast is seen from. What was left undone on days before is in it.
[[nodiscard]] DayWork dayWork(const HouseBook& book, const forecast::BookForecast& forecast);

} // namespace warmbench::season
