#include "ui/paper/plot_view.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int leastPlotWidth = 260;

} // namespace

PlotView::PlotView(QWidget* parent) : QWidget(parent) {
    setVisible(false);
}

void PlotView::showPlot(std::optional<Plot> plot) {
    m_plot = std::move(plot);
    setVisible(m_plot.has_value());
    updateGeometry();
    update();
}

QSize PlotView::sizeHint() const {
    const double lines = m_plot ? m_plot->heightInLines : 0;
    return {leastPlotWidth, static_cast<int>(std::ceil(lines * QFontMetricsF(font()).height()))};
}

void PlotView::paintEvent(QPaintEvent* /*event*/) {
    if (!m_plot) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    m_plot->paint(painter, rect(), font());
}

} // namespace warmbench::ui
