#include "core/rooting/batch_spread.h"

#include "core/rooting/linear_solve.h"
#include "core/rooting/ln_gamma.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/trigamma.hpp>

#include <array>
#include <cmath>
#include <optional>

namespace warmbench::rooting {
namespace {

using boost::math::digamma;
using boost::math::trigamma;

struct Slope {
    std::array<double, 2> gradient{};
    std::array<double, 4> curvature{}; ///< second derivatives
};

/// Derivatives of the log-likelihood by both shapes.
Slope slopeAt(std::span<const Take> batches, BetaShape share) {
    const double a = share.alpha;
    const double b = share.beta;
    Slope sum;
    for (const Take& take : batches) {
        const auto rooted = static_cast<double>(take.rooted);
        const auto failed = static_cast<double>(take.struck - take.rooted);
        const double both = digamma(a + b) - digamma(a + b + rooted + failed);
        const double bothCurved = trigamma(a + b) - trigamma(a + b + rooted + failed);
        sum.gradient[0] += digamma(a + rooted) - digamma(a) + both;
        sum.gradient[1] += digamma(b + failed) - digamma(b) + both;
        sum.curvature[0] += trigamma(a + rooted) - trigamma(a) + bothCurved;
        sum.curvature[3] += trigamma(b + failed) - trigamma(b) + bothCurved;
        sum.curvature[1] += bothCurved;
        sum.curvature[2] += bothCurved;
    }
    return sum;
}

double logLikelihood(std::span<const Take> batches, BetaShape share) {
    double sum = 0;
    for (const Take& take : batches) sum += betaBinomialLogProbability(take.rooted, take.struck, share);
    return sum;
}

double binomialLogLikelihood(std::span<const Take> batches, double mean) {
    double sum = 0;
    for (const Take& take : batches) {
        const auto rooted = static_cast<double>(take.rooted);
        const auto failed = static_cast<double>(take.struck - take.rooted);
        sum += lnGamma(rooted + failed + 1) - lnGamma(rooted + 1) - lnGamma(failed + 1);
        if (rooted > 0) sum += rooted * std::log(mean);
        if (failed > 0) sum += failed * std::log1p(-mean);
    }
    return sum;
}

/// Twice the derivative of the log-likelihood by the correlation within batches where that is 0.
double slopeAtNoSpread(std::span<const Take> batches, double mean) {
    double sum = 0;
    for (const Take& take : batches) {
        const auto rooted = static_cast<double>(take.rooted);
        const auto failed = static_cast<double>(take.struck - take.rooted);
        const double struck = rooted + failed;
        sum += rooted * (rooted - 1) / mean + failed * (failed - 1) / (1 - mean) - struck * (struck - 1);
    }
    return sum;
}

/// Newton's step in the logarithms of the shapes; nothing where the likelihood does not curve downwards in
/// them.
std::optional<std::array<double, 2>> logStep(const Slope& slope, BetaShape share) {
    const std::array<double, 2> shapes{share.alpha, share.beta};
    std::array<double, 4> matrix{};
    std::array<double, 2> step{};
    for (std::size_t i = 0; i < 2; ++i) {
        step[i] = shapes[i] * slope.gradient[i];
        for (std::size_t j = 0; j < 2; ++j)
            matrix[i * 2 + j] = -shapes[i] * shapes[j] * slope.curvature[i * 2 + j];
        matrix[i * 2 + i] -= step[i];
    }
    if (!solvePositiveDefinite(matrix, step)) return std::nullopt;
    return step;
}

BetaShape climbed(std::span<const Take> batches, BetaShape share) {
    constexpr int mostSteps = 200;
    constexpr double longest = 2;
    double reached = logLikelihood(batches, share);
    for (int count = 0; count < mostSteps; ++count) {
        const Slope slope = slopeAt(batches, share);
        auto step = logStep(slope, share);
        if (!step) { // straight up, by a fixed length
            const std::array<double, 2> up{share.alpha * slope.gradient[0], share.beta * slope.gradient[1]};
            const double length = std::hypot(up[0], up[1]);
            if (!(length > 0)) return share;
            step = {up[0] / length, up[1] / length};
        }
        const double length = std::hypot((*step)[0], (*step)[1]);
        if (length < 1e-12) return share;
        bool higher = false;
        for (double part = std::min(1.0, longest / length); part > 1e-12 && !higher; part /= 2) {
            const BetaShape trial{share.alpha * std::exp(part * (*step)[0]),
                                  share.beta * std::exp(part * (*step)[1])};
            const double found = logLikelihood(batches, trial);
            if (found < reached) continue;
            higher = true;
            share = trial;
            reached = found;
        }
        if (!higher) return share;
    }
    return share;
}

} // namespace

BatchSpread batchSpread(std::span<const Take> batches) {
    Take all{0, 0};
    for (const Take& take : batches) {
        all.rooted += take.rooted;
        all.struck += take.struck;
    }
    BatchSpread result;
    result.mean = all.share();
    result.binomialLogLikelihood = binomialLogLikelihood(batches, result.mean);
    result.logLikelihood = result.binomialLogLikelihood;
    if (all.rooted == 0 || all.rooted == all.struck) return result;
    if (slopeAtNoSpread(batches, result.mean) <= 0) return result;

    constexpr double startWeight = 5;
    const BetaShape share = climbed(batches, {startWeight * result.mean, startWeight * (1 - result.mean)});
    const Slope slope = slopeAt(batches, share);
    for (std::size_t i = 0; i < 2; ++i) {
        std::array<double, 4> information{};
        for (std::size_t k = 0; k < 4; ++k) information[k] = -slope.curvature[k];
        std::array<double, 2> column{};
        column[i] = 1;
        if (!solvePositiveDefinite(information, column)) return result;
        (i == 0 ? result.error.alpha : result.error.beta) = std::sqrt(column[i]);
    }
    result.spread = true;
    result.share = share;
    result.mean = share.alpha / (share.alpha + share.beta);
    result.correlation = 1 / (share.alpha + share.beta + 1);
    result.logLikelihood = logLikelihood(batches, share);
    return result;
}

} // namespace warmbench::rooting
