#pragma once

#include "core/book/progress.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QFontMetrics>

#include <array>

namespace warmbench::ui {

/// Whether a picture is made of pixels, where small things may be stamped, or of shapes.
enum class Surface : std::uint8_t { Pixels, Shapes };

/// What a painting of the map needs again and again, worked out once before it.
class PaintKit {
public:
    PaintKit(const Palette& colours, const TypeSizes& fonts, const Wording& words, Surface on);

    const Palette& palette;
    const TypeSizes& type;
    const Wording& wording;
    const Surface surface;
    const QFontMetrics quiet;
    const QFontMetrics strong;

    /// What a patch is filled with: its stage's colour, or that of a free slot while it is planned.
    [[nodiscard]] const QColor& ground(Progress progress) const {
        return progress == Progress::Planned ? palette.slot
                                             : palette.progress[static_cast<std::size_t>(progress)];
    }
    [[nodiscard]] const QColor& inkOn(Progress progress) const {
        return m_inks[static_cast<std::size_t>(progress)];
    }
    /// The grid's lines over a patch, opaque: blending thousands of thin lines is slow.
    [[nodiscard]] const QColor& lineOn(Progress progress) const {
        return m_lines[static_cast<std::size_t>(progress)];
    }
    /// The grid's lines over free slots.
    const QColor freeLine;
    /// The width of a batch's letters in the strong font.
    [[nodiscard]] int widthOf(const QString& letters) const;

private:
    std::array<QColor, 6> m_inks;
    std::array<QColor, 6> m_lines;
    std::array<int, 26> m_widths{};
};

/// The side of a slot, in pixels, from which its grid is shown.
inline constexpr double gridFrom = 5;

[[nodiscard]] QColor faded(QColor colour, double share);

} // namespace warmbench::ui
