#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace warmbench::rooting {

/// One look at some of the cuttings that stand together, picked at random, at a time in degree-days (or days)
/// since striking. The dead are no longer counted.
struct Look {
    double time = 0;     ///< above 0
    double examined = 0; ///< alive, with and without roots
    double rooted = 0;   ///< of those examined
    double standing = 0; ///< alive that could have been picked, at least `examined`
};

/// The looks at cuttings that stand together (one container, or several that are always looked at on the same
/// days), in order of time.
using LookSeries = std::vector<Look>;

/// Cuttings that stand together, alive, with the looks at them so far.
struct CuttingsLeft {
    LookSeries looks;
    double alive = 0; ///< with and without roots
};

/// The look that a check of `examined` of `standing` cuttings amounts to, `dead` and `rooted` of those
/// examined: as many of the others are taken to be dead.
Look lookOf(double time, double standing, double examined, double dead, double rooted);

/// The same cuttings in fewer lots: those that were looked at on the same days, whole or in part alike, are
/// taken together.
std::vector<CuttingsLeft> pooled(const std::vector<CuttingsLeft>& lots);

/// The likelihood of one look given those before it, as resources/doc/rooting-model.md derives it.
///
/// Of the cuttings examined, `a` were seen rooted before and are rooted still: `a` has a hypergeometric law
/// that does not depend on the rooting law. The others root independently, each with the probability
/// `chance`. Hence the likelihood is chance^(rooted - most) (1 - chance)^(examined - rooted) times a
/// polynomial in `chance`.
struct LookTerm {
    struct Source {
        std::size_t time; ///< place of an earlier look in the series
        double weight;    ///< the part of the others that was last seen then, alive without roots
    };
    double fresh = 1; ///< the part of the others that was never seen before
    std::vector<Source> seen;
    double leastRooted = 0;         ///< rooted - most: newly rooted at least
    double unrooted = 0;            ///< examined - rooted
    std::vector<double> polynomial; ///< from its constant on, 1 at the greatest

    /// The chance that one of the others has rooted, from the shares of all struck that have rooted by each
    /// look of the series.
    [[nodiscard]] double chance(std::size_t look, const double* rootedBy) const {
        double sum = fresh * rootedBy[look];
        for (const Source& source : seen) {
            const double before = rootedBy[source.time];
            sum += source.weight * (rootedBy[look] - before) / std::max(1 - before, 1e-300);
        }
        return sum;
    }
    /// ln of the likelihood, but for a factor that does not depend on `chance` (from 0 to 1).
    [[nodiscard]] double logLikelihood(double chance) const;
};

/// How many of the cuttings standing at look `look` of a series were rooted when they were last seen before
/// it, as is to be expected of random picks; those that died since had no roots.
double knownRooted(const LookSeries& series, std::size_t look);

/// One term for each look of a series.
std::vector<LookTerm> lookTerms(const LookSeries& series);

} // namespace warmbench::rooting
