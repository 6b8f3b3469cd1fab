#include "core/rooting/look.h"

#include "core/rooting/belief.h"
#include "tests/core/rooting/sample_prior.h"
#include "tests/support/simulated_batches.h"
#include "tests/support/within.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

namespace {

void checkSame(const RootingBelief& one, const RootingBelief& other, double share) {
    CHECK(one.share().mean == within(other.share().mean, share));
    CHECK(one.share().deviation == within(other.share().deviation, share));
    CHECK(one.mu().mean == within(other.mu().mean, share));
    CHECK(one.logSigma().deviation == within(other.logSigma().deviation, share));
}

RootingBelief beliefOf(const LookSeries& looks) {
    return RootingBelief{samplePrior, {{}, {looks}}};
}

} // namespace

TEST_CASE("Checks of all cuttings again and again tell what intervals tell") {
    const RootingBelief looks = beliefOf({{120, 80, 6, 80}, {160, 80, 31, 80}, {220, 80, 55, 80}});
    const RootingBelief intervals{samplePrior,
                                  {{{Outcome::Rooted, 0, 120, 6},
                                    {Outcome::Rooted, 120, 160, 25},
                                    {Outcome::Rooted, 160, 220, 24},
                                    {Outcome::Unrooted, 220, 0, 25}},
                                   {}}};
    checkSame(looks, intervals, 1e-4);
}

TEST_CASE("A cutting that died without roots tells what one alive at the check before tells") {
    const Look second = lookOf(220, 80, 80, 5, 40);
    CHECK(second.examined == 75);
    CHECK(second.standing == 75);
    const RootingBelief looks = beliefOf({{160, 80, 31, 80}, second});
    const RootingBelief intervals{samplePrior,
                                  {{{Outcome::Rooted, 0, 160, 31},
                                    {Outcome::Unrooted, 160, 0, 5},
                                    {Outcome::Rooted, 160, 220, 9},
                                    {Outcome::Unrooted, 220, 0, 35}},
                                   {}}};
    checkSame(looks, intervals, 5e-3);
}

TEST_CASE("Small samples out of many cuttings are as good as fresh ones") {
    const LookSeries out_of_many{{160, 10, 4, 1e7}, {220, 12, 8, 1e7}};
    const std::vector<LookTerm> terms = lookTerms(out_of_many);
    const double rootedBy[] = {0.3, 0.6};
    CHECK(terms[1].chance(1, rootedBy) == within(0.6, 1e-5));
    // Binomial: 8 of 12, but for its coefficient.
    const double ratio = terms[1].logLikelihood(0.6) - terms[1].logLikelihood(0.5);
    CHECK(ratio == within(8 * std::log(0.6 / 0.5) + 4 * std::log(0.4 / 0.5), 1e-4));
}

TEST_CASE("The same sample of a few cuttings looked at again tells less than another one") {
    const RootingBelief again = beliefOf({{160, 20, 8, 20}, {161, 20, 8, 20}});
    const RootingBelief others = beliefOf({{160, 20, 8, 400}, {161, 20, 8, 400}});
    CHECK(again.share().deviation > others.share().deviation);
    CHECK(again.rootedBy(160).deviation > 1.2 * others.rootedBy(160).deviation);
}

TEST_CASE("Roots that vanish leave a belief that is finite and between both checks") {
    const RootingBelief belief = beliefOf({{160, 20, 12, 20}, {200, 20, 7, 20}});
    CHECK(std::isfinite(belief.logEvidence()));
    const double rooted = belief.rootedBy(200).mean;
    CHECK(rooted > 0.3);
    CHECK(rooted < 0.8);
}

TEST_CASE("Containers looked at alike are taken together, others not") {
    const std::vector<CuttingsLeft> lots{
        {{{160, 10, 4, 40}}, 40}, {{{160, 8, 2, 38}}, 38}, {{{160, 40, 20, 40}}, 40}, {{}, 40}, {{}, 40}};
    const std::vector<CuttingsLeft> found = pooled(lots);
    REQUIRE(found.size() == 3);
    CHECK(found[0].alive == 80);
    CHECK(found[0].looks.empty());
    CHECK(found[1].looks[0].examined == 18);
    CHECK(found[1].looks[0].rooted == 6);
    CHECK(found[1].looks[0].standing == 78);
    CHECK(found[2].looks[0].examined == 40);
}

TEST_CASE("Bands of nine in ten hold about nine of ten simulated batches and their take") {
    constexpr int batches = 120;
    for (const Deaths deaths : {Deaths::None, Deaths::NeverRooters}) {
        const Calibration found = calibration(batches, deaths);
        // Two in a hundred thousand seeds would leave these limits if 88 % were held.
        CHECK(found.countByNext >= 0.75 * batches);
        CHECK(found.countByNext <= 0.98 * batches);
        CHECK(found.take >= 0.75 * batches);
        CHECK(found.take <= 0.98 * batches);
    }
}

TEST_CASE("The grid's figures are those of a much finer one") {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const SimulatedBatch batch = simulatedBatch(seed, Deaths::NeverRooters);
        Evidence evidence;
        for (const CuttingsLeft& lot : batch.left) evidence.looks.push_back(lot.looks);
        const RootingBelief belief{batch.prior, evidence};
        const RootingBelief fine{batch.prior, evidence, {0.35, 7.5}};
        INFO("batch " << seed);
        CHECK(belief.rootedBy(batch.next).mean == within(fine.rootedBy(batch.next).mean, 1e-3));
        CHECK(belief.rootedBy(batch.next).deviation == within(fine.rootedBy(batch.next).deviation, 2e-3));
        CHECK(belief.readyTime(0.9, 0.5) == withinPart(fine.readyTime(0.9, 0.5), 0.05));
        CHECK(belief.forecast(batch.left, batch.last, 0, 0.9).expected ==
              within(fine.forecast(batch.left, batch.last, 0, 0.9).expected, 0.3));
    }
}
