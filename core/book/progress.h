#pragma once

#include "core/book/house_book.h"

#include <array>
#include <optional>
#include <vector>

/// How far batches are on a day, and what is amiss with them, as far as the book itself tells.
namespace warmbench {

/// How far a batch is, in the order in which it goes.
enum class Progress : std::uint8_t { Planned, Struck, Callused, Rooted, Weaning, Ready };
inline constexpr std::array<const char*, 6> progressNames{"planned", "struck",  "callused",
                                                          "rooted",  "weaning", "ready to pot on"};

/// How far a batch is during one of its stays on a day. Of each container the latest root check up to that
/// day counts: rooted where half of what was examined had roots, callused where half had roots or callus.
/// While it is weaned or grown on it is weaning, until the recipe's days of growing on are over. What by
/// `today`, where it is given, is weaned by the plan alone goes on as it roots; later days are as planned.
[[nodiscard]] Progress progressOn(const HouseBook& book, const Stay& stay, Day day,
                                  std::optional<Day> today = {});

/// What the latest root checks of all containers up to a day found, summed.
struct CheckSum {
    int examined = 0;
    int rooted = 0;
    int callused = 0;
    int alive = 0;
    int dead = 0;
    std::optional<Day> last; ///< day of the latest; nothing where there was none
};
[[nodiscard]] CheckSum latestChecks(const HouseBook& book, BatchId batch, Day day);
/// The latest root check of one container up to a day; null where there was none.
[[nodiscard]] const RootCheck* latestCheck(const HouseBook& book, BatchId batch, int container, Day day);

enum class TroubleKind : std::uint8_t { TooCold, TooWarm, WrongCover, Dying };

/// Something about a stay that needs a look.
struct Trouble {
    TroubleKind kind = TroubleKind::TooCold;
    Celsius rootZone{}; ///< that is to be expected; of TooCold and TooWarm
    Celsius limit{};    ///< of the recipe; of TooCold and TooWarm
    int dead = 0;       ///< at the latest checks; of Dying
    int examined = 0;   ///< there; of Dying
    friend bool operator==(const Trouble&, const Trouble&) = default;
};

/// What is amiss with a stay on a day. While it roots: a root zone outside the recipe's bounds, a cover that
/// the recipe does not name. At any time: a quarter or more dead at the latest checks (common practice, no
/// source). Empty where nothing is.
[[nodiscard]] std::vector<Trouble> troublesOn(const HouseBook& book, const Stay& stay, Day day);

} // namespace warmbench
