#pragma once

#include "core/crop/library/library.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

namespace warmbench::tests {

inline std::string resource(const std::string& name) {
    std::ifstream file(std::string{WARMBENCH_SOURCE "/resources/recipe/"} + name, std::ios::binary);
    REQUIRE(file);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

inline LibraryTexts builtInTexts() {
    return {resource("sources.csv"),         resource("recipes.csv"),       resource("recipes_memory.csv"),
            resource("common_practice.csv"), resource("wood_defaults.csv"), resource("cautions.csv")};
}

inline const RecipeLibrary& builtInLibrary() {
    static const RecipeLibrary library = [] {
        auto read = RecipeLibrary::read(builtInTexts());
        INFO((read ? std::string{} : read.refusal().text()));
        REQUIRE(read);
        return *read;
    }();
    return library;
}

} // namespace warmbench::tests
