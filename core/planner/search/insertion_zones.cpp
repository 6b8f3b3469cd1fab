#include "core/planner/search/insertion.h"

#include <algorithm>
#include <bit>

/// Zone by zone, where one stay can stand, and what is cheapest there.
namespace warmbench::planner::search {

/// Tells at a glance where a stay cannot stand, from how long it stays at least.
class Inserter::Glance {
public:
    Glance(const Inserter& inserter, const Look& look, const StayOption& option, int shortest)
        : m_starts(&inserter.m_starts), m_barred(inserter.m_state->barred(option.state, inserter.m_index)),
          m_shortest(shortest), m_window(look.first, inserter.m_model->days),
          m_sees(look.last < inserter.m_model->days && look.last - look.first + shortest <= daysOfWord) {}

    [[nodiscard]] bool mayTake(int zone) const {
        if (!m_sees) return true;
        DayWord barred = m_barred.of(zone, m_window);
        const DayWord starts = m_window.of((*m_starts)[m_window.word()], (*m_starts)[m_window.word() + 1]);
        if ((starts & ~barred) == 0) return false;
        spreadBack(barred, m_shortest);
        return (starts & ~barred) != 0;
    }

private:
    const std::vector<DayWord>* m_starts;
    State::Barred m_barred;
    int m_shortest;
    DayWindow m_window;
    bool m_sees;
};

bool Inserter::mayStand(const Look& first) {
    const StayModel& stay = m_batch->stays[0];
    const int only = onlyZone();
    for (const StayOption& option : stay.options) {
        if (only >= 0 && !mayBeIn(only, option)) continue;
        std::copy(m_strikes.begin(), m_strikes.end(), m_starts.begin());
        int shortest = none;
        for (int day = first.first; day <= first.last; ++day) {
            const int length = stay.terms(option, day).length();
            if (length > 0)
                shortest = std::min(shortest, length);
            else
                m_starts[at(day / daysOfWord)] &= ~(DayWord{1} << (day % daysOfWord));
            if (option.steady) break;
        }
        if (shortest == none) continue;
        const Glance glance(*this, first, option, shortest);
        if (only >= 0 ? glance.mayTake(only)
                      : std::any_of(zonesFor(option).begin(), zonesFor(option).end(),
                                    [&](int zone) { return glance.mayTake(zone); }))
            return true;
    }
    return false;
}

void Inserter::lookAtOption(const Look& look, const StayOption& option, int tried, bool all) {
    const auto isOfClass = [&](int zone) { return m_model->zones[at(zone)].zoneClass == option.zoneClass; };
    const bool looksFirst =
        !all && std::any_of(m_taste.alwaysLooked.begin(), m_taste.alwaysLooked.end(), isOfClass);
    if (tried == 0 && !looksFirst) return;
    const bool mayStay = nextMayStay(look.stay, option);
    const int shortest = gatherStarts(look, option, mayStay);
    if (shortest == none) return;
    const std::vector<int>& zones = zonesFor(option);
    const int count = static_cast<int>(zones.size());
    const Glance glance(*this, look, option, shortest);
    if (looksFirst)
        for (const int zone : m_taste.alwaysLooked)
            if (isOfClass(zone) && glance.mayTake(zone)) tryZone(look, option, zone, shortest, mayStay);
    int next = count > 1 ? m_random->below(count) : 0;
    bool sawEmpty = false;
    for (int i = 0; i < tried; ++i, next = next + 1 == count ? 0 : next + 1) {
        const int zone = zones[at(next)];
        if (!glance.mayTake(zone)) continue;
        if (m_state->isEmpty(zone)) {
            if (sawEmpty) continue;
            sawEmpty = m_model->zones[at(zone)].slots >= m_batch->slots;
        }
        if (m_taste.blink > 0 && m_random->onceIn(m_taste.blink)) continue;
        tryZone(look, option, zone, shortest, mayStay);
        if (isSettled(look)) return;
    }
}

void Inserter::tryZone(const Look& look, const StayOption& option, int zone, int shortest, bool mayStay) {
    if (!m_batch->single && !m_model->fitsGrid(m_index, zone)) return;
    m_state->barredDays(zone, option.state, m_index, m_barredDays);
    std::copy(m_barredDays.begin(), m_barredDays.end(), m_inTheWay.begin());
    spreadBack(m_inTheWay, shortest);
    const std::int64_t daily =
        m_model->classes[at(option.zoneClass)].costAt(option.state) * m_taste.matWeight;
    const int firstStart = m_batch->stays[at(look.stay)].firstStart;
    const bool isCounted = m_model->sizes[at(m_batch->size)] == m_batch->slots;
    for (std::size_t i = 0; i < m_barredDays.size(); ++i) {
        const std::size_t word = m_forwards ? i : m_barredDays.size() - 1 - i;
        DayWord left = m_starts[word] & ~m_inTheWay[word];
        while (left != 0) {
            const int bit = m_forwards ? std::countr_zero(left) : daysOfWord - 1 - std::countl_zero(left);
            left &= ~(DayWord{1} << bit);
            const int day = static_cast<int>(word) * daysOfWord + bit;
            const Start& start = m_costs[at(day - look.first)];
            if (start.cost >= look.at(day, firstStart).cost) continue;
            const int end = std::min(day + start.length, m_model->days);
            if (start.length > shortest && countDays(m_barredDays, day, end) > 0) continue;
            const Stand stand{zone, option.state, day, day + start.length};
            if (!isCounted && m_state->matCost(zone, option.state, day, stand.to, m_batch->slots) == never)
                continue;
            const std::int64_t mat = daily == 0 ? 0 : m_state->idleDays(zone, day, end) * daily / 16;
            tryStand(look, stand, mat, mayStay);
        }
    }
    for (int day = std::max(look.first, m_model->days); day <= look.last; ++day) {
        const int length = m_costs[at(day - look.first)].length;
        if (length == 0) continue;
        const std::int64_t mat = matCost(zone, option.state, day, day + length);
        if (mat != never) tryStand(look, {zone, option.state, day, day + length}, mat, mayStay);
    }
}

void Inserter::tryStand(const Look& look, const Stand& stand, std::int64_t mat, bool mayStay) {
    Rest& found = look.at(stand.from, m_batch->stays[at(look.stay)].firstStart);
    std::int64_t cost = m_costs[at(stand.from - look.first)].cost + mat;
    if (cost >= found.cost) return;
    if (mayStay) cost += following(look.stay, stand);
    if (cost >= found.cost || isBarred(stand.zone, stand.from, stand.to)) return;
    found.cost = cost;
    found.stand = stand;
    dropStarts(look, stand.from);
}

void Inserter::dropStarts(const Look& look, int day) {
    const auto drop = [&](int start) {
        if (start < m_model->days && m_costs[at(start - look.first)].cost >=
                                         look.at(start, m_batch->stays[at(look.stay)].firstStart).cost)
            m_starts[at(start / daysOfWord)] &= ~(DayWord{1} << (start % daysOfWord));
    };
    if (look.each) return drop(day);
    for (int start = look.first; start <= look.last; ++start) drop(start);
}

bool Inserter::isSettled(const Look& look) const {
    return look.last < m_model->days &&
           std::all_of(m_starts.begin(), m_starts.end(), [](DayWord days) { return days == 0; });
}

} // namespace warmbench::planner::search
