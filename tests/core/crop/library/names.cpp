#include "library_texts.h"

#include "core/crop/library/taxon_name.h"

#include <algorithm>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

std::string onlyNamed(std::string_view name) {
    const auto found = builtInLibrary().named(name);
    return found.size() == 1 ? found.front()->name : std::to_string(found.size()) + " taxa";
}

bool isCautionedOf(std::string_view taxon, std::string_view plants) {
    const auto cautions = builtInLibrary().cautionsOf(taxon);
    return std::any_of(cautions.begin(), cautions.end(),
                       [plants](const Caution* caution) { return caution->plants == plants; });
}

} // namespace

TEST_CASE("Names are compared without regard to case, crosses, quotation marks and blanks") {
    CHECK(nameKey("Abelia ×grandiflora") == "abelia x grandiflora");
    CHECK(nameKey("  ABELIA  X Grandiflora ") == "abelia x grandiflora");
    CHECK(nameKey("Ceanothus ‘Concha’") == nameKey("ceanothus 'concha'"));
    CHECK(nameKey("Abelia × grandiflora") != nameKey("Abelia grandiflora"));
}

TEST_CASE("A species is a name without its cultivar, and a genus its first word") {
    CHECK(speciesKey("Camellia japonica 'Nine Bends'") == "camellia japonica");
    CHECK(speciesKey("Pieris japonica (several cvs)") == "pieris japonica");
    CHECK(speciesKey("Rhododendron (evergreen azaleas)").empty());
    CHECK(speciesKey("Deutzia 'Mont Rose'").empty());
    CHECK(genusKey("× Cuprocyparis leylandii") == "cuprocyparis");
    CHECK(genusKey("x Cuprocyparis leylandii") == "cuprocyparis");
    CHECK(genusKey("Abelia × grandiflora") == "abelia");
}

TEST_CASE("A taxon is found by its name, a synonym or a common name of its own") {
    CHECK(onlyNamed("ABELIA x GRANDIFLORA") == "Abelia × grandiflora");
    CHECK(onlyNamed("Linnaea × grandiflora") == "Abelia × grandiflora");
    CHECK(onlyNamed("Glossy Abelia") == "2 taxa"); // recipes.csv line 215 has cultivars of that name
    CHECK(onlyNamed("ling") == "Calluna vulgaris");
    CHECK(onlyNamed("Ignotus novus") == "0 taxa");
}

TEST_CASE("Publications under a synonym are the taxon's own") {
    // recipes.csv speaks of Potentilla fruticosa, recipes_memory.csv of Dasiphora fruticosa with that
    // synonym.
    CHECK(onlyNamed("Potentilla fruticosa") == "Dasiphora fruticosa");
    const Recipe recipe = builtInLibrary().compose("Dasiphora fruticosa", Wood::Softwood);
    CHECK(recipe.hormone == Figure<std::string>{"IBA 2000 ppm", "LU1958"});
}

TEST_CASE("A search finds every taxon that has all the words in its names") {
    const auto found = builtInLibrary().search("jap holly");
    REQUIRE(found.size() == 1);
    CHECK(found.front()->name == "Ilex crenata 'Helleri'");
    CHECK(builtInLibrary().search("").size() == builtInLibrary().taxa().size());
    CHECK(builtInLibrary().search("no such plant").empty());
}

TEST_CASE("Taxa come in the order of their names") {
    const auto& taxa = builtInLibrary().taxa();
    CHECK(std::is_sorted(taxa.begin(), taxa.end(), [](const KnownTaxon& a, const KnownTaxon& b) {
        return nameKey(a.name) < nameKey(b.name);
    }));
    for (const KnownTaxon& taxon : taxa) CHECK(onlyNamed(taxon.name) == taxon.name);
}

TEST_CASE("Root cuttings are read but are no wood of a recipe") {
    const auto found = builtInLibrary().named("Papaver orientale");
    REQUIRE(found.size() == 1);
    CHECK(builtInLibrary().woodsOf(*found.front()).empty());
    const RecipeRow& row = builtInLibrary().rows()[found.front()->rows.front()];
    CHECK(row.woodText == "root");
    CHECK_FALSE(row.wood);
}

TEST_CASE("Names with a capital are the genera of a caution") {
    CHECK(generaNamedIn("Berberis / Pyracantha / Ulex / Rosa") ==
          std::vector<std::string>{"berberis", "pyracantha", "ulex", "rosa"});
    CHECK(generaNamedIn("x Cuprocyparis leylandii") == std::vector<std::string>{"cuprocyparis"});
    CHECK(generaNamedIn("Dicentra (Lamprocapnos) spectabilis") ==
          std::vector<std::string>{"dicentra", "lamprocapnos"});
    CHECK(generaNamedIn("nothing").empty());
}

TEST_CASE("Cautions are found by the genus that a taxon is or was placed in") {
    CHECK(isCautionedOf("Pyracantha coccinea", "Berberis / Pyracantha / Ulex / Rosa"));
    CHECK(isCautionedOf("Cupressus × leylandii", "x Cuprocyparis leylandii")); // by its synonym
    CHECK(isCautionedOf("Cotinus coggygria", "Rhus / Toxicodendron"));         // by its synonym Rhus cotinus
    CHECK(isCautionedOf("Euphorbia ignota 'New'", "Euphorbia"));
    CHECK(isCautionedOf("Ficus carica",
                        "Ficus benjamina")); // the whole genus is shown, with the name as printed
    CHECK(builtInLibrary().cautionsOf("Abelia × grandiflora").empty());
    CHECK(std::string{cautionIsNoPromise}.find("never a promise that a plant is safe") != std::string::npos);
}
