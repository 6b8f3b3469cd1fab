#include "core/rooting/prior/recipe_prior.h"

#include <boost/math/distributions/beta.hpp>
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace warmbench;
using namespace warmbench::literals;
using namespace warmbench::rooting;

namespace {

Recipe recipeOf(IntRange days, Celsius ideal, Celsius base) {
    Recipe recipe;
    recipe.daysToRoot.value = days;
    recipe.rootZoneIdeal.value = ideal;
    recipe.base.value = base;
    return recipe;
}

Recipe recipeTaking(int low, int high) {
    Recipe recipe;
    recipe.takePercent.value = {low, high};
    return recipe;
}

} // namespace

TEST_CASE("The 10 % and 90 % points of thermal time are the recipe's days times the heat of a day") {
    const auto need = rootingNeed(recipeOf({28, 49}, 19_degC, 5_degC));
    REQUIRE(need);
    CHECK(need->quantile(0.1) == Approx(28 * 14.0).epsilon(1e-12));
    CHECK(need->quantile(0.9) == Approx(49 * 14.0).epsilon(1e-12));
    CHECK(need->quantile(0.5) == Approx(14.0 * std::sqrt(28.0 * 49.0)).epsilon(1e-12));
    CHECK(need->t10() == 392.0_degreeDays);
    CHECK(need->t90() == 686.0_degreeDays);
    CHECK(need->t50() < need->readyDegreeDays(0.95));
    CHECK(need->derivation.find("392 to 686 degree-days") != std::string::npos);
}

TEST_CASE("Poinsettia needs 84 to 105 degree-days over 21 °C at 28 °C") {
    // 12 to 15 days to emergence: WILK2005B; optimum 28 °C and base 21 °C: WILK2005A.
    const auto need = rootingNeed(recipeOf({12, 15}, 28_degC, 21_degC));
    REQUIRE(need);
    CHECK(need->t10() == 84.0_degreeDays);
    CHECK(need->t90() == 105.0_degreeDays);
}

TEST_CASE("Mu and sigma give back the shares at their quantiles") {
    const auto need = rootingNeed(recipeOf({14, 25}, 22.5_degC, 10_degC));
    REQUIRE(need);
    for (const double share : {0.01, 0.1, 0.3, 0.5, 0.77, 0.9, 0.999}) {
        const double byLaw = 1 / (1 + std::exp(-(std::log(need->quantile(share)) - need->mu) / need->sigma));
        CHECK(byLaw == Approx(share).epsilon(1e-12));
        CHECK(need->rootedBy(need->quantile(share)) == Approx(share).epsilon(1e-12));
    }
    CHECK(need->rootedBy(0) == 0);
}

TEST_CASE("One day for all gets a tenth to either side, and says so") {
    const auto need = rootingNeed(recipeOf({20, 20}, 20_degC, 5_degC));
    REQUIRE(need);
    CHECK(need->quantile(0.1) == Approx(270));
    CHECK(need->quantile(0.9) == Approx(330));
    CHECK(need->derivation.find("assumed") != std::string::npos);
}

TEST_CASE("No thermal time passes at or below the base, and days run forwards from 1") {
    CHECK_FALSE(rootingNeed(recipeOf({10, 20}, 21_degC, 21_degC)));
    CHECK_FALSE(rootingNeed(recipeOf({10, 20}, 15_degC, 21_degC)));
    CHECK_FALSE(rootingNeed(recipeOf({20, 10}, 20_degC, 5_degC)));
    CHECK_FALSE(rootingNeed(recipeOf({0, 10}, 20_degC, 5_degC)));
    CHECK(rootingNeed(recipeOf({10, 20}, 21_degC, 21_degC)).refusal().text() ==
          "recipe: found a root zone of 21 °C and a base of 21 °C, expected a base below the root zone");
}

TEST_CASE("The beta law meets its points to one in a million for every take a recipe can have") {
    for (int low = 0; low < 100; low += 3)
        for (int high = low + 1; high <= 100; high += 4) {
            const double lowPoint = std::max(low / 100.0, 0.005);
            const double highPoint = std::min(high / 100.0, 0.995);
            const auto prior = takePrior(recipeTaking(low, high));
            REQUIRE(prior);
            const boost::math::beta_distribution<> law{prior->share.alpha, prior->share.beta};
            INFO("take " << low << " to " << high << " %");
            CHECK(std::abs(quantile(law, 0.1) - lowPoint) < 1e-6);
            CHECK(std::abs(quantile(law, 0.9) - highPoint) < 1e-6);
        }
}

TEST_CASE("A symmetric take gives equal shapes, and a narrow one weighs more") {
    const BetaShape even = betaByPoints(0.3, 0.7);
    CHECK(even.alpha == Approx(even.beta).epsilon(1e-9));
    const BetaShape narrow = betaByPoints(0.45, 0.55);
    CHECK(narrow.alpha + narrow.beta > 10 * (even.alpha + even.beta));
    // P(share < x) = x for the uniform law.
    const BetaShape uniform = betaByPoints(0.1, 0.9);
    CHECK(uniform.alpha == Approx(1).epsilon(1e-9));
    CHECK(uniform.beta == Approx(1).epsilon(1e-9));
}

TEST_CASE("A single take, even 0 or 100 %, gets some spread inside 0 to 1") {
    for (const int take : {0, 1, 48, 99, 100}) {
        const auto prior = takePrior(recipeTaking(take, take));
        REQUIRE(prior);
        CHECK(prior->derivation.find("some spread") != std::string::npos);
        const boost::math::beta_distribution<> law{prior->share.alpha, prior->share.beta};
        CHECK(quantile(law, 0.9) - quantile(law, 0.1) > 0.019);
        CHECK(std::abs(mean(law) - take / 100.0) < 0.03);
    }
}

TEST_CASE("A take outside 0 to 100 % or the wrong way round is refused") {
    CHECK_FALSE(takePrior(recipeTaking(-1, 50)));
    CHECK_FALSE(takePrior(recipeTaking(50, 101)));
    CHECK_FALSE(takePrior(recipeTaking(60, 50)));
}
