#pragma once

#include "ui/map/map_layout.h"

#include <optional>

namespace warmbench::ui {

/// The zone, or the batch where one is chosen, that lies next on one side of what is chosen: the nearest,
/// with what lies off to the side counting double. `direction` is one of (±1, 0) and (0, ±1). With nothing
/// chosen (or what is not on the map) the first zone. Nothing where there is none on that side.
[[nodiscard]] std::optional<Selection> nextTarget(const MapScene& scene, const MapLayout& layout,
                                                  const Selection& from, QPoint direction);

} // namespace warmbench::ui
