#pragma once

#include "core/planner/packing/repack.h"
#include "core/planner/search/state.h"

#include <cstdint>
#include <unordered_set>
#include <vector>

namespace warmbench::planner::search {

/// Makes room in a zone by giving what stands there other slots: enough are free on each day, but not where
/// containers of their shape can stand. Packs the zone anew, exactly where that fails, and remembers what did
/// not fit together; large zones are let be. What is held, pinned to slots or outside the scope is never
/// moved, nor what stands as in the plan made before.
class Refit {
public:
    explicit Refit(const Model& model) : m_model(&model) {}

    /// Gives all stays of `plan`, which is not placed, in `zone` slots of their own, with other slots for
    /// what stands there. False, with nothing changed, where none are found. Batches that get other slots
    /// are in `moved`, as they stand then; those there before the call stay as they are told there.
    [[nodiscard]] bool makeRoom(const State& state, const Scope& scope, int zone, Plan& plan,
                                std::vector<Plan>& moved);

private:
    /// A load of the zone: which stay of which batch it is.
    struct Stayer {
        int batch = 0;
        std::size_t stay = 0; ///< among those of its batch
    };

    void gather(const State& state, const Scope& scope, int zone, const Plan& plan,
                const std::vector<Plan>& moved);
    void add(const Plan& plan, int zone, bool isFixed);
    [[nodiscard]] bool pack(const State& state, int zone);
    [[nodiscard]] std::uint64_t hashOf(const State& state, int zone) const;

    const Model* m_model;
    std::vector<packing::Load> m_loads;
    std::vector<Stayer> m_stayers; ///< of the loads
    packing::Packing m_packing;
    std::unordered_set<std::uint64_t> m_failed; ///< hashes of zones' loads that did not fit together
};

} // namespace warmbench::planner::search
