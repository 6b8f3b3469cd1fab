#pragma once

#include <cstdint>

namespace warmbench::rooting {

/// A share believed to lie about alpha / (alpha + beta): the two shapes of a beta law, both above 0.
/// As a record of cuttings it weighs as much as alpha rooted and beta not.
struct BetaShape {
    double alpha = 1;
    double beta = 1;
    friend bool operator==(const BetaShape&, const BetaShape&) = default;
};

/// Natural logarithm of P(X = rooted), X of the beta-binomial law: cuttings rooted of `struck` when the
/// share that roots has the law `share`. Minus infinity outside 0 <= rooted <= struck. Within 1e-12 for up
/// to 1e15 cuttings where long double has 64 bits of mantissa.
double betaBinomialLogProbability(std::int64_t rooted, std::int64_t struck, BetaShape share);

/// P(X >= rooted), by exact summation outwards from the likeliest count, in relative terms, of the shorter
/// of the two tails; time grows with min(rooted, struck - rooted).
double betaBinomialAtLeast(std::int64_t rooted, std::int64_t struck, BetaShape share);

} // namespace warmbench::rooting
