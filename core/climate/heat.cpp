#include "core/climate/heat.h"

#include <algorithm>

namespace warmbench::climate {

double heatThrough(double area, double u, double inside, double outside) {
    return u * area * (inside - outside);
}

double heatWithAir(double changesPerHour, double volume, double inside, double outside) {
    return airHeat * changesPerHour * volume * (inside - outside);
}

double energyForHeat(double watts, double hours, double efficiency) {
    return std::max(0.0, watts) * hours / 1000 / efficiency;
}

MatLoad matLoad(const Mat& mat, double setPoint, double air) {
    MatLoad load;
    load.wattsNeeded = std::max(0.0, heatThrough(mat.area, mat.loss, setPoint, air));
    load.wattsRated = mat.area * mat.wattsPerArea;
    load.holds = load.wattsNeeded <= load.wattsRated;
    load.duty = std::min(1.0, load.wattsNeeded / load.wattsRated);
    return load;
}

double matEnergy(const MatLoad& load, double hours) {
    return load.wattsRated * load.duty * hours / 1000;
}

} // namespace warmbench::climate
