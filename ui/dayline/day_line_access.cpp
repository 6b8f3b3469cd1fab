#include "ui/dayline/day_line_access.h"

#include "ui/dayline/day_line.h"

#include <QAccessible>
#include <QAccessibleWidget>

namespace warmbench::ui {
namespace {

class LineAccess : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    explicit LineAccess(DayLine& line) : QAccessibleWidget(&line, QAccessible::Slider), m_line(line) {}

    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? m_line.sentence() : QAccessibleWidget::text(kind);
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
        return QAccessibleWidget::interface_cast(type);
    }
    [[nodiscard]] QVariant currentValue() const override { return m_line.day().number(); }
    void setCurrentValue(const QVariant& value) override { m_line.setDay(Day::fromNumber(value.toInt())); }
    [[nodiscard]] QVariant minimumValue() const override { return m_line.load().from.number(); }
    [[nodiscard]] QVariant maximumValue() const override {
        return (m_line.load().from + m_line.load().days()).number() - 1;
    }
    [[nodiscard]] QVariant minimumStepSize() const override { return 1; }

private:
    DayLine& m_line;
};

QAccessibleInterface* makeAccess(const QString&, QObject* object) {
    auto* line = qobject_cast<DayLine*>(object);
    return line ? new LineAccess(*line) : nullptr;
}

} // namespace

void installDayLineAccess() {
    QAccessible::installFactory(makeAccess);
}

void tellAccessibility(DayLine& line) {
    if (!QAccessible::isActive()) return;
    QAccessibleValueChangeEvent changed(&line, line.day().number());
    QAccessible::updateAccessibility(&changed);
}

} // namespace warmbench::ui
