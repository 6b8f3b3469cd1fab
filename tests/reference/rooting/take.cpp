#include "core/rooting/beta_posterior.h"
#include "core/rooting/strike_count.h"

#include "tests/support/check_table.h"
#include "tests/support/within.h"

using namespace warmbench::rooting;
using namespace warmbench::tests;

namespace {

std::int64_t count(const CheckRow& row, const std::string& column) {
    return static_cast<std::int64_t>(row.number(column));
}

/// Where the source prints a value, compares it at the precision of print.
void checkPublished(const CheckRow& row, const char* column, double found) {
    if (!row.absent(column)) CHECK(found == within(row.number(column), 6e-5));
}

} // namespace

TEST_CASE("C10 Wilson and Clopper-Pearson intervals (Newcombe 1998, Stat Med 17:857, table I; R)") {
    for (const CheckRow& row : checkRowsWithExpected("C10_proportion")) {
        const Take take{count(row, "x"), count(row, "n")};
        const double level = row.number("conf");
        INFO(take.rooted << " of " << take.struck << " at " << level);
        CHECK(take.share() == within(row.number("estimate"), 1e-9));
        const Interval wilson = wilsonInterval(take, level);
        CHECK(wilson.low == within(row.number("wilson_lo"), 1e-9));
        CHECK(wilson.high == within(row.number("wilson_hi"), 1e-9));
        const Interval exact = exactInterval(take, level);
        CHECK(exact.low == within(row.number("cp_lo"), 1e-9));
        CHECK(exact.high == within(row.number("cp_hi"), 1e-9));
        checkPublished(row, "pub_wilson_lo", wilson.low);
        checkPublished(row, "pub_wilson_hi", wilson.high);
        checkPublished(row, "pub_cp_lo", exact.low);
        checkPublished(row, "pub_cp_hi", exact.high);
    }
}

TEST_CASE("C11 interval of a difference (Newcombe 1998, Stat Med 17:873, table II, method 10)") {
    for (const CheckRow& row : checkRowsWithExpected("C11_difference")) {
        const Take first{count(row, "x1"), count(row, "n1")};
        const Take second{count(row, "x2"), count(row, "n2")};
        INFO(first.rooted << " of " << first.struck << " less " << second.rooted << " of " << second.struck);
        const Interval found = differenceInterval(first, second, row.number("conf"));
        CHECK(first.share() - second.share() == within(row.number("diff"), 1e-9));
        CHECK(found.low == within(row.number("newcombe_lo"), 1e-9));
        CHECK(found.high == within(row.number("newcombe_hi"), 1e-9));
        checkPublished(row, "pub_lo", found.low);
        checkPublished(row, "pub_hi", found.high);
    }
}

TEST_CASE("C12 what is believed of a share after a take (R qbeta, pbeta)") {
    for (const CheckRow& row : checkRowsWithExpected("C12_betabin_posterior")) {
        BetaShape share{row.number("a0"), row.number("b0")};
        const std::int64_t struck = count(row, "n");
        if (struck > 0) share = updated(share, {count(row, "r"), struck});
        INFO(share.alpha << ' ' << share.beta);
        const auto expected = [&row](const char* column) { return withinPart(row.number(column), 1e-8); };
        CHECK(share.alpha == expected("a"));
        CHECK(share.beta == expected("b"));
        CHECK(betaMean(share) == expected("mean"));
        CHECK(betaDeviation(share) == expected("sd"));
        CHECK(betaMode(share).has_value() == !row.absent("mode"));
        if (const auto mode = betaMode(share)) CHECK(*mode == expected("mode"));
        CHECK(betaQuantile(share, 0.5) == expected("median"));
        const Interval interval = betaInterval(share, row.number("conf"));
        CHECK(interval.low == expected("eq_lo"));
        CHECK(interval.high == expected("eq_hi"));
        CHECK(betaAbove(share, 0.5) == expected("p_gt_half"));
        CHECK(expectedRooted(share, count(row, "m")) == expected("pred_mean"));
        CHECK(rootedDeviation(share, count(row, "m")) == expected("pred_sd"));
    }
}

TEST_CASE("C13 beta-binomial probabilities and tails (exact sums; VGAM)") {
    for (const CheckRow& row : checkRowsWithExpected("C13_betabin_pmf")) {
        const BetaShape share{row.number("a"), row.number("b")};
        const std::int64_t rooted = count(row, "k");
        const std::int64_t struck = count(row, "m");
        INFO(rooted << " of " << struck << " with " << share.alpha << ' ' << share.beta);
        CHECK(std::exp(betaBinomialLogProbability(rooted, struck, share)) ==
              withinPart(row.number("pmf"), 1e-9));
        CHECK(betaBinomialAtLeast(rooted, struck, share) == within(row.number("p_ge_k"), 1e-10));
    }
}

TEST_CASE("C14 the number to strike (exact sums and bisection in R)") {
    for (const CheckRow& row : checkRowsWithExpected("C14_strike_quantile")) {
        const BetaShape share{row.number("a"), row.number("b")};
        const std::int64_t wanted = count(row, "N");
        INFO(wanted << " wanted with " << share.alpha << ' ' << share.beta);
        const auto found = strikeCount(wanted, row.number("p"), share);
        REQUIRE(found);
        CHECK(found->strike == count(row, "strike_m"));
        CHECK(found->sureness == within(row.number("p_at_m"), 1e-9));
        CHECK(betaBinomialAtLeast(wanted, found->strike - 1, share) ==
              within(row.number("p_at_m_minus_1"), 1e-9));
    }
}

TEST_CASE("Plum root cuttings of Bartlett 1935 (counts published, intervals derived)") {
    struct Cell {
        std::int64_t alive;
        Interval wilson;
        Interval exact;
    };
    const Cell cells[] = {{156, {0.587724, 0.707550}, {0.586006, 0.710236}},
                          {84, {0.292450, 0.412276}, {0.289764, 0.413994}},
                          {107, {0.384293, 0.509080}, {0.381881, 0.511140}},
                          {31, {0.092510, 0.177508}, {0.089477, 0.178307}}};
    for (const Cell& cell : cells) {
        INFO(cell.alive << " of 240");
        const Interval wilson = wilsonInterval({cell.alive, 240}, 0.95);
        CHECK(wilson.low == within(cell.wilson.low, 1e-6));
        CHECK(wilson.high == within(cell.wilson.high, 1e-6));
        const Interval exact = exactInterval({cell.alive, 240}, 0.95);
        CHECK(exact.low == within(cell.exact.low, 1e-6));
        CHECK(exact.high == within(cell.exact.high, 1e-6));
    }
}

TEST_CASE(
    "Acer and Pyrus cuttings by dose of IBA (R package pairwiseCI; counts published, intervals derived)") {
    const std::pair<std::int64_t, Interval> doses[] = {
        {45, {0.180029, 0.299142}}, {100, {0.450457, 0.590392}}, {89, {0.394413, 0.534101}}};
    for (const auto& [rooted, wilson] : doses) {
        INFO(rooted << " of 192");
        CHECK(wilsonInterval({rooted, 192}, 0.95).low == within(wilson.low, 1e-6));
        CHECK(wilsonInterval({rooted, 192}, 0.95).high == within(wilson.high, 1e-6));
    }
}
