#pragma once

#include "core/season/report/season_report.h"
#include "ui/paper/plot.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// A season's report as rich text, with the plots that its marks stand for.
struct SeasonSheet {
    QString html;
    std::vector<Plot> plots;
};

/// What was wanted and made, takes and losses, bench and heat, stocks, and what to change on what evidence.
[[nodiscard]] SeasonSheet seasonSheet(const HouseBook& book, const season::ReportSpan& span,
                                      const Wording& wording);

} // namespace warmbench::ui
