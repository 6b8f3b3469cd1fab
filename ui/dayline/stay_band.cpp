#include "ui/dayline/stay_band.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int rowHeight = 14;
constexpr int mostRows = 4;
constexpr double gripWidth = 5;

} // namespace

void StayBand::setBars(std::vector<StayBar> bars) {
    const std::optional<StayId> chosenBefore = chosen() ? std::optional(chosen()->stay) : std::nullopt;
    m_bars = std::move(bars);
    std::stable_sort(m_bars.begin(), m_bars.end(),
                     [](const StayBar& a, const StayBar& b) { return a.from < b.from; });
    putBack();
    m_chosen.reset();
    m_rows.clear();
    std::vector<Day> ends;
    for (const StayBar& bar : m_bars) {
        std::size_t row = 0;
        while (row < ends.size() && ends[row] > bar.from) ++row;
        if (row == ends.size()) ends.push_back(bar.to);
        ends[row] = bar.to;
        m_rows.push_back(static_cast<int>(row));
        if (chosenBefore == bar.stay) m_chosen = m_rows.size() - 1;
    }
    m_rowCount = static_cast<int>(ends.size());
}

int StayBand::height() const {
    return m_bars.empty() ? 0 : std::min(m_rowCount, mostRows) * rowHeight + 4;
}

StayBand::Days StayBand::daysOf(std::size_t bar) const {
    const StayBar& one = m_bars[bar];
    return m_held && m_held->stay == one.stay ? *m_held : Days{one.stay, one.from, one.to};
}

QRectF StayBand::rectOf(std::size_t bar, const Frame& frame) const {
    const Days days = daysOf(bar);
    // More rows than there is room for lie closer.
    const double step = m_rowCount <= mostRows ? rowHeight : double(mostRows * rowHeight) / m_rowCount;
    const double left = std::round(frame.left(days.from));
    return {left, frame.area.top() + 2 + m_rows[bar] * step, std::round(frame.left(days.to)) - left,
            std::max(2.0, step - 2)};
}

void StayBand::paint(QPainter& painter, const Frame& frame, const Palette& palette,
                     const TypeSizes& type) const {
    painter.save();
    painter.setClipRect(frame.area.adjusted(-1, 0, 1, 0));
    const QFontMetricsF metrics(type.quiet);
    for (std::size_t i = 0; i < m_bars.size(); ++i) {
        const StayBar& bar = m_bars[i];
        const QRectF rect = rectOf(i, frame);
        if (rect.right() < frame.area.left() || rect.left() > frame.area.right()) continue;
        const bool planned = bar.progress == Progress::Planned;
        const QColor ground = planned ? palette.slot : palette.of(bar.progress);
        const bool marked = m_chosen == i || (m_held && m_held->stay == bar.stay);
        painter.fillRect(rect, ground);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(marked ? palette.ink : palette.accent, marked ? 2 : 1,
                            planned ? Qt::DashLine : Qt::SolidLine));
        painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5));
        const QRectF seen = rect.intersected(frame.area).adjusted(4, 0, -4, 0);
        if (rect.height() >= metrics.ascent() && seen.width() > 24) {
            painter.setPen(palette.textOn(ground));
            painter.setFont(type.quiet);
            painter.drawText(QPointF(seen.left(), rect.center().y() + metrics.ascent() / 2 - 1.5),
                             metrics.elidedText(bar.label, Qt::ElideRight, seen.width()));
        }
        if (!bar.ready) continue;
        const double x = frame.left(*bar.ready);
        const double middle = rect.center().y();
        QPainterPath diamond(QPointF(x, middle - 5));
        diamond.lineTo(x + 5, middle);
        diamond.lineTo(x, middle + 5);
        diamond.lineTo(x - 5, middle);
        diamond.closeSubpath();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.fillPath(diamond, palette.paper);
        painter.setPen(QPen(palette.ink, 1.5));
        painter.drawPath(diamond);
        painter.setRenderHint(QPainter::Antialiasing, false);
    }
    painter.restore();
}

std::optional<std::size_t> StayBand::indexAt(QPointF position, const Frame& frame) const {
    for (std::size_t i = m_bars.size(); i-- > 0;)
        if (rectOf(i, frame).adjusted(-2, -1, 2, 1).contains(position)) return i;
    return std::nullopt;
}

const StayBar* StayBand::barAt(QPointF position, const Frame& frame) const {
    const auto index = indexAt(position, frame);
    return index ? &m_bars[*index] : nullptr;
}

std::optional<StayBand::Grip> StayBand::gripAt(QPointF position, const Frame& frame) const {
    const auto index = indexAt(position, frame);
    if (!index) return std::nullopt;
    const QRectF rect = rectOf(*index, frame);
    const double grip = std::min(gripWidth, rect.width() / 4);
    if (position.x() >= rect.right() - grip) return Grip::End;
    if (m_bars[*index].beginsFixed) return std::nullopt;
    return position.x() <= rect.left() + grip ? Grip::Beginning : Grip::Whole;
}

bool StayBand::press(QPointF position, const Frame& frame) {
    const auto grip = gripAt(position, frame);
    if (!grip) return false;
    m_pressed = indexAt(position, frame);
    m_grip = *grip;
    m_pressedAt = position.x();
    m_chosen = m_pressed;
    putBack();
    m_pressed = m_chosen;
    return true;
}

void StayBand::drag(double x, const Frame& frame) {
    if (!m_pressed) return;
    const int days = static_cast<int>(std::lround((x - m_pressedAt) * frame.days / frame.area.width()));
    m_held.reset();
    hold(*m_pressed);
    if (m_grip != Grip::End) m_held->from = m_held->from + days;
    if (m_grip != Grip::Beginning) m_held->to = m_held->to + days;
    if (m_grip == Grip::Beginning) m_held->from = std::min(m_held->from, m_held->to - 1);
    if (m_grip == Grip::End) m_held->to = std::max(m_held->to, m_held->from + 1);
}

void StayBand::choose(int by) {
    if (m_bars.empty()) return;
    putBack();
    const auto count = static_cast<int>(m_bars.size());
    const int at = m_chosen ? static_cast<int>(*m_chosen) + by : by > 0 ? 0 : count - 1;
    m_chosen = static_cast<std::size_t>(std::clamp(at, 0, count - 1));
}

const StayBar* StayBand::chosen() const {
    return m_chosen && *m_chosen < m_bars.size() ? &m_bars[*m_chosen] : nullptr;
}

void StayBand::hold(std::size_t bar) {
    if (!m_held || m_held->stay != m_bars[bar].stay)
        m_held = Days{m_bars[bar].stay, m_bars[bar].from, m_bars[bar].to};
}

void StayBand::shift(Grip grip, int days) {
    if (!chosen() || (grip != Grip::End && chosen()->beginsFixed)) return;
    hold(*m_chosen);
    if (grip != Grip::End) m_held->from = m_held->from + days;
    if (grip != Grip::Beginning) m_held->to = m_held->to + days;
    if (m_held->to <= m_held->from) {
        if (grip == Grip::End)
            m_held->to = m_held->from + 1;
        else
            m_held->from = m_held->to - 1;
    }
}

std::optional<StayBand::Days> StayBand::letGo() {
    const auto held = m_held;
    m_held.reset();
    m_pressed.reset();
    if (!held) return std::nullopt;
    for (const StayBar& bar : m_bars)
        if (bar.stay == held->stay && bar.from == held->from && bar.to == held->to) return std::nullopt;
    return held;
}

void StayBand::putBack() {
    m_held.reset();
    m_pressed.reset();
}

} // namespace warmbench::ui
