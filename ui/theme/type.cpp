#include "ui/theme/type.h"

#include <QFontInfo>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {

TypeSizes typeSizes(const QFont& desktop) {
    const double share = std::max(1.0, QFontInfo(desktop).pixelSize() / 13.0);
    QFont base = desktop;
    base.setFamilies(QStringList{desktop.family(), QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    const auto sized = [&](double pixels, QFont::Weight weight) {
        QFont font = base;
        font.setPixelSize(static_cast<int>(std::lround(pixels * share)));
        font.setWeight(weight);
        return font;
    };
    return {sized(13, QFont::Normal), sized(13, QFont::DemiBold), sized(12, QFont::Normal),
            sized(17, QFont::DemiBold)};
}

} // namespace warmbench::ui
