#include "tests/reference/rooting/intervals.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

TEST_CASE("C19 times of rooting where all root (R survival::survreg, interval2)") {
    const auto given = byText(checkRows("C19_parametric_in.csv"), "dataset");
    for (const CheckRow& row : checkRows("C19_parametric_expected.csv")) {
        INFO(row.text("dataset") << ' ' << row.text("dist"));
        const auto fit = fitRooting(familyOf(row), sightingsOf(given.at(row.text("dataset"))), true);
        CHECK(fit.status == FitStatus::AllRoot);
        CHECK(fit.logLikelihood == within(row.number("logLik"), 1e-6));
        REQUIRE(fit.law);
        CHECK(fit.law->mu == withinPart(row.number("mu"), 1e-5));
        CHECK(fit.law->sigma == withinPart(row.number("sigma"), 1e-5));
        CHECK(fit.muError().value() == withinPart(row.number("se_mu"), 1e-3));
        CHECK(fit.sigmaError().value() / fit.law->sigma == withinPart(row.number("se_logsigma"), 1e-3));
        CHECK(fit.law->timeOf(0.5) == withinPart(row.number("median"), 1e-5));
        CHECK(fit.law->timeOf(0.1) == withinPart(row.number("q10"), 1e-5));
        CHECK(fit.law->timeOf(0.9) == withinPart(row.number("q90"), 1e-5));
        CHECK(fit.logLikelihood == within(row.number("survreg_logLik"), 1e-6));
    }
}

TEST_CASE("C20 a share that never roots, three laws, 14 data sets (own likelihood in R; Ritz et al. 2013)") {
    const auto given = byText(checkRows("C20_cure_in.csv"), "dataset");
    for (const CheckRow& row : checkRows("C20_cure_expected.csv")) {
        INFO(row.text("dataset") << ' ' << row.text("dist"));
        const auto sightings = sightingsOf(given.at(row.text("dataset")));
        checkFit(fitRooting(familyOf(row), sightings), row, row.text("weakly_identified") != "1");
        CHECK(fitRooting(familyOf(row), sightings, true).logLikelihood ==
              within(row.number("logLik_nocure"), 1e-5));
    }
}

TEST_CASE("C25 germination of chickweed (R package drc, event times)") {
    const auto given = byText(checkRows("C25_germination_in.csv"), "dataset");
    const auto expected = checkRows("C25_germination_expected.csv");
    const CheckRow& row = expected.front();
    REQUIRE(row.text("method") == "event");
    const auto fit = fitRooting(Family::LogLogistic, sightingsOf(given.at("chickweed")));
    REQUIRE(fit.law);
    CHECK(-1 / fit.law->sigma == withinPart(row.number("b"), 1e-4));
    CHECK(fit.law->share == withinPart(row.number("d"), 1e-4));
    CHECK(std::exp(fit.law->mu) == withinPart(row.number("e"), 1e-4));
    CHECK(fit.sigmaError().value() / (fit.law->sigma * fit.law->sigma) ==
          withinPart(row.number("se_b"), 5e-3));
    CHECK(fit.shareError().value() == withinPart(row.number("se_d"), 5e-3));
    CHECK(fit.muError().value() * std::exp(fit.law->mu) == withinPart(row.number("se_e"), 5e-3));
    CHECK(fit.law->timeOf(0.1) == withinPart(row.number("t10"), 1e-4));
    CHECK(fit.law->timeOf(0.9) == withinPart(row.number("t90"), 1e-4));
    // As drc prints them.
    CHECK(-1 / fit.law->sigma == within(row.number("pub_b"), 5e-4));
    CHECK(std::exp(fit.law->mu) == within(row.number("pub_e"), 5e-4));
    CHECK(fit.logLikelihood == within(-188.1719, 5e-5));
}

TEST_CASE("C26 base temperature by the likelihood of pooled benches (own, in R; wheat of Ritz et al. 2013)") {
    const auto given = byText(checkRows("C26_base_temp_in.csv"), "dataset");
    for (const CheckRow& row : checkRows("C26_base_temp_expected.csv")) {
        const double base = row.number("base_c");
        INFO(row.text("dataset") << ' ' << row.text("dist") << " base " << base);
        std::vector<Sighting> sightings;
        for (const CheckRow& days : given.at(row.text("dataset"))) {
            Sighting sighting = sightingOf(days);
            sighting.from *= days.number("temp") - base;
            sighting.to *= days.number("temp") - base;
            sightings.push_back(sighting);
        }
        const auto fit = fitRooting(familyOf(row), sightings);
        CHECK(fit.logLikelihood == within(row.number("logLik"), 1e-4));
        CHECK(statusName(fit.status) == statusName(statusOf(row)));
    }
}

TEST_CASE("C27 samples lifted once (own, in R)") {
    const auto given = byText(checkRows("C27_current_status_in.csv"), "dataset");
    for (const CheckRow& row : checkRows("C27_current_status_expected.csv")) {
        INFO(row.text("dataset") << ' ' << row.text("dist"));
        std::vector<Sighting> sightings;
        for (const CheckRow& sample : given.at(row.text("dataset"))) {
            const double time = sample.number("t");
            const double rooted = sample.number("r");
            sightings.push_back({Outcome::Rooted, 0, time, rooted});
            sightings.push_back({Outcome::Unrooted, time, 0, sample.number("n") - rooted});
        }
        checkFit(fitRooting(familyOf(row), sightings), row);
    }
}

TEST_CASE("C28 data without a unique answer are said to have none (own, in R)") {
    const auto given = byText(checkRows("C28_degenerate_in.csv"), "dataset");
    for (const CheckRow& row : checkRows("C28_degenerate_expected.csv"))
        for (const Family family : families) {
            INFO(row.text("dataset") << ' ' << familyName(family));
            const auto fit = fitRooting(family, sightingsOf(given.at(row.text("dataset"))));
            CHECK(fit.status == FitStatus::NoUniqueAnswer);
            CHECK_FALSE(fit.law);
            CHECK_FALSE(fit.muError());
            CHECK(fit.logLikelihood == within(row.number("logLik_sup"), 1e-9));
        }
}
