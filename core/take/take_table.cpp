#include "core/take/take_table.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "core/crop/recipe_figures.h"

#include <algorithm>
#include <map>
#include <set>

namespace warmbench::take {
namespace {

/// Groups in order: months of the year by their number, all else by name.
std::string orderOf(const Batch& batch, const std::string& group, Grouping grouping) {
    if (grouping != Grouping::Month) return group;
    return std::string(1, static_cast<char>('a' + batch.strikeDay.month()));
}

void addRecipe(TakeRow& row, const Batch& batch) {
    const auto& figure = batch.recipe.takePercent;
    // Sums for now; the caller divides them by the cuttings.
    row.recipeLow += figure.value.low / 100.0 * batch.cuttings();
    row.recipeHigh += figure.value.high / 100.0 * batch.cuttings();
    if (std::find(row.sources.begin(), row.sources.end(), figure.source) == row.sources.end())
        row.sources.push_back(figure.source);
}

} // namespace

std::optional<Grouping> groupingFromName(std::string_view name) {
    for (std::size_t i = 0; i < groupingNames.size(); ++i)
        if (name == groupingNames[i]) return static_cast<Grouping>(i);
    return std::nullopt;
}

rooting::Take takeOf(const HouseBook& book, const Batch& batch) {
    return {pottedOn(book, batch.id), batch.cuttings()};
}

std::string groupOf(const HouseBook& book, const Batch& batch, Grouping grouping) {
    const Recipe& recipe = batch.recipe;
    switch (grouping) {
    case Grouping::Taxon:
        return book.get<Taxon>(batch.taxon).name;
    case Grouping::Wood:
        return woodNames[static_cast<std::size_t>(recipe.wood)];
    case Grouping::Stock:
        return batch.stock ? book.get<Stock>(*batch.stock).name : pattern("no stock named");
    case Grouping::Hormone:
        return hormoneText(recipe);
    case Grouping::Medium:
        return valueText(recipe.medium.value);
    case Grouping::Heat: {
        // Where its containers were struck apart, all their heats, coolest first.
        std::set<std::optional<Celsius>> heats;
        for (const ZoneId zone : zonesOn(book, batch.id, batch.strikeDay))
            heats.insert(setPointOn(book, zone, batch.strikeDay));
        std::string words;
        for (const auto& heat : heats)
            words += (words.empty() ? "" : " and ") + (heat ? valueText(*heat) : pattern("no mat running"));
        return words.empty() ? "no mat running" : words;
    }
    case Grouping::Month:
        return monthNames[batch.strikeDay.month() - 1];
    }
    return {};
}

std::vector<TakeRow> takeTable(const HouseBook& book, Grouping grouping, double level, Day from, Day to) {
    std::map<std::string, TakeRow> rows;
    std::vector<const Batch*> ended;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Ended && batch.strikeDay >= from && batch.strikeDay <= to)
            ended.push_back(&batch);
    std::stable_sort(ended.begin(), ended.end(),
                     [](const Batch* a, const Batch* b) { return a->strikeDay < b->strikeDay; });
    for (const Batch* batch : ended) {
        const std::string group = groupOf(book, *batch, grouping);
        TakeRow& row = rows[orderOf(*batch, group, grouping)];
        if (row.batches.empty()) row.take = {0, 0};
        row.group = group;
        row.batches.push_back(batch->id);
        const rooting::Take take = takeOf(book, *batch);
        row.take.rooted += take.rooted;
        row.take.struck += take.struck;
        addRecipe(row, *batch);
    }
    std::vector<TakeRow> found;
    for (auto& [order, row] : rows) {
        row.recipeLow /= static_cast<double>(row.take.struck);
        row.recipeHigh /= static_cast<double>(row.take.struck);
        row.interval = rooting::wilsonInterval(row.take, level);
        found.push_back(std::move(row));
    }
    return found;
}

} // namespace warmbench::take
