#pragma once

#include "core/rooting/proportion.h"

#include <optional>
#include <vector>

namespace warmbench::rooting {

/// One tray or batch in a comparison of ways: its take, and what was done to it as numbers (a leading 1 for
/// the intercept, 0 or 1 for each treatment, products for their interplay).
struct TrialTray {
    Take take;
    std::vector<double> treatment; ///< of one length in all trays
};

/// A logistic regression of the share that roots on the treatment: log-odds = sum of coefficient * treatment.
struct WayComparison {
    std::vector<double> coefficients;
    std::vector<double> errors; ///< standard errors if trays of one treatment vary by chance alone
    double deviance = 0;        ///< against a share of its own for each tray
    double pearson = 0;         ///< Pearson's chi-squared
    double logLikelihood = 0;   ///< with the binomial coefficients
    int freedom = 0;            ///< trays less coefficients

    /// How much more trays vary than by chance; 1 where no tray is left over. Standard errors grow with its
    /// root.
    [[nodiscard]] double dispersion() const { return freedom > 0 ? pearson / freedom : 1; }
};

/// Fits by iteratively reweighted least squares (Nelder and Wedderburn 1972, JRSS A 135:370-384). Nothing
/// where the treatments cannot be told apart or an answer is infinite, as when one way rooted all or none.
std::optional<WayComparison> compareWays(const std::vector<TrialTray>& trays);

} // namespace warmbench::rooting
