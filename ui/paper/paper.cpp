#include "ui/paper/paper.h"

#include "ui/words/say.h"

#include <QAbstractTextDocumentLayout>
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextBlock>
#include <QTextDocument>

#include <cmath>
#include <memory>

namespace warmbench::ui {
namespace {

constexpr int paperMarginMm = 12;
constexpr int pdfDotsPerInch = 300;
constexpr double bodyPoints = 8.5;
constexpr double leastSpacing = 1.0 / 64;
/// Between the text and the line with the page's number, and that line's height, in lines.
constexpr double footLines = 2;

/// A heading is not left alone at the foot of a page: with less than this below it, in lines, it begins the
/// next one.
constexpr double linesBelowHeading = 6;

void keepHeadingsWithText(QTextDocument& pages, double pageHeight, double lineHeight) {
    for (QTextBlock block = pages.begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() == 0) continue;
        const QRectF where = pages.documentLayout()->blockBoundingRect(block);
        const double left = pageHeight - std::fmod(where.bottom(), pageHeight);
        if (left >= linesBelowHeading * lineHeight || where.top() < pageHeight / 2) continue;
        QTextBlockFormat format = block.blockFormat();
        format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        QTextCursor(block).setBlockFormat(format);
    }
}

/// A copy of a document, set on a device's pages with room for the foot.
std::unique_ptr<QTextDocument> setPages(const QTextDocument& source, const std::vector<Plot>& plots,
                                        const QFont& font, double foot, QPagedPaintDevice& device) {
    std::unique_ptr<QTextDocument> pages(source.clone());
    registerPlots(*pages, plots);
    pages->documentLayout()->setPaintDevice(&device);
    pages->setDefaultFont(font);
    pages->setDocumentMargin(0);
    pages->setPageSize(QSizeF(device.width(), device.height() - foot));
    return pages;
}

void paintPages(const QTextDocument& source, const std::vector<Plot>& plots, const QString& title,
                QPainter& painter, QPagedPaintDevice& device) {
    QFont font = paperFont();
    font.setPointSizeF(bodyPoints);
    const QFontMetricsF metrics(font, &device);
    const double foot = footLines * metrics.height();
    const auto draft = setPages(source, plots, font, foot, device);
    const QSizeF page = draft->pageSize();
    keepHeadingsWithText(*draft, page.height(), metrics.height());
    // Set anew: Qt leaves the end of a document out that is changed after it was set.
    const auto pages = setPages(*draft, plots, font, foot, device);
    const int count = pages->pageCount();
    for (int number = 0; number < count; ++number) {
        if (number > 0) device.newPage();
        painter.save();
        painter.translate(0, -number * page.height());
        QAbstractTextDocumentLayout::PaintContext context;
        context.palette.setColor(QPalette::Text, Qt::black);
        // A hair less than the page, or what begins the next one shows its edge.
        context.clip = QRectF(0, number * page.height(), page.width(), page.height() - 1);
        painter.setClipRect(context.clip);
        pages->documentLayout()->draw(&painter, context);
        painter.restore();
        painter.setFont(font);
        painter.setPen(Qt::black);
        const double line = page.height() + foot - metrics.descent();
        const QString place = say("page %1 of %2").arg(number + 1).arg(count);
        const double width = metrics.horizontalAdvance(place);
        painter.drawText(QPointF(page.width() - width, line), place);
        painter.drawText(QPointF(0, line),
                         metrics.elidedText(title, Qt::ElideRight, page.width() - width - metrics.height()));
    }
}

} // namespace

QFont paperFont() {
    QFont font = QGuiApplication::font();
    // The least spacing that there is, a 64th of a dot, keeps letters from being joined.
    font.setLetterSpacing(QFont::AbsoluteSpacing, leastSpacing);
    return font;
}

Paper documentPaper(const QString& title, const QString& html, QPageLayout::Orientation orientation,
                    std::vector<Plot> plots) {
    const auto document = std::make_shared<QTextDocument>();
    document->setHtml(QStringLiteral("<h2>") + title.toHtmlEscaped() + QStringLiteral("</h2>") + html);
    insertPlots(*document, plots);
    Paper paper;
    paper.title = title;
    paper.layout = QPageLayout(QPageSize(QPageSize::A4), orientation,
                               QMarginsF(paperMarginMm, paperMarginMm, paperMarginMm, paperMarginMm),
                               QPageLayout::Millimeter);
    paper.paint = [document, title, plots = std::move(plots)](QPainter& painter, QPagedPaintDevice& device) {
        paintPages(*document, plots, title, painter, device);
    };
    return paper;
}

bool paintOn(QPagedPaintDevice& device, const Paper& paper) {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    paper.paint(painter, device);
    return painter.end();
}

Outcome writePdf(const Paper& paper, const QString& file) {
    QSaveFile target(file);
    if (!target.open(QIODevice::WriteOnly))
        return Refusal{file.toStdString(),
                       phrase("it can't be written: %1", target.errorString().toStdString())};
    bool painted = false;
    {
        QPdfWriter writer(&target);
        writer.setTitle(paper.title);
        writer.setCreator(QStringLiteral("Warmbench"));
        writer.setResolution(pdfDotsPerInch);
        writer.setPageLayout(paper.layout);
        painted = paintOn(writer, paper);
    }
    if (!painted || !target.commit())
        return Refusal{file.toStdString(), phrase("the pages could not be written to the end: %1",
                                                  target.errorString().toStdString())};
    return std::nullopt;
}

} // namespace warmbench::ui
