#pragma once

#include "core/book/command.h"
#include "core/book/house_book.h"

#include <string>

/// Small house books for tests to begin with. Everything in them is invented.
namespace warmbench::tests {

/// A day that is written right, such as day("2027-02-15").
[[nodiscard]] Day day(const std::string& iso);

/// Performs a command that must succeed; throws std::runtime_error with the refusal's words where it does
/// not.
Change perform(HouseBook& book, const Command& command);

/// A glasshouse of 12 m by 6 m with one bench of 4 by 12 slots, and what is grown on it.
///
/// `struck` was struck on 2027-02-15 in four pots on the back row of `warm`, where it stands until
/// 2027-04-01 and then on `cool` until 2027-04-15. `planned` is to be struck on 2027-03-01 in two trays on
/// the second row of `warm`, until 2027-04-12. The mat runs at 20 °C from 2027-02-15 to 2027-04-01.
struct SmallBook {
    HouseBook book;
    HouseId house;
    BenchId bench;
    ZoneId warm; ///< 4 by 8 slots under mist, with a mat of 18, 20, 22 °C; its slot (3, 7) is blocked
    ZoneId cool; ///< 4 by 4 slots, open
    ContainerTypeId pot;  ///< one slot, 5 cuttings
    ContainerTypeId tray; ///< 1 by 3 slots, turnable, 30 cuttings
    MediumId medium;
    TaxonId abelia;
    TaxonId fuchsia;
    RecipeId recipe; ///< for abelia, softwood
    StockId stock;   ///< of abelia
    TargetId target; ///< 50 abelias on 2027-06-01
    BatchId struck;
    StayId rooting;
    StayId weaning;
    BatchId planned;
    StayId plannedStay;
};
[[nodiscard]] SmallBook smallBook();

/// A recipe with every figure, for a taxon.
[[nodiscard]] Recipe plainRecipe(TaxonId taxon);

/// A book of the small book's bench with `batches` batches of eight pots, one after the other in time, with
/// `checks` root checks spread over them: for measuring how long large books take.
[[nodiscard]] HouseBook bookOfChecks(int batches, int checks);

} // namespace warmbench::tests
