#include "core/planner/bound/bound.h"

#include "core/planner/bound/bound_tree.h"
#include "core/planner/bound/cost_step.h"
#include "core/planner/bound/late_release.h"
#include "core/planner/bound/plate_bound.h"
#include "core/planner/bound/share_bound.h"
#include "core/planner/bound/zone_kinds.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <optional>
#include <utility>

namespace warmbench::planner {
namespace {

/// Between units, in which the relaxation counts, and totals, which are whole multiples of a step.
class Totals {
public:
    Totals(const Problem& problem, const std::function<std::int64_t()>& incumbentTotal,
           const std::function<void(std::int64_t)>& onImproved)
        : m_step(std::max<std::int64_t>(1, costStep(problem))), m_incumbentTotal(incumbentTotal),
          m_onImproved(onImproved) {}

    /// Units above which a value proves that nothing is better than the incumbent.
    double cutoff() {
        const auto total = static_cast<double>(m_incumbentTotal() - m_step);
        m_cutoff = std::min(m_cutoff, total * Formulation::unitsPerThousandth + 1);
        return m_cutoff;
    }

    /// Reports a bound in units, valid for all solutions below the lowest cutoff that was ever asked for.
    void prove(double units) {
        report(std::ceil(std::min(units, m_cutoff) / Formulation::unitsPerThousandth));
    }

    /// Reports a bound in thousandths.
    void report(double thousandths) {
        if (thousandths <= 0 || thousandths > highest / Formulation::unitsPerThousandth) return;
        const std::int64_t bound = roundedUp(static_cast<std::int64_t>(thousandths), m_step);
        if (bound <= m_reported) return;
        m_reported = bound;
        m_onImproved(bound);
    }

    [[nodiscard]] bool proven() const { return m_reported >= m_incumbentTotal(); }

private:
    static constexpr double highest = 1e15;

    std::int64_t m_step;
    std::int64_t m_reported = 0;
    double m_cutoff = highest;
    const std::function<std::int64_t()>& m_incumbentTotal;
    const std::function<void(std::int64_t)>& m_onImproved;
};

constexpr int iterationsOfRound = 50;
constexpr int roundsWithoutGain = 4;
constexpr int roundsWithoutTree = 200;          ///< the same where no tree follows
constexpr std::size_t mostLinksOfTree = 25'000; ///< splits of more take too long
constexpr double gainOfRound = 3e-4;            ///< share of the value

/// Climbs at the root until that hardly gains, forbidding what is too costly for the incumbent on the way.
void climbRoot(DualFunction& dual, Domain& domain, Ascent& ascent, Totals& totals, int patience,
               const std::stop_token& stop) {
    int idle = 0;
    while (idle < patience && !stop.stop_requested()) {
        const double before = ascent.value();
        const double cutoff = totals.cutoff();
        const bool done = ascent.climb(domain, {cutoff, iterationsOfRound}, stop);
        totals.prove(ascent.value());
        if (done) return;
        const double value = dual.evaluate(domain, ascent.prices());
        if (!std::isinf(value)) dual.forbidCostly(domain, value, cutoff);
        idle = ascent.value() > before + gainOfRound * std::abs(before) ? 0 : idle + 1;
    }
}

/// What the relaxation works with: a few hundred megabytes for a large house.
struct Workings {
    Workings(const Problem& problem, const ZoneKinds& zones, std::size_t memory, const std::stop_token& stop)
        : formulation(formulate(problem, zones, stop, memory)) {}

    /// Once the formulation is whole.
    void begin(const std::stop_token& stop) {
        dual.emplace(formulation, stop);
        if (stop.stop_requested()) return;
        treeFollows = formulation.links.size() <= mostLinksOfTree;
        root.emplace(formulation, *dual, treeFollows);
        tree.emplace(formulation, *dual);
    }

    Formulation formulation;
    std::optional<DualFunction> dual;
    bool treeFollows = false;
    std::optional<Ascent> root;
    std::optional<BoundTree> tree;
};

/// As far as the relaxation goes without splitting; false where it cannot be had.
bool climb(Workings& workings, Domain& domain, Totals& totals, const std::stop_token& stop) {
    const Formulation& formulation = workings.formulation;
    if (stop.stop_requested() || formulation.shelves.empty()) return false;
    workings.begin(stop);
    if (stop.stop_requested()) return false;
    domain = wholeDomain(formulation);
    const Prices prices = sharePrices(formulation);
    if (stop.stop_requested()) return false;
    workings.root->start(domain, prices, stop);
    climbRoot(*workings.dual, domain, *workings.root, totals,
              workings.treeFollows ? roundsWithoutGain : roundsWithoutTree, stop);
    return true;
}

void split(Workings& workings, const Domain& domain, const BoundOptions& options, Totals& totals,
           const std::stop_token& stop) {
    if (!workings.treeFollows || stop.stop_requested() || totals.proven()) return;
    BoundTree& tree = *workings.tree;
    tree.open(domain, *workings.root);
    while (tree.bytes() < options.memory && tree.splitLowest(totals.cutoff(), stop)) {
        totals.prove(tree.bound());
        if (tree.empty()) return;
    }
}

} // namespace

void improveBound(const Problem& problem, const BoundOptions& options,
                  const std::function<std::int64_t()>& incumbentTotal,
                  const std::function<void(std::int64_t)>& onImproved, const std::stop_token& stop) {
    const ZoneKinds zones = zoneKinds(problem);
    Totals totals(problem, incumbentTotal, onImproved);
    totals.report(static_cast<double>(shareBound(problem, zones, stop)));
    if (totals.proven()) return;

    const auto workings = std::make_shared<Workings>(problem, zones, options.memory, stop);
    Domain domain;
    const bool hasClimbed = climb(*workings, domain, totals, stop);
    // A plate takes long where it is not decided.
    if (!totals.proven() && !stop.stop_requested())
        totals.report(static_cast<double>(plateBound(problem, zones, stop)));
    if (hasClimbed) split(*workings, domain, options, totals, stop);
    releaseLater(workings);
}

} // namespace warmbench::planner
