#include "core/exchange/book/recipe_change.h"
#include "core/season/list/line_reader.h"

#include <algorithm>

namespace warmbench::season {
namespace {

class RecipeReader : public LineReader {
public:
    using LineReader::LineReader;

    Result<LineWork> read(const Line& line, const HouseBook& book) override {
        LineWork work;
        const auto named = taxon(line, book, work.commands);
        if (!named) return named.refusal();
        const auto wood = line.wood();
        if (!wood) return wood.refusal();
        Recipe recipe = startOf(book, *named, *wood, line.at("name"));
        std::string changed;
        for (const std::string& figure : recipeFigureNames()) {
            if (!line.has(figure)) continue;
            auto next = withOwnFigure(std::move(recipe), figure, line.at(figure));
            if (!next) return next.refusal();
            recipe = std::move(*next);
            changed += (changed.empty() ? "" : ", ") + figure + " " + line.at(figure);
        }
        if (changed.empty()) return Refusal{named->name, phrase("no figure of its recipe is given")};
        std::replace(changed.begin(), changed.end(), '_', ' ');
        work.fields = {named->name, std::string(woodNames[static_cast<std::size_t>(*wood)]), line.at("name"),
                       changed};
        work.commands.push_back(Command{Put<Recipe>{std::move(recipe)}});
        return work;
    }

private:
    Recipe startOf(const HouseBook& book, const Taxon& taxon, Wood wood, const std::string& name) const {
        for (const auto& [id, recipe] : book.all<Recipe>())
            if (recipe.taxon == taxon.id && recipe.wood == wood && recipe.name == name) return recipe;
        Recipe recipe = library().compose(taxon.name, wood);
        recipe.taxon = taxon.id;
        recipe.name = name;
        return recipe;
    }
};

} // namespace

std::vector<ListColumn> recipeColumns() {
    std::vector<ListColumn> columns{{"passed over"},
                                    {"taxon", {"plant", "species", "variety", "cultivar"}},
                                    {"wood", {"wood type"}},
                                    {"name", {"recipe"}}};
    for (const std::string& figure : recipeFigureNames()) {
        std::string spaced = figure;
        std::replace(spaced.begin(), spaced.end(), '_', ' ');
        columns.push_back({figure, {spaced}});
    }
    return columns;
}

std::unique_ptr<LineReader> recipeReader(const RecipeLibrary& library, UnknownTaxa unknown) {
    return std::make_unique<RecipeReader>(library, unknown);
}

} // namespace warmbench::season
