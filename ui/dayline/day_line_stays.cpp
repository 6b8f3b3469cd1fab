#include "ui/dayline/day_line.h"
#include "ui/dayline/day_line_access.h"
#include "ui/words/say.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

/// The bars of stays under the day line, and the days on which batches are to be rooted.
namespace warmbench::ui {

Day DayLine::endDay() const {
    return m_from + daysShown;
}

StayBand::Frame DayLine::bandFrame() const {
    const QRectF area = chart();
    return {QRectF(area.left(), height() - m_band.height(), area.width(), m_band.height()), m_from,
            daysShown};
}

void DayLine::setStays(std::vector<StayBar> bars) {
    m_draggingBar = false;
    m_band.setBars(std::move(bars));
    update();
}

void DayLine::letBarGo() {
    if (const auto days = m_band.letGo()) Q_EMIT stayDaysWanted(days->stay, days->from, days->to);
    update();
}

bool DayLine::bandKey(const QKeyEvent& event) {
    if (m_band.bars().empty()) return false;
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    const bool control = event.modifiers().testFlag(Qt::ControlModifier);
    const auto grip = shift && control ? StayBand::Grip::Whole
                      : shift          ? StayBand::Grip::Beginning
                                       : StayBand::Grip::End;
    switch (event.key()) {
    case Qt::Key_Down:
    case Qt::Key_Up:
        m_band.choose(event.key() == Qt::Key_Down ? 1 : -1);
        break;
    case Qt::Key_Left:
    case Qt::Key_Right:
        if (!m_band.chosen() || !(shift || control)) return false;
        m_band.shift(grip, event.key() == Qt::Key_Right ? 1 : -1);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!m_band.isHolding()) return false;
        letBarGo();
        return true;
    case Qt::Key_Escape:
        if (!m_band.isHolding()) return false;
        m_band.putBack();
        break;
    default:
        return false;
    }
    update();
    tellAccessibility(*this);
    return true;
}

bool DayLine::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const StayBar* bar = m_band.barAt(help->pos(), bandFrame());
    QToolTip::showText(help->globalPos(), bar ? bar->sentence : toolTip(), this);
    return true;
}

/// A ring over each day on which batches are to be rooted, larger for more of them.
void DayLine::paintRooted(QPainter& painter, const QRectF& area) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_palette->ink, 1.5));
    painter.setBrush(m_palette->panel);
    for (int i = 0; i < m_load.days(); ++i) {
        const int batches = m_load.batchesRooted[static_cast<std::size_t>(i)];
        if (batches == 0) continue;
        const double radius = std::min(5.0, 2.5 + 0.5 * batches);
        painter.drawEllipse(QPointF(xOf(m_from + i), area.top() - 4), radius, radius);
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

} // namespace warmbench::ui
