#include "core/planner/bound/plate_bound.h"

#include "core/planner/bound/share_bound.h"
#include "core/planner/bound/stay_choices.h"
#include "core/planner/packing/refill.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace warmbench::planner {
namespace {

__extension__ using Wide = __int128;

constexpr std::size_t mostCandidates = 64; ///< of one zone; more are not decided soon
constexpr long mostPlateSteps = 20'000;

/// The stay of a batch that it can have in one zone only.
struct Bound {
    int kind = 0;
    std::size_t stay = 0;
};

std::optional<Bound> boundTo(const StayChoices& stays, const ZoneKinds& zones) {
    for (std::size_t stay = 0; stay < stays.size(); ++stay) {
        if (stays[stay].empty()) continue;
        const int kind = stays[stay].front().kind;
        const auto there = [&](const StayChoice& choice) { return choice.kind == kind; };
        if (zones.kinds[static_cast<std::size_t>(kind)].count == 1 &&
            std::all_of(stays[stay].begin(), stays[stay].end(), there))
            return Bound{kind, stay};
    }
    return std::nullopt;
}

/// The batches of one zone, as what may be placed there. Times that hold another of no more worth are left
/// out.
class Plate {
public:
    /// With what is lost, thousandths, where it is not placed.
    void add(const Batch& batch, std::int64_t lost, const std::vector<StayChoice>& choices) {
        std::map<std::pair<int, int>, std::int64_t> worth;
        for (const StayChoice& choice : choices) {
            std::int64_t& most = worth[{choice.from, choice.to}];
            most = std::max(most, lost - choice.cost);
        }
        for (const auto& [time, most] : worth) {
            const auto better = [&, mine = time, value = most](const auto& other) {
                return other.first != mine && other.first.first >= mine.first &&
                       other.first.second <= mine.second && other.second >= value;
            };
            if (most <= 0 || std::any_of(worth.begin(), worth.end(), better)) continue;
            m_candidates.push_back(
                {time.first, time.second, batch.containers, batch.footprint, batch.turn, most, m_batches});
        }
        m_value += lost;
        ++m_batches;
    }

    /// What is lost at least; nothing where that is not decided soon.
    [[nodiscard]] std::optional<Wide> lost(const Zone& zone, int days, const std::stop_token& stop) const {
        if (m_candidates.size() > mostCandidates) return std::nullopt;
        packing::RefillLimits limits;
        limits.steps = mostPlateSteps;
        const packing::Refill best = packing::refill({zone, days}, m_candidates, limits, stop);
        if (!best.proven) return std::nullopt;
        return m_value - best.value;
    }

private:
    std::vector<packing::Candidate> m_candidates;
    Wide m_value = 0; ///< thousandths, of all
    int m_batches = 0;
};

} // namespace

std::int64_t plateBound(const Problem& problem, const ZoneKinds& zones, const std::stop_token& stop) {
    if (std::none_of(zones.kinds.begin(), zones.kinds.end(),
                     [](const ZoneKind& kind) { return kind.count == 1; }))
        return 0;
    std::map<int, Plate> plates;
    Wide total = 0;
    for (int index = 0; index < static_cast<int>(problem.batches.size()); ++index) {
        if (stop.stop_requested()) return 0;
        const Batch& batch = problem.batches[static_cast<std::size_t>(index)];
        const auto stays = stayChoices(problem, zones, index);
        const auto bound = stays && !batch.pin ? boundTo(*stays, zones) : std::nullopt;
        if (bound)
            plates[bound->kind].add(batch, valueOf(problem, batch), (*stays)[bound->stay]);
        else
            total += leastCost(problem, zones, index);
    }
    if (plates.empty()) return 0;
    for (const auto& [kind, plate] : plates) {
        const Zone& zone =
            problem.zones[static_cast<std::size_t>(zones.kinds[static_cast<std::size_t>(kind)].zone)];
        const auto lost = plate.lost(zone, problem.days, stop);
        if (!lost) return 0;
        total += *lost;
    }
    return static_cast<std::int64_t>(std::min<Wide>(total, 100 * highestCost));
}

} // namespace warmbench::planner
