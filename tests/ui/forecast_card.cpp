#include "ui/forecast/forecast_card.h"

#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <QLabel>
#include <QPushButton>

#include <cmath>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

struct OpenCard {
    ui::ForecastCard card;
    RecipeLibrary recipes;

    void show(const HouseBook& book, BatchId batch, const char* on) {
        card.setLook(ui::lightPalette(), ui::typeSizes(card.font()),
                     ui::Wording(QLocale(QLocale::English, QLocale::UnitedKingdom)));
        card.showBatch(book, recipes, batch, day(on));
    }
    QString text(const char* label) { return card.findChild<QLabel*>(QLatin1String(label))->text(); }
};

} // namespace

TEST_CASE("A batch's card tells its share rooted, its ready day and what its target can count on") {
    SmallBook small = smallBook();
    perform(small.book, {DescribeBatch{small.struck, small.target, ""}});
    perform(small.book, {RemoveBatch{small.planned}});
    OpenCard open;
    open.show(small.book, small.struck, "2027-03-01");
    CHECK_FALSE(open.card.isHidden());
    CHECK(open.text("forecastWords").contains("of those alive"));
    CHECK(open.text("forecastWords").contains("the plan has 1 Apr"));
    CHECK(open.text("forecastWords").contains("of 50 can be counted on"));
    // 20 cuttings can't give 50 plants.
    CHECK(open.text("forecastTrouble").contains("Short by"));
    CHECK_FALSE(open.card.findChild<QPushButton*>("forecastReplan")->isHidden());
}

TEST_CASE("A batch's card tells the warmth it has had, in either scale, as long as it roots") {
    SmallBook small = smallBook();
    const double base = small.book.get<Batch>(small.struck).recipe.base.value.units();
    OpenCard open;
    // Fourteen days on a mat at 20 °C.
    open.show(small.book, small.struck, "2027-03-01");
    const QString sum = QString::number(std::lround(14 * (20 - base)));
    INFO(open.text("forecastWords").toStdString());
    CHECK(open.text("forecastWords").contains(sum + " degree-days above "));
    CHECK(open.text("forecastWords").contains("so far, by set-points"));
    open.card.setLook(ui::lightPalette(), ui::typeSizes(open.card.font()),
                      ui::Wording(QLocale(QLocale::English, QLocale::UnitedKingdom), true));
    open.card.showBatch(small.book, open.recipes, small.struck, day("2027-03-01"));
    const QString other = QString::number(std::lround(14 * (20 - base) * 1.8));
    CHECK(open.text("forecastWords").contains(other + " degree-days above "));
    perform(small.book, {WeanStay{small.weaning, day("2027-04-01")}});
    open.show(small.book, small.struck, "2027-04-05");
    CHECK_FALSE(open.text("forecastWords").contains("degree-days"));
}

TEST_CASE("A batch far behind its plan says so, and offers to plan again") {
    SmallBook small = smallBook();
    perform(small.book, {DescribeBatch{small.struck, std::nullopt, ""}});
    for (int pot = 1; pot <= 4; ++pot)
        perform(small.book, {RecordCheck{{{}, small.struck, pot, day("2027-03-28"), 5, 0, 0, 5, 0, {}, ""}}});
    OpenCard open;
    open.show(small.book, small.struck, "2027-03-29");
    CHECK(open.text("forecastTrouble").contains("later than planned"));
    int asked = 0;
    QObject::connect(&open.card, &ui::ForecastCard::replanWanted, [&] { ++asked; });
    open.card.findChild<QPushButton*>("forecastReplan")->click();
    CHECK(asked == 1);
}

TEST_CASE("A batch that is not struck yet has no card") {
    SmallBook small = smallBook();
    OpenCard open;
    open.show(small.book, small.planned, "2027-02-20");
    CHECK(open.card.isHidden());
    open.show(small.book, {999}, "2027-02-20");
    CHECK(open.card.isHidden());
}
