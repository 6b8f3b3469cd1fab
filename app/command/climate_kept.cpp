#include "app/command/climate_kept.h"

#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/figures.h"
#include "app/command/open_book.h"
#include "core/book/readings.h"
#include "core/forecast/range_warnings.h"

#include <cmath>
#include <iostream>

namespace warmbench::app {
namespace {

constexpr int daysTold = 30;

std::string placeName(const HouseBook& book, const ReadingPlace& place) {
    return place.zone ? placeWords(book, *place.zone) : book.get<House>(*place.house).name;
}

std::string hourWords(double hour) {
    const int day = static_cast<int>(std::floor(hour / 24));
    const int minutes = static_cast<int>(std::lround((hour - 24.0 * day) * 60));
    const auto two = [](int value) { return (value < 10 ? "0" : "") + std::to_string(value); };
    return Day::fromNumber(day).iso() + " " + two(minutes / 60) + ":" + two(minutes % 60);
}

void sayPlace(const HouseBook& book, const ReadingPlace& place) {
    for (const Channel channel : {Channel::RootZone, Channel::Air, Channel::Humidity}) {
        const auto readings = readingsBetween(book, place, channel, Day::first(), Day::last());
        if (readings.empty()) continue;
        std::cout << placeName(book, place) << ", " << channelNames[static_cast<std::size_t>(channel)] << ": "
                  << counted(readings.size(), "reading", "readings") << " from "
                  << hourWords(readings.front().minute / 60.0) << " to "
                  << hourWords(readings.back().minute / 60.0) << '\n';
    }
}

} // namespace

void sayToKeep(const HouseBook& book, const ReadingPlace& place, const exchange::KeptReadings& kept) {
    for (const ChannelReadings& one : kept.channels) {
        const ReadingsToKeep found = toKeep(book, place, one);
        std::cout << "  for the book, " << channelNames[static_cast<std::size_t>(one.channel)] << ": "
                  << found.fresh << " new, " << found.same << " that it has already, " << found.another
                  << " of minutes for which it has another value, which stays\n";
    }
    if (kept.sameMinute > 0)
        std::cout << "  " << kept.sameMinute << " left out: the book keeps one reading a minute, the first\n";
}

int keepReadings(const std::string& path, const ReadingPlace& place, const exchange::KeptReadings& kept) {
    const auto file = openBook(path, OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    std::size_t fresh = 0;
    for (const ChannelReadings& one : kept.channels) fresh += toKeep((*file)->book(), place, one).fresh;
    if (fresh > 0)
        if (auto refusal = (*file)->perform(Command{KeepReadings{place, kept.channels}}))
            return refuseFile(*refusal);
    std::cout << path << ": " << counted(fresh, "reading", "readings") << " kept\n";
    return done;
}

int tellKept(const HouseBook& book, Day day) {
    const auto places = placesWithReadings(book);
    if (places.empty()) std::cout << "The book has no readings; keep some with --file and --keep\n";
    for (const ReadingPlace& place : places) sayPlace(book, place);
    const auto warnings = forecast::rangeWarnings(book, day - daysTold, day + 1);
    std::cout << "\nOutside the range of what roots there, " << daysTold << " days to " << dayWords(day)
              << ": " << counted(warnings.size(), "time", "times") << '\n';
    for (const forecast::RangeWarning& one : warnings) {
        std::cout << "  " << placeWords(book, one.zone) << ": too " << (one.below ? "cold" : "warm")
                  << " from " << hourWords(one.from) << " to " << hourWords(one.to) << ", "
                  << hoursWords(one.hours) << " in all, " << fixedText(one.extreme, 1) << " °C; ";
        for (std::size_t i = 0; i < one.batches.size(); ++i) {
            const Batch& batch = book.get<Batch>(one.batches[i]);
            std::cout << (i > 0 ? ", " : "") << batch.code << ' ' << book.get<Taxon>(batch.taxon).name;
        }
        std::cout << '\n';
    }
    return done;
}

} // namespace warmbench::app
