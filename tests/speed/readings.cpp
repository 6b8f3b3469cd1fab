// Prints how long it takes to read a logger's file of a million readings and to keep it in a book's file.
#include "app/storage/book_file.h"
#include "core/exchange/logger/kept_readings.h"
#include "core/quantity/day.h"
#include "tests/support/small_book.h"
#include "tests/support/temporary_folder.h"

#include <QCoreApplication>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <string>

using namespace warmbench;

namespace {

double secondsOf(auto work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// A million readings, one a minute, of a root zone that swings by the day and by its thermostat.
std::string millionLines() {
    constexpr int readings = 1'000'000;
    std::string text = "time;Wurzelzone °C;Feuchte %\n";
    text.reserve(std::size_t{readings} * 32);
    for (int i = 0; i < readings; ++i) {
        const Day day = Day::fromNumber(20'000 + i / 1440);
        const double celsius = 20 + 3 * std::sin(i * 0.00436) + 0.4 * std::sin(i * 0.2);
        const int tenths = static_cast<int>(std::lround(celsius * 10));
        char line[64];
        std::snprintf(line, sizeof line, "%02u.%02u.%d %02d:%02d;%d,%d;%d\n", day.dayOfMonth(), day.month(),
                      day.year(), i / 60 % 24, i % 60, tenths / 10, tenths % 10, 60 + i / 30 % 40);
        text += line;
    }
    return text;
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const tests::TemporaryFolder folder;
    const std::string path = (folder.path() / "readings.warmbench").string();
    const tests::SmallBook small = tests::smallBook();
    if (const auto refusal = app::BookFile::create(path, small.book)) {
        std::fputs(refusal->text().c_str(), stderr);
        return 1;
    }
    const auto book = app::BookFile::open(path, app::OpenMode::Write);
    const std::string text = millionLines();
    std::optional<exchange::LoggerFile> file;
    const double read = secondsOf([&] {
        auto found = exchange::readLogger("million.csv", text, {60, exchange::SummerTime::European});
        if (found)
            file = std::move(*found);
        else
            std::fprintf(stderr, "%s\n", found.refusal().text().c_str());
    });
    if (!book) std::fprintf(stderr, "%s\n", book.refusal().text().c_str());
    if (!book || !file) return 1;
    exchange::KeptReadings kept;
    const double made = secondsOf([&] { kept = exchange::keptReadings(*file, 60, Channel::RootZone); });
    Outcome refusal;
    const double stored = secondsOf([&] {
        refusal = (*book)->perform(Command{KeepReadings{{small.warm, std::nullopt}, kept.channels}});
    });
    if (refusal) std::fputs(refusal->text().c_str(), stderr);
    std::printf(
        "%zu readings: read %.2f s, made ready %.2f s, kept in the book's file %.2f s, together %.2f s; the "
        "file has %.1f MB\n",
        file->readings.size(), read, made, stored, read + made + stored,
        static_cast<double>(std::filesystem::file_size(path)) / 1e6);
    return refusal ? 1 : 0;
}
