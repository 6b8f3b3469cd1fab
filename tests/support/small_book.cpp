#include "tests/support/small_book.h"

#include <stdexcept>

namespace warmbench::tests {
namespace {

MonthlyCelsius everyMonth(Celsius temperature) {
    MonthlyCelsius year{};
    year.fill(temperature);
    return year;
}

template <class E>
IdOf<E> put(HouseBook& book, const E& thing) {
    perform(book, {Put<E>{thing}});
    return book.all<E>().rbegin()->first;
}

template <class T>
Figure<T> usual(T value) {
    return {std::move(value), commonPractice};
}

/// Pots numbered from 1, side by side in one row from `col` on.
std::vector<Place> inRow(int row, int col, int count, int width) {
    std::vector<Place> places;
    places.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) places.push_back({i + 1, {row, col + i * width, 1, width}});
    return places;
}

Batch batchOf(const SmallBook& small, ContainerTypeId type, int containers, int cuttings, Day strikeDay) {
    Batch batch;
    batch.taxon = small.abelia;
    batch.recipe = small.book.get<Recipe>(small.recipe);
    batch.stock = small.stock;
    batch.target = small.target;
    batch.strikeDay = strikeDay;
    batch.containerType = type;
    batch.containers.assign(static_cast<std::size_t>(containers), {0, cuttings});
    return batch;
}

void putHouse(SmallBook& small) {
    House house;
    house.name = "Glasshouse";
    house.length = Millimetres{12'000};
    house.width = Millimetres{6'000};
    house.air = everyMonth(Celsius{120});
    house.unheatedRootZone = everyMonth(Celsius{105});
    small.house = put(small.book, house);
    Bench bench;
    bench.house = small.house;
    bench.name = "Bench 1";
    bench.x = Millimetres{500};
    bench.y = Millimetres{500};
    bench.rows = 4;
    bench.cols = 12;
    small.bench = put(small.book, bench);
    Zone warm;
    warm.bench = small.bench;
    warm.name = "A";
    warm.rows = 4;
    warm.cols = 8;
    warm.cover = Cover::Mist;
    warm.blocked = {{3, 7}};
    warm.mat = Mat{"mat A", Watts{1500}, HeatLoss{850}, {Celsius{180}, Celsius{200}, Celsius{220}}};
    small.warm = put(small.book, warm);
    Zone cool;
    cool.bench = small.bench;
    cool.name = "B";
    cool.col = 8;
    cool.rows = 4;
    cool.cols = 4;
    small.cool = put(small.book, cool);
}

void putCrop(SmallBook& small) {
    ContainerType pot;
    pot.name = "pot 13 cm";
    pot.volume = Litres{1000};
    pot.cuttings = 5;
    small.pot = put(small.book, pot);
    ContainerType tray;
    tray.name = "tray 39 cm";
    tray.footprint = {1, 3};
    tray.turnable = true;
    tray.volume = Litres{2500};
    tray.cuttings = 30;
    small.tray = put(small.book, tray);
    Medium medium;
    medium.name = "perlite and peat";
    medium.components = {{"perlite", 1}, {"peat", 1}};
    small.medium = put(small.book, medium);
    Taxon abelia;
    abelia.name = "Abelia × grandiflora";
    abelia.commonNames = {"glossy abelia"};
    small.abelia = put(small.book, abelia);
    Taxon fuchsia;
    fuchsia.name = "Fuchsia magellanica";
    small.fuchsia = put(small.book, fuchsia);
    small.recipe = put(small.book, plainRecipe(small.abelia));
    Stock stock;
    stock.taxon = small.abelia;
    stock.name = "hedge";
    stock.place = "by the gate";
    stock.plants = 12;
    stock.flushes = {{Wood::Softwood, {{2, 1}, {6, 30}}, 8, 21}};
    small.stock = put(small.book, stock);
    Target target;
    target.name = "T1";
    target.taxon = small.abelia;
    target.plants = 50;
    target.due = day("2027-06-01");
    target.worth = Money{250};
    small.target = put(small.book, target);
}

} // namespace

Day day(const std::string& iso) {
    const auto found = Day::fromIso(iso);
    if (!found) throw std::invalid_argument(iso + " is no day");
    return *found;
}

Change perform(HouseBook& book, const Command& command) {
    auto change = book.perform(command);
    if (!change) throw std::runtime_error(change.refusal().text());
    return *change;
}

Recipe plainRecipe(TaxonId taxon) {
    Recipe recipe;
    recipe.taxon = taxon;
    recipe.season = usual(Season{{2, 1}, {7, 15}});
    recipe.cuttingLength = usual(Millimetres{90});
    recipe.nodes = usual(std::optional<int>{3});
    recipe.nodesBuried = usual(std::optional<int>{});
    recipe.wound = usual(false);
    recipe.tipRemoved = usual(true);
    recipe.leafTrim = usual(std::string("none"));
    recipe.rootZoneLow = usual(Celsius{180});
    recipe.rootZoneIdeal = usual(Celsius{205});
    recipe.rootZoneHigh = usual(Celsius{240});
    recipe.air = usual(Celsius{150});
    recipe.daysToRoot = usual(IntRange{28, 42});
    recipe.base = usual(Celsius{60});
    recipe.takePercent = usual(IntRange{70, 90});
    recipe.hormone = usual(std::string("none"));
    recipe.hormoneForm = usual(std::string("none"));
    recipe.covers = usual(std::vector<Cover>{Cover::Mist, Cover::Tent});
    recipe.medium = usual(std::vector<MediumComponent>{{"perlite", 1}, {"peat", 1}});
    recipe.container = usual(std::string("pot 13 cm"));
    recipe.cuttingsPerContainer = usual(5);
    recipe.weanDays = usual(14);
    recipe.growOnDays = usual(0);
    recipe.aftercare = usual(std::string("pinch once"));
    return recipe;
}

SmallBook smallBook() {
    SmallBook small;
    putHouse(small);
    putCrop(small);
    const auto stay = [](Stage stage, ZoneId zone, const char* from, const char* to,
                         std::vector<Place> places) {
        return Stay{{}, {}, stage, zone, day(from), day(to), std::move(places)};
    };
    Batch struck = batchOf(small, small.pot, 4, 5, day("2027-02-15"));
    struck.state = BatchState::Struck;
    perform(small.book,
            {AddBatch{struck,
                      {stay(Stage::Rooting, small.warm, "2027-02-15", "2027-04-01", inRow(0, 0, 4, 1)),
                       stay(Stage::Weaning, small.cool, "2027-04-01", "2027-04-15", inRow(0, 0, 4, 1))}}});
    const Batch planned = batchOf(small, small.tray, 2, 30, day("2027-03-01"));
    perform(small.book,
            {AddBatch{planned,
                      {stay(Stage::Rooting, small.warm, "2027-03-01", "2027-04-12", inRow(1, 0, 2, 3))}}});
    perform(small.book, {SetMatRuns{small.warm,
                                    day("2027-02-15"),
                                    day("2027-04-01"),
                                    {{{}, {}, day("2027-02-15"), day("2027-04-01"), Celsius{200}}}}});
    small.struck = {1};
    small.rooting = {1};
    small.weaning = {2};
    small.planned = {2};
    small.plannedStay = {3};
    return small;
}

HouseBook bookOfChecks(int batches, int checks) {
    constexpr int pots = 8;
    constexpr int daysApart = 3;
    constexpr int daysStanding = 10; // at most four batches at once: one row each
    SmallBook small;
    putHouse(small);
    putCrop(small);
    Things things;
    forEachKind([&]<class E>() { std::get<std::map<IdOf<E>, E>>(things) = small.book.all<E>(); });
    const Day firstDay = day("2001-01-01");
    auto& zone = std::get<std::map<ZoneId, Zone>>(things).at(small.warm);
    zone.blocked.clear();
    for (int i = 0; i < batches; ++i) {
        const Day strikeDay = firstDay + i * daysApart;
        Batch batch = batchOf(small, small.pot, pots, 5, strikeDay);
        batch.id = {i + 1};
        batch.code = batchCode(strikeDay, 0) + "/" + std::to_string(i);
        batch.state = BatchState::Struck;
        for (int pot = 0; pot < pots; ++pot) batch.containers[static_cast<std::size_t>(pot)].number = pot + 1;
        const Stay stay{{i + 1},
                        batch.id,
                        Stage::Rooting,
                        small.warm,
                        strikeDay,
                        strikeDay + daysStanding,
                        inRow(i % 4, 0, pots, 1)};
        std::get<std::map<BatchId, Batch>>(things).emplace(batch.id, batch);
        std::get<std::map<StayId, Stay>>(things).emplace(stay.id, stay);
    }
    for (int i = 0; i < checks; ++i) {
        RootCheck check;
        check.id = {i + 1};
        check.batch = {i % batches + 1};
        check.container = i / batches % pots + 1;
        check.day = firstDay + (i % batches) * daysApart + 1 + i / batches / pots % daysStanding;
        check.examined = 5;
        check.rooted = i % 6;
        check.alive = 5 - check.rooted;
        std::get<std::map<RootCheckId, RootCheck>>(things).emplace(check.id, check);
    }
    auto made = HouseBook::make(std::move(things));
    if (const auto* broken = std::get_if<std::vector<BrokenRule>>(&made))
        throw std::runtime_error(broken->front().refusal.text());
    return std::get<HouseBook>(std::move(made));
}

} // namespace warmbench::tests
