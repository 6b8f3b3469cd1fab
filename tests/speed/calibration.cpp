// Prints how many of 2,000 simulated batches lie in their 90 % bands, and how long a belief takes.
#include "tests/support/simulated_batches.h"

#include <chrono>
#include <cstdio>

using namespace warmbench::tests;
using namespace warmbench::rooting;

namespace {

double millisecondsSince(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

void printCalibration(const char* who, Deaths deaths) {
    constexpr int batches = 2000;
    const Calibration found = calibration(batches, deaths);
    const auto percent = [&](int held) { return 100.0 * held / found.batches; };
    std::printf("%-28s %d batches: plants by a later day %.1f %%, take %.1f %%", who, found.batches,
                percent(found.countByNext), percent(found.take));
    if (deaths == Deaths::None) std::printf(", share of the law by then %.1f %%", percent(found.shareByNext));
    std::printf("\n");
}

/// Beliefs of the same batches on two grids: how far apart, how long.
void printAccuracy() {
    constexpr int batches = 100;
    constexpr Quadrature longRun{0.3, 8};
    double share = 0;
    double count = 0;
    double ready = 0;
    double shortTime = 0;
    double longTime = 0;
    for (int i = 0; i < batches; ++i) {
        const SimulatedBatch batch = simulatedBatch(static_cast<std::uint64_t>(i) + 1, Deaths::NeverRooters);
        Evidence evidence;
        for (const CuttingsLeft& lot : batch.left) evidence.looks.push_back(lot.looks);
        auto start = std::chrono::steady_clock::now();
        const RootingBelief belief{batch.prior, evidence};
        shortTime += millisecondsSince(start);
        start = std::chrono::steady_clock::now();
        const RootingBelief reference{batch.prior, evidence, longRun};
        longTime += millisecondsSince(start);
        const auto further = [](double& most, double difference) {
            most = std::max(most, std::abs(difference));
        };
        further(share, belief.rootedBy(batch.next).mean - reference.rootedBy(batch.next).mean);
        further(ready, belief.readyTime(0.9, 0.9) / reference.readyTime(0.9, 0.9) - 1);
        further(count, belief.forecast(batch.left, batch.last, 0, 0.9).expected -
                           reference.forecast(batch.left, batch.last, 0, 0.9).expected);
    }
    std::printf(
        "against a long run (step 0.3, radius 8) of %d batches, at most: rooted share %.1e, plants of 160 "
        "%.1e, ready time %.1e of it\n%.2f ms a batch, the long run %.0f ms\n",
        batches, share, count, ready, shortTime / batches, longTime / batches);
}

} // namespace

int main() {
    printCalibration("none die", Deaths::None);
    printCalibration("most die that never root", Deaths::NeverRooters);
    printCalibration("three of ten die by chance", Deaths::Anyone);
    printAccuracy();
    return 0;
}
