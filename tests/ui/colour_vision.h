#pragma once

#include <QColor>

#include <cstdint>

namespace warmbench::ui {

enum class Vision : std::uint8_t { Usual, Protan, Deutan, Tritan };

/// A colour as a dichromat sees it, in linear sRGB.
/// Protan and deutan: Viénot, Brettel, Mollon, Color Research & Application 24 (1999) 243-252. Tritan:
/// Brettel, Viénot, Mollon, J. Opt. Soc. Am. A 14 (1997) 2647-2655. Coefficients for sRGB primaries from
/// memory; that their rows add up to one (greys stay grey) is tested.
[[nodiscard]] QColor seenBy(Vision vision, const QColor& colour);

/// Distance of two colours in CIELAB (CIE 1976, white D65).
[[nodiscard]] double labDistance(const QColor& a, const QColor& b);

} // namespace warmbench::ui
