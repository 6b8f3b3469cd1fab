#include "ui/map/texture.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace warmbench::ui {
namespace {

/// Pixels between lines, and between dots: all of them part textureTile evenly.
constexpr double spacing = 8;
constexpr double dotSpacing = 4;
constexpr double denseDotSpacing = 3;

void addDiagonals(QPainterPath& path, const QRectF& area, bool rising) {
    for (double start = area.left() - area.height(); start < area.right(); start += spacing) {
        // The line from (start, bottom) to (start + height, top), cut at both sides.
        const double left = std::max(start, area.left());
        const double right = std::min(start + area.height(), area.right());
        if (left >= right) continue;
        const double fromLeft = left - start;
        const double fromRight = right - start;
        const double y = rising ? area.bottom() : area.top();
        const double direction = rising ? -1 : 1;
        path.moveTo(left, y + direction * fromLeft);
        path.lineTo(right, y + direction * fromRight);
    }
}

void addDots(QPainterPath& path, const QRectF& area, double step) {
    for (double y = area.top() + step / 2; y < area.bottom(); y += step)
        for (double x = area.left() + step / 2; x < area.right(); x += step) path.addRect(x, y, 1, 1);
}

void addSquares(QPainterPath& path, const QRectF& area) {
    for (double x = area.left() + spacing / 2; x < area.right(); x += spacing) {
        path.moveTo(x, area.top());
        path.lineTo(x, area.bottom());
    }
    for (double y = area.top() + spacing / 2; y < area.bottom(); y += spacing) {
        path.moveTo(area.left(), y);
        path.lineTo(area.right(), y);
    }
}

} // namespace

void fillTexture(QPainter& painter, const QRectF& area, Texture texture, const QColor& colour) {
    QPainterPath path;
    switch (texture) {
    case Texture::Dots:
        addDots(path, area, dotSpacing);
        break;
    case Texture::DenseDots:
        addDots(path, area, denseDotSpacing);
        break;
    case Texture::Rising:
        addDiagonals(path, area, true);
        break;
    case Texture::Falling:
        addDiagonals(path, area, false);
        break;
    case Texture::Squares:
        addSquares(path, area);
        break;
    }
    if (texture == Texture::Dots || texture == Texture::DenseDots)
        painter.fillPath(path, colour);
    else
        painter.strokePath(path, QPen(colour, 1));
}

} // namespace warmbench::ui
