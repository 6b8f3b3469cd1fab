#include "core/planner/packing/refill.h"

#include "core/planner/packing/exact.h"
#include "core/planner/packing/placement.h"
#include "core/planner/packing/refill_greedy.h"
#include "core/planner/packing/repack.h"
#include "core/planner/packing/segments.h"
#include "core/planner/packing/value_bound.h"

#include <algorithm>

namespace warmbench::planner::packing {

namespace {

constexpr long greedyRounds = 100;
constexpr long packRounds = 12; ///< of repacking, when one more container is not placed beside the others

bool alike(const Candidate& a, const Candidate& b) {
    return a.choice < 0 && b.choice < 0 && a.from == b.from && a.to == b.to && a.containers == b.containers &&
           a.footprint == b.footprint && (a.turn == b.turn || a.footprint.height == a.footprint.width) &&
           a.value == b.value;
}

std::vector<Group> grouped(std::span<const Candidate> candidates) {
    std::vector<Group> groups;
    for (std::size_t index = 0; index < candidates.size(); ++index) {
        const Candidate& one = candidates[index];
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const Group& group) {
            const Candidate& first = group.options.front();
            return alike(one, first) || (one.choice >= 0 && one.choice == first.choice);
        });
        if (same == groups.end()) {
            groups.push_back({{one}, {index}, 1});
            continue;
        }
        same->members.push_back(index);
        if (one.choice < 0)
            ++same->count;
        else
            same->options.push_back(one);
    }
    const auto density = [](const Group& group) {
        double best = 0;
        for (const Candidate& one : group.options)
            best = std::max(best,
                            static_cast<double>(one.value) / (1.0 * one.containers * one.footprint.height *
                                                              one.footprint.width * (one.to - one.from + 1)));
        return best;
    };
    std::stable_sort(groups.begin(), groups.end(),
                     [&](const Group& a, const Group& b) { return density(a) > density(b); });
    return groups;
}

/// Depth-first over the groups: one more of a group, or on to the next. Every choice is packed as it is made,
/// so that what cannot stand together is left at once.
class Tree {
public:
    Tree(const Occupancy& zone, std::span<const Candidate> candidates, const RefillLimits& limits,
         const std::stop_token& stop)
        : m_zone(zone), m_candidates(candidates), m_groups(grouped(candidates)), m_bound(zone, m_groups),
          m_limit(limits.steps), m_exactSteps(limits.exactSteps), m_seed(limits.seed), m_stop(stop),
          m_depths(candidates.size() + 1) {}

    Refill run(Refill start, std::int64_t atLeast) {
        m_best = std::move(start);
        m_floor = std::max(m_best.value, atLeast);
        m_depths[0].taken = m_zone;
        m_proven = true;
        visit(0, 0, 0, 0);
        m_best.proven = m_proven;
        m_best.steps = m_steps;
        return m_best;
    }

private:
    /// What stands after some choices: candidates and, in the same order, their slots.
    struct Depth {
        Occupancy taken;
        std::vector<std::size_t> chosen;
        std::vector<std::vector<SlotRect>> slots;
    };

    void visit(std::size_t group, int used, std::size_t depth,
               std::int64_t value) { // NOLINT(misc-no-recursion)
        if (value > m_floor) keep(m_depths[depth], value);
        if (group == m_groups.size() || m_ended) return;
        if (value + m_bound.most(group, used, m_depths[depth].taken) <= m_floor) return;
        if (++m_steps > m_limit || m_stop.stop_requested()) {
            m_proven = false;
            m_ended = true;
            return;
        }
        const Group& at = m_groups[group];
        if (used < at.count)
            for (std::size_t option = 0; option < at.options.size(); ++option) {
                const std::size_t member = at.options.size() == 1 ? static_cast<std::size_t>(used) : option;
                if (add(at.members[member], depth))
                    visit(group, used + 1, depth + 1, value + at.options[option].value);
            }
        visit(group + 1, 0, depth, value);
    }

    void keep(const Depth& at, std::int64_t value) {
        m_floor = value;
        m_best.value = value;
        for (auto& slots : m_best.slots) slots.clear();
        for (std::size_t index = 0; index < at.chosen.size(); ++index)
            m_best.slots[at.chosen[index]] = at.slots[index];
    }

    /// Makes the next depth of this one with one more candidate; false when they cannot stand together, or
    /// when it is not found out.
    bool add(std::size_t candidate, std::size_t depth) {
        const Depth& now = m_depths[depth];
        Depth& next = m_depths[depth + 1];
        const Candidate& one = m_candidates[candidate];
        if (one.containers * one.footprint.height * one.footprint.width >
            now.taken.leastFree(one.from, one.to))
            return false;
        next = now;
        next.chosen.push_back(candidate);
        const Stay stay{one.from, one.to, one.containers, one.footprint, one.turn, {}};
        if (m_placer.placeQuickly(now.taken, stay, m_slots)) {
            next.taken.occupy(m_slots, one.from, one.to);
            next.slots.push_back(m_slots);
            return true;
        }
        return packAnew(next);
    }

    bool packAnew(Depth& next) {
        std::vector<Load> loads;
        for (const std::size_t index : next.chosen) {
            const Candidate& one = m_candidates[index];
            loads.push_back({one.from, one.to, one.containers, one.footprint, one.turn, {}, {}, -1, 0});
        }
        const PackLimits limits{packRounds, m_exactSteps, false, m_seed};
        Packing packing = repack(m_zone, loads, 0, limits);
        m_steps += packing.steps;
        if (packing.verdict == Verdict::Unknown) m_proven = false;
        if (packing.verdict != Verdict::Packed) return false;
        next.slots = std::move(packing.slots);
        next.taken = m_zone;
        for (std::size_t at = 0; at < loads.size(); ++at)
            next.taken.occupy(next.slots[at], loads[at].from, loads[at].to);
        return true;
    }

    const Occupancy& m_zone;
    std::span<const Candidate> m_candidates;
    std::vector<Group> m_groups;
    ValueBound m_bound;
    long m_limit;
    long m_exactSteps;
    long m_steps = 0;
    std::uint64_t m_seed;
    const std::stop_token& m_stop;
    std::vector<Depth> m_depths;
    std::vector<SlotRect> m_slots;
    Placer m_placer;
    Refill m_best;
    std::int64_t m_floor = 0; ///< only more than this is of use
    bool m_ended = false;     ///< stopped, or out of steps
    bool m_proven = true;     ///< nothing has been left that was not shown to be impossible or worth less
};

} // namespace

Refill refill(const Occupancy& zone, std::span<const Candidate> candidates, const RefillLimits& limits,
              const std::stop_token& stop) {
    const Segments segments(candidates, zone.days());
    const Occupancy condensed = zone.condensed(segments.cuts());
    std::vector<Candidate> shortened(candidates.begin(), candidates.end());
    for (Candidate& one : shortened) {
        one.from = segments.at(one.from);
        one.to = segments.at(one.to);
    }
    Refill start =
        refillGreedily(condensed, shortened, std::min(greedyRounds, limits.steps), limits.seed, stop);
    if (start.proven) return start;
    return Tree(condensed, shortened, limits, stop).run(std::move(start), limits.atLeast);
}

} // namespace warmbench::planner::packing
