#include "core/climate/dilution.h"

namespace warmbench::climate {

std::optional<Dilution> dilute(double stockPpm, double targetPpm, double millilitres) {
    if (targetPpm > stockPpm) return std::nullopt;
    const double stock = millilitres * targetPpm / stockPpm;
    return Dilution{stock, millilitres - stock};
}

double gramsFor(double ppm, double litres, double purity) {
    return ppm * litres / purity / 1000;
}

double percentFromPpm(double ppm) {
    return ppm / 10000;
}

double millimolar(double ppm, double molarMass) {
    return ppm / molarMass;
}

} // namespace warmbench::climate
