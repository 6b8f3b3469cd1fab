#pragma once

#include <cstdint>

namespace warmbench::rooting {

/// `rooted` cuttings of `struck`, 0 <= rooted <= struck and struck > 0.
struct Take {
    std::int64_t rooted = 0;
    std::int64_t struck = 1;

    [[nodiscard]] double share() const { return static_cast<double>(rooted) / static_cast<double>(struck); }
};

struct Interval {
    double low = 0;
    double high = 0;
};

/// Wilson's score interval for the share that roots, without continuity correction (Wilson 1927; method 3 of
/// Newcombe 1998, Statistics in Medicine 17:857-872). `level` is between 0 and 1.
Interval wilsonInterval(const Take& take, double level);
/// The same of a share among `struck` (above 0) cuttings that need not be whole.
Interval wilsonInterval(double share, double struck, double level);

/// Clopper and Pearson's exact interval (1934), of equal tails (method 5 there).
Interval exactInterval(const Take& take, double level);

/// Interval for the first share less the second: Newcombe's hybrid score interval (method 10 of Newcombe
/// 1998, Statistics in Medicine 17:873-890).
Interval differenceInterval(const Take& first, const Take& second, double level);

} // namespace warmbench::rooting
