#include "core/rooting/strike_count.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace warmbench::rooting;

TEST_CASE("Nothing wanted needs nothing struck") {
    const auto none = strikeCount(0, 0.9, {2, 1});
    REQUIRE(none);
    CHECK(none->strike == 0);
    CHECK(none->sureness == 1);
}

TEST_CASE("A tie in exact arithmetic counts as reached") {
    // With both shapes 1, P(X >= k) is 1 - k / (n + 1) for k of n.
    CHECK(strikeCount(84, 0.95, {1, 1})->strike == 1679);
    CHECK(strikeCount(100'000, 0.9, {1, 1})->strike == 999'999);
    CHECK(strikeCount(100'000, 0.9, {1, 1})->sureness == Approx(0.9).margin(1e-12));
}

TEST_CASE("The number to strike is the smallest that suffices") {
    for (const BetaShape share :
         {BetaShape{19, 7}, {0.5, 0.5}, {0.05, 3}, {4000, 1000}, {1e6, 2e5}, {30, 0.2}})
        for (const std::int64_t wanted : {1, 7, 250, 100'000}) {
            const auto found = strikeCount(wanted, 0.8, share);
            if (!found) {
                CHECK(betaBinomialAtLeast(wanted, mostStruck, share) < 0.8);
                continue;
            }
            CHECK(found->sureness >= 0.8 - 1e-12);
            CHECK(betaBinomialAtLeast(wanted, found->strike - 1, share) < 0.8 - 1e-12);
            CHECK(found->expected ==
                  Approx(static_cast<double>(found->strike) * share.alpha / (share.alpha + share.beta)));
        }
}

TEST_CASE("A sureness that no number reaches has no answer") {
    CHECK_FALSE(strikeCount(1000, 0.999, {0.001, 5}));
    CHECK_FALSE(strikeCount(mostStruck + 1, 0.5, {1, 1}));
}

TEST_CASE("Probabilities of counts add up to one") {
    for (const BetaShape share : {BetaShape{1, 1}, {0.02, 0.03}, {300, 2}, {1e7, 1e7}}) {
        double sum = 0;
        for (std::int64_t rooted = 0; rooted <= 500; ++rooted)
            sum += std::exp(betaBinomialLogProbability(rooted, 500, share));
        CHECK(sum == Approx(1).margin(1e-12));
    }
    CHECK(std::exp(betaBinomialLogProbability(6, 5, {1, 1})) == 0);
    CHECK(betaBinomialAtLeast(6, 5, {1, 1}) == 0);
    CHECK(betaBinomialAtLeast(0, 5, {1, 1}) == 1);
}
