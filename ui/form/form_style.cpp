#include "ui/form/form_style.h"

#include <QDialog>
#include <QPainter>
#include <QPushButton>
#include <QStyleOption>
#include <QTreeView>

namespace warmbench::ui {
namespace {

/// Pixels; Qt adds one, which makes the 8 of a head in the style sheet.
constexpr int cellMargin = 7;

/// Between ink and ground: 3 to 1 against either in both palettes, as WCAG 2.2 criterion 1.4.11 asks of
/// edges.
QColor edgeOf(const QStyleOption& option) {
    const QColor ink = option.palette.color(QPalette::WindowText);
    const QColor ground = option.palette.color(QPalette::Base);
    // What can't be worked asks for no contrast, and looks so.
    const int part = option.palette.currentColorGroup() == QPalette::Disabled ? 1 : 3;
    const auto between = [part](int a, int b) { return (part * a + (5 - part) * b) / 5; };
    return {between(ink.red(), ground.red()), between(ink.green(), ground.green()),
            between(ink.blue(), ground.blue())};
}

void drawTickBox(const QStyleOption& option, QPainter& painter) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(edgeOf(option), 1));
    painter.setBrush(option.palette.color(QPalette::Base));
    painter.drawRoundedRect(box, 2, 2);
    painter.setPen(QPen(option.palette.color(QPalette::WindowText), box.width() / 7, Qt::SolidLine,
                        Qt::RoundCap, Qt::RoundJoin));
    const auto at = [&](double x, double y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    if (option.state & QStyle::State_On) {
        const QPointF tick[] = {at(0.22, 0.52), at(0.42, 0.74), at(0.78, 0.28)};
        painter.drawPolyline(tick, 3);
    } else if (option.state & QStyle::State_NoChange) {
        painter.drawLine(at(0.25, 0.5), at(0.75, 0.5));
    }
    painter.restore();
}

} // namespace

FormStyle::FormStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void FormStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                              const QWidget* widget) const {
    if (element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck)
        drawTickBox(*option, *painter);
    else
        QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void FormStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                   QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control != CC_SpinBox && control != CC_ComboBox) return;
    const bool focused = option->state & State_HasFocus;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(focused ? QPen(option->palette.color(QPalette::Highlight), 2) : QPen(edgeOf(*option), 1));
    painter->setBrush(Qt::NoBrush);
    const double inset = focused ? 1 : 0.5;
    painter->drawRoundedRect(QRectF(option->rect).adjusted(inset, inset, -inset, -inset), 3, 3);
    painter->restore();
}

void FormStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    auto* button = qobject_cast<QPushButton*>(widget);
    if (button && !qobject_cast<QDialog*>(button->window())) button->setAutoDefault(true);
}

int FormStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    // Qt's own list of files has columns of fixed widths, with no room for that.
    if (metric == PM_FocusFrameHMargin && qobject_cast<const QTreeView*>(widget) &&
        !widget->inherits("QFileDialogTreeView"))
        return cellMargin;
    return QProxyStyle::pixelMetric(metric, option, widget);
}

} // namespace warmbench::ui
