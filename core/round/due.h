#pragma once

#include "core/forecast/book_forecast.h"

#include <array>
#include <string>
#include <vector>

namespace warmbench::round {

/// What is to be done with a batch by its recipe and what was seen of it.
enum class Task : std::uint8_t { Wean, PotOn };
inline constexpr std::array<const char*, 2> taskNames{"wean", "pot on"};

struct Due {
    BatchId batch;
    Task task = Task::Wean;
    Day since;      ///< from which it is due
    int plants = 0; ///< expected of it
    Phrase why;
};

/// A batch is to be weaned once seven of ten that stand in it are rooted, as it was seen in checks, or it has
/// reached the end of its rooting stay with half of them rooted (from memory), and from the plan's day on
/// until somebody weans it (weaning.h). It is to be potted on when its recipe's days of weaning and growing
/// on are over since it left the rooting stay, or its last stay ends.
[[nodiscard]] std::vector<Due> dueOn(const HouseBook& book, const forecast::BookForecast& forecast);

} // namespace warmbench::round
