#pragma once

#include "core/book/house_book.h"

#include <QHash>
#include <QString>

namespace warmbench::ui {

/// A short letter code for every batch of a book: A, B, ... Z, AA, ... No two batches that have not ended,
/// and no two that stand on the same day, have the same one; that of a batch which has ended is used again.
class Letters {
public:
    Letters() = default;
    explicit Letters(const HouseBook& book);

    /// The code of a batch of the book; empty for another.
    [[nodiscard]] QString of(BatchId batch) const { return m_codes.value(batch.number); }

private:
    QHash<std::int64_t, QString> m_codes;
};

} // namespace warmbench::ui
