#pragma once

#include "core/planner/bound/zone_kinds.h"
#include "core/planner/problem.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace warmbench::planner {

/// One way in which one stay of a batch can be had.
struct StayChoice {
    int kind = 0;      ///< of zone
    int setPoint = -1; ///< index of the zone's set-points, -1 is off
    int from = 0;
    int to = 0;        ///< first day after
    bool kept = false; ///< stands where the stay before stood, so that no move is paid
    /// Thousandths: off ideal, late, move, and of a first stay the change; never more than the true cost.
    std::int64_t cost = 0;
};

/// Costs above this are taken as this, which keeps every bound valid and every sum of a few within int64.
inline constexpr std::int64_t highestCost = 10'000'000'000'000'000;

/// Cuttings that can be struck on `day`; INT64_MAX where that is not limited.
[[nodiscard]] std::int64_t strikeCapacityOn(const Problem& problem, int day);

/// Cuttings that `stock` gives up to and including `day`.
[[nodiscard]] std::int64_t stockUpTo(const Stock& stock, int day);

/// Slots that all containers of `batch` cover together.
[[nodiscard]] std::int64_t slotsOf(const Batch& batch);

/// Thousandths, what is lost if `batch` is not placed: its value, and the change where it was placed before.
[[nodiscard]] std::int64_t valueOf(const Problem& problem, const Batch& batch);

/// For each stay of a batch, in order, its choices.
using StayChoices = std::vector<std::vector<StayChoice>>;

/// Every choice of batch `index` that some optimal plan could make. Left out are those that break a rule by
/// themselves, those that no chain of stays reaches, and, unless the batch is pinned, those of chains that
/// cost more than the batch's value: such a plan is not worse without the batch. Nothing where there are too
/// many choices to look at; a bound then counts nothing for the batch.
[[nodiscard]] std::optional<StayChoices> stayChoices(const Problem& problem, const ZoneKinds& zones,
                                                     int index);

} // namespace warmbench::planner
