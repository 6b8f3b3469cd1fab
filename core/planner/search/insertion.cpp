#include "core/planner/search/insertion.h"

#include "core/planner/search/previous.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// Tries of giving slots to ever dearer plans of one batch.
constexpr std::size_t slotTries = 12;

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

Inserter::Inserter(const Model& model) : m_model(&model) {
    std::size_t most = 0;
    for (const BatchModel& batch : model.batches) most = std::max(most, batch.stays.size());
    m_rest.resize(most);
    for (const BatchModel& batch : model.batches)
        for (std::size_t k = 0; k < batch.stays.size(); ++k) {
            const StayModel& stay = batch.stays[k];
            m_rest[k].resize(
                std::max(m_rest[k].size(), at(std::max(0, stay.lastStart - stay.firstStart + 1))));
        }
}

void Inserter::begin(const State& state, int batch, const Taste& taste) {
    m_state = &state;
    m_index = batch;
    m_batch = &m_model->batches[at(batch)];
    m_taste = taste;
    m_barred.clear();
}

std::int64_t Inserter::best(const State& state, int batch, const Taste& taste, Random& random, Plan& plan) {
    begin(state, batch, taste);
    m_random = &random;
    if (!m_model->anyPlaced) return search(plan);
    std::int64_t best = m_batch->changeCost > 0 && !m_wish ? keep(plan, nullptr) : never;
    for (std::size_t attempt = 0; attempt < slotTries; ++attempt) {
        const std::int64_t relaxed = search(m_tried);
        if (relaxed >= best) break;
        const std::int64_t direct = m_tried.direct;
        if (!placeSlots(m_tried)) continue;
        const std::int64_t cost = relaxed - direct + m_tried.direct;
        if (cost < best && cost <= m_batch->value) {
            best = cost;
            plan = m_tried;
        }
        if (cost == relaxed) break;
        m_barred.push_back(m_tried.stands[0]);
    }
    return best;
}

std::int64_t Inserter::best(const State& state, const Wish& wish, const Taste& taste, Random& random,
                            Plan& plan) {
    m_wish = &wish;
    const std::int64_t cost = best(state, wish.batch, taste, random, plan);
    m_wish = nullptr;
    return cost;
}

std::int64_t Inserter::search(Plan& plan) { // NOLINT(misc-no-recursion)
    ++m_stamp;
    Rest found;
    found.cost = m_batch->value - m_batch->changeCost + 1;
    const int days = m_batch->strikeLast - m_batch->strikeFirst + 1;
    if (days <= 0) return never;
    const int start = m_random->below(days);
    for (int i = 0; i < days; ++i) {
        const int day = m_batch->strikeFirst + (start + i) % days;
        if (m_wish && m_wish->day != Wish::any ? m_wish->day != day
                                               : m_taste.dayBlink > 0 && m_random->onceIn(m_taste.dayBlink))
            continue;
        if (!m_state->canStrike(m_index, day)) continue;
        if (m_wish)
            tryWish(day, found);
        else
            tryStands(0, day, found);
    }
    if (found.cost > m_batch->value - m_batch->changeCost) return never;
    plan.batch = m_index;
    plan.strike = found.stand.from;
    writeStands(plan, found.stand);
    if (const Stand* other = disagreeing(plan)) {
        m_barred.push_back(*other);
        return m_barred.size() < slotTries ? search(plan) : never;
    }
    plan.slots.clear();
    plan.direct = 0;
    computeDirect(plan);
    return found.cost + m_batch->changeCost;
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

void Inserter::tryWish(int day, Rest& found) {
    if (m_batch->pinnedZone >= 0 && m_batch->pinnedZone != m_wish->zone) return;
    const StayModel& stay = m_batch->stays[0];
    const int kind = m_model->zones[at(m_wish->zone)].zoneClass;
    for (const StayOption& option : stay.options) {
        if (option.zoneClass != kind || (m_wish->state != Wish::any && option.state != m_wish->state))
            continue;
        const StayTerms& terms = stay.terms(option, day);
        if (terms.length() > 0) tryZone(0, option, m_wish->zone, terms, day, found);
    }
}

const Inserter::Rest& Inserter::rest(int stay, int day) {
    Rest& known = m_rest[at(stay)][at(day - m_batch->stays[at(stay)].firstStart)];
    if (known.stamp == m_stamp) return known;
    known.stamp = m_stamp;
    known.cost = never;
    tryStands(stay, day, known);
    return known;
}

void Inserter::tryStands(int stay, int day, Rest& found) {
    const StayModel& stayModel = m_batch->stays[at(stay)];
    const bool isLast = at(stay) + 1 == m_batch->stays.size();
    for (const StayOption& option : stayModel.options) {
        const StayTerms& terms = stayModel.terms(option, day);
        if (terms.length() == 0) continue;
        const std::int64_t least = terms.offIdeal() + (isLast ? m_batch->late(day + terms.length()) : 0);
        if (least >= found.cost) continue;
        if (!isLast) {
            const std::int64_t after = rest(stay + 1, day + terms.length()).cost;
            if (after == never || least + after >= found.cost) {
                // Only a stay that keeps the zone of this one could still be cheaper.
                const StayModel& next = m_batch->stays[at(stay) + 1];
                const bool mayStay =
                    std::any_of(next.options.begin(), next.options.end(),
                                [&](const StayOption& o) { return o.zoneClass == option.zoneClass; });
                if (!mayStay) continue;
            }
        }
        if (stay == 0 && m_batch->pinnedZone >= 0) {
            if (m_model->zones[at(m_batch->pinnedZone)].zoneClass == option.zoneClass)
                tryZone(stay, option, m_batch->pinnedZone, terms, day, found);
            continue;
        }
        const std::vector<int>& zones = m_model->classes[at(option.zoneClass)].zones;
        const int count = static_cast<int>(zones.size());
        int tried = count;
        if (stayModel.choices > m_taste.looks) {
            const int share = count * m_taste.looks;
            tried =
                share / stayModel.choices + (m_random->below(stayModel.choices) < share % stayModel.choices);
        }
        int next = count > 1 ? m_random->below(count) : 0;
        bool sawEmpty = false;
        for (int i = 0; i < tried; ++i, next = next + 1 == count ? 0 : next + 1) {
            const int zone = zones[at(next)];
            if (m_state->staysIn(zone).empty() && m_model->zones[at(zone)].held.empty()) {
                if (sawEmpty) continue;
                sawEmpty = m_model->zones[at(zone)].slots >= m_batch->slots;
            }
            if (m_taste.blink > 0 && m_random->onceIn(m_taste.blink)) continue;
            tryZone(stay, option, zone, terms, day, found);
        }
    }
}

void Inserter::tryZone(int stay, const StayOption& option, int zone, const StayTerms& terms, int day,
                       Rest& found) {
    const Stand stand{zone, option.state, day, day + terms.length()};
    const std::int64_t mat = matCost(zone, option.state, stand.from, stand.to);
    if (terms.offIdeal() + mat >= found.cost) return;
    const std::int64_t cost = terms.offIdeal() + mat + following(stay, stand);
    if (cost >= found.cost) return;
    found.cost = cost;
    found.stand = stand;
}

std::int64_t Inserter::matCost(int zone, int state, int from, int to) const {
    if (!m_batch->single && !m_model->fitsGrid(m_index, zone)) return never;
    if (!m_barred.empty() && isBarred(zone, from, to)) return never;
    const std::int64_t cost = m_state->matCost(zone, state, from, to, m_batch->slots);
    return cost == never ? never : cost * m_taste.matWeight / 16;
}

bool Inserter::isBarred(int zone, int from, int to) const {
    return std::any_of(m_barred.begin(), m_barred.end(), [&](const Stand& barred) {
        return barred.zone == zone && barred.from >= from && barred.to <= to;
    });
}

std::int64_t Inserter::following(int stay, const Stand& stand) {
    if (at(stay) + 1 == m_batch->stays.size()) return m_batch->late(stand.to);
    const std::int64_t elsewhere = rest(stay + 1, stand.to).cost + m_batch->moveCost;
    Stand next;
    return std::min(elsewhere, staying(stay + 1, stand, next));
}

std::int64_t Inserter::staying(int stay, const Stand& before, Stand& next) {
    const StayModel& stayModel = m_batch->stays[at(stay)];
    const int kind = m_model->zones[at(before.zone)].zoneClass;
    const bool beyond = before.to >= m_model->days;
    std::int64_t least = never;
    for (const StayOption& option : stayModel.options) {
        if (option.zoneClass != kind || (beyond && option.state != before.state)) continue;
        const StayTerms& terms = stayModel.terms(option, before.to);
        if (terms.length() == 0) continue;
        const Stand stand{before.zone, option.state, before.to, before.to + terms.length()};
        const std::int64_t mat = beyond ? 0 : matCost(stand.zone, stand.state, stand.from, stand.to);
        if (terms.offIdeal() + mat >= least) continue;
        const std::int64_t cost = terms.offIdeal() + mat + following(stay, stand);
        if (cost >= least) continue;
        least = cost;
        next = stand;
    }
    return least;
}

void Inserter::writeStands(Plan& plan, const Stand& first) {
    plan.stands.clear();
    plan.stands.push_back(first);
    for (int stay = 1; at(stay) < m_batch->stays.size(); ++stay) {
        const Rest& elsewhere = rest(stay, plan.stands.back().to);
        Stand next;
        const std::int64_t kept = staying(stay, plan.stands.back(), next);
        plan.stands.push_back(kept <= elsewhere.cost + m_batch->moveCost ? next : elsewhere.stand);
    }
}

const Stand* Inserter::disagreeing(const Plan& plan) const {
    for (std::size_t later = 1; later < plan.stands.size(); ++later)
        for (std::size_t sooner = 0; sooner < later; ++sooner)
            if (plan.stands[later].from >= m_model->days && plan.stands[sooner].to >= m_model->days &&
                plan.stands[later].zone == plan.stands[sooner].zone &&
                plan.stands[later].state != plan.stands[sooner].state)
                return &plan.stands[later];
    return nullptr;
}

void Inserter::computeDirect(Plan& plan) const {
    plan.direct = m_batch->late(plan.stands.back().to) + m_batch->changeCost;
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        plan.direct += termsAt(*m_model, m_batch->stays[k], plan.stands[k]).offIdeal();
        if (k > 0 && plan.stands[k].zone != plan.stands[k - 1].zone) plan.direct += m_batch->moveCost;
    }
}

bool Inserter::placeSlots(Plan& plan) {
    const Batch& batch = m_model->problem->batches[at(m_index)];
    const std::size_t containers = at(batch.containers);
    plan.slots.assign(containers * plan.stands.size(), {});
    m_before.clear();
    int zoneBefore = -1;
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        const Stand& stand = plan.stands[k];
        if (m_model->zones[at(stand.zone)].placed) {
            if (k == 0 && batch.pin && !batch.pin->slots.empty()) {
                m_slots = batch.pin->slots;
                for (const SlotRect& slot : m_slots)
                    if (!m_state->occupancy(stand.zone).isFree(slot, stand.from, stand.to)) {
                        m_barred.push_back(stand);
                        return false;
                    }
            } else {
                packing::Stay wanted{stand.from, stand.to, batch.containers, batch.footprint, batch.turn, {}};
                if (stand.zone == zoneBefore) wanted.prefer = m_before;
                if (!m_placer.placeQuickly(m_state->occupancy(stand.zone), wanted, m_slots)) {
                    m_barred.push_back(stand);
                    return false;
                }
            }
            std::copy(m_slots.begin(), m_slots.end(),
                      plan.slots.begin() + static_cast<std::ptrdiff_t>(k * containers));
            m_before = m_slots;
        }
        zoneBefore = stand.zone;
    }
    plan.direct = directCost(*m_model, plan);
    return true;
}

} // namespace warmbench::planner::search
