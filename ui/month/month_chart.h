#pragma once

#include "ui/paper/month_painter.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"

#include <QAbstractScrollArea>

namespace warmbench::ui {

/// A month drawn: days across, hands above, a line for each batch and each target still wanted. A batch is
/// dragged to another day with the mouse, or with Left and Right and then Enter; Escape leaves it where it
/// is.
class MonthChart : public QAbstractScrollArea {
    Q_OBJECT
public:
    explicit MonthChart(QWidget* parent);

    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void showMonth(season::MonthPlan plan, std::vector<MonthLine> lines);

    /// The line chosen, from 0; -1 where there is none.
    [[nodiscard]] int current() const { return m_current; }
    void setCurrent(int line);
    /// Where a day of a line is in the viewport.
    [[nodiscard]] QPoint pointOf(int line, Day day) const;
    /// Drops a move that is being tried.
    void dropTried();

Q_SIGNALS:
    void currentChanged(int line);
    /// A batch's line is held over another day, or over its own again.
    void moveTried(int line, warmbench::Day day);
    void moveWanted(int line, warmbench::Day day);
    /// A day's hands were double-clicked.
    void handsWanted(warmbench::Day day);
    void activated(int line);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    bool viewportEvent(QEvent* event) override;

private:
    [[nodiscard]] MonthGrid grid() const;
    [[nodiscard]] double top() const; ///< of the first line, unscrolled
    [[nodiscard]] int lineAt(const QPoint& point) const;
    [[nodiscard]] std::optional<Day> dayAt(const QPoint& point) const;
    [[nodiscard]] bool canMove(int line) const;
    void tryDay(Day day);
    void setScrollRange();
    [[nodiscard]] QString handsWords(Day day) const;

    const Palette* m_palette = nullptr;
    const TypeSizes* m_type = nullptr;
    const Wording* m_wording = nullptr;
    season::MonthPlan m_plan;
    std::vector<MonthLine> m_lines;
    int m_current = -1;
    bool m_dragging = false;
};

} // namespace warmbench::ui
