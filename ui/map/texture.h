#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace warmbench::ui {

enum class Texture : std::uint8_t { Dots, DenseDots, Rising, Falling, Squares };

/// Side in pixels of a square whose texture goes on without a seam in the next.
inline constexpr int textureTile = 48;

/// Draws a fine pattern of lines or dots over an area, and leaves what is between as it is.
void fillTexture(QPainter& painter, const QRectF& area, Texture texture, const QColor& colour);

} // namespace warmbench::ui
