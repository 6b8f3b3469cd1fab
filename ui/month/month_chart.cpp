#include "ui/month/month_chart.h"

#include <QFontMetricsF>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr double chartLabelPart = 0.36;
constexpr double margin = 8;

MonthLook lookOf(const Palette& palette) {
    MonthLook look;
    look.ink = palette.ink;
    look.quietInk = palette.quietInk;
    look.rule = palette.rule;
    look.noHands = palette.bench;
    look.window = palette.quietInk;
    look.chosen = palette.accent;
    look.onChosen = palette.textOn(palette.accent);
    look.over = palette.trouble;
    look.current = palette.accentGround;
    return look;
}

} // namespace

MonthChart::MonthChart(QWidget* parent) : QAbstractScrollArea(parent) {
    setObjectName(QStringLiteral("monthChart"));
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setMouseTracking(true);
}

void MonthChart::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
}

void MonthChart::showMonth(season::MonthPlan plan, std::vector<MonthLine> lines) {
    m_plan = std::move(plan);
    m_lines = std::move(lines);
    m_dragging = false;
    m_current = m_lines.empty() ? -1 : std::clamp(m_current, 0, static_cast<int>(m_lines.size()) - 1);
    setScrollRange();
    viewport()->update();
    Q_EMIT currentChanged(m_current);
}

MonthGrid MonthChart::grid() const {
    MonthGrid grid;
    grid.from = m_plan.from;
    grid.days = std::max(1, m_plan.days);
    const QFontMetricsF metrics(m_type->body);
    grid.line = metrics.height();
    double labels = metrics.horizontalAdvance(tr("Cuttings planned, hands for"));
    for (const MonthLine& line : m_lines)
        labels = std::max(labels, metrics.horizontalAdvance(line.label + tr(" · late")));
    const double width = viewport()->width() - 2 * margin;
    grid.left = margin + std::min(labels + grid.line, chartLabelPart * width);
    grid.dayWidth = (viewport()->width() - margin - grid.left) / grid.days;
    return grid;
}

double MonthChart::top() const {
    const MonthGrid all = grid();
    return margin + all.headHeight() + all.handsHeight() + 4;
}

void MonthChart::setScrollRange() {
    if (!m_type) return;
    const int line = static_cast<int>(grid().rowHeight());
    const int room = static_cast<int>(viewport()->height() - top());
    verticalScrollBar()->setPageStep(std::max(1, room));
    verticalScrollBar()->setSingleStep(line);
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(m_lines.size()) * line + line - room));
}

void MonthChart::resizeEvent(QResizeEvent* /*event*/) {
    setScrollRange();
}

void MonthChart::paintEvent(QPaintEvent* /*event*/) {
    if (!m_type) return;
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(viewport()->rect(), m_palette->panel);
    painter.setFont(m_type->body);
    const MonthGrid days = grid();
    const MonthLook look = lookOf(*m_palette);
    paintMonthHead(painter, days, m_plan, look, *m_wording, margin, viewport()->height());
    const double hands = margin + days.headHeight();
    paintMonthHands(painter, days, m_plan, look, *m_wording, hands);
    const double labels = days.left - margin - days.line / 2;
    painter.setPen(look.quietInk);
    painter.drawText(QRectF(margin, hands, labels, days.handsHeight()),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, tr("Cuttings planned, hands for"));
    painter.setClipRect(QRectF(0, top(), viewport()->width(), viewport()->height() - top()));
    const int scrolled = verticalScrollBar()->value();
    const QFontMetricsF metrics(m_type->body);
    for (int i = 0; i < static_cast<int>(m_lines.size()); ++i) {
        const double y = top() + i * static_cast<int>(days.rowHeight()) - scrolled;
        if (y + days.rowHeight() < top() || y > viewport()->height()) continue;
        const QRectF row(margin / 2, y, days.left - margin / 2 - days.line / 4, days.rowHeight());
        if (i == m_current) {
            painter.fillRect(row, look.current);
            painter.setPen(QPen(hasFocus() ? m_palette->accent : m_palette->rule, hasFocus() ? 2 : 1));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(row.adjusted(1, 1, -1, -1));
        }
        MonthLine line = m_lines[static_cast<std::size_t>(i)];
        // What finds no room is whole in the words under the chart and in the tip.
        const double late = line.late ? metrics.horizontalAdvance(tr(" · late")) : 0;
        line.label = metrics.elidedText(line.label, Qt::ElideRight, labels - late - 2);
        paintMonthLine(painter, days, line, look, QRectF(margin, y, labels, days.rowHeight()), y);
    }
}

int MonthChart::lineAt(const QPoint& point) const {
    if (point.y() < top()) return -1;
    const int line = static_cast<int>(point.y() - top() + verticalScrollBar()->value()) /
                     static_cast<int>(grid().rowHeight());
    return line < static_cast<int>(m_lines.size()) ? line : -1;
}

std::optional<Day> MonthChart::dayAt(const QPoint& point) const {
    const MonthGrid days = grid();
    const double day = (point.x() - days.left) / days.dayWidth;
    if (day < 0 || day >= days.days) return std::nullopt;
    return days.from + static_cast<int>(day);
}

QPoint MonthChart::pointOf(int line, Day day) const {
    const MonthGrid days = grid();
    const double y = top() + (line + 0.5) * static_cast<int>(days.rowHeight()) - verticalScrollBar()->value();
    return {static_cast<int>(days.x(day - days.from) + days.dayWidth / 2), static_cast<int>(y)};
}

bool MonthChart::canMove(int line) const {
    if (line < 0) return false;
    const MonthLine& one = m_lines[static_cast<std::size_t>(line)];
    return one.chosen && !one.struck;
}

void MonthChart::setCurrent(int line) {
    if (line < 0 || line >= static_cast<int>(m_lines.size())) return;
    dropTried();
    m_current = line;
    const int height = static_cast<int>(grid().rowHeight());
    const int room = static_cast<int>(viewport()->height() - top());
    QScrollBar* bar = verticalScrollBar();
    bar->setValue(std::clamp(bar->value(), (line + 1) * height - room, line * height));
    viewport()->update();
    Q_EMIT currentChanged(line);
}

void MonthChart::dropTried() {
    if (m_current < 0) return;
    m_dragging = false;
    MonthLine& line = m_lines[static_cast<std::size_t>(m_current)];
    if (!line.tried) return;
    line.tried.reset();
    viewport()->update();
    Q_EMIT moveTried(m_current, *line.chosen);
}

void MonthChart::tryDay(Day day) {
    MonthLine& line = m_lines[static_cast<std::size_t>(m_current)];
    const Day before = line.tried.value_or(*line.chosen);
    if (day == before) return;
    line.tried = day == *line.chosen ? std::optional<Day>() : day;
    viewport()->update();
    Q_EMIT moveTried(m_current, day);
}

void MonthChart::keyPressEvent(QKeyEvent* event) {
    const bool moves = canMove(m_current);
    const auto tried = [&] {
        const MonthLine& line = m_lines[static_cast<std::size_t>(m_current)];
        return line.tried.value_or(*line.chosen);
    };
    const int page = std::max(1, verticalScrollBar()->pageStep() / verticalScrollBar()->singleStep());
    switch (event->key()) {
    case Qt::Key_Up:
        return setCurrent(m_current - 1);
    case Qt::Key_Down:
        return setCurrent(m_current + 1);
    case Qt::Key_PageUp:
        return setCurrent(std::max(0, m_current - page));
    case Qt::Key_PageDown:
        return setCurrent(std::min(static_cast<int>(m_lines.size()) - 1, m_current + page));
    case Qt::Key_Left:
        return moves ? tryDay(std::max(m_plan.from, tried() - 1)) : void();
    case Qt::Key_Right:
        return moves ? tryDay(std::min(m_plan.from + (m_plan.days - 1), tried() + 1)) : void();
    case Qt::Key_Escape:
        return dropTried();
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (moves && m_lines[static_cast<std::size_t>(m_current)].tried)
            Q_EMIT moveWanted(m_current, tried());
        else if (m_current >= 0)
            Q_EMIT activated(m_current);
        return;
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void MonthChart::mousePressEvent(QMouseEvent* event) {
    const int line = lineAt(event->pos());
    if (line < 0 || event->button() != Qt::LeftButton) return;
    setCurrent(line);
    const auto day = dayAt(event->pos());
    m_dragging = canMove(line) && day == m_lines[static_cast<std::size_t>(line)].chosen;
}

void MonthChart::mouseMoveEvent(QMouseEvent* event) {
    const auto day = dayAt(event->pos());
    if (m_dragging) {
        if (day) tryDay(*day);
        return;
    }
    const int line = lineAt(event->pos());
    const bool grips = canMove(line) && day == m_lines[static_cast<std::size_t>(line)].chosen;
    viewport()->setCursor(grips ? Qt::OpenHandCursor : Qt::ArrowCursor);
}

void MonthChart::mouseReleaseEvent(QMouseEvent* /*event*/) {
    if (!m_dragging) return;
    m_dragging = false;
    if (const auto tried = m_lines[static_cast<std::size_t>(m_current)].tried)
        Q_EMIT moveWanted(m_current, *tried);
}

void MonthChart::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->pos().y() < top()) {
        if (const auto day = dayAt(event->pos())) Q_EMIT handsWanted(*day);
    } else if (lineAt(event->pos()) >= 0) {
        Q_EMIT activated(m_current);
    }
}

QString MonthChart::handsWords(Day day) const {
    const season::DayHands& hands = m_plan.hands[static_cast<std::size_t>(day - m_plan.from)];
    QString words = tr("%1: %2 planned, hands for %3")
                        .arg(m_wording->longDate(day), m_wording->cuttings(hands.cuttings),
                             m_wording->number(hands.hands));
    if (!hands.note.empty()) words += QStringLiteral(" (") + text(hands.note) + u')';
    return words;
}

bool MonthChart::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip && m_type) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int line = lineAt(help->pos());
        QString words = line < 0 ? QString() : m_lines[static_cast<std::size_t>(line)].label;
        if (const auto day = dayAt(help->pos()); day && help->pos().y() < top()) words = handsWords(*day);
        QToolTip::showText(help->globalPos(), words, this);
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

} // namespace warmbench::ui
