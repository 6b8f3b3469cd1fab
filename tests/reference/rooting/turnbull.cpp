#include "core/rooting/turnbull.h"

#include "tests/reference/rooting/intervals.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

TEST_CASE("C18 Turnbull's estimate (R npsurv; Finkelstein and Wolfe 1985, Biometrics 41:933)") {
    const auto given = byText(checkRows("C18_turnbull_in.csv"), "dataset");
    const auto masses = byText(checkRows("C18_turnbull_expected.csv"), "dataset");
    for (const CheckRow& summary : checkRows("C18_turnbull_summary_expected.csv")) {
        const std::string& dataset = summary.text("dataset");
        INFO(dataset);
        const TurnbullEstimate found = turnbull(sightingsOf(given.at(dataset)));
        CHECK(found.logLikelihood == within(summary.number("logLik"), 1e-6));
        const auto& expected = masses.at(dataset);
        REQUIRE(found.masses.size() == expected.size());
        REQUIRE(static_cast<double>(found.masses.size()) == summary.number("n_support"));
        for (std::size_t i = 0; i < expected.size(); ++i) {
            CHECK(found.masses[i].from == expected[i].number("left"));
            CHECK(found.masses[i].to == expected[i].number("right"));
            CHECK(found.masses[i].mass == within(expected[i].number("mass"), 1e-7));
        }
    }
}

TEST_CASE("Turnbull's estimate of the radiotherapy arm as R's package interval prints it (published)") {
    const auto given = byText(checkRows("C18_turnbull_in.csv"), "dataset");
    const TurnbullEstimate found = turnbull(sightingsOf(given.at("bcos_rad")));
    CHECK(found.masses.front().to == 5);
    CHECK(found.masses.front().mass == within(0.0463, 5e-5));
}
