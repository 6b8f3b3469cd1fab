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
        return Refusal{"page", phrase("it is %1 by %2; expected 1 to 2000 mm each way",
                                      millimetres(layout.page.width()), millimetres(layout.page.height()))};
    if (!within(layout.label.width(), leastLabelWidth, largestPage) ||
        !within(layout.label.height(), leastLabelHeight, largestPage))
        return Refusal{"label", phrase("it is %1 by %2; expected at least %3 by %4",
                                       millimetres(layout.label.width()), millimetres(layout.label.height()),
                                       millimetres(leastLabelWidth), millimetres(leastLabelHeight))};
    if (layout.columns < 1 || layout.rows < 1 || layout.columns > 1000 || layout.rows > 1000)
        return Refusal{"grid", phrase("found %1 by %2 labels; expected 1 to 1000 each way", layout.columns,
                                      layout.rows)};
    if (!within(layout.left, 0, largestPage) || !within(layout.top, 0, largestPage) ||
        !within(layout.gap.width(), 0, largestPage) || !within(layout.gap.height(), 0, largestPage))
        return Refusal{"margin", phrase("margins and gaps are 0 to 2000 mm")};
    const QRectF last = layout.rectOf(layout.perPage() - 1);
    if (last.right() > layout.page.width() + slack)
        return Refusal{"label", phrase("the last of a row ends at %1 on a page %2 wide",
                                       millimetres(last.right()), millimetres(layout.page.width()))};
    if (last.bottom() > layout.page.height() + slack)
        return Refusal{"label", phrase("the lowest row ends at %1 on a page %2 high",
                                       millimetres(last.bottom()), millimetres(layout.page.height()))};
    if (layout.used < 0 || layout.used >= layout.perPage())
        return Refusal{"used", phrase("found %1; expected 0 to %2", layout.used, layout.perPage() - 1)};
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
    return Refusal{option, phrase("found '%1', expected two numbers such as 70x36", text)};
}

} // namespace warmbench::ui
