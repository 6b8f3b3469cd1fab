#include "core/climate/excursion.h"

#include <algorithm>

namespace warmbench::climate {
namespace {

/// Below, inside or above.
int sideOf(double celsius, double low, double high) {
    return celsius < low ? -1 : celsius > high ? 1 : 0;
}

} // namespace

std::vector<Excursion> excursions(std::span<const Reading> readings, double low, double high,
                                  double leastHours) {
    std::vector<Excursion> found;
    for (std::size_t i = 0; i < readings.size();) {
        const int side = sideOf(readings[i].celsius, low, high);
        if (side == 0) {
            ++i;
            continue;
        }
        Excursion one{readings[i].hour, readings[i].hour, readings[i].celsius, side < 0};
        std::size_t next = i + 1;
        for (; next < readings.size(); ++next) {
            if (readings[next].hour - readings[next - 1].hour > longestStep) break;
            one.to = readings[next].hour;
            if (sideOf(readings[next].celsius, low, high) != side) break;
            one.extreme = side < 0 ? std::min(one.extreme, readings[next].celsius)
                                   : std::max(one.extreme, readings[next].celsius);
        }
        if (one.hours() >= leastHours) found.push_back(one);
        i = next;
    }
    return found;
}

} // namespace warmbench::climate
