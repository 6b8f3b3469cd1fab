#include "core/planner/search/insertion.h"
#include "core/planner/search/previous.h"

#include <algorithm>

/// What a batch costs where it is to stand: as it stood before, and with slots of its own in zones that need
/// them.
namespace warmbench::planner::search {

namespace {

const StayTerms& termsAt(const Model& model, const StayModel& stay, const Stand& stand) {
    const int kind = model.zones[static_cast<std::size_t>(stand.zone)].zoneClass;
    const auto option = std::find_if(stay.options.begin(), stay.options.end(), [&](const StayOption& o) {
        return o.zoneClass == kind && o.state == stand.state;
    });
    return stay.terms(*option, stand.from);
}

} // namespace

std::int64_t directCost(const Model& model, const Plan& plan) {
    const BatchModel& batch = model.batches[static_cast<std::size_t>(plan.batch)];
    const std::size_t containers =
        static_cast<std::size_t>(model.problem->batches[static_cast<std::size_t>(plan.batch)].containers);
    std::int64_t direct = batch.late(plan.stands.back().to);
    std::vector<SlotRect> before;
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        const Stand& stand = plan.stands[k];
        direct += termsAt(model, batch.stays[k], stand).offIdeal();
        const bool placed = model.zones[static_cast<std::size_t>(stand.zone)].placed;
        std::vector<SlotRect> slots;
        if (placed) {
            const auto first = plan.slots.begin() + static_cast<std::ptrdiff_t>(k * containers);
            slots.assign(first, first + static_cast<std::ptrdiff_t>(containers));
            direct += model.scatterCost * (packing::groups(slots) - 1);
            std::sort(slots.begin(), slots.end());
        }
        if (k > 0 && (stand.zone != plan.stands[k - 1].zone || slots != before)) direct += batch.moveCost;
        before.swap(slots);
    }
    return direct + (standsAsBefore(model, plan) ? 0 : batch.changeCost);
}

std::int64_t Inserter::keep(const State& state, int batch, const Taste& taste, Plan& plan,
                            const std::vector<int>* agreed) {
    begin(state, batch, taste);
    return keep(plan, agreed);
}

std::int64_t Inserter::keep(Plan& plan, const std::vector<int>* agreed) {
    if (!m_batch->isKeepable || !m_state->canStrike(m_index, m_batch->previous->front().from)) return never;
    plan.batch = m_index;
    plan.strike = m_batch->previous->front().from;
    plan.stands.clear();
    plan.slots.clear();
    std::int64_t mats = 0;
    for (std::size_t stay = 0; stay < m_batch->stays.size(); ++stay) {
        const std::int64_t mat = keepStay(stay, agreed, plan);
        if (mat == never) return never;
        mats += mat;
    }
    if (disagreeing(plan)) return never;
    plan.direct = directCost(*m_model, plan);
    const std::int64_t cost = plan.direct + mats;
    return cost <= m_batch->value ? cost : never;
}

std::int64_t Inserter::keepStay(std::size_t stay, const std::vector<int>* agreed, Plan& plan) const {
    const PlacedStay& before = (*m_batch->previous)[stay];
    const int wanted = agreed ? (*agreed)[at(m_batch->firstStay) + stay] : KeptStates::any;
    std::int64_t least = never;
    std::int64_t leastMat = never;
    Stand stand;
    for (const StayOption& option : m_batch->stays[stay].options) {
        if (option.zoneClass != m_model->zones[at(before.zone)].zoneClass) continue;
        if (wanted != KeptStates::any && option.state != wanted) continue;
        const int length = keptLength(*m_batch, stay, option);
        if (length == 0) continue;
        const std::int64_t mat = matCost(before.zone, option.state, before.from, before.from + length);
        const std::int64_t cost =
            mat == never ? never : mat + m_batch->stays[stay].terms(option, before.from).offIdeal();
        if (cost >= least) continue;
        least = cost;
        leastMat = mat;
        stand = {before.zone, option.state, before.from, before.from + length};
    }
    if (least == never) return never;
    plan.stands.push_back(stand);
    plan.slots.insert(plan.slots.end(), before.slots.begin(), before.slots.end());
    const bool isFree = !m_model->zones[at(stand.zone)].placed ||
                        std::all_of(before.slots.begin(), before.slots.end(), [&](const SlotRect& slot) {
                            return m_state->occupancy(stand.zone).isFree(slot, stand.from, stand.to);
                        });
    return isFree ? leastMat : never;
}

void Inserter::computeDirect(Plan& plan) const {
    plan.direct = m_batch->late(plan.stands.back().to) + m_batch->changeCost;
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        plan.direct += termsAt(*m_model, m_batch->stays[k], plan.stands[k]).offIdeal();
        if (k > 0 && plan.stands[k].zone != plan.stands[k - 1].zone) plan.direct += m_batch->moveCost;
    }
}

bool Inserter::findSlots(const Plan& plan, std::size_t stay) {
    const Batch& batch = m_model->problem->batches[at(m_index)];
    const Stand& stand = plan.stands[stay];
    const packing::Occupancy& zone = m_state->occupancy(stand.zone);
    if (stay == 0 && batch.pin && !batch.pin->slots.empty()) {
        m_slots = batch.pin->slots;
        return std::all_of(m_slots.begin(), m_slots.end(),
                           [&](const SlotRect& slot) { return zone.isFree(slot, stand.from, stand.to); });
    }
    packing::Stay wanted{stand.from, stand.to, batch.containers, batch.footprint, batch.turn, {}};
    if (stay > 0 && stand.zone == plan.stands[stay - 1].zone) wanted.prefer = m_before;
    return m_placer.placeQuickly(zone, wanted, m_slots);
}

bool Inserter::refit(int zone, Plan& plan) {
    if (m_refitsLeft == 0) return false;
    --m_refitsLeft;
    if (!m_refit.makeRoom(*m_state, *m_scope, zone, plan, m_movedNow)) return false;
    m_refitted.push_back(zone);
    return true;
}

bool Inserter::placeSlots(Plan& plan) {
    const std::size_t containers = at(m_model->problem->batches[at(m_index)].containers);
    plan.slots.assign(containers * plan.stands.size(), {});
    m_before.clear();
    m_movedNow.clear();
    m_refitted.clear();
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        const Stand& stand = plan.stands[k];
        if (!m_model->zones[at(stand.zone)].placed) continue;
        const auto slots = plan.slots.begin() + static_cast<std::ptrdiff_t>(k * containers);
        const bool isRefitted =
            std::find(m_refitted.begin(), m_refitted.end(), stand.zone) != m_refitted.end();
        if (!isRefitted && findSlots(plan, k)) {
            std::copy(m_slots.begin(), m_slots.end(), slots);
        } else if (!isRefitted && !refit(stand.zone, plan)) {
            m_barred.push_back(stand);
            return false;
        }
        m_before.assign(slots, slots + static_cast<std::ptrdiff_t>(containers));
    }
    plan.direct = directCost(*m_model, plan);
    return true;
}

std::int64_t Inserter::dearerMoved() const {
    std::int64_t dearer = 0;
    for (const Plan& plan : m_movedNow) dearer += plan.direct - m_state->plan(plan.batch).direct;
    return dearer;
}

} // namespace warmbench::planner::search
