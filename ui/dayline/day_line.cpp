#include "ui/dayline/day_line.h"

#include "ui/dayline/day_line_access.h"
#include "ui/words/say.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int daysBeforeToday = 7 * 4;
/// The handle is never nearer to an end of the line than so many days, where there are days beyond.
constexpr int daysKept = 7;

constexpr double roomOver = 1.08; ///< of the chart over all usable slots
constexpr double strikeBand = 22;
constexpr double tickBand = 22;
constexpr double sideRoom = 12;

} // namespace

DayLine::DayLine(Day today, QWidget* parent)
    : QWidget(parent), m_palette(&lightPalette()), m_today(today), m_day(today),
      m_from(today - daysBeforeToday) {
    installDayLineAccess();
    setObjectName(QStringLiteral("dayLine"));
    setAccessibleName(say("Day shown on the map"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setToolTip(
        say("Left and Right: a day, PgUp and PgDn: a week, Home: today, Space: play\nMarks above: cuttings "
            "struck; rings: batches that are to be rooted"));
    m_play.setInterval(333);
    connect(&m_play, &QTimer::timeout, this, [this] { setDay(m_day + 1); });
}

void DayLine::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
    update();
}

void DayLine::setSource(Source source) {
    m_source = std::move(source);
    refresh();
}

void DayLine::refresh() {
    if (m_source) m_load = m_source(m_from, m_from + daysShown);
    update();
}

void DayLine::showDaysRound(Day day) {
    Day from = m_from;
    if (day < from + daysKept) from = day - daysBeforeToday;
    if (day >= from + daysShown - daysKept) from = day - daysBeforeToday;
    if (from == m_from) return;
    m_from = from;
    refresh();
}

void DayLine::setDay(Day day) {
    if (day == m_day) return;
    m_day = day;
    showDaysRound(day);
    update();
    tellAccessibility(*this);
    Q_EMIT dayChanged(m_day);
}

void DayLine::play(bool on) {
    if (on == m_play.isActive()) return;
    if (on)
        m_play.start();
    else
        m_play.stop();
    Q_EMIT playingChanged(on);
}

std::optional<Day> DayLine::fullest() const {
    std::optional<Day> best;
    int most = 0;
    for (int i = 0; i < m_load.days(); ++i)
        if (const int taken = m_load.taken(m_load.from + i); taken > most) {
            most = taken;
            best = m_load.from + i;
        }
    return best;
}

QString DayLine::sentence() const {
    if (!m_wording) return {};
    if (const StayBar* bar = m_band.chosen()) {
        StayBand::Days days{bar->stay, bar->from, bar->to};
        for (std::size_t i = 0; i < m_band.bars().size(); ++i)
            if (m_band.bars()[i].stay == bar->stay) days = m_band.daysOf(i);
        if (!m_band.isHolding()) return bar->sentence;
        return say("%1; now %2 to %3, Enter keeps it")
            .arg(bar->sentence, m_wording->shortDate(days.from), m_wording->shortDate(days.to));
    }
    return say("%1, %2 of %3 slots taken")
        .arg(m_wording->longDate(m_day), m_wording->number(m_load.taken(m_day)),
             m_wording->number(m_load.usable));
}

QRectF DayLine::chart() const {
    return QRectF(rect()).adjusted(sideRoom, strikeBand, -sideRoom, -tickBand - m_band.height());
}

double DayLine::xOf(Day day) const {
    const QRectF area = chart();
    return area.left() + (day - m_from + 0.5) * area.width() / daysShown;
}

Day DayLine::dayAt(double x) const {
    const QRectF area = chart();
    const int index = static_cast<int>(std::floor((x - area.left()) * daysShown / area.width()));
    return m_from + std::clamp(index, 0, daysShown - 1);
}

void DayLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    painter.fillRect(rect(), m_palette->panel);
    if (!m_type) return;
    const QRectF area = chart();
    paintLoad(painter, area);
    paintStrikes(painter, area);
    paintRooted(painter, area);
    paintTicks(painter, area);
    paintHandle(painter, area);
    paintWords(painter, area);
    m_band.paint(painter, bandFrame(), *m_palette, *m_type);
    if (hasFocus()) {
        painter.setPen(QPen(m_palette->accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void DayLine::paintLoad(QPainter& painter, const QRectF& area) const {
    const double most = std::max(1, m_load.usable) * roomOver;
    const double dayWidth = area.width() / daysShown;
    std::vector<int> below(static_cast<std::size_t>(m_load.days()), 0);
    for (std::size_t heat = 0; heat < m_load.heats.size(); ++heat) {
        const QColor colour = m_palette->heatAt(m_load.heats[heat]);
        for (std::size_t day = 0; day < below.size(); ++day) {
            const int taken = m_load.takenByHeat[heat][day];
            if (taken == 0) continue;
            const double top = area.bottom() - (below[day] + taken) * area.height() / most;
            const double bottom = area.bottom() - below[day] * area.height() / most;
            const auto edge = [&](std::size_t of) {
                return static_cast<int>(std::lround(area.left() + static_cast<double>(of) * dayWidth));
            };
            // Whole pixels: neighbouring days neither overlap nor leave a gap.
            const QRect bar(QPoint(edge(day), static_cast<int>(std::lround(top))),
                            QPoint(edge(day + 1) - 1, static_cast<int>(std::lround(bottom)) - 1));
            painter.fillRect(bar, colour);
            below[day] += taken;
        }
    }
    painter.fillRect(QRectF(area.left(), area.bottom(), area.width(), 1), m_palette->benchEdge);
    if (m_load.usable == 0) return;
    const double limit = limitY(area);
    painter.setPen(QPen(m_palette->quietInk, 1, Qt::DashLine));
    painter.drawLine(QPointF(area.left(), limit), QPointF(area.right(), limit));
}

double DayLine::limitY(const QRectF& area) const {
    return area.bottom() - area.height() / roomOver;
}

void DayLine::paintStrikes(QPainter& painter, const QRectF& area) const {
    int most = 1;
    for (const int cuttings : m_load.cuttingsStruck) most = std::max(most, cuttings);
    for (int i = 0; i < m_load.days(); ++i) {
        const int cuttings = m_load.cuttingsStruck[static_cast<std::size_t>(i)];
        if (cuttings == 0) continue;
        const double height = 3 + 9.0 * cuttings / most;
        const QRectF mark(xOf(m_from + i) - 1.5, area.top() - 8 - height, 3, height);
        painter.fillRect(mark, m_palette->accent);
    }
}

void DayLine::paintTicks(QPainter& painter, const QRectF& area) const {
    painter.setFont(m_type->quiet);
    const QFontMetricsF metrics(m_type->quiet);
    const int firstOfWeek = m_wording->locale().firstDayOfWeek() - 1; // Qt counts Monday as 1
    double freeFrom = area.left() - sideRoom;
    for (int i = 0; i < daysShown; ++i) {
        const Day day = m_from + i;
        if (day.weekday() != firstOfWeek) continue;
        const double x = area.left() + i * area.width() / daysShown;
        painter.fillRect(QRectF(x, area.bottom(), 1, 4), m_palette->benchEdge);
        const QString words = m_wording->shortDate(day);
        const double left = x - 2;
        if (left < freeFrom || left + metrics.horizontalAdvance(words) > width() - 2) continue;
        painter.setPen(m_palette->quietInk);
        painter.drawText(QPointF(left, area.bottom() + 5 + metrics.ascent()), words);
        freeFrom = left + metrics.horizontalAdvance(words) + 10;
    }
}

void DayLine::paintHandle(QPainter& painter, const QRectF& area) const {
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_today >= m_from && m_today < m_from + daysShown) {
        const double x = xOf(m_today);
        painter.setPen(QPen(m_palette->ink, 1, Qt::DotLine));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    }
    const double x = xOf(m_day);
    painter.setPen(QPen(m_palette->ink, 2));
    painter.drawLine(QPointF(x, area.top() - 6), QPointF(x, area.bottom()));
    QPainterPath flag(QPointF(x - 7, area.top() - 20));
    flag.lineTo(x + 7, area.top() - 20);
    flag.lineTo(x + 7, area.top() - 10);
    flag.lineTo(x, area.top() - 3);
    flag.lineTo(x - 7, area.top() - 10);
    flag.closeSubpath();
    painter.fillPath(flag, m_palette->ink);
    painter.setRenderHint(QPainter::Antialiasing, false);
}

void DayLine::keyPressEvent(QKeyEvent* event) {
    if (bandKey(*event)) return;
    switch (event->key()) {
    case Qt::Key_Left:
        return setDay(m_day - 1);
    case Qt::Key_Right:
        return setDay(m_day + 1);
    case Qt::Key_PageUp:
        return setDay(m_day - 7);
    case Qt::Key_PageDown:
        return setDay(m_day + 7);
    case Qt::Key_Home:
        return setDay(m_today);
    case Qt::Key_Space:
        return play(!isPlaying());
    default:
        QWidget::keyPressEvent(event);
    }
}

void DayLine::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    m_draggingBar = m_band.press(event->position(), bandFrame());
    if (m_draggingBar || m_band.barAt(event->position(), bandFrame()))
        update();
    else
        setDay(dayAt(event->position().x()));
}

void DayLine::mouseMoveEvent(QMouseEvent* event) {
    const auto grip = m_band.gripAt(event->position(), bandFrame());
    if (!m_draggingBar)
        setCursor(!grip                            ? Qt::ArrowCursor
                  : *grip == StayBand::Grip::Whole ? Qt::OpenHandCursor
                                                   : Qt::SizeHorCursor);
    if (!event->buttons().testFlag(Qt::LeftButton)) return;
    if (m_draggingBar) {
        m_band.drag(event->position().x(), bandFrame());
        update();
    } else if (!m_band.barAt(event->position(), bandFrame())) {
        setDay(dayAt(event->position().x()));
    }
}

void DayLine::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !m_draggingBar) return;
    m_draggingBar = false;
    letBarGo();
}

void DayLine::wheelEvent(QWheelEvent* event) {
    const int notches = event->angleDelta().y() / 120;
    if (notches != 0) setDay(m_day - notches);
    event->accept();
}

void DayLine::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void DayLine::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace warmbench::ui
