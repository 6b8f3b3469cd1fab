#pragma once

#include "core/season/day_work.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// What to take, prepare and set on a day, what slips, and what to mind, as rich text.
[[nodiscard]] QString dayNotesHtml(const HouseBook& book, const season::DayWork& work,
                                   const Wording& wording);

/// The one page for the morning: the notes with all that is to be struck, checked, weaned and potted on, with
/// boxes to tick.
[[nodiscard]] QString daySheetHtml(const HouseBook& book, const season::DayWork& work,
                                   const Wording& wording);

} // namespace warmbench::ui
