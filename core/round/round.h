#pragma once

#include "core/forecast/book_forecast.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

/// A round: a walk past the containers that are worth a look, in the order in which they stand.
namespace warmbench::round {

/// Why a container is worth a look.
enum class Reason : std::uint8_t { Started, Ready, Behind, Losses, Unchecked };
inline constexpr std::array<const char*, 5> reasonNames{"roots expected", "expected ready", "behind",
                                                        "losses seen", "long unchecked"};

/// When cuttings of a wood are first lifted, and how many days they are then left alone: from memory.
struct Rhythm {
    int firstLook = 0; ///< days after striking
    int between = 0;   ///< days
};
[[nodiscard]] Rhythm rhythmOf(Wood wood);

/// One container to look at.
struct Stop {
    BatchId batch;
    int container = 1;
    ZoneId zone;
    SlotRect slots; ///< in the rows and columns of the zone
    int standing = 0;
    int examine = 0;             ///< cuttings to pick
    std::vector<Reason> reasons; ///< at least one
    Phrase why;
    std::optional<RootCheckId> found; ///< the latest check of it on that day, when it was made already
};

/// The stops of a day, as the round began: what was found on it takes no stop off. Of each batch as many
/// containers as it takes to see 10 cuttings or 5 in 100, whichever is more, 20 where it may be ready (from
/// memory); those that were left alone longest come first to be picked, and those in which losses were seen
/// always; also of those whose rooting stay is over by the plan while no root of them was ever seen. They are
/// in walking order: house by house, bench after bench from the back, along each from one
/// end to the other and along the next one back.
[[nodiscard]] std::vector<Stop> roundOn(const HouseBook& book, const forecast::BookForecast& forecast);

/// The containers that stand in the houses on a day in walking order, with their batches; for other walks.
struct Standing {
    BatchId batch;
    int container = 1;
    ZoneId zone;
    SlotRect slots;
};
[[nodiscard]] std::vector<Standing> walk(const HouseBook& book, Day day);

} // namespace warmbench::round
