#pragma once

/// Heat and its cost. Lengths in metres, temperatures in degrees Celsius, U in W/(m2 K), power in watts,
/// energy in kilowatt-hours, prices in currency a kilowatt-hour. Inputs are finite; areas, U, hours and
/// prices are not negative.
namespace warmbench::climate {

/// Heat that air carries for each cubic metre and kelvin, W h/(m3 K): 1.2 kg/m3 times 1005 J/(kg K).
inline constexpr double airHeat = 1.2 * 1005 / 3600;

/// Heat flow U A dT through a surface, outwards; negative when it is warmer outside.
double heatThrough(double area, double u, double inside, double outside);

/// Heat that leaves with exchanged air, outwards; `changes` of the `volume` (m3) each hour.
double heatWithAir(double changesPerHour, double volume, double inside, double outside);

/// Energy that a flow of heat costs in `hours`, at an `efficiency` above 0 and at most 1; nothing when the
/// flow is inwards.
double energyForHeat(double watts, double hours, double efficiency = 1);

/// A heated mat under a bench, and what leaves the bench.
struct Mat {
    double area = 0;         ///< m2, above 0
    double wattsPerArea = 0; ///< rated W/m2, above 0
    double loss = 0;         ///< heat that leaves each m2 for each kelvin above the air, W/(m2 K)
};

struct MatLoad {
    double wattsNeeded = 0; ///< to hold the set-point; 0 when the air is as warm
    double wattsRated = 0;
    bool holds = true; ///< the rated power suffices
    double duty = 0;   ///< share of the time that the mat is on, 0 to 1
};

/// What a mat does to hold `setPoint` in air of `air`: the demand U A dT against the rated power.
MatLoad matLoad(const Mat& mat, double setPoint, double air);

/// Energy of a mat that is on for the share `duty` of `hours`.
double matEnergy(const MatLoad& load, double hours);

} // namespace warmbench::climate
