#pragma once

#include "core/forecast/book_forecast.h"

#include <optional>
#include <vector>

/// Planning by hand: what is carried over the bench map, which zones suit it and why, and what it would take.
namespace warmbench::placing {

/// A batch, or containers of it, that is taken up to be put elsewhere from a day on.
struct Carried {
    BatchId batch;
    std::vector<int> containers; ///< their numbers, rising
    Day day;                     ///< from which they are to stand there; never before they are struck
    bool whole = true;           ///< all that still stand
    bool struck = false;
    bool placed = true; ///< all of them have a place on the day
    Stage stage = Stage::Rooting;
    Footprint footprint; ///< of one, unturned
    bool turnable = false;
    std::optional<Day> end; ///< the last day on which any of them leaves the place that it has
    /// Degree-days that are still to pass from `day` on until the batch is ready; nothing where it does not
    /// root any more, or its recipe's figures can't be.
    std::optional<double> need;
};

/// Takes up containers of a batch, or, with none named, all that still stand. Planned ones are taken up from
/// their strike day at the earliest. What is still to pass until a struck batch is ready is as the forecast
/// believes where it knows the batch, else as the recipe says.
/// Refused where nothing of it stands, where a number is not one of its containers, and where they are in
/// different stages.
[[nodiscard]] Result<Carried> takeUp(const HouseBook& book, BatchId batch, std::vector<int> containers,
                                     Day day, const forecast::BookForecast* forecast = nullptr);

} // namespace warmbench::placing
