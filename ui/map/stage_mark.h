#pragma once

#include "core/book/progress.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace warmbench::ui {

/// The mark that says beside the colour how far a batch is: none for struck and planned, a ring for callused,
/// a root tip for rooted, an opening arc for weaning, an arrow up for ready. It fills `box`, a square.
void paintStageMark(QPainter& painter, Progress progress, const QRectF& box, const QColor& colour);

/// Whether paintStageMark draws anything.
[[nodiscard]] bool hasStageMark(Progress progress);

} // namespace warmbench::ui
