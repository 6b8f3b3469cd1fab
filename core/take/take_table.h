#pragma once

#include "core/book/house_book.h"
#include "core/rooting/proportion.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench::take {

/// What takes are told apart by.
enum class Grouping : std::uint8_t { Taxon, Wood, Stock, Hormone, Medium, Heat, Month };
inline constexpr std::array<const char*, 7> groupingNames{"taxon",  "wood", "stock", "hormone",
                                                          "medium", "heat", "month"};
[[nodiscard]] std::optional<Grouping> groupingFromName(std::string_view name);

/// What became of one batch that has ended: plants potted on of cuttings struck.
[[nodiscard]] rooting::Take takeOf(const HouseBook& book, const Batch& batch);

/// What a batch is called in a grouping: the taxon's name, `softwood`, the hormone with its form, the
/// set-point of its first days such as `18 °C`, the month of striking, ...
[[nodiscard]] std::string groupOf(const HouseBook& book, const Batch& batch, Grouping grouping);

struct TakeRow {
    std::string group;
    std::vector<BatchId> batches; ///< ended, in order of their strike days
    rooting::Take take;           ///< of all of them
    rooting::Interval interval;   ///< Wilson's, at the level asked for
    double recipeLow = 0;         ///< the recipes' take, low to high, as shares: means weighted by cuttings
    double recipeHigh = 0;
    std::vector<std::string> sources; ///< of the recipes' takes, each once

    /// Whether the whole interval is below or above the recipes' range.
    [[nodiscard]] bool below() const { return interval.high < recipeLow; }
    [[nodiscard]] bool above() const { return interval.low > recipeHigh; }
};

/// The takes of all batches that have ended, those struck in from <= day <= to; groups in order of their
/// names, months in order of the year.
[[nodiscard]] std::vector<TakeRow> takeTable(const HouseBook& book, Grouping grouping, double level, Day from,
                                             Day to);

} // namespace warmbench::take
