#include "core/book/query.h"
#include "tests/support/small_book.h"
#include "tests/ui/window.h"
#include "ui/results/take_bar.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// Pots all containers of some batches on, so that they have ended; half of each container gives a plant.
int potOnSome(OpenWindow& open, int batches) {
    const HouseBook& book = open.window.session()->book();
    std::vector<PotOn> all;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Struck || static_cast<int>(all.size()) == batches) continue;
        PotOn one{id, smallNurseryToday(), {}, ""};
        for (const BatchContainer& container : batch.containers)
            if (const int there = standing(book, batch, container.number, smallNurseryToday()); there > 0)
                one.containers.push_back({container.number, there / 2, there - there / 2});
        if (!one.containers.empty()) all.push_back(one);
    }
    for (const PotOn& one : all) REQUIRE_FALSE(open.window.session()->perform(Command{one}));
    return static_cast<int>(all.size());
}

} // namespace

TEST_CASE("Takes are told by each way of grouping, with a bar on a scale of per cent") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    const int ended = potOnSome(open, 6);
    REQUIRE(ended == 6);
    open.child<QAction>("results")->trigger();
    auto* table = open.child<QTreeWidget>("takeTable");
    auto* by = open.child<QComboBox>("takeBy");
    for (int way = 0; way < by->count(); ++way) {
        by->setCurrentIndex(way);
        int batches = 0;
        for (int row = 0; row < table->topLevelItemCount(); ++row) {
            const QTreeWidgetItem* item = table->topLevelItem(row);
            batches += item->text(1).toInt();
            const auto bar = item->data(4, ui::TakeBarColumn::role).value<ui::TakeBar>();
            CHECK(bar.low <= bar.middle);
            CHECK(bar.middle <= bar.high);
            CHECK(bar.high <= 100);
            CHECK_FALSE(item->text(6).isEmpty());
        }
        INFO(by->currentText().toStdString());
        CHECK(batches ==
              std::count_if(book.all<Batch>().begin(), book.all<Batch>().end(),
                            [](const auto& one) { return one.second.state == BatchState::Ended; }));
    }
    // A narrower level makes narrower intervals.
    const auto width = [&] {
        const auto bar = table->topLevelItem(0)->data(4, ui::TakeBarColumn::role).value<ui::TakeBar>();
        return bar.high - bar.low;
    };
    const double at95 = width();
    open.child<QComboBox>("takeLevel")->setCurrentIndex(0);
    CHECK(width() < at95);
}

TEST_CASE("What a trial says is told whole, with the cuttings that would settle it") {
    SmallBook small = smallBook();
    // Two batches of one lot that differ in the hormone alone.
    for (const int plants : {20, 26}) {
        Batch batch = small.book.get<Batch>(small.struck);
        batch.id = {};
        batch.code.clear();
        batch.strikeDay = day("2026-03-01");
        batch.recipe.hormone.value = plants == 26 ? "IBA 1000 ppm" : "none";
        batch.target.reset();
        batch.containers = {{1, 40}};
        const BatchId id = small.book.nextId<Batch>();
        perform(small.book, {AddBatch{batch, {}}});
        perform(small.book, {PotOn{id, batch.strikeDay + 45, {{1, plants, 40 - plants}}, ""}});
    }
    OpenWindow open;
    open.window.setSession(std::make_unique<ui::MemorySession>(small.book, QStringLiteral("trial")));
    open.child<QAction>("results")->trigger();
    open.child<QTabWidget>("resultsTabs")->setCurrentIndex(1);
    const auto* table = open.child<QTreeWidget>("trialTable");
    REQUIRE(table->topLevelItemCount() == 1);
    CHECK(table->topLevelItem(0)->text(3).startsWith("15 points ("));
    const QString verdict = open.child<QLabel>("trialVerdict")->text();
    CHECK(verdict.contains("not settled; if it stays so, "));
    CHECK(verdict.endsWith(" cuttings in each way would settle it"));
}

TEST_CASE("Own figures are shown before they are used, used with one click, and taken back by undo") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    potOnSome(open, 6);
    open.child<QAction>("results")->trigger();
    open.child<QTabWidget>("resultsTabs")->setCurrentIndex(2);
    auto* list = open.child<QTreeWidget>("ownTable");
    if (book.all<Recipe>().empty()) {
        CHECK(list->topLevelItemCount() == 0);
        return;
    }
    REQUIRE(list->topLevelItemCount() > 0);
    const HouseBook before = book;
    CHECK(open.child<QLabel>("ownWords")->text().contains("Yours: take"));
    CHECK(book == before);
    open.child<QPushButton>("ownTakeOver")->click();
    CHECK_FALSE(book.all<Recipe>() == before.all<Recipe>());
    open.child<QAction>("undo")->trigger();
    CHECK(book.all<Recipe>() == before.all<Recipe>());
}
