#include "core/planner/search/state.h"

#include <algorithm>

namespace warmbench::planner::search {

State::State(const Model& model)
    : m_model(&model), m_plans(model.batches.size()), m_free(model.zones.size() * at(model.days)),
      m_state(m_free.size(), static_cast<std::int16_t>(idle)),
      m_full(model.zones.size() * model.sizes.size(), model.days), m_idle(model.zones.size(), model.days),
      m_asked(model.zones.size() * at(model.states), model.days), m_demands(m_free.size(), 0),
      m_staysIn(model.zones.size()), m_heldChoice(model.zones.size(), 0), m_occupancy(model.zones.size()),
      m_hands(model.hands), m_handsAside(model.hands.size(), 0), m_limit(model.yield), m_left(model.yield) {
    for (const BatchModel& batch : model.batches) leaveOut(batch);
    for (const auto& stock : model.yield) m_used.emplace_back(stock.size(), 0);
    for (auto& left : m_left)
        for (int day = model.days - 2; day >= 0; --day)
            left[at(day)] = std::min(left[at(day)], left[at(day + 1)]);
    for (int zone = 0; zone < static_cast<int>(model.zones.size()); ++zone) {
        const ZoneModel& place = model.zones[at(zone)];
        std::fill_n(m_free.begin() + static_cast<std::ptrdiff_t>(cell(zone, 0)), model.days, place.slots);
        m_idle.set(at(zone));
        for (std::size_t size = at(model.fitting[at(place.slots)]); size < model.sizes.size(); ++size)
            m_full.set(fullRow(zone, size));
        if (place.placed)
            m_occupancy[at(zone)] = packing::Occupancy(model.problem->zones[at(zone)], model.days);
        if (!place.held.empty()) standHeld(zone, true);
    }
}

const Stand& State::stand(int stay) const {
    const int batch = m_model->batchOfStay[at(stay)];
    return m_plans[at(batch)].stands[at(stay - m_model->batches[at(batch)].firstStay)];
}

bool State::canStrike(int batch, int day) const {
    const Batch& wanted = m_model->problem->batches[at(batch)];
    if (m_hands[at(day)] < wanted.cuttings) return false;
    return !wanted.stock || m_left[at(*wanted.stock)][at(day)] >= wanted.cuttings;
}

std::int64_t State::matCost(int zone, int state, int from, int to, int slots) const {
    const int* free = m_free.data() + cell(zone, 0);
    const int end = demandTo(to);
    for (int day = from; day < end; ++day)
        if (free[day] < slots) return never;
    const ZoneModel& place = m_model->zones[at(zone)];
    if (from >= m_model->days && place.slots < slots) return never;
    const ZoneClass& kind = m_model->classes[at(place.zoneClass)];
    if (!kind.hasMat) return 0;
    const std::int16_t* states = m_state.data() + cell(zone, 0);
    int newDays = 0;
    for (int day = demandFrom(from); day < end; ++day) {
        if (states[day] == idle)
            ++newDays;
        else if (states[day] != state)
            return never;
    }
    return newDays * kind.costAt(state);
}

void State::place(const Plan& plan) {
    const BatchModel& batch = m_model->batches[at(plan.batch)];
    strike(plan.batch, plan.strike, m_model->problem->batches[at(plan.batch)].cuttings);
    takeIn(batch);
    m_cost += plan.direct;
    const std::size_t containers = at(m_model->problem->batches[at(plan.batch)].containers);
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        const Stand& stand = plan.stands[k];
        demand(stand.zone, stand.state, stand.from, stand.to, batch.slots);
        m_staysIn[at(stand.zone)].push_back(batch.firstStay + static_cast<int>(k));
        if (m_model->zones[at(stand.zone)].placed)
            m_occupancy[at(stand.zone)].occupy({plan.slots.data() + k * containers, containers}, stand.from,
                                               stand.to);
    }
    m_plans[at(plan.batch)] = plan;
}

void State::remove(int index) {
    const BatchModel& batch = m_model->batches[at(index)];
    Plan& plan = m_plans[at(index)];
    const std::size_t containers = at(m_model->problem->batches[at(index)].containers);
    strike(index, plan.strike, -m_model->problem->batches[at(index)].cuttings);
    leaveOut(batch);
    m_cost -= plan.direct;
    for (std::size_t k = 0; k < plan.stands.size(); ++k) {
        const Stand& stand = plan.stands[k];
        release(stand.zone, stand.state, stand.from, stand.to, batch.slots);
        std::vector<int>& stays = m_staysIn[at(stand.zone)];
        *std::find(stays.begin(), stays.end(), batch.firstStay + static_cast<int>(k)) = stays.back();
        stays.pop_back();
        if (m_model->zones[at(stand.zone)].placed)
            m_occupancy[at(stand.zone)].release({plan.slots.data() + k * containers, containers}, stand.from,
                                                stand.to);
    }
    plan.strike = -1;
}

void State::leaveOut(const BatchModel& batch) {
    m_cost += batch.value;
    if (!batch.pinned) m_leftOutCost += batch.value;
}

void State::takeIn(const BatchModel& batch) {
    m_cost -= batch.value;
    if (!batch.pinned) m_leftOutCost -= batch.value;
}

void State::chooseHeld(int zone, int choice) {
    standHeld(zone, false);
    m_heldChoice[at(zone)] = choice;
    standHeld(zone, true);
}

void State::strike(int batch, int day, std::int64_t cuttings) {
    m_hands[at(day)] -= cuttings;
    const std::optional<int>& stock = m_model->problem->batches[at(batch)].stock;
    if (!stock || cuttings == 0) return;
    std::vector<std::int64_t>& used = m_used[at(*stock)];
    for (int d = day; d < m_model->days; ++d) used[at(d)] += cuttings;
    findLeft(*stock);
}

void State::findLeft(int stock) {
    const std::vector<std::int64_t>& used = m_used[at(stock)];
    const std::vector<std::int64_t>& limit = m_limit[at(stock)];
    std::vector<std::int64_t>& left = m_left[at(stock)];
    std::int64_t least = never;
    for (int d = m_model->days - 1; d >= 0; --d) {
        least = std::min(least, limit[at(d)] - used[at(d)]);
        left[at(d)] = least;
    }
}

void State::setAside(const Share& share) {
    for (int day = 0; day < m_model->days; ++day) {
        const std::int64_t hands = share.hands.empty() ? 0 : share.hands[at(day)];
        m_hands[at(day)] += m_handsAside[at(day)] - hands;
        m_handsAside[at(day)] = hands;
    }
    for (int stock = 0; stock < static_cast<int>(m_limit.size()); ++stock) {
        const bool isShared = !share.cuttings.empty() && !share.cuttings[at(stock)].empty();
        if (!isShared && m_limit[at(stock)] == m_model->yield[at(stock)]) continue;
        m_limit[at(stock)] = m_model->yield[at(stock)];
        for (int day = 0; isShared && day < m_model->days; ++day)
            m_limit[at(stock)][at(day)] -= share.cuttings[at(stock)][at(day)];
        findLeft(stock);
    }
}

void State::addFree(int zone, int from, int to, int slots) {
    const auto fitting = [this](int free) { return at(m_model->fitting[at(std::max(0, free))]); };
    int* free = m_free.data() + cell(zone, 0);
    // Days one after the other that have as much are changed together.
    for (int first = from; first < to;) {
        const int left = free[first];
        int end = first;
        for (; end < to && free[end] == left; ++end) free[end] += slots;
        const auto [few, many] = std::minmax({fitting(left), fitting(left + slots)});
        for (std::size_t size = few; size < many; ++size) m_full.flip(fullRow(zone, size), first, end);
        first = end;
    }
}

void State::demand(int zone, int state, int from, int to, int slots) {
    const int end = demandTo(to);
    addFree(zone, from, end, -slots);
    const ZoneClass& kind = m_model->classes[at(m_model->zones[at(zone)].zoneClass)];
    for (int day = demandFrom(from); day < end; ++day) {
        if (m_demands[cell(zone, day)]++ > 0) continue;
        m_state[cell(zone, day)] = static_cast<std::int16_t>(state);
        m_idle.flip(at(zone), day);
        m_asked.flip(askedRow(zone, state), day);
        m_cost += kind.costAt(state);
    }
}

void State::release(int zone, int state, int from, int to, int slots) {
    const int end = demandTo(to);
    addFree(zone, from, end, slots);
    const ZoneClass& kind = m_model->classes[at(m_model->zones[at(zone)].zoneClass)];
    for (int day = demandFrom(from); day < end; ++day) {
        if (--m_demands[cell(zone, day)] > 0) continue;
        m_state[cell(zone, day)] = static_cast<std::int16_t>(idle);
        m_idle.flip(at(zone), day);
        m_asked.flip(askedRow(zone, state), day);
        m_cost -= kind.costAt(state);
    }
}

void State::standHeld(int zone, bool standing) {
    const ZoneModel& place = m_model->zones[at(zone)];
    const HeldChoice& choice = place.heldChoices[at(m_heldChoice[at(zone)])];
    if (standing)
        demand(zone, choice.state, 0, choice.days, 0);
    else
        release(zone, choice.state, 0, choice.days, 0);
    for (int day = 0; day < choice.days; ++day)
        addFree(zone, day, day + 1, standing ? -choice.slotsByDay[at(day)] : choice.slotsByDay[at(day)]);
    if (!place.placed) return;
    for (std::size_t i = 0; i < place.held.size(); ++i) {
        const std::vector<SlotRect>& slots = m_model->problem->held[at(place.held[i])].slots;
        if (standing)
            m_occupancy[at(zone)].occupy(slots, 0, choice.until[i]);
        else
            m_occupancy[at(zone)].release(slots, 0, choice.until[i]);
    }
}

} // namespace warmbench::planner::search
