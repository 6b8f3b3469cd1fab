#include "app/resource/resource.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>
#include <stdexcept>

using warmbench::app::resourceText;

TEST_CASE("The built-in recipes are the files in resources, byte for byte") {
    for (const char* name :
         {"recipe/recipes.csv", "recipe/recipes_memory.csv", "recipe/sources.csv", "recipe/cautions.csv",
          "recipe/common_practice.csv", "recipe/wood_defaults.csv"}) {
        std::ifstream file(std::string(WARMBENCH_SOURCE "/resources/") + name, std::ios::binary);
        REQUIRE(file);
        std::ostringstream text;
        text << file.rdbuf();
        CHECK(resourceText(name) == text.str());
    }
}

TEST_CASE("Asking for a file that is not built in is a mistake of the program") {
    CHECK_THROWS_AS(resourceText("recipe/nothing.csv"), std::logic_error);
}
