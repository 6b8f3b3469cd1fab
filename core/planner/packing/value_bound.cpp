#include "core/planner/packing/value_bound.h"

#include <algorithm>

namespace warmbench::planner::packing {

namespace {

std::int64_t slotsOf(const Candidate& one) {
    return std::int64_t{1} * one.containers * one.footprint.height * one.footprint.width;
}

bool standsOn(const Candidate& one, int day) {
    return one.from <= day && day < one.to;
}

} // namespace

ValueBound::ValueBound(const Occupancy& zone, const std::vector<Group>& groups) : m_groups(groups) {
    m_plate = zone.days() > 0;
    for (const Group& group : groups)
        for (const Candidate& one : group.options)
            m_plate = m_plate && one.from == 0 && one.to == zone.days() && group.options.size() == 1;
    if (m_plate) {
        makeKnapsack(zone.leastFree(0, zone.days()));
        return;
    }
    m_all.assign(groups.size() + 1, 0);
    for (std::size_t at = groups.size(); at-- > 0;) {
        std::int64_t best = 0;
        for (const Candidate& one : groups[at].options) best = std::max(best, one.value);
        m_all[at] = m_all[at + 1] + best * groups[at].count;
    }
    for (int day = 0; day < zone.days(); ++day) addDay(zone, day);
}

void ValueBound::addDay(const Occupancy& zone, int day) {
    Day made;
    made.day = day;
    made.besides.assign(m_groups.size() + 1, 0);
    made.besidesOfOne.assign(m_groups.size(), 0);
    bool begins = false;
    for (std::size_t at = m_groups.size(); at-- > 0;) {
        const Group& group = m_groups[at];
        std::int64_t without = 0;
        for (const Candidate& one : group.options)
            if (!standsOn(one, day)) without = std::max(without, one.value);
        Share share{at, zone.capacity() + 1, 0};
        for (const Candidate& one : group.options) {
            begins = begins || one.from == day;
            if (!standsOn(one, day) || one.value <= without) continue;
            share.slots = std::min(share.slots, slotsOf(one));
            share.value = std::max(share.value, one.value - without);
        }
        made.besidesOfOne[at] = without;
        made.besides[at] = made.besides[at + 1] + without * group.count;
        if (share.value > 0) made.shares.push_back(share);
    }
    const bool tighter = day > 0 && zone.freeOn(day) < zone.freeOn(day - 1);
    if (!begins && !tighter) return; // the day before says as much
    std::stable_sort(made.shares.begin(), made.shares.end(),
                     [](const Share& a, const Share& b) { return a.value * b.slots > b.value * a.slots; });
    m_days.push_back(std::move(made));
}

void ValueBound::makeKnapsack(int slots) {
    const std::size_t size = static_cast<std::size_t>(slots) + 1;
    m_knapsack.assign(m_groups.size() + 1, std::vector<std::int64_t>(size, 0));
    for (std::size_t at = m_groups.size(); at-- > 0;)
        for (std::size_t room = 0; room < size; ++room)
            m_knapsack[at][room] = onPlate(at, 0, static_cast<std::int64_t>(room));
}

std::int64_t ValueBound::most(std::size_t group, int used, const Occupancy& zone) const {
    if (m_plate) return onPlate(group, used, zone.leastFree(0, zone.days()));
    std::int64_t least = m_all[group] - (m_all[group] - m_all[group + 1]) / m_groups[group].count * used;
    for (const Day& day : m_days) least = std::min(least, onDay(day, group, used, zone.freeOn(day.day)));
    return least;
}

std::int64_t ValueBound::onDay(const Day& day, std::size_t group, int used, std::int64_t slots) const {
    std::int64_t value = day.besides[group] - day.besidesOfOne[group] * used;
    for (const Share& share : day.shares) {
        if (share.group < group) continue;
        const std::int64_t count = m_groups[share.group].count - (share.group == group ? used : 0);
        const std::int64_t wanted = count * share.slots;
        if (wanted > slots) return value + share.value * slots / share.slots;
        value += share.value * count;
        slots -= wanted;
    }
    return value;
}

std::int64_t ValueBound::onPlate(std::size_t group, int used, std::int64_t slots) const {
    if (group == m_groups.size()) return 0;
    const Candidate& one = m_groups[group].options.front();
    std::int64_t best = 0;
    for (int more = 0; more <= m_groups[group].count - used; ++more) {
        const std::int64_t room = slots - more * slotsOf(one);
        if (room < 0) break;
        best = std::max(best, more * one.value + m_knapsack[group + 1][static_cast<std::size_t>(room)]);
    }
    return best;
}

} // namespace warmbench::planner::packing
