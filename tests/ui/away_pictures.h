#pragma once

#include "ui/theme/palette.h"

#include <QString>

namespace warmbench::tests {

/// What comes home from a copy that was taken along on a round, with conflicts and with nothing new.
void writeAwayPictures(const QString& folder, const ui::Palette& palette, const QString& look);

} // namespace warmbench::tests
