#include "core/planner/reasons/compromises.h"

#include "core/planner/index.h"
#include "core/planner/reasons/rehearsal.h"
#include "core/planner/reasons/words.h"
#include "core/planner/search/previous.h"
#include "core/quantity/phrase.h"

#include <algorithm>
#include <cstdlib>
#include <iterator>
#include <limits>
#include <optional>
#include <span>

namespace warmbench::planner {

namespace {

using search::never;
using search::Plan;

/// Forms of one batch, added to the problem: as it is; with what it lacks made dear; the same with hands and
/// stock enough.
enum Wish : int { AsItIs, Better, BetterSupplied };
constexpr std::size_t formsOfCase = 3;

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

/// What one batch lacks.
struct Case {
    int batch = 0;
    Lack lack = Lack::Late;
    std::int64_t loss = 0; ///< thousandths, by that
};

/// Cases that are tried in one finished plan: to make it takes longer than a trial in it.
constexpr std::size_t mostTogether = 64;

/// Tries whether batches could lack less elsewhere in the finished plan.
class Retrials {
public:
    Retrials(const Problem& problem, std::span<const Case> cases, const std::vector<Plan>& plans,
             const std::vector<int>& held, const search::Stopped& stopped)
        : m_house(withForms(problem, cases), plans, held, stopped), m_cases(cases), m_plans(plans),
          m_problem(problem) {}

    /// Why the batch of one of the cases, which is not pinned, stands as it does.
    std::string why(std::size_t index) {
        const Case& one = m_cases[index];
        const Plan& plan = m_plans[at(one.batch)];
        m_batch = &m_problem.batches[at(one.batch)];
        m_lack = one.lack;
        m_first = static_cast<int>(m_problem.batches.size() + index * formsOfCase);
        m_loss = one.loss;
        m_change = search::standsAsBefore(m_house.model, plan) ? 10 * m_problem.changeCost : 0;
        m_house.finished.remove(one.batch);
        std::string why = whyNotBetter();
        m_house.finished.place(plan);
        return why;
    }

private:
    std::string whyNotBetter() {
        const std::int64_t now = cost(m_house.finished, AsItIs);
        if (const std::int64_t better = cost(m_house.finished, Better);
            better != never && m_newLoss < m_loss) {
            const std::int64_t more = better - (dearnessFor(*m_batch) - 1) * m_newLoss - now + m_change;
            return phrase(wish(), money(std::max<std::int64_t>(0, more))).text();
        }
        if (cost(m_house.empty, Better) == never || m_newLoss >= m_loss)
            return m_lack == Lack::Late ? pattern("even alone in the house it would not end sooner")
                                        : pattern("no zone offers it anything nearer to its ideal");
        const search::Stand better = m_house.plan.stands.front();
        if (cost(m_house.finished, BetterSupplied) != never && m_newLoss < m_loss)
            return shortSupply(m_house.plan.strike);
        return phrase("the place that would suit it better, %1 on %2, is taken or stands at another "
                      "set-point then",
                      m_problem.zones[at(better.zone)].id, dayRange(better.from, better.to - 1))
            .text();
    }

    /// Hands or stock that a day lacks which would be better.
    std::string shortSupply(int day) const {
        const auto [hands, stock] = lackingSupply(m_house.finished, *m_batch, day);
        if (stock > 0)
            return phrase("stock %1 is short by %2 on %3, which would be better",
                          m_problem.stocks[at(*m_batch->stock)].id, counted(stock, "cutting"),
                          dayRange(day, day))
                .text();
        return phrase("hands are short by %1 on %2, which would be better", counted(hands, "cutting"),
                      dayRange(day, day))
            .text();
    }

    static std::int64_t dearnessFor(const Batch& batch) {
        std::int64_t rate = batch.latePerDay;
        for (const StayRule& stay : batch.stays) rate = std::max(rate, stay.offIdeal);
        return rate > dearEnough ? 1 : mostDearness;
    }

    static Problem withForms(const Problem& problem, std::span<const Case> cases) {
        Problem wider = problem;
        for (const Case& one : cases) {
            const Batch& batch = problem.batches[at(one.batch)];
            Batch form = batch;
            form.value = std::numeric_limits<std::int64_t>::max() / 10'000; // beyond all that a plan costs
            form.pin.reset();
            form.previous.reset();
            wider.batches.push_back(form);
            const std::int64_t dearness = dearnessFor(batch);
            if (one.lack == Lack::Late) form.latePerDay *= dearness;
            for (StayRule& stay : form.stays)
                if (one.lack == Lack::OffIdeal) stay.offIdeal *= dearness;
            wider.batches.push_back(form);
            form.cuttings = 0;
            form.stock.reset();
            wider.batches.push_back(form);
        }
        return wider;
    }

    /// Of the cheapest way to place a form; leaves what is lost by it, at the true price, in m_newLoss.
    std::int64_t cost(const search::State& into, Wish form) {
        const std::int64_t cost = m_house.cost(into, m_first + form);
        if (cost != never) m_newLoss = loss(m_house.problem, *m_batch, m_house.plan, m_lack);
        return cost;
    }

    [[nodiscard]] const char* wish() const {
        if (m_lack == Lack::OffIdeal) return pattern("nearer to its ideal it would cost %1 more");
        return m_newLoss == 0 ? pattern("in time it would cost %1 more")
                              : pattern("sooner it would cost %1 more");
    }

    Rehearsal m_house;
    std::span<const Case> m_cases;
    const std::vector<Plan>& m_plans;
    const Problem& m_problem;
    // Of the case that is looked at.
    const Batch* m_batch = nullptr;
    Lack m_lack = Lack::Late;
    int m_first = 0; ///< form
    std::int64_t m_loss = 0;
    std::int64_t m_change = 0; ///< what any other place would cost for the change
    std::int64_t m_newLoss = 0;
};

/// What the batches of a plan lack, batch by batch; not all of it once `stopped`.
std::vector<Case> casesOf(const Problem& problem, const std::vector<Plan>& plans,
                          const search::Stopped& stopped) {
    std::vector<Case> cases;
    for (const Plan& plan : plans) {
        if (stopped()) break;
        if (plan.strike < 0) continue;
        for (const Lack lack : {Lack::Late, Lack::OffIdeal})
            if (const std::int64_t lost = loss(problem, problem.batches[at(plan.batch)], plan, lack);
                lost > 0)
                cases.push_back({plan.batch, lack, lost});
    }
    return cases;
}

std::string lackWords(const Problem& problem, const Plan& plan, const Case& one, const std::string& why) {
    const std::string lost = money(one.loss);
    if (one.lack == Lack::OffIdeal)
        return phrase("is off its ideal heat, which counts as %1: %2", lost, why).text();
    const std::int64_t days = plan.stands.back().to - *problem.batches[at(one.batch)].due;
    return phrase("ends %1 late, which counts as %2: %3", counted(days, "day"), lost, why).text();
}

} // namespace

std::vector<Compromise> compromises(const Problem& problem, const std::vector<Plan>& plans,
                                    const std::vector<int>& held, const std::function<bool()>& stopped) {
    std::vector<Compromise> found;
    const std::vector<Case> cases = casesOf(problem, plans, stopped);
    std::vector<Case> free; // of batches that are not pinned
    std::copy_if(cases.begin(), cases.end(), std::back_inserter(free),
                 [&](const Case& one) { return !problem.batches[at(one.batch)].pin; });
    std::optional<Retrials> retrials;
    std::size_t tried = 0;
    for (const Case& one : cases) {
        const bool pinned = problem.batches[at(one.batch)].pin.has_value();
        if (!pinned && tried % mostTogether == 0)
            retrials.emplace(problem,
                             std::span(free).subspan(tried, std::min(mostTogether, free.size() - tried)),
                             plans, held, stopped);
        if (stopped()) break; // not all may stand in it
        const std::string why = pinned ? pattern("it is pinned") : retrials->why(tried++ % mostTogether);
        std::string text = lackWords(problem, plans[at(one.batch)], one, why);
        if (stopped()) break;
        found.push_back({one.batch, std::move(text)});
    }
    return found;
}

} // namespace warmbench::planner
