#include "core/climate/vapour.h"

#include <cmath>

namespace warmbench::climate {
namespace {

constexpr double steepness = 17.27;
constexpr double offset = 237.3;
constexpr double atFreezing = 0.6108;

} // namespace

double saturationPressure(double celsius) {
    return atFreezing * std::exp(steepness * celsius / (celsius + offset));
}

double saturationSlope(double celsius) {
    // The paper prints 4098 for 17.27 * 237.3 = 4098.171.
    const double distance = celsius + offset;
    return 4098 * saturationPressure(celsius) / (distance * distance);
}

double meanSaturationPressure(double highest, double lowest) {
    return (saturationPressure(highest) + saturationPressure(lowest)) / 2;
}

double pressureFromDewPoint(double dewPoint) {
    return saturationPressure(dewPoint);
}

double pressureFromHumidity(double celsius, double humidity) {
    return saturationPressure(celsius) * humidity / 100;
}

double pressureFromHumidities(double highest, double lowest, double highestHumidity, double lowestHumidity) {
    return (pressureFromHumidity(lowest, highestHumidity) + pressureFromHumidity(highest, lowestHumidity)) /
           2;
}

double pressureFromMeanHumidity(double highest, double lowest, double meanHumidity) {
    return meanSaturationPressure(highest, lowest) * meanHumidity / 100;
}

std::optional<double> dewPoint(double pressure) {
    if (!(pressure > 0)) return std::nullopt;
    const double exponent = std::log(pressure / atFreezing);
    return offset * exponent / (steepness - exponent);
}

double atmosphericPressure(double altitude) {
    return 101.3 * std::pow((293 - 0.0065 * altitude) / 293, 5.26);
}

double psychrometricConstant(double atmospheric) {
    return 0.665e-3 * atmospheric;
}

double psychrometerCoefficient(Ventilation ventilation) {
    switch (ventilation) {
    case Ventilation::Forced:
        return 0.000662;
    case Ventilation::Natural:
        return 0.000800;
    case Ventilation::Indoor:
        return 0.001200;
    }
    return 0.000662;
}

double pressureFromPsychrometer(double dry, double wet, Ventilation ventilation, double atmospheric) {
    return saturationPressure(wet) - psychrometerCoefficient(ventilation) * atmospheric * (dry - wet);
}

double deficit(double saturation, double actual) {
    return saturation - actual;
}

double leafDeficit(double leaf, double actual) {
    return saturationPressure(leaf) - actual;
}

} // namespace warmbench::climate
