#pragma once

#include "core/season/stock_calendar.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QWidget>

namespace warmbench::ui {

/// What a stock can give in the year to come: for each wood the shoots that stand on it day by day, and what
/// is taken. What it shows is said in words beside it, too.
class StockChart : public QWidget {
    Q_OBJECT
public:
    explicit StockChart(QWidget* parent);

    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void showStock(Day from, std::vector<season::WoodCalendar> calendars);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintMonths(QPainter& painter, const QRectF& area) const;
    void paintWood(QPainter& painter, const QRectF& area, const season::WoodCalendar& calendar) const;

    const Palette* m_palette = nullptr;
    const TypeSizes* m_type = nullptr;
    const Wording* m_wording = nullptr;
    Day m_from;
    std::vector<season::WoodCalendar> m_calendars;
};

} // namespace warmbench::ui
