#include "ui/shell/tray_card.h"

#include "ui/words/taxon_text.h"

#include <QPainter>

namespace warmbench::ui {
namespace {

constexpr int cardHeight = 68;
constexpr int dayHeight = 32;
constexpr int letterBox = 28;

} // namespace

void TrayCard::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = type;
    m_wording = wording;
}

QSize TrayCard::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    return {120, index.data(BatchRole).isValid() ? cardHeight : dayHeight};
}

void TrayCard::paintDay(QPainter& painter, const QRect& area, const QString& words) const {
    painter.setFont(m_type.quiet);
    painter.setPen(m_palette->quietInk);
    const QFontMetrics metrics(m_type.quiet);
    painter.drawText(area.adjusted(4, 0, -4, -4), Qt::AlignLeft | Qt::AlignBottom,
                     metrics.elidedText(words, Qt::ElideRight, area.width() - 8));
}

void TrayCard::paintTaxon(QPainter& painter, QPointF at, int width, const QString& name) const {
    const double end = at.x() + width;
    for (const TaxonRun& run : taxonRuns(name.toStdString())) {
        QFont font = m_type.quiet;
        font.setWeight(QFont::DemiBold);
        font.setItalic(run.italic);
        const QFontMetricsF metrics(font);
        const QString fitting = metrics.elidedText(run.text, Qt::ElideRight, end - at.x());
        painter.setFont(font);
        painter.drawText(at, fitting);
        at.rx() += metrics.horizontalAdvance(run.text);
        if (fitting != run.text) return;
    }
}

void TrayCard::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    painter->save();
    painter->setLayoutDirection(Qt::LayoutDirectionAuto);
    if (!index.data(BatchRole).isValid()) {
        paintDay(*painter, option.rect, index.data(Qt::DisplayRole).toString());
        painter->restore();
        return;
    }
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const QRect card = option.rect.adjusted(2, 2, -2, -4);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(selected ? m_palette->accent : m_palette->rule, selected ? 2 : 1));
    painter->setBrush(selected ? m_palette->accentGround : m_palette->paper);
    painter->drawRoundedRect(QRectF(card).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    const QRect box(card.left() + 8, card.top() + 8, letterBox, 24);
    painter->setPen(QPen(m_palette->accent, 1, Qt::DashLine));
    painter->setBrush(m_palette->slot);
    painter->drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    painter->setPen(m_palette->ink);
    painter->setFont(m_type.strong);
    painter->drawText(box, Qt::AlignCenter, index.data(LettersRole).toString());
    const QFontMetrics quiet(m_type.quiet);
    const int left = box.right() + 9;
    const int width = card.right() - 8 - left;
    paintTaxon(*painter, QPointF(left, card.top() + 8 + quiet.ascent()), width,
               index.data(TaxonRole).toString());
    painter->setPen(m_palette->quietInk);
    painter->setFont(m_type.quiet);
    painter->drawText(QPoint(left, card.top() + 25 + quiet.ascent()),
                      quiet.elidedText(index.data(WoodRole).toString(), Qt::ElideRight, width));
    const Celsius ideal{index.data(HeatRole).toLongLong()};
    const QString heat = m_wording.temperature(ideal);
    const QRect chip(card.left() + 8, card.bottom() - 22, quiet.horizontalAdvance(heat) + 10, 18);
    const QColor ground = m_palette->heatAt(ideal);
    painter->fillRect(chip, ground);
    painter->setPen(m_palette->textOn(ground));
    painter->drawText(chip, Qt::AlignCenter, heat);
    painter->setPen(m_palette->ink);
    const QString pots = index.data(PotsRole).toString();
    painter->drawText(QPoint(chip.right() + 9, chip.top() + quiet.ascent() + 2), pots);
    const QString place = index.data(PlaceRole).toString();
    const int placeLeft = card.right() - 8 - quiet.horizontalAdvance(place);
    if (placeLeft > chip.right() + 9 + quiet.horizontalAdvance(pots) + 6) {
        painter->setPen(m_palette->quietInk);
        painter->drawText(QPoint(placeLeft, chip.top() + quiet.ascent() + 2), place);
    }
    painter->restore();
}

} // namespace warmbench::ui
