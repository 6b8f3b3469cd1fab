#include "core/planner/bound/split.h"

#include "core/planner/index.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <tuple>

namespace warmbench::planner {
namespace {

using Property = Split::Property;

class Splitter {
public:
    Splitter(const Formulation& formulation, const Domain& domain, const std::vector<double>& usage)
        : m_formulation(formulation), m_domain(domain), m_usage(usage) {}

    void splitBatch(int batch) {
        const BatchChains& chains = m_formulation.batches[at(batch)];
        if (m_domain.mayStayOut[at(batch)] != 0)
            add(Property::Placed, batch, 0, [](const StayChoice&) { return true; });
        for (std::size_t stay = 0; stay + 1 < chains.stays.size(); ++stay) {
            std::map<int, double> kinds;
            std::map<std::pair<int, int>, double> states;
            std::map<int, double> days;
            for (std::size_t i = chains.stays[stay]; i < chains.stays[stay + 1]; ++i) {
                if (m_domain.links[i] == 0) continue;
                const StayChoice& choice = m_formulation.links[i].choice;
                kinds[choice.kind] += m_usage[i];
                states[{choice.kind, choice.setPoint}] += m_usage[i];
                days[choice.from] += m_usage[i];
            }
            for (const auto& [kind, share] : kinds)
                add(Property::Kind, batch, stay,
                    [k = kind](const StayChoice& choice) { return choice.kind == k; });
            for (const auto& [state, share] : states)
                add(Property::SetPoint, batch, stay, [s = state](const StayChoice& choice) {
                    return choice.kind == s.first && choice.setPoint == s.second;
                });
            for (const auto& [day, share] : days)
                add(Property::Day, batch, stay,
                    [d = day](const StayChoice& choice) { return choice.from <= d; });
        }
    }

    void splitZone(int kind, int day) {
        const ZoneShelf& shelf = m_formulation.shelves[at(kind)];
        // Most that any one batch stands there, by set-point: the share of the day that the set-point needs.
        std::vector<double> needs(shelf.dayCost.size(), 0);
        std::map<std::pair<int, int>, double> standing;
        for (const int index : m_covering[{kind, day}]) {
            const Link& link = m_formulation.links[at(index)];
            const int batch = m_formulation.lanes[at(link.lane)].batch;
            double& sum = standing[{batch, link.choice.setPoint}];
            sum += m_usage[at(index)];
            double& need = needs[at(link.choice.setPoint + 1)];
            need = std::max(need, sum);
        }
        for (std::size_t state = 0; state < needs.size(); ++state) {
            Split split;
            split.property = Property::ZoneDay;
            split.share = needs[state];
            for (const int index : m_covering[{kind, day}])
                (m_formulation.links[at(index)].choice.setPoint + 1 == static_cast<int>(state)
                     ? split.having
                     : split.lacking)
                    .push_back(index);
            keep(std::move(split));
        }
    }

    void splitZones() {
        for (std::size_t i = 0; i < m_formulation.links.size(); ++i) {
            if (m_domain.links[i] == 0) continue;
            const StayChoice& choice = m_formulation.links[i].choice;
            const ZoneShelf& shelf = m_formulation.shelves[at(choice.kind)];
            if (shelf.count + static_cast<int>(shelf.held.size()) != 1 || shelf.dayCost.size() == 1) continue;
            for (int day = choice.from; day < std::min(choice.to, m_formulation.days); ++day)
                m_covering[{choice.kind, day}].push_back(static_cast<int>(i));
        }
        for (const auto& [place, links] : m_covering) splitZone(place.first, place.second);
    }

    std::vector<Split> take(std::size_t each) {
        std::stable_sort(m_splits.begin(), m_splits.end(), [&](const Split& a, const Split& b) {
            if (a.property != b.property) return a.property < b.property;
            return openness(a) > openness(b);
        });
        std::vector<Split> taken;
        std::size_t alike = 0;
        for (Split& split : m_splits) {
            alike = taken.empty() || taken.back().property != split.property ? 0 : alike;
            if (++alike <= each) taken.push_back(std::move(split));
        }
        return taken;
    }

private:
    /// How much the solution leaves open, to compare splits of one property.
    [[nodiscard]] double openness(const Split& split) const {
        const double open = std::min(split.share, 1 - split.share);
        return split.property == Property::Placed ? open * m_formulation.batches[at(split.batch)].value
                                                  : open;
    }

    template <class Has>
    void add(Property property, int batch, std::size_t stay, const Has& has) {
        const BatchChains& chains = m_formulation.batches[at(batch)];
        Split split;
        split.property = property;
        split.batch = batch;
        for (std::size_t i = chains.stays[stay]; i < chains.stays[stay + 1]; ++i) {
            if (m_domain.links[i] == 0) continue;
            const bool having = has(m_formulation.links[i].choice);
            (having ? split.having : split.lacking).push_back(static_cast<int>(i));
            if (having) split.share += m_usage[i];
        }
        keep(std::move(split));
    }

    /// A split both of whose domains are smaller.
    void keep(Split split) {
        const bool firstSmaller =
            !split.lacking.empty() || (split.batch >= 0 && m_domain.mayStayOut[at(split.batch)] != 0);
        if (split.having.empty() || !firstSmaller) return;
        m_splits.push_back(std::move(split));
    }

    const Formulation& m_formulation;
    const Domain& m_domain;
    const std::vector<double>& m_usage;
    std::map<std::pair<int, int>, std::vector<int>> m_covering; ///< links by kind and day
    std::vector<Split> m_splits;
};

} // namespace

std::vector<Split> undecidedSplits(const Formulation& formulation, const Domain& domain,
                                   const std::vector<double>& usage, std::size_t each) {
    Splitter splitter(formulation, domain, usage);
    for (std::size_t batch = 0; batch < formulation.batches.size(); ++batch)
        splitter.splitBatch(static_cast<int>(batch));
    splitter.splitZones();
    return splitter.take(each);
}

Domain firstDomain(const Domain& domain, const Split& split) {
    Domain result = domain;
    for (const int link : split.lacking) result.links[at(link)] = 0;
    if (split.batch >= 0) result.mayStayOut[at(split.batch)] = 0;
    return result;
}

Domain secondDomain(const Domain& domain, const Split& split) {
    Domain result = domain;
    for (const int link : split.having) result.links[at(link)] = 0;
    return result;
}

} // namespace warmbench::planner
