#pragma once

#include <QColor>

namespace warmbench::ui {

/// The contrast that text must reach. Source: W3C, Web Content Accessibility Guidelines 2.1, 1.4.3 (AA).
inline constexpr double readableContrast = 4.5;

/// Relative luminance of an opaque sRGB colour, 0 to 1. Source: W3C, WCAG 2.1, definition of it.
[[nodiscard]] double luminance(const QColor& colour);

/// Contrast ratio of two opaque colours, 1 to 21. Source: W3C, WCAG 2.1, definition of it.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace warmbench::ui
