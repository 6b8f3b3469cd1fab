#pragma once

#include "core/quantity/result.h"
#include "ui/paper/plot.h"

#include <QFont>
#include <QPageLayout>
#include <QString>

#include <functional>

class QPagedPaintDevice;
class QPainter;

namespace warmbench::ui {

/// Something that can be put on paper: on a printer, in a PDF, or in a preview.
struct Paper {
    QString title;
    QPageLayout layout;
    /// Paints all pages, calling `newPage` of the device between them.
    std::function<void(QPainter&, QPagedPaintDevice&)> paint;
};

/// The font of what goes on paper. Its letters stand apart: a reader of the file gets `fl` and `fi` as they
/// were typed, not as one sign.
[[nodiscard]] QFont paperFont();

/// Pages of rich text, as wide as the paper allows, with the title, page numbers and nothing cut off: tables
/// go on with their heads repeated. Plots stand where their marks (plotMark) are.
[[nodiscard]] Paper documentPaper(const QString& title, const QString& html,
                                  QPageLayout::Orientation orientation, std::vector<Plot> plots = {});

/// Paints it all; false where the device can't be begun or ended.
[[nodiscard]] bool paintOn(QPagedPaintDevice& device, const Paper& paper);

/// Writes a PDF. The file is complete or not there: one that was there before stays when it fails.
/// Needs a QGuiApplication. Refused: a file that cannot be written.
[[nodiscard]] Outcome writePdf(const Paper& paper, const QString& file);

} // namespace warmbench::ui
