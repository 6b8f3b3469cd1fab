#include "core/exchange/json/syntax.h"
#include "core/exchange/json/value.h"

#include <catch2/catch.hpp>

using warmbench::json::syntaxFault;

TEST_CASE("JSON is accepted in all its forms") {
    for (const char* text :
         {"null", " \t\r\n[ ] ", "{}", "\"\"", "0", "-0.5e-3", "1E+9", "true", "[1,[2,{\"a\":[]}]]",
          "{\"a\":1,\"a\":2}", "\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u00e9\\uD83C\\uDF31\\ud800\"",
          "\"\xC3\xA9 \xE2\x82\xAC \xF0\x9F\x8C\xB1\"", "\"\x7F\"", "[NaN, Infinity, -Infinity]"})
        CHECK(syntaxFault(text).value_or("") == "");
}

TEST_CASE("What is not JSON is not accepted") {
    for (const char* text : {"",
                             " ",
                             "[",
                             "]",
                             "[1",
                             "[1,",
                             "[1,]",
                             "[,]",
                             "[1 2]",
                             "{",
                             "{\"a\"}",
                             "{\"a\":}",
                             "{\"a\":1,}",
                             "{a:1}",
                             "{1:2}",
                             "{\"a\":1 \"b\":2}",
                             "1 2",
                             "[] x",
                             "01",
                             "-",
                             "-a",
                             "1.",
                             ".5",
                             "1e",
                             "1e+",
                             "+1",
                             "0x10",
                             "1,0",
                             "nul",
                             "nulll",
                             "True",
                             "-NaN",
                             "Inf",
                             "\"",
                             "\"a",
                             "\"\\",
                             "\"\\x\"",
                             "\"\\u12\"",
                             "\"\\u12g4\"",
                             "'a'",
                             "\"a\nb\"",
                             "\"a\tb\"",
                             "// c\n1",
                             "[1] // c",
                             "\xEF\xBB\xBF[]",
                             "[1}",
                             "{\"a\":1]"}) {
        INFO(text);
        CHECK(syntaxFault(text));
    }
    CHECK(syntaxFault(std::string("\"a\0b\"", 5)));
    CHECK(syntaxFault(std::string("\0", 1)));
    CHECK(syntaxFault(std::string("[]\0", 3)));
}

TEST_CASE("Only UTF-8 is accepted in strings") {
    for (const char* wrong :
         {"\x80", "\xC3", "\xC3(", "\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xE2\x82", "\xED\xA0\x80",
          "\xED\xBF\xBF", "\xF0\x80\x80\x80", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\xFE"}) {
        const auto fault = syntaxFault("[\"" + std::string(wrong) + "\"]");
        REQUIRE(fault);
        CHECK(fault->find("UTF-8") != std::string::npos);
    }
    for (const char* right : {"\xED\x9F\xBF", "\xEE\x80\x80", "\xF4\x8F\xBF\xBF", "\xC2\x80"})
        CHECK_FALSE(syntaxFault("[\"" + std::string(right) + "\"]"));
}

TEST_CASE("64 levels of nesting are allowed, 65 are not") {
    const auto nested = [](std::size_t levels) {
        return std::string(levels, '[') + std::string(levels, ']');
    };
    CHECK_FALSE(syntaxFault(nested(64)));
    CHECK(syntaxFault(nested(65)) == "nesting above 64 levels");
    CHECK(syntaxFault(std::string(1'000'000, '[')) == "nesting above 64 levels");
}

TEST_CASE("A fault is named with its line and column") {
    CHECK(syntaxFault("{\n  \"a\": 01\n}") == "not JSON: line 2, column 9: found 1, expected ',' or '}'");
    CHECK(syntaxFault("[1,") == "not JSON: line 1, column 4: found the end of the file, expected a value");
    CHECK(syntaxFault("[\"\x01\"]") ==
          "not JSON: line 1, column 3: found byte 0x01, expected a character of a string");
}

TEST_CASE("Values are walked in order, with their keys decoded") {
    const std::string text = R"( { "a" : [1, "x]", {"b":[]}] , "\u0062\n":null,"":{} } )";
    const auto document = warmbench::json::parse(text);
    REQUIRE(document);
    warmbench::json::Children members{*document};
    auto member = members.next();
    REQUIRE(member);
    CHECK(members.key() == "a");
    CHECK(member->source() == "[1, \"x]\", {\"b\":[]}]");
    warmbench::json::Children items{*member};
    CHECK(items.next()->source() == "1");
    CHECK(items.next()->string() == "x]");
    CHECK(items.next()->kind() == warmbench::json::Kind::Object);
    CHECK(items.index() == 2);
    CHECK_FALSE(items.next());
    CHECK_FALSE(items.next());
    member = members.next();
    REQUIRE(member);
    CHECK(members.key() == "b\n");
    CHECK(member->kind() == warmbench::json::Kind::Null);
    REQUIRE(members.next());
    CHECK(members.key().empty());
    CHECK_FALSE(members.next());
}
