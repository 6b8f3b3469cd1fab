// Prints how long a book of five years (3,000 batches, 100,000 checks, two million readings) takes to open to
// a usable window, and how its climate is drawn.
#include "app/window/file_session.h"
#include "app/window/password_keeper.h"
#include "tests/support/small_book.h"
#include "tests/support/temporary_folder.h"
#include "ui/climate/climate_chart.h"
#include "ui/shell/main_window.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QPushButton>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>

using namespace warmbench;

namespace {

double millisecondsOf(auto work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

/// Ten-minute readings of five years.
ChannelReadings fiveYears(Channel channel, double middle, double swing) {
    ChannelReadings all{channel, {}};
    const std::int32_t begins = tests::day("2001-01-01").number() * climate::minutesPerDay;
    for (std::int32_t minute = 0; minute < 5 * 365 * climate::minutesPerDay; minute += 10) {
        const double value = middle + swing * std::sin(minute * 0.00436) + 0.3 * std::sin(minute * 0.05);
        all.readings.push_back({begins + minute, static_cast<std::int32_t>(std::lround(value * 10)) * 10});
    }
    return all;
}

/// Files need no password.
class NoPasswords : public app::PasswordKeeper {
public:
    std::string find(const std::string&) override { return {}; }
    Outcome keep(const std::string&, const std::string&) override { return std::nullopt; }
};

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const tests::TemporaryFolder folder;
    const std::string path = (folder.path() / "five-years.warmbench").string();
    {
        HouseBook book = tests::bookOfChecks(3000, 100'000);
        std::size_t readings = 0;
        std::vector<ReadingPlace> places;
        for (const auto& [id, zone] : book.all<Zone>()) places.push_back({id, std::nullopt});
        for (const auto& [id, house] : book.all<House>()) places.push_back({std::nullopt, id});
        for (const ReadingPlace& place : places) {
            KeepReadings keep{place, {fiveYears(Channel::Air, 18, 6), fiveYears(Channel::Humidity, 75, 15)}};
            if (place.zone) keep.channels.push_back(fiveYears(Channel::RootZone, 20, 2));
            for (const ChannelReadings& one : keep.channels) readings += one.readings.size();
            tests::perform(book, {keep});
        }
        if (const auto refusal = app::BookFile::create(path, book)) {
            std::fputs(refusal->text().c_str(), stderr);
            return 1;
        }
        std::printf("%zu batches, %zu checks, %zu readings in %.1f MB\n", book.all<Batch>().size(),
                    book.all<RootCheck>().size(), readings,
                    static_cast<double>(std::filesystem::file_size(path)) / 1e6);
    }
    NoPasswords noPasswords;
    app::FileOpener opener(noPasswords);
    std::unique_ptr<ui::BookSession> session;
    const double file = millisecondsOf([&] {
        auto opened = opener.open(QString::fromStdString(path));
        if (opened) session = std::move(*opened);
    });
    if (!session) return 1;
    std::unique_ptr<ui::MainWindow> window;
    const double shown = millisecondsOf([&] {
        window = std::make_unique<ui::MainWindow>(opener, tests::day("2005-06-01"));
        window->setSession(std::move(session));
        window->resize(1360, 860);
        window->show();
        QApplication::processEvents();
        window->grab();
    });
    const double place = millisecondsOf([&] {
        window->findChild<QAction*>(QStringLiteral("climate"))->trigger();
        QApplication::processEvents();
        window->grab();
    });
    auto* chart = window->findChild<ui::ClimateChart*>();
    const double all = millisecondsOf([&] {
        window->findChild<QPushButton*>(QStringLiteral("climateDays0"))->click();
        chart->grab();
    });
    const int points = chart->pointsDrawn();
    double slowest = 0;
    for (int i = 0; i < 12; ++i)
        slowest = std::max(slowest, millisecondsOf([&] {
                               chart->zoom(1.25, (chart->windowFrom() + chart->windowTo()) / 2);
                               chart->grab();
                           }));
    std::printf("opened in %.0f ms and painted after %.0f ms more; climate shown in %.0f ms; five years "
                "drawn in %.0f "
                "ms (%d points), the slowest of 12 zooms in %.0f ms\n",
                file, shown, place, all, points, slowest);
    return 0;
}
