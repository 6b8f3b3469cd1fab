#include "core/crop/safety.h"

#include <catch2/catch.hpp>

#include <string>

using namespace warmbench;

TEST_CASE("Every hazard has cautions, each with words and a source") {
    for (std::size_t i = 0; i < hazardNames.size(); ++i) {
        const auto notes = safetyNotes(static_cast<Hazard>(i));
        INFO(hazardNames[i]);
        CHECK_FALSE(notes.empty());
        for (const SafetyNote& note : notes) {
            CHECK(std::string{note.text}.size() > 20);
            CHECK_FALSE(std::string{note.source}.empty());
        }
    }
}

TEST_CASE("The cautions defer to local codes and licensed practice") {
    const std::string deference = safetyDeference;
    CHECK(deference.find("Local codes") != std::string::npos);
    CHECK(deference.find("licensed electricians") != std::string::npos);
    CHECK(std::string{safetyNotes(Hazard::ElectricHeat).front().text}.find("licensed electrician") !=
          std::string::npos);
}

TEST_CASE("Striking warns of hormone where there is one, and of spray under mist or fog") {
    Recipe recipe;
    recipe.covers.value = {Cover::Tent, Cover::Mist};
    recipe.hormone.value = "none";
    CHECK(hazardsOfStriking(recipe) == std::vector{Hazard::Blades, Hazard::Plants, Hazard::Medium});
    recipe.covers.value = {Cover::Fog};
    recipe.hormone.value = "IBA 1000 ppm";
    CHECK(hazardsOfStriking(recipe) ==
          std::vector{Hazard::Mist, Hazard::Hormone, Hazard::Blades, Hazard::Plants, Hazard::Medium});
}

TEST_CASE("A hormone of none in any words is no hormone") {
    for (const char* none : {"", "none", "none needed", "none (auxin harms)", "none for two-node"})
        CHECK(isWithoutHormone(none));
    for (const char* some :
         {"IBA 1000 ppm", "optional", "none needed; IBA 2500 + NAA 1250 ppm for bigger roots"})
        CHECK_FALSE(isWithoutHormone(some));
}

TEST_CASE("A round warns of heat and spray only where they are") {
    const std::vector<Cover> dry{Cover::Tent, Cover::Open};
    const std::vector<Cover> wet{Cover::Tent, Cover::Mist};
    CHECK(hazardsOfRound(dry, false) == std::vector{Hazard::Plants});
    CHECK(hazardsOfRound(wet, true) == std::vector{Hazard::ElectricHeat, Hazard::Mist, Hazard::Plants});
}
