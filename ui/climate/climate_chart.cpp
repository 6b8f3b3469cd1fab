#include "ui/climate/climate_chart.h"

#include "core/climate/curve.h"
#include "ui/climate/time_ticks.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QLegendMarker>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

constexpr double shortestShown = 6 * 60;
constexpr double thin = 1.2;
constexpr double thick = 2;

} // namespace

void ClimateChart::Span::include(double value) {
    low = any ? std::min(low, value) : value;
    high = any ? std::max(high, value) : value;
    any = true;
}

ClimateChart::ClimateChart(QWidget* parent)
    : QChartView(new QChart, parent), m_times(new QCategoryAxis(this)), m_degrees(new QValueAxis(this)),
      m_pressure(new QValueAxis(this)) {
    setObjectName(QStringLiteral("climateChart"));
    setAccessibleName(tr("Temperatures over time"));
    setFocusPolicy(Qt::StrongFocus);
    setMinimumHeight(220);
    chart()->setBackgroundRoundness(0);
    chart()->addAxis(m_times, Qt::AlignBottom);
    chart()->addAxis(m_degrees, Qt::AlignLeft);
    chart()->addAxis(m_pressure, Qt::AlignRight);
    m_times->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    m_times->setStartValue(0);
    chart()->legend()->setAlignment(Qt::AlignTop);
    m_deficit.onRight = true;
}

void ClimateChart::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_wording = wording;
    chart()->setBackgroundBrush(palette.panel);
    chart()->legend()->setLabelColor(palette.ink);
    chart()->legend()->setFont(type.quiet);
    // The last time stands in the middle under the chart's right edge.
    const int half = QFontMetrics(type.quiet).horizontalAdvance(QStringLiteral("30 Nov 00:00")) / 2;
    chart()->setMargins({4, 4, 4 + half, 4});
    for (QAbstractAxis* axis : {static_cast<QAbstractAxis*>(m_times), static_cast<QAbstractAxis*>(m_degrees),
                                static_cast<QAbstractAxis*>(m_pressure)}) {
        axis->setLabelsFont(type.quiet);
        axis->setTitleFont(type.quiet);
        axis->setLabelsBrush(palette.quietInk);
        axis->setTitleBrush(palette.quietInk);
        axis->setLinePenColor(palette.benchEdge);
        axis->setGridLineColor(palette.rule);
    }
    m_pressure->setGridLineVisible(false);
    // Each line has a stroke of its own, so that colour need not tell them apart.
    m_rootZone.pen = QPen(palette.ink, thick);
    m_rootZone.name = tr("root zone");
    m_air.pen = QPen(palette.accent, thin);
    m_air.name = tr("air");
    m_deficit.pen = QPen(palette.quietInk, thin, Qt::DashDotLine);
    m_deficit.name = tr("vapour pressure deficit");
    m_setPoint.pen = QPen(palette.heatAt(Celsius{240}), thick, Qt::DashLine);
    m_setPoint.name = tr("set-point");
    m_low.pen = QPen(palette.trouble, thin, Qt::DotLine);
    m_low.name = tr("range of what roots there");
    m_high.pen = m_low.pen;
    draw();
}

void ClimateChart::setClimate(forecast::PlaceClimate climate, Day from, Day to) {
    m_climate = std::move(climate);
    m_first = from.number() * minutesADay;
    m_last = to.number() * minutesADay;
    setWindow(m_from, m_to);
}

void ClimateChart::setWindow(double from, double to) {
    const double whole = m_last - m_first;
    const double length = std::min(std::max(to - from, shortestShown), whole);
    const double begins = std::clamp(from, m_first, std::max(m_first, m_last - length));
    const bool other = begins != m_from || begins + length != m_to;
    m_from = begins;
    m_to = begins + length;
    draw();
    if (other) Q_EMIT windowChanged();
}

void ClimateChart::setDeficitShown(bool on) {
    m_deficitShown = on;
    draw();
}

void ClimateChart::zoom(double factor, double around) {
    const double length = (m_to - m_from) / factor;
    const double part = (around - m_from) / (m_to - m_from);
    setWindow(around - part * length, around + (1 - part) * length);
}

int ClimateChart::pointsDrawn() const {
    qsizetype points = 0;
    for (const Curve* curve : {&m_rootZone, &m_air, &m_deficit, &m_setPoint, &m_low, &m_high})
        for (const QLineSeries* piece : curve->pieces) points += piece->count();
    return static_cast<int>(points);
}

double ClimateChart::shown(double celsius) const {
    return m_wording.isFahrenheit() ? celsius * 9 / 5 + 32 : celsius;
}

double ClimateChart::minuteAt(double x) const {
    const QRectF area = chart()->plotArea();
    return m_from + (x - area.left()) / std::max(1.0, area.width()) * (m_to - m_from);
}

void ClimateChart::setPieces(Curve& curve, const QList<QList<QPointF>>& pieces) {
    while (curve.pieces.size() < static_cast<std::size_t>(pieces.size())) {
        auto* series = new QLineSeries(this);
        chart()->addSeries(series);
        series->attachAxis(m_times);
        series->attachAxis(curve.onRight ? m_pressure : m_degrees);
        curve.pieces.push_back(series);
    }
    for (std::size_t i = 0; i < curve.pieces.size(); ++i) {
        QLineSeries* series = curve.pieces[i];
        const bool used = i < static_cast<std::size_t>(pieces.size());
        series->replace(used ? pieces[static_cast<qsizetype>(i)] : QList<QPointF>{});
        series->setPen(curve.pen);
        series->setName(curve.name);
        for (QLegendMarker* marker : chart()->legend()->markers(series))
            marker->setVisible(i == 0 && used && !curve.name.isEmpty());
    }
}

void ClimateChart::drawReadings(Curve& curve, const std::vector<climate::MinuteReading>& readings,
                                Span& span) {
    const int columns = std::max(100, static_cast<int>(chart()->plotArea().width()));
    QList<QList<QPointF>> pieces;
    for (const auto& line : climate::curvesOf(readings, m_from, m_to, columns)) {
        QList<QPointF> points;
        for (const climate::CurvePoint& point : line) {
            const double value = curve.onRight ? point.value : shown(point.value);
            points.append({point.minute, value});
            if (point.minute >= m_from && point.minute <= m_to) span.include(value);
        }
        pieces.append(points);
    }
    setPieces(curve, pieces);
}

void ClimateChart::drawExpected(Span& span) {
    const auto steps = [&](Curve& curve, auto valueOf) {
        QList<QList<QPointF>> pieces;
        bool going = false;
        for (const forecast::ExpectedDay& one : m_climate.expected) {
            const double begins = one.day.number() * minutesADay;
            if (begins + minutesADay < m_from || begins > m_to) continue;
            const std::optional<Celsius> value = valueOf(one);
            if (!value) {
                going = false;
                continue;
            }
            const double level = shown(value->units());
            span.include(level);
            if (!going) pieces.append(QList<QPointF>{});
            going = true;
            auto& points = pieces.back();
            // Where nothing changes, two points are enough for any number of days.
            if (points.size() >= 2 && points.back().y() == level)
                points.back().setX(begins + minutesADay);
            else
                points << QPointF(begins, level) << QPointF(begins + minutesADay, level);
        }
        setPieces(curve, pieces);
    };
    steps(m_setPoint, [](const forecast::ExpectedDay& one) { return one.setPoint; });
    steps(m_low, [](const forecast::ExpectedDay& one) { return one.low; });
    steps(m_high, [](const forecast::ExpectedDay& one) { return one.high; });
}

void ClimateChart::draw() {
    if (!m_palette || m_to <= m_from) return;
    // The times first: how high their labels are decides how wide the chart is.
    drawTimes();
    Span degrees;
    Span deficit;
    drawReadings(m_rootZone, m_climate.rootZone, degrees);
    drawReadings(m_air, m_climate.air, degrees);
    drawExpected(degrees);
    if (m_deficitShown)
        drawReadings(m_deficit, m_climate.deficit, deficit);
    else
        setPieces(m_deficit, {});
    drawScales(degrees, deficit);
}

void ClimateChart::drawTimes() {
    for (const QString& label : m_times->categoriesLabels()) m_times->remove(label);
    const int most = std::max(3, width() / 110);
    m_times->setRange(m_from, m_to);
    for (const TimeTick& tick : timeTicks(m_from, m_to, most, m_wording))
        m_times->append(tick.words, tick.minute);
}

void ClimateChart::drawScales(const Span& degrees, const Span& deficit) {
    constexpr double step = 5;
    const double low = degrees.any ? std::floor((degrees.low - 1) / step) * step : 0;
    const double high = degrees.any ? std::ceil((degrees.high + 1) / step) * step : 30;
    m_degrees->setRange(low, high);
    m_degrees->setTickCount(std::clamp(static_cast<int>((high - low) / step) + 1, 2, 9));
    m_degrees->setLabelFormat(QStringLiteral("%.0f"));
    m_degrees->setTitleText(m_wording.degreeUnit());
    m_pressure->setVisible(m_deficitShown && deficit.any);
    m_pressure->setRange(0, deficit.any ? std::max(1.0, std::ceil(deficit.high * 2) / 2) : 1);
    m_pressure->setTickCount(5);
    m_pressure->setLabelFormat(QStringLiteral("%.2f"));
    m_pressure->setTitleText(tr("kPa"));
}

void ClimateChart::keyPressEvent(QKeyEvent* event) {
    constexpr double step = 0.2;
    const double length = m_to - m_from;
    const double middle = m_from + length / 2;
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoom(2, middle);
    case Qt::Key_Minus:
        return zoom(0.5, middle);
    case Qt::Key_0:
        return setWindow(m_first, m_last);
    case Qt::Key_Left:
        return setWindow(m_from - step * length, m_to - step * length);
    case Qt::Key_Right:
        return setWindow(m_from + step * length, m_to + step * length);
    case Qt::Key_Home:
        return setWindow(m_first, m_first + length);
    case Qt::Key_End:
        return setWindow(m_last - length, m_last);
    default:
        QChartView::keyPressEvent(event);
    }
}

void ClimateChart::mousePressEvent(QMouseEvent* event) {
    m_dragged = event->position().x();
    setFocus();
    event->accept();
}

void ClimateChart::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton)) return;
    const double moved = minuteAt(m_dragged) - minuteAt(event->position().x());
    m_dragged = event->position().x();
    setWindow(m_from + moved, m_to + moved);
}

void ClimateChart::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    draw();
}

void ClimateChart::wheelEvent(QWheelEvent* event) {
    constexpr double aNotch = 120;
    zoom(std::pow(1.25, event->angleDelta().y() / aNotch), minuteAt(event->position().x()));
    event->accept();
}

} // namespace warmbench::ui
