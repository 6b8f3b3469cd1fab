#pragma once

#include "core/crop/library/row.h"
#include "core/crop/library/sheet.h"

#include <string>
#include <utility>

namespace warmbench {

/// Fills figures and prints them for one record of a sheet.
class RowWriter {
public:
    RowWriter(Sheet& sheet, RecipeRow& row) : m_sheet(sheet), m_row(row) {}

    /// A figure that enters a recipe.
    template <class T>
    void give(FigureKind kind, Figure<T> Recipe::*figure, const std::optional<T>& value) {
        if (!value) return;
        m_row.figures.*figure = {*value, m_row.source};
        print(kind, withUnit(kind, valueText(*value)));
    }
    /// One that is only shown.
    void print(FigureKind kind, std::string text) {
        if (text.empty()) return;
        m_row.printed.push_back(
            {kind, figureLabels[static_cast<std::size_t>(kind)], std::move(text), m_row.source});
    }
    /// Whether a cell says the first of two words; refuses one that says neither.
    bool isFirst(std::string_view column, std::string_view first, std::string_view second) {
        const std::string cell = m_sheet.text(column);
        if (cell != first && cell != second)
            m_sheet.refuse(column, std::string{first} + " or " + std::string{second});
        return cell == first;
    }

private:
    Sheet& m_sheet;
    RecipeRow& m_row;
};

} // namespace warmbench
