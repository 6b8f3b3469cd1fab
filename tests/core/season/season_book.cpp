#include "tests/core/season/season_book.h"

#include <fstream>
#include <sstream>

namespace warmbench::testing {
namespace {

std::string text(const std::string& name) {
    std::ifstream file(std::string(WARMBENCH_SOURCE) + "/resources/recipe/" + name, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

} // namespace

Day on(unsigned month, unsigned day) {
    return *Day::make(2027, month, day);
}

MonthlyCelsius allYear(Celsius temperature) {
    MonthlyCelsius year;
    year.fill(temperature);
    return year;
}

Recipe semiRipe(TaxonId taxon) {
    Recipe recipe;
    recipe.taxon = taxon;
    recipe.wood = Wood::SemiRipe;
    recipe.season = {Season{{7, 15}, {9, 30}}, ownFigure};
    recipe.rootZoneLow = {Celsius{140}, ownFigure};
    recipe.rootZoneIdeal = {Celsius{180}, ownFigure};
    recipe.rootZoneHigh = {Celsius{240}, ownFigure};
    recipe.air = {Celsius{150}, ownFigure};
    recipe.daysToRoot = {IntRange{28, 56}, ownFigure};
    recipe.base = {Celsius{60}, ownFigure};
    recipe.takePercent = {IntRange{65, 90}, ownFigure};
    recipe.hormone = {"IBA 1000-3000 ppm", ownFigure};
    recipe.hormoneForm = {"powder", ownFigure};
    recipe.covers = {{Cover::Tent}, ownFigure};
    recipe.medium = {{{"coir", 1}, {"perlite", 1}}, ownFigure};
    recipe.container = {"1-litre pot", ownFigure};
    recipe.cuttingsPerContainer = {5, ownFigure};
    recipe.weanDays = {10, ownFigure};
    recipe.growOnDays = {20, ownFigure};
    return recipe;
}

SeasonBook::SeasonBook() {
    House house;
    house.name = "Glasshouse";
    house.length = Millimetres{6000};
    house.width = Millimetres{3000};
    house.air = allYear(Celsius{150});
    house.unheatedRootZone = allYear(Celsius{120});
    Bench bench;
    bench.house = add(house);
    bench.name = "Bench 1";
    bench.rows = 6;
    bench.cols = 32;
    Zone zone;
    zone.bench = add(bench);
    zone.name = "A";
    zone.rows = 6;
    zone.cols = 16;
    zone.cover = Cover::Tent;
    zone.mat = Mat{"Mat 1", Watts{3000}, HeatLoss{650}, {Celsius{150}, Celsius{180}, Celsius{210}}};
    warm = add(zone);
    zone.name = "B";
    zone.col = 16;
    zone.cover = Cover::Open;
    zone.mat.reset();
    open = add(zone);
    taxon = add(Taxon{{}, "Olearia × haastii", {}, {"daisy bush"}, ""});
    add(semiRipe(taxon));
    stock =
        add(Stock{{}, taxon, "Row 2", "east field", 20, {{Wood::SemiRipe, {{7, 15}, {9, 30}}, 10, 30}}, ""});
    pot = add(ContainerType{{}, "1-litre pot", {1, 1}, false, Litres{1000}, 5});
}

TargetId SeasonBook::want(int plants, Day due) {
    const auto number = static_cast<int>(book.all<Target>().size()) + 1;
    return add(Target{{}, "T" + std::to_string(number), taxon, plants, due, Money{200}, {}, ""});
}

BatchId SeasonBook::strike(Day strikeDay, int cuttings, int days, std::optional<TargetId> target) {
    const BatchId id = book.nextId<Batch>();
    Batch batch;
    batch.taxon = taxon;
    batch.recipe = semiRipe(taxon);
    batch.stock = stock;
    batch.target = target;
    batch.strikeDay = strikeDay;
    batch.containerType = pot;
    batch.containers = {{1, cuttings}};
    batch.state = BatchState::Struck;
    Stay stay;
    stay.zone = open;
    stay.from = strikeDay;
    stay.to = strikeDay + days;
    const auto column = static_cast<int>(id.number) - 1;
    stay.places = {{1, {0, column, 1, 1}}};
    if (auto change = book.perform(Command{AddBatch{batch, {stay}}}); !change)
        throw std::logic_error(change.refusal().text());
    return id;
}

const RecipeLibrary& builtIn() {
    static const RecipeLibrary library = [] {
        auto read = RecipeLibrary::read({text("sources.csv"), text("recipes.csv"), text("recipes_memory.csv"),
                                         text("common_practice.csv"), text("wood_defaults.csv"),
                                         text("cautions.csv")});
        if (!read) throw std::logic_error(read.refusal().text());
        return *read;
    }();
    return library;
}

} // namespace warmbench::testing
