#pragma once

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

namespace warmbench::tests {

/// Compares equal to what differs from `expected` by at most `difference`.
inline Approx within(double expected, double difference) {
    return Approx(expected).margin(difference).epsilon(0);
}

/// Compares equal to what differs from `expected` by at most that part of it (of 1e-12 where it is smaller).
inline Approx withinPart(double expected, double part) {
    return within(expected, part * std::max(1e-12, std::abs(expected)));
}

} // namespace warmbench::tests
