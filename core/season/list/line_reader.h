#pragma once

#include "core/season/list/list_text.h"
#include "core/season/list/thing_list.h"

#include <map>
#include <memory>

namespace warmbench::season {

/// What a column may mean, and what else it is called at the head of lists.
struct ListColumn {
    std::string name;
    std::vector<std::string> others{};
};

/// The cells of one line by what they mean; those that are empty are left out.
class Line {
public:
    Line(const Cells& cells, const std::vector<std::size_t>& columns, const std::vector<ListColumn>& known,
         exchange::DateOrder order);

    [[nodiscard]] bool has(const std::string& column) const { return m_cells.contains(column); }
    /// Empty where the line has none.
    [[nodiscard]] std::string at(const std::string& column) const;
    /// Refused where the line has none or none that can be read.
    [[nodiscard]] Result<int> count(const std::string& column, int least = 1) const;
    [[nodiscard]] Result<Day> day(const std::string& column) const;
    [[nodiscard]] Result<Wood> wood() const;
    [[nodiscard]] exchange::DateOrder order() const { return m_order; }

private:
    std::map<std::string, std::string> m_cells;
    exchange::DateOrder m_order;
};

/// What is to be done for one line.
struct LineWork {
    std::vector<ListField> fields;
    std::vector<Command> commands;
};

/// Reads the lines of one kind of list, one after the other. `book` is the book with those before put in.
class LineReader {
public:
    LineReader(const RecipeLibrary& library, UnknownTaxa unknown) : m_library(library), m_unknown(unknown) {}
    LineReader(const LineReader&) = delete;
    LineReader& operator=(const LineReader&) = delete;
    virtual ~LineReader() = default;
    [[nodiscard]] virtual Result<LineWork> read(const Line& line, const HouseBook& book) = 0;

protected:
    /// The taxon that a line names; a new one is put into the book by the first of the commands.
    [[nodiscard]] Result<Taxon> taxon(const Line& line, const HouseBook& book,
                                      std::vector<Command>& commands) const;
    [[nodiscard]] const RecipeLibrary& library() const { return m_library; }

private:
    const RecipeLibrary& m_library;
    UnknownTaxa m_unknown;
};

[[nodiscard]] std::vector<ListColumn> stockColumns();
[[nodiscard]] std::vector<ListColumn> recipeColumns();
[[nodiscard]] std::vector<ListColumn> resultColumns();
[[nodiscard]] std::unique_ptr<LineReader> stockReader(const RecipeLibrary& library, UnknownTaxa unknown);
[[nodiscard]] std::unique_ptr<LineReader> recipeReader(const RecipeLibrary& library, UnknownTaxa unknown);
[[nodiscard]] std::unique_ptr<LineReader> resultReader(const RecipeLibrary& library, UnknownTaxa unknown);

} // namespace warmbench::season
