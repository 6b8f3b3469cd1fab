#include "tests/app/command/program_run.h"
#include "tests/support/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace warmbench::tests;

namespace {} // namespace

TEST_CASE("A changed recipe is a copy in the book, and the built-in figure stays beside it") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "book.warmbench").string();
    REQUIRE(runWith({"new", book}).status == 0);

    const ProgramRun before = runWith({"own-recipe", book, "poinsettia", "--wood", "softwood"});
    CHECK(before.status == 0);
    CHECK(has(before.out, "The book has no recipe of its own yet"));

    const ProgramRun changed =
        runWith({"own-recipe", book, "poinsettia", "--wood", "softwood", "--set", "root_zone_ideal_c=24.5",
                 "--set", "days_to_root=21 to 30", "--set", "covers=mist, tent", "--set",
                 "medium=2 coir, 1 perlite", "--set", "season=04-20 to 08-01", "--set", "wound=yes"});
    REQUIRE(changed.error.empty());
    CHECK(changed.status == 0);
    CHECK(has(changed.out, "root zone: 24.5 °C (own figure)\n      built in: 28 °C ("));
    CHECK(has(changed.out, "season (north): 04-20 to 08-01 (own figure)"));
    CHECK(has(changed.out, "wound: yes (own figure)"));
    CHECK(has(changed.out, "cover: mist, else tent (own figure)"));

    const ProgramRun again = runWith({"own-recipe", book, "poinsettia", "--wood", "softwood"});
    CHECK(again.out == changed.out);
    CHECK(runWith({"check", book}).status == 0);
}

TEST_CASE("A figure that is unknown, no value of its kind or against the rules changes nothing") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "book.warmbench").string();
    REQUIRE(runWith({"new", book}).status == 0);
    const auto refusalOf = [&](const std::string& figure) {
        const ProgramRun run =
            runWith({"own-recipe", book, "poinsettia", "--wood", "softwood", "--set", figure});
        CHECK(run.status == 2);
        CHECK(run.out.empty());
        return run.error;
    };
    CHECK(has(refusalOf("heat=21"), "heat: no figure of a recipe, expected one of season,"));
    CHECK(has(refusalOf("root_zone_ideal_c=warm"), "root_zone_ideal_c: found \"warm\", expected a number"));
    CHECK(has(refusalOf("days_to_root=3 weeks"), "days_to_root: found \"3 weeks\""));
    CHECK(has(refusalOf("covers=fleece"), "covers: found \"fleece\", expected one of"));
    CHECK(has(refusalOf("days_to_root=35 to 21"), "days to root must be 1 to 400, the fewest first"));
    CHECK(has(refusalOf("days_to_root"), "expected FIGURE=VALUE"));

    const ProgramRun shown = runWith({"own-recipe", book, "poinsettia", "--wood", "softwood"});
    CHECK(has(shown.out, "The book has no recipe of its own yet"));
}
