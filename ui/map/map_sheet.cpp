#include "ui/map/map_sheet.h"

#include "ui/map/legend.h"

#include <QFileInfo>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QImage>
#include <QMarginsF>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QSvgGenerator>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int sheetMargin = 24;
constexpr int titleHeight = 56;

/// A sheet ready to be painted: the scene, its layout and the room that it needs.
class Sheet {
public:
    Sheet(const HouseBook& book, Day day, const SheetOptions& options, const Wording& wording)
        : m_palette(options.dark ? darkPalette() : lightPalette()),
          m_type(typeSizes(QGuiApplication::font())), m_wording(wording), m_title(text(book.nursery().name)),
          m_scene(mapScene(book, day, Letters(book))), m_width(options.width) {
        const double inner = m_width - 2 * sheetMargin;
        const int columns = bestColumns(inner);
        m_layout = MapLayout(m_scene, columns, MapLayout::scaleForWidth(m_scene, columns, inner));
        const Legend legend(m_palette, m_type, m_wording);
        m_height = static_cast<int>(std::ceil(titleHeight + m_layout.size().height() +
                                              legend.heightFor(inner - 2 * mapMargin) + 2 * sheetMargin));
    }

    [[nodiscard]] QSize size() const { return {m_width, m_height}; }

    void paint(QPainter& painter, Surface surface) const {
        painter.fillRect(QRect(QPoint(0, 0), size()), m_palette.paper);
        paintTitle(painter);
        painter.save();
        painter.translate(sheetMargin, sheetMargin + titleHeight);
        const MapPainter map(m_palette, m_type, m_wording, surface);
        map.paint(painter, m_scene, m_layout, QRectF(QPointF(0, 0), m_layout.size()).toAlignedRect(), {});
        painter.restore();
        const Legend legend(m_palette, m_type, m_wording);
        legend.paint(painter,
                     QPointF(sheetMargin + mapMargin, sheetMargin + titleHeight + m_layout.size().height()),
                     m_width - 2 * (sheetMargin + mapMargin));
    }

private:
    /// The columns of houses with which the sheet comes nearest to the shape of a page on its side.
    [[nodiscard]] int bestColumns(double width) const {
        const auto shapeError = [&](int columns) {
            const MapLayout layout(m_scene, columns, MapLayout::scaleForWidth(m_scene, columns, width));
            return std::abs(std::log(layout.size().width() / layout.size().height() / std::sqrt(2.0)));
        };
        int best = 1;
        for (int columns = 2; columns <= static_cast<int>(m_scene.houses.size()); ++columns)
            if (shapeError(columns) < shapeError(best)) best = columns;
        return best;
    }

    void paintTitle(QPainter& painter) const {
        const double left = sheetMargin + mapMargin;
        const double right = m_width - left;
        const QString name =
            m_title.isEmpty() ? QCoreApplication::translate("MapSheet", "Bench map") : m_title;
        const QString date = m_wording.longDate(m_scene.day);
        const QString totals =
            m_scene.houses.empty()
                ? QCoreApplication::translate("MapSheet", "This book has no house yet.")
                : (batches() == 1
                       ? QCoreApplication::translate("MapSheet", "%1 of %2 slots taken, %3 batch")
                       : QCoreApplication::translate("MapSheet", "%1 of %2 slots taken, %3 batches"))
                      .arg(m_wording.number(m_scene.taken), m_wording.number(m_scene.usable),
                           m_wording.number(batches()));
        const QFontMetricsF title(m_type.title);
        const QFontMetricsF body(m_type.body);
        painter.setPen(m_palette.ink);
        painter.setFont(m_type.title);
        const bool beside = title.horizontalAdvance(name) + 24 + body.horizontalAdvance(date) <= right - left;
        painter.drawText(QPointF(left, sheetMargin + 18),
                         title.elidedText(name, Qt::ElideRight, right - left));
        painter.setFont(m_type.body);
        if (beside) painter.drawText(QPointF(right - body.horizontalAdvance(date), sheetMargin + 18), date);
        painter.setPen(m_palette.quietInk);
        painter.setFont(m_type.quiet);
        painter.drawText(QPointF(left, sheetMargin + 40),
                         beside ? totals : date + QStringLiteral(" · ") + totals);
    }

    [[nodiscard]] int batches() const {
        std::vector<BatchId> ids;
        for (const SceneStay& stay : m_scene.stays) ids.push_back(stay.batch);
        std::sort(ids.begin(), ids.end());
        return static_cast<int>(std::unique(ids.begin(), ids.end()) - ids.begin());
    }

    const Palette& m_palette;
    TypeSizes m_type;
    const Wording& m_wording;
    QString m_title;
    MapScene m_scene;
    MapLayout m_layout;
    int m_width;
    int m_height = 0;
};

bool writePng(const Sheet& sheet, QIODevice& device) {
    QImage image(sheet.size(), QImage::Format_RGB32);
    if (image.isNull()) return false;
    QPainter painter(&image);
    sheet.paint(painter, Surface::Pixels);
    painter.end();
    return image.save(&device, "PNG");
}

bool writeSvg(const Sheet& sheet, QIODevice& device) {
    QSvgGenerator generator;
    generator.setOutputDevice(&device);
    generator.setSize(sheet.size());
    generator.setViewBox(QRect(QPoint(0, 0), sheet.size()));
    generator.setTitle(QCoreApplication::translate("MapSheet", "Bench map"));
    QPainter painter;
    if (!painter.begin(&generator)) return false;
    sheet.paint(painter, Surface::Shapes);
    return painter.end();
}

/// One A4 page, upright or on its side as the sheet is, the sheet as large as fits.
bool writePdf(const Sheet& sheet, QIODevice& device) {
    QPdfWriter writer(&device);
    writer.setTitle(QCoreApplication::translate("MapSheet", "Bench map"));
    writer.setResolution(300);
    const bool wide = sheet.size().width() >= sheet.size().height();
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4),
                                     wide ? QPageLayout::Landscape : QPageLayout::Portrait,
                                     QMarginsF(8, 8, 8, 8), QPageLayout::Millimeter));
    QPainter painter;
    if (!painter.begin(&writer)) return false;
    const double share = std::min(static_cast<double>(writer.width()) / sheet.size().width(),
                                  static_cast<double>(writer.height()) / sheet.size().height());
    painter.translate((writer.width() - sheet.size().width() * share) / 2, 0);
    painter.scale(share, share);
    sheet.paint(painter, Surface::Shapes);
    return painter.end();
}

using Writer = bool (*)(const Sheet&, QIODevice&);

/// What writes files of a suffix; null where nothing does.
Writer writerFor(const QString& file) {
    const QString suffix = QFileInfo(file).suffix().toLower();
    if (suffix == QLatin1String("png")) return &writePng;
    if (suffix == QLatin1String("svg")) return &writeSvg;
    if (suffix == QLatin1String("pdf")) return &writePdf;
    return nullptr;
}

} // namespace

Outcome checkMapSheet(const QString& file, const SheetOptions& options) {
    if (!writerFor(file))
        return Refusal{file.toStdString(), phrase("its name ends in '%1'; expected png, svg or pdf",
                                                  QFileInfo(file).suffix().toStdString())};
    if (options.width < leastSheetWidth || options.width > mostSheetWidth)
        return Refusal{
            "width", phrase("%1 pixels; expected %2 to %3", options.width, leastSheetWidth, mostSheetWidth)};
    return std::nullopt;
}

Outcome writeMapSheet(const HouseBook& book, Day day, const QString& file, const SheetOptions& options,
                      const Wording& wording) {
    if (auto refusal = checkMapSheet(file, options)) return refusal;
    QSaveFile target(file);
    if (!target.open(QIODevice::WriteOnly))
        return Refusal{file.toStdString(),
                       phrase("it can't be written: %1", target.errorString().toStdString())};
    const Sheet sheet(book, day, options, wording);
    if (!writerFor(file)(sheet, target) || !target.commit())
        return Refusal{file.toStdString(), phrase("the picture could not be written to the end: %1",
                                                  target.errorString().toStdString())};
    return std::nullopt;
}

} // namespace warmbench::ui
