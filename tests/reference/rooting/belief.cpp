#include "core/rooting/belief.h"

#include "tests/reference/rooting/intervals.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

TEST_CASE("C24 what is believed of a batch after its checks (grid in R, confirmed by Monte Carlo)") {
    const auto given = byText(checkRows("C24_bayes_in.csv"), "set");
    const auto curves = byText(checkRows("C24_bayes_curve_expected.csv"), "set");
    const auto expected = checkRows("C24_bayes_expected.csv");
    for (const CheckRow& row : expected) {
        const std::string& set = row.text("set");
        INFO(set << ' ' << row.text("dist"));
        const RootingPrior prior{familyFromName(row.text("dist")).value(),
                                 {row.number("a"), row.number("b")},
                                 row.number("m0"),
                                 row.number("s0"),
                                 row.number("l0"),
                                 row.number("t0")};
        const RootingBelief belief{prior, {sightingsOf(given.at(set)), {}}};
        CHECK(belief.share().mean == within(row.number("mean_pi"), 1e-3));
        CHECK(belief.share().deviation == within(row.number("sd_pi"), 1e-3));
        CHECK(belief.mu().mean == within(row.number("mean_mu"), 2e-3));
        CHECK(belief.mu().deviation == within(row.number("sd_mu"), 2e-3));
        CHECK(belief.logSigma().mean == within(row.number("mean_logsigma"), 2e-3));
        CHECK(belief.logSigma().deviation == within(row.number("sd_logsigma"), 2e-3));
        CHECK(belief.logEvidence() == within(row.number("log_evidence"), 2e-3));
        for (const CheckRow& point : curves.at(set)) {
            if (point.text("dist") != row.text("dist")) continue;
            const Moments found = belief.rootedBy(point.number("t"));
            INFO("at " << point.text("t"));
            CHECK(found.mean == within(point.number("F_post_mean"), 1e-3));
            CHECK(found.deviation == within(point.number("F_post_sd"), 1e-3));
        }
    }
}
