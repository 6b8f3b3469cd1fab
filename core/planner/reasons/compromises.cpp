#include "core/planner/reasons/compromises.h"

#include "core/planner/index.h"
#include "core/planner/reasons/rehearsal.h"
#include "core/planner/reasons/words.h"
#include "core/planner/search/previous.h"
#include "core/quantity/phrase.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <optional>

namespace warmbench::planner {

namespace {

using search::never;
using search::Plan;

/// Forms of one batch, added to the problem: as it is; with what it lacks made dear; the same with hands and
/// stock enough.
enum Wish : int { AsItIs, Better, BetterSupplied };

enum class Lack : std::uint8_t { Late, OffIdeal };

constexpr std::int64_t mostDearness = 10'000;   ///< times as dear
constexpr std::int64_t dearEnough = 10'000'000; ///< hundredths: a rate above it is left as it is

/// Thousandths that a plan of `batch` loses by being late or off ideal.
std::int64_t loss(const Problem& problem, const Batch& batch, const Plan& plan, Lack lack) {
    if (lack == Lack::Late) {
        const std::int64_t days = batch.due ? plan.stands.back().to - *batch.due : 0;
        return 10 * batch.latePerDay * std::max<std::int64_t>(0, days);
    }
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < plan.stands.size(); ++i) {
        const search::Stand& stand = plan.stands[i];
        const StayRule& rule = batch.stays[i];
        for (int day = stand.from; day < stand.to; ++day)
            sum += rule.offIdeal *
                   std::abs(rootZone(problem.zones[at(stand.zone)], stand.state, day) - rule.ideal);
    }
    return sum;
}

class Retrial {
public:
    Retrial(const Problem& problem, const Batch& batch, int index, Lack lack, const std::vector<Plan>& plans,
            const std::vector<int>& held, const search::Stopped& stopped)
        : m_house(withForms(problem, batch, lack), plans, held, stopped, index), m_batch(batch), m_lack(lack),
          m_first(static_cast<int>(problem.batches.size())),
          m_loss(loss(problem, batch, plans[at(index)], lack)),
          m_change(search::standsAsBefore(m_house.model, plans[at(index)]) ? 10 * problem.changeCost : 0) {}

    std::string why() {
        const std::int64_t now = cost(m_house.finished, AsItIs);
        if (const std::int64_t better = cost(m_house.finished, Better);
            better != never && m_newLoss < m_loss) {
            const std::int64_t more = better - (dearnessFor(m_batch) - 1) * m_newLoss - now + m_change;
            return phrase(wish(), money(std::max<std::int64_t>(0, more))).text();
        }
        if (cost(m_house.empty, Better) == never || m_newLoss >= m_loss)
            return m_lack == Lack::Late ? pattern("even alone in the house it would not end sooner")
                                        : pattern("no zone offers it anything nearer to its ideal");
        if (cost(m_house.finished, BetterSupplied) != never && m_newLoss < m_loss)
            return pattern("hands or stock are short for it on the strike days that would be better");
        return pattern("the slots and set-points that would suit it better are taken");
    }

private:
    static std::int64_t dearnessFor(const Batch& batch) {
        std::int64_t rate = batch.latePerDay;
        for (const StayRule& stay : batch.stays) rate = std::max(rate, stay.offIdeal);
        return rate > dearEnough ? 1 : mostDearness;
    }

    static Problem withForms(const Problem& problem, const Batch& batch, Lack lack) {
        Problem wider = problem;
        Batch form = batch;
        form.value = std::numeric_limits<std::int64_t>::max() / 10'000; // beyond all that a plan costs
        form.pin.reset();
        form.previous.reset();
        wider.batches.push_back(form);
        const std::int64_t dearness = dearnessFor(batch);
        if (lack == Lack::Late) form.latePerDay *= dearness;
        for (StayRule& stay : form.stays)
            if (lack == Lack::OffIdeal) stay.offIdeal *= dearness;
        wider.batches.push_back(form);
        form.cuttings = 0;
        form.stock.reset();
        wider.batches.push_back(form);
        return wider;
    }

    /// Of the cheapest way to place a form; leaves what is lost by it, at the true price, in m_newLoss.
    std::int64_t cost(const search::State& into, Wish form) {
        const std::int64_t cost = m_house.cost(into, m_first + form);
        if (cost != never) m_newLoss = loss(m_house.problem, m_batch, m_house.plan, m_lack);
        return cost;
    }

    [[nodiscard]] const char* wish() const {
        if (m_lack == Lack::OffIdeal) return pattern("nearer to its ideal it would cost %1 more");
        return m_newLoss == 0 ? pattern("in time it would cost %1 more")
                              : pattern("sooner it would cost %1 more");
    }

    Rehearsal m_house;
    const Batch& m_batch;
    Lack m_lack;
    int m_first; ///< form
    std::int64_t m_loss;
    std::int64_t m_change; ///< what any other place would cost for the change
    std::int64_t m_newLoss = 0;
};

} // namespace

std::vector<Compromise> compromises(const Problem& problem, const std::vector<Plan>& plans,
                                    const std::vector<int>& held, const std::function<bool()>& stopped) {
    std::vector<Compromise> found;
    for (const Plan& plan : plans) {
        if (plan.strike < 0) continue;
        const Batch& batch = problem.batches[at(plan.batch)];
        for (const Lack lack : {Lack::Late, Lack::OffIdeal}) {
            if (stopped()) return found;
            const std::int64_t lost = loss(problem, batch, plan, lack);
            if (lost == 0) continue;
            const std::string why =
                batch.pin ? pattern("it is pinned")
                          : Retrial(problem, batch, plan.batch, lack, plans, held, stopped).why();
            std::string text =
                (lack == Lack::Late
                     ? phrase("ends %1 late, for %2: %3", counted(plan.stands.back().to - *batch.due, "day"),
                              money(lost), why)
                     : phrase("is off its ideal heat, for %1: %2", money(lost), why))
                    .text();
            if (stopped()) return found;
            found.push_back({plan.batch, std::move(text)});
        }
    }
    return found;
}

} // namespace warmbench::planner
