#pragma once

#include "core/planner/bound/bound.h"
#include "core/planner/planner.h"

#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

/// What more room, stock and hands, and each mat, are worth in a plan.
namespace warmbench::planner {

/// Cuttings in one more unit of a stock, or of a day's hands.
inline constexpr std::int64_t cuttingsOfUnit = 10;

/// One more unit of something scarce: a column of slots of a zone, `cuttingsOfUnit` cuttings of a stock on
/// every day, hands for as many on one day.
struct UnitWorth {
    enum class Of : std::uint8_t { Zone, Stock, Day };

    Of of = Of::Zone;
    int index = 0;          ///< of the zone, the stock or the day
    int alike = 1;          ///< zones of which it is said
    std::int64_t price = 0; ///< thousandths, by the dual prices of the relaxation
    /// Thousandths that solving again with it saved, 0 where nothing was found; absent: it was not solved
    /// again.
    std::optional<std::int64_t> saved;
    bool exact = false; ///< both plans are proven to be the best
};

/// The mat of a zone, or one that it does not have.
struct MatWorth {
    int zone = 0;
    int alike = 1;                     ///< zones of which it is said
    std::optional<int> like;           ///< zone whose mat it would have; absent: it has one
    std::int64_t cost = 0;             ///< thousandths that running it costs in the plan (with it)
    std::optional<std::int64_t> saves; ///< thousandths that the plan costs less with it, running costs paid;
                                       ///< absent: what is held or pinned cannot do without it
    bool exact = false;                ///< both plans are proven to be the best
};

struct Worth {
    std::int64_t total = 0; ///< thousandths: of the best plan that is known after all of the solving
    bool priced = true;     ///< false: the prices would have taken too much memory, and no unit is known
    std::vector<UnitWorth>
        units; ///< those with a price: zones, stocks and days, of the latter two the dearest first
    std::vector<MatWorth> mats; ///< in the order of the zones, one of each kind
};

/// Reckons what units and mats are worth beside `base`, a solution of `problem`: dual prices first, then each
/// is checked by solving again with one unit more, or without the mat, with `options`. Zones alike are looked
/// at once; of stocks and of days the few with the highest prices are solved again. A better plan of the
/// problem itself that is met on the way counts as the plan from which is saved. `prices` limits the memory
/// that the dual prices take. Once `stop` is requested units count as not solved again, and the mats that are
/// not looked at yet are left out.
[[nodiscard]] Worth worth(const Problem& problem, const Solved& base, const Options& options,
                          const std::stop_token& stop = {}, const BoundOptions& prices = {});

} // namespace warmbench::planner
