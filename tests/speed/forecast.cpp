// Prints how long the forecast of a book with 500 live batches and 20,000 checks takes, whole and after one
// check.
#include "core/forecast/book_forecast.h"
#include "tests/support/small_book.h"

#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace warmbench;

namespace {

template <class Work>
double milliseconds(Work work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

int main() {
    constexpr int batches = 500;
    constexpr int checks = 20'000;
    HouseBook book = tests::bookOfChecks(batches, checks);
    const Day day = tests::day("2006-01-01");
    double best = 1e9;
    for (int run = 0; run < 3; ++run)
        best = std::min(best, milliseconds([&] { forecast::BookForecast(book, day); }));
    forecast::BookForecast forecast(book, day);
    RootCheck check = book.all<RootCheck>().begin()->second;
    const Change change = tests::perform(book, {RecordCheck{check}});
    double after = 1e9;
    for (int run = 0; run < 5; ++run)
        after = std::min(after, milliseconds([&] { forecast.update(book, change); }));
    std::printf("%zu batches, %d checks: whole forecast %.0f ms, after one check %.2f ms\n",
                forecast.batches().size(), checks, best, after);
    return 0;
}
