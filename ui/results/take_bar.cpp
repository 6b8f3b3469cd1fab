#include "ui/results/take_bar.h"

#include <QLocale>
#include <QPainter>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int barWidth = 300;
constexpr int edge = 22;
constexpr int marks = 4;

} // namespace

double TakeBarColumn::at(const QRect& cell, double percent) const {
    return cell.left() + edge + (percent - m_least) / (m_most - m_least) * (cell.width() - 2 * edge);
}

QSize TakeBarColumn::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return {barWidth, std::max(28, QStyledItemDelegate::sizeHint(option, index).height())};
}

void TakeBarColumn::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    QStyledItemDelegate::paint(painter, option, index);
    const QVariant data = index.data(role);
    if (!m_palette || !data.isValid()) return;
    const auto bar = data.value<TakeBar>();
    const QRect cell = option.rect;
    const bool selected = option.state & QStyle::State_Selected;
    const QColor ink = selected ? option.palette.color(QPalette::HighlightedText) : m_palette->ink;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(selected ? ink : m_palette->rule, 1));
    for (int i = 0; i <= marks; ++i) {
        const double x = at(cell, m_least + (m_most - m_least) * i / marks);
        painter->drawLine(QPointF(x, cell.top()), QPointF(x, cell.bottom() + 1));
    }
    const double y = cell.center().y() + 0.5;
    if (bar.recipeLow && bar.recipeHigh) {
        constexpr double half = 8;
        const QRectF range(QPointF(at(cell, *bar.recipeLow), y - half),
                           QPointF(at(cell, *bar.recipeHigh), y + half));
        painter->setBrush(selected ? QBrush(Qt::NoBrush) : QBrush(m_palette->accentGround));
        painter->setPen(QPen(selected ? ink : m_palette->accent, 1));
        painter->drawRect(range);
    }
    painter->setPen(QPen(ink, 2));
    painter->drawLine(QPointF(at(cell, bar.low), y), QPointF(at(cell, bar.high), y));
    constexpr double tick = 4;
    for (const double end : {bar.low, bar.high})
        painter->drawLine(QPointF(at(cell, end), y - tick), QPointF(at(cell, end), y + tick));
    painter->setBrush(ink);
    painter->setPen(Qt::NoPen);
    painter->drawEllipse(QPointF(at(cell, bar.middle), y), tick, tick);
    painter->restore();
}

TakeBarHeader::TakeBarHeader(int column, const TakeBarColumn* bars, QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent), m_column(column), m_bars(bars) {
    setStretchLastSection(true);
    setSectionsMovable(false);
    setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

void TakeBarHeader::paintSection(QPainter* painter, const QRect& rect, int column) const {
    painter->save();
    QHeaderView::paintSection(painter, rect, column);
    painter->restore();
    // A table without rows gives the bars no room, and its head no scale.
    if (column != m_column ||
        rect.width() < (marks + 1) * fontMetrics().horizontalAdvance(QStringLiteral("100 %")))
        return;
    painter->save();
    painter->setPen(palette().color(QPalette::ButtonText));
    for (int i = 0; i <= marks; ++i) {
        const double percent = m_bars->least() + (m_bars->most() - m_bars->least()) * i / marks;
        const double x = m_bars->at(rect, percent);
        painter->drawText(QRectF(x - 40, rect.top(), 80, rect.height()), Qt::AlignCenter,
                          QLocale().toString(percent, 'f', 0) +
                              (m_bars->least() < 0 ? QString() : QStringLiteral(" %")));
    }
    painter->restore();
}

} // namespace warmbench::ui
