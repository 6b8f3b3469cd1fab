#pragma once

#include "ui/paper/label_content.h"
#include "ui/paper/label_layout.h"
#include "ui/paper/paper.h"

namespace warmbench::ui {

/// Labels on sheets or a roll. On each the QR code of its batch stands at the left, at least 10 mm wide; the
/// name and code are set as large as there is room for and never cut, what is said of the recipe is left out
/// where it finds no room.
/// Refused: a layout that cannot be, a name or code for which a label is too small even in the smallest type,
/// a code that no QR code holds, no labels.
[[nodiscard]] Result<Paper> labelPaper(const std::vector<LabelContent>& labels, const LabelLayout& layout);

} // namespace warmbench::ui
