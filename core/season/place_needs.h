#pragma once

#include "core/season/proposal.h"

#include <cstddef>

namespace warmbench::season {

/// Which things of a proposal need the place of another one: they are to stand on slots that a planned batch
/// has in the book until the proposal gives it others, or none. Things count from 0: first the proposal's
/// lines, then what has no place in it.
class PlaceNeeds {
public:
    PlaceNeeds() = default;
    PlaceNeeds(const HouseBook& book, const Proposal& proposal);

    /// All that has to be accepted with a thing, itself too; rising.
    [[nodiscard]] std::vector<std::size_t> neededBy(std::size_t thing) const;
    /// All that can't be accepted without a thing, itself too; rising.
    [[nodiscard]] std::vector<std::size_t> needing(std::size_t thing) const;

private:
    std::vector<std::vector<std::size_t>> m_needs;    ///< directly, by thing
    std::vector<std::vector<std::size_t>> m_neededBy; ///< the same the other way round
};

} // namespace warmbench::season
