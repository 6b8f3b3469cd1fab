#include "core/planner/bound/dual_function.h"

#include "core/planner/index.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>
#include <vector>

namespace warmbench::planner {

DualFunction::DualFunction(const Formulation& formulation, std::stop_token stop)
    : m_formulation(formulation), m_stop(std::move(stop)), m_batches(formulation), m_selection(formulation),
      m_options(formulation.batches.size()), m_groupCost(formulation.stockGroups.size()) {
    // Once it is stopped, nothing is evaluated.
    for (const ZoneShelf& shelf : formulation.shelves) {
        std::vector<int> place(at(formulation.days), -1); // in shelf.days, by day
        for (std::size_t i = 0; i < shelf.days.size(); ++i) place[at(shelf.days[i])] = static_cast<int>(i);
        const std::size_t states = shelf.dayCost.size();
        std::vector<Items>& standing = m_standing.emplace_back(shelf.days.size() * states);
        for (std::size_t state = 0; state < states; ++state)
            for (const int index : shelf.lanes[state]) {
                if (m_stop.stop_requested()) return;
                const Lane& lane = formulation.lanes[at(index)];
                for (int day = lane.fromDay; day < lane.toDay; ++day)
                    standing[at(place[at(day)]) * states + state].push_back(
                        {static_cast<int>(lane.firstPrice) + day - lane.fromDay, lane.slots});
            }
    }
    for (const LabourDay& day : formulation.labour) {
        if (m_stop.stop_requested()) return;
        Items& striking = m_striking.emplace_back();
        for (const LabourDay::Strike& strike : day.strikes)
            striking.push_back({static_cast<int>(strike.price), strike.cuttings});
    }
}

double DualFunction::evaluate(const Domain& domain, const Prices& prices) {
    if (m_stop.stop_requested()) return -infinity;
    standExcess.assign(m_formulation.prices, 0);
    strikeExcess.assign(m_formulation.strikeRows.size(), 0);
    usedLinks.clear();
    staysOut.clear();
    if (m_stop.stop_requested() || !m_batches.take(prices)) return -infinity;
    double value = placeBatches(domain);
    if (std::isinf(value)) return value;
    for (std::size_t row = 0; row < prices.strike.size(); ++row) {
        value -= prices.strike[row] * m_formulation.strikeRows[row].limit;
        strikeExcess[row] -= m_formulation.strikeRows[row].limit;
    }
    return value - fillZones(prices) - strikeCuttings(prices);
}

double DualFunction::placeBatches(const Domain& domain) {
    double total = 0;
    for (std::size_t i = 0; i < m_options.size(); ++i) {
        if (m_stop.stop_requested()) return -infinity;
        const int batch = static_cast<int>(i);
        StrikeOptions& options = m_options[i];
        m_batches.solve(batch, domain, options);
        if (m_formulation.batches[i].stockGroup >= 0) continue;
        const double cost = std::min(options.out, options.cost.front());
        if (std::isinf(cost)) return infinity;
        total += cost;
        place(batch, options.out <= options.cost.front() ? StockSelection::out : 0, domain);
    }
    for (std::size_t i = 0; i < m_groupCost.size(); ++i) {
        const StockGroup& group = m_formulation.stockGroups[i];
        m_groupCost[i] = m_selection.solve(group, m_options);
        if (std::isinf(m_groupCost[i])) return infinity;
        total += m_groupCost[i];
        for (std::size_t k = 0; k < group.batches.size(); ++k)
            place(group.batches[k], m_selection.periods()[k], domain);
    }
    return total <= highestExact ? total : -infinity;
}

void DualFunction::place(int batch, int period, const Domain& domain) {
    if (period == StockSelection::out) {
        staysOut.push_back(batch);
        return;
    }
    const BatchChains& chains = m_formulation.batches[at(batch)];
    const std::size_t first = usedLinks.size();
    m_batches.appendChain(batch, period, domain, usedLinks);
    for (std::size_t i = first; i < usedLinks.size(); ++i) {
        const Link& link = m_formulation.links[at(usedLinks[i])];
        const auto offset = at(link.lane); // running sums have one entry more a lane
        for (std::size_t sum = link.lowSum; sum < link.highSum; ++sum) standExcess[sum - offset] += 1;
    }
    const Link& strike = m_formulation.links[at(usedLinks[first])];
    if (strike.labourPrice >= 0) standExcess[at(strike.labourPrice)] += 1;
    for (const int row : chains.strikeRows)
        if (m_formulation.strikeRows[at(row)].counts(strike.strikeDay))
            strikeExcess[at(row)] += chains.cuttings;
}

std::vector<double> DualFunction::detours(int batch) {
    const StrikeOptions& options = m_options[at(batch)];
    const int group = m_formulation.batches[at(batch)].stockGroup;
    std::vector<double> result;
    if (group < 0) {
        const double least = std::min(options.out, options.cost.front());
        result = {options.cost.front() - least, options.out - least};
        return result;
    }
    const auto with = [&](int period) {
        return m_selection.solve(m_formulation.stockGroups[at(group)], m_options, batch, period) -
               m_groupCost[at(group)];
    };
    for (int period = 0; period < static_cast<int>(options.cost.size()); ++period)
        result.push_back(with(period));
    result.push_back(with(StockSelection::out));
    return result;
}

double DualFunction::fillZones(const Prices& prices) {
    double total = 0;
    for (std::size_t shelf = 0; shelf < m_standing.size(); ++shelf) total += fillShelf(shelf, prices);
    return total;
}

double DualFunction::fillShelf(std::size_t index, const Prices& prices) {
    const ZoneShelf& shelf = m_formulation.shelves[index];
    auto items = m_standing[index].begin();
    double total = 0;
    m_held.clear();
    for (const HeldZone& zone : shelf.held) m_held.emplace_back(zone.states.size());
    for (const int day : shelf.days) {
        if (m_stop.stop_requested()) return infinity;
        double best = 0;
        m_names.clear();
        for (std::size_t state = 0; state < shelf.dayCost.size(); ++state, ++items) {
            const double cost = shelf.dayCost[state];
            m_packing.take(*items, prices.stand);
            fillHeld(shelf, day, state);
            if (m_packing.relaxed(shelf.slots) <= best + cost) continue;
            const double earned = m_packing.best(shelf.slots) - cost;
            if (earned <= best) continue;
            best = earned;
            m_names.clear();
            m_packing.chosen(m_names);
        }
        total += best * shelf.count;
        for (const int name : m_names) standExcess[at(name)] -= shelf.count;
        fillFreed(shelf, day, best);
    }
    for (const auto& states : m_held) {
        const auto best = std::max_element(states.begin(), states.end(),
                                           [](const auto& a, const auto& b) { return a.earned < b.earned; });
        total += best->earned;
        for (const int name : best->names) standExcess[at(name)] -= 1;
    }
    return total;
}

void DualFunction::fillHeld(const ZoneShelf& shelf, int day, std::size_t state) {
    for (std::size_t zone = 0; zone < shelf.held.size(); ++zone) {
        for (std::size_t i = 0; i < m_held[zone].size(); ++i) {
            const HeldState& held = shelf.held[zone].states[i];
            if (at(held.setPoint + 1) != state || at(day) >= held.load.size()) continue;
            const int room = std::max(0, shelf.slots - held.load[at(day)]);
            HeldEarning& earning = m_held[zone][i];
            earning.earned += m_packing.best(room) - shelf.dayCost[state];
            m_packing.chosen(earning.names);
        }
    }
}

void DualFunction::fillFreed(const ZoneShelf& shelf, int day, double free) {
    for (std::size_t zone = 0; zone < shelf.held.size(); ++zone) {
        for (std::size_t i = 0; i < m_held[zone].size(); ++i) {
            if (at(day) < shelf.held[zone].states[i].load.size()) continue;
            HeldEarning& earning = m_held[zone][i];
            earning.earned += free;
            earning.names.insert(earning.names.end(), m_names.begin(), m_names.end());
        }
    }
}

double DualFunction::strikeCuttings(const Prices& prices) {
    double total = 0;
    for (std::size_t i = 0; i < m_striking.size(); ++i) {
        if (m_stop.stop_requested()) return infinity;
        m_packing.take(m_striking[i], prices.stand);
        total += m_packing.best(m_formulation.labour[i].cuttings);
        m_names.clear();
        m_packing.chosen(m_names);
        for (const int name : m_names) standExcess[at(name)] -= 1;
    }
    return total;
}

int DualFunction::forbidCostly(Domain& domain, double value, double limit) {
    int forbidden = 0;
    for (std::size_t batch = 0; batch < m_options.size() && !m_stop.stop_requested(); ++batch) {
        const std::vector<double> detour = detours(static_cast<int>(batch));
        const StrikeOptions& options = m_options[batch];
        // A link in a period adds to the period's detour what it costs above the cheapest chain of the
        // period.
        std::vector<double> limits;
        for (std::size_t period = 0; period < options.cost.size(); ++period)
            limits.push_back(std::isinf(detour[period])
                                 ? -infinity
                                 : options.cost[period] + limit - value - detour[period]);
        forbidden += m_batches.forbid(static_cast<int>(batch), limits, domain);
        if (domain.mayStayOut[batch] != 0 && value + detour.back() >= limit) {
            domain.mayStayOut[batch] = 0;
            ++forbidden;
        }
    }
    return forbidden;
}

} // namespace warmbench::planner
