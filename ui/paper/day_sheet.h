#pragma once

#include "core/season/day_work.h"
#include "ui/paper/plot.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// What to take, prepare and set on a day, what slips, and what to mind, as rich text.
[[nodiscard]] QString dayNotesHtml(const HouseBook& book, const season::DayWork& work,
                                   const Wording& wording);

/// A page of rich text, with the plots that its marks stand for.
struct DaySheet {
    QString html;
    std::vector<Plot> plots;
};

/// The one page for the morning: the notes with all that is to be struck, where on small maps, checked,
/// weaned and potted on, with boxes to tick.
[[nodiscard]] DaySheet daySheet(const HouseBook& book, const season::DayWork& work, const Wording& wording);

} // namespace warmbench::ui
