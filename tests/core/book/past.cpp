#include "core/book/past.h"

#include "core/book/command.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// The changes of a book over many steps, with the book after each hundredth of them.
struct LongPast {
    SmallBook small = smallBook();
    std::vector<Change> changes;
    std::vector<HouseBook> kept{small.book};

    explicit LongPast(int steps) {
        for (int i = 0; i < steps; ++i) {
            RootCheck check{{}, small.struck, 1 + i % 4, day("2027-03-01"), 1, 0, 1, 0, 0, {}, {}};
            check.note = "check " + std::to_string(i);
            changes.push_back(
                i % 3 == 2 ? perform(small.book, {RemoveCheck{small.book.all<RootCheck>().rbegin()->first}})
                           : perform(small.book, {RecordCheck{check}}));
            if (changes.size() % 100 == 0) kept.push_back(small.book);
        }
    }
    [[nodiscard]] std::vector<Change> since(std::size_t step) const {
        std::vector<Change> later(changes.begin() + static_cast<std::ptrdiff_t>(step), changes.end());
        std::reverse(later.begin(), later.end());
        return later;
    }
};

} // namespace

TEST_CASE("A book is led back to what it was on any step of three thousand") {
    const LongPast past(3000);
    for (std::size_t i = 0; i < past.kept.size(); i += 5) {
        const auto before = bookBefore(past.small.book, past.since(100 * i));
        REQUIRE(before);
        CHECK(*before == past.kept[i]);
    }
}

TEST_CASE("Changes that are not the book's latest ones do not lead back") {
    const LongPast past(10);
    auto later = past.since(0);
    later.erase(later.begin());
    CHECK(!bookBefore(past.small.book, later));
}
