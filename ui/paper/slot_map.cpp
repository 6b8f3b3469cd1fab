#include "ui/paper/slot_map.h"

#include "core/book/query.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <set>

namespace warmbench::ui {
namespace {

constexpr double titleLines = 1.6;
constexpr double cellLines = 1.25;
constexpr double legendLines = 1.3;
/// The grid takes at most this part of the width.
constexpr double gridPart = 0.6;

/// Containers of one batch on a map.
struct MappedBatch {
    QString letter;
    QString words;
    bool shown = false;
    std::vector<SlotRect> places;
};

/// All that a map shows, apart from the book.
struct MappedZone {
    QString title;
    int rows = 1;
    int cols = 1;
    std::vector<Slot> blocked;
    std::vector<MappedBatch> batches;
    SlotMapLook look;
};

MappedBatch mapped(const HouseBook& book, const Stay& stay, const Letters& letters, const Wording& wording) {
    const Batch& batch = book.get<Batch>(stay.batch);
    MappedBatch one;
    one.letter = letters.of(batch.id);
    QString name;
    for (const TaxonRun& run : taxonRuns(book.get<Taxon>(batch.taxon).name)) name += run.text;
    one.words = one.letter + QStringLiteral("  ") + text(batch.code) + QStringLiteral("  ") + name +
                QStringLiteral(", ") +
                wording.containers(static_cast<int>(stay.places.size()),
                                   book.get<ContainerType>(batch.containerType));
    for (const Place& place : stay.places) one.places.push_back(place.slots);
    return one;
}

class SlotPainter {
public:
    SlotPainter(QPainter& painter, const MappedZone& zone, const QRectF& area, const QFont& font)
        : m_painter(painter), m_zone(zone), m_area(area), m_metrics(font, painter.device()) {
        painter.setFont(font);
        m_line = m_metrics.height();
        m_cell = std::min(cellLines * m_line, gridPart * area.width() / zone.cols);
        m_top = area.top() + titleLines * m_line;
    }

    void paint() {
        m_painter.setPen(m_zone.look.ink);
        m_painter.drawText(QRectF(m_area.left(), m_area.top(), m_area.width(), titleLines * m_line),
                           Qt::AlignLeft | Qt::AlignVCenter, m_zone.title);
        m_painter.setPen(QPen(m_zone.look.taken, m_line / 25));
        m_painter.setBrush(m_zone.look.slot);
        for (int row = 0; row < m_zone.rows; ++row)
            for (int col = 0; col < m_zone.cols; ++col) m_painter.drawRect(rectOf({row, col, 1, 1}));
        for (const Slot slot : m_zone.blocked) {
            const QRectF box = rectOf({slot.row, slot.col, 1, 1});
            m_painter.drawLine(box.topLeft(), box.bottomRight());
            m_painter.drawLine(box.bottomLeft(), box.topRight());
        }
        for (const MappedBatch& batch : m_zone.batches) paintBatch(batch);
        paintLegend();
    }

private:
    [[nodiscard]] QRectF rectOf(const SlotRect& slots) const {
        return {m_area.left() + slots.col * m_cell, m_top + slots.row * m_cell, slots.width * m_cell,
                slots.height * m_cell};
    }

    void paintBatch(const MappedBatch& batch) {
        for (const SlotRect& place : batch.places) {
            const QRectF box = rectOf(place).adjusted(m_cell / 12, m_cell / 12, -m_cell / 12, -m_cell / 12);
            m_painter.setPen(batch.shown ? QPen(m_zone.look.ink, m_line / 10)
                                         : QPen(m_zone.look.taken, m_line / 15));
            m_painter.setBrush(batch.shown ? QBrush(m_zone.look.chosen)
                                           : QBrush(m_zone.look.taken, Qt::BDiagPattern));
            m_painter.drawRect(box);
            if (!batch.shown || m_metrics.horizontalAdvance(batch.letter) > box.width()) continue;
            m_painter.setPen(m_zone.look.onChosen);
            m_painter.drawText(box, Qt::AlignCenter, batch.letter);
        }
    }

    void paintLegend() {
        const double left = m_area.left() + m_zone.cols * m_cell + m_line;
        double top = m_top;
        m_painter.setPen(m_zone.look.ink);
        for (const MappedBatch& batch : m_zone.batches) {
            if (!batch.shown) continue;
            m_painter.drawText(QRectF(left, top, m_area.right() - left, 2 * legendLines * m_line),
                               Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, batch.words);
            top += 2 * legendLines * m_line;
        }
    }

    QPainter& m_painter;
    const MappedZone& m_zone;
    QRectF m_area;
    QFontMetricsF m_metrics;
    double m_line = 0;
    double m_cell = 0;
    double m_top = 0;
};

} // namespace

std::optional<ZoneId> firstZoneOf(const HouseBook& book, BatchId batch) {
    const std::vector<const Stay*> stays = staysInOrder(book, batch);
    if (stays.empty()) return std::nullopt;
    return stays.front()->zone;
}

Plot slotMap(const HouseBook& book, ZoneId id, Day day, const std::vector<BatchId>& batches,
             const Letters& letters, const Wording& wording, const SlotMapLook& look) {
    const Zone& zone = book.get<Zone>(id);
    MappedZone map;
    map.title = text(houseOf(book, zone).name) + QStringLiteral(" · ") + text(zoneTitle(book, id)) +
                say(", back row above");
    map.rows = zone.rows;
    map.cols = zone.cols;
    map.blocked = zone.blocked;
    map.look = look;
    double shown = 0;
    const auto add = [&](const Stay& stay, bool isShown) {
        map.batches.push_back(mapped(book, stay, letters, wording));
        map.batches.back().shown = isShown;
        shown += isShown ? 1 : 0;
    };
    std::set<BatchId> seen;
    for (const StayId stayId : book.staysMeeting(id, day, day + 1)) {
        const Stay& stay = book.get<Stay>(stayId);
        const bool wanted = std::find(batches.begin(), batches.end(), stay.batch) != batches.end();
        add(stay, wanted);
        if (wanted) seen.insert(stay.batch);
    }
    // What was left on days before, or is to stand there later, is shown as well.
    for (const BatchId batch : batches)
        for (const Stay* stay : staysInOrder(book, batch))
            if (stay->zone == id && seen.insert(batch).second) add(*stay, true);
    return {titleLines + std::max(cellLines * zone.rows, 2 * legendLines * shown) + 0.4,
            [map](QPainter& painter, const QRectF& area, const QFont& font) {
                SlotPainter(painter, map, area, font).paint();
            }};
}

} // namespace warmbench::ui
