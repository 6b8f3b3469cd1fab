#pragma once

#include "tests/core/season/season_book.h"
#include "ui/place/forecast_keeper.h"
#include "ui/place/place.h"

#include <QApplication>

namespace warmbench::tests {

/// A place that shows the small nursery of planning, on 2 August 2027 unless told otherwise, and does in it
/// what is asked for.
template <class Shown>
struct ShownPlace {
    testing::SeasonBook nursery;
    ui::ForecastKeeper forecasts;
    ui::Wording wording{QLocale(QLocale::English, QLocale::UnitedKingdom)};
    ui::TypeSizes type = ui::typeSizes(QApplication::font());
    Shown place{nullptr};
    Day seenOn = testing::on(8, 2);

    ShownPlace() {
        place.setLook(ui::lightPalette(), type, wording);
        place.setPerformer([this](const Command& command) {
            auto change = nursery.book.perform(command);
            if (!change) return Outcome(change.refusal());
            forecasts.update(nursery.book, *change);
            show();
            return Outcome();
        });
    }
    void show() {
        const ui::Letters letters(nursery.book);
        place.showBook({nursery.book, seenOn, seenOn, letters, testing::builtIn(), forecasts});
    }
};

} // namespace warmbench::tests
