#include "ui/paper/day_sheet.h"
#include "ui/paper/row_plot.h"
#include "ui/paper/season_sheet.h"
#include "ui/paper/slot_map.h"

#include "tests/core/season/season_book.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

#include <QImage>
#include <QPainter>

#include <set>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

/// The plot on white, as wide as a page at 100 dots an inch.
QImage painted(const Plot& plot) {
    QImage image(1000, static_cast<int>(plot.heightInLines * 20), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    plot.paint(painter, image.rect(), QFont());
    return image;
}

int darkIn(const QImage& image) {
    int dark = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
    return dark;
}

/// Colours of a picture apart from greys.
int coloursIn(const QImage& image) {
    std::set<QRgb> colours;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour(image.pixel(x, y));
            if (colour.saturation() > 8) colours.insert(image.pixel(x, y));
        }
    return static_cast<int>(colours.size());
}

} // namespace

TEST_CASE("An axis steps by 1, 2 or 5 times a power of ten") {
    CHECK(axisStep(1, 5) == Approx(0.2));
    CHECK(axisStep(150, 5) == Approx(50));
    CHECK(axisStep(9, 5) == Approx(2));
    CHECK(axisStep(1000, 5) == Approx(200));
    CHECK(axisStep(0.03, 5) == Approx(0.01));
}

TEST_CASE("Rows are put in as many plots as find room, each with all its marks in grey") {
    std::vector<PlotRow> rows(20);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].label = QStringLiteral("row");
        rows[i].range = {0.6, 0.9};
        rows[i].interval = {0.4, 0.8};
        rows[i].point = 0.6;
    }
    const auto plots = rowPlots(rows, {1, 100, QStringLiteral("%")});
    REQUIRE(plots.size() == 2);
    for (const Plot& plot : plots) {
        CHECK(darkIn(painted(plot)) > 100);
        CHECK(coloursIn(painted(plot)) == 0);
    }
    // A ring is lighter than a dot: little is known.
    std::vector<PlotRow> one(1);
    one[0].point = 0.5;
    const int filled = darkIn(painted(rowPlots(one, {}).front()));
    one[0].open = true;
    CHECK(darkIn(painted(rowPlots(one, {}).front())) < filled);
}

TEST_CASE("A season's sheet has a mark for each plot, and says what is missing in words") {
    SeasonBook nursery;
    const TargetId target = nursery.want(40, on(10, 1));
    nursery.strike(on(8, 1), 30, 100, target);
    const SeasonSheet sheet =
        seasonSheet(nursery.book, {on(1, 1), on(12, 31), on(12, 31)}, Wording(QLocale(QLocale::English)));
    REQUIRE(sheet.plots.size() == 1); // no batch has ended: no takes to plot
    CHECK(sheet.html.contains(plotMark(0)));
    CHECK(sheet.html.contains("40 missing so far"));
    CHECK(coloursIn(painted(sheet.plots.front())) == 0);
}

TEST_CASE("A day's sheet shows each zone in which is struck once, with the slots of its batches") {
    const HouseBook book = tests::smallNursery();
    std::set<ZoneId> zones;
    Day day;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned) day = std::max(day, batch.strikeDay);
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned)
            if (const auto zone = firstZoneOf(book, id)) zones.insert(*zone);
    const DaySheet sheet =
        daySheet(book, season::dayWork(book, forecast::BookForecast(book, day)), Wording(QLocale()));
    CHECK(sheet.plots.size() == zones.size());
    REQUIRE_FALSE(sheet.plots.empty());
    for (const Plot& plot : sheet.plots) {
        CHECK(darkIn(painted(plot)) > 100);
        CHECK(coloursIn(painted(plot)) == 0);
    }
}
