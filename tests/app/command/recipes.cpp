#include "program_run.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>

using namespace warmbench::tests;

namespace {

nlohmann::json figureNamed(const nlohmann::json& recipe, const std::string& label) {
    for (const auto& figure : recipe["figures"])
        if (figure["figure"] == label) return figure;
    FAIL("no figure named " << label);
    return {};
}

} // namespace

TEST_CASE("Without a taxon all built-in taxa are listed with their woods") {
    const ProgramRun run = runWith({"recipes"});
    CHECK(run.status == 0);
    CHECK(has(run.out, "Abelia × grandiflora (glossy abelia): softwood, semi-ripe, hardwood\n"));
    CHECK(
        has(run.out, "Papaver orientale (Oriental poppy): root cuttings only, which are not planned here\n"));
    CHECK(run.error.empty());
}

TEST_CASE("A recipe shows each figure with its source, its cautions and what is read of its sources") {
    const ProgramRun run = runWith({"recipes", "Poinsettia"});
    CHECK(run.status == 0);
    CHECK(has(run.out, "Euphorbia pulcherrima, softwood\n"));
    CHECK(has(run.out, "28 °C"));
    CHECK(has(run.out, "WILK2005A (sources differ)"));
    CHECK(has(run.out, "from memory"));
    CHECK(has(run.out, "Euphorbia: poisonous; sap irritates skin and eyes (AMATEURG, magazine list)"));
    CHECK(has(run.out, "never a promise that a plant is safe"));
    CHECK(has(run.out, "[read: yes (opening/abstract only)]"));
    CHECK_FALSE(has(run.out, "HAMMER2010"));
}

TEST_CASE("Asked for sources, all of them stand side by side with their notes") {
    const ProgramRun run = runWith({"recipes", "poinsettia", "--sources"});
    CHECK(run.status == 0);
    CHECK(has(run.out, "HAMMER2010 [trade] on Euphorbia pulcherrima"));
    CHECK(has(run.out, "the two sources disagree on the ideal"));
    CHECK(has(run.out, "for the wood in general"));
}

TEST_CASE("As JSON a recipe has every figure, its sources, thermal time and take") {
    const ProgramRun run = runWith({"recipes", "poinsettia", "--json"});
    REQUIRE(run.status == 0);
    const auto told = nlohmann::json::parse(run.out);
    CHECK(told["taxon"] == "Euphorbia pulcherrima");
    REQUIRE(told["recipes"].size() == 1);
    const auto& recipe = told["recipes"][0];
    CHECK(recipe["origin"] == "euphorbia pulcherrima/softwood");
    CHECK(recipe["figures"].size() == 24);
    CHECK(figureNamed(recipe, "root zone")["sources_differ"] == true);
    CHECK(figureNamed(recipe, "root zone")["given"][1]["source"] == "HAMMER2010");
    CHECK(recipe["thermal"]["t90"].get<double>() == Approx(105));
    CHECK(recipe["take"]["alpha"].get<double>() > 0);
    CHECK(told["cautions"].size() == 2);
}

TEST_CASE("Words that stand in several names list them, and one wood shows one recipe") {
    const ProgramRun list = runWith({"recipes", "pieris"});
    CHECK(list.status == 0);
    CHECK(std::count(list.out.begin(), list.out.end(), '\n') == 3);
    const ProgramRun one = runWith({"recipes", "abelia x grandiflora", "--wood", "softwood"});
    CHECK(has(one.out, "Abelia × grandiflora, softwood\n"));
    CHECK_FALSE(has(one.out, ", semi-ripe\n"));
}

TEST_CASE("A taxon that is not built in has a general recipe for a wood, and none without") {
    const ProgramRun general = runWith({"recipes", "Ignotus novus", "--wood", "semi-ripe"});
    CHECK(general.status == 0);
    CHECK(has(general.out, "Ignotus novus, semi-ripe\n"));
    CHECK(has(general.out, "common practice, no source"));
    const ProgramRun none = runWith({"recipes", "Ignotus novus"});
    CHECK(none.status == 2);
    CHECK(none.out.empty());
    CHECK(none.error ==
          "warmbench: recipes: found 'Ignotus novus', expected a name of a built-in taxon, or --wood for a "
          "general recipe\n");
}

TEST_CASE("A wood that there is not is refused in one line") {
    const ProgramRun run = runWith({"recipes", "poinsettia", "--wood", "marble"});
    CHECK(run.status == 2);
    CHECK(run.out.empty());
    CHECK(has(run.error, "marble"));
    CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
}
