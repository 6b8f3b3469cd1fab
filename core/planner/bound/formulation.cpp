#include "core/planner/bound/formulation.h"

#include "core/planner/index.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>
#include <utility>

namespace warmbench::planner {
namespace {

/// Slots are scaled down where a zone has more, so that a day's packing stays quick.
constexpr int mostSlots = 1024;

constexpr std::int64_t mostCuttings = 2048; ///< the same for a day's labour

/// Stocks of more batches are relaxed, for the choice among them grows with their number.
constexpr std::size_t mostInStockGroup = 10;

/// Amounts above this are taken as this: lower costs keep the bound valid, and sums stay exact.
constexpr double highestAmount = 1e12;

double units(std::int64_t thousandths) {
    return std::min(static_cast<double>(thousandths) * Formulation::unitsPerThousandth, highestAmount);
}

std::vector<ZoneShelf> shelvesOf(const Problem& problem, const ZoneKinds& zones) {
    std::vector<ZoneShelf> shelves;
    for (const ZoneKind& kind : zones.kinds) {
        const Zone& zone = problem.zones[static_cast<std::size_t>(kind.zone)];
        ZoneShelf shelf;
        shelf.count = kind.count;
        // Whole slots of a coarser measure, rounded down on both sides: what fitted still fits.
        shelf.slotsScale = (kind.slots + mostSlots - 1) / mostSlots;
        shelf.slots = kind.slots / std::max(1, shelf.slotsScale);
        shelf.dayCost.push_back(0);
        for (const SetPoint& point : zone.setPoints) shelf.dayCost.push_back(units(10 * point.costPerDay));
        shelf.lanes.resize(shelf.dayCost.size());
        shelves.push_back(std::move(shelf));
    }
    return shelves;
}

/// The slots that `held` take in its zone in one state, nothing where they cannot stand in it.
std::optional<HeldState> heldState(const Problem& problem, const std::vector<int>& held, int setPoint) {
    HeldState state{setPoint, {}};
    for (const int index : held) {
        const Held& item = problem.held[static_cast<std::size_t>(index)];
        const Zone& zone = problem.zones[static_cast<std::size_t>(item.zone)];
        const auto length = stayLength(item.duration, zone, setPoint, 0);
        if (!length) return std::nullopt;
        int slots = 0;
        for (const SlotRect& rect : item.slots) slots += rect.height * rect.width;
        for (int day = 0; day < *length; ++day) {
            const std::int64_t warmth = rootZone(zone, setPoint, day);
            if (warmth < item.low || warmth > item.high) return std::nullopt;
            if (day >= problem.days) continue;
            if (static_cast<std::size_t>(day) >= state.load.size()) state.load.push_back(0);
            state.load[static_cast<std::size_t>(day)] += slots;
        }
    }
    return state;
}

void addHeld(const Problem& problem, const ZoneKinds& zones, std::vector<ZoneShelf>& shelves) {
    std::map<int, std::vector<int>> byZone;
    for (std::size_t i = 0; i < problem.held.size(); ++i)
        byZone[problem.held[i].zone].push_back(static_cast<int>(i));
    for (const auto& [index, held] : byZone) {
        HeldZone zone;
        zone.kind = zones.ofZone[static_cast<std::size_t>(index)];
        ZoneShelf& shelf = shelves[static_cast<std::size_t>(zone.kind)];
        for (int setPoint = -1; setPoint + 1 < static_cast<int>(shelf.dayCost.size()); ++setPoint) {
            auto state = heldState(problem, held, setPoint);
            if (!state) continue;
            for (int& load : state->load) load /= std::max(1, shelf.slotsScale);
            zone.states.push_back(std::move(*state));
        }
        if (zone.states.empty()) continue; // no plan at all: whatever is left out, the bound holds
        --shelf.count;
        shelf.held.push_back(std::move(zone));
    }
}

/// From so many batches it is told how many links all of them will have.
constexpr int enoughToExpect = 100;

/// Nodes of one batch's network: where a stay may begin, and where it may begin in the zone of the one
/// before.
class Nodes {
public:
    explicit Nodes(int first) : m_first(first) {}
    int at(std::size_t stay, int day, int kind = -1) {
        return m_known.try_emplace({stay, day, kind}, m_first + static_cast<int>(m_known.size()) + 2)
            .first->second;
    }
    [[nodiscard]] int find(std::size_t stay, int day, int kind) const {
        const auto found = m_known.find({stay, day, kind});
        return found == m_known.end() ? -1 : found->second;
    }
    [[nodiscard]] int count() const { return static_cast<int>(m_known.size()) + 2; }

private:
    int m_first;
    std::map<std::tuple<std::size_t, int, int>, int> m_known;
};

class Builder {
public:
    Builder(const Problem& problem, const ZoneKinds& zones) : m_problem(problem) {
        m_result.days = problem.days;
        m_result.shelves = shelvesOf(problem, zones);
        addHeld(problem, zones, m_result.shelves);
    }

    /// Taken by what is built, and by an ascent over it.
    [[nodiscard]] std::size_t bytes() const {
        constexpr std::size_t ofLink = 2 * sizeof(Link) + 32; // the list may be half empty
        constexpr std::size_t ofPrice = 6 * sizeof(double);   // best, trial, excess, mean, sums, items
        return m_result.links.size() * ofLink + m_result.prices * ofPrice;
    }

    /// Makes room for so many times what is built by now, and a little more: to move many links while a
    /// list grows takes longer than a stop may.
    void makeRoom(double times) {
        constexpr double more = 1.2;
        m_result.links.reserve(
            static_cast<std::size_t>(more * times * static_cast<double>(m_result.links.size())));
    }

    void addBatch(int index, const StayChoices& stays) {
        const Batch& batch = m_problem.batches[static_cast<std::size_t>(index)];
        BatchChains chains;
        chains.value = units(valueOf(m_problem, batch));
        chains.mayStayOut = !batch.pin;
        chains.cuttings = std::min(static_cast<double>(batch.cuttings), highestAmount);
        const auto laneOf = addLanes(index, stays);
        chains.firstNode = m_result.nodes;
        Nodes nodes(chains.firstNode);
        for (std::size_t k = 1; k < stays.size(); ++k)
            for (const StayChoice& choice : stays[k])
                nodes.at(k, choice.from, choice.kept ? choice.kind : -1);
        for (std::size_t k = 0; k < stays.size(); ++k) {
            chains.stays.push_back(m_result.links.size());
            const bool last = k + 1 == stays.size();
            for (const StayChoice& choice : stays[k]) {
                Link link;
                link.choice = choice;
                link.cost = units(choice.cost);
                link.lane = laneOf.at({choice.kind, choice.setPoint});
                const Lane& lane = m_result.lanes[static_cast<std::size_t>(link.lane)];
                const auto sum = [&](int day) {
                    const int within = std::clamp(day, lane.fromDay, lane.toDay) - lane.fromDay;
                    return lane.firstPrice + static_cast<std::size_t>(link.lane + within);
                };
                link.lowSum = sum(choice.from);
                link.highSum = sum(choice.to);
                if (k == 0) link.strikeDay = choice.from;
                link.entry =
                    k == 0 ? chains.firstNode : nodes.at(k, choice.from, choice.kept ? choice.kind : -1);
                link.exit = last ? chains.firstNode + 1 : nodes.at(k + 1, choice.to);
                if (!last) link.keptExit = nodes.find(k + 1, choice.to, choice.kind);
                m_result.links.push_back(link);
            }
        }
        chains.stays.push_back(m_result.links.size());
        chains.nodes = nodes.count();
        m_result.nodes += chains.nodes;
        m_result.batches.push_back(std::move(chains));
    }

    /// A batch of which nothing is known: it costs nothing.
    void addUncounted() {
        BatchChains chains;
        chains.stays.assign(2, m_result.links.size());
        chains.firstNode = m_result.nodes;
        chains.nodes = 2;
        m_result.nodes += chains.nodes;
        m_result.batches.push_back(std::move(chains));
    }

    /// Without shelves, which says so. The rest is left for the caller to give back when there is time.
    Formulation unfinished() {
        m_result.shelves.clear();
        return std::move(m_result);
    }

    Formulation finish(const std::stop_token& stop) {
        addDays();
        addLabour(stop);
        for (std::size_t i = 0; i < m_problem.stocks.size() && !stop.stop_requested(); ++i)
            addStock(static_cast<int>(i));
        return stop.stop_requested() ? unfinished() : std::move(m_result);
    }

private:
    std::map<std::pair<int, int>, int> addLanes(int index, const StayChoices& stays) {
        const Batch& batch = m_problem.batches[static_cast<std::size_t>(index)];
        std::map<std::pair<int, int>, int> laneOf;
        const auto first = m_result.lanes.size();
        for (const auto& choices : stays)
            for (const StayChoice& choice : choices) {
                const auto [found, isNew] = laneOf.emplace(std::pair(choice.kind, choice.setPoint),
                                                           static_cast<int>(m_result.lanes.size()));
                if (isNew) {
                    ZoneShelf& shelf = m_result.shelves[static_cast<std::size_t>(choice.kind)];
                    const auto slots = static_cast<int>(slotsOf(batch) / std::max(1, shelf.slotsScale));
                    m_result.lanes.push_back(
                        {index, choice.kind, choice.setPoint, slots, m_result.days, 0, 0});
                    shelf.lanes[at(choice.setPoint + 1)].push_back(found->second);
                }
                Lane& lane = m_result.lanes[static_cast<std::size_t>(found->second)];
                lane.fromDay = std::min(lane.fromDay, choice.from);
                lane.toDay = std::max(lane.toDay, std::min(choice.to, m_result.days));
            }
        for (auto i = first; i < m_result.lanes.size(); ++i) {
            Lane& lane = m_result.lanes[i];
            lane.toDay = std::max(lane.toDay, lane.fromDay);
            lane.firstPrice = m_result.prices;
            m_result.prices += static_cast<std::size_t>(lane.toDay - lane.fromDay);
        }
        return laneOf;
    }

    /// Batches that pass `counts` and may be struck on days from `fromDay` to before `toDay`, if together
    /// they have more cuttings than `limit`; else none.
    template <class Counts>
    std::vector<int> scarceFor(double limit, int fromDay, int toDay, const Counts& counts) const {
        std::vector<int> members;
        double most = 0;
        for (std::size_t i = 0; i < m_result.batches.size(); ++i) {
            const BatchChains& chains = m_result.batches[i];
            if (!counts(m_problem.batches[i])) continue;
            bool strikes = false;
            for (std::size_t k = chains.stays[0]; k < chains.stays[1] && !strikes; ++k)
                strikes = m_result.links[k].strikeDay >= fromDay && m_result.links[k].strikeDay < toDay;
            if (!strikes) continue;
            members.push_back(static_cast<int>(i));
            most += chains.cuttings;
        }
        if (most <= limit || limit >= highestAmount) members.clear();
        return members;
    }

    void addRow(int stock, double limit, int fromDay, int toDay, const std::vector<int>& members) {
        if (members.empty()) return;
        for (const int batch : members)
            m_result.batches[static_cast<std::size_t>(batch)].strikeRows.push_back(
                static_cast<int>(m_result.strikeRows.size()));
        m_result.strikeRows.push_back({stock, limit, fromDay, toDay});
    }

    void addDays() {
        const std::vector<char> none(at(m_result.days), 0);
        std::vector<std::vector<char>> used(m_result.shelves.size(), none);
        for (const Lane& lane : m_result.lanes)
            std::fill(used[at(lane.kind)].begin() + lane.fromDay, used[at(lane.kind)].begin() + lane.toDay,
                      1);
        for (std::size_t i = 0; i < used.size(); ++i) {
            for (const HeldZone& zone : m_result.shelves[i].held)
                for (const HeldState& state : zone.states) std::fill_n(used[i].begin(), state.load.size(), 1);
            for (int day = 0; day < m_result.days; ++day)
                if (used[i][at(day)] != 0) m_result.shelves[i].days.push_back(day);
        }
    }

    struct Strike {
        int batch = 0;
        std::size_t link = 0;
    };

    void addLabour(const std::stop_token& stop) {
        if (m_problem.strikeCapacity.empty()) return;
        std::vector<std::vector<Strike>> strikes(at(m_result.days)); // by day, in order of the batches
        for (std::size_t i = 0; i < m_result.batches.size() && !stop.stop_requested(); ++i)
            for (auto k = m_result.batches[i].stays[0]; k < m_result.batches[i].stays[1]; ++k)
                strikes[at(m_result.links[k].strikeDay)].push_back({static_cast<int>(i), k});
        for (int day = 0; day < m_result.days && !stop.stop_requested(); ++day)
            if (isScarce(strikes[at(day)], strikeCapacityOn(m_problem, day)))
                addLabourDay(day, strikeCapacityOn(m_problem, day), strikes[at(day)]);
    }

    /// Whether all batches together have more cuttings than the hands of the day can strike.
    [[nodiscard]] bool isScarce(const std::vector<Strike>& strikes, std::int64_t capacity) const {
        double most = 0;
        int before = -1;
        for (const Strike& strike : strikes)
            if (std::exchange(before, strike.batch) != strike.batch)
                most += m_result.batches[at(strike.batch)].cuttings;
        return most > static_cast<double>(capacity) && static_cast<double>(capacity) < highestAmount;
    }

    void addLabourDay(int day, std::int64_t capacity, const std::vector<Strike>& strikes) {
        // Cuttings in their common divisor; beyond that rounded down on both sides: what sufficed still does.
        std::int64_t scale = 0;
        for (const Strike& strike : strikes)
            scale = std::gcd(scale, m_problem.batches[at(strike.batch)].cuttings);
        scale = std::max<std::int64_t>(1, scale);
        if (capacity / scale > mostCuttings) scale *= (capacity / scale + mostCuttings - 1) / mostCuttings;
        LabourDay labour;
        labour.day = day;
        labour.measure = scale;
        labour.cuttings = static_cast<int>(capacity / scale);
        int before = -1;
        for (const Strike& strike : strikes) {
            if (std::exchange(before, strike.batch) != strike.batch) {
                const std::int64_t cuttings = m_problem.batches[at(strike.batch)].cuttings / scale;
                labour.strikes.push_back({m_result.prices, static_cast<int>(cuttings)});
                ++m_result.prices;
            }
            m_result.links[strike.link].labourPrice = static_cast<int>(m_result.prices) - 1;
        }
        m_result.labour.push_back(std::move(labour));
    }

    /// Limits for the last day before each rise of the total, and for the last day: the other days follow.
    void addStock(int index) {
        const Stock& stock = m_problem.stocks[static_cast<std::size_t>(index)];
        const auto mine = [&](const Batch& batch) { return batch.stock == index; };
        StockGroup group;
        group.stock = index;
        std::set<int> batches;
        for (std::size_t i = 1; i <= stock.steps.size(); ++i) {
            const int next = i < stock.steps.size() ? stock.steps[i].day : m_problem.days;
            const int end = std::min(next, m_problem.days);
            if (end <= 0 || stock.steps[i - 1].day >= m_problem.days) continue;
            const auto limit = static_cast<double>(stock.steps[i - 1].total);
            const std::vector<int> members = scarceFor(limit, 0, end, mine);
            if (members.empty()) continue;
            group.ends.push_back(end);
            group.limits.push_back(limit);
            batches.insert(members.begin(), members.end());
        }
        group.batches.assign(batches.begin(), batches.end());
        if (group.batches.size() > mostInStockGroup) {
            for (std::size_t i = 0; i < group.ends.size(); ++i)
                addRow(index, group.limits[i], 0, group.ends[i],
                       scarceFor(group.limits[i], 0, group.ends[i], mine));
        } else if (!group.batches.empty()) {
            addGroup(std::move(group));
        }
    }

    void addGroup(StockGroup group) {
        for (const int batch : group.batches) {
            BatchChains& chains = m_result.batches[static_cast<std::size_t>(batch)];
            chains.stockGroup = static_cast<int>(m_result.stockGroups.size());
            for (std::size_t i = chains.stays[0]; i < chains.stays[1]; ++i)
                m_result.links[i].period = group.periodOf(m_result.links[i].strikeDay);
        }
        m_result.stockGroups.push_back(std::move(group));
    }

    const Problem& m_problem;
    Formulation m_result;
};

} // namespace

Formulation formulate(const Problem& problem, const ZoneKinds& zones, const std::stop_token& stop,
                      std::size_t memory) {
    Builder builder(problem, zones);
    for (int index = 0; index < static_cast<int>(problem.batches.size()); ++index) {
        if (stop.stop_requested() || builder.bytes() > memory) return builder.unfinished();
        if (index == enoughToExpect) builder.makeRoom(static_cast<double>(problem.batches.size()) / index);
        if (const auto stays = stayChoices(problem, zones, index))
            builder.addBatch(index, *stays);
        else
            builder.addUncounted();
    }
    return builder.finish(stop);
}

} // namespace warmbench::planner
