#pragma once

#include "core/forecast/place_climate.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QtCharts/QChartView>

#include <vector>

class QCategoryAxis;
class QLineSeries;
class QValueAxis;

namespace warmbench::ui {

/// Root zone and air of one place over time, against set-points and the recipes' ranges. The wheel and + and
/// - zoom, dragging and the arrows move, 0 shows everything. However many readings there are, no more points
/// are drawn than the chart has columns, and every peak is among them.
class ClimateChart : public QChartView {
    Q_OBJECT
public:
    explicit ClimateChart(QWidget* parent = nullptr);

    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    /// Shows what is known of a place, on the days from <= day < to.
    void setClimate(forecast::PlaceClimate climate, Day from, Day to);
    /// Shows these minutes.
    void setWindow(double from, double to);
    [[nodiscard]] double windowFrom() const { return m_from; }
    [[nodiscard]] double windowTo() const { return m_to; }
    void setDeficitShown(bool on);
    void zoom(double factor, double around);
    /// Points that are drawn now, of all lines.
    [[nodiscard]] int pointsDrawn() const;

Q_SIGNALS:
    /// Other minutes are shown.
    void windowChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    /// A line that may be broken: a series for each piece.
    struct Curve {
        std::vector<QLineSeries*> pieces;
        QPen pen;
        QString name;
        bool onRight = false;
    };
    struct Span {
        double low = 0;
        double high = 0;
        bool any = false;
        void include(double value);
    };

    void draw();
    void drawReadings(Curve& curve, const std::vector<climate::MinuteReading>& readings, Span& span);
    void drawExpected(Span& span);
    void setPieces(Curve& curve, const QList<QList<QPointF>>& pieces);
    void drawTimes();
    void drawScales(const Span& degrees, const Span& deficit);
    [[nodiscard]] double shown(double celsius) const;
    [[nodiscard]] double minuteAt(double x) const;

    const Palette* m_palette = nullptr;
    Wording m_wording;
    forecast::PlaceClimate m_climate;
    double m_first = 0; ///< minutes that can be shown
    double m_last = 0;
    double m_from = 0; ///< that are
    double m_to = 0;
    bool m_deficitShown = false;
    double m_dragged = 0; ///< x at which the mouse was last

    Curve m_rootZone;
    Curve m_air;
    Curve m_deficit;
    Curve m_setPoint;
    Curve m_low;
    Curve m_high;
    QCategoryAxis* m_times;
    QValueAxis* m_degrees;
    QValueAxis* m_pressure;
};

} // namespace warmbench::ui
