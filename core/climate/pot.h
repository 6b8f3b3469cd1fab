#pragma once

#include <optional>

namespace warmbench::climate {

/// What a pot or a tray's cell is in plan.
enum class PotShape { Round, Square };

/// Inside lengths in millimetres, not negative: diameters of a round pot, sides of a square one.
struct PotSize {
    PotShape shape = PotShape::Round;
    double top = 0;
    double base = 0;
    double height = 0;
};

/// Litres that a pot holds: a frustum of a cone or a pyramid, up to the brim, or up to `fill` millimetres
/// above the base (at most the height).
double potLitres(const PotSize& pot, std::optional<double> fill = {});

} // namespace warmbench::climate
