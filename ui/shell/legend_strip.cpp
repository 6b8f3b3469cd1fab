#include "ui/shell/legend_strip.h"

#include <QPainter>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int sideRoom = 16;
constexpr int topRoom = 4;

} // namespace

LegendStrip::LegendStrip(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("What the colours of the map mean"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void LegendStrip::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
    updateGeometry();
    update();
}

int LegendStrip::heightForWidth(int width) const {
    if (!m_type) return 0;
    const Legend legend(*m_palette, *m_type, *m_wording);
    return static_cast<int>(std::ceil(legend.heightFor(width - 2 * sideRoom))) + 2 * topRoom;
}

void LegendStrip::paintEvent(QPaintEvent*) {
    if (!m_type) return;
    QPainter painter(this);
    Legend(*m_palette, *m_type, *m_wording)
        .paint(painter, QPointF(sideRoom, topRoom), width() - 2 * sideRoom);
}

} // namespace warmbench::ui
