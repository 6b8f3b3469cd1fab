#pragma once

#include "core/book/house_book.h"
#include "ui/map/letters.h"
#include "ui/words/wording.h"

#include <QList>
#include <QString>
#include <QStringList>

namespace warmbench::ui {

/// One line of a panel: what it is and, as rich text, what it says.
struct Fact {
    QString label;
    QString html;
};

/// What the panel says of the one thing selected. All texts named html are rich text.
struct Facts {
    QString above; ///< a code or kind, over the title
    QString titleHtml;
    QString subtitle;
    QStringList troubles;
    QList<Fact> facts;
    QStringList care;               ///< cautions
    std::optional<BatchId> strikes; ///< a planned batch that can be struck from here
};

/// What stands out of a batch or zone on a day. With `today` what the plan alone weaned by then is told as it
/// roots, as `progressOn` does.
[[nodiscard]] Facts batchFacts(const HouseBook& book, BatchId batch, Day day, const Wording& wording,
                               std::optional<Day> today = {});
[[nodiscard]] Facts zoneFacts(const HouseBook& book, ZoneId zone, Day day, const Letters& letters,
                              const Wording& wording, std::optional<Day> today = {});
/// What a new book still needs before anything can be struck, in the order in which it is best done; empty
/// when it has all of that.
[[nodiscard]] QList<Fact> firstSteps(const HouseBook& book);
/// Of the whole book, when nothing is selected; what a new one still needs comes first.
[[nodiscard]] Facts bookFacts(const HouseBook& book, Day day, const Wording& wording);

} // namespace warmbench::ui
