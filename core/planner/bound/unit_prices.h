#pragma once

#include "core/planner/bound/bound.h"
#include "core/planner/problem.h"

#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

namespace warmbench::planner {

/// What the relaxation would fall by with one more unit of each scarce thing, in thousandths: its dual
/// prices.
struct UnitPrices {
    std::vector<std::int64_t> zones;  ///< by zone, of one more column of slots
    std::vector<std::int64_t> stocks; ///< by stock, of `cuttings` more on every day
    std::vector<std::int64_t> days;   ///< by day of the horizon, of hands for `cuttings` more
};

/// Climbs the relaxation (see DualFunction) until it hardly rises or `stop` is requested, and reads the
/// prices off where it stands: a change in the limits is evaluated anew at the same multipliers. An estimate
/// of what a unit saves, to be checked by solving again. Zones of one kind have one price. Nothing where the
/// relaxation would take more memory than `options` allow, or `stop` came before it was built.
[[nodiscard]] std::optional<UnitPrices> unitPrices(const Problem& problem, std::int64_t cuttings,
                                                   const BoundOptions& options, const std::stop_token& stop);

} // namespace warmbench::planner
