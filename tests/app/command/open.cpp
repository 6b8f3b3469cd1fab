#include "tests/support/process.h"

#include <catch2/catch.hpp>

using warmbench::tests::runProcess;

TEST_CASE("To open without a book is what the program does by itself") {
    // With nothing in the environment there is no display, so that both end where the window would open.
    const auto opened = runProcess("/usr/bin/env", {"-i", WARMBENCH_PROGRAM, "open"});
    const auto alone = runProcess("/usr/bin/env", {"-i", WARMBENCH_PROGRAM});
    CHECK(opened.error == "open: there is no display to open a window on\n");
    CHECK(opened.error == alone.error);
    CHECK(opened.status == 2);
    CHECK(opened.status == alone.status);
    CHECK(opened.out.empty());
}
