#pragma once

#include "core/book/house_book.h"
#include "ui/words/wording.h"

#include <QString>

#include <vector>

namespace warmbench::ui {

/// What one label says.
struct LabelContent {
    QString code;      ///< of the batch: what the QR code holds
    QString title;     ///< code and container: `27-048-A/07`
    QString taxonHtml; ///< the name as it is set
    QString struck;    ///< `softwood, 16 Feb 2027`
    QString recipe;    ///< hormone, medium and heat in short
};

/// The label of one container of a batch.
[[nodiscard]] LabelContent labelOf(const HouseBook& book, const Batch& batch, int container,
                                   const Wording& wording);

/// Labels for every container of these batches, in their order.
[[nodiscard]] std::vector<LabelContent> labelsOf(const HouseBook& book, const std::vector<BatchId>& batches,
                                                 const Wording& wording);

/// Batches that have not ended and are struck or planned on from <= day < to, by day and code.
[[nodiscard]] std::vector<BatchId> batchesToLabel(const HouseBook& book, Day from, Day to);

} // namespace warmbench::ui
