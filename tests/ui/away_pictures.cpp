#include "tests/ui/away_pictures.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "tests/support/small_nursery.h"
#include "ui/away/homecoming_dialog.h"
#include "ui/shell/style.h"

#include <QApplication>

namespace warmbench::tests {
namespace {

/// Looks at the first container of every batch that stands on the day.
HouseBook lookedAt(HouseBook book, int rooted) {
    const HouseBook before = book;
    for (const auto& [id, batch] : before.all<Batch>()) {
        if (batch.state != BatchState::Struck || !stayOn(before, id, smallNurseryToday())) continue;
        const int standing = warmbench::standing(before, batch, 1, smallNurseryToday());
        if (standing <= rooted) continue;
        (void)book.perform({RecordCheck{
            {{}, id, 1, smallNurseryToday(), standing, rooted, 0, standing - rooted, 0, std::nullopt, ""}}});
    }
    return book;
}

void grabHomecoming(const HouseBook& book, const HouseBook& copy, const ui::Palette& palette,
                    const QString& file) {
    const QDateTime at(ui::qDate(smallNurseryToday()), QTime(16, 40));
    ui::HomecomingDialog dialog(
        book, QStringLiteral("nursery on house-server"),
        ui::AwayContent{copy, {{1209, at, QStringLiteral("anna"), "Record a root check of 27-011-A/03"}}},
        QStringLiteral("/media/stick/nursery-copy-2027-02-15.warmbench"), ui::Wording(),
        [](const Command&) {
            return Outcome(Refusal{{}, "nothing is kept in a picture"});
        },
        nullptr);
    dialog.setPalette(ui::qtPalette(palette));
    dialog.setStyleSheet(ui::windowStyleSheet(palette));
    dialog.show();
    QApplication::processEvents();
    dialog.grab().save(file);
}

} // namespace

void writeAwayPictures(const QString& folder, const ui::Palette& palette, const QString& look) {
    const HouseBook book = smallNursery();
    const HouseBook copy = lookedAt(book, 2);
    HouseBook otherwise = book;
    std::size_t told = 0;
    const HouseBook seenOtherwise = lookedAt(book, 1);
    for (const auto& [id, check] : seenOtherwise.all<RootCheck>())
        if (!book.find<RootCheck>(id) && told++ < 2) {
            RootCheck other = check;
            other.id = {};
            (void)otherwise.perform({RecordCheck{other}});
        }
    grabHomecoming(book, copy, palette, folder + QStringLiteral("homecoming") + look);
    grabHomecoming(otherwise, copy, palette, folder + QStringLiteral("homecoming-conflicts") + look);
    grabHomecoming(book, book, palette, folder + QStringLiteral("homecoming-nothing") + look);
}

} // namespace warmbench::tests
