#pragma once

#include "core/planner/packing/occupancy.h"
#include "core/planner/packing/refill.h"

#include <cstdint>
#include <vector>

namespace warmbench::planner::packing {

/// Candidates between which a refill decides at one level: up to `count` of the options are placed.
/// Candidates alike make a group of one option, the candidates of one choice a group of as many options of
/// which one is placed.
struct Group {
    std::vector<Candidate> options;
    std::vector<std::size_t>
        members; ///< of one option: the candidates alike; else: the candidate of each option
    int count = 1;
};

/// How much more value the groups from one on can bring, by the slots alone: for each day a knapsack over the
/// groups that stand on it (in whole containers where all stand on the same days, else the last one in part),
/// with all that can stand on other days only for nothing.
class ValueBound {
public:
    ValueBound(const Occupancy& zone, const std::vector<Group>& groups);

    /// At most this from `groups[group]`, of which `used` are placed, and all after it, in what is free in
    /// `zone`.
    [[nodiscard]] std::int64_t most(std::size_t group, int used, const Occupancy& zone) const;

private:
    struct Share {
        std::size_t group = 0;
        std::int64_t slots = 0; ///< least that an option takes on the day
        std::int64_t value = 0; ///< greatest that it brings more than one that does not stand on the day
    };
    struct Day {
        int day = 0;
        std::vector<Share> shares;         ///< the most valuable for its slots first
        std::vector<std::int64_t> besides; ///< by group, the sum from it on of what is had without the day
        std::vector<std::int64_t> besidesOfOne; ///< by group, of one of its count
    };

    void addDay(const Occupancy& zone, int day);
    void makeKnapsack(int slots);
    [[nodiscard]] std::int64_t onDay(const Day& day, std::size_t group, int used, std::int64_t slots) const;
    [[nodiscard]] std::int64_t onPlate(std::size_t group, int used, std::int64_t slots) const;

    const std::vector<Group>& m_groups;
    bool m_plate = false;
    std::vector<std::int64_t> m_all; ///< by group, the value of it and all after, were slots no matter
    std::vector<Day> m_days;         ///< those on which something begins
    std::vector<std::vector<std::int64_t>> m_knapsack; ///< by group and slots: the best of it and all after
};

} // namespace warmbench::planner::packing
