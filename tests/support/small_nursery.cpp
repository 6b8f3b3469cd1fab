#include "tests/support/small_nursery.h"

#include "core/book/command.h"
#include "core/book/query.h"

#include <stdexcept>
#include <string>

namespace warmbench::tests {
namespace {

using namespace warmbench::literals;

/// Performs commands that must succeed.
class Builder {
public:
    HouseBook book;

    template <class E>
    IdOf<E> put(E thing) {
        const IdOf<E> id = book.nextId<E>();
        perform({Put<E>{std::move(thing)}});
        return id;
    }
    void perform(const Command& command) {
        const auto change = book.perform(command);
        if (!change) throw std::logic_error(change.refusal().text());
    }
};

MonthlyCelsius throughTheYear(int winter, int summer) {
    MonthlyCelsius months;
    for (std::size_t month = 0; month < months.size(); ++month) {
        const int fromJuly = std::abs(static_cast<int>(month) - 6);
        months[month] = Celsius{10 * summer - (summer - winter) * 10 * fromJuly / 6};
    }
    return months;
}

House glasshouse() {
    House house;
    house.name = "Glasshouse 1";
    house.length = 7200_mm;
    house.width = 5200_mm;
    house.air = throughTheYear(12, 22);
    house.unheatedRootZone = throughTheYear(11, 21);
    return house;
}

Zone zoneOn(BenchId bench, const char* name, int col, int cols, Cover cover, bool heated) {
    Zone zone;
    zone.bench = bench;
    zone.name = name;
    zone.col = col;
    zone.cols = cols;
    zone.rows = 6;
    zone.cover = cover;
    if (heated)
        zone.mat =
            Mat{std::string("mat ") + name, 450.0_watts, HeatLoss{700}, {15_degC, 18_degC, 21_degC, 24_degC}};
    return zone;
}

Recipe recipeFor(TaxonId taxon, Wood wood, int ideal, Cover cover) {
    Recipe recipe;
    recipe.taxon = taxon;
    recipe.wood = wood;
    recipe.season = {{{1, 1}, {12, 31}}, ownFigure};
    recipe.cuttingLength = {100_mm, ownFigure};
    recipe.nodes = {3, ownFigure};
    recipe.nodesBuried = {1, ownFigure};
    recipe.rootZoneLow = {Celsius{10 * (ideal - 4)}, ownFigure};
    recipe.rootZoneIdeal = {Celsius{10 * ideal}, ownFigure};
    recipe.rootZoneHigh = {Celsius{10 * (ideal + 4)}, ownFigure};
    recipe.air = {14_degC, ownFigure};
    recipe.daysToRoot = {{28, 56}, ownFigure};
    recipe.base = {5_degC, ownFigure};
    recipe.takePercent = {{60, 85}, ownFigure};
    recipe.hormone = {"IBA 3000 ppm", ownFigure};
    recipe.hormoneForm = {"powder", ownFigure};
    recipe.covers = {{cover, Cover::Bag}, ownFigure};
    recipe.medium = {{{"coir", 1}, {"bark", 1}}, ownFigure};
    recipe.container = {"1 l pot", ownFigure};
    recipe.cuttingsPerContainer = {8, ownFigure};
    recipe.weanDays = {14, ownFigure};
    recipe.growOnDays = {10, ownFigure};
    return recipe;
}

/// The first slots, row by row, that `count` containers find free in a zone for all the days.
std::vector<Place> firstFree(const HouseBook& book, ZoneId zoneId, Footprint size, int count, Day from,
                             Day to) {
    const Zone& zone = book.get<Zone>(zoneId);
    std::vector<SlotRect> taken;
    for (const StayId id : book.staysIn(zoneId))
        if (const Stay& stay = book.get<Stay>(id); stay.from < to && from < stay.to)
            for (const Place& place : stay.places) taken.push_back(place.slots);
    std::vector<Place> places;
    for (int col = 0; col + size.width <= zone.cols; ++col)
        for (int row = 0; row + size.height <= zone.rows; ++row) {
            const SlotRect here{row, col, size.height, size.width};
            bool free = static_cast<int>(places.size()) < count;
            for (const SlotRect& other : taken) free = free && !other.overlaps(here);
            for (const Slot blocked : zone.blocked) free = free && !here.covers(blocked);
            if (!free) continue;
            taken.push_back(here);
            places.push_back({static_cast<int>(places.size()) + 1, here});
        }
    if (static_cast<int>(places.size()) < count)
        throw std::logic_error(zoneTitle(book, zoneId) + " is full on " + from.iso());
    return places;
}

struct BatchPlan {
    const char* taxon;
    Wood wood;
    int ideal;
    Cover cover;
    int daysAgo; ///< struck; below 0 is still to come
    int pots;
    const char* zone;  ///< where it roots; null: no place yet
    const char* later; ///< where it is weaned; null: where it roots
    int rootedPercent; ///< found at the check of a week ago; below 0: none was made
};

constexpr BatchPlan plans[] = {
    {"Phlomis italica", Wood::SemiRipe, 18, Cover::Mist, 49, 30, "A", "F", 62},
    {"Olearia × haastii", Wood::SemiRipe, 18, Cover::Mist, 38, 26, "A", nullptr, 56},
    {"Teucrium fruticans", Wood::SemiRipe, 18, Cover::Mist, 30, 34, "A", nullptr, 20},
    {"Abelia × grandiflora", Wood::Softwood, 21, Cover::Tent, 45, 28, "B", "E", 80},
    {"Ceanothus 'Concha'", Wood::EvergreenHardwood, 21, Cover::Tent, 20, 32, "B", nullptr, 8},
    {"Fuchsia magellanica", Wood::Softwood, 21, Cover::Tent, 34, 30, "B", nullptr, 64},
    {"Weigela florida", Wood::Hardwood, 15, Cover::Open, 80, 24, "B", "F", 90},
    {"Griselinia littoralis", Wood::EvergreenHardwood, 18, Cover::Mist, 12, 40, "C", nullptr, -1},
    {"Escallonia 'Iveyi'", Wood::SemiRipe, 18, Cover::Mist, 5, 22, "C", nullptr, -1},
    {"Pittosporum tobira", Wood::SemiRipe, 21, Cover::Bag, 35, 40, "D", nullptr, 12},
    {"Choisya ternata", Wood::SemiRipe, 18, Cover::Bag, 28, 21, "D", nullptr, 45},
    {"Hebe 'Pewter Dome'", Wood::Softwood, 15, Cover::Open, 70, 36, "E", "G", 75},
    {"Elaeagnus × submacrophylla", Wood::EvergreenHardwood, 18, Cover::Bag, 66, 30, "D", "G", 58},
    {"Forsythia × intermedia", Wood::Hardwood, 12, Cover::Open, 75, 36, "G", "G", 70},
    {"Deutzia gracilis", Wood::Hardwood, 12, Cover::Open, 33, 30, "G", nullptr, 30},
    {"Myrtus communis", Wood::SemiRipe, 15, Cover::Mist, 8, 52, "H", nullptr, -1},
    {"Osmanthus × burkwoodii", Wood::EvergreenHardwood, 18, Cover::Bag, -1, 24, "D", nullptr, -1},
    {"Viburnum tinus 'Gwenllian'", Wood::SemiRipe, 18, Cover::Mist, -4, 18, "H", nullptr, -1},
    {"Ribes sanguineum", Wood::Hardwood, 12, Cover::Open, -1, 30, nullptr, nullptr, -1},
    {"Buddleja globosa", Wood::SemiRipe, 18, Cover::Tent, -4, 20, nullptr, nullptr, -1},
    {"Callicarpa bodinieri", Wood::Softwood, 21, Cover::Mist, -9, 16, nullptr, nullptr, -1},
};

ZoneId zoneNamed(const HouseBook& book, const std::string& name) {
    for (const auto& [id, zone] : book.all<Zone>())
        if (zone.name == name) return id;
    throw std::logic_error("no zone " + name);
}

void recordChecks(Builder& builder, const BatchPlan& plan, BatchId batch, Day day) {
    for (const int container : {1, 4, 7}) {
        RootCheck check{{}, batch, container, day, 8, 0, 0, 0, 0, std::nullopt, ""};
        check.rooted = (8 * plan.rootedPercent + container * 8) / 100;
        check.dead = container == 7 && plan.rootedPercent < 15 ? 6 : 0;
        check.callused = (8 - check.rooted - check.dead + 1) / 2;
        check.alive = 8 - check.rooted - check.dead - check.callused;
        if (check.rooted > 0) check.grade = 2;
        builder.perform({RecordCheck{check}});
    }
}

void addBatch(Builder& builder, const BatchPlan& plan, ContainerTypeId pot, Day today) {
    Taxon taxon;
    taxon.name = plan.taxon;
    const TaxonId taxonId = builder.put(taxon);
    const Recipe recipe = recipeFor(taxonId, plan.wood, plan.ideal, plan.cover);
    builder.put(recipe);
    const StockId stock = builder.put(Stock{{}, taxonId, taxon.genus() + " row", "north field", 24, {}, ""});
    const TargetId target = builder.put(Target{
        {}, "T" + std::to_string(taxonId.number), taxonId, plan.pots * 6, today + 90, 250.0_money, {}, ""});
    Batch batch;
    batch.taxon = taxonId;
    batch.recipe = recipe;
    batch.stock = stock;
    batch.target = target;
    batch.strikeDay = today - plan.daysAgo;
    batch.containerType = pot;
    batch.containers.assign(static_cast<std::size_t>(plan.pots), BatchContainer{0, 8});
    batch.state = plan.daysAgo >= 0 ? BatchState::Struck : BatchState::Planned;
    std::vector<Stay> stays;
    if (plan.zone) {
        const Day rooted = batch.strikeDay + (plan.later ? 40 : 56);
        const auto place = [&](const char* name, Stage stage, Day from, Day to) {
            const ZoneId zone = zoneNamed(builder.book, name);
            stays.push_back(
                {{}, {}, stage, zone, from, to, firstFree(builder.book, zone, {1, 1}, plan.pots, from, to)});
            if (stage == Stage::Weaning && from < today) stays.back().weanedOn = from;
        };
        place(plan.zone, Stage::Rooting, batch.strikeDay, rooted);
        if (plan.later) {
            place(plan.later, Stage::Weaning, rooted, rooted + 14);
            place(plan.later, Stage::GrowingOn, rooted + 14, rooted + 34);
        }
    }
    const BatchId id = builder.book.nextId<Batch>();
    builder.perform({AddBatch{batch, stays}});
    if (plan.rootedPercent >= 0) recordChecks(builder, plan, id, today - 7);
}

} // namespace

Day smallNurseryToday() {
    return *Day::make(2027, 2, 4);
}

HouseBook smallNursery() {
    Builder builder;
    const Day today = smallNurseryToday();
    Nursery nursery;
    nursery.name = "Sample nursery";
    builder.perform({Put<Nursery>{nursery}});
    const HouseId house = builder.put(glasshouse());
    const auto bench = [&](const char* name, Millimetres y) {
        return builder.put(Bench{{}, house, name, 500_mm, y, 6, 46, 130_mm});
    };
    const BenchId north = bench("Bench 1, north wall", 500_mm);
    const BenchId middle = bench("Bench 2, middle", 2100_mm);
    const BenchId south = bench("Bench 3, south wall", 3700_mm);
    builder.put(zoneOn(north, "A", 0, 16, Cover::Mist, true));
    builder.put(zoneOn(north, "B", 16, 16, Cover::Tent, true));
    builder.put(zoneOn(north, "C", 32, 14, Cover::Mist, true));
    builder.put(zoneOn(middle, "D", 0, 18, Cover::Bag, true));
    builder.put(zoneOn(middle, "E", 18, 14, Cover::Open, true));
    builder.put(zoneOn(middle, "F", 32, 14, Cover::Open, false));
    builder.put(zoneOn(south, "G", 0, 24, Cover::Open, false));
    Zone last = zoneOn(south, "H", 24, 22, Cover::Mist, true);
    last.blocked = {{0, 21}, {1, 21}};
    builder.put(last);
    const auto run = [&](const char* name, int firstDay, int lastDay, Celsius setPoint) {
        const ZoneId zone = zoneNamed(builder.book, name);
        builder.perform({SetMatRuns{zone,
                                    today + firstDay,
                                    today + lastDay,
                                    {{{}, zone, today + firstDay, today + lastDay, setPoint}}}});
    };
    run("A", -90, 40, 18_degC);
    run("B", -90, 60, 21_degC);
    run("C", -20, 70, 18_degC);
    run("D", -80, 50, 18_degC);
    run("E", -80, 20, 15_degC);
    run("H", -10, 60, 15_degC);
    const ContainerTypeId pot = builder.put(ContainerType{{}, "1 l pot", {1, 1}, false, 1.0_litres, 8});
    for (const BatchPlan& plan : plans) addBatch(builder, plan, pot, today);
    return builder.book;
}

HouseBook fullNursery(int zones, int batches) {
    Builder builder;
    const int across = 20;
    const int benches = (zones + across - 1) / across;
    House house = glasshouse();
    house.length = Millimetres{across * 10 * 130 + 1000};
    house.width = Millimetres{benches * (10 * 130 + 600) + 1000};
    const HouseId houseId = builder.put(house);
    const ContainerTypeId pot = builder.put(ContainerType{{}, "1 l pot", {1, 1}, false, 1.0_litres, 8});
    const TaxonId taxon = builder.put(Taxon{{}, "Phlomis italica", {}, {}, ""});
    const int perZone = batches / zones;
    const int pots = 100 / perZone;
    for (int number = 0; number < zones; ++number) {
        if (number % across == 0)
            builder.put(Bench{{},
                              houseId,
                              "Bench " + std::to_string(number / across + 1),
                              500_mm,
                              Millimetres{500 + (number / across) * (10 * 130 + 600)},
                              10,
                              across * 10,
                              130_mm});
        const BenchId bench{builder.book.nextId<Bench>().number - 1};
        Zone zone = zoneOn(bench, "", (number % across) * 10, 10, Cover::Mist, true);
        zone.name = "Z" + std::to_string(number + 1);
        zone.rows = 10;
        const ZoneId zoneId = builder.put(zone);
        const Day from = smallNurseryToday() - number % 60;
        builder.perform({SetMatRuns{
            zoneId, from, from + 100, {{{}, zoneId, from, from + 100, Celsius{150 + 30 * (number % 4)}}}}});
        for (int one = 0; one < perZone; ++one) {
            Batch batch;
            batch.code = std::to_string(number) + "-" + std::to_string(one);
            batch.taxon = taxon;
            batch.recipe = recipeFor(taxon, Wood::SemiRipe, 18, Cover::Mist);
            batch.strikeDay = from;
            batch.containerType = pot;
            batch.containers.assign(static_cast<std::size_t>(pots), BatchContainer{0, 8});
            batch.state = BatchState::Struck;
            Stay stay{{}, {}, static_cast<Stage>(one % 3), zoneId, from, from + 80 + one, {}};
            for (int place = 0; place < pots; ++place) {
                const int slot = one * pots + place;
                stay.places.push_back({place + 1, {slot % 10, slot / 10, 1, 1}});
            }
            builder.perform({AddBatch{batch, {stay}}});
        }
    }
    return builder.book;
}

} // namespace warmbench::tests
