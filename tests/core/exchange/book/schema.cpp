#include "core/exchange/book/book_json.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <fstream>

using namespace warmbench;
using nlohmann::json;
using Adapter = valijson::adapters::NlohmannJsonAdapter;

namespace {

class BookSchema {
public:
    BookSchema() {
        std::ifstream file(WARMBENCH_SOURCE "/resources/schema/house-book.schema.json");
        const json text = json::parse(file);
        valijson::SchemaParser().populateSchema(Adapter(text), m_schema);
    }
    [[nodiscard]] bool accepts(const json& book) const {
        valijson::Validator validator;
        return validator.validate(m_schema, Adapter(book), nullptr);
    }

private:
    valijson::Schema m_schema;
};

/// The small book with one of everything else that a book can hold.
json fullBook() {
    tests::SmallBook small = tests::smallBook();
    HouseBook& book = small.book;
    tests::perform(book, {Put<HandDay>{{{}, tests::day("2027-05-01"), 0, "holiday"}}});
    RootCheck check;
    check.batch = small.struck;
    check.day = tests::day("2027-03-15");
    check.examined = check.rooted = 2;
    check.grade = 3;
    tests::perform(book, {RecordCheck{check}});
    tests::perform(book, {RecordLoss{{{}, small.struck, 1, tests::day("2027-03-20"), 1, "rot"}}});
    tests::perform(book, {PotOn{small.struck, tests::day("2027-04-10"), {{2, 4, 1}}, ""}});
    tests::perform(book,
                   {KeepReadings{{small.warm, std::nullopt}, {{Channel::RootZone, {{30'000'000, 2000}}}}}});
    Zone warm = book.get<Zone>(small.warm);
    warm.mat->outOfOrderFrom = tests::day("2027-06-01");
    tests::perform(book, {Put<Zone>{warm}});
    return json::parse(writeBook(book));
}

/// Pointers of every value of a document, once for each shape of place: only the first item of a list.
void collect(const json& value, const json::json_pointer& at, std::vector<json::json_pointer>& found) {
    found.push_back(at);
    if (value.is_object())
        for (const auto& [key, member] : value.items()) collect(member, at / key, found);
    else if (value.is_array() && !value.empty())
        collect(value[0], at / std::size_t{0}, found);
}

std::vector<json::json_pointer> placesOf(const json& book) {
    std::vector<json::json_pointer> places;
    collect(book, json::json_pointer(), places);
    return places;
}

/// A value of a type that its place can't hold.
json ofAnotherType(const json& value) {
    if (value.is_string()) return 7;
    if (value.is_null()) return json{{"colour", "red"}};
    return "seven";
}

std::string refusalOf(const json& book) {
    const auto read = readBook(book.dump());
    return read ? "" : read.refusal().text();
}

} // namespace

TEST_CASE("The schema accepts every book that is exported") {
    const BookSchema schema;
    CHECK(schema.accepts(fullBook()));
    CHECK(schema.accepts(json::parse(writeBook(HouseBook{}))));
}

TEST_CASE("The example that the schema is tried on holds something of every kind") {
    const json book = fullBook();
    for (const auto& [name, list] : book.items()) {
        INFO(name);
        CHECK(!list.empty());
    }
}

TEST_CASE("Schema and reader refuse an unknown field in every object") {
    const BookSchema schema;
    const json book = fullBook();
    for (const auto& place : placesOf(book)) {
        if (!book.at(place).is_object()) continue;
        json changed = book;
        changed[place]["colour"] = "red";
        INFO(place.to_string());
        CHECK(!schema.accepts(changed));
        CHECK_THAT(refusalOf(changed), Catch::Contains("/colour: unknown field"));
    }
}

TEST_CASE("Schema and reader agree on which fields may be left out") {
    const BookSchema schema;
    const json book = fullBook();
    int needed = 0;
    for (const auto& place : placesOf(book)) {
        if (place.empty() || !book.at(place.parent_pointer()).is_object()) continue;
        json changed = book;
        changed[place.parent_pointer()].erase(place.back());
        INFO(place.to_string());
        const bool missing = refusalOf(changed) == place.to_string() + ": missing, expected a value";
        CHECK(schema.accepts(changed) == !missing);
        needed += missing ? 1 : 0;
    }
    CHECK(needed > 100);
}

TEST_CASE("Schema and reader refuse a value of another type in every place") {
    const BookSchema schema;
    const json book = fullBook();
    for (const auto& place : placesOf(book)) {
        json changed = book;
        changed[place] = ofAnotherType(book.at(place));
        INFO(place.to_string());
        CHECK(!schema.accepts(changed));
        CHECK(!refusalOf(changed).empty());
    }
}
