#include "tests/ui/root_pictures.h"

#include "core/book/query.h"
#include "tests/ui/window.h"
#include "ui/climate/climate_chart.h"
#include "ui/climate/import_dialog.h"
#include "ui/forecast/forecast_card.h"
#include "ui/shell/style.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QPushButton>
#include <QTabWidget>
#include <QTreeWidget>

#include <algorithm>
#include <cmath>

namespace warmbench::tests {
namespace {

/// Readings every ten minutes of two years up to the small nursery's day: a day's swing, a year's, a
/// thermostat's, a gap of a week and a cold night.
ChannelReadings twoYears(Channel channel, double middle, double byYear, double byDay) {
    ChannelReadings all{channel, {}};
    const std::int32_t end = smallNurseryToday().number() * climate::minutesPerDay;
    constexpr double turn = 6.283185307;
    for (std::int32_t minute = end - 730 * climate::minutesPerDay; minute < end; minute += 10) {
        const double days = static_cast<double>(minute) / climate::minutesPerDay;
        const double before = static_cast<double>(end - minute) / climate::minutesPerDay;
        if (before > 200 && before < 207) continue;
        double value = middle - byYear * std::cos(turn * days / 365.25) - byDay * std::cos(turn * days) +
                       0.4 * std::sin(turn * days * 17);
        if (channel == Channel::RootZone && before > 9.2 && before < 9.7) value -= 9;
        if (channel == Channel::Humidity) value = std::clamp(value, 20.0, 100.0);
        all.readings.push_back({minute, static_cast<std::int32_t>(std::lround(value * 10)) * 10});
    }
    return all;
}

void keepReadings(OpenWindow& open) {
    const HouseBook& book = open.window.session()->book();
    for (const auto& [id, zone] : book.all<Zone>())
        if (zone.mat) {
            (void)open.window.session()->perform(
                Command{KeepReadings{{id, std::nullopt}, {twoYears(Channel::RootZone, 20, 1, 0.8)}}});
            break;
        }
    (void)open.window.session()->perform(
        Command{KeepReadings{{std::nullopt, book.all<House>().begin()->first},
                             {twoYears(Channel::Air, 17, 6, 4), twoYears(Channel::Humidity, 78, -4, -14)}}});
}

void potOnSome(OpenWindow& open) {
    const HouseBook& book = open.window.session()->book();
    std::vector<PotOn> all;
    int share = 50;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Struck || all.size() == 14) continue;
        share = 45 + (share * 7 + 13) % 50;
        PotOn one{id, smallNurseryToday(), {}, ""};
        for (const BatchContainer& container : batch.containers)
            if (const int there = standing(book, batch, container.number, smallNurseryToday()); there > 0)
                one.containers.push_back(
                    {container.number, there * share / 100, there - there * share / 100});
        if (!one.containers.empty()) all.push_back(one);
    }
    for (const PotOn& one : all) (void)open.window.session()->perform(Command{one});
}

void grabWindow(OpenWindow& open, const QString& file) {
    QApplication::processEvents();
    open.window.grab().save(file);
}

void writePlaces(const QString& folder, QSize size, ui::Theme theme, const QString& look) {
    OpenWindow open(size);
    open.window.setTheme(theme);
    keepReadings(open);
    grabWindow(open, folder + QStringLiteral("house-logged") + look);
    open.child<QAction>("climate")->trigger();
    QApplication::processEvents();
    grabWindow(open, folder + QStringLiteral("climate") + look);
    open.child<QCheckBox>("climateDeficit")->setChecked(true);
    open.child<QPushButton>("climateDays0")->click();
    grabWindow(open, folder + QStringLiteral("climate-all") + look);
    open.child<QTabWidget>("climateTabs")->setCurrentIndex(1);
    grabWindow(open, folder + QStringLiteral("climate-heat") + look);
    potOnSome(open);
    open.child<QAction>("results")->trigger();
    grabWindow(open, folder + QStringLiteral("results") + look);
    open.child<QTabWidget>("resultsTabs")->setCurrentIndex(1);
    grabWindow(open, folder + QStringLiteral("results-trials") + look);
    open.child<QTabWidget>("resultsTabs")->setCurrentIndex(2);
    grabWindow(open, folder + QStringLiteral("results-own") + look);
}

void writeCard(const QString& folder, const ui::Palette& palette, const QString& look) {
    const HouseBook book = smallNursery();
    const RecipeLibrary recipes;
    int written = 0;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Struck || book.checksOf(id).empty() || written == 2) continue;
        ui::ForecastCard card;
        card.setPalette(ui::qtPalette(palette));
        card.setStyleSheet(ui::windowStyleSheet(palette));
        card.setAutoFillBackground(true);
        card.setLook(palette, ui::typeSizes(QApplication::font()), ui::Wording());
        card.showBatch(book, recipes, id, smallNurseryToday());
        if (card.isHidden()) continue;
        card.resize(260, card.heightForWidth(260) > 0 ? card.heightForWidth(260) : 480);
        QApplication::processEvents();
        card.grab().save(folder + QStringLiteral("forecast-card-%1").arg(++written) + look);
    }
}

void writeImport(const QString& folder, const ui::Palette& palette, const QString& look) {
    const HouseBook book = smallNursery();
    ui::ImportDialog dialog(
        book, {book.all<Zone>().begin()->first, std::nullopt}, ui::Wording(),
        [](const Command&) {
            return Outcome(Refusal{"picture", "nothing is kept"});
        },
        nullptr);
    dialog.setPalette(ui::qtPalette(palette));
    dialog.setStyleSheet(ui::windowStyleSheet(palette));
    dialog.openFile(QStringLiteral(WARMBENCH_SOURCE "/sample-data/logger-mat-8.csv"));
    dialog.show();
    QApplication::processEvents();
    dialog.grab().save(folder + QStringLiteral("import") + look);
}

} // namespace

void writeRootPictures(const QString& folder) {
    writePlaces(folder, {1360, 860}, ui::Theme::Light, QStringLiteral(".png"));
    writePlaces(folder, {1280, 720}, ui::Theme::Dark, QStringLiteral("-1280-dark.png"));
    writeCard(folder, ui::lightPalette(), QStringLiteral(".png"));
    writeCard(folder, ui::darkPalette(), QStringLiteral("-dark.png"));
    writeImport(folder, ui::lightPalette(), QStringLiteral(".png"));
    writeImport(folder, ui::darkPalette(), QStringLiteral("-dark.png"));
}

} // namespace warmbench::tests
