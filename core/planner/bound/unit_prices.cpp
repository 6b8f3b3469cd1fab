#include "core/planner/bound/unit_prices.h"

#include "core/planner/bound/ascent.h"
#include "core/planner/bound/zone_kinds.h"
#include "core/planner/index.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace warmbench::planner {
namespace {

constexpr int iterationsOfPriceRound = 50;
constexpr int mostRounds = 20;
constexpr double gainOfPriceRound = 1e-3; ///< share of the value

/// A relaxation at its best multipliers, whose limits are moved one at a time.
class Priced {
public:
    Priced(const Formulation& formulation, const std::stop_token& stop)
        : m_dual(formulation, stop), m_domain(wholeDomain(formulation)),
          m_ascent(formulation, m_dual, false) {
        m_ascent.start(m_domain, sharePrices(formulation), stop);
        for (int round = 0; round < mostRounds && !stop.stop_requested(); ++round) {
            const double before = m_ascent.value();
            m_ascent.climb(m_domain, {std::numeric_limits<double>::max() / 4, iterationsOfPriceRound}, stop);
            if (m_ascent.value() < before + gainOfPriceRound * std::abs(before)) break;
        }
    }

    /// Thousandths that the value falls by while limits are greater: `raise(1)` makes them so, `raise(-1)`
    /// takes that back.
    template <class Raise>
    [[nodiscard]] std::int64_t fall(const Raise& raise) {
        raise(1);
        const double value = m_dual.evaluate(m_domain, m_ascent.prices());
        raise(-1);
        if (std::isinf(value)) return 0;
        const double fallen = (m_ascent.value() - value) / Formulation::unitsPerThousandth;
        return std::max<std::int64_t>(0, static_cast<std::int64_t>(fallen));
    }

private:
    DualFunction m_dual;
    Domain m_domain;
    Ascent m_ascent;
};

} // namespace

std::optional<UnitPrices> unitPrices(const Problem& problem, std::int64_t cuttings,
                                     const BoundOptions& options, const std::stop_token& stop) {
    UnitPrices prices{std::vector<std::int64_t>(problem.zones.size(), 0),
                      std::vector<std::int64_t>(problem.stocks.size(), 0),
                      std::vector<std::int64_t>(at(problem.days), 0)};
    const ZoneKinds zones = zoneKinds(problem);
    Formulation formulation = formulate(problem, zones, stop, options.memory);
    if (stop.stop_requested() || formulation.shelves.size() < zones.kinds.size()) return std::nullopt;
    Priced priced(formulation, stop);
    std::vector<std::int64_t> ofKind;
    for (std::size_t kind = 0; kind < formulation.shelves.size(); ++kind) {
        ZoneShelf& shelf = formulation.shelves[kind];
        const int column = problem.zones[at(zones.kinds[kind].zone)].rows / std::max(1, shelf.slotsScale);
        ofKind.push_back(priced.fall([&](int sign) { shelf.slots += sign * column; }) /
                         std::max(1, zones.kinds[kind].count));
    }
    for (std::size_t zone = 0; zone < problem.zones.size(); ++zone)
        prices.zones[zone] = ofKind[at(zones.ofZone[zone])];
    for (int stock = 0; stock < static_cast<int>(problem.stocks.size()); ++stock)
        prices.stocks[at(stock)] = priced.fall([&](int sign) {
            const auto more = static_cast<double>(sign * cuttings);
            for (StockGroup& group : formulation.stockGroups)
                if (group.stock == stock)
                    for (double& limit : group.limits) limit += more;
            for (StrikeRow& row : formulation.strikeRows)
                if (row.stock == stock) row.limit += more;
        });
    for (LabourDay& day : formulation.labour) {
        const auto more = static_cast<int>(std::max<std::int64_t>(1, cuttings / day.measure));
        prices.days[at(day.day)] = priced.fall([&](int sign) { day.cuttings += sign * more; });
    }
    return prices;
}

} // namespace warmbench::planner
