#include "core/planner/search/ruin.h"

#include <algorithm>
#include <cstdlib>

namespace warmbench::planner::search {

namespace {

/// Ways to choose; with the tenth and those after it, room is made for a batch. In a house that is not small
/// that is done more often: other ways gain as much a round there, and take longer.
constexpr int waysToChoose = 12;
constexpr int waysInLarge = 24;
/// Days looked at for one on which a batch that is left out can be struck.
constexpr int daysTried = 8;

} // namespace

Ruin::Ruin(const State& empty)
    : m_model(&empty.model()), m_scope(&m_model->whole),
      m_isLarge(m_model->batches.size() > mostOfSmallHouse), m_ways(m_isLarge ? waysInLarge : waysToChoose),
      m_chosen(m_model->batches.size(), 0), m_byStock(m_model->problem->stocks.size()) {
    const Model& model = *m_model;
    for (std::size_t b = 0; b < model.problem->batches.size(); ++b)
        if (const auto& stock = model.problem->batches[b].stock; stock)
            m_byStock[at(*stock)].push_back(static_cast<int>(b));
    for (std::size_t b = 0; b < model.batches.size(); ++b) {
        m_firstDay.push_back(model.batches[b].strikeFirst);
        while (m_firstDay[b] <= model.batches[b].strikeLast &&
               !empty.canStrike(static_cast<int>(b), m_firstDay[b]))
            ++m_firstDay[b];
    }
}

int Ruin::anyBatch(Random& random) const {
    return m_scope->batches[at(random.below(static_cast<int>(m_scope->batches.size())))];
}

int Ruin::anyZone(int zoneClass, Random& random) const {
    const std::vector<int>& zones = m_scope->zonesOfClass[at(zoneClass)];
    return zones.empty() ? -1 : zones[at(random.below(static_cast<int>(zones.size())))];
}

bool Ruin::canEverBeStruck(int batch) const {
    return m_firstDay[at(batch)] <= m_model->batches[at(batch)].strikeLast;
}

void Ruin::add(int batch, std::vector<int>& batches) {
    if (m_chosen[at(batch)] == m_call || m_scope->holds[at(batch)] == 0) return;
    m_chosen[at(batch)] = m_call;
    batches.push_back(batch);
}

void Ruin::choose(const State& state, int size, Random& random, bool run, std::vector<int>& batches,
                  std::vector<Wish>& wishes) {
    ++m_call;
    batches.clear();
    wishes.clear();
    const int seed = anyBatch(random);
    switch (run ? 6 + random.below(3) : random.below(m_ways)) {
    case 0:
        for (int i = 0; i < size; ++i) add(anyBatch(random), batches);
        break;
    case 1:
    case 2:
        addAlike(state, seed, size, random, batches);
        break;
    case 3:
        if (const auto& stock = m_model->problem->batches[at(seed)].stock; stock) {
            const std::vector<int>& sharing = m_byStock[at(*stock)];
            for (int i = 0; i < size; ++i)
                add(sharing[at(random.below(static_cast<int>(sharing.size())))], batches);
        } else {
            addAlike(state, seed, size, random, batches);
        }
        break;
    case 4:
    case 5:
        addRun(state, seed, size, random, batches);
        break;
    case 6:
    case 7:
        makeRun(state, size, random, batches, wishes);
        break;
    case 8:
        exchangeRuns(state, seed, random, batches, wishes);
        break;
    default:
        makeRoom(state, seed, random, batches, wishes);
    }
    if (static_cast<int>(batches.size()) < size && random.onceIn(2))
        addAlike(state, seed, size - static_cast<int>(batches.size()), random, batches);
    addLeftOut(state, size, random, batches);
}

void Ruin::addStaysIn(const State& state, int zone, int from, int to, int size, Random& random,
                      std::vector<int>& batches) {
    m_stays = state.staysIn(zone);
    const int start = m_stays.empty() ? 0 : random.below(static_cast<int>(m_stays.size()));
    for (std::size_t i = 0; i < m_stays.size() && size > 0; ++i) {
        const int stay = m_stays[(i + at(start)) % m_stays.size()];
        const Stand& stand = state.stand(stay);
        if (stand.to <= from || stand.from >= to) continue;
        add(m_model->batchOfStay[at(stay)], batches);
        --size;
    }
}

void Ruin::addAlike(const State& state, int seed, int size, Random& random, std::vector<int>& batches) {
    add(seed, batches);
    // Others near it in zone and time, zone by zone among those that would take its first or its last stay.
    const BatchModel& batch = m_model->batches[at(seed)];
    const StayModel& stay = batch.stays[at(random.below(static_cast<int>(batch.stays.size())))];
    if (stay.options.empty()) return;
    const int spread = 1 + random.below(12);
    const int middle = stay.firstStart + random.below(stay.lastStart - stay.firstStart + 1) + 5;
    for (int tries = 0; tries < 4 && static_cast<int>(batches.size()) < size; ++tries) {
        const StayOption& option = stay.options[at(random.below(static_cast<int>(stay.options.size())))];
        const int zone = anyZone(option.zoneClass, random);
        if (zone < 0) continue;
        addStaysIn(state, zone, middle - spread, middle + spread, size - static_cast<int>(batches.size()),
                   random, batches);
    }
}

void Ruin::makeRoom(const State& state, int seed, Random& random, std::vector<int>& batches,
                    std::vector<Wish>& wishes) {
    // Rather for one that is left out.
    for (int tries = 0; tries < 16 && (state.isPlaced(seed) || !canEverBeStruck(seed)); ++tries)
        seed = anyBatch(random);
    add(seed, batches);
    const BatchModel& batch = m_model->batches[at(seed)];
    if (!canEverBeStruck(seed)) return;
    const auto anyDay = [&] {
        const int first = m_firstDay[at(seed)];
        return first + random.below(batch.strikeLast - first + 1);
    };
    int day = anyDay();
    if (m_isLarge && !state.isPlaced(seed)) {
        for (int tries = 0; tries < daysTried && !state.canStrike(seed, day); ++tries) day = anyDay();
        freeStock(state, seed, day, random, batches);
    }
    for (const StayModel& stay : batch.stays) {
        const StayOption& option = stay.options[at(random.below(static_cast<int>(stay.options.size())))];
        const StayTerms& terms = stay.terms(option, day);
        if (terms.length() == 0) return;
        const bool pinned = &stay == &batch.stays[0] && batch.pinnedZone >= 0;
        const int zone = pinned ? batch.pinnedZone : anyZone(option.zoneClass, random);
        if (zone < 0) return;
        if (wishes.empty()) wishes.push_back({seed, zone, option.state, day});
        // What is in the way: another state, or as much as takes the slots that it needs.
        const std::vector<int>& stays = state.staysIn(zone);
        const int start = stays.empty() ? 0 : random.below(static_cast<int>(stays.size()));
        int lacking = 0;
        for (int d = day; d < std::min(day + terms.length(), m_model->days); ++d)
            lacking = std::max(lacking, batch.slots - state.freeSlots(zone, d));
        for (std::size_t i = 0; i < stays.size(); ++i) {
            const int other = stays[(i + at(start)) % stays.size()];
            const Stand& stand = state.stand(other);
            if (stand.to <= day || stand.from >= day + terms.length()) continue;
            const int owner = m_model->batchOfStay[at(other)];
            if (stand.state == option.state && lacking <= 0) continue;
            if (stand.state == option.state) lacking -= m_model->batches[at(owner)].slots;
            add(owner, batches);
        }
        day += terms.length();
    }
}

void Ruin::freeStock(const State& state, int batch, int day, Random& random, std::vector<int>& batches) {
    const Batch& wanted = m_model->problem->batches[at(batch)];
    if (!wanted.stock) return;
    const int stock = *wanted.stock;
    std::int64_t lacking = wanted.cuttings - state.stockLeft(stock, day);
    // What is struck after the first day that is short of cuttings gives nothing to that day.
    int scarce = day;
    while (scarce + 1 < m_model->days &&
           state.stockLimit(stock, scarce) - state.struck(stock, scarce) >= wanted.cuttings)
        ++scarce;
    const std::vector<int>& sharing = m_byStock[at(stock)];
    const std::size_t start = at(random.below(static_cast<int>(sharing.size())));
    for (std::size_t i = 0; i < sharing.size() && lacking > 0; ++i) {
        const int other = sharing[(i + start) % sharing.size()];
        if (!state.isPlaced(other) || m_scope->holds[at(other)] == 0) continue;
        if (state.plan(other).strike > scarce) continue;
        lacking -= m_model->problem->batches[at(other)].cuttings;
        add(other, batches);
    }
}

void Ruin::makeRun(const State& state, int size, Random& random, std::vector<int>& batches,
                   std::vector<Wish>& wishes) {
    // A zone at another state for some days: what stands there in them, and others that it would suit.
    const int zone = m_scope->zones[at(random.below(static_cast<int>(m_scope->zones.size())))];
    const int kind = m_model->zones[at(zone)].zoneClass;
    const int seed = anyBatch(random);
    const StayModel& stay = m_model->batches[at(seed)].stays[0];
    if (stay.lastStart < stay.firstStart) return;
    int states = 0;
    int wanted = Wish::any;
    for (const StayOption& option : stay.options)
        if (option.zoneClass == kind && random.onceIn(++states)) wanted = option.state;
    if (wanted == Wish::any) return;
    const int from = stay.firstStart + random.below(stay.lastStart - stay.firstStart + 1) - random.below(8);
    const int to = from + 8 + random.below(32);
    for (const int other : state.staysIn(zone)) {
        const Stand& stand = state.stand(other);
        if (stand.to > from && stand.from < to && stand.state != wanted)
            add(m_model->batchOfStay[at(other)], batches);
    }
    add(seed, batches);
    const int count = static_cast<int>(m_scope->batches.size());
    const int start = random.below(count);
    for (int i = 0; i < std::min(count, 64) && static_cast<int>(batches.size()) < size + 4; ++i) {
        const int batch = m_scope->batches[at((start + i) % count)];
        const StayModel& first = m_model->batches[at(batch)].stays[0];
        if (first.lastStart < from || first.firstStart >= to) continue;
        if (std::any_of(first.options.begin(), first.options.end(), [&](const StayOption& option) {
                return option.zoneClass == kind && option.state == wanted;
            }))
            add(batch, batches);
    }
    for (const int batch : batches) wishes.push_back({batch, zone, wanted, Wish::any});
    for (std::size_t i = wishes.size(); i > 1; --i)
        std::swap(wishes[i - 1], wishes[at(random.below(static_cast<int>(i)))]);
}

void Ruin::exchangeRuns(const State& state, int seed, Random& random, std::vector<int>& batches,
                        std::vector<Wish>& wishes) {
    for (int tries = 0; tries < 16 && !state.isPlaced(seed); ++tries) seed = anyBatch(random);
    if (!state.isPlaced(seed)) return;
    const Stand& stand = state.plan(seed).stands[0];
    const StayModel& stay = m_model->batches[at(seed)].stays[0];
    const StayOption& option = stay.options[at(random.below(static_cast<int>(stay.options.size())))];
    const int other = anyZone(option.zoneClass, random);
    if (other < 0 || other == stand.zone) return add(seed, batches);
    const int wider = random.below(12);
    addStaysIn(state, stand.zone, stand.from - wider, stand.to + wider, 8, random, batches);
    const std::size_t first = batches.size();
    addStaysIn(state, other, stand.from - wider, stand.to + wider, 8, random, batches);
    for (std::size_t i = 0; i < batches.size(); ++i)
        wishes.push_back({batches[i], i < first ? other : stand.zone, Wish::any, Wish::any});
    for (std::size_t i = wishes.size(); i > 1; --i)
        std::swap(wishes[i - 1], wishes[at(random.below(static_cast<int>(i)))]);
}

void Ruin::addRun(const State& state, int seed, int size, Random& random, std::vector<int>& batches) {
    for (int tries = 0; tries < 16 && !state.isPlaced(seed); ++tries) seed = anyBatch(random);
    if (!state.isPlaced(seed)) return add(seed, batches);
    const std::vector<Stand>& stands = state.plan(seed).stands;
    const Stand& stand = stands[random.onceIn(2) ? 0 : at(random.below(static_cast<int>(stands.size())))];
    const int wider = random.below(8);
    add(seed, batches);
    addStaysIn(state, stand.zone, stand.from - wider, stand.to + wider, size + 4, random, batches);
    if (!random.onceIn(3)) return;
    const int other = anyZone(m_model->zones[at(stand.zone)].zoneClass, random);
    if (other >= 0) addStaysIn(state, other, stand.from - wider, stand.to + wider, size + 4, random, batches);
}

void Ruin::addLeftOut(const State& state, int size, Random& random, std::vector<int>& batches) {
    const int count = static_cast<int>(m_scope->batches.size());
    const int start = random.below(count);
    const int looks = std::min(count, 64);
    for (int i = 0; i < looks && size > 0; ++i) {
        const int batch = m_scope->batches[at((start + i) % count)];
        if (state.isPlaced(batch) || m_chosen[at(batch)] == m_call) continue;
        if (!canEverBeStruck(batch)) continue;
        add(batch, batches);
        --size;
    }
}

} // namespace warmbench::planner::search
