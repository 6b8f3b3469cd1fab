#pragma once

#include "core/season/materials.h"
#include "ui/map/letters.h"
#include "ui/words/wording.h"

#include <optional>

namespace warmbench::ui {

/// Days from <= day < to.
struct DaySpan {
    Day from;
    Day to;
    [[nodiscard]] bool holds(Day day) const { return from <= day && day < to; }
};

/// What is planned to be struck, day by day, with all that is needed for it, what to have ready, and the
/// cautions, as rich text for a page or the window.
[[nodiscard]] QString strikeListHtml(const HouseBook& book, const std::optional<DaySpan>& span,
                                     const Letters& letters, const Wording& wording);

/// Containers, litres of each component and hormone, as a list under a heading.
[[nodiscard]] QString materialsHtml(const season::Materials& materials, const Wording& wording);

/// `Glasshouse · Bench 1 · A, rows 1 to 3, columns 4 to 9`: where a stay's containers stand, counted from 1
/// at the back left.
[[nodiscard]] QString placeText(const HouseBook& book, const Stay& stay, const Wording& wording);

} // namespace warmbench::ui
