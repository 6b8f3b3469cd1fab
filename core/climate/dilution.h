#pragma once

#include <optional>

/// Solutions by weight in volume: 1 ppm is 1 mg in 1 litre, 1 per cent is 10 g in 1 litre.
namespace warmbench::climate {

/// Molar masses in g/mol from the IUPAC standard atomic weights.
inline constexpr double indolebutyricAcid = 203.241;       ///< IBA
inline constexpr double potassiumIndolebutyrate = 241.331; ///< K-IBA
inline constexpr double naphthaleneaceticAcid = 186.210;   ///< NAA
inline constexpr double indoleaceticAcid = 175.187;        ///< IAA

struct Dilution {
    double stock = 0;   ///< millilitres of the stronger solution
    double diluent = 0; ///< millilitres to fill up with

    /// Parts of diluent to one part of stock.
    [[nodiscard]] double parts() const { return diluent / stock; }
};

/// Thins a stock of `stockPpm` to `targetPpm` (both above 0) in `millilitres` altogether: C1 V1 = C2 V2.
/// Nothing where the target is stronger than the stock.
std::optional<Dilution> dilute(double stockPpm, double targetPpm, double millilitres);

/// Grams of a solid, of which the share `purity` (above 0, at most 1) is the substance, for so many litres.
double gramsFor(double ppm, double litres, double purity = 1);

/// Per cent, weight in volume.
double percentFromPpm(double ppm);

/// Millimoles in a litre of a substance of `molarMass` g/mol.
double millimolar(double ppm, double molarMass);

} // namespace warmbench::climate
