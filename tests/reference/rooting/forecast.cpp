#include "core/rooting/forecast.h"
#include "core/rooting/check_round.h"

#include "tests/reference/rooting/intervals.h"

#include <algorithm>
#include <tuple>

using namespace warmbench::rooting;
using namespace warmbench::tests;

namespace {

std::vector<CheckRound> roundsOf(const std::vector<CheckRow>& rows, double until) {
    std::vector<CheckRound> rounds;
    for (const CheckRow& row : rows)
        if (row.number("t") <= until)
            rounds.push_back(
                {row.number("t"), row.number("rooted"), row.number("dead"), row.number("removed")});
    return rounds;
}

/// The sightings of all batches of a set, up to a time.
std::vector<Sighting> sightingsOfSet(const std::vector<CheckRow>& rows, DeathRule rule, double until) {
    std::vector<Sighting> all;
    for (const auto& [batch, checks] : byText(rows, "batch")) {
        const auto found = sightingsOf(checks.front().number("struck"), roundsOf(checks, until), rule);
        all.insert(all.end(), found.begin(), found.end());
    }
    return all;
}

constexpr double always = std::numeric_limits<double>::infinity();

const std::pair<DeathRule, const char*> deathRules[] = {
    {DeathRule::UntilPrevious, "prev"}, {DeathRule::UntilThis, "this"}, {DeathRule::NeverRoots, "cured"}};

std::vector<CheckRow> withRule(const std::vector<CheckRow>& rows, const std::string& set,
                               const std::string& rule) {
    std::vector<CheckRow> found;
    for (const CheckRow& row : rows)
        if (row.text("set") == set && row.text("death_rule") == rule) found.push_back(row);
    return found;
}

/// The figure that a row of C21 asks for, with its standard error where the program gives one.
struct Figure {
    double value = 0;
    std::optional<double> error;
};

Figure figureOf(const RootingFit& fit, const CheckRow& row, double lastCheck) {
    const std::string& quantity = row.text("quantity");
    const double argument = row.number("arg");
    if (quantity == "F_struck_at_t") {
        const Estimate found = rootedBy(fit, argument);
        return {found.value, found.error};
    }
    if (quantity == "t_quantile_among_rooters") {
        const Estimate found = timeOf(fit, argument);
        return {found.value, found.error};
    }
    if (quantity == "t_fraction_of_struck") return {timeOfShare(*fit.law, argument).value_or(always), {}};
    if (quantity.starts_with("cond_root")) return {chanceToRoot(*fit.law, argument, lastCheck), {}};
    REQUIRE(quantity.starts_with("never_root"));
    return {chanceOfNever(*fit.law, argument), {}};
}

} // namespace

TEST_CASE("C21 what fitted laws foresee (delta method, own in R)") {
    const auto given = byText(checkRows("C20_cure_in.csv"), "dataset");
    std::map<std::string, bool> weak;
    for (const CheckRow& row : checkRows("C20_cure_expected.csv"))
        weak[row.text("dataset") + row.text("dist")] = row.text("weakly_identified") == "1";
    for (const auto& [dataset, ofSet] : byText(checkRows("C21_cure_predictions_expected.csv"), "dataset"))
        for (const auto& [dist, rows] : byText(ofSet, "dist")) {
            if (weak.at(dataset + dist)) continue;
            const auto fit = fitRooting(familyFromName(dist).value(), sightingsOf(given.at(dataset)));
            REQUIRE(fit.law);
            // The sixth of the times for which the rooted share is asked ends the conditional chance.
            const double lastCheck = rows.at(5).number("arg");
            REQUIRE(rows.at(5).text("quantity") == "F_struck_at_t");
            for (const CheckRow& row : rows) {
                INFO(dataset << ' ' << dist << ' ' << row.text("quantity") << ' ' << row.text("arg"));
                const Figure found = figureOf(fit, row, lastCheck);
                const double expected = row.number("value");
                if (std::isinf(expected))
                    CHECK(found.value == expected);
                else
                    CHECK(found.value == withinPart(expected, 1e-3));
                if (!row.absent("se")) CHECK(found.error.value() == withinPart(row.number("se"), 1e-2));
            }
        }
}

TEST_CASE("C22 raw root checks as intervals, by three rules for the dead (own)") {
    const auto expected = checkRows("C22_checks_intervals_expected.csv");
    for (const auto& [set, rows] : byText(checkRows("C22_checks_raw_in.csv"), "set"))
        for (const auto& [rule, name] : deathRules) {
            INFO(set << ' ' << name);
            std::vector<Sighting> wanted = merged(sightingsOf(withRule(expected, set, name)));
            CHECK(merged(sightingsOfSet(rows, rule, always)) == wanted);
        }
}

TEST_CASE("C22 fits of raw root checks, by three rules for the dead (own likelihood in R)") {
    const auto raw = byText(checkRows("C22_checks_raw_in.csv"), "set");
    for (const CheckRow& row : checkRows("C22_checks_fit_expected.csv"))
        for (const auto& [rule, name] : deathRules) {
            if (row.text("death_rule") != name) continue;
            INFO(row.text("set") << ' ' << name << ' ' << row.text("dist"));
            checkFit(fitRooting(familyOf(row), sightingsOfSet(raw.at(row.text("set")), rule, always)), row);
        }
}

TEST_CASE("C23 refits check by check, and what they foresee (own, in R; rule: dead at this check)") {
    const auto raw = byText(checkRows("C23_sequential_in.csv"), "set");
    for (const CheckRow& row : checkRows("C23_sequential_expected.csv")) {
        INFO(row.text("set") << " check " << row.text("after_check") << ' ' << row.text("dist"));
        const double now = row.number("t_now");
        const auto sightings = sightingsOfSet(raw.at(row.text("set")), DeathRule::UntilThis, now);
        const auto fit = fitRooting(familyOf(row), sightings);
        const bool strong = !row.absent("weakly_identified") && row.text("weakly_identified") == "0";
        checkFit(fit, row, strong);
        if (!strong) continue;
        const BatchNow batch{now, static_cast<std::int64_t>(row.number("rooted_now")),
                             static_cast<std::int64_t>(row.number("still_unrooted"))};
        const BatchForecast found =
            forecast(*fit.law, batch, row.number("horizon"), static_cast<std::int64_t>(row.number("N")));
        CHECK(found.chance == within(row.number("cond_p_root_by_horizon"), 2e-3));
        const double alive = row.number("still_unrooted");
        CHECK(found.rooted == within(row.number("expected_total_at_horizon"), 2e-3 * alive + 1e-9));
        CHECK(found.sureness == within(row.number("p_total_ge_N"), 2e-3));
    }
}
