#include "ui/theme/contrast.h"

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

} // namespace

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double ofA = luminance(a) + 0.05;
    const double ofB = luminance(b) + 0.05;
    return std::max(ofA, ofB) / std::min(ofA, ofB);
}

} // namespace warmbench::ui
