#include "core/planner/search/refit.h"

#include "core/planner/index.h"
#include "core/planner/packing/hash.h"
#include "core/planner/search/held_loads.h"
#include "core/planner/search/insertion.h"
#include "core/planner/search/previous.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// Larger zones, and those in which more containers stand in all, take too long for a search that is asked to
/// stop.
constexpr int mostSlots = 128;
constexpr int mostContainers = 96;
constexpr long packRounds = 8;
constexpr long exactNodes = 200;
constexpr std::size_t mostFailed = 100'000; ///< are remembered

} // namespace

void Refit::add(const Plan& plan, int zone, bool isFixed) {
    const Batch& batch = m_model->problem->batches[at(plan.batch)];
    const std::size_t containers = at(batch.containers);
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        const Stand& stand = plan.stands[k];
        if (stand.zone != zone) continue;
        packing::Load load{stand.from, stand.to, batch.containers, batch.footprint, batch.turn, {}, {},
                           -1,         0};
        const bool isPinned = k == 0 && batch.pin && !batch.pin->slots.empty();
        if (isFixed) {
            const auto first = plan.slots.begin() + static_cast<std::ptrdiff_t>(k * containers);
            load.fixed.assign(first, first + static_cast<std::ptrdiff_t>(containers));
        } else if (isPinned) {
            load.fixed = batch.pin->slots;
        } else if (k > 0 && plan.stands[k - 1].zone == zone) {
            load.follows = static_cast<int>(m_loads.size()) - 1;
            load.moveCost = m_model->batches[at(plan.batch)].moveCost;
        }
        m_loads.push_back(std::move(load));
        m_stayers.push_back({plan.batch, k});
    }
}

void Refit::gather(const State& state, const Scope& scope, int zone, const Plan& plan,
                   const std::vector<Plan>& moved) {
    m_loads.clear();
    m_stayers.clear();
    addHeldLoads(*m_model, zone, state.heldChoice(zone), m_loads);
    m_stayers.resize(m_loads.size(), {-1, 0});
    std::vector<int> batches;
    for (const int stay : state.staysIn(zone)) batches.push_back(m_model->batchOfStay[at(stay)]);
    std::sort(batches.begin(), batches.end());
    batches.erase(std::unique(batches.begin(), batches.end()), batches.end());
    for (const int batch : batches) {
        const auto other =
            std::find_if(moved.begin(), moved.end(), [&](const Plan& one) { return one.batch == batch; });
        const Plan& stands = other == moved.end() ? state.plan(batch) : *other;
        const bool isKept = m_model->batches[at(batch)].changeCost > 0 && standsAsBefore(*m_model, stands);
        add(stands, zone, scope.holds[at(batch)] == 0 || isKept);
    }
    add(plan, zone, false);
}

std::uint64_t Refit::hashOf(const State& state, int zone) const {
    packing::Hash hash;
    hash.mix(at(zone));
    hash.mix(at(state.heldChoice(zone)));
    for (std::size_t i = 0; i < m_loads.size(); ++i) {
        const packing::Load& load = m_loads[i];
        hash.mix(static_cast<std::uint64_t>(m_stayers[i].batch) * 64 + m_stayers[i].stay);
        hash.mix(at(load.from) * 65536 + at(load.to));
        for (const SlotRect& slot : load.fixed) {
            hash.mix(at(slot.row) * 65536 + at(slot.col));
            hash.mix(at(slot.height) * 65536 + at(slot.width));
        }
    }
    return hash.value();
}

bool Refit::pack(const State& state, int zone) {
    const std::uint64_t hash = hashOf(state, zone);
    if (m_failed.count(hash) != 0) return false;
    packing::PackLimits limits;
    limits.steps = packRounds;
    limits.exactSteps = exactNodes;
    limits.improve = false;
    m_packing = packing::repack(m_model->problem->zones[at(zone)], m_model->days, m_loads,
                                m_model->scatterCost, limits);
    if (m_packing.verdict == packing::Verdict::Packed) return true;
    if (m_failed.size() >= mostFailed) m_failed.clear();
    m_failed.insert(hash);
    return false;
}

bool Refit::makeRoom(const State& state, const Scope& scope, int zone, Plan& plan, std::vector<Plan>& moved) {
    if (m_model->zones[at(zone)].slots > mostSlots) return false;
    gather(state, scope, zone, plan, moved);
    int containers = 0;
    for (const packing::Load& load : m_loads) containers += load.containers;
    if (containers > mostContainers) return false;
    if (!pack(state, zone)) return false;
    for (std::size_t i = 0; i < m_stayers.size(); ++i) {
        const Stayer& stayer = m_stayers[i];
        if (stayer.batch < 0) continue;
        const std::vector<SlotRect>& slots = m_packing.slots[i];
        const auto into = [&](Plan& one) {
            return one.slots.begin() + static_cast<std::ptrdiff_t>(stayer.stay * slots.size());
        };
        if (stayer.batch == plan.batch) {
            std::copy(slots.begin(), slots.end(), into(plan));
            continue;
        }
        auto other = std::find_if(moved.begin(), moved.end(),
                                  [&](const Plan& one) { return one.batch == stayer.batch; });
        if (other == moved.end()) {
            Plan before = state.plan(stayer.batch);
            if (std::equal(slots.begin(), slots.end(), into(before))) continue;
            other = moved.insert(moved.end(), std::move(before));
        }
        std::copy(slots.begin(), slots.end(), into(*other));
    }
    for (Plan& other : moved) other.direct = directCost(*m_model, other);
    return true;
}

} // namespace warmbench::planner::search
