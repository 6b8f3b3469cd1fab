#include "core/season/list/line_reader.h"

namespace warmbench::season {
namespace {

/// Days to regrow of a flush of which none are given: it is picked once a season.
constexpr int onceASeason = 365;

/// `05-10`, or a date of whatever year.
std::optional<MonthDay> dayOfYear(const std::string& cell, exchange::DateOrder order) {
    if (const auto day = MonthDay::fromIso(cell)) return day;
    if (const auto day = dayIn(cell, order)) return MonthDay::fromIso(day->iso().substr(5));
    return std::nullopt;
}

class StockReader : public LineReader {
public:
    using LineReader::LineReader;

    Result<LineWork> read(const Line& line, const HouseBook& book) override {
        LineWork work;
        const auto named = taxon(line, book, work.commands);
        if (!named) return named.refusal();
        Stock stock;
        stock.taxon = named->id;
        stock.name = line.has("name") ? line.at("name") : named->name;
        if (const Stock* known = ofList(book, stock.name)) {
            stock = *known;
            if (stock.taxon != named->id)
                return Refusal{stock.name, phrase("a line before is of another taxon")};
            if (!line.has("wood"))
                return Refusal{"wood", phrase("none is given, and the stock is in a line before")};
        } else {
            for (const auto& [id, other] : book.all<Stock>())
                if (other.name == stock.name)
                    return Refusal{stock.name, phrase("the book has a stock of that name already")};
            const auto plants = line.count("plants");
            if (!plants) return plants.refusal();
            stock.plants = *plants;
        }
        if (line.has("place")) stock.place = line.at("place");
        if (line.has("health")) stock.health = line.at("health");
        std::string season;
        int perPlant = 0;
        if (line.has("wood")) {
            const auto flush = flushOf(line);
            if (!flush) return flush.refusal();
            stock.flushes.push_back(*flush);
            season = flush->season.from.iso() + " to " + flush->season.to.iso();
            perPlant = flush->cuttingsPerPlant;
        }
        const StockId id = stock.id == StockId{} ? book.nextId<Stock>() : stock.id;
        work.fields = {named->name, stock.name, stock.plants, line.at("wood"), season, perPlant};
        work.commands.push_back(Command{Put<Stock>{stock}});
        m_ofList.insert_or_assign(stock.name, id);
        return work;
    }

private:
    /// The stock that lines before have put in.
    [[nodiscard]] const Stock* ofList(const HouseBook& book, const std::string& name) const {
        const auto known = m_ofList.find(name);
        const Stock* stock = known == m_ofList.end() ? nullptr : book.find<Stock>(known->second);
        return stock && stock->name == name ? stock : nullptr;
    }
    static Result<Flush> flushOf(const Line& line) {
        Flush flush;
        const auto wood = line.wood();
        if (!wood) return wood.refusal();
        flush.wood = *wood;
        for (const auto& [column, day] :
             {std::pair("from", &flush.season.from), std::pair("to", &flush.season.to)}) {
            const auto read = dayOfYear(line.at(column), line.order());
            if (!read)
                return Refusal{column,
                               phrase("found '%1', expected a day of the flush's season, such as 05-10",
                                      line.at(column))};
            *day = *read;
        }
        const auto cuttings = line.count("cuttings");
        if (!cuttings) return cuttings.refusal();
        flush.cuttingsPerPlant = *cuttings;
        const auto regrowth = line.has("regrowth") ? line.count("regrowth") : Result<int>(onceASeason);
        if (!regrowth) return regrowth.refusal();
        flush.regrowthDays = *regrowth;
        return flush;
    }

    std::map<std::string, StockId> m_ofList;
};

} // namespace

std::vector<ListColumn> stockColumns() {
    return {{"passed over"},
            {"taxon", {"plant", "species", "variety", "cultivar"}},
            {"name", {"stock"}},
            {"plants", {"number", "quantity", "stock plants"}},
            {"place", {"where"}},
            {"wood", {"wood type"}},
            {"from", {"season from"}},
            {"to", {"season to", "until"}},
            {"cuttings", {"cuttings a plant", "cuttings per plant"}},
            {"regrowth", {"regrowth days", "days to regrow"}},
            {"health", {"note", "notes", "comment"}}};
}

std::unique_ptr<LineReader> stockReader(const RecipeLibrary& library, UnknownTaxa unknown) {
    return std::make_unique<StockReader>(library, unknown);
}

} // namespace warmbench::season
