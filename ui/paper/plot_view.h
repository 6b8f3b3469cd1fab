#pragma once

#include "ui/paper/plot.h"

#include <QWidget>

#include <optional>

namespace warmbench::ui {

/// One plot in the window; what it shows is to be said in words beside it.
class PlotView : public QWidget {
    Q_OBJECT
public:
    explicit PlotView(QWidget* parent);
    /// Shows a plot; out of sight while there is none.
    void showPlot(std::optional<Plot> plot);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<Plot> m_plot;
};

} // namespace warmbench::ui
