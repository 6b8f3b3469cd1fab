#include "core/season/day_work.h"

#include "core/book/query.h"
#include "core/crop/recipe_figures.h"

#include <algorithm>
#include <tuple>

namespace warmbench::season {
namespace {

Phrase lookForIn(const Recipe& recipe) {
    std::vector<Phrase> words{phrase("%1 long", valueText(recipe.cuttingLength.value))};
    if (recipe.nodes.value)
        words.push_back(
            phrase(*recipe.nodes.value == 1 ? pattern("%1 node") : pattern("%1 nodes"), *recipe.nodes.value));
    if (recipe.tipRemoved.value) words.push_back(phrase("tip removed"));
    return phrase("%1", words);
}

void addTaking(std::vector<Taking>& takings, const Batch& batch) {
    const auto same = std::find_if(takings.begin(), takings.end(), [&](const Taking& one) {
        return one.stock == batch.stock && one.taxon == batch.taxon && one.wood == batch.recipe.wood;
    });
    if (same == takings.end())
        takings.push_back(
            {batch.stock, batch.taxon, batch.recipe.wood, batch.cuttings(), lookForIn(batch.recipe)});
    else
        same->cuttings += batch.cuttings();
}

void addStrikes(DayWork& work, const HouseBook& book) {
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned && batch.strikeDay <= work.day) work.strikes.push_back(id);
    std::sort(work.strikes.begin(), work.strikes.end(), [&](BatchId a, BatchId b) {
        const Batch& one = book.get<Batch>(a);
        const Batch& other = book.get<Batch>(b);
        return std::tie(one.strikeDay, one.code) < std::tie(other.strikeDay, other.code);
    });
    for (const BatchId id : work.strikes) {
        const Batch& batch = book.get<Batch>(id);
        addTaking(work.takings, batch);
        work.materials.add(book, batch);
        for (const Hazard hazard : hazardsOfStriking(batch.recipe)) work.hazards.insert(hazard);
    }
}

void addMats(DayWork& work, const HouseBook& book) {
    for (const auto& [id, zone] : book.all<Zone>()) {
        if (!zone.mat) continue;
        const auto before = setPointOn(book, id, work.day - 1);
        const auto now = setPointOn(book, id, work.day);
        if (before != now) work.mats.push_back({id, before, now});
    }
    if (!work.mats.empty()) work.hazards.insert(Hazard::ElectricHeat);
}

void addHazardsOfWalk(DayWork& work, const HouseBook& book) {
    std::vector<Cover> covers;
    bool heated = false;
    for (const round::Stop& stop : work.stops) {
        covers.push_back(book.get<Zone>(stop.zone).cover);
        heated = heated || book.get<Zone>(stop.zone).mat.has_value();
    }
    if (covers.empty()) return;
    for (const Hazard hazard : hazardsOfRound(covers, heated)) work.hazards.insert(hazard);
}

} // namespace

DayWork dayWork(const HouseBook& book, const forecast::BookForecast& forecast) {
    DayWork work;
    work.day = forecast.day();
    addStrikes(work, book);
    work.stops = round::roundOn(book, forecast);
    std::erase_if(work.stops, [](const round::Stop& stop) { return stop.found.has_value(); });
    work.due = round::dueOn(book, forecast);
    addMats(work, book);
    for (const auto& [id, outlook] : forecast.batches())
        if (outlook.slip() >= forecast::slipThatMatters) work.behind.push_back(id);
    for (const auto& [id, stay] : book.all<Stay>()) {
        if (work.day < stay.from || work.day >= stay.to ||
            book.get<Batch>(stay.batch).state != BatchState::Struck)
            continue;
        for (const Trouble& trouble : troublesOn(book, stay, work.day))
            work.troubles.push_back({id, trouble});
    }
    addHazardsOfWalk(work, book);
    return work;
}

} // namespace warmbench::season
