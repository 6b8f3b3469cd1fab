#include "core/crop/library/taxon_name.h"
#include "core/season/list/line_reader.h"
#include "core/season/need.h"

namespace warmbench::season {
namespace {

class ResultReader : public LineReader {
public:
    using LineReader::LineReader;

    Result<LineWork> read(const Line& line, const HouseBook& book) override {
        LineWork work;
        const auto named = taxon(line, book, work.commands);
        if (!named) return named.refusal();
        const auto wood = line.wood();
        if (!wood) return wood.refusal();
        const auto struck = line.day("struck");
        if (!struck) return struck.refusal();
        const auto potted = line.day("potted on");
        if (!potted) return potted.refusal();
        const auto cuttings = line.count("cuttings");
        if (!cuttings) return cuttings.refusal();
        const auto plants = line.count("plants", 0);
        if (!plants) return plants.refusal();
        if (*plants > *cuttings)
            return Refusal{"plants",
                           phrase("%1 of %2 cuttings, expected at most as many", *plants, *cuttings)};
        auto recipe = recipeOf(line, book, *named, *wood);
        if (!recipe) return recipe.refusal();
        const auto container = containerFor(book, *recipe);
        if (!container) return container.refusal();

        Batch batch;
        batch.code = line.at("batch");
        batch.taxon = named->id;
        batch.recipe = std::move(*recipe);
        batch.strikeDay = *struck;
        batch.containerType = *container;
        batch.containers = {{1, *cuttings}};
        batch.state = BatchState::Struck;
        batch.note = line.at("note");
        if (line.has("stock")) {
            const auto stock = stockOf(line.at("stock"), book, *named);
            if (!stock) return stock.refusal();
            batch.stock = *stock;
        }
        work.fields = {named->name, line.at("wood"), *struck, *cuttings, *plants, *potted, line.at("stock")};
        work.commands.push_back(Command{AddBatch{std::move(batch), {}}});
        work.commands.push_back(
            Command{PotOn{book.nextId<Batch>(), *potted, {{1, *plants, *cuttings - *plants}}, {}}});
        return work;
    }

private:
    Result<Recipe> recipeOf(const Line& line, const HouseBook& book, const Taxon& taxon, Wood wood) const {
        std::optional<Recipe> found;
        for (Recipe& recipe : recipesFor(book, library(), taxon, wood))
            if (!found && recipe.wood == wood && (!line.has("recipe") || recipe.name == line.at("recipe")))
                found = std::move(recipe);
        if (!found && line.has("recipe"))
            return Refusal{line.at("recipe"), phrase("the book has no such recipe of %1", taxon.name)};
        if (!found) {
            found = library().compose(taxon.name, wood);
            found->taxon = taxon.id;
        }
        if (line.has("hormone")) found->hormone = {line.at("hormone"), ownFigure};
        return *found;
    }

    /// The kind that the recipe names, else any: it stands nowhere.
    static Result<ContainerTypeId> containerFor(const HouseBook& book, const Recipe& recipe) {
        if (book.all<ContainerType>().empty())
            return Refusal{
                "", phrase("the book has no kind of container yet, in which it could have been struck")};
        for (const auto& [id, type] : book.all<ContainerType>())
            if (nameKey(type.name) == nameKey(recipe.container.value)) return id;
        return book.all<ContainerType>().begin()->first;
    }

    static Result<StockId> stockOf(const std::string& name, const HouseBook& book, const Taxon& taxon) {
        for (const auto& [id, stock] : book.all<Stock>())
            if (stock.name == name && stock.taxon == taxon.id) return id;
        return Refusal{name, phrase("the book has no such stock of %1", taxon.name)};
    }
};

} // namespace

std::vector<ListColumn> resultColumns() {
    return {{"passed over"},
            {"taxon", {"plant", "species", "variety", "cultivar"}},
            {"wood", {"wood type"}},
            {"struck", {"strike date", "date struck", "struck on"}},
            {"cuttings", {"number", "quantity", "struck cuttings"}},
            {"plants", {"rooted", "potted"}},
            {"potted on", {"date potted", "potted on on", "ended"}},
            {"stock", {}},
            {"hormone", {}},
            {"recipe", {}},
            {"batch", {"code"}},
            {"note", {"notes", "comment"}}};
}

std::unique_ptr<LineReader> resultReader(const RecipeLibrary& library, UnknownTaxa unknown) {
    return std::make_unique<ResultReader>(library, unknown);
}

} // namespace warmbench::season
