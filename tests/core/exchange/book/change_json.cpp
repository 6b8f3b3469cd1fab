#include "core/exchange/book/book_json.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;

TEST_CASE("A change is written on one line and read back the same") {
    SmallBook small = smallBook();
    const Change change = perform(small.book, {RemoveBatch{small.planned}});
    const std::string text = writeChange(change);
    CHECK(text.find('\n') == std::string::npos);
    const auto read = readChange(text);
    REQUIRE(read);
    CHECK(*read == change);
    CHECK(!small.book.apply(read->inverse()));
    CHECK(small.book == smallBook().book);
}

TEST_CASE("A change that is none is refused at its place") {
    const auto refused = [](const char* text) { return readChange(text).refusal().text(); };
    CHECK(refused("{}") == "/edits: missing, expected a value");
    CHECK(refused(R"({"edits": [{"kind": "ships", "before": null, "after": null}]})") ==
          "/edits/0/kind: found \"ships\", expected a kind of thing");
    CHECK(refused(R"({"edits": [{"kind": "stays", "before": null, "after": null}]})") ==
          "/edits/0: neither before nor after, expected one or both");
    CHECK(
        refused(R"({"edits": [{"kind": "hand_days", "before": null, "after": {"id": 1, "cuttings": 4}}]})") ==
        "/edits/0/after/day: missing, expected a value");
}
