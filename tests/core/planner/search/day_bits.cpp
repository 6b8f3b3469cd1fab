#include "core/planner/search/day_bits.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace warmbench::planner::search;

namespace {

/// Days that are set once in so many times.
std::vector<DayWord> someDays(std::mt19937& random, int days, unsigned onceIn) {
    DayRows rows(1, days);
    for (int day = 0; day < days; ++day)
        if (random() % onceIn == 0) rows.flip(0, day);
    return {rows.row(0).begin(), rows.row(0).end()};
}

bool isSet(const std::vector<DayWord>& bits, int day) {
    return (bits[static_cast<std::size_t>(day / daysOfWord)] >> (day % daysOfWord) & 1) != 0;
}

} // namespace

TEST_CASE("Days are counted one by one or by words alike") {
    std::mt19937 random(64);
    for (int i = 0; i < 200; ++i) {
        const int days = 1 + static_cast<int>(random() % 200);
        const auto bits = someDays(random, days, 3);
        const int from = static_cast<int>(random() % static_cast<unsigned>(days));
        const int to = from + 1 + static_cast<int>(random() % static_cast<unsigned>(days - from));
        int count = 0;
        for (int day = from; day < to; ++day) count += isSet(bits, day);
        CHECK(countDays(bits, from, to) == count);
    }
}

TEST_CASE("A day is spread back to all days from which a run of days meets it") {
    std::mt19937 random(65);
    for (int i = 0; i < 200; ++i) {
        const int days = 1 + static_cast<int>(random() % 200);
        const int length = 1 + static_cast<int>(random() % 150);
        const auto before = someDays(random, days, 40);
        auto spread = before;
        spreadBack(spread, length);
        int wrong = 0;
        for (int day = 0; day < days; ++day) {
            bool meets = false;
            for (int met = day; met < std::min(days, day + length); ++met)
                meets = meets || isSet(before, met);
            wrong += meets != isSet(spread, day);
        }
        CHECK(wrong == 0);
    }
}

TEST_CASE("Days that follow each other are flipped one by one or by words alike") {
    std::mt19937 random(66);
    for (int i = 0; i < 200; ++i) {
        const int days = 1 + static_cast<int>(random() % 200);
        const int from = static_cast<int>(random() % static_cast<unsigned>(days));
        const int to = from + 1 + static_cast<int>(random() % static_cast<unsigned>(days - from));
        DayRows together(3, days);
        DayRows oneByOne(3, days);
        together.flip(1, from, to);
        for (int day = from; day < to; ++day) oneByOne.flip(1, day);
        for (std::size_t row = 0; row < 3; ++row)
            CHECK(std::equal(together.row(row).begin(), together.row(row).end(), oneByOne.row(row).begin()));
    }
}

TEST_CASE("A window shows up to 64 days of a row, and none beyond the horizon") {
    std::mt19937 random(67);
    for (int i = 0; i < 200; ++i) {
        const int days = 1 + static_cast<int>(random() % 200);
        const int first = static_cast<int>(random() % static_cast<unsigned>(days));
        DayRows rows(2, days);
        for (int day = 0; day < days; ++day)
            if (random() % 3 == 0) rows.flip(0, day);
        rows.set(1); // what follows in memory is not to be seen
        const std::vector<DayWord> bits(rows.row(0).begin(), rows.row(0).end());
        const DayWindow window(first, days);
        const DayWord* words = rows.words(0) + window.word();
        const DayWord seen = window.of(words[0], words[1]) & window.within();
        int wrong = 0;
        for (int day = first; day < first + daysOfWord; ++day)
            wrong += (seen >> (day - first) & 1) != (day < days && isSet(bits, day));
        CHECK(wrong == 0);
    }
}

TEST_CASE("Days of one word are spread back as those of a row are") {
    std::mt19937 random(68);
    for (int i = 0; i < 200; ++i) {
        auto row = someDays(random, daysOfWord, 20);
        DayWord word = row[0];
        const int length = 1 + static_cast<int>(random() % daysOfWord);
        spreadBack(row, length);
        spreadBack(word, length);
        CHECK(word == row[0]);
    }
}
