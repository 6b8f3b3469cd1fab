#pragma once

#include "ui/paper/plot.h"

#include <QObject>
#include <QTextObjectInterface>

namespace warmbench::ui {

/// Sets and draws the plots of a document.
class PlotObject : public QObject, public QTextObjectInterface {
    Q_OBJECT
    Q_INTERFACES(QTextObjectInterface)
public:
    PlotObject(const std::vector<Plot>& plots, QObject* parent);
    QSizeF intrinsicSize(QTextDocument* document, int position, const QTextFormat& format) override;
    void drawObject(QPainter* painter, const QRectF& area, QTextDocument* document, int position,
                    const QTextFormat& format) override;

private:
    const std::vector<Plot>& m_plots;
};

} // namespace warmbench::ui
