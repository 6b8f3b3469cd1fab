#pragma once

#include "core/crop/recipe_figures.h"

#include <cstddef>
#include <string>
#include <vector>

namespace warmbench {

/// A publication, or a page of advice.
struct Source {
    std::string id;
    std::string title;
    std::string author;
    std::string year; ///< may be empty, or a span of years
    std::string kind;
    std::string address;
    std::string opened; ///< how far it was read
};

/// Where a row comes from; the earlier stands first where two of them differ.
enum class RowKind : std::uint8_t { Published, Memory, CommonPractice, Default };

/// What one source says of one taxon and wood: a recipe of which some figures are given.
struct RecipeRow {
    RowKind kind = RowKind::Published;
    std::size_t line = 0; ///< in its file
    std::string taxon;    ///< as printed; empty for what holds for a wood in general
    std::vector<std::string> synonyms;
    std::vector<std::string> commonNames;
    std::string woodText;     ///< as printed, such as `root`, which is no wood of a stem cutting
    std::optional<Wood> wood; ///< none where woodText names no wood
    std::string source;       ///< id of a Source, or a mark
    std::string evidence;     ///< what was read, or how widely growers agree
    std::string note;
    /// The figures that enter a recipe; one with an empty source is not given.
    Recipe figures;
    /// All that the row gives, in words, with what keeps some of it out of a recipe, in the order of
    /// FigureKind.
    std::vector<FigureText> printed;
};

} // namespace warmbench
