#pragma once

#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QRectF>

class QPainter;

namespace warmbench::ui {

/// What the colours and marks of the map mean, in one or more lines within a width.
class Legend {
public:
    Legend(const Palette& palette, const TypeSizes& type, const Wording& wording)
        : m_palette(palette), m_type(type), m_wording(wording) {}

    [[nodiscard]] double heightFor(double width) const { return run(nullptr, {}, width); }
    void paint(QPainter& painter, QPointF corner, double width) const { run(&painter, corner, width); }

private:
    double run(QPainter* painter, QPointF corner, double width) const;

    const Palette& m_palette;
    const TypeSizes& m_type;
    const Wording& m_wording;
};

} // namespace warmbench::ui
