#include "library_texts.h"

using namespace warmbench;
using namespace warmbench::tests;

namespace {

std::string refusalOf(const LibraryTexts& texts) {
    const auto read = RecipeLibrary::read(texts);
    return read ? "nothing refused" : read.refusal().text();
}

void replaceFirst(std::string& text, const std::string& what, const std::string& with) {
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    text.replace(at, what.size(), with);
}

std::string refusalAfter(std::string LibraryTexts::*file, const std::string& what, const std::string& with) {
    LibraryTexts texts = builtInTexts();
    replaceFirst(texts.*file, what, with);
    return refusalOf(texts);
}

} // namespace

TEST_CASE("A cell that is no figure of its column is refused with file, line and column") {
    CHECK(refusalAfter(&LibraryTexts::published, "28,20,32,limits", "warm,20,32,limits") ==
          "recipes.csv: line 2, medium_ideal_c: found 'warm', expected a number");
    CHECK(refusalAfter(&LibraryTexts::published, "28,20,32,limits", "280,20,32,limits") ==
          "recipes.csv: line 2, medium_ideal_c: found '280', expected a temperature from -50 to 100 °C");
    CHECK(refusalAfter(&LibraryTexts::memory, "07-20,09-15", "07-40,09-15") ==
          "recipes_memory.csv: line 2, strike_from: found '07-40', expected a month and day such as 05-31, "
          "or a month "
          "such as 05");
    CHECK(refusalAfter(&LibraryTexts::defaults, "tent/mist", "tent/dome") ==
          "wood_defaults.csv: line 2, cover: found 'tent/dome', expected covers such as tent/mist");
    CHECK(refusalAfter(&LibraryTexts::memory, "3,2,no,no", "3,2,maybe,no") ==
          "recipes_memory.csv: line 2, wound: found 'maybe', expected yes or no");
    CHECK(refusalAfter(&LibraryTexts::memory, "coir 1 : perlite 1 : bark 1", "coir and perlite") ==
          "recipes_memory.csv: line 2, medium: found 'coir and perlite', expected parts such as coir 1 : "
          "perlite 1");
    CHECK(refusalAfter(&LibraryTexts::memory, ",semi-ripe,", ",half-ripe,") ==
          "recipes_memory.csv: line 2, wood_type: found 'half-ripe', expected one of softwood, semi-ripe, "
          "hardwood, "
          "evergreen hardwood, basal, leaf-bud");
}

TEST_CASE("Figures that contradict each other are refused") {
    CHECK(refusalAfter(&LibraryTexts::published, "28,20,32,limits", "28,29,32,limits") ==
          "recipes.csv: line 2, medium_ideal_c: found '28', expected a temperature not below medium_min_c");
    CHECK(refusalAfter(&LibraryTexts::memory, "14,19,24,16", "14,25,24,16") ==
          "recipes_memory.csv: line 2, root_zone_high_c: found '24', expected a temperature not below "
          "root_zone_ideal_c");
    CHECK(refusalAfter(&LibraryTexts::memory, "28,49,6,70,90", "28,49,19,70,90") ==
          "recipes_memory.csv: line 2, base_c: found '19', expected a temperature below root_zone_ideal_c");
    CHECK(refusalAfter(&LibraryTexts::memory, "28,49,6,70,90", "28,49,6,90,70") ==
          "recipes_memory.csv: line 2, take_high_pct: found '70', expected a number not below take_low_pct");
    CHECK(refusalAfter(&LibraryTexts::memory, "28,49,6,70,90", "28,49,6,70,109") ==
          "recipes_memory.csv: line 2, take_high_pct: found '109', expected at most 100");
}

TEST_CASE("A figure without the word that says what it is is refused") {
    CHECK(refusalAfter(&LibraryTexts::published, "28,20,32,limits", "28,20,32,") ==
          "recipes.csv: line 2, medium_range_is: found nothing, expected limits or tested");
    CHECK(refusalAfter(&LibraryTexts::published, "21,21,scoring", "21,21,perhaps") ==
          "recipes.csv: line 5, days_are: found 'perhaps', expected rooting or scoring");
}

TEST_CASE("A source that is not known is refused, in rows and in cautions") {
    CHECK(refusalAfter(&LibraryTexts::published, "WILK2005A", "NOBODY1900") ==
          "recipes.csv: line 2, source_id: found 'NOBODY1900', expected an id that sources.csv has");
    CHECK(refusalAfter(&LibraryTexts::cautions, "GFORUM", "NOBODY1900") ==
          "cautions.csv: line 2, source_id: found 'NOBODY1900', expected an id that sources.csv has, or "
          "nothing");
}

TEST_CASE("What must stand once is refused where it stands twice or not at all") {
    LibraryTexts texts = builtInTexts();
    texts.sources += "WILK2005A,again,,,,,\n";
    CHECK(refusalOf(texts) == "sources.csv: line 206, source_id: found 'WILK2005A', expected each id once");

    texts = builtInTexts();
    const std::size_t first = texts.memory.find('\n') + 1;
    texts.memory += texts.memory.substr(first, texts.memory.find('\n', first) + 1 - first);
    CHECK(refusalOf(texts) ==
          "recipes_memory.csv: line 159, wood_type: found 'semi-ripe', expected each taxon and wood once");

    texts = builtInTexts();
    texts.defaults.erase(texts.defaults.find("leaf-bud"));
    CHECK(refusalOf(texts) == "wood_defaults.csv: found no row for leaf-bud, expected one for each wood");
}

TEST_CASE("A recipe from memory must be whole") {
    CHECK(refusalAfter(&LibraryTexts::memory, "pot in spring rather than autumn if rooted late", "") ==
          "recipes_memory.csv: line 2, aftercare: found nothing, expected a figure");
}

TEST_CASE("A missing column, a missing cell and an empty file are refused") {
    CHECK(refusalAfter(&LibraryTexts::published, "days_are", "days")
              .find("recipes.csv: line 1: found the columns") == 0);
    CHECK(refusalAfter(&LibraryTexts::defaults, "softwood,05-15,", "softwood,") ==
          "wood_defaults.csv: line 2: found 28 cells, expected 29 as in the first line");
    LibraryTexts texts = builtInTexts();
    texts.cautions.clear();
    CHECK(refusalOf(texts).find("cautions.csv: found an empty file") == 0);
}
