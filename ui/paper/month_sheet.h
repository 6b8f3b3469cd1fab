#pragma once

#include "core/season/month_plan.h"
#include "ui/paper/plot.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// A month as rich text, with the plots that its marks stand for.
struct MonthSheet {
    QString html;
    std::vector<Plot> plots;
};

/// Days across and batches down, the hands of each week, and what the planned batches take.
[[nodiscard]] MonthSheet monthSheet(const HouseBook& book, const season::MonthPlan& plan,
                                    const Wording& wording);

} // namespace warmbench::ui
