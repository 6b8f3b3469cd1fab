// Prints how long a logger's file with a million readings takes to read.
#include "core/exchange/logger/logger_file.h"
#include "core/quantity/day.h"

#include <chrono>
#include <cstdio>
#include <string>

using namespace warmbench;

int main() {
    constexpr int readings = 1'000'000;
    std::string text = "time;Wurzelzone °C;Feuchte %\n";
    text.reserve(std::size_t{readings} * 32);
    for (int i = 0; i < readings; ++i) {
        const int minute = i % 60;
        const int hour = i / 60 % 24;
        const Day day = Day::fromNumber(18'000 + i / 1440);
        char line[64];
        std::snprintf(line, sizeof line, "%02u.%02u.%d %02d:%02d;%d,%d;%d\n", day.dayOfMonth(), day.month(),
                      day.year(), hour, minute, 15 + i % 7, i % 10, 60 + i % 40);
        text += line;
    }
    const auto start = std::chrono::steady_clock::now();
    const auto file = exchange::readLogger("million.csv", text, {60, exchange::SummerTime::European});
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    std::printf("%zu readings of %d lines in %.2f s\n", file ? file->readings.size() : 0, readings, seconds);
    return 0;
}
