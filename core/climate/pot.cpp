#include "core/climate/pot.h"

#include <algorithm>
#include <numbers>

namespace warmbench::climate {

double potLitres(const PotSize& pot, std::optional<double> fill) {
    constexpr double cubicMillimetresPerLitre = 1e6;
    const double depth = std::min(fill.value_or(pot.height), pot.height);
    const double width = pot.height > 0 ? pot.base + (pot.top - pot.base) * depth / pot.height : pot.base;
    const double prism = depth * (width * width + width * pot.base + pot.base * pot.base) / 3;
    const double plan = pot.shape == PotShape::Round ? std::numbers::pi / 4 : 1.0;
    return plan * prism / cubicMillimetresPerLitre;
}

} // namespace warmbench::climate
