#pragma once

#include "core/book/house_book.h"
#include "ui/place/journal_step.h"

#include <vector>

namespace warmbench::ui {

/// What stands in a copy of the book that was taken along.
struct AwayContent {
    HouseBook book;
    std::vector<JournalStep> steps; ///< that were done in the copy alone, the first one first
};

/// Copies of the book that is open: taken along on a round, and looked into when they are back. How is not
/// the window's business.
class AwayCopies {
public:
    AwayCopies() = default;
    AwayCopies(const AwayCopies&) = delete;
    AwayCopies& operator=(const AwayCopies&) = delete;
    virtual ~AwayCopies() = default;

    /// A name for a copy that is taken on a day, in the book's folder where it has one; no file has it yet.
    [[nodiscard]] virtual QString proposedName(Day day) const = 0;
    /// Writes the book with its journal to a new file; refused where there is one of that name.
    [[nodiscard]] virtual Outcome take(const QString& file) = 0;
    /// Opens a copy without changing it; refused where the file is no book, or no copy of this one.
    [[nodiscard]] virtual Result<AwayContent> lookInto(const QString& file) = 0;
};

} // namespace warmbench::ui
