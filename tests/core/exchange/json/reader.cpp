#include "core/exchange/json/reader.h"

#include <catch2/catch.hpp>

using namespace warmbench::json;

namespace {

Value valueOf(std::string_view text) {
    const auto value = parse(text);
    REQUIRE(value);
    return *value;
}

/// The refusal of one read of `text` at /here, or `ok`.
template <class Read>
std::string refusal(std::string_view text, Read read) {
    Reader in;
    read(in, valueOf(text), Pointer{} / "here");
    return in.failed() ? in.refusal()->text() : "ok";
}

std::string objectRefusal(std::string_view text) {
    return refusal(text, [](Reader& in, Value value, const Pointer& at) {
        (void)in.object(value, at, {"a", "b"}, {"c"});
    });
}

} // namespace

TEST_CASE("An object has its fields, none twice, none unknown") {
    CHECK(objectRefusal(R"({"b": 1, "a": 2})") == "ok");
    CHECK(objectRefusal(R"({"c": 0, "b": 1, "a": 2})") == "ok");
    CHECK(objectRefusal("[]") == "/here: found [], expected an object");
    CHECK(objectRefusal(R"({"b": 1})") == "/here/a: missing, expected a value");
    CHECK(objectRefusal(R"({"a": 1, "b": 1, "d/~e": 1})") ==
          "/here/d~1~0e: unknown field, expected one of a, b, c");
    CHECK(objectRefusal(R"({"a": 1, "b": 1, "a": 1})") == "/here/a: the key stands twice, expected once");
    CHECK(objectRefusal(R"({"x": 1, "y": 1, "y": 1})") == "/here/y: the key stands twice, expected once");
    CHECK(objectRefusal(R"({"x": 1, "\u0078": 1})") == "/here/x: the key stands twice, expected once");
    CHECK(objectRefusal(R"({"x": 1, "y": 2})") == "/here/x: unknown field, expected one of a, b, c");
}

TEST_CASE("A list has as many items as it should") {
    const auto listRefusal = [](std::string_view text, std::size_t least, std::size_t most) {
        return refusal(
            text, [&](Reader& in, Value value, const Pointer& at) { (void)in.list(value, at, least, most); });
    };
    CHECK(listRefusal("[1, 2]", 2, 2) == "ok");
    CHECK(listRefusal("[]", 0, 2) == "ok");
    CHECK(listRefusal("[1]", 2, 2) == "/here: found 1 entries, expected 2");
    CHECK(listRefusal("[[1, 2], 3, {}]", 1, 2) == "/here: found 3 entries, expected 1 to 2");
    CHECK(listRefusal("{}", 0, 2) == "/here: found {}, expected a list");
}

TEST_CASE("A number is within its bounds") {
    const auto numberRefusal = [](std::string_view text) {
        return refusal(text, [](Reader& in, Value value, const Pointer& at) {
            (void)in.number(value, at, 1, {.least = -5, .most = 205});
        });
    };
    CHECK(numberRefusal("20.50") == "ok");
    CHECK(numberRefusal("-0.5") == "ok");
    CHECK(numberRefusal("-0.6") == "/here: found -0.6, expected at least -0.5");
    CHECK(numberRefusal("20.6") == "/here: found 20.6, expected at most 20.5");
    CHECK(numberRefusal("1.25") == "/here: found 1.25, expected at most 1 decimals");
    CHECK(numberRefusal("1e999") == "/here: found 1e999, expected a finite number");
    CHECK(numberRefusal("-Infinity") == "/here: found -Infinity, expected a finite number");
    CHECK(numberRefusal("1e13") == "/here: found 1e13, expected a number below 1e12");
    CHECK(numberRefusal("true") == "/here: found true, expected a number");
    CHECK(numberRefusal("\"1\"") == "/here: found \"1\", expected a number");
}

TEST_CASE("Names are not empty, and truth is true or false") {
    const auto nameRefusal = [](std::string_view text) {
        return refusal(text, [](Reader& in, Value value, const Pointer& at) { (void)in.name(value, at); });
    };
    CHECK(nameRefusal("\" \"") == "ok");
    CHECK(nameRefusal("\"\"") == "/here: found \"\", expected a name");
    CHECK(nameRefusal("null") == "/here: found null, expected a name");
    const auto truthRefusal = [](std::string_view text) {
        return refusal(text, [](Reader& in, Value value, const Pointer& at) { (void)in.boolean(value, at); });
    };
    CHECK(truthRefusal("false") == "ok");
    CHECK(truthRefusal("0") == "/here: found 0, expected true or false");
}

TEST_CASE("After a refusal nothing more is read, and the first refusal stays") {
    Reader in;
    const Pointer at;
    in.refuse(at / "first", "is wrong");
    CHECK(in.integer(valueOf("5"), at / "second") == 0);
    CHECK(in.name(valueOf("\"x\""), at / "third").empty());
    CHECK_FALSE(in.boolean(valueOf("true"), at / "fourth"));
    CHECK_FALSE(in.list(valueOf("[1]"), at / "fifth").next());
    CHECK_FALSE(in.object(valueOf("{\"a\": 1}"), at / "sixth", {"a"}).has("a"));
    in.refuse(at / "last", "is wrong too");
    CHECK(in.refusal()->text() == "/first: is wrong");
}
