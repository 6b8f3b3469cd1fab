#include "core/planner/search/insertion.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// Tries of giving slots to ever dearer plans of one batch.
constexpr std::size_t slotTries = 12;

} // namespace

Inserter::Inserter(const Model& model)
    : m_model(&model), m_scope(&model.whole), m_strikes(wordsOf(model.days)),
      m_starts(wordsOf(model.days) + 1), m_barredDays(wordsOf(model.days)), m_inTheWay(wordsOf(model.days)),
      m_refit(model) {
    std::size_t most = 0;
    for (const BatchModel& batch : model.batches) most = std::max(most, batch.stays.size());
    m_rest.resize(most);
    m_leastRest.resize(most, never);
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
    m_moved.clear();
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
        const std::int64_t cost = relaxed - direct + m_tried.direct + dearerMoved();
        if (cost < best && cost <= m_batch->value) {
            best = cost;
            plan = m_tried;
            m_moved.swap(m_movedNow);
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

bool Inserter::mayPlace(const State& state, int batch, Random& random) {
    begin(state, batch, {});
    m_random = &random;
    Look look{0, m_batch->strikeFirst, m_batch->strikeLast, false, nullptr};
    return chooseStrikes(look) && mayStand(look);
}

std::int64_t Inserter::search(Plan& plan) { // NOLINT(misc-no-recursion)
    Rest found;
    found.cost = m_batch->value - m_batch->changeCost + 1;
    Look look{0, m_batch->strikeFirst, m_batch->strikeLast, false, &found};
    if (!chooseStrikes(look)) return never;
    if ((m_taste.isDoubtful || m_wish) && !mayStand(look)) return never;
    lookAtRests(look);
    lookForStand(look);
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

bool Inserter::chooseStrikes(Look& look) {
    if (std::any_of(m_batch->stays.begin(), m_batch->stays.end(),
                    [](const StayModel& stay) { return stay.options.empty(); }))
        return false;
    std::fill(m_strikes.begin(), m_strikes.end(), 0);
    int first = 0;
    int last = -1;
    for (int day = look.first; day <= look.last; ++day) {
        if (m_wish && m_wish->day != Wish::any && m_wish->day != day) continue;
        if (!m_state->canStrike(m_index, day)) continue;
        m_strikes[at(day / daysOfWord)] |= DayWord{1} << (day % daysOfWord);
        if (last < 0) first = day;
        last = day;
    }
    look.first = first;
    look.last = last;
    m_forwards = m_random->onceIn(2);
    return last >= 0;
}

void Inserter::lookAtRests(const Look& first) {
    const std::vector<StayModel>& stays = m_batch->stays;
    for (std::size_t k = stays.size(); k-- > 1;) {
        const StayModel& stay = stays[k];
        Look look{static_cast<int>(k), first.first + stay.firstStart - stays[0].firstStart,
                  first.last + stay.lastStart - stays[0].lastStart, true, m_rest[k].data()};
        std::fill(m_rest[k].begin() + look.first - stay.firstStart,
                  m_rest[k].begin() + look.last + 1 - stay.firstStart, Rest{});
        lookForStand(look);
        m_leastRest[k] = never;
        for (int day = look.first; day <= look.last; ++day)
            m_leastRest[k] = std::min(m_leastRest[k], look.at(day, stay.firstStart).cost);
    }
}

void Inserter::lookForStand(const Look& look) {
    const StayModel& stay = m_batch->stays[at(look.stay)];
    if (look.stay == 0 && onlyZone() >= 0) return lookAtOnly(look, onlyZone());
    // An even part of the zones of all options, from a random one on.
    int choices = 0;
    for (const StayOption& option : stay.options) choices += static_cast<int>(zonesFor(option).size());
    if (choices == 0) return;
    const int looks = std::min(m_taste.looks, choices);
    const bool all = looks == choices;
    int share = all ? 0 : m_random->below(choices);
    for (const StayOption& option : stay.options) {
        share += static_cast<int>(zonesFor(option).size()) * looks;
        lookAtOption(look, option, share / choices, all);
        share %= choices;
    }
}

void Inserter::lookAtOnly(const Look& look, int zone) {
    if (m_wish && m_wish->zone != zone) return;
    for (const StayOption& option : m_batch->stays[at(look.stay)].options) {
        if (!mayBeIn(zone, option)) continue;
        const bool mayStay = nextMayStay(look.stay, option);
        const int shortest = gatherStarts(look, option, mayStay);
        if (shortest != none) tryZone(look, option, zone, shortest, mayStay);
    }
}

int Inserter::onlyZone() const {
    if (m_batch->pinnedZone >= 0) return m_batch->pinnedZone;
    return m_wish ? m_wish->zone : -1;
}

bool Inserter::mayBeIn(int zone, const StayOption& option) const {
    return option.zoneClass == m_model->zones[at(zone)].zoneClass &&
           (!m_wish || m_wish->state == Wish::any || m_wish->state == option.state);
}

bool Inserter::nextMayStay(int stay, const StayOption& option) const {
    return at(stay) + 1 < m_batch->stays.size() && m_batch->stays[at(stay) + 1].suits(option.zoneClass);
}

int Inserter::gatherStarts(const Look& look, const StayOption& option, bool mayStay) {
    const StayModel& stay = m_batch->stays[at(look.stay)];
    const bool isLast = at(look.stay) + 1 == m_batch->stays.size();
    const bool goesElsewhere = !isLast && !mayStay;
    const std::int64_t leastAfter = goesElsewhere ? m_leastRest[at(look.stay) + 1] + m_batch->moveCost : 0;
    if (!look.each && option.least + leastAfter >= look.found->cost) return none;
    std::fill(m_starts.begin(), m_starts.end(), 0);
    m_costs.resize(at(look.last - look.first + 1));
    int shortest = none;
    for (int day = look.first; day <= look.last; ++day) {
        Start& start = m_costs[at(day - look.first)];
        start.length = 0;
        if (look.stay == 0 && (m_strikes[at(day / daysOfWord)] >> (day % daysOfWord) & 1) == 0) continue;
        const StayTerms& terms = stay.terms(option, day);
        if (terms.length() == 0) continue;
        start.cost = standCost(terms, day);
        const std::int64_t limit = look.at(day, stay.firstStart).cost;
        if (start.cost + leastAfter >= limit) continue;
        const int end = day + terms.length();
        if (isLast) start.cost += m_batch->late(end);
        if (goesElsewhere) start.cost += rest(look.stay + 1, end).cost + m_batch->moveCost;
        if (start.cost >= limit) continue;
        start.length = terms.length();
        shortest = std::min(shortest, terms.length());
        if (day < m_model->days) m_starts[at(day / daysOfWord)] |= DayWord{1} << (day % daysOfWord);
    }
    return shortest;
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
        if (standCost(terms, before.to) + mat >= least) continue;
        const std::int64_t cost = standCost(terms, before.to) + mat + following(stay, stand);
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

} // namespace warmbench::planner::search
