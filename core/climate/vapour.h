#pragma once

#include <optional>

/// Water in air by FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998), whose
/// equation is named at each function. Temperatures in degrees Celsius, pressures in kPa, relative humidity
/// in per cent, altitude in metres.
namespace warmbench::climate {

/// Saturation vapour pressure at an air temperature above -237.3 (equation 11).
double saturationPressure(double celsius);

/// Slope of that curve, kPa for each degree (equation 13).
double saturationSlope(double celsius);

/// Mean saturation vapour pressure of a day: of both extremes, not of their mean (equation 12).
double meanSaturationPressure(double highest, double lowest);

/// Vapour pressure at a dew point (equation 14).
double pressureFromDewPoint(double dewPoint);

/// Vapour pressure from one temperature and its relative humidity (equation 10 solved for it).
double pressureFromHumidity(double celsius, double humidity);

/// Vapour pressure of a day from both extremes of temperature and humidity (equation 17); the highest
/// humidity goes with the lowest temperature.
double pressureFromHumidities(double highest, double lowest, double highestHumidity, double lowestHumidity);

/// Vapour pressure of a day from the mean humidity, where nothing better is known (equation 19).
double pressureFromMeanHumidity(double highest, double lowest, double meanHumidity);

/// The temperature at which air of this vapour pressure would be saturated: the inverse of equation 11.
/// Nothing for a pressure of 0 or less.
std::optional<double> dewPoint(double pressure);

/// Atmospheric pressure at an altitude below 45 000 m (equation 7).
double atmosphericPressure(double altitude);

/// Psychrometric constant, kPa for each degree (equation 8).
double psychrometricConstant(double atmospheric);

/// How air passes a psychrometer's wet bulb.
enum class Ventilation { Forced, Natural, Indoor };

/// Coefficient of the psychrometer for each degree (equation 16): about 5 m/s of forced air, about 1 m/s of
/// natural air, still indoor air.
double psychrometerCoefficient(Ventilation ventilation);

/// Vapour pressure from a dry and a wet bulb (equation 15). Negative where no air could give the readings.
double pressureFromPsychrometer(double dry, double wet, Ventilation ventilation, double atmospheric);

/// What air lacks to saturation at its own temperature.
double deficit(double saturation, double actual);

/// What air lacks against a leaf of another temperature; negative where dew falls on the leaf.
double leafDeficit(double leaf, double actual);

} // namespace warmbench::climate
