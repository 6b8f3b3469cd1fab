#include "core/planner/bound/batch_pricing.h"

#include "core/planner/index.h"

#include <algorithm>
#include <limits>

namespace warmbench::planner {

Domain wholeDomain(const Formulation& formulation) {
    Domain domain;
    domain.links.assign(formulation.links.size(), 1);
    for (const BatchChains& batch : formulation.batches)
        domain.mayStayOut.push_back(batch.mayStayOut ? 1 : 0);
    return domain;
}

BatchPricing::BatchPricing(const Formulation& formulation)
    : m_formulation(formulation), m_sums(formulation.prices + formulation.lanes.size()),
      m_strikePrice(formulation.links.size()), m_rest(at(formulation.nodes), infinity),
      m_next(at(formulation.nodes), -1), m_before(at(formulation.nodes), infinity) {}

bool BatchPricing::take(const Prices& prices) {
    m_prices = &prices;
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
    for (const LabourDay& day : m_formulation.labour)
        for (const LabourDay::Strike& strike : day.strikes) all += prices.stand[strike.price];
    double cuttings = 0;
    for (const BatchChains& batch : m_formulation.batches) cuttings += batch.cuttings;
    for (std::size_t row = 0; row < prices.strike.size(); ++row)
        all += prices.strike[row] * std::max(cuttings, m_formulation.strikeRows[row].limit);
    return all <= highestExact;
}

double BatchPricing::priced(std::size_t index) const {
    const Link& link = m_formulation.links[index];
    return link.cost + m_strikePrice[index] + (m_sums[link.highSum] - m_sums[link.lowSum]);
}

double BatchPricing::from(std::size_t index) const {
    const Link& link = m_formulation.links[index];
    double rest = m_rest[at(link.exit)];
    if (link.keptExit >= 0) rest = std::min(rest, m_rest[at(link.keptExit)]);
    return rest + priced(index);
}

void BatchPricing::solve(int batch, const Domain& domain, StrikeOptions& options) {
    const BatchChains& chains = m_formulation.batches[at(batch)];
    int known = -1;
    double price = 0;
    for (std::size_t i = chains.stays[0]; i < chains.stays[1]; ++i) {
        const int day = m_formulation.links[i].strikeDay;
        if (day != known) {
            known = day;
            price = 0;
            for (const int row : chains.strikeRows)
                if (m_formulation.strikeRows[at(row)].counts(day)) price += m_prices->strike[at(row)];
            price *= chains.cuttings;
        }
        const int labour = m_formulation.links[i].labourPrice;
        m_strikePrice[i] = price + (labour < 0 ? 0 : m_prices->stand[at(labour)]);
    }
    std::fill_n(m_rest.begin() + chains.firstNode, chains.nodes, infinity);
    m_rest[at(chains.firstNode + 1)] = 0;
    for (std::size_t i = chains.stays.back(); i-- > chains.stays[1];) {
        if (domain.links[i] == 0) continue;
        const double cost = from(i);
        const auto entry = at(m_formulation.links[i].entry);
        if (cost >= m_rest[entry]) continue;
        m_rest[entry] = cost;
        m_next[entry] = static_cast<int>(i);
    }
    const std::size_t periods =
        chains.stockGroup < 0 ? 1 : m_formulation.stockGroups[at(chains.stockGroup)].ends.size() + 1;
    options.cost.assign(periods, infinity);
    options.out = domain.mayStayOut[at(batch)] != 0 ? chains.value : infinity;
    for (std::size_t i = chains.stays[0]; i < chains.stays[1]; ++i) {
        if (domain.links[i] == 0) continue;
        double& cost = options.cost[at(m_formulation.links[i].period)];
        cost = std::min(cost, from(i));
    }
}

void BatchPricing::appendChain(int batch, int period, const Domain& domain, std::vector<int>& links) const {
    const BatchChains& chains = m_formulation.batches[at(batch)];
    double least = infinity;
    std::size_t next = chains.stays[0];
    for (std::size_t i = chains.stays[0]; i < chains.stays[1]; ++i) {
        if (domain.links[i] == 0 || m_formulation.links[i].period != period || from(i) >= least) continue;
        least = from(i);
        next = i;
    }
    for (;;) {
        links.push_back(static_cast<int>(next));
        const Link& link = m_formulation.links[next];
        if (link.exit == chains.firstNode + 1) return;
        const bool kept = link.keptExit >= 0 && m_rest[at(link.keptExit)] < m_rest[at(link.exit)];
        next = at(m_next[at(kept ? link.keptExit : link.exit)]);
    }
}

int BatchPricing::forbid(int batch, const std::vector<double>& limits, Domain& domain) {
    const BatchChains& chains = m_formulation.batches[at(batch)];
    int forbidden = 0;
    // First stays by their own limits; what follows by how far below its limit a chain can reach it.
    std::fill_n(m_before.begin() + chains.firstNode, chains.nodes, infinity);
    for (std::size_t i = chains.stays[0]; i < chains.stays.back(); ++i) {
        if (domain.links[i] == 0) continue;
        const Link& link = m_formulation.links[i];
        const bool first = i < chains.stays[1];
        const double before = first ? -limits[at(link.period)] : m_before[at(link.entry)];
        if (before + from(i) >= 0) {
            domain.links[i] = 0;
            ++forbidden;
            continue;
        }
        const double reached = before + priced(i);
        m_before[at(link.exit)] = std::min(m_before[at(link.exit)], reached);
        if (link.keptExit >= 0) m_before[at(link.keptExit)] = std::min(m_before[at(link.keptExit)], reached);
    }
    return forbidden;
}

} // namespace warmbench::planner
