#pragma once

#include "core/book/command.h"
#include "core/crop/library/library.h"

/// A small nursery for the tests of planning: one warm tented zone, one open one, one taxon with stock.
namespace warmbench::testing {

struct SeasonBook {
    HouseBook book;
    ZoneId warm;
    ZoneId open;
    TaxonId taxon;
    StockId stock;
    ContainerTypeId pot;

    SeasonBook();

    template <class E>
    IdOf<E> add(E thing);
    /// A target of `plants` of the taxon by a day.
    TargetId want(int plants, Day due);
    /// A batch struck from the stock, standing in the open zone from `strikeDay` for so many days.
    BatchId strike(Day strikeDay, int cuttings, int days, std::optional<TargetId> target = {});
};

/// A day of 2027, the year of these tests.
Day on(unsigned month, unsigned day);
/// Twelve times one temperature.
MonthlyCelsius allYear(Celsius temperature);
/// A semi-ripe recipe: season 07-15 to 09-30, 18 °C over base 6, 28 to 56 days, take 65 to 90 %, 10 and 20
/// days after.
Recipe semiRipe(TaxonId taxon);
/// The built-in library, from the files of the tree.
const RecipeLibrary& builtIn();

template <class E>
IdOf<E> SeasonBook::add(E thing) {
    const auto id = book.nextId<E>();
    thing.id = {};
    if (auto change = book.perform(Command{Put<E>{std::move(thing)}}); !change)
        throw std::logic_error(change.refusal().text());
    return id;
}

} // namespace warmbench::testing
