#pragma once

#include "ui/setup/plan_shape.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QWidget>

namespace warmbench::ui {

/// One house in plan, to be drawn and changed with the mouse or by keys. What a hand is drawing is shown over
/// what there is, and asked for when it is let go; the plan itself changes nothing.
///
/// Mouse: press chooses; dragging moves it, or its edges; with a tool, dragging draws a bench on the floor or
/// a zone on a bench, or blocks slots of a zone. Keys: N and P go to the next and the previous thing; arrows
/// move what is chosen, with Shift its right and front edges; while slots are blocked arrows go from slot to
/// slot and Space blocks one or frees it; Enter asks for it so, Escape leaves it as it was.
class HousePlan : public QWidget {
    Q_OBJECT
public:
    enum class Tool { Choose, DrawBench, DrawZone, BlockSlots };

    explicit HousePlan(QWidget* parent = nullptr);
    /// Palette and type must outlive the widget or be set anew.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    /// Shows a house of a book, which must outlive the plan or be set anew, as it is on a day.
    void show(const HouseBook& book, std::optional<HouseId> house, Day day);
    void choose(const PlanThing& thing);
    /// Shows a thing that is still asked about, where it was drawn.
    void propose(const PlanShape& shape) { setDrawn(shape); }
    void setTool(Tool tool);
    [[nodiscard]] Tool tool() const { return m_tool; }
    /// Where a point of the house, in millimetres, is on the widget.
    [[nodiscard]] QPointF onWidget(QPointF inHouse) const;
    [[nodiscard]] const std::optional<PlanShape>& drawn() const { return m_drawn; }

    [[nodiscard]] QSize sizeHint() const override { return {520, 260}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 120}; }

Q_SIGNALS:
    void chosen(const warmbench::ui::PlanThing& thing);
    /// Asks for a thing as it was drawn; a new one has the id 0.
    void wanted(const warmbench::ui::PlanShape& shape);
    void toolChanged(warmbench::ui::HousePlan::Tool tool);
    /// Says in words what is chosen or being drawn.
    void told(const QString& words);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] double scale() const;
    [[nodiscard]] QPointF inHouse(QPointF onWidget) const;
    [[nodiscard]] QRectF onWidget(const QRectF& inHouse) const;
    [[nodiscard]] QString wordsOf(const PlanShape& shape) const;
    void drawNew(QPointF to);
    void setDrawn(std::optional<PlanShape> shape);
    void ask();
    void step(int right, int front, bool resize);
    void chooseNext(int by);
    bool blockByKey(int key);
    [[nodiscard]] const Zone* blockedZone() const;
    void setCursorAt(QPointF at);
    void paintBench(QPainter& painter, const Bench& bench) const;
    void paintZone(QPainter& painter, const Zone& zone) const;

    const HouseBook* m_book = nullptr;
    std::optional<HouseId> m_house;
    Day m_day;
    const Palette* m_palette;
    const TypeSizes* m_type = nullptr;
    Wording m_wording;
    Tool m_tool = Tool::Choose;
    std::optional<PlanThing> m_chosen;
    std::optional<PlanShape> m_drawn; ///< as it would be
    std::optional<PlanShape> m_held;  ///< what the mouse took hold of, as it was
    Grip m_grip;
    QPointF m_pressed; ///< in the house
    Slot m_slot;       ///< of the chosen zone, on which keys block
    bool m_drawing = false;
};

} // namespace warmbench::ui
