#include "ui/map/paint_kit.h"

namespace warmbench::ui {

PaintKit::PaintKit(const Palette& colours, const TypeSizes& fonts, const Wording& words, Surface on)
    : palette(colours), type(fonts), wording(words), surface(on), quiet(fonts.quiet), strong(fonts.strong),
      freeLine(mix(palette.slot, palette.bench, 0.75)) {
    for (std::size_t i = 0; i < m_inks.size(); ++i) {
        const QColor& under = ground(static_cast<Progress>(i));
        m_inks[i] = palette.textOn(under);
        m_lines[i] = mix(under, palette.bench, 0.6);
    }
    for (std::size_t i = 0; i < m_widths.size(); ++i)
        m_widths[i] = strong.horizontalAdvance(QChar(u'A' + static_cast<char16_t>(i)));
}

int PaintKit::widthOf(const QString& letters) const {
    int width = 0;
    for (const QChar letter : letters)
        width += m_widths[static_cast<std::size_t>(letter.unicode() - u'A') % 26];
    return width;
}

QColor faded(QColor colour, double share) {
    colour.setAlphaF(static_cast<float>(share));
    return colour;
}

} // namespace warmbench::ui
