#include "core/planner/bound/cost_step.h"

#include <numeric>

namespace warmbench::planner {

std::int64_t costStep(const Problem& problem) {
    // Divisors in hundredths, but for what a degree off ideal costs: that counts by tenths of a degree.
    std::int64_t hundredths = problem.scatterCost;
    std::int64_t thousandths = 0;
    for (const Zone& zone : problem.zones)
        for (const SetPoint& point : zone.setPoints) hundredths = std::gcd(hundredths, point.costPerDay);
    for (const Batch& batch : problem.batches) {
        for (const std::int64_t cost : {batch.value, batch.latePerDay, batch.moveCost})
            hundredths = std::gcd(hundredths, cost);
        if (batch.previous) hundredths = std::gcd(hundredths, problem.changeCost);
        for (const StayRule& stay : batch.stays) thousandths = std::gcd(thousandths, stay.offIdeal);
    }
    return std::gcd(thousandths, 10 * hundredths);
}

std::int64_t roundedUp(std::int64_t bound, std::int64_t step) {
    if (step <= 1 || bound <= 0) return bound;
    return (bound + step - 1) / step * step;
}

} // namespace warmbench::planner
