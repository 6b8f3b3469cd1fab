#pragma once

#include <optional>
#include <string_view>

namespace warmbench::season {

/// The strength of a hormone that cuttings are dipped into, in parts per million (1 mg in a litre), and what
/// of a concentrate makes it.
struct DipStrength {
    int lowPpm = 0;
    int highPpm = 0; ///< as `lowPpm` where the recipe names one strength
};

/// A concentrate that dips are commonly made from, 1 % (10 g in a litre); common practice, no source.
inline constexpr int concentratePpm = 10'000;

/// The strength that the words of a recipe name for a dip or a solution: `IBA 500-1000 ppm, quick dip`.
/// Nothing of a powder, which is used as it is, nor where not one strength or range in ppm or mg/L is named,
/// or one above that of the concentrate.
[[nodiscard]] std::optional<DipStrength> dipStrength(std::string_view hormone);

/// Millilitres of a concentrate that make 100 ml of a dip: its volume times its strength is that of the dip.
[[nodiscard]] double concentrateMillilitres(int dipPpm, int fromPpm = concentratePpm);

} // namespace warmbench::season
