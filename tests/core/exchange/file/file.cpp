#include "core/exchange/file/file.h"
#include "tests/support/temporary_folder.h"

#include <catch2/catch.hpp>

#include <fstream>

using namespace warmbench;
using namespace warmbench::exchange;
namespace fs = std::filesystem;

namespace {

std::size_t filesIn(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

constexpr std::size_t enough = 1 << 20;

} // namespace

TEST_CASE("A file is written anew or replaced, with nothing left beside it") {
    const tests::TemporaryFolder folder;
    const fs::path path = folder.path() / "answer.json";
    REQUIRE_FALSE(replaceFile(path, "first"));
    CHECK(*readFile(path, enough) == "first");
    REQUIRE_FALSE(replaceFile(path, "second\0half"));
    CHECK(*readFile(path, enough) == std::string("second"));
    REQUIRE_FALSE(replaceFile(path, std::string(3'000'000, 'x')));
    CHECK(fs::file_size(path) == 3'000'000);
    CHECK(filesIn(folder.path()) == 1);
}

TEST_CASE("A file that cannot be written leaves what was there") {
    const tests::TemporaryFolder folder;
    const fs::path path = folder.path() / "no" / "answer.json";
    const auto refusal = replaceFile(path, "x");
    REQUIRE(refusal);
    CHECK(refusal->place == path.string());
    CHECK(refusal->what.text().rfind("cannot be written: ", 0) == 0);
    CHECK(replaceFile(folder.path(), "x"));
    CHECK(filesIn(folder.path()) == 0);
}

TEST_CASE("A full device is told, and keeps its name") {
    const auto refusal = replaceFile("/dev/full", "x");
    REQUIRE(refusal);
    CHECK(refusal->place == "/dev/full");
    CHECK(fs::is_character_file("/dev/full"));
}

TEST_CASE("A link stays a link, and permissions stay as they were") {
    const tests::TemporaryFolder folder;
    const fs::path path = folder.path() / "answer.json";
    REQUIRE_FALSE(replaceFile(path, "first"));
    fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
    fs::create_symlink(path, folder.path() / "link.json");
    REQUIRE_FALSE(replaceFile(folder.path() / "link.json", "second"));
    CHECK(fs::is_symlink(folder.path() / "link.json"));
    CHECK(*readFile(path, enough) == "second");
    CHECK(fs::status(path).permissions() ==
          (fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read));
}

TEST_CASE("Reading stops at the most that is asked for, and tells what cannot be read") {
    const tests::TemporaryFolder folder;
    const fs::path path = folder.path() / "long.txt";
    REQUIRE_FALSE(replaceFile(path, std::string(100'000, 'y')));
    CHECK(readFile(path, 70'000)->size() == 70'000);
    CHECK(readFile("/dev/zero", 5'000)->size() == 5'000);
    const auto missing = readFile(folder.path() / "none.txt", enough);
    REQUIRE_FALSE(missing);
    CHECK(missing.refusal().text().find("none.txt: cannot be opened: No such file") != std::string::npos);
    REQUIRE_FALSE(readFile(folder.path(), enough));
}
