#include "ui/map/map_scene.h"

#include "core/book/command.h"
#include "core/book/query.h"
#include "tests/support/small_nursery.h"
#include "ui/map/map_layout.h"

#include <catch2/catch.hpp>

#include <set>

using namespace warmbench;
using namespace warmbench::ui;

namespace {

MapScene sceneOn(const HouseBook& book, Day day) {
    return mapScene(book, day, Letters(book));
}

int areaOf(const std::vector<SlotRect>& rects) {
    int area = 0;
    for (const SlotRect& rect : rects) area += rect.height * rect.width;
    return area;
}

} // namespace

TEST_CASE("The scene counts on every day what the book counts") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    for (const int ahead : {-60, -7, 0, 3, 40, 200}) {
        const MapScene scene = sceneOn(book, today + ahead);
        REQUIRE(scene.zones.size() == book.all<Zone>().size());
        int taken = 0;
        for (const SceneZone& zone : scene.zones) {
            CHECK(zone.taken == slotsTaken(book, zone.id, scene.day));
            CHECK(zone.setPoint == setPointOn(book, zone.id, scene.day));
            CHECK(zone.expected == expectedRootZone(book, book.get<Zone>(zone.id), scene.day));
            CHECK(std::count_if(zone.potAt.begin(), zone.potAt.end(), [](int pot) { return pot >= 0; }) ==
                  zone.taken);
            taken += zone.taken;
        }
        CHECK(scene.taken == taken);
    }
}

TEST_CASE("Each pot of the scene says how many cuttings stand in it and what was found in it last") {
    HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    const Batch& batch = *findBatch(book, sceneOn(book, today).stays.front().code.toStdString());
    REQUIRE(book.perform({RecordLoss{{{}, batch.id, 1, today - 1, 3, "rot"}}}));
    const MapScene scene = sceneOn(book, today);
    for (const SceneStay& stay : scene.stays) {
        const Batch& shown = book.get<Batch>(stay.batch);
        int cuttings = 0;
        for (int i = stay.firstPot; i < stay.endPot; ++i) {
            const ScenePot& pot = scene.pots[static_cast<std::size_t>(i)];
            cuttings += pot.cuttings;
            const RootCheck* check = latestCheck(book, shown.id, pot.number, today);
            CHECK(pot.examined == (check ? check->examined : 0));
            CHECK(pot.rooted == (check ? check->rooted : 0));
        }
        CHECK(cuttings == standing(book, shown, today));
        CHECK(areaOf(stay.patch) == stay.endPot - stay.firstPot);
    }
}

TEST_CASE("Letters are unique among the batches that stand on a day, and stay the same from day to day") {
    const HouseBook book = tests::smallNursery();
    const Letters letters(book);
    for (int ahead = -80; ahead < 80; ++ahead) {
        const MapScene scene = mapScene(book, tests::smallNurseryToday() + ahead, letters);
        std::set<BatchId> batches;
        std::set<QString> codes;
        for (const SceneStay& stay : scene.stays) {
            batches.insert(stay.batch);
            codes.insert(stay.letters);
            CHECK(stay.letters == letters.of(stay.batch));
        }
        CHECK(codes.size() == batches.size());
    }
    std::set<QString> waiting;
    for (const auto& [id, batch] : book.all<Batch>()) waiting.insert(letters.of(id));
    CHECK(waiting.size() == book.all<Batch>().size());
    CHECK(letters.of(BatchId{999}).isEmpty());
}

TEST_CASE("The letters of a batch that has ended are given again") {
    HouseBook book = tests::smallNursery();
    const Batch first = book.all<Batch>().begin()->second;
    REQUIRE(book.perform({Discard{first.id, tests::smallNurseryToday(), {}, "rot"}}));
    Batch next = first;
    next.id = {};
    next.code.clear();
    next.strikeDay = tests::smallNurseryToday();
    REQUIRE(book.perform({AddBatch{next, {}}}));
    const Letters letters(book);
    CHECK(letters.of(first.id) == letters.of(BatchId{book.nextId<Batch>().number - 1}));
}

TEST_CASE("Rows and then equal neighbours of slots merge into few rectangles that cover just them") {
    std::vector<SlotRect> slots;
    for (int col = 0; col < 4; ++col)
        for (int row = 0; row < 3; ++row) slots.push_back({row, col, 1, 1});
    slots.push_back({0, 4, 1, 1});
    const auto merged = mergedPatch(slots);
    CHECK(areaOf(merged) == 13);
    CHECK(merged == std::vector<SlotRect>{{0, 0, 1, 5}, {1, 0, 2, 4}});
    CHECK(mergedPatch({}).empty());
}

TEST_CASE("A point in every slot hits its zone, slot and pot at any scale") {
    const HouseBook book = tests::smallNursery();
    const MapScene scene = sceneOn(book, tests::smallNurseryToday());
    for (const double scale : {0.05, 0.113, 0.5}) {
        const MapLayout layout(scene, 1, scale);
        for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone) {
            const SceneZone& one = scene.zones[static_cast<std::size_t>(zone)];
            for (int row = 0; row < one.rows; ++row)
                for (int col = 0; col < one.cols; ++col) {
                    const QRect area = layout.slots(scene, zone, {row, col, 1, 1});
                    const MapHit hit = layout.at(scene, QRectF(area).center());
                    REQUIRE(hit.zone == zone);
                    REQUIRE(hit.slot == Slot{row, col});
                    const int cell = row * one.cols + col;
                    const int pot = one.potAt[static_cast<std::size_t>(cell)];
                    REQUIRE(hit.pot.value_or(-1) == pot);
                }
            const MapHit heading = layout.at(scene, QRectF(layout.heading(scene, zone)).center());
            CHECK(heading.zone == zone);
        }
        CHECK(!layout.at(scene, {1, 1}).zone);
    }
}

TEST_CASE("A fitted layout lies within its size, and several houses are put where they are largest") {
    HouseBook book = tests::smallNursery();
    House second = book.all<House>().begin()->second;
    second.id = {};
    second.name = "Tunnel";
    REQUIRE(book.perform({Put<House>{second}}));
    const MapScene scene = sceneOn(book, tests::smallNurseryToday());
    const MapLayout wide = MapLayout::fitted(scene, {1600, 600});
    const MapLayout high = MapLayout::fitted(scene, {600, 1200});
    CHECK(wide.columns() == 2);
    CHECK(high.columns() == 1);
    CHECK(wide.size().width() <= 1600);
    CHECK(wide.size().height() <= 600);
    CHECK(high.size().height() <= 1200);
}
