#pragma once

#include "core/book/house_book.h"

#include <array>
#include <string>
#include <vector>

namespace warmbench::exchange {

enum class EventKind : std::uint8_t { Strike, Check, Wean, PotOn };
inline constexpr std::array<const char*, 4> eventKindNames{"strike", "check", "wean", "pot-on"};

/// Something to be done on a day of the season.
struct SeasonEvent {
    EventKind kind = EventKind::Strike;
    BatchId batch;
    int ordinal = 1; ///< among those of its kind and batch, from 1: the third check
    Day day;
    std::string title;       ///< `Strike 96 cuttings of Abelia × grandiflora (27-048-A)`
    std::string place;       ///< house, bench and zone; empty where it has none
    std::string description; ///< what is needed, line by line
};

/// What the batches that have not ended ask for on `from` and later, by day: planned ones to be struck; looks
/// at the roots by the rhythm of their wood until their rooting stay ends; weaning on the first day of that
/// stay; potting on at the end of the last.
[[nodiscard]] std::vector<SeasonEvent> seasonEvents(const HouseBook& book, Day from);

} // namespace warmbench::exchange
