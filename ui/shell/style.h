#pragma once

#include "ui/theme/palette.h"

#include <QPalette>
#include <QString>

namespace warmbench::ui {

/// The theme as Qt's palette, for all that is drawn by the style.
[[nodiscard]] QPalette qtPalette(const Palette& palette);
/// What the style alone does not give: quiet menus, cards, one primary button.
[[nodiscard]] QString windowStyleSheet(const Palette& palette);

} // namespace warmbench::ui
