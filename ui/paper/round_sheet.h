#pragma once

#include "core/forecast/book_forecast.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// A round to be walked with a pencil: the containers worth a look in the order of the walk, why, and boxes
/// for what is found, as rich text for pages on their side. What is written there is typed in afterwards in
/// the same order.
[[nodiscard]] QString roundSheetHtml(const HouseBook& book, const forecast::BookForecast& forecast,
                                     const Wording& wording);

} // namespace warmbench::ui
