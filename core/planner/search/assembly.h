#pragma once

#include "core/planner/answer.h"
#include "core/planner/index.h"
#include "core/planner/packing/repack.h"
#include "core/planner/search/state.h"
#include "core/planner/search/strips.h"

#include <cstdint>
#include <functional>
#include <vector>

namespace warmbench::planner::search {

/// Gives slots to plans that were only counted, zone by zone, with little scatter, and makes the answer of
/// them. Remembers each zone's packing, so that plans that differ in few zones cost little.
class Assembly {
public:
    explicit Assembly(const Model& model);

    /// Packs each zone that is not packed already, or not without scatter in as many rounds.
    /// Total cost of the plans with slots given, or `never` where it was stopped before each zone was packed.
    std::int64_t pack(const std::vector<Plan>& plans, const std::vector<int>& held, long rounds,
                      const std::function<bool()>& stopped);
    /// The answer of the plans packed last, without reasons and bound.
    [[nodiscard]] Answer answer(const std::vector<Plan>& plans, const std::vector<int>& held) const;

private:
    struct ZonePacking {
        std::vector<int> stays;           ///< in the order of days
        std::vector<int> loadOf;          ///< by stay
        std::vector<packing::Load> loads; ///< held ones first
        std::vector<std::vector<SlotRect>> slots;
        std::int64_t cost = 0; ///< scatter
        long rounds = 0;       ///< of packing that it was given
    };

    /// The loads of a zone, in the order of days.
    void gather(const std::vector<Plan>& plans, int zone, int held, ZonePacking& into) const;
    void packWithCare(int zone, long rounds);
    [[nodiscard]] ZoneRuns runsOf(const std::vector<Plan>& plans, int zone, int held) const;

    const Model* m_model;
    Strips m_strips;
    std::vector<ZonePacking> m_zones;
    std::vector<std::vector<int>> m_staysIn;
};

} // namespace warmbench::planner::search
