#include "core/rooting/batch_spread.h"
#include "core/rooting/way_comparison.h"

#include "tests/support/check_table.h"
#include "tests/support/within.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

namespace {

Take takeOf(const CheckRow& row) {
    return {static_cast<std::int64_t>(row.number("r")), static_cast<std::int64_t>(row.number("n"))};
}

/// The four cells of a 2 x 2 x 2 table: success is level 1 of A; B and C are 1 at their level 2.
std::vector<TrialTray> cellsOf(const std::vector<CheckRow>& rows, bool interplay) {
    std::vector<TrialTray> cells;
    for (const CheckRow& alive : rows)
        for (const CheckRow& dead : rows) {
            if (alive.text("A") != "1" || dead.text("A") != "2" || alive.text("B") != dead.text("B") ||
                alive.text("C") != dead.text("C"))
                continue;
            const double b = alive.number("B") - 1;
            const double c = alive.number("C") - 1;
            const auto rooted = static_cast<std::int64_t>(alive.number("count"));
            const auto failed = static_cast<std::int64_t>(dead.number("count"));
            cells.push_back({{rooted, rooted + failed}, {1, b, c}});
            if (interplay) cells.back().treatment.push_back(b * c);
        }
    return cells;
}

} // namespace

TEST_CASE(
    "C15 two treatments of cuttings compared (Bartlett 1935, plum root cuttings, as in vcdExtra; R glm)") {
    const auto given = byText(checkRows("C15_table222_in.csv"), "table");
    for (const auto& [table, ofTable] : byText(checkRows("C15_table222_logit_expected.csv"), "table"))
        for (const auto& [model, rows] : byText(ofTable, "model")) {
            INFO(table << ' ' << model);
            const auto found = compareWays(cellsOf(given.at(table), model == "full"));
            REQUIRE(found);
            REQUIRE(found->coefficients.size() == rows.size());
            for (std::size_t i = 0; i < rows.size(); ++i) {
                CHECK(found->coefficients[i] == within(rows[i].number("estimate"), 1e-6));
                CHECK(found->errors[i] == within(rows[i].number("se"), 1e-6));
                CHECK(found->deviance == within(rows[i].number("deviance"), model == "full" ? 1e-8 : 1e-6));
                CHECK(found->logLikelihood == within(rows[i].number("logLik"), 1e-6));
            }
        }
}

TEST_CASE("C16 a 2 x 2 factorial over 21 plates (Crowder 1978; printed by Breslow and Clayton 1993)") {
    std::vector<TrialTray> plates;
    for (const CheckRow& row : checkRows("C16_seeds_logistic_in.csv")) {
        const double x1 = row.number("x1");
        const double x2 = row.number("x2");
        plates.push_back({takeOf(row), {1, x1, x2, x1 * x2}});
    }
    const auto found = compareWays(plates);
    REQUIRE(found);
    const auto rows = checkRows("C16_seeds_logistic_expected.csv");
    REQUIRE(rows.size() == 4);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        INFO(rows[i].text("term"));
        CHECK(found->coefficients[i] == within(rows[i].number("estimate"), 1e-6));
        CHECK(found->errors[i] == within(rows[i].number("se"), 1e-6));
        CHECK(found->errors[i] * std::sqrt(found->dispersion()) == within(rows[i].number("quasi_se"), 1e-6));
        CHECK(found->coefficients[i] == within(rows[i].number("published_estimate"), 5.1e-4));
        CHECK(found->errors[i] == within(rows[i].number("published_se"), 5.1e-4));
        CHECK(found->deviance == within(rows[i].number("deviance"), 1e-6));
        CHECK(found->pearson == within(rows[i].number("pearson_x2"), 1e-6));
        CHECK(found->freedom == static_cast<int>(rows[i].number("df")));
        CHECK(found->logLikelihood == within(rows[i].number("logLik"), 1e-6));
    }
}

TEST_CASE("C17 shares that vary from tray to tray (own likelihood in R; VGAM)") {
    const auto given = byText(checkRows("C17_betabin_ml_in.csv"), "id");
    for (const CheckRow& row : checkRows("C17_betabin_ml_expected.csv")) {
        INFO(row.text("id"));
        std::vector<Take> trays;
        for (const CheckRow& tray : given.at(row.text("id"))) trays.push_back(takeOf(tray));
        const BatchSpread found = batchSpread(trays);
        REQUIRE(found.spread);
        CHECK(found.share.alpha == withinPart(row.number("a"), 1e-4));
        CHECK(found.share.beta == withinPart(row.number("b"), 1e-4));
        CHECK(found.error.alpha == withinPart(row.number("se_a"), 1e-2));
        CHECK(found.error.beta == withinPart(row.number("se_b"), 1e-2));
        CHECK(found.mean == withinPart(row.number("mean"), 1e-4));
        CHECK(found.correlation == withinPart(row.number("rho"), 1e-4));
        CHECK(found.logLikelihood == within(row.number("logLik"), 1e-6));
        CHECK(found.binomialLogLikelihood == within(row.number("logLik_binomial"), 1e-6));
    }
}

namespace {

/// Acer and Pyrus cuttings by age, position and dose of IBA, four plots of 12 of each (R package pairwiseCI).
struct Plot {
    bool old;
    bool top;
    double dose;
    Take take;
};

std::vector<Plot> plots() {
    std::vector<Plot> found;
    for (const CheckRow& row : checkRows("rooting_iba.csv"))
        found.push_back({row.text("age") == "20",
                         row.text("position") == "T",
                         row.number("iba"),
                         {static_cast<std::int64_t>(row.number("rooted")),
                          static_cast<std::int64_t>(row.number("rooted") + row.number("unrooted"))}});
    return found;
}

} // namespace

TEST_CASE("Cuttings by age, position and dose of IBA vary more than by chance (counts published, answers "
          "derived)") {
    std::vector<TrialTray> trays;
    std::map<double, std::vector<Take>> byDose;
    for (const Plot& plot : plots()) {
        trays.push_back({plot.take,
                         {1, plot.old ? 1.0 : 0.0, plot.top ? 1.0 : 0.0, plot.dose == 0.5 ? 1.0 : 0.0,
                          plot.dose == 2 ? 1.0 : 0.0}});
        byDose[plot.dose].push_back(plot.take);
    }
    REQUIRE(trays.size() == 48);
    const auto found = compareWays(trays);
    REQUIRE(found);
    const double coefficients[] = {-0.487360, -0.774065, -0.774065, 1.350887, 1.104690};
    for (std::size_t i = 0; i < 5; ++i) CHECK(found->coefficients[i] == within(coefficients[i], 1e-6));
    CHECK(found->deviance == within(166.0945, 5e-5));
    CHECK(found->freedom == 43);
    CHECK(found->dispersion() == within(3.3617, 5e-5));

    const std::map<double, std::array<double, 3>> shapes{
        {0, {0.8923, 2.8849, 0.2093}}, {0.5, {1.4543, 1.4332, 0.2572}}, {2, {1.2891, 1.5390, 0.2612}}};
    for (const auto& [dose, expected] : shapes) {
        INFO("dose " << dose);
        const BatchSpread spread = batchSpread(byDose.at(dose));
        CHECK(spread.share.alpha == within(expected[0], 2e-4));
        CHECK(spread.share.beta == within(expected[1], 2e-4));
        CHECK(spread.correlation == within(expected[2], 1e-4));
    }
}
