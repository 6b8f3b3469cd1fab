#include "core/planner/search/strips.h"

#include "core/planner/index.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// Groups beyond the first of each load that is not fixed.
std::int64_t scatterOf(std::span<const packing::Load> loads,
                       const std::vector<std::vector<SlotRect>>& slots) {
    std::int64_t groups = 0;
    for (std::size_t i = 0; i < loads.size(); ++i)
        if (loads[i].fixed.empty()) groups += packing::groups(slots[i]) - 1;
    return groups;
}

} // namespace

std::int64_t Strips::pack(const Zone& zone, int days, std::span<const packing::Load> loads,
                          std::int64_t scatterCost, std::vector<std::vector<SlotRect>>& slots) {
    layLine(zone, false);
    packLine(days, loads, slots);
    if (scatterCost == 0) return 0;
    const std::int64_t scatter = scatterOf(loads, slots);
    if (scatter == 0) return 0;
    layLine(zone, true);
    packLine(days, loads, m_other);
    const std::int64_t other = scatterOf(loads, m_other);
    if (other < scatter) slots.swap(m_other);
    return std::min(scatter, other) * scatterCost;
}

void Strips::layLine(const Zone& zone, bool alongRows) {
    m_line.clear();
    m_joins.clear();
    const int lanes = alongRows ? zone.rows : zone.cols;
    const int steps = alongRows ? zone.cols : zone.rows;
    bool joins = false;
    for (int lane = 0; lane < lanes; ++lane)
        for (int i = 0; i < steps; ++i) {
            const int step = lane % 2 == 0 ? i : steps - 1 - i;
            const int row = alongRows ? lane : step;
            const int col = alongRows ? step : lane;
            const bool isBlocked = zone.blocked[at(row) * at(zone.cols) + at(col)] != 0;
            if (!isBlocked) {
                m_line.push_back({row, col, 1, 1});
                m_joins.push_back(joins);
            }
            joins = !isBlocked;
        }
}

void Strips::packLine(int days, std::span<const packing::Load> loads,
                      std::vector<std::vector<SlotRect>>& slots) {
    m_until.assign(m_line.size(), 0);
    slots.resize(loads.size());
    for (std::size_t index = 0; index < loads.size(); ++index) {
        const packing::Load& load = loads[index];
        slots[index] = load.fixed;
        if (!load.fixed.empty()) {
            for (std::size_t place = 0; place < m_line.size(); ++place)
                for (const SlotRect& rect : load.fixed)
                    if (rect.overlaps(m_line[place])) m_until[place] = load.to;
            continue;
        }
        // Beyond the horizon only the load's own containers are in each other's way.
        if (load.from >= days) {
            slots[index].assign(m_line.begin(), m_line.begin() + load.containers);
            continue;
        }
        findPieces(load.from);
        int wanted = load.containers;
        while (wanted > 0) {
            auto best = m_pieces.begin();
            for (auto piece = m_pieces.begin(); piece != m_pieces.end(); ++piece) {
                const bool holds = piece->length >= wanted;
                const bool bestHolds = best->length >= wanted;
                if (holds ? !bestHolds || piece->length < best->length
                          : !bestHolds && piece->length > best->length)
                    best = piece;
            }
            const int taken = std::min(wanted, best->length);
            for (int place = best->first; place < best->first + taken; ++place) {
                slots[index].push_back(m_line[at(place)]);
                m_until[at(place)] = load.to;
            }
            best->length = 0;
            wanted -= taken;
        }
    }
}

void Strips::findPieces(int day) {
    m_pieces.clear();
    for (int place = 0; place < static_cast<int>(m_line.size()); ++place) {
        if (m_until[at(place)] > day) continue;
        const bool goesOn = !m_pieces.empty() && m_joins[at(place)] &&
                            m_pieces.back().first + m_pieces.back().length == place;
        if (goesOn)
            ++m_pieces.back().length;
        else
            m_pieces.push_back({place, 1});
    }
}

} // namespace warmbench::planner::search
