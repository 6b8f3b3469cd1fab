#include "core/planner/reasons/reasons.h"

#include "core/planner/index.h"
#include "core/planner/reasons/lacking_room.h"
#include "core/planner/reasons/rehearsal.h"
#include "core/planner/reasons/ruled_out.h"
#include "core/planner/reasons/words.h"
#include "core/quantity/phrase.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>

namespace warmbench::planner {

namespace {

using search::never;
using search::Plan;

/// Every zone is looked at for every batch: in a large house so many of both together, those of the dearest.
constexpr std::size_t mostLooks = 100'000;
/// How far other strike days are tried, in days.
constexpr int shift = 21;

/// Forms of one batch with a rule lifted, in the order in which they are added to the problem.
enum Form : int { AtAnyCost, WithHandsAndStock, Earlier, Later, forms };

/// The rule by name alone, where nothing more was computed.
std::string namedOnly(const Batch& batch) {
    const StayRule& rule = batch.stays.front();
    return phrase("no free %1 slots at %2 for %3 struck on %4 were found for less than its value of %5",
                  coverNamesOf(rule), warmth(rule.low, rule.high), counted(batch.containers, "container"),
                  dayRange(batch.strikeFirst, batch.strikeLast), money(batch.value * 10))
        .text();
}

const Batch& batchOf(const Problem& problem, const Answer& answer, std::size_t unplaced) {
    return problem.batches[at(answer.unplaced[unplaced].batch)];
}

/// Indices of what the answer leaves out, as many as there is time for, the dearest first.
std::vector<std::size_t> dearestFirst(const Problem& problem, const Answer& answer) {
    std::vector<std::size_t> order(answer.unplaced.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return batchOf(problem, answer, a).value > batchOf(problem, answer, b).value;
    });
    order.resize(std::min(
        order.size(), std::max<std::size_t>(1, mostLooks / std::max<std::size_t>(1, problem.zones.size()))));
    return order;
}

Problem withForms(const Problem& problem, const Answer& answer, const std::vector<std::size_t>& unplaced) {
    Problem wider = problem;
    for (const std::size_t index : unplaced) {
        // Names and values of their own are of no use to a form; it is never pinned.
        Batch form = batchOf(problem, answer, index);
        form.value = std::numeric_limits<std::int32_t>::max();
        form.pin.reset();
        form.previous.reset();
        wider.batches.push_back(form);
        Batch supplied = form;
        supplied.cuttings = 0;
        supplied.stock.reset();
        wider.batches.push_back(supplied);
        Batch earlier = form;
        earlier.strikeFirst = std::max(0, form.strikeFirst - shift);
        earlier.strikeLast = form.strikeFirst - 1;
        wider.batches.push_back(earlier);
        Batch later = form;
        later.strikeFirst = form.strikeLast + 1;
        later.strikeLast = form.strikeLast + shift;
        wider.batches.push_back(later);
    }
    return wider;
}

/// Forms of what was left out, tried in the finished plan.
class Trial {
public:
    Trial(const Problem& problem, const std::vector<Plan>& plans, const std::vector<int>& held,
          const search::Stopped& stopped, const Answer& answer, const std::vector<std::size_t>& unplaced)
        : m_house(withForms(problem, answer, unplaced), plans, held, stopped), m_stopped(stopped),
          m_batches(static_cast<int>(problem.batches.size())) {}

    /// The reason for the `index`-th of the batches that it was made with.
    std::string reason(int index, const Batch& batch) {
        m_first = m_batches + index * forms;
        m_dearer = 0;
        if (std::string rule = ruledOut(m_house.problem, batch); !rule.empty()) return rule;
        const std::int64_t alone = cost(m_house.empty, AtAnyCost);
        if (alone == never) return impossibleAlone(batch);
        const std::int64_t value = batch.value * 10;
        const std::int64_t now = cost(m_house.finished, AtAnyCost);
        if (alone > value || now != never) m_dearer = now != never ? now : alone;
        if (alone > value)
            return phrase("even alone in the house it would cost %1, more than its value of %2", money(alone),
                          money(value))
                .text();
        if (now != never)
            return phrase("placing it beside the others costs %1, and its value is %2", money(now),
                          money(value))
                .text();
        if (cost(m_house.finished, WithHandsAndStock) != never) return shortSupply(batch);
        const std::string space = shortSpace(batch);
        const std::string supply = shortOnAllDays(batch);
        return supply.empty() ? space : phrase("%1; besides, %2", space, supply).text();
    }

    /// Of the last reason, what it would cost where its value was too little; else 0.
    [[nodiscard]] std::int64_t dearerThanValue() const { return m_dearer; }

    /// The nearest strike days outside its own on which the batch would be worth its place; empty without
    /// any.
    std::string wayOut(int index, const Batch& batch) {
        m_first = m_batches + index * forms;
        const std::int64_t value = batch.value * 10;
        std::vector<std::string> earlier; // how many days, on which, at what cost
        std::vector<std::string> later;
        const auto found = [this](int day, int days) {
            return std::vector{counted(days, "day"), dayRange(day, day), money(m_cost)};
        };
        for (int days = 1; days <= shift && days <= batch.strikeFirst && earlier.empty(); ++days)
            if (isWorthOn(Earlier, batch.strikeFirst - days, value))
                earlier = found(batch.strikeFirst - days, days);
        for (int days = 1; days <= shift && batch.strikeLast + days < m_house.model.days && later.empty();
             ++days)
            if (isWorthOn(Later, batch.strikeLast + days, value))
                later = found(batch.strikeLast + days, days);
        if (earlier.empty() && later.empty()) return {};
        const Phrase way =
            later.empty()
                ? phrase("struck %1 earlier, on %2, it would cost %3", earlier[0], earlier[1], earlier[2])
            : earlier.empty()
                ? phrase("struck %1 later, on %2, it would cost %3", later[0], later[1], later[2])
                : phrase("struck %1 earlier, on %2, it would cost %3, or %4 later, on %5, it would cost %6",
                         earlier[0], earlier[1], earlier[2], later[0], later[1], later[2]);
        return "; " + way.text();
    }

    /// Stock or hands that a batch lacks beside the others on the day on which it lacks least; empty where
    /// there is a day that has both.
    [[nodiscard]] std::string shortOnAllDays(const Batch& batch) const {
        return shortOnAllDays(m_house.finished, batch);
    }

private:
    [[nodiscard]] std::string shortOnAllDays(const search::State& house, const Batch& batch) const {
        std::int64_t least = std::numeric_limits<std::int64_t>::max();
        std::string text;
        for (int day = batch.strikeFirst; day <= std::min(batch.strikeLast, m_house.model.days - 1); ++day) {
            const auto [hands, stock] = lackingSupply(house, batch, day);
            const std::int64_t lacking = std::max(hands, stock);
            if (lacking <= 0) return {};
            if (lacking >= least) continue;
            least = lacking;
            text = (stock > 0 ? phrase("stock %1 is short by %2 on %3, when it lacks least",
                                       m_house.problem.stocks[at(*batch.stock)].id, counted(stock, "cutting"),
                                       dayRange(day, day))
                              : phrase("hands are short by %1 on %2, when they lack least",
                                       counted(hands, "cutting"), dayRange(day, day)))
                       .text();
        }
        return text;
    }

    /// Of the cheapest way to place a form.
    std::int64_t cost(const search::State& into, int form) { return m_house.cost(into, m_first + form); }

    /// Why it has no place even where nothing is planned.
    std::string impossibleAlone(const Batch& batch) {
        if (std::string supply = shortOnAllDays(m_house.empty, batch); !supply.empty()) return supply;
        const auto lacking = fewestLacking(m_house.empty, m_first + AtAnyCost, m_stopped);
        if (!lacking || lacking->empty())
            return phrase("when it is struck on %1, no zones offer one after the other what it needs",
                          dayRange(batch.strikeFirst, batch.strikeLast))
                .text();
        return phrase("beside what stands in the house already there is no room for its %1: it would take %2",
                      counted(batch.containers, "container"), slotsOf(*lacking))
            .text();
    }

    /// Hands or stock that the day of m_house.plan lacks.
    std::string shortSupply(const Batch& batch) {
        const int day = m_house.plan.strike;
        const auto [hands, stock] = lackingSupply(m_house.finished, batch, day);
        const std::string& id = batch.stock ? m_house.problem.stocks[at(*batch.stock)].id : batch.id;
        if (stock <= 0)
            return phrase("hands are short by %1 on %2, the best day that has slots for it",
                          counted(hands, "cutting"), dayRange(day, day))
                .text();
        if (hands <= 0)
            return phrase("stock %1 is short by %2 on %3, the best day that has slots for it", id,
                          counted(stock, "cutting"), dayRange(day, day))
                .text();
        return phrase("stock %1 is short by %2 and hands are short by %3 on %4, the best day that has slots "
                      "for it",
                      id, counted(stock, "cutting"), counted(hands, "cutting"), dayRange(day, day))
            .text();
    }

    /// How many of the containers find slots, and what the others lack.
    std::string shortSpace(const Batch& batch) {
        const int each = batch.footprint.height * batch.footprint.width;
        int fit = 0;
        for (int low = 1, high = batch.containers - 1; low <= high;) {
            const int middle = (low + high) / 2;
            setContainers(middle, each);
            if (cost(m_house.finished, WithHandsAndStock) != never) {
                fit = middle;
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        setContainers(batch.containers, each);
        const std::string containers = counted(batch.containers, "container");
        const auto lacking = fewestLacking(m_house.finished, m_first + WithHandsAndStock, m_stopped);
        if (lacking && !lacking->empty())
            return (fit == 0 ? phrase("there is no room for its %1: it would take %2", containers,
                                      slotsOf(*lacking))
                             : phrase("there is room for only %1 of its %2: it would take %3", fit,
                                      containers, slotsOf(*lacking)))
                .text();
        if (lacking && fit == 0)
            return phrase("there are slots enough for its %1, but not side by side", containers).text();
        if (lacking)
            return phrase("there is room for only %1 of its %2: there are slots enough, but not side by side",
                          fit, containers)
                .text();
        const StayRule& rule = batch.stays.front();
        return phrase("every %1 zone that could stand at %2 stands at another set-point when it is struck on "
                      "%3, "
                      "or so does what it needs afterwards",
                      coverNamesOf(rule), warmth(rule.low, rule.high),
                      dayRange(batch.strikeFirst, batch.strikeLast))
            .text();
    }

    [[nodiscard]] std::string slotsOf(const std::vector<LackingRoom>& lacking) const {
        std::string slots;
        for (const LackingRoom& one : lacking) {
            const Zone& zone = m_house.problem.zones[at(one.zone)];
            const std::string more = phrase(one.slots == 1 ? pattern("%1 more %2 slot in %3 on %4")
                                                           : pattern("%1 more %2 slots in %3 on %4"),
                                            one.slots, coverNames[at(static_cast<int>(zone.cover))], zone.id,
                                            dayRange(one.from, one.to - 1))
                                         .text();
            slots = slots.empty() ? more : phrase("%1, and for a later stay %2", slots, more).text();
        }
        return slots;
    }

    void setContainers(int containers, int each) {
        m_house.problem.batches[at(m_first + WithHandsAndStock)].containers = containers;
        m_house.model.setSlots(m_first + WithHandsAndStock, containers * each);
    }

    bool isWorthOn(int form, int day, std::int64_t value) {
        search::BatchModel& batch = m_house.model.batches[at(m_first + form)];
        batch.strikeFirst = batch.strikeLast = day;
        m_cost = cost(m_house.finished, form);
        return m_cost <= value;
    }

    Rehearsal m_house;
    const search::Stopped& m_stopped;
    int m_batches; ///< of the problem; forms come after them
    int m_first = 0;
    std::int64_t m_cost = 0;
    std::int64_t m_dearer = 0;
};

} // namespace

void giveReasons(const Problem& problem, const std::vector<Plan>& plans, const std::vector<int>& held,
                 const std::function<bool()>& stopped, Answer& answer) {
    const std::vector<std::size_t> dearest = dearestFirst(problem, answer);
    std::optional<Trial> trial;
    if (!dearest.empty() && !stopped()) trial.emplace(problem, plans, held, stopped, answer, dearest);
    const bool stands = trial && !stopped(); // else it may be that not all stands there
    const auto write = [&](std::size_t unplaced, std::string reason) {
        if (!stopped()) answer.unplaced[unplaced].reason = std::move(reason);
    };
    // The rules first, for all; then the ways out, which take longer.
    for (std::size_t i = 0; i < dearest.size() && !stopped(); ++i) {
        write(dearest[i], trial->reason(static_cast<int>(i), batchOf(problem, answer, dearest[i])));
        if (!stopped()) answer.unplaced[dearest[i]].dearerThanValue = trial->dearerThanValue();
    }
    for (std::size_t i = 0; i < answer.unplaced.size() && !stopped(); ++i)
        if (answer.unplaced[i].reason.empty()) write(i, ruledOut(problem, batchOf(problem, answer, i)));
    // What there was no time for: whether it could be struck at all is soon seen.
    for (UnplacedBatch& unplaced : answer.unplaced) {
        const Batch& batch = problem.batches[at(unplaced.batch)];
        if (unplaced.reason.empty() && stands) unplaced.reason = trial->shortOnAllDays(batch);
        if (unplaced.reason.empty()) unplaced.reason = namedOnly(batch);
    }
    for (std::size_t i = 0; i < dearest.size() && !stopped(); ++i)
        write(dearest[i], answer.unplaced[dearest[i]].reason +
                              trial->wayOut(static_cast<int>(i), batchOf(problem, answer, dearest[i])));
}

} // namespace warmbench::planner
