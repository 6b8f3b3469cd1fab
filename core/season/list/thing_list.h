#pragma once

#include "core/season/list/list_text.h"
#include "core/season/list/target_list.h"

#include <array>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Lists that are put into a book: of targets, stocks, recipes or what came of earlier batches.
namespace warmbench::season {

enum class ListKind : std::uint8_t { Targets, Stocks, Recipes, Results };
inline constexpr std::array<const char*, 4> listKindNames{"targets", "stocks", "recipes", "results"};
[[nodiscard]] std::optional<ListKind> listKindFromName(std::string_view name);

/// What the columns of a list of a kind may mean; the first is that a column is passed over.
[[nodiscard]] std::vector<std::string> columnNames(ListKind kind);

/// How a list is to be read; what was found in it, and may be set otherwise.
struct ListShape {
    char delimiter = ',';
    exchange::DateOrder order = exchange::DateOrder::YearFirst;
    bool decimalComma = false;        ///< of the worth of targets
    bool head = false;                ///< the first line names the columns
    std::vector<std::size_t> columns; ///< of each column, an index in columnNames
};

/// Finds out how a list is to be read: by the names of its first line where they are known ones; where they
/// are not, a list of targets by what stands in the columns, any other in the order of columnNames.
[[nodiscard]] ListShape listShape(std::string_view text, ListKind kind, const HouseBook& book,
                                  const RecipeLibrary& library);

/// A line's part as it was understood; Money is of one plant.
using ListField = std::variant<std::string, int, Day, Money>;

/// One line of a list.
struct ListedThing {
    std::size_t line = 0; ///< counted from 1
    Cells cells;
    std::vector<ListField> fields; ///< by fieldNames; none where there is trouble
    std::string trouble;           ///< why it can't be put in; empty where it can
};

/// What `ListedThing::fields` hold.
[[nodiscard]] std::vector<std::string> fieldNames(ListKind kind);

struct ThingList {
    std::vector<ListedThing> lines;
    std::size_t right = 0;    ///< lines without trouble
    Command command{Group{}}; ///< puts those in as one step, with the taxa that are new to the book
};

/// Reads all lines that are not empty, each against the rules of the book with the lines before it put in.
///
/// Stocks: lines of one name are one stock with several flushes. Recipes: the book's own of that taxon, wood
/// and name, or else a copy of the built-in one, with the figures that are given as her own. Results: a batch
/// that was struck, and potted on in one go, with all else lost; it stands nowhere.
[[nodiscard]] ThingList readThingList(std::string_view text, ListKind kind, const ListShape& shape,
                                      const HouseBook& book, const RecipeLibrary& library,
                                      UnknownTaxa unknown = UnknownTaxa::Refuse);

} // namespace warmbench::season
