#include "core/rooting/ascent.h"

#include "core/rooting/linear_solve.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace warmbench::rooting {
namespace {

/// A Newton step on `n` coordinates, with `damping` added to the curvature's diagonal as a part of it;
/// nothing where the likelihood is not curved downwards even so.
std::optional<std::array<double, 3>> newtonStep(const Ascent& here, std::size_t n, double damping) {
    std::array<double, 9> matrix{};
    for (std::size_t row = 0; row < n; ++row)
        for (std::size_t column = 0; column < n; ++column)
            matrix[row * n + column] = -here.curvature[row * 3 + column];
    for (std::size_t i = 0; i < n; ++i) matrix[i * n + i] += damping * (std::abs(matrix[i * n + i]) + 1e-8);
    std::array<double, 3> step = here.gradient;
    if (!solvePositiveDefinite(std::span{matrix}.first(n * n), std::span{step}.first(n))) return std::nullopt;
    return step;
}

/// The place after a step, which is shortened so that the steepness stays above a fifth of what it was and no
/// coordinate leaps.
Slant stepped(const Slant& from, const std::array<double, 3>& step, bool withOdds) {
    constexpr double farthest = 4;
    double part = 1;
    if (step[1] < -0.8 * from.steepness) part = 0.8 * from.steepness / -step[1];
    if (std::abs(step[2]) * part > farthest && withOdds) part = farthest / std::abs(step[2]);
    Slant to = from;
    to.level += part * step[0];
    to.steepness += part * step[1];
    if (withOdds) to.odds += part * step[2];
    return to;
}

} // namespace

Summit climb(const Likelihood& likelihood, const Slant& start) {
    constexpr int mostSteps = 200;
    constexpr double promisedAtTop = 1e-18;
    constexpr double farOdds = 30; // a share this near to 1 is no longer told from 1
    const bool withOdds = std::isfinite(start.odds);
    const std::size_t n = withOdds ? 3 : 2;
    Summit top{start, 0, false};
    Ascent here = likelihood.at(start);
    top.value = here.value;
    if (!std::isfinite(here.value)) return top;
    double damping = 0;
    for (int count = 0; count < mostSteps; ++count) {
        const auto step = newtonStep(here, n, damping);
        if (!step) {
            damping = std::max(1e-3, 10 * damping);
            if (damping > 1e12) return top;
            continue;
        }
        double promised = 0;
        for (std::size_t i = 0; i < n; ++i) promised += here.gradient[i] * (*step)[i] / 2;
        if (promised <= promisedAtTop * (1 + std::abs(here.value))) {
            top.level = true;
            return top;
        }
        const Slant trial = stepped(top.slant, *step, withOdds);
        const Ascent there = likelihood.at(trial);
        const double rounding = 1e-14 * (1 + std::abs(here.value));
        if (!std::isfinite(there.value) || !(there.value >= here.value - rounding)) {
            damping = std::max(1e-3, 10 * damping);
            if (damping > 1e12) return top;
            continue;
        }
        here = there;
        top.slant = trial;
        top.value = here.value;
        damping = damping > 1e-4 ? damping / 10 : 0;
        if (withOdds && top.slant.odds > farOdds) return top;
    }
    return top;
}

} // namespace warmbench::rooting
