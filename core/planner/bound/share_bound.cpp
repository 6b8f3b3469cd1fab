#include "core/planner/bound/share_bound.h"

#include "core/planner/bound/stay_choices.h"

#include <algorithm>
#include <limits>
#include <map>

namespace warmbench::planner {
namespace {

__extension__ using Wide = __int128;

/// Thousandths, rounded down: what `slots` slots of a zone of `kind` pay for its mat on the days of a stay.
std::int64_t matShare(const Problem& problem, const ZoneKind& kind, const StayChoice& choice,
                      std::int64_t slots) {
    if (choice.setPoint < 0) return 0;
    const Zone& zone = problem.zones[static_cast<std::size_t>(kind.zone)];
    const int days = std::max(0, std::min(choice.to, problem.days) - choice.from);
    const Wide price = Wide{10} * zone.setPoints[static_cast<std::size_t>(choice.setPoint)].costPerDay;
    return static_cast<std::int64_t>(std::min<Wide>(price * days * slots / kind.slots, highestCost));
}

/// Thousandths: cheapest chain of stays, INT64_MAX where there is none.
std::int64_t cheapestChain(const Problem& problem, const ZoneKinds& zones, int index) {
    constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max();
    const std::int64_t slots = slotsOf(problem.batches[static_cast<std::size_t>(index)]);
    std::map<int, std::int64_t> least;
    bool first = true;
    const auto stays = stayChoices(problem, zones, index);
    if (!stays) return 0;
    for (const auto& choices : *stays) {
        std::map<int, std::int64_t> next;
        for (const StayChoice& choice : choices) {
            std::int64_t cost = choice.cost;
            cost += matShare(problem, zones.kinds[static_cast<std::size_t>(choice.kind)], choice, slots);
            if (!first) {
                const auto before = least.find(choice.from);
                if (before == least.end()) continue;
                cost += before->second;
            }
            const auto [found, isNew] = next.emplace(choice.to, std::min(cost, 100 * highestCost));
            if (!isNew) found->second = std::min(found->second, cost);
        }
        least = std::move(next);
        first = false;
    }
    std::int64_t cheapest = never;
    for (const auto& [day, cost] : least) cheapest = std::min(cheapest, cost);
    return cheapest;
}

} // namespace

std::int64_t leastCost(const Problem& problem, const ZoneKinds& zones, int index) {
    const Batch& batch = problem.batches[static_cast<std::size_t>(index)];
    const std::int64_t chain = cheapestChain(problem, zones, index);
    if (!batch.pin) return std::min(chain, valueOf(problem, batch));
    return chain == std::numeric_limits<std::int64_t>::max() ? 0 : chain;
}

std::int64_t shareBound(const Problem& problem, const ZoneKinds& zones, const std::stop_token& stop) {
    Wide total = 0;
    for (int index = 0; index < static_cast<int>(problem.batches.size()); ++index) {
        if (stop.stop_requested()) break;
        total += leastCost(problem, zones, index);
    }
    return static_cast<std::int64_t>(std::min<Wide>(total, 100 * highestCost));
}

} // namespace warmbench::planner
