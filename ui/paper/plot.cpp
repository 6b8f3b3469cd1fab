#include "ui/paper/plot.h"

#include "ui/paper/plot_object.h"

#include <QAbstractTextDocumentLayout>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextCursor>
#include <QTextDocument>

namespace warmbench::ui {
namespace {

constexpr int plotType = QTextFormat::UserObject + 1;
constexpr int plotNumber = QTextFormat::UserProperty + 1;

} // namespace

PlotObject::PlotObject(const std::vector<Plot>& plots, QObject* parent) : QObject(parent), m_plots(plots) {}

QSizeF PlotObject::intrinsicSize(QTextDocument* document, int /*position*/, const QTextFormat& format) {
    const Plot& plot = m_plots[static_cast<std::size_t>(format.intProperty(plotNumber))];
    const QFontMetricsF metrics(document->defaultFont(), document->documentLayout()->paintDevice());
    return {document->pageSize().width(), plot.heightInLines * metrics.height()};
}

void PlotObject::drawObject(QPainter* painter, const QRectF& area, QTextDocument* document, int /*position*/,
                            const QTextFormat& format) {
    painter->save();
    m_plots[static_cast<std::size_t>(format.intProperty(plotNumber))].paint(*painter, area,
                                                                            document->defaultFont());
    painter->restore();
}

QString plotMark(int number) {
    return QStringLiteral("<p>[plot %1]</p>").arg(number);
}

void insertPlots(QTextDocument& document, const std::vector<Plot>& plots) {
    for (std::size_t i = 0; i < plots.size(); ++i) {
        QTextCursor at = document.find(QStringLiteral("[plot %1]").arg(i));
        if (at.isNull()) continue;
        QTextCharFormat format;
        format.setObjectType(plotType);
        format.setProperty(plotNumber, static_cast<int>(i));
        at.insertText(QString(QChar::ObjectReplacementCharacter), format);
    }
}

void registerPlots(QTextDocument& document, const std::vector<Plot>& plots) {
    document.documentLayout()->registerHandler(plotType, new PlotObject(plots, &document));
}

} // namespace warmbench::ui
