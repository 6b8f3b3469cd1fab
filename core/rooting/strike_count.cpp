#include "core/rooting/strike_count.h"

#include <algorithm>
#include <cmath>

namespace warmbench::rooting {
namespace {

/// Rounding may put a tie this far below the sureness that was asked for.
constexpr double slack = 1e-12;

double logOdds(double probability) {
    const double p = std::clamp(probability, 1e-300, 1 - 1e-16);
    return std::log(p / (1 - p));
}

} // namespace

std::optional<StrikeCount> strikeCount(std::int64_t wanted, double sure, BetaShape share) {
    if (wanted <= 0) return StrikeCount{};
    if (wanted > mostStruck) return std::nullopt;
    const double mean = share.alpha / (share.alpha + share.beta);
    const double wantedOdds = logOdds(sure);

    std::int64_t failed = wanted - 1;
    double failedOdds = logOdds(0);
    std::int64_t sufficed = static_cast<std::int64_t>(
        std::clamp(static_cast<double>(wanted) / mean, static_cast<double>(wanted), double{mostStruck}));
    double sureness = betaBinomialAtLeast(wanted, sufficed, share);
    while (sureness < sure - slack) {
        if (sufficed == mostStruck) return std::nullopt;
        failed = sufficed;
        failedOdds = logOdds(sureness);
        sufficed = std::min(mostStruck, 2 * sufficed);
        sureness = betaBinomialAtLeast(wanted, sufficed, share);
    }

    // The probability grows with the count: the bracket closes by straight lines through the log-odds and by
    // halving in turns.
    for (bool halve = false; sufficed - failed > 1; halve = !halve) {
        const double part = halve ? 0.5 : (wantedOdds - failedOdds) / (logOdds(sureness) - failedOdds);
        const auto step =
            static_cast<std::int64_t>(std::clamp(part, 0.0, 1.0) * static_cast<double>(sufficed - failed));
        const std::int64_t count = std::clamp(failed + step, failed + 1, sufficed - 1);
        const double reached = betaBinomialAtLeast(wanted, count, share);
        if (reached >= sure - slack) {
            sufficed = count;
            sureness = reached;
        } else {
            failed = count;
            failedOdds = logOdds(reached);
        }
    }
    return StrikeCount{sufficed, sureness, static_cast<double>(sufficed) * mean};
}

} // namespace warmbench::rooting
