#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

#include <functional>
#include <vector>

class QPainter;
class QTextDocument;

namespace warmbench::ui {

/// A drawing among the text of a document, as wide as its page; black on white, so that any printer shows it.
struct Plot {
    double heightInLines = 10; ///< of the document's own type
    std::function<void(QPainter&, const QRectF&, const QFont&)> paint;
};

/// What stands in rich text where the plot of a number, from 0, is to be.
[[nodiscard]] QString plotMark(int number);

/// Puts plots in place of their marks. Before the document is set on pages, on each copy of it,
/// `registerPlots` must be called too.
void insertPlots(QTextDocument& document, const std::vector<Plot>& plots);
/// Lets a document draw its plots; `plots` must outlive it.
void registerPlots(QTextDocument& document, const std::vector<Plot>& plots);

} // namespace warmbench::ui
