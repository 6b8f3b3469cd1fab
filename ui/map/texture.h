#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace warmbench::ui {

/// Whether a picture is made of pixels, where small things may be stamped, or of shapes.
enum class Surface : std::uint8_t { Pixels, Shapes };

enum class Texture : std::uint8_t { Dots, DenseDots, Rising, Falling, Squares };

/// Fills an area with a fine pattern, and leaves what is between as it is. On a surface of shapes it is drawn
/// as lines and dots, since not every program shows patterns in SVG.
void fillTexture(QPainter& painter, const QRectF& area, Texture texture, const QColor& colour,
                 Surface surface);

} // namespace warmbench::ui
