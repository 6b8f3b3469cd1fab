#include "tests/support/simulated_batches.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

namespace warmbench::tests {
namespace {

using namespace rooting;
using Random = std::mt19937_64;
constexpr double never = std::numeric_limits<double>::infinity();

struct Fate {
    double roots = never;
    double dies = never;

    [[nodiscard]] bool dead(double time) const { return dies <= time; }
    [[nodiscard]] bool rooted(double time) const { return roots <= time && !dead(time); }
};

double uniform(Random& random, double low = 0, double high = 1) {
    return std::uniform_real_distribution(low, high)(random);
}

double drawnShare(Random& random, BetaShape shape) {
    const double a = std::gamma_distribution(shape.alpha)(random);
    const double b = std::gamma_distribution(shape.beta)(random);
    return a / (a + b);
}

Fate drawnFate(Random& random, const RootingLaw& law, double typical, Deaths deaths) {
    Fate fate;
    if (uniform(random) < law.share) fate.roots = law.timeOf(uniform(random, 1e-9, 1 - 1e-9));
    const double dies = uniform(random, 0.1 * typical, 1.5 * typical);
    switch (deaths) {
    case Deaths::None:
        break;
    case Deaths::NeverRooters:
        if (uniform(random) < (fate.roots < never ? 0.03 : 0.7)) fate.dies = dies;
        break;
    case Deaths::Anyone:
        if (uniform(random) < 0.3 && dies < fate.roots) fate.dies = dies;
        break;
    }
    return fate;
}

/// Examines `count` of the cuttings, picked at random.
Look looked(Random& random, std::vector<Fate>& cuttings, std::size_t count, double time) {
    std::shuffle(cuttings.begin(), cuttings.end(), random);
    double dead = 0;
    double rooted = 0;
    for (std::size_t i = 0; i < count; ++i) {
        dead += cuttings[i].dead(time);
        rooted += cuttings[i].rooted(time);
    }
    return lookOf(time, static_cast<double>(cuttings.size()), static_cast<double>(count), dead, rooted);
}

} // namespace

SimulatedBatch simulatedBatch(std::uint64_t seed, Deaths deaths) {
    constexpr std::size_t containers = 4;
    constexpr std::size_t each = 40;
    Random random(seed);
    SimulatedBatch batch;
    batch.prior = {Family::LogLogistic, {8, 3}, std::log(320.0), 0.25, -1.7, 0.35};
    const auto normal = [&](double mean, double deviation) {
        return std::normal_distribution(mean, deviation)(random);
    };
    const RootingPrior prior = batch.prior;
    batch.law = {prior.family, drawnShare(random, prior.share), normal(prior.mu, prior.muDeviation),
                 std::exp(normal(prior.logSigma, prior.logSigmaDeviation))};
    const double typical = std::exp(prior.mu);
    std::vector<std::vector<Fate>> boxes(containers);
    for (auto& box : boxes)
        for (std::size_t i = 0; i < each; ++i) box.push_back(drawnFate(random, batch.law, typical, deaths));
    batch.struck = containers * each;
    const bool whole = uniform(random) < 0.2;
    const int rounds = 1 + static_cast<int>(uniform(random, 0, 7));
    std::vector<CuttingsLeft> lots(containers);
    for (CuttingsLeft& lot : lots) lot.alive = each;
    for (int round = 0; round < rounds; ++round) {
        batch.now = typical * (0.5 + 0.15 * round);
        for (std::size_t box = 0; box < containers; ++box) {
            if (!whole && uniform(random) > 0.85) continue;
            const auto sample = static_cast<std::size_t>(6 + 2 * std::floor(uniform(random, 0, 4)));
            lots[box].looks.push_back(looked(random, boxes[box], whole ? each : sample, batch.now));
            lots[box].alive = lots[box].looks.back().standing;
        }
    }
    // A container that was not looked at has as many alive as the others.
    double seenAlive = 0;
    double seen = 0;
    for (const CuttingsLeft& lot : lots)
        if (!lot.looks.empty()) {
            seenAlive += lot.alive;
            seen += each;
        }
    for (CuttingsLeft& lot : lots)
        if (lot.looks.empty() && seen > 0) lot.alive = each * seenAlive / seen;
    if (seen > 0) batch.prior.share = amongAlive(batch.prior.share, 1 - seenAlive / seen);
    batch.left = pooled(lots);
    batch.next = 1.5 * batch.now;
    batch.last = 20 * typical;
    for (const auto& box : boxes)
        for (const Fate& fate : box) {
            batch.rootedByNext += fate.rooted(batch.next);
            batch.rootedByLast += fate.rooted(batch.last);
        }
    return batch;
}

Calibration calibration(int batches, Deaths deaths) {
    constexpr double level = 0.9;
    const auto holds = [](const Interval& interval, double value) {
        return value >= interval.low && value <= interval.high;
    };
    Calibration sum;
    for (int i = 0; i < batches; ++i) {
        const SimulatedBatch batch = simulatedBatch(static_cast<std::uint64_t>(i) + 1, deaths);
        Evidence evidence;
        for (const CuttingsLeft& lot : batch.left) evidence.looks.push_back(lot.looks);
        const RootingBelief belief{batch.prior, evidence};
        ++sum.batches;
        sum.shareByNext += holds(belief.rootedInterval(batch.next, level), batch.law.rootedBy(batch.next));
        sum.countByNext +=
            holds(belief.forecast(batch.left, batch.next, 0, level).interval, batch.rootedByNext);
        sum.take += holds(belief.forecast(batch.left, batch.last, 0, level).interval, batch.rootedByLast);
    }
    return sum;
}

} // namespace warmbench::tests
