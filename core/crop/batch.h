#pragma once

#include "core/crop/crop.h"

namespace warmbench {

/// One container of a batch; numbered from 1 within it.
struct BatchContainer {
    int number = 1;
    int cuttings = 0; ///< struck in it
    friend bool operator==(const BatchContainer&, const BatchContainer&) = default;
};

enum class BatchState : std::uint8_t { Planned, Struck, Ended };
inline constexpr std::array<const char*, 3> batchStateNames{"planned", "struck", "ended"};

/// Cuttings of one taxon and recipe, from one stock, struck on one day.
struct Batch {
    BatchId id;
    std::string code; ///< year, day of the year and a letter: `27-048-A`
    TaxonId taxon;
    Recipe recipe; ///< as it was when the batch was planned or struck
    std::optional<StockId> stock;
    std::optional<TargetId> target;
    Day strikeDay;
    ContainerTypeId containerType;
    std::vector<BatchContainer> containers;
    BatchState state = BatchState::Planned;
    std::string note;
    friend bool operator==(const Batch&, const Batch&) = default;

    [[nodiscard]] int cuttings() const {
        int sum = 0;
        for (const BatchContainer& container : containers) sum += container.cuttings;
        return sum;
    }
};

enum class Stage : std::uint8_t { Rooting, Weaning, GrowingOn };
inline constexpr std::array<const char*, 3> stageNames{"rooting", "weaning", "growing on"};

/// Where one container of a batch stands during a stay.
struct Place {
    int container = 1;
    SlotRect slots; ///< in the rows and columns of the zone
    friend bool operator==(const Place&, const Place&) = default;
};

/// A batch's time on given slots of one zone: the days from <= day < to.
struct Stay {
    StayId id;
    BatchId batch;
    Stage stage = Stage::Rooting;
    ZoneId zone;
    Day from;
    Day to;
    std::vector<Place> places;
    std::optional<Day> weanedOn =
        std::nullopt; ///< when somebody weaned its containers; nothing by the plan alone
    friend bool operator==(const Stay&, const Stay&) = default;
};

/// A look at one container: each cutting examined is rooted, callused, alive without either, or dead.
struct RootCheck {
    RootCheckId id;
    BatchId batch;
    int container = 1;
    Day day;
    int examined = 0;
    int rooted = 0;
    int callused = 0;
    int alive = 0;
    int dead = 0;
    std::optional<int> grade; ///< 0 to 5, of the rooted
    std::string note;
    friend bool operator==(const RootCheck&, const RootCheck&) = default;
};

/// Rooted cuttings moved from one container into their own pots.
struct Potting {
    PottingId id;
    BatchId batch;
    int container = 1;
    Day day;
    int plants = 0; ///< potted on
    int lost = 0;   ///< thrown away at potting on
    std::string note;
    friend bool operator==(const Potting&, const Potting&) = default;
};

/// Cuttings of one container that died or were thrown away.
struct Loss {
    LossId id;
    BatchId batch;
    int container = 1;
    Day day;
    int cuttings = 0;
    std::string reason;
    friend bool operator==(const Loss&, const Loss&) = default;
};

/// `27-048-A`: the code of the letter-th batch (0 is A, 26 is AA) struck on a day.
[[nodiscard]] std::string batchCode(Day strikeDay, int letter);

} // namespace warmbench
