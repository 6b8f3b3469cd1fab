#include "core/book/command.h"
#include "core/book/load.h"
#include "tests/support/small_nursery.h"
#include "ui/map/bench_map.h"
#include "ui/placing/placing_hand.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <vector>

/// Times of the bench map with 20,000 slots and 5,000 batches at 1600 x 1000, loggers in every fourth zone;
/// prints the median of each.
namespace warmbench::tests {
namespace {

constexpr int zones = 200;
constexpr int batches = 5000;
constexpr int repeats = 21;

bool report(const char* what, double limit, const std::function<void()>& work) {
    std::vector<double> milliseconds;
    for (int i = 0; i < repeats; ++i) {
        QElapsedTimer timer;
        timer.start();
        work();
        milliseconds.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    std::sort(milliseconds.begin(), milliseconds.end());
    const double median = milliseconds[milliseconds.size() / 2];
    std::printf("%-44s median %6.2f ms, best %6.2f, limit %4.0f %s\n", what, median, milliseconds.front(),
                limit, median < limit ? "" : "MISSED");
    return median < limit;
}

/// Keeps what loggers in every fourth zone measured every ten minutes, on all days that are looked at.
void keepReadings(HouseBook& book) {
    ChannelReadings readings{Channel::RootZone, {}};
    const std::int32_t first = (smallNurseryToday() - 60).number() * climate::minutesPerDay;
    for (std::int32_t i = 0; i < 120 * climate::minutesPerDay / 10; ++i)
        readings.readings.push_back({first + 10 * i, 1900 + (i * 37) % 120});
    std::vector<ZoneId> logged;
    for (const auto& [id, zone] : book.all<Zone>())
        if (id.number % 4 == 0) logged.push_back(id);
    for (const ZoneId zone : logged)
        if (const auto kept = book.perform({KeepReadings{{zone, std::nullopt}, {readings}}}); !kept)
            std::printf("%s\n", kept.refusal().text().c_str());
}

bool run() {
    HouseBook book = fullNursery(zones, batches);
    keepReadings(book);
    const Day today = smallNurseryToday();
    const ui::Letters letters(book);
    const ui::TypeSizes type = ui::typeSizes(QApplication::font());
    const ui::Wording wording;
    ui::BenchMap map;
    map.setLook(ui::lightPalette(), type, wording);
    map.resize(1600, 1000);
    map.showScene(ui::mapScene(book, today, letters));
    map.show();
    QApplication::processEvents();
    const auto logged = std::count_if(map.scene().zones.begin(), map.scene().zones.end(),
                                      [](const ui::SceneZone& zone) { return zone.measured.has_value(); });
    std::printf("%d slots taken of %d, %zu patches, %d zones with a log\n", map.scene().taken,
                map.scene().usable, map.scene().stays.size(), static_cast<int>(logged));
    QImage image(map.viewport()->size(), QImage::Format_ARGB32_Premultiplied);
    const auto repaint = [&] { map.viewport()->render(&image, {}, {}, QWidget::RenderFlags()); };

    bool kept = report("full repaint, everything in sight", 16, repaint);
    while (map.mapLayout().scale() * 130 < 12) map.zoomIn();
    kept = report("full repaint, slots of 12 px and more", 16, repaint) && kept;
    while (map.mapLayout().scale() * 130 < 24) map.zoomIn();
    kept = report("full repaint, slots of 24 px and more", 16, repaint) && kept;
    while (map.mapLayout().scale() * 130 < 50) map.zoomIn();
    kept = report("full repaint, slots of 50 px and more", 16, repaint) && kept;
    int step = 7;
    kept = report("pan by a step", 8,
                  [&] {
                      QScrollBar* bar = map.horizontalScrollBar();
                      if (bar->value() + step > bar->maximum() || bar->value() + step < 0) step = -step;
                      bar->setValue(bar->value() + step);
                      map.verticalScrollBar()->setValue(map.verticalScrollBar()->value() + 5);
                      QApplication::processEvents();
                  }) &&
           kept;
    map.fit();
    Day day = today;
    RootZoneLogs logs;
    kept = report("move the day: scene and full repaint", 16,
                  [&] {
                      day = day + 1;
                      map.showScene(ui::mapScene(book, day, letters, logs));
                      repaint();
                  }) &&
           kept;
    // One that stands in the middle is carried: all else is taken but its own slots.
    map.showScene(ui::mapScene(book, today, letters));
    const BatchId carried = map.scene().stays[map.scene().stays.size() / 2].batch;
    ui::PlacingHand hand;
    hand.setWording(wording);
    map.setHand(&hand);
    report("take up: judge all zones, once a drag", 200, [&] {
        if (const auto refusal = hand.take(book, carried, {}, today))
            std::printf("%s\n", refusal->text().c_str());
        map.setHand(&hand);
    });
    repaint();
    int at = 0;
    kept = report("pointer move while carrying: aim, words, repaint", 16,
                  [&] {
                      at += 37;
                      map.pointHandAt({100 + at % 1400, 60 + at % 880});
                      repaint();
                  }) &&
           kept;
    hand.putBack();
    report("of which the scene", 16, [&] { (void)ui::mapScene(book, day, letters); });
    report("load of eighteen weeks, once a change", 50,
           [&] { (void)slotLoad(book, today - 28, today + 98); });
    return kept;
}

} // namespace
} // namespace warmbench::tests

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    return warmbench::tests::run() ? 0 : 1;
}
