#pragma once

#include "ui/shell/facts.h"

/// What a zone would cost and suit at each setting of its mat, as lines for the panel.
namespace warmbench::ui {

/// What its mat costs a day at each set-point, in the air of a day; the one that is set is marked. Empty
/// without a mat.
[[nodiscard]] QList<Fact> runningCostFacts(const HouseBook& book, const Zone& zone, Day day,
                                           const Wording& wording);
/// Which recipes of the book name its cover and have its root zone within their bounds: as it is set on a
/// day, and at other settings.
[[nodiscard]] QList<Fact> suitedFacts(const HouseBook& book, const Zone& zone, Day day,
                                      const Wording& wording);

} // namespace warmbench::ui
