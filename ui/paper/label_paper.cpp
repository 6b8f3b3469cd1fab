#include "ui/paper/label_paper.h"

#include "ui/paper/qr_code.h"
#include "ui/words/say.h"

#include <QAbstractTextDocumentLayout>
#include <QGuiApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QTextDocument>

#include <algorithm>
#include <memory>
#include <optional>

namespace warmbench::ui {
namespace {

/// White around what a label says, in millimetres: printers and cutters are off by as much, and a sheet's
/// edge is not printed on.
constexpr double leastPaddingMm = 1;
constexpr double mostPaddingMm = 3;
constexpr double leastCodeMm = 10;
constexpr double mostCodeMm = 24;
constexpr double largestPoints = 12;
constexpr double smallestPoints = 4;
constexpr double pointStep = 0.5;
/// The units that a label is laid out in, whatever paints it: tenths of a point are finer than any printer.
constexpr double unitsPerMm = 10;
constexpr double pointsPerInch = 72;
constexpr double mmPerInch = 25.4;

double unitsOf(double points) {
    return points / pointsPerInch * mmPerInch * unitsPerMm;
}

std::shared_ptr<QTextDocument> setText(const QString& html, double points, double width) {
    auto document = std::make_shared<QTextDocument>();
    QFont font = paperFont();
    font.setPixelSize(std::max(1, static_cast<int>(unitsOf(points))));
    document->setDefaultFont(font);
    document->setDocumentMargin(0);
    document->setHtml(html);
    document->setTextWidth(width);
    return document;
}

QString htmlOf(const LabelContent& label, bool withStruck, bool withRecipe) {
    QString html =
        label.taxonHtml + QStringLiteral("<br><b>") + label.title.toHtmlEscaped() + QStringLiteral("</b>");
    if (withStruck) html += QStringLiteral("<br>") + label.struck.toHtmlEscaped();
    if (withRecipe) html += QStringLiteral("<br>") + label.recipe.toHtmlEscaped();
    return html;
}

/// A label laid out, in units from its own corner.
struct SetLabel {
    QRectF code;
    QPointF textAt;
    std::shared_ptr<QTextDocument> text;
    QrCode qr;
};

/// The largest type in which the text fits a box; nothing where even the smallest does not.
std::shared_ptr<QTextDocument> fitText(const QString& html, QSizeF box, double smallest) {
    for (double points = largestPoints; points >= smallest; points -= pointStep) {
        auto document = setText(html, points, box.width());
        if (document->size().height() <= box.height() && document->idealWidth() <= box.width())
            return document;
    }
    return nullptr;
}

Result<SetLabel> setLabel(const LabelContent& label, const LabelLayout& layout) {
    auto qr = qrCode(label.code);
    if (!qr) return qr.refusal();
    const double paddingMm = std::clamp(layout.label.height() / 12, leastPaddingMm, mostPaddingMm);
    const double padding = paddingMm * unitsPerMm;
    const QSizeF room = layout.label * unitsPerMm - QSizeF(2 * padding, 2 * padding);
    // Its quiet zone is part of the code, so that it may reach into the padding of a low label.
    const double square =
        std::clamp(std::min(layout.label.height() - 2 * paddingMm, layout.label.width() / 3), leastCodeMm,
                   mostCodeMm) *
        unitsPerMm;
    SetLabel set;
    set.qr = std::move(*qr);
    const double height = layout.label.height() * unitsPerMm;
    set.code = QRectF(padding / 2, (height - square) / 2, square, square);
    const double left = set.code.right() + padding / 2;
    const QSizeF box(padding + room.width() - left, room.height());
    // All in a type that is read at arm's length; else all in a smaller one; else without the recipe.
    constexpr double comfortable = 6;
    struct Attempt {
        bool struck;
        bool recipe;
        double smallest;
    };
    for (const Attempt& attempt :
         {Attempt{true, true, comfortable}, Attempt{true, false, comfortable},
          Attempt{true, false, smallestPoints}, Attempt{false, false, smallestPoints}}) {
        set.text = fitText(htmlOf(label, attempt.struck, attempt.recipe), box, attempt.smallest);
        if (set.text) break;
    }
    if (!set.text)
        return Refusal{label.title.toStdString(),
                       phrase("its name finds no room on a label of %1 by %2 mm; choose a larger one",
                              QString::number(layout.label.width()).toStdString(),
                              QString::number(layout.label.height()).toStdString())};
    set.textAt = {left, padding + (box.height() - set.text->size().height()) / 2};
    return set;
}

void paintLabel(QPainter& painter, const SetLabel& label) {
    paintQrCode(painter, label.code, label.qr);
    painter.save();
    painter.translate(label.textAt);
    QAbstractTextDocumentLayout::PaintContext context;
    context.palette.setColor(QPalette::Text, Qt::black);
    label.text->documentLayout()->draw(&painter, context);
    painter.restore();
}

QPageLayout pageOf(const LabelLayout& layout) {
    const QSizeF& size = layout.page;
    QPageLayout page(QPageSize(size, QPageSize::Millimeter, {}, QPageSize::ExactMatch), QPageLayout::Portrait,
                     QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
    page.setMode(QPageLayout::FullPageMode);
    return page;
}

} // namespace

Result<Paper> labelPaper(const std::vector<LabelContent>& labels, const LabelLayout& layout) {
    if (auto refusal = checkLayout(layout)) return *refusal;
    if (labels.empty()) return Refusal{"labels", phrase("there is no container to label")};
    auto set = std::make_shared<std::vector<SetLabel>>();
    for (const LabelContent& label : labels) {
        auto one = setLabel(label, layout);
        if (!one) return one.refusal();
        set->push_back(std::move(*one));
    }
    Paper paper;
    paper.title = say("Labels");
    paper.layout = pageOf(layout);
    paper.paint = [set, layout](QPainter& painter, QPagedPaintDevice& device) {
        const double scale = painter.device()->logicalDpiX() / mmPerInch / unitsPerMm;
        int place = layout.used;
        for (const SetLabel& label : *set) {
            if (place == layout.perPage()) {
                device.newPage();
                place = 0;
            }
            const QRectF where = layout.rectOf(place++);
            painter.save();
            painter.scale(scale, scale);
            painter.translate(where.topLeft() * unitsPerMm);
            paintLabel(painter, label);
            painter.restore();
        }
    };
    return paper;
}

} // namespace warmbench::ui
