#pragma once

#include "core/quantity/result.h"

#include <QRectF>
#include <QSizeF>

#include <string>

namespace warmbench::ui {

/// How labels lie on a sheet or a roll; all in millimetres. A roll is a sheet of one label.
struct LabelLayout {
    QSizeF page{210, 297};
    QSizeF label{70, 36};
    int columns = 3;
    int rows = 8;
    double left = 0;  ///< from the page's edge to the first label
    double top = 4.5; ///< the same
    QSizeF gap{0, 0}; ///< between labels
    int used = 0;     ///< labels of the first sheet that are gone already

    [[nodiscard]] int perPage() const { return columns * rows; }
    /// The label at a place of a page, counted along the rows from 0.
    [[nodiscard]] QRectF rectOf(int place) const;
    /// A roll of labels of this size.
    [[nodiscard]] static LabelLayout roll(QSizeF label);
};

/// Labels are at least this large, in millimetres: a QR code of 10 mm and a line of text beside it.
inline constexpr double leastLabelWidth = 25;
inline constexpr double leastLabelHeight = 10;

/// Refused in words: labels too small, none, off the page's edge, or more used than there are.
[[nodiscard]] Outcome checkLayout(const LabelLayout& layout);

/// `70x36` as a size. Refused: anything else, named `option`.
[[nodiscard]] Result<QSizeF> readSize(const std::string& option, const std::string& text);

} // namespace warmbench::ui
