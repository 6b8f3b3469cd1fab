#pragma once

#include "core/crop/safety.h"

#include <QString>

#include <set>

namespace warmbench::ui {

/// The usual cautions for these hazards, and what comes before them, as rich text under a heading.
[[nodiscard]] QString cautionsHtml(const std::set<Hazard>& hazards);

} // namespace warmbench::ui
