#include "ui/paper/print_dialog.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSettings>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

TEST_CASE("The print dialog shows what is chosen, and says why labels can't be") {
    SeasonBook nursery;
    nursery.strike(on(8, 2), 30, 60);
    const forecast::BookForecast forecast(nursery.book, on(8, 2));
    QSettings().remove(QStringLiteral("labels"));
    PrintDialog dialog(nursery.book, forecast, on(8, 1), Wording());
    auto* kind = dialog.findChild<QComboBox*>("printKind");
    auto* save = dialog.findChild<QPushButton*>("printToPdf");
    auto* trouble = dialog.findChild<QLabel*>("printTrouble");
    REQUIRE(dialog.paper());
    CHECK(dialog.paper()->title == "Strike list");
    CHECK(save->isEnabled());

    dialog.choosePaperOf(QStringLiteral("round"));
    REQUIRE(dialog.paper());
    CHECK(dialog.paper()->title.startsWith("Round"));
    dialog.choosePaperOf(QStringLiteral("house"));
    CHECK(dialog.paper()->title.startsWith("Round"));

    kind->setCurrentIndex(1);
    REQUIRE(dialog.paper());
    CHECK(dialog.paper()->layout.pageSize().size(QPageSize::Millimeter) == QSizeF(210, 297));
    dialog.findChild<QDoubleSpinBox*>("labelWidth")->setValue(90);
    CHECK_FALSE(dialog.paper());
    CHECK(trouble->text().contains("the last of a row ends at 270 mm on a page 210 mm wide"));
    CHECK_FALSE(save->isEnabled());
    dialog.findChild<QDoubleSpinBox*>("labelWidth")->setValue(60);
    CHECK(trouble->text().isEmpty());
    CHECK(save->isEnabled());

    kind->setCurrentIndex(2);
    REQUIRE(dialog.paper());
    CHECK(dialog.paper()->title.contains("Round of"));

    kind->setCurrentIndex(4);
    REQUIRE(dialog.paper());
    CHECK(dialog.paper()->title == "Season's report");
    CHECK(dialog.findChild<QDateEdit*>("printFrom")->date() == QDate(2026, 8, 2));
    REQUIRE(kind->count() == 6);
    kind->setCurrentIndex(5);
    REQUIRE(dialog.paper());
    CHECK(dialog.paper()->title == "Month plan");
    kind->setCurrentIndex(0);
    CHECK(dialog.findChild<QDateEdit*>("printFrom")->date() == QDate(2027, 8, 1));
}
