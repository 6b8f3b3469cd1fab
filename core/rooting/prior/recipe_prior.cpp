#include "core/rooting/prior/recipe_prior.h"

#include "core/crop/recipe_figures.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>
#include <utility>

namespace warmbench::rooting {
namespace {

constexpr double lowPoint = 0.1;
constexpr double highPoint = 0.9;

double logit(double share) {
    return std::log(share) - std::log1p(-share);
}

double fromLogit(double value) {
    return 1 / (1 + std::exp(-value));
}

/// Where a function of one variable, of opposite signs at both ends, is 0.
template <class Function>
double zeroBetween(Function function, double from, double to) {
    std::uintmax_t steps = 200;
    const auto [below, above] = boost::math::tools::toms748_solve(
        function, from, to, boost::math::tools::eps_tolerance<double>(50), steps);
    return below + (above - below) / 2;
}

/// The beta law with shapes that add up to `sum` and with P(share < low) = lowPoint: that probability falls
/// from 1 to 0 as the mean rises from 0 to 1.
BetaShape shapeThroughLow(double sum, double low) {
    const auto excess = [sum, low](double logitOfMean) {
        const double mean = fromLogit(logitOfMean);
        return boost::math::ibeta(mean * sum, fromLogit(-logitOfMean) * sum, low) - lowPoint;
    };
    constexpr double farOff = 30;
    const double logitOfMean = zeroBetween(excess, -farOff, farOff);
    return {fromLogit(logitOfMean) * sum, fromLogit(-logitOfMean) * sum};
}

} // namespace

double ThermalNeed::quantile(double share) const {
    return std::exp(mu + sigma * logit(share));
}

double ThermalNeed::rootedBy(double degreeDays) const {
    return degreeDays <= 0 ? 0 : fromLogit((std::log(degreeDays) - mu) / sigma);
}

Result<ThermalNeed> rootingNeed(const Recipe& recipe) {
    const Celsius ideal = recipe.rootZoneIdeal.value;
    const Celsius base = recipe.base.value;
    const IntRange days = recipe.daysToRoot.value;
    if (ideal <= base)
        return Refusal{"recipe",
                       phrase("found a root zone of %1 and a base of %2, expected a base below the root zone",
                              valueText(ideal), valueText(base))};
    if (days.low < 1 || days.high < days.low)
        return Refusal{
            "recipe",
            phrase("found %1 to %2 days to root, expected the shorter time first and none below 1 day",
                   days.low, days.high)};

    // The days hold with the root zone at its ideal, so each stands for (ideal - base) degree-days. A
    // recipe's range is what a grower calls ordinary: the early and the late ones are in it, the stragglers
    // are not. It is taken as the 10 % and 90 % points of the log-logistic law. With W standard logistic
    // those points of W are -ln 9 and +ln 9, hence
    //     ln low  = mu - sigma ln 9,    ln high = mu + sigma ln 9.
    // One and the same day for both says nothing of the spread; a tenth to either side is assumed.
    const bool oneDay = days.low == days.high;
    const double heatOfDay = (ideal - base).units();
    const double low = heatOfDay * days.low * (oneDay ? 0.9 : 1.0);
    const double high = heatOfDay * days.high * (oneDay ? 1.1 : 1.0);
    ThermalNeed need;
    need.mu = (std::log(low) + std::log(high)) / 2;
    need.sigma = (std::log(high) - std::log(low)) / (logit(highPoint) - logit(lowPoint));
    need.base = base;
    need.derivation = "derived: " + valueText(days) + " days at " + valueText(ideal) + " over " +
                      valueText(base) + (oneDay ? ", a tenth to either side assumed," : "") + " are " +
                      std::to_string(std::lround(low)) + " to " + std::to_string(std::lround(high)) +
                      " degree-days, taken as the 10 % and 90 % points of those that root";
    return need;
}

BetaShape betaByPoints(double low, double high) {
    // With P(share < low) held at 0.1, P(share < high) rises from 0.1 (all the weight at 0 and 1) to 1 (all
    // at `low`) as the sum of the shapes rises: one zero.
    const auto excess = [low, high](double logOfSum) {
        const BetaShape shape = shapeThroughLow(std::exp(logOfSum), low);
        return boost::math::ibeta(shape.alpha, shape.beta, high) - highPoint;
    };
    const double fewest = std::log(1e-3);
    const double most = std::log(1e8);
    return shapeThroughLow(std::exp(zeroBetween(excess, fewest, most)), low);
}

namespace {

/// The same few ranges stand in all recipes of a book, and each costs a search: kept for good, from any
/// thread. No more than 100 * 100 of them exist.
BetaShape betaByPercents(double low, double high) {
    static std::mutex guard;
    static std::map<std::pair<double, double>, BetaShape> kept;
    const std::scoped_lock lock(guard);
    const auto [found, isNew] = kept.try_emplace({low, high});
    if (isNew) found->second = betaByPoints(low / 100, high / 100);
    return found->second;
}

} // namespace

Result<TakePrior> takePrior(const Recipe& recipe) {
    const IntRange take = recipe.takePercent.value;
    if (take.low < 0 || take.high > 100 || take.high < take.low)
        return Refusal{
            "recipe",
            phrase("found a take of %1 to %2 %, expected two figures from 0 to 100, the lower first",
                   take.low, take.high)};

    // The range is ordinary good practice, neither record nor failure: taken as the 10 % and 90 % points. No
    // law has such points at 0 or 1, so they are kept half a point away from either end, and two and a half
    // points to either side are assumed where a recipe gives one figure only.
    constexpr double farthest = 0.5;
    const double spread = take.low == take.high ? 2.5 : 0;
    const double low = std::clamp(take.low - spread, farthest, 100 - farthest - 2 * spread);
    const double high = std::clamp(take.high + spread, farthest + 2 * spread, 100 - farthest);
    const bool assumed = low != take.low || high != take.high;
    return TakePrior{betaByPercents(low, high),
                     "derived: a take of " + valueText(take) + " % is taken as the 10 % and 90 % points" +
                         (assumed ? " (kept off the ends, with some spread)" : "") + " of a beta law"};
}

} // namespace warmbench::rooting
