#pragma once

#include "core/book/command.h"
#include "core/crop/library/library.h"
#include "core/exchange/logger/logger_shape.h"
#include "core/season/new_target.h"
#include "core/season/taxon_choice.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench::season {

/// What a column of a list of targets means.
enum class TargetColumn : std::uint8_t { PassedOver, Taxon, Plants, Due, Worth, Wood, Name, Note };
inline constexpr std::array<const char*, 8> targetColumnNames{"passed over", "taxon", "plants", "date",
                                                              "worth",       "wood",  "name",   "note"};

/// How a list of targets is to be read; what was found in it, and may be set otherwise.
struct TargetListShape {
    char delimiter = ',';
    exchange::DateOrder order = exchange::DateOrder::YearFirst;
    bool decimalComma = false;
    bool head = false; ///< the first line names the columns
    std::vector<TargetColumn> columns;
};

/// Finds out how a list, such as one copied from a spreadsheet, is to be read: by the names of its first line
/// where they are known ones, else by what stands in the columns.
[[nodiscard]] TargetListShape targetListShape(std::string_view text, const HouseBook& book,
                                              const RecipeLibrary& library);

/// One line of a list.
struct ListedTarget {
    std::size_t line = 0; ///< counted from 1
    std::vector<std::string> cells;
    Target target; ///< id 0; its taxon's id only where the book has it
    TaxonChoice taxon;
    std::string trouble; ///< why it can't be a target; empty where it can
};

/// What is to be done with taxa that neither the book nor the built-in recipes know.
enum class UnknownTaxa : std::uint8_t { Refuse, TakeAsOwn };

/// Reads all lines that are not empty. Without a worth a plant has the usual one. Targets without a name of
/// their own get the next free ones.
[[nodiscard]] std::vector<ListedTarget> readTargetList(std::string_view text, const TargetListShape& shape,
                                                       const HouseBook& book, const RecipeLibrary& library,
                                                       UnknownTaxa unknown = UnknownTaxa::Refuse);

/// Puts the lines that can be targets into the book as one step, with the taxa that are new to it.
[[nodiscard]] Command putTargets(const HouseBook& book, const std::vector<ListedTarget>& list);

} // namespace warmbench::season
