#include "ui/map/zone_label.h"

#include "core/book/command.h"
#include "core/book/query.h"
#include "core/book/readings.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::literals;
using namespace warmbench::ui;

namespace {

/// A zone with a mat that runs, named `B`, on the day that the small nursery is looked at.
SceneZone warmZone() {
    SceneZone zone;
    zone.name = QStringLiteral("B");
    zone.cover = Cover::Mist;
    zone.hasMat = true;
    zone.setPoint = 20_degC;
    zone.expected = 20_degC;
    zone.taken = 68;
    zone.usable = 96;
    zone.nextFree = tests::smallNurseryToday() + 1;
    return zone;
}

struct Kit {
    Palette palette = lightPalette();
    TypeSizes type = typeSizes(QFont());
    Wording wording{QLocale(QLocale::English, QLocale::UnitedKingdom)};
    PaintKit kit{palette, type, wording, Surface::Pixels};

    [[nodiscard]] ZoneLabel label(const SceneZone& zone, int width) const {
        return zoneLabel(zone, width, kit);
    }
};

QString plain(QString words) {
    return words.replace(QChar(0x00A0), u' ');
}

} // namespace

TEST_CASE("A zone's heading tells the root zone as it is against what its mat is set to") {
    const Wording wording{QLocale(QLocale::English, QLocale::UnitedKingdom)};
    SceneZone zone = warmZone();
    CHECK(plain(heatWords(zone, wording)) == "20 °C");
    zone.expected = 22.5_degC;
    CHECK(plain(heatWords(zone, wording)) == "20 °C set, 22.5 °C expected");
    zone.measured = 18.7_degC;
    CHECK(plain(heatWords(zone, wording)) == "20 °C set, 18.7 °C measured");
    CHECK(plain(zoneSentence(zone, wording)).contains("20 °C set, 18.7 °C measured"));
    zone.setPoint.reset();
    CHECK(plain(heatWords(zone, wording)) == "mat off, 18.7 °C measured");
    zone.hasMat = false;
    zone.measured.reset();
    CHECK(plain(heatWords(zone, wording)) == "no mat, 22.5 °C");
}

TEST_CASE("What a heading says fits its width, whatever it is") {
    const Kit kit;
    for (const bool measured : {false, true})
        for (const int troubled : {0, 2}) {
            SceneZone zone = warmZone();
            zone.troubled = troubled;
            if (measured) zone.measured = 18.5_degC;
            for (int width = 700; width >= 0; width -= 7) {
                const ZoneLabel label = kit.label(zone, width);
                const int around = label.trouble.isEmpty() ? 0 : 2 * headingGap;
                CHECK(kit.kit.strong.horizontalAdvance(label.name) +
                          kit.kit.quiet.horizontalAdvance(label.heat) +
                          kit.kit.quiet.horizontalAdvance(label.trouble) + around +
                          kit.kit.quiet.horizontalAdvance(label.taken) <=
                      width);
            }
            CHECK(kit.label(zone, 700).taken ==
                  "68 of 96, next free " + kit.wording.shortDate(*zone.nextFree));
            CHECK(kit.label(zone, 0).name.isEmpty());
        }
}

TEST_CASE("A narrow heading keeps the root zone against the set-point, marked where they are apart") {
    const Kit kit;
    SceneZone zone = warmZone();
    const auto heats = [&] {
        QStringList all;
        for (int width = 400; width >= 0; width -= 2)
            if (const QString heat = plain(kit.label(zone, width).heat); !heat.isEmpty()) all += heat;
        all.removeDuplicates();
        return all;
    };
    CHECK(heats() == QStringList{"20 °C · mist", "20 °C", "20°"});
    zone.measured = 18.7_degC;
    CHECK(heats() == QStringList{"20 °C set, 18.7 °C measured · mist", "20 °C set, 18.7 °C measured",
                                 "▼ 18.7° of 20°", "▼ 18.7/20°"});
    zone.measured = 19.4_degC;
    CHECK(heats().contains("19.4° of 20°"));
    zone.measured = 21_degC;
    CHECK(heats().contains("▲ 21° of 20°"));
}

TEST_CASE("A full zone says until when it is full") {
    const Kit kit;
    SceneZone zone = warmZone();
    zone.taken = zone.usable;
    CHECK(kit.label(zone, 260).taken == "full until " + kit.wording.shortDate(*zone.nextFree));
}

TEST_CASE("The scene takes the root zone from a zone's log, on days that it tells of") {
    HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    const ZoneId logged = book.all<Zone>().begin()->first;
    std::vector<climate::MinuteReading> readings;
    for (int hour = 0; hour < 48; ++hour)
        readings.push_back({(today - 2).number() * climate::minutesPerDay + 60 * hour, 1660});
    REQUIRE(book.perform({KeepReadings{{logged, std::nullopt}, {{Channel::RootZone, readings}}}}));
    const Letters letters(book);
    for (const int ahead : {-1, 0, 1}) {
        const MapScene scene = mapScene(book, today + ahead, letters);
        for (const SceneZone& zone : scene.zones) {
            if (zone.id != logged || ahead == 1) {
                CHECK(!zone.measured);
                CHECK(rootZoneOf(zone) == expectedRootZone(book, book.get<Zone>(zone.id), scene.day));
            } else {
                CHECK(zone.measured == 16.6_degC);
                CHECK(rootZoneOf(zone) == 16.6_degC);
            }
        }
    }
}
