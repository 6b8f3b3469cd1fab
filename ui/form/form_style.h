#pragma once

#include <QProxyStyle>

namespace warmbench::ui {

/// Fusion, with edges and ticks of fields in the palette's own ink: Fusion derives them from the ground's
/// colour, which leaves them hardly visible on a dark one. For QApplication::setStyle.
class FormStyle : public QProxyStyle {
    Q_OBJECT
public:
    FormStyle();
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    using QProxyStyle::polish;
    /// Enter presses a button in the main window as it does in a dialog, where Qt does so of itself.
    void polish(QWidget* widget) override;
    /// The cells of lists with columns keep their words as far from their edges as their heads do, so that a
    /// number at the right of one does not touch the words of the next.
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
};

} // namespace warmbench::ui
