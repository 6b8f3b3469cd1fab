#include "core/rooting/fit.h"
#include "core/rooting/likelihood.h"
#include "core/rooting/limits.h"
#include "core/rooting/turnbull.h"

#include "tests/support/within.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

namespace {

const std::vector<Sighting> checks{{Outcome::Rooted, 0, 90, 3},     {Outcome::Rooted, 90, 130, 20},
                                   {Outcome::Rooted, 110, 160, 14}, {Outcome::Rooted, 160, 220, 9},
                                   {Outcome::Unrooted, 110, 0, 2},  {Outcome::Unrooted, 220, 0, 11},
                                   {Outcome::Never, 0, 0, 4}};

double& coordinate(Slant& slant, std::size_t i) {
    return i == 0 ? slant.level : i == 1 ? slant.steepness : slant.odds;
}

} // namespace

TEST_CASE("The likelihood's derivatives are those of its values") {
    constexpr double step = 1e-5;
    for (const Family family : families) {
        INFO(familyName(family));
        const Likelihood likelihood{family, merged(checks)};
        const Slant here{0.3, 1.4, 0.7};
        const Ascent ascent = likelihood.at(here);
        for (std::size_t i = 0; i < 3; ++i) {
            Slant less = here;
            Slant more = here;
            coordinate(less, i) -= step;
            coordinate(more, i) += step;
            const Ascent low = likelihood.at(less);
            const Ascent high = likelihood.at(more);
            CHECK(ascent.gradient[i] == within((high.value - low.value) / (2 * step), 1e-5));
            for (std::size_t j = 0; j < 3; ++j)
                CHECK(ascent.curvature[i * 3 + j] ==
                      within((high.gradient[j] - low.gradient[j]) / (2 * step), 1e-5));
        }
    }
}

TEST_CASE("Chances keep their digits in both tails") {
    for (const Family family : families)
        for (const double low : {-60.0, -8.0, -0.5, 0.0, 2.0}) {
            INFO(familyName(family) << " from " << low);
            const double whole = logBetween(family, low, low + 1);
            const double first = logBetween(family, low, low + 0.5);
            const double second = logBetween(family, low + 0.5, low + 1);
            CHECK(std::exp(first - whole) + std::exp(second - whole) == within(1, 1e-10));
            // A narrow interval is its density times its width.
            CHECK(logBetween(family, low, low + 1e-7) ==
                  within(lawPoint(family, low + 0.5e-7).logDensity + std::log(1e-7), 1e-7));
        }
}

TEST_CASE("The share below a place is the same, asked for by itself or by its logarithm") {
    for (const Family family : families)
        for (const double z : {-20.0, -3.0, -0.5, 0.0, 0.7, 4.0, 30.0}) {
            INFO(familyName(family) << " at " << z);
            CHECK(lawBelow(family, z) == Approx(std::exp(lawPoint(family, z).logBelow)).epsilon(1e-12));
        }
}

TEST_CASE("The order and the splitting of sightings is no matter") {
    std::vector<Sighting> split;
    for (auto sighting = checks.rbegin(); sighting != checks.rend(); ++sighting)
        for (int i = 0; i < static_cast<int>(sighting->count); ++i) {
            split.push_back(*sighting);
            split.back().count = 1;
        }
    const RootingFit one = fitRooting(Family::Weibull, checks);
    const RootingFit other = fitRooting(Family::Weibull, split);
    REQUIRE(one.law);
    CHECK(one.status == FitStatus::Inside);
    CHECK(one.law->mu == other.law->mu);
    CHECK(one.cuttings == other.cuttings);
}

TEST_CASE("Another unit of time moves mu alone") {
    std::vector<Sighting> scaled = checks;
    for (Sighting& sighting : scaled) {
        sighting.from *= 1000;
        sighting.to *= 1000;
    }
    const RootingFit one = fitRooting(Family::LogNormal, checks);
    const RootingFit other = fitRooting(Family::LogNormal, scaled);
    REQUIRE(one.law);
    REQUIRE(other.law);
    CHECK(other.law->mu == within(one.law->mu + std::log(1000), 1e-7));
    CHECK(other.law->sigma == within(one.law->sigma, 1e-7));
    CHECK(other.logLikelihood == within(one.logLikelihood, 1e-9));
}

TEST_CASE("No law beats Turnbull's estimate, and none falls short of the limits") {
    for (const Family family : families) {
        const RootingFit fit = fitRooting(family, checks);
        CHECK(fit.logLikelihood <= turnbull(checks).logLikelihood);
        CHECK(fit.logLikelihood >= supremumAtLimits(merged(checks), false));
    }
}

TEST_CASE("Roots in one or two neighbouring intervals determine no law") {
    const std::vector<Sighting> one{{Outcome::Rooted, 5, 10, 12}, {Outcome::Unrooted, 20, 0, 8}};
    const std::vector<Sighting> two{{Outcome::Rooted, 5, 10, 12}, {Outcome::Rooted, 10, 15, 3}};
    for (const Family family : families) {
        CHECK(fitRooting(family, one).status == FitStatus::NoUniqueAnswer);
        CHECK(fitRooting(family, two).status == FitStatus::NoUniqueAnswer);
        CHECK(fitRooting(family, two, true).status == FitStatus::NoUniqueAnswer);
        CHECK(fitRooting(family, two).logLikelihood == within(12 * std::log(0.8) + 3 * std::log(0.2), 1e-9));
        CHECK(fitRooting(family, {}).logLikelihood == 0);
    }
}

TEST_CASE("Samples that root less the later they are lifted determine no law") {
    const std::vector<Sighting> falling{{Outcome::Rooted, 0, 50, 9},  {Outcome::Unrooted, 50, 0, 1},
                                        {Outcome::Rooted, 0, 100, 5}, {Outcome::Unrooted, 100, 0, 5},
                                        {Outcome::Rooted, 0, 200, 1}, {Outcome::Unrooted, 200, 0, 9}};
    for (const Family family : families) {
        const RootingFit fit = fitRooting(family, falling);
        CHECK(fit.status == FitStatus::NoUniqueAnswer);
        CHECK(fit.logLikelihood == within(30 * std::log(0.5), 1e-9));
    }
}
