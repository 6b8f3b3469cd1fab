#include "core/planner/bound/dual_function.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace warmbench::planner {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double highestExact = 4503599627370496.0; // 2^52

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

} // namespace

Domain wholeDomain(const Formulation& formulation) {
    Domain domain;
    domain.links.assign(formulation.links.size(), 1);
    for (const BatchChains& batch : formulation.batches)
        domain.mayStayOut.push_back(batch.mayStayOut ? 1 : 0);
    return domain;
}

DualFunction::DualFunction(const Formulation& formulation, std::stop_token stop)
    : m_formulation(formulation), m_stop(std::move(stop)),
      m_sums(formulation.prices + formulation.lanes.size()), m_strikePrice(formulation.links.size()) {}

double DualFunction::evaluate(const Domain& domain, const Prices& prices) {
    standExcess.assign(m_formulation.prices, 0);
    strikeExcess.assign(m_formulation.strikeRows.size(), 0);
    usedLinks.clear();
    staysOut.clear();
    if (!sumPrices(prices)) return -infinity;
    double value = placeBatches(domain, prices);
    if (std::isinf(value)) return value;
    for (std::size_t row = 0; row < prices.strike.size(); ++row) {
        value -= prices.strike[row] * m_formulation.strikeRows[row].limit;
        strikeExcess[row] -= m_formulation.strikeRows[row].limit;
    }
    return value - fillZones(prices);
}

bool DualFunction::sumPrices(const Prices& prices) {
    double all = 0;
    for (std::size_t i = 0; i < m_formulation.lanes.size(); ++i) {
        const Lane& lane = m_formulation.lanes[i];
        double* sums = m_sums.data() + lane.firstPrice + i;
        const double* stand = prices.stand.data() + lane.firstPrice;
        const int days = lane.toDay - lane.fromDay;
        double sum = 0;
        for (int day = 0; day < days; ++day) {
            sums[day] = sum;
            sum += stand[day];
        }
        sums[days] = sum;
        all += sum;
    }
    double cuttings = 0;
    for (const BatchChains& batch : m_formulation.batches) cuttings += batch.cuttings;
    for (std::size_t row = 0; row < prices.strike.size(); ++row)
        all += prices.strike[row] * std::max(cuttings, m_formulation.strikeRows[row].limit);
    return all <= highestExact;
}

void DualFunction::priceStrikes(const BatchChains& chains, const Prices& prices) {
    int known = -1;
    double price = 0;
    for (std::size_t i = chains.stays[0]; i < chains.stays[1]; ++i) {
        const int day = m_formulation.links[i].strikeDay;
        if (day != known) {
            known = day;
            price = 0;
            for (const int row : chains.strikeRows) {
                const StrikeRow& strikes = m_formulation.strikeRows[at(row)];
                if (day >= strikes.fromDay && day < strikes.toDay) price += prices.strike[at(row)];
            }
            price *= chains.cuttings;
        }
        m_strikePrice[i] = price;
    }
}

double DualFunction::priced(std::size_t index) const {
    const Link& link = m_formulation.links[index];
    return link.cost + m_strikePrice[index] + (m_sums[link.highSum] - m_sums[link.lowSum]);
}

void DualFunction::relaxForward(const BatchChains& chains, const Domain& domain) {
    m_least.assign(at(chains.nodes), infinity);
    m_by.assign(at(chains.nodes), -1);
    m_least[0] = 0;
    for (std::size_t i = chains.stays.front(); i < chains.stays.back(); ++i) {
        const Link& link = m_formulation.links[i];
        if (domain.links[i] == 0 || std::isinf(m_least[at(link.entry)])) continue;
        const double cost = m_least[at(link.entry)] + priced(i);
        const auto reach = [&](int node) {
            if (node < 0 || cost >= m_least[at(node)]) return;
            m_least[at(node)] = cost;
            m_by[at(node)] = static_cast<int>(i);
        };
        reach(link.exit);
        reach(link.keptExit);
    }
}

double DualFunction::placeBatches(const Domain& domain, const Prices& prices) {
    batchCost.assign(m_formulation.batches.size(), 0);
    double total = 0;
    for (std::size_t batch = 0; batch < batchCost.size(); ++batch) {
        if (m_stop.stop_requested()) return -infinity;
        const BatchChains& chains = m_formulation.batches[batch];
        priceStrikes(chains, prices);
        relaxForward(chains, domain);
        const double placed = m_least[1];
        const bool out = domain.mayStayOut[batch] != 0 && chains.value <= placed;
        batchCost[batch] = out ? chains.value : placed;
        if (std::isinf(batchCost[batch])) return infinity;
        total += batchCost[batch];
        if (out)
            staysOut.push_back(static_cast<int>(batch));
        else
            traceChain(chains);
    }
    return total <= highestExact ? total : -infinity;
}

void DualFunction::traceChain(const BatchChains& chains) {
    for (int node = 1; node != 0;) {
        const int index = m_by[at(node)];
        const Link& link = m_formulation.links[at(index)];
        usedLinks.push_back(index);
        const auto offset = at(link.lane); // running sums have one entry more a lane
        for (std::size_t sum = link.lowSum; sum < link.highSum; ++sum) standExcess[sum - offset] += 1;
        if (link.strikeDay >= 0)
            for (const int row : chains.strikeRows) {
                const StrikeRow& strikes = m_formulation.strikeRows[at(row)];
                if (link.strikeDay >= strikes.fromDay && link.strikeDay < strikes.toDay)
                    strikeExcess[at(row)] += chains.cuttings;
            }
        node = link.entry;
    }
}

bool DualFunction::pack(const ZoneShelf& shelf, std::size_t state, int day, double least,
                        const Prices& prices) {
    double sum = 0;
    double densest = 0;
    for (const int index : shelf.lanes[state]) {
        const Lane& lane = m_formulation.lanes[at(index)];
        if (day < lane.fromDay || day >= lane.toDay) continue;
        const double price = prices.stand[lane.firstPrice + at(day - lane.fromDay)];
        sum += price;
        densest = std::max(densest, price / lane.slots);
    }
    if (sum <= least || densest * shelf.slots * (1 + 1e-12) < least) return false;
    m_packing.clear(shelf.slots);
    for (const int index : shelf.lanes[state]) {
        const Lane& lane = m_formulation.lanes[at(index)];
        if (day < lane.fromDay || day >= lane.toDay) continue;
        const std::size_t name = lane.firstPrice + at(day - lane.fromDay);
        if (prices.stand[name] > 0) m_packing.add(static_cast<int>(name), lane.slots, prices.stand[name]);
    }
    return true;
}

double DualFunction::fillZones(const Prices& prices) {
    double total = 0;
    for (const ZoneShelf& shelf : m_formulation.shelves) {
        m_held.clear();
        for (const HeldZone& zone : shelf.held) m_held.emplace_back(zone.states.size());
        for (int day = shelf.fromDay; day < shelf.toDay; ++day) {
            if (m_stop.stop_requested()) return infinity;
            double best = 0;
            m_names.clear();
            for (std::size_t state = 0; state < shelf.dayCost.size(); ++state) {
                const double cost = shelf.dayCost[state];
                if (!pack(shelf, state, day, best + cost, prices)) continue;
                const double earned = m_packing.best(shelf.slots) - cost;
                if (earned <= best) continue;
                best = earned;
                m_names.clear();
                m_packing.chosen(shelf.slots, m_names);
            }
            total += best * shelf.count;
            for (const int name : m_names) standExcess[at(name)] -= shelf.count;
            for (std::size_t zone = 0; zone < shelf.held.size(); ++zone)
                fillHeld(shelf, zone, day, best, prices);
        }
        for (const auto& states : m_held) {
            const auto best =
                std::max_element(states.begin(), states.end(),
                                 [](const auto& a, const auto& b) { return a.earned < b.earned; });
            total += best->earned;
            for (const int name : best->names) standExcess[at(name)] -= 1;
        }
    }
    return total;
}

void DualFunction::fillHeld(const ZoneShelf& shelf, std::size_t zone, int day, double free,
                            const Prices& prices) {
    for (std::size_t i = 0; i < m_held[zone].size(); ++i) {
        const HeldState& state = shelf.held[zone].states[i];
        HeldEarning& earning = m_held[zone][i];
        if (at(day) >= state.load.size()) {
            earning.earned += free;
            earning.names.insert(earning.names.end(), m_names.begin(), m_names.end());
            continue;
        }
        const auto setPoint = at(state.setPoint + 1);
        earning.earned -= shelf.dayCost[setPoint];
        if (!pack(shelf, setPoint, day, 0, prices)) continue;
        const int room = std::max(0, shelf.slots - state.load[at(day)]);
        earning.earned += m_packing.best(room);
        m_packing.chosen(room, earning.names);
    }
}

int DualFunction::forbidCostly(Domain& domain, const Prices& prices, double value, double limit) {
    int forbidden = 0;
    for (std::size_t batch = 0; batch < m_formulation.batches.size(); ++batch) {
        const BatchChains& chains = m_formulation.batches[batch];
        const double most = limit - (value - batchCost[batch]); // what this batch may cost, less than this
        priceStrikes(chains, prices);
        relaxForward(chains, domain);
        m_rest.assign(at(chains.nodes), infinity);
        m_rest[1] = 0;
        for (std::size_t i = chains.stays.back(); i-- > chains.stays.front();) {
            if (domain.links[i] == 0) continue;
            const Link& link = m_formulation.links[i];
            double rest = m_rest[at(link.exit)];
            if (link.keptExit >= 0) rest = std::min(rest, m_rest[at(link.keptExit)]);
            rest += priced(i);
            if (m_least[at(link.entry)] + rest >= most) {
                domain.links[i] = 0;
                ++forbidden;
            } else {
                m_rest[at(link.entry)] = std::min(m_rest[at(link.entry)], rest);
            }
        }
        if (domain.mayStayOut[batch] != 0 && chains.value >= most) {
            domain.mayStayOut[batch] = 0;
            ++forbidden;
        }
    }
    return forbidden;
}

} // namespace warmbench::planner
