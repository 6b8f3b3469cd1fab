#include "core/exchange/book/book_json.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using warmbench::tests::smallBook;

namespace {

/// The small book's text with one piece, which stands in it, put in the place of another.
std::string changed(const std::string& piece, const std::string& other) {
    std::string text = writeBook(smallBook().book);
    const std::size_t at = text.find(piece);
    REQUIRE(at != std::string::npos);
    return text.replace(at, piece.size(), other);
}

std::string refusalOf(const std::string& text) {
    const auto read = readBook(text);
    REQUIRE(!read);
    return read.refusal().text();
}

std::string inBook(const std::string& members) {
    return R"({"format": "warmbench-house-book", "version": 1, )" + members + "}";
}

} // namespace

TEST_CASE("A book written by hand may leave out lists, texts, marks and the nursery's settings") {
    const auto read = readBook(inBook(R"(
        "nursery": {"name": "By the brook", "latitude": -37.5},
        "container_types": [{"id": 4, "name": "pot", "footprint": {"height": 1, "width": 1},
                             "volume_l": 0.75, "cuttings": 3}],
        "taxa": [{"id": 9, "name": "Fuchsia magellanica"}])"));
    REQUIRE(read);
    CHECK(read->nursery().name == "By the brook");
    CHECK(read->nursery().latitude == Latitude{-375});
    CHECK(read->nursery().strikesByWeekday == Nursery{}.strikesByWeekday);
    CHECK(read->get<ContainerType>({4}).volume == Litres{750});
    CHECK(!read->get<ContainerType>({4}).turnable);
    CHECK(read->get<Taxon>({9}).synonyms.empty());
}

TEST_CASE("What is no house book is refused") {
    CHECK(refusalOf("") == "not JSON: line 1, column 1: found the end of the file, expected a value");
    CHECK(refusalOf("[]") == "found [], expected an object");
    CHECK(refusalOf("{}") == "/format: missing, expected a value");
    CHECK(refusalOf(R"({"format": "seed-list", "version": 1})") ==
          "/format: found \"seed-list\", expected \"warmbench-house-book\"");
    CHECK(refusalOf(R"({"format": "warmbench-house-book", "version": 2, "ships": []})") ==
          "/version: found 2, expected 1: it was written by a newer Warmbench");
}

TEST_CASE("Every kind of fault in a field is refused at its pointer") {
    CHECK(refusalOf(inBook(R"("ships": [])")).starts_with("/ships: unknown field, expected one of format"));
    CHECK(refusalOf(inBook(R"("taxa": [], "taxa": [])")) == "/taxa: the key stands twice, expected once");
    CHECK(refusalOf(inBook(R"("taxa": [{"name": "Rosa"}])")) == "/taxa/0/id: missing, expected a value");
    CHECK(refusalOf(inBook(R"("taxa": [{"id": 1, "name": "Rosa", "colour": 1}])")) ==
          "/taxa/0/colour: unknown field, expected one of id, name, synonyms, common_names, caution");
    CHECK(refusalOf(inBook(R"("taxa": [{"id": 0, "name": "Rosa"}])")) ==
          "/taxa/0/id: found 0, expected at least 1");
    CHECK(refusalOf(inBook(R"("taxa": [{"id": 1, "name": null}])")) ==
          "/taxa/0/name: found null, expected a text");
    CHECK(refusalOf(inBook(R"("taxa": [{"id": 1, "name": "a\u0001"}])")) ==
          "/taxa/0/name: found \"a\\u0001\", expected text, without a control character");
    CHECK(refusalOf(inBook(R"("taxa": [{"id": 1, "name": "a\ud800"}])")) ==
          "/taxa/0/name: found \"a\\ud800\", expected text, without a character that is not UTF-8");
    CHECK(refusalOf(changed("\"volume_l\": 2.5", "\"volume_l\": 2.5001")) ==
          "/container_types/1/volume_l: found 2.5001, expected at most 3 decimals");
    CHECK(refusalOf(changed("\"volume_l\": 2.5", "\"volume_l\": \"2.5\"")) ==
          "/container_types/1/volume_l: found \"2.5\", expected a number");
    CHECK(refusalOf(changed("\"rows\": 4", "\"rows\": 4.5")) ==
          "/benches/0/rows: found 4.5, expected a whole number");
    CHECK(refusalOf(changed("\"rows\": 4", "\"rows\": 5000000000")) ==
          "/benches/0/rows: found 5000000000, expected at most 1000000000");
    CHECK(refusalOf(changed("\"cover\": \"mist\"", "\"cover\": \"rain\"")) ==
          "/zones/0/cover: found \"rain\", expected one of \"open\", \"bag\", \"tent\", \"mist\", \"fog\"");
    CHECK(refusalOf(changed("\"due\": \"2027-06-01\"", "\"due\": \"2027-06-31\"")) ==
          "/targets/0/due: found \"2027-06-31\", expected a day such as \"2027-02-28\"");
    CHECK(refusalOf(changed("\"to\": \"07-15\"", "\"to\": \"15-07\"")) ==
          "/recipes/0/season/value/to: found \"15-07\", expected a month and a day such as \"02-28\"");
    CHECK(refusalOf(changed("400, 0, 0]", "400, 0]")) ==
          "/nursery/strikes_by_weekday: found 6 entries, expected 7");
    CHECK(refusalOf(changed("\"wound\": {\"value\": false", "\"wound\": {\"value\": 0")) ==
          "/recipes/0/wound/value: found 0, expected true or false");
}

TEST_CASE("Things that stand twice and references to nothing are refused where they stand") {
    CHECK(refusalOf(changed("\"id\": 2, \"name\": \"Fuchsia", "\"id\": 1, \"name\": \"Fuchsia")) ==
          "/taxa/1/id: number 1 stands twice, expected once");
    CHECK(refusalOf(inBook(R"("targets": [{"id": 3, "name": "T3", "taxon": 7, "plants": 10,
                                           "due": "2027-06-01", "worth": 1}])")) ==
          "/targets/0: T3: its taxon, number 7, is not in this book");
}

TEST_CASE("A book that breaks a rule is refused at the thing that breaks it") {
    CHECK(refusalOf(changed("\"to\": \"2027-04-15\"", "\"to\": \"2027-03-31\"")) ==
          "/stays/1: 27-046-A: a stay that begins on 2027-04-01 can't end on 2027-03-31");
    CHECK(refusalOf(inBook(R"("nursery": {"id": 2})")) == "/nursery: nursery: a book has one, number 1");
    CHECK(refusalOf(changed("\"name\": \"Fuchsia magellanica\"", "\"name\": \"Abelia × grandiflora\"")) ==
          "/taxa/0: Abelia × grandiflora: two taxa have this name");
}
