#include "core/planner/search/walk.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// A slot and day never counts for more, thousandths.
constexpr std::int64_t dearestSpace = 1'000'000;

/// Excursions: once in so many rounds, of 5 to so many rounds, at this part of the heat.
constexpr int roundsAtHome = 5;
constexpr int leastRoundsOut = 5;
constexpr int spreadOfRoundsOut = 80;
constexpr int coolerOut = 4;

/// Zones are packed anew for what finds no slots in one of so many rounds, so many times: a packing takes as
/// long as several rounds.
constexpr int roundsToRefit = 32;
constexpr int refitsOfRound = 2;

bool standsAlike(const Plan& a, const Plan& b) {
    if (a.strike != b.strike || a.strike < 0) return a.strike == b.strike;
    const auto alike = [](const Stand& one, const Stand& other) {
        return one.zone == other.zone && one.state == other.state && one.from == other.from &&
               one.to == other.to;
    };
    return std::equal(a.stands.begin(), a.stands.end(), b.stands.begin(), b.stands.end(), alike) &&
           a.slots == b.slots;
}

} // namespace

Walk::Walk(const Model& model, std::uint64_t seed)
    : m_model(&model), m_scope(&model.whole), m_random(seed), m_state(model), m_inserter(model),
      m_ruin(m_state), m_bestCost(m_state.cost()), m_best(model.batches.size()),
      m_bestHeld(model.zones.size(), 0), m_isTouched(model.batches.size(), 0) {
    m_mayRoam = model.batches.size() <= mostOfSmallHouse;
    m_order.resize(model.batches.size());
    m_wasPlaced.resize(model.batches.size(), 0);
    std::int64_t slotDays = 1;
    for (const ZoneModel& zone : model.zones) slotDays += std::int64_t{zone.slots} * model.days;
    m_dearestSpace = 1 + static_cast<int>(std::min<std::int64_t>(model.worth / slotDays, dearestSpace));
}

void Walk::keepTo(const Scope& scope) {
    m_scope = &scope;
    m_inserter.keepTo(scope);
    m_ruin.keepTo(scope);
}

void Walk::leaveBest() {
    m_keepsBest = false;
    clearMoved();
}

void Walk::clearMoved() {
    for (const int batch : m_touched) m_isTouched[at(batch)] = 0;
    m_touched.clear();
}

void Walk::takeOver(const State& other, std::span<const int> batches, std::span<const int> zones,
                    const Stopped& stopped) {
    for (const int batch : batches) {
        if (stopped()) return;
        if (m_state.isPlaced(batch)) m_state.remove(batch);
    }
    for (const int zone : zones)
        if (m_state.heldChoice(zone) != other.heldChoice(zone))
            m_state.chooseHeld(zone, other.heldChoice(zone));
    for (const int batch : batches) {
        if (stopped()) return;
        if (other.isPlaced(batch)) m_state.place(other.plan(batch));
    }
}

void Walk::touch(int batch) {
    if (m_isTouched[at(batch)]) return;
    m_isTouched[at(batch)] = 1;
    m_touched.push_back(batch);
}

void Walk::saveBest() {
    for (const int batch : m_touched) {
        m_best[at(batch)] = m_state.plan(batch);
        m_isTouched[at(batch)] = 0;
    }
    m_touched.clear();
    for (std::size_t zone = 0; zone < m_bestHeld.size(); ++zone)
        m_bestHeld[zone] = m_state.heldChoice(static_cast<int>(zone));
    m_atBest = false;
}

const std::vector<Plan>& Walk::best() {
    if (m_atBest) {
        saveBest();
        m_atBest = true;
    }
    return m_best;
}

void Walk::orderForPlacing(std::vector<int>& batches) {
    const int kind = m_random.below(6);
    for (const int batch : batches) {
        const BatchModel& made = m_model->batches[at(batch)];
        const std::int64_t chance = static_cast<std::int64_t>(m_random.next() >> 34);
        std::int64_t key = chance;
        if (kind == 1 || kind == 2) key = -std::int64_t{made.slots} * (1 << 10) + (chance & 4095);
        if (kind == 3) key = -made.value * (512 + (chance & 511)) / 512;
        if (kind == 4) key = -made.value * (512 + (chance & 511)) / std::max(1, made.slots);
        if (kind == 5) key = std::int64_t{made.strikeLast} * 1024 + (chance & 4095);
        if (made.pinned) key = std::numeric_limits<std::int64_t>::min() + (chance & 1023);
        m_order[at(batch)] = key;
    }
    std::sort(batches.begin(), batches.end(), [&](int a, int b) {
        return m_order[at(a)] != m_order[at(b)] ? m_order[at(a)] < m_order[at(b)] : a < b;
    });
}

void Walk::keepFirst() {
    m_kept = {};
    const auto isFirst = [&](int batch) {
        return m_model->batches[at(batch)].pinned || m_model->batches[at(batch)].isKeepable;
    };
    if (std::none_of(m_batches.begin(), m_batches.end(),
                     [&](int batch) { return m_model->batches[at(batch)].isKeepable; }))
        return;
    std::stable_partition(m_batches.begin(), m_batches.end(), isFirst);
    m_kept = keptStates(*m_model);
    for (int zone = 0; zone < static_cast<int>(m_model->zones.size()); ++zone)
        if (m_state.heldChoice(zone) != m_kept.heldChoice[at(zone)])
            m_state.chooseHeld(zone, m_kept.heldChoice[at(zone)]);
}

bool Walk::placeFirst(int batch) {
    Taste taste;
    taste.matWeight = 8;
    const bool isKept = m_model->batches[at(batch)].isKeepable &&
                        m_inserter.keep(m_state, batch, taste, m_plan, &m_kept.ofStay) != never;
    return isKept || m_inserter.best(m_state, batch, taste, m_random, m_plan) != never;
}

void Walk::takeOut(const std::vector<int>& batches) {
    if (m_before.size() < batches.size()) m_before.resize(batches.size());
    for (std::size_t i = 0; i < batches.size(); ++i) {
        m_before[i] = m_state.plan(batches[i]);
        m_wasPlaced[at(batches[i])] = m_before[i].strike >= 0;
        if (m_before[i].strike >= 0) m_state.remove(batches[i]);
    }
}

void Walk::choosePlacing() {
    m_placing.clear();
    for (const int batch : m_batches)
        if (m_wasPlaced[at(batch)] || m_inserter.mayPlace(m_state, batch, m_random))
            m_placing.push_back(batch);
    orderForPlacing(m_placing);
}

std::int64_t Walk::hopeFor(int batch) const {
    const BatchModel& made = m_model->batches[at(batch)];
    const std::int64_t firmly = made.pinned ? 0 : made.value * m_heat.firmness / wholeFirmness + 1;
    return std::max<std::int64_t>(0, made.value + firmly - made.least);
}

bool Walk::placeAnew(Taste taste, std::int64_t limit) {
    std::int64_t hope = 0;
    for (const int batch : m_placing) hope += hopeFor(batch);
    for (const Wish& wish : m_wishes) {
        const auto batch = std::find(m_placing.begin(), m_placing.end(), wish.batch);
        if (batch == m_placing.end() || m_inserter.best(m_state, wish, taste, m_random, m_plan) == never)
            continue;
        placeFound();
        hope -= hopeFor(wish.batch);
        m_placing.erase(batch);
    }
    for (const int batch : m_placing) {
        if (judged() - hope > limit) return false;
        hope -= hopeFor(batch);
        taste.isDoubtful = m_wasPlaced[at(batch)] == 0;
        if (m_inserter.best(m_state, batch, taste, m_random, m_plan) != never) placeFound();
    }
    return judged() <= limit;
}

void Walk::placeFound() {
    for (const Plan& other : m_inserter.moved()) {
        if (std::find(m_batches.begin(), m_batches.end(), other.batch) == m_batches.end()) {
            if (m_before.size() == m_batches.size()) m_before.emplace_back();
            m_before[m_batches.size()] = m_state.plan(other.batch);
            m_batches.push_back(other.batch);
        }
        m_state.remove(other.batch);
    }
    for (const Plan& other : m_inserter.moved()) m_state.place(other);
    m_state.place(m_plan);
}

void Walk::undo() {
    for (const int batch : m_batches)
        if (m_state.isPlaced(batch)) m_state.remove(batch);
    if (m_heldZone >= 0) m_state.chooseHeld(m_heldZone, m_heldBefore);
    for (std::size_t i = 0; i < m_batches.size(); ++i)
        if (m_before[i].strike >= 0) m_state.place(m_before[i]);
}

void Walk::rechooseHeld() {
    // One zone with held things and a choice; its early stays go.
    const int zone = m_scope->zones[at(m_random.below(static_cast<int>(m_scope->zones.size())))];
    const std::vector<HeldChoice>& choices = m_model->zones[at(zone)].heldChoices;
    if (choices.size() < 2) return;
    const int choice = m_random.below(static_cast<int>(choices.size()));
    const int before = m_state.heldChoice(zone);
    if (choice == before) return;
    const int days = std::max(choices[at(choice)].days, choices[at(before)].days);
    for (const int stay : m_state.staysIn(zone)) {
        const int batch = m_model->batchOfStay[at(stay)];
        const Stand& stand = m_state.stand(stay);
        if (std::min(stand.from, m_model->days - 1) >= days) continue;
        if (m_scope->holds[at(batch)] == 0) return;
        if (std::find(m_batches.begin(), m_batches.end(), batch) == m_batches.end())
            m_batches.push_back(batch);
    }
    m_heldZone = zone;
    m_heldBefore = before;
    takeOut(m_batches);
    m_state.chooseHeld(zone, choice);
}

void Walk::noteRoom() {
    m_withRoom.clear();
    for (std::size_t i = 0; i < m_batches.size(); ++i)
        if (m_before[i].strike >= 0)
            for (const Stand& stand : m_before[i].stands)
                if (std::find(m_withRoom.begin(), m_withRoom.end(), stand.zone) == m_withRoom.end())
                    m_withRoom.push_back(stand.zone);
}

void Walk::setOut() {
    m_roundsOut = leastRoundsOut + m_random.below(spreadOfRoundsOut);
    m_costAtHome = judged();
    m_home.resize(m_model->batches.size());
    for (std::size_t batch = 0; batch < m_home.size(); ++batch)
        m_home[batch] = m_state.plan(static_cast<int>(batch));
    m_heldAtHome.resize(m_model->zones.size());
    for (std::size_t zone = 0; zone < m_heldAtHome.size(); ++zone)
        m_heldAtHome[zone] = m_state.heldChoice(static_cast<int>(zone));
}

void Walk::comeBack() {
    if (judged() <= limitAfter(m_costAtHome)) return;
    if (m_atBest) saveBest();
    m_moved.clear();
    for (std::size_t batch = 0; batch < m_home.size(); ++batch)
        if (!standsAlike(m_home[batch], m_state.plan(static_cast<int>(batch))))
            m_moved.push_back(static_cast<int>(batch));
    for (const int batch : m_moved)
        if (m_state.isPlaced(batch)) m_state.remove(batch);
    for (std::size_t zone = 0; zone < m_heldAtHome.size(); ++zone)
        if (m_state.heldChoice(static_cast<int>(zone)) != m_heldAtHome[zone])
            m_state.chooseHeld(static_cast<int>(zone), m_heldAtHome[zone]);
    for (const int batch : m_moved) {
        if (m_home[at(batch)].strike >= 0) m_state.place(m_home[at(batch)]);
        touch(batch);
    }
}

void Walk::round(Heat heat) {
    m_heat = heat;
    const bool isOut = m_roundsOut > 0;
    if (isOut && --m_roundsOut == 0)
        comeBack();
    else if (isOut)
        m_heat.dearer /= coolerOut;
    const bool setsOut = !isOut && m_mayRoam && m_random.onceIn(roundsAtHome);
    if (setsOut) setOut();
    const std::int64_t limit = setsOut ? never : limitAfter(judged());
    if (m_atBest) saveBest();
    const int most = std::clamp(static_cast<int>(m_model->batches.size()) / 2, 2, 10);
    m_heldZone = -1;
    m_ruin.choose(m_state, 1 + m_random.below(most), m_random, setsOut, m_batches, m_wishes);
    if (m_random.onceIn(8)) rechooseHeld();
    if (m_heldZone < 0) takeOut(m_batches);
    choosePlacing();
    Taste taste;
    taste.matWeight = m_random.onceIn(2) ? 16 : m_random.below(17);
    taste.blink = m_random.onceIn(3) ? 0 : 30;
    noteRoom();
    taste.alwaysLooked = m_withRoom;
    if (m_model->anyPlaced) m_inserter.mayRefit(m_random.onceIn(roundsToRefit) ? refitsOfRound : 0);
    if (m_random.onceIn(2)) taste.spacePrice = m_random.below(m_dearestSpace);
    if (!placeAnew(taste, limit)) return undo();
    for (const int batch : m_batches) touch(batch);
    if (m_keepsBest && m_state.cost() < m_bestCost) {
        m_bestCost = m_state.cost();
        m_atBest = true;
    }
}

void Walk::restart(const std::vector<Plan>& plans, const std::vector<int>& held) {
    m_roundsOut = 0;
    for (int batch = 0; batch < static_cast<int>(m_model->batches.size()); ++batch)
        if (m_state.isPlaced(batch)) m_state.remove(batch);
    for (int zone = 0; zone < static_cast<int>(held.size()); ++zone)
        if (m_state.heldChoice(zone) != held[at(zone)]) m_state.chooseHeld(zone, held[at(zone)]);
    for (const Plan& plan : plans) {
        if (plan.strike >= 0) m_state.place(plan);
    }
    for (int batch = 0; batch < static_cast<int>(m_model->batches.size()); ++batch) touch(batch);
    if (m_keepsBest && m_state.cost() < m_bestCost) {
        m_bestCost = m_state.cost();
        m_atBest = true;
    }
}

} // namespace warmbench::planner::search
