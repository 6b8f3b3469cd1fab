#include "core/rooting/proportion.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/beta.hpp>

#include <cmath>

namespace warmbench::rooting {
namespace {

/// The normal quantile that leaves out (1 - level) / 2 above.
double twoSidedQuantile(double level) {
    return -boost::math::quantile(boost::math::normal{}, (1 - level) / 2);
}

double distance(double a, double b) {
    return std::sqrt(a * a + b * b);
}

} // namespace

Interval wilsonInterval(const Take& take, double level) {
    return wilsonInterval(take.share(), static_cast<double>(take.struck), level);
}

Interval wilsonInterval(double share, double struck, double level) {
    const double z = twoSidedQuantile(level);
    const double rooted = share * struck;
    const double middle = rooted + z * z / 2;
    const double half = z * std::sqrt(rooted * (1 - share) + z * z / 4);
    const double scale = struck + z * z;
    return {share <= 0 ? 0 : (middle - half) / scale, share >= 1 ? 1 : (middle + half) / scale};
}

Interval exactInterval(const Take& take, double level) {
    const double outside = (1 - level) / 2;
    const auto rooted = static_cast<double>(take.rooted);
    const auto failed = static_cast<double>(take.struck - take.rooted);
    return {take.rooted == 0 ? 0 : boost::math::ibeta_inv(rooted, failed + 1, outside),
            take.rooted == take.struck ? 1 : boost::math::ibetac_inv(rooted + 1, failed, outside)};
}

Interval differenceInterval(const Take& first, const Take& second, double level) {
    const double one = first.share();
    const double other = second.share();
    const Interval aroundOne = wilsonInterval(first, level);
    const Interval aroundOther = wilsonInterval(second, level);
    return {one - other - distance(one - aroundOne.low, aroundOther.high - other),
            one - other + distance(aroundOne.high - one, other - aroundOther.low)};
}

} // namespace warmbench::rooting
