#include "core/planner/worth/worth.h"

#include "core/planner/bound/stay_choices.h"
#include "core/planner/bound/unit_prices.h"
#include "core/planner/bound/zone_kinds.h"
#include "core/planner/format/answer_format.h"
#include "core/planner/index.h"
#include "core/planner/previous_plan.h"
#include "core/planner/verify/verify.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace warmbench::planner {
namespace {

constexpr std::size_t mostStocks = 5; ///< that are solved again
constexpr std::size_t mostDays = 5;

Problem withColumn(Problem problem, int index) {
    Zone& zone = problem.zones[at(index)];
    std::vector<char> blocked;
    for (int row = 0; row < zone.rows; ++row) {
        const auto begin = zone.blocked.begin() + std::ptrdiff_t{row} * zone.cols;
        blocked.insert(blocked.end(), begin, begin + zone.cols);
        blocked.push_back(0);
    }
    zone.blocked = std::move(blocked);
    ++zone.cols;
    return problem;
}

Problem withStock(Problem problem, int index) {
    for (StockStep& step : problem.stocks[at(index)].steps) step.total += cuttingsOfUnit;
    return problem;
}

Problem withHands(Problem problem, int day) {
    std::vector<std::int64_t> capacity;
    capacity.reserve(at(problem.days));
    for (int d = 0; d < problem.days; ++d) capacity.push_back(strikeCapacityOn(problem, d));
    capacity[at(day)] += cuttingsOfUnit;
    problem.strikeCapacity = std::move(capacity);
    return problem;
}

Problem withUnit(const Problem& problem, const UnitWorth& unit) {
    switch (unit.of) {
    case UnitWorth::Of::Zone:
        return withColumn(problem, unit.index);
    case UnitWorth::Of::Stock:
        return withStock(problem, unit.index);
    case UnitWorth::Of::Day:
        break;
    }
    return withHands(problem, unit.index);
}

Problem withMat(Problem problem, int index, std::optional<int> like) {
    Zone& zone = problem.zones[at(index)];
    zone.hasMat = like.has_value();
    zone.setPoints = like ? problem.zones[at(*like)].setPoints : std::vector<SetPoint>{};
    return problem;
}

/// Thousandths that the mat of `zone` costs in a plan.
std::int64_t matCost(const Problem& problem, const Answer& answer, int zone) {
    std::int64_t cost = 0;
    for (const ZoneRuns& runs : answer.mats)
        for (const MatRun& run : runs.runs)
            if (runs.zone == zone)
                cost +=
                    10 * problem.zones[at(zone)].setPoints[at(run.setPoint)].costPerDay * (run.to - run.from);
    return cost;
}

/// The units with a price: zones kind by kind, then stocks and then days, the dearest first; those that are
/// to be solved again have something in `saved`.
std::vector<UnitWorth> pricedUnits(const Problem& problem, const ZoneKinds& zones, const UnitPrices& prices) {
    std::vector<UnitWorth> units;
    for (const ZoneKind& kind : zones.kinds)
        if (const std::int64_t price = prices.zones[at(kind.zone)]; price > 0)
            units.push_back({UnitWorth::Of::Zone, kind.zone, kind.count, price, 0});
    const auto add = [&](UnitWorth::Of of, const std::vector<std::int64_t>& all, std::size_t most) {
        const auto first = static_cast<std::ptrdiff_t>(units.size());
        for (std::size_t i = 0; i < all.size(); ++i)
            if (all[i] > 0) units.push_back({of, static_cast<int>(i), 1, all[i], {}});
        std::stable_sort(units.begin() + first, units.end(),
                         [](const UnitWorth& a, const UnitWorth& b) { return a.price > b.price; });
        for (std::size_t i = at(static_cast<int>(first)); i < units.size() && most > 0; ++i, --most)
            units[i].saved = 0;
    };
    add(UnitWorth::Of::Stock, prices.stocks, mostStocks);
    if (!problem.strikeCapacity.empty()) add(UnitWorth::Of::Day, prices.days, mostDays);
    return units;
}

class Reckoner {
public:
    Reckoner(const Problem& problem, const Solved& base, const Options& options, const std::stop_token& stop)
        : m_problem(problem), m_options(options), m_stop(stop), m_best(base.answer) {
        const auto staysClose = [](const Batch& batch) { return batch.previous.has_value(); };
        m_options.goesOn = problem.changeCost == 0 ||
                           std::none_of(problem.batches.begin(), problem.batches.end(), staysClose);
    }

    /// Looks once more for a better plan of the problem itself: with what is solved again after it, no
    /// longer search is mistaken for more room.
    void solveAsItIs() {
        if (const auto again = solveAgain(m_problem)) takeBetter(again->answer);
    }

    /// Into `saved`: the total, until the total to compare with is known.
    void solveWith(UnitWorth& unit) {
        unit.saved = std::numeric_limits<std::int64_t>::max();
        const auto again = solveAgain(withUnit(m_problem, unit));
        if (!again) return;
        unit.saved = again->answer.cost.total();
        // A plan that does without the unit saves nothing by it.
        if (*unit.saved < best() && isPlan(again->answer)) takeBetter(again->answer);
        unit.exact = again->ending == Ending::Proven;
    }

    void solveWithout(MatWorth& mat, const Answer& base) {
        mat.cost = matCost(m_problem, base, mat.zone);
        const auto again = solveAgain(withMat(m_problem, mat.zone, {}));
        if (!again) return;
        mat.saves = again->answer.cost.total();
        mat.exact = again->ending == Ending::Proven;
        takeBetter(again->answer);
    }

    void solveWithAnother(MatWorth& mat) {
        const Problem problem = withMat(m_problem, mat.zone, mat.like);
        const auto again = solveAgain(problem);
        if (!again) return;
        mat.saves = again->answer.cost.total();
        mat.exact = again->ending == Ending::Proven;
        mat.cost = matCost(problem, again->answer, mat.zone);
        if (mat.cost == 0) takeBetter(again->answer);
    }

    [[nodiscard]] std::int64_t best() const { return m_best.cost.total(); }

private:
    /// From the plan that is known on, unless the problem is to stay close to another.
    [[nodiscard]] Result<Solved> solveAgain(Problem problem) const {
        if (m_options.goesOn) {
            problem.changeCost = 0;
            recallPlan(problem, m_best);
        }
        return solve(problem, m_options, m_stop);
    }

    void takeBetter(const Answer& plan) {
        if (plan.cost.total() < m_best.cost.total()) m_best = plan;
    }

    [[nodiscard]] bool isPlan(const Answer& answer) const {
        Answer unbounded = answer;
        unbounded.bound = 0;
        return verifyAnswer(m_problem, answerText(m_problem, unbounded)).valid();
    }

    const Problem& m_problem;
    Options m_options;
    const std::stop_token& m_stop;
    Answer m_best; ///< of the problem itself, that is known by now
};

} // namespace

Worth worth(const Problem& problem, const Solved& base, const Options& options, const std::stop_token& stop,
            const BoundOptions& prices) {
    const ZoneKinds zones = zoneKinds(problem);
    Worth result;
    const auto priced = unitPrices(problem, cuttingsOfUnit, prices, stop);
    result.priced = priced.has_value() || stop.stop_requested();
    if (priced) result.units = pricedUnits(problem, zones, *priced);
    Reckoner reckoner(problem, base, options, stop);
    if (base.ending != Ending::Proven && !stop.stop_requested()) reckoner.solveAsItIs();
    for (UnitWorth& unit : result.units) {
        if (unit.saved && !stop.stop_requested()) reckoner.solveWith(unit);
        if (!stop.stop_requested()) continue;
        unit.saved.reset();
        unit.exact = false;
    }
    const auto heated = std::find_if(problem.zones.begin(), problem.zones.end(),
                                     [](const Zone& zone) { return zone.hasMat; });
    for (const ZoneKind& kind : zones.kinds) {
        MatWorth mat{kind.zone, kind.count, {}, 0, {}};
        if (problem.zones[at(kind.zone)].hasMat) {
            reckoner.solveWithout(mat, base.answer);
        } else if (heated != problem.zones.end()) {
            mat.like = static_cast<int>(heated - problem.zones.begin());
            reckoner.solveWithAnother(mat);
        } else {
            continue;
        }
        if (stop.stop_requested()) break;
        result.mats.push_back(mat);
    }
    result.total = reckoner.best();
    const bool proven = base.ending == Ending::Proven && result.total == base.answer.cost.total();
    for (UnitWorth& unit : result.units) {
        if (unit.saved) unit.saved = std::max<std::int64_t>(0, result.total - *unit.saved);
        unit.exact = unit.exact && proven;
    }
    for (MatWorth& mat : result.mats) {
        mat.exact = mat.exact && proven;
        if (mat.saves)
            mat.saves = mat.like ? std::max<std::int64_t>(0, result.total - *mat.saves)
                                 : std::max<std::int64_t>(0, *mat.saves - result.total);
    }
    return result;
}

} // namespace warmbench::planner
