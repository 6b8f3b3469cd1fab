#include "core/exchange/json/text.h"
#include "core/exchange/json/pointer.h"

#include <catch2/catch.hpp>

using namespace warmbench::json;

TEST_CASE("What is quoted is read back as it was") {
    for (const std::string& text :
         {std::string{}, std::string{"a\"b\\c/d"}, std::string{"\b\f\n\r\t\x01\x1F\x7F"},
          std::string{"a\0b", 3}, std::string{"\xC3\xA9\xE2\x82\xAC\xF0\x9F\x8C\xB1"},
          std::string{"\xED\xA0\xBC end"}}) {
        const std::string written = inQuotes(text);
        const auto value = parse(written);
        INFO(written);
        REQUIRE(value);
        CHECK(value->string() == text);
    }
    CHECK(inQuotes("\xED\xA0\xBC") == "\"\\ud83c\"");
    CHECK(inQuotes("\n\x01") == "\"\\n\\u0001\"");
}

TEST_CASE("Escapes are decoded, pairs of surrogates to one character") {
    const auto decoded = [](const char* text) { return parse(text)->string(); };
    CHECK(decoded(R"("\u00e9\u00E9")") == "\xC3\xA9\xC3\xA9");
    CHECK(decoded(R"("\uD83C\uDF31")") == "\xF0\x9F\x8C\xB1");
    CHECK(decoded(R"("\ud83c\u0041")") == "\xED\xA0\xBC\x41");
    CHECK(decoded(R"("\ud83c\ud83c\udf31")") == "\xED\xA0\xBC\xF0\x9F\x8C\xB1");
    CHECK(decoded(R"("\/\\\"\b\f\n\r\t")") == "/\\\"\b\f\n\r\t");
    CHECK(decoded(R"("\u0000")") == std::string(1, '\0'));
}

TEST_CASE("A value is shown on one line, cut between characters") {
    const std::string list = "[1,\n 2]";
    CHECK(shown(*parse(list)) == "[1,  2]");
    std::string longText = "\"";
    for (int i = 0; i < 30; ++i) longText += "\xC3\xA9";
    longText += '"';
    const std::string cut = shown(*parse(longText));
    CHECK(cut.size() <= 40);
    CHECK(cut.substr(cut.size() - 3) == "...");
    CHECK(cut.substr(cut.size() - 5, 2) == "\xC3\xA9");
}

TEST_CASE("A pointer names its place as RFC 6901 has it") {
    CHECK(Pointer{}.text().empty());
    CHECK((Pointer{} / "batches" / 3 / "stays" / 0 / "low_c").text() == "/batches/3/stays/0/low_c");
    CHECK((Pointer{} / "a/b" / "m~n" / "").text() == "/a~1b/m~0n/"); // RFC 6901, section 5
}
