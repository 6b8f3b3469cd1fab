#include "app/storage/rescue.h"
#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <fstream>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

namespace {

constexpr std::size_t pageSize = 4096;

std::string bytesOf(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

const app::RescuedKind& kind(const app::Rescue& rescue, const std::string& several) {
    for (const app::RescuedKind& one : rescue.kinds)
        if (one.several == several) return one;
    throw std::runtime_error("no kind " + several);
}

} // namespace

TEST_CASE("A book whose journal is whole is rescued as it was, whatever its tables say") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    REQUIRE(!opened(file, OpenMode::Write)->perform(handsOf(1)));
    HouseBook expected = smallBook().book;
    perform(expected, handsOf(1));
    tamper(file, "UPDATE zones SET cover = 'rain'; ");
    CHECK(!BookFile::open(file, OpenMode::Read));
    const auto before = bytesOf(file);
    const auto rescue = app::rescueBook(file, folder.path("saved.wbook"));
    REQUIRE(rescue);
    CHECK(rescue->journalWhole);
    CHECK(opened(folder.path("saved.wbook"), OpenMode::Write)->book() == expected);
    CHECK(bytesOf(file) == before);
}

TEST_CASE(
    "Without its journal a book is rescued from its tables, and what makes no sense alone is left out") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    tamper(file, "DELETE FROM journal");
    tamper(file, "DELETE FROM batches WHERE id = 2");
    const auto rescue = app::rescueBook(file, folder.path("saved.wbook"));
    REQUIRE(rescue);
    CHECK(!rescue->journalWhole);
    CHECK(rescue->entries == 0);
    CHECK(kind(*rescue, "batches").saved == 1);
    CHECK(kind(*rescue, "stays").saved == 2);
    CHECK(kind(*rescue, "stays").dropped == 1);
    const auto saved = opened(folder.path("saved.wbook"), OpenMode::Write);
    CHECK(saved->check().empty());
    CHECK(saved->journal()->front().words == "Rescue what could be read of small.wbook");
}

TEST_CASE("Any one page of a book can be lost: the rest is rescued, and the old file is not touched") {
    const BookFolder folder;
    const std::string file = folder.path("large.wbook");
    const HouseBook large = bookOfChecks(20, 400);
    REQUIRE(!BookFile::create(file, large));
    REQUIRE(!opened(file, OpenMode::Write)->perform(handsOf(1)));
    const std::string sound = bytesOf(file);
    std::size_t most = 0;
    std::size_t least = large.all<RootCheck>().size();
    // Each is a few syncs of the disk: a sample of the pages.
    for (std::size_t page = 1; page < sound.size() / pageSize; page += 9) {
        std::string bytes = sound;
        std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(page * pageSize), pageSize, '\xA5');
        const std::string damaged = folder.path("damaged-" + std::to_string(page));
        const std::string saved = folder.path("saved-" + std::to_string(page));
        std::ofstream(damaged, std::ios::binary) << bytes;
        const auto rescue = app::rescueBook(damaged, saved);
        INFO("page " << page);
        REQUIRE(rescue);
        CHECK(bytesOf(damaged) == bytes);
        const auto book = opened(saved, OpenMode::Write);
        CHECK(book->check().empty());
        const std::size_t checks = book->book().all<RootCheck>().size();
        most = std::max(most, checks);
        least = std::min(least, checks);
    }
    CHECK(most == large.all<RootCheck>().size());
    CHECK(least > large.all<RootCheck>().size() / 2);
}

TEST_CASE("What is no house book is not rescued, and nothing takes the place of a file") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    std::ofstream(folder.path("text")) << std::string(5000, 'x');
    CHECK(app::rescueBook(folder.path("text"), folder.path("saved"))
              .refusal()
              .what.text()
              .starts_with("this is no"));
    CHECK(app::rescueBook(file, file).refusal().what ==
          "there is a file of this name already; choose another");
}
