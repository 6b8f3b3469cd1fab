#include "tests/ui/colour_vision.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace warmbench::ui {
namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<double, 9>;

constexpr Matrix protan{0.11238, 0.88762, 0, 0.11238, 0.88762, 0, 0.00401, -0.00401, 1};
constexpr Matrix deutan{0.29275, 0.70725, 0, 0.29275, 0.70725, 0, -0.02234, 0.02234, 1};
constexpr Matrix tritanOneSide{1.01277, 0.13548, -0.14826, -0.01243, 0.86812,
                               0.14431, 0.07589, 0.80500,  0.11911};
constexpr Matrix tritanOther{0.93678, 0.18979,  -0.12657, 0.06154, 0.81526,
                             0.12320, -0.37562, 1.12767,  0.24796};
constexpr Triple tritanPlane{0.03901, -0.02788, -0.01113};

double toLinear(double c) {
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double fromLinear(double c) {
    const double held = std::clamp(c, 0.0, 1.0);
    return held <= 0.0031308 ? held * 12.92 : 1.055 * std::pow(held, 1 / 2.4) - 0.055;
}

Triple times(const Matrix& m, const Triple& v) {
    return {m[0] * v[0] + m[1] * v[1] + m[2] * v[2], m[3] * v[0] + m[4] * v[1] + m[5] * v[2],
            m[6] * v[0] + m[7] * v[1] + m[8] * v[2]};
}

Triple linearOf(const QColor& colour) {
    return {toLinear(colour.redF()), toLinear(colour.greenF()), toLinear(colour.blueF())};
}

double lightnessPart(double t) {
    return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}

Triple lab(const QColor& colour) {
    constexpr Matrix toXyz{0.4124, 0.3576, 0.1805, 0.2126, 0.7152, 0.0722, 0.0193, 0.1192, 0.9505};
    const Triple xyz = times(toXyz, linearOf(colour));
    const double x = lightnessPart(xyz[0] / 0.9505);
    const double y = lightnessPart(xyz[1]);
    const double z = lightnessPart(xyz[2] / 1.089);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

} // namespace

QColor seenBy(Vision vision, const QColor& colour) {
    const Triple light = linearOf(colour);
    Triple seen = light;
    if (vision == Vision::Protan) seen = times(protan, light);
    if (vision == Vision::Deutan) seen = times(deutan, light);
    if (vision == Vision::Tritan) {
        const double side = tritanPlane[0] * light[0] + tritanPlane[1] * light[1] + tritanPlane[2] * light[2];
        seen = times(side >= 0 ? tritanOneSide : tritanOther, light);
    }
    return QColor::fromRgbF(static_cast<float>(fromLinear(seen[0])), static_cast<float>(fromLinear(seen[1])),
                            static_cast<float>(fromLinear(seen[2])));
}

double labDistance(const QColor& a, const QColor& b) {
    const Triple first = lab(a);
    const Triple second = lab(b);
    return std::hypot(first[0] - second[0], first[1] - second[1], first[2] - second[2]);
}

} // namespace warmbench::ui
