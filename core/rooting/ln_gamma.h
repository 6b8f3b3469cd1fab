#pragma once

#include <cmath>

namespace warmbench::rooting {

/// ln of the gamma function of x > 0. std::lgamma writes the sign into a variable that all threads share;
/// POSIX has this for them.
inline double lnGamma(double x) {
    int sign = 0;
    return ::lgamma_r(x, &sign);
}

} // namespace warmbench::rooting
