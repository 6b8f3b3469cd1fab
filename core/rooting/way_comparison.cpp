#include "core/rooting/way_comparison.h"

#include "core/rooting/linear_solve.h"
#include "core/rooting/ln_gamma.h"

#include <cmath>

namespace warmbench::rooting {
namespace {

/// Share that roots by a treatment's log-odds.
double shareBy(const std::vector<double>& coefficients, const std::vector<double>& treatment) {
    double odds = 0;
    for (std::size_t i = 0; i < coefficients.size(); ++i) odds += coefficients[i] * treatment[i];
    return 1 / (1 + std::exp(-odds));
}

struct Information {
    std::vector<double> matrix;
    std::vector<double> score;
};

Information informationAt(const std::vector<TrialTray>& trays, const std::vector<double>& coefficients) {
    const std::size_t n = coefficients.size();
    Information sum{std::vector<double>(n * n, 0), std::vector<double>(n, 0)};
    for (const TrialTray& tray : trays) {
        const double share = shareBy(coefficients, tray.treatment);
        const auto struck = static_cast<double>(tray.take.struck);
        const double residual = static_cast<double>(tray.take.rooted) - struck * share;
        for (std::size_t i = 0; i < n; ++i) {
            sum.score[i] += residual * tray.treatment[i];
            for (std::size_t j = 0; j <= i; ++j)
                sum.matrix[i * n + j] += struck * share * (1 - share) * tray.treatment[i] * tray.treatment[j];
        }
    }
    return sum;
}

/// observed * ln(observed / expected), 0 for none.
double part(double observed, double expected) {
    return observed > 0 ? observed * std::log(observed / expected) : 0;
}

void addGoodness(const TrialTray& tray, double share, WayComparison& result) {
    const auto rooted = static_cast<double>(tray.take.rooted);
    const auto failed = static_cast<double>(tray.take.struck - tray.take.rooted);
    const double struck = rooted + failed;
    const double residual = rooted - struck * share;
    result.deviance += 2 * (part(rooted, struck * share) + part(failed, struck * (1 - share)));
    result.pearson += residual * residual / (struck * share * (1 - share));
    result.logLikelihood += lnGamma(struck + 1) - lnGamma(rooted + 1) - lnGamma(failed + 1) +
                            rooted * std::log(share) + failed * std::log1p(-share);
}

} // namespace

std::optional<WayComparison> compareWays(const std::vector<TrialTray>& trays) {
    if (trays.empty()) return std::nullopt;
    constexpr int mostSteps = 50;
    constexpr double farOdds = 30;
    const std::size_t n = trays.front().treatment.size();
    WayComparison result;
    result.coefficients.assign(n, 0);
    bool settled = false;
    for (int count = 0; count < mostSteps && !settled; ++count) {
        Information here = informationAt(trays, result.coefficients);
        if (!solvePositiveDefinite(here.matrix, here.score)) return std::nullopt;
        double largest = 0;
        for (std::size_t i = 0; i < n; ++i) {
            result.coefficients[i] += here.score[i];
            largest = std::max(largest, std::abs(here.score[i]));
            if (!(std::abs(result.coefficients[i]) < farOdds)) return std::nullopt;
        }
        settled = largest < 1e-12;
    }
    if (!settled) return std::nullopt;
    for (std::size_t i = 0; i < n; ++i) {
        Information here = informationAt(trays, result.coefficients);
        std::vector<double> column(n, 0);
        column[i] = 1;
        if (!solvePositiveDefinite(here.matrix, column)) return std::nullopt;
        result.errors.push_back(std::sqrt(column[i]));
    }
    for (const TrialTray& tray : trays)
        addGoodness(tray, shareBy(result.coefficients, tray.treatment), result);
    result.freedom = static_cast<int>(trays.size()) - static_cast<int>(n);
    return result;
}

} // namespace warmbench::rooting
