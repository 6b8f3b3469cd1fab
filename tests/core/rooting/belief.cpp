#include "core/rooting/belief.h"

#include "tests/core/rooting/sample_prior.h"
#include "tests/support/within.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

TEST_CASE("Without sightings what is believed is the prior") {
    const RootingBelief belief{samplePrior, Evidence{}};
    CHECK(belief.share().mean == within(8.0 / 11, 1e-4));
    CHECK(belief.mu().mean == within(5.3, 1e-4));
    CHECK(belief.mu().deviation == within(0.35, 1e-4));
    CHECK(belief.logSigma().deviation == within(0.4, 1e-4));
    CHECK(belief.logEvidence() == within(0, 1e-4));
}

TEST_CASE("Many cuttings drown the prior, and their law is found again") {
    const RootingLaw truth{Family::LogLogistic, 0.8, 5.1, 0.15};
    std::vector<Sighting> sightings;
    for (double from = 0; from < 400; from += 20)
        sightings.push_back({Outcome::Rooted, from, from + 20,
                             std::round(1e5 * (truth.rootedBy(from + 20) - truth.rootedBy(from)))});
    sightings.push_back({Outcome::Unrooted, 400, 0, std::round(1e5 * (1 - truth.rootedBy(400)))});
    const RootingBelief belief{samplePrior, {sightings, {}}};
    CHECK(belief.share().mean == within(0.8, 5e-3));
    CHECK(belief.mu().mean == within(5.1, 5e-3));
    CHECK(belief.readyTime(0.9, 0.5) == within(truth.timeOf(0.9), 1));
    CHECK(belief.readyTime(0.9, 0.95) > belief.readyTime(0.9, 0.5));
}

TEST_CASE("Bands hold the mean, and forecasts lie between what has rooted and what is left") {
    const std::vector<Sighting> sightings{{Outcome::Rooted, 80, 110, 5}, {Outcome::Unrooted, 110, 0, 79}};
    const RootingBelief belief{samplePrior, {sightings, {}}};
    const Interval band = belief.rootedInterval(200, 0.9);
    const double mean = belief.rootedBy(200).mean;
    CHECK(band.low < mean);
    CHECK(mean < band.high);
    const std::vector<CuttingsLeft> now{{{{110, 84, 5, 84}}, 84}};
    const CountForecast found = belief.forecast(now, 300, 40, 0.9);
    CHECK(found.interval.low < found.expected);
    CHECK(found.expected < found.interval.high);
    CHECK(found.interval.high <= 84);
    CHECK(belief.forecast(now, 300, 20, 0.9).sureness > found.sureness);
    CHECK(belief.forecast(now, 110, 6, 0.9).expected == within(5, 1e-9));
    CHECK(belief.forecast(now, 300, 5, 0.9).sureness == within(1, 1e-6));
}
