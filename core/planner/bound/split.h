#pragma once

#include "core/planner/bound/dual_function.h"
#include "core/planner/bound/formulation.h"

#include <cstdint>
#include <vector>

namespace warmbench::planner {

/// Two domains that together hold all solutions of one: in the first a batch has a property (it is placed, in
/// a kind of zone, at a set-point, from a range of days) or a zone and day has a set-point; in the second
/// not.
struct Split {
    /// What is decided, the most far-reaching first.
    enum class Property : std::uint8_t { Placed, Kind, SetPoint, Day, ZoneDay };

    Property property = Property::Placed;
    int batch = -1;           ///< that must be placed in the first domain; -1 for a zone and day
    std::vector<int> having;  ///< links forbidden in the second domain
    std::vector<int> lacking; ///< links forbidden in the first domain
    double share = 0;         ///< of the approximate solution that has the property
};

/// Splits that an approximate solution (by link 0 to 1, see Ascent) does not decide: of each property the
/// `each` most undecided, placing weighed by the batch's value. Where a property is decided everywhere, those
/// that come nearest to being open.
[[nodiscard]] std::vector<Split> undecidedSplits(const Formulation& formulation, const Domain& domain,
                                                 const std::vector<double>& usage, std::size_t each);

[[nodiscard]] Domain firstDomain(const Domain& domain, const Split& split);
[[nodiscard]] Domain secondDomain(const Domain& domain, const Split& split);

} // namespace warmbench::planner
