#pragma once

#include "core/quantity/result.h"
#include "ui/map/map_painter.h"

#include <QSize>

namespace warmbench::ui {

/// How the map of a day is put on a sheet.
struct SheetOptions {
    int width = 1400; ///< pixels
    bool dark = false;
};

/// Width in pixels of a sheet: 640 at least so that its words find room, 20000 at most.
inline constexpr int leastSheetWidth = 640;
inline constexpr int mostSheetWidth = 20000;

/// Refused: a file's suffix of which no picture is made, a width out of bounds.
[[nodiscard]] Outcome checkMapSheet(const QString& file, const SheetOptions& options);

/// Writes the map of one day with its title, date, totals and legend as a PNG, SVG or PDF, by the suffix of
/// the file's name. The file is complete or not there: one that was there before stays when it fails.
/// Needs a QGuiApplication. Refused besides: a file that cannot be written.
[[nodiscard]] Outcome writeMapSheet(const HouseBook& book, Day day, const QString& file,
                                    const SheetOptions& options, const Wording& wording);

} // namespace warmbench::ui
