#include "ui/paper/label_layout.h"

#include <QLocale>
#include <QStringList>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr double largestPage = 2000;
/// What rounding may add up to, in millimetres.
constexpr double slack = 0.01;

std::string millimetres(double length) {
    return QString::number(length, 'g', 6).toStdString() + " mm";
}

bool within(double value, double least, double most) {
    return std::isfinite(value) && value >= least && value <= most;
}

} // namespace

QRectF LabelLayout::rectOf(int place) const {
    const int row = place / columns;
    const int column = place % columns;
    return {
        QPointF(left + column * (label.width() + gap.width()), top + row * (label.height() + gap.height())),
        label};
}

LabelLayout LabelLayout::roll(QSizeF label) {
    LabelLayout layout;
    layout.page = label;
    layout.label = label;
    layout.columns = 1;
    layout.rows = 1;
    layout.top = 0;
    return layout;
}

Outcome checkLayout(const LabelLayout& layout) {
    if (!within(layout.page.width(), 1, largestPage) || !within(layout.page.height(), 1, largestPage))
        return Refusal{"page", "it is " + millimetres(layout.page.width()) + " by " +
                                   millimetres(layout.page.height()) + "; expected 1 to 2000 mm each way"};
    if (!within(layout.label.width(), leastLabelWidth, largestPage) ||
        !within(layout.label.height(), leastLabelHeight, largestPage))
        return Refusal{"label", "it is " + millimetres(layout.label.width()) + " by " +
                                    millimetres(layout.label.height()) + "; expected at least " +
                                    millimetres(leastLabelWidth) + " by " + millimetres(leastLabelHeight)};
    if (layout.columns < 1 || layout.rows < 1 || layout.columns > 1000 || layout.rows > 1000)
        return Refusal{"grid", "found " + std::to_string(layout.columns) + " by " +
                                   std::to_string(layout.rows) + " labels; expected 1 to 1000 each way"};
    if (!within(layout.left, 0, largestPage) || !within(layout.top, 0, largestPage) ||
        !within(layout.gap.width(), 0, largestPage) || !within(layout.gap.height(), 0, largestPage))
        return Refusal{"margin", "margins and gaps are 0 to 2000 mm"};
    const QRectF last = layout.rectOf(layout.perPage() - 1);
    if (last.right() > layout.page.width() + slack)
        return Refusal{"label", "the last of a row ends at " + millimetres(last.right()) + " on a page " +
                                    millimetres(layout.page.width()) + " wide"};
    if (last.bottom() > layout.page.height() + slack)
        return Refusal{"label", "the lowest row ends at " + millimetres(last.bottom()) + " on a page " +
                                    millimetres(layout.page.height()) + " high"};
    if (layout.used < 0 || layout.used >= layout.perPage())
        return Refusal{"used", "found " + std::to_string(layout.used) + "; expected 0 to " +
                                   std::to_string(layout.perPage() - 1)};
    return std::nullopt;
}

Result<QSizeF> readSize(const std::string& option, const std::string& text) {
    const QStringList parts = QString::fromStdString(text).split(u'x');
    bool wide = false;
    bool high = false;
    if (parts.size() == 2) {
        const QSizeF size(parts[0].toDouble(&wide), parts[1].toDouble(&high));
        if (wide && high) return size;
    }
    return Refusal{option, "found '" + text + "', expected two numbers such as 70x36"};
}

} // namespace warmbench::ui
