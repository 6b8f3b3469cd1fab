#include "core/planner/search/halves.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// A stock of more than this part of all batches is shared by both halves.
constexpr std::size_t mostTogether = 16;

template <class T>
void shuffle(std::vector<T>& things, Random& random) {
    for (std::size_t i = things.size(); i > 1; --i)
        std::swap(things[i - 1], things[at(random.below(static_cast<int>(i)))]);
}

} // namespace

Halves::Halves(const Model& model, Random& random)
    : m_model(&model), m_ofBatch(model.batches.size(), 0), m_ofZone(model.zones.size(), 0),
      m_isShared(model.problem->stocks.size(), 0) {
    shareZones(random);
    shareBatches(random);
    std::vector<int> user(m_isShared.size(), -1);
    for (std::size_t batch = 0; batch < m_ofBatch.size(); ++batch)
        if (const auto& stock = model.problem->batches[batch].stock; stock) {
            int& other = user[at(*stock)];
            if (other >= 0 && other != m_ofBatch[batch]) m_isShared[at(*stock)] = 1;
            other = m_ofBatch[batch];
        }
}

void Halves::shareZones(Random& random) {
    for (auto& has : m_hasClass) has.assign(m_model->classes.size(), 0);
    int next = 0;
    for (std::size_t kind = 0; kind < m_model->classes.size(); ++kind) {
        std::vector<int> zones = m_model->classes[kind].zones;
        shuffle(zones, random);
        for (const int zone : zones) {
            m_ofZone[at(zone)] = next;
            m_hasClass[at(next)][kind] = 1;
            next = (next + 1) % count;
        }
    }
    for (int zone = 0; zone < static_cast<int>(m_ofZone.size()); ++zone)
        m_zones[at(m_ofZone[at(zone)])].push_back(zone);
}

bool Halves::suits(int batch, int half) const {
    const std::vector<StayModel>& stays = m_model->batches[at(batch)].stays;
    return std::all_of(stays.begin(), stays.end(), [&](const StayModel& stay) {
        return std::any_of(stay.options.begin(), stay.options.end(), [&](const StayOption& option) {
            return m_hasClass[at(half)][at(option.zoneClass)] != 0;
        });
    });
}

std::vector<Halves::Lot> Halves::lots(Random& random) const {
    std::vector<Lot> lots(m_isShared.size());
    const auto batches = static_cast<int>(m_ofBatch.size());
    for (int batch = 0; batch < batches; ++batch) {
        const auto& stock = m_model->problem->batches[at(batch)].stock;
        if (stock && m_model->batches[at(batch)].pinnedZone < 0)
            lots[at(*stock)].push_back(batch);
        else
            lots.push_back({batch});
    }
    for (std::size_t lot = 0; lot < m_isShared.size(); ++lot)
        while (lots[lot].size() > m_ofBatch.size() / mostTogether) {
            lots.push_back({lots[lot].back()});
            lots[lot].pop_back();
        }
    std::erase_if(lots, [](const Lot& lot) { return lot.empty(); });
    shuffle(lots, random);
    std::stable_sort(lots.begin(), lots.end(),
                     [](const Lot& a, const Lot& b) { return a.size() > b.size(); });
    return lots;
}

void Halves::shareBatches(Random& random) {
    std::array<std::int64_t, count> load{};
    std::array<std::int64_t, count> room{};
    for (std::size_t zone = 0; zone < m_ofZone.size(); ++zone)
        room[at(m_ofZone[zone])] += m_model->zones[zone].slots;
    for (const Lot& lot : lots(random)) {
        const auto suitedBy = [&](int half) {
            return std::count_if(lot.begin(), lot.end(), [&](int batch) { return suits(batch, half); });
        };
        const int emptier = load[0] * room[1] <= load[1] * room[0] ? 0 : 1;
        const int pinned = m_model->batches[at(lot.front())].pinnedZone;
        int half = suitedBy(emptier) >= suitedBy(1 - emptier) ? emptier : 1 - emptier;
        if (pinned >= 0) half = m_ofZone[at(pinned)];
        for (const int batch : lot) {
            m_ofBatch[at(batch)] = half;
            load[at(half)] += m_model->batches[at(batch)].slots;
        }
    }
}

Scope Halves::scope(const State& state, int half) const {
    Scope scope = Scope::ofZones(*m_model, m_zones[at(half)]);
    for (int batch = 0; batch < static_cast<int>(m_ofBatch.size()); ++batch) {
        if (m_ofBatch[at(batch)] != half) continue;
        const std::vector<Stand>& stands = state.plan(batch).stands;
        if (!state.isPlaced(batch) || std::all_of(stands.begin(), stands.end(), [&](const Stand& stand) {
                return m_ofZone[at(stand.zone)] == half;
            }))
            scope.add(batch);
    }
    return scope;
}

std::array<Share, Halves::count> Halves::shares(const State& state, Random& random) const {
    std::array<Share, count> aside;
    const int days = m_model->days;
    const auto part = [](std::int64_t left, int halves) { return left >= never / 2 ? 0 : left * halves / 2; };
    for (int day = 0; day < days; ++day) {
        const std::int64_t left = state.handsLeft(day);
        const std::int64_t first = part(left, random.below(3));
        aside[0].hands.push_back(first);
        aside[1].hands.push_back(part(left, 2) - first);
    }
    for (std::size_t stock = 0; stock < m_isShared.size(); ++stock) {
        for (Share& share : aside) share.cuttings.emplace_back();
        if (m_isShared[stock] == 0) continue;
        const int halves = random.below(3);
        for (int day = 0; day < days; ++day) {
            const std::int64_t left =
                m_model->yield[stock][at(day)] - state.struck(static_cast<int>(stock), day);
            const std::int64_t first = part(left, halves);
            aside[0].cuttings[stock].push_back(first);
            aside[1].cuttings[stock].push_back(left - first);
        }
    }
    return aside;
}

} // namespace warmbench::planner::search
