#include "core/season/proposal.h"

#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"
#include "core/quantity/decimal.h"

#include <algorithm>
#include <cmath>

namespace warmbench::season {
namespace {

/// Spreads cuttings over containers, the first ones full.
std::vector<BatchContainer> fill(std::int64_t cuttings, int containers) {
    std::vector<BatchContainer> filled;
    const std::int64_t each = (cuttings + containers - 1) / containers;
    for (int number = 1; cuttings > 0; ++number) {
        const std::int64_t put = std::min(each, cuttings);
        filled.push_back({number, static_cast<int>(put)});
        cuttings -= put;
    }
    return filled;
}

Stage stageOf(std::size_t stay, const Recipe& recipe) {
    if (stay == 0) return Stage::Rooting;
    return recipe.weanDays.value > 0 ? Stage::Weaning : Stage::GrowingOn;
}

Stay stayFrom(const planner::PlacedStay& placed, const MonthProblem& month, Stage stage,
              std::size_t containers) {
    Stay stay;
    stay.stage = stage;
    stay.zone = month.zones[static_cast<std::size_t>(placed.zone)];
    stay.from = month.from + placed.from;
    stay.to = month.from + placed.to;
    for (std::size_t i = 0; i < std::min(placed.slots.size(), containers); ++i)
        stay.places.push_back({static_cast<int>(i) + 1, placed.slots[i]});
    return stay;
}

std::optional<Celsius> setPointOf(const planner::Problem& problem, const planner::Answer& answer, int zone,
                                  int day) {
    for (const planner::ZoneRuns& runs : answer.mats)
        if (runs.zone == zone)
            for (const planner::MatRun& run : runs.runs)
                if (run.from <= day && day < run.to)
                    return Celsius{problem.zones[static_cast<std::size_t>(zone)]
                                       .setPoints[static_cast<std::size_t>(run.setPoint)]
                                       .tenths};
    return std::nullopt;
}

StrikeLine lineFrom(const HouseBook& book, const MonthProblem& month, const planner::Answer& answer,
                    const planner::PlacedBatch& placed) {
    const BatchPart& part = month.parts[static_cast<std::size_t>(placed.batch) - month.firstPart];
    const Way& way = month.wayOf(part);
    StrikeLine line;
    line.id = part.id;
    line.target = month.needs[part.need].target;
    line.stock = part.stock;
    line.batch.taxon = book.get<Target>(line.target).taxon;
    line.batch.recipe = way.recipe;
    line.batch.stock = part.stock;
    line.batch.target = line.target;
    line.batch.strikeDay = month.from + placed.strikeDay;
    line.batch.containerType = part.containerType;
    line.batch.containers = fill(part.cuttings, part.containers);
    for (std::size_t i = 0; i < placed.stays.size(); ++i)
        line.stays.push_back(
            stayFrom(placed.stays[i], month, stageOf(i, way.recipe), line.batch.containers.size()));
    line.setPoint = setPointOf(month.problem, answer, placed.stays.front().zone, placed.strikeDay);
    line.late = line.stays.back().to > book.get<Target>(line.target).due;
    return line;
}

void addMaterials(Materials& materials, const HouseBook& book, const Batch& batch) {
    const ContainerType& type = book.get<ContainerType>(batch.containerType);
    const auto containers = static_cast<int>(batch.containers.size());
    materials.containers[type.name] += containers;
    const Recipe& recipe = batch.recipe;
    int parts = 0;
    for (const MediumComponent& component : recipe.medium.value) parts += component.parts;
    for (const MediumComponent& component : recipe.medium.value)
        materials.componentMillilitres[component.name] +=
            type.volume.parts * containers * component.parts / parts;
    materials.cuttingsByHormone[isWithoutHormone(recipe.hormone.value) ? "none" : hormoneText(recipe)] +=
        batch.cuttings();
}

} // namespace

Proposal proposalFrom(const HouseBook& book, const MonthProblem& month, const planner::Answer& answer) {
    Proposal proposal;
    proposal.from = month.from;
    proposal.strikeDays = month.strikeDays;
    proposal.cost = answer.cost;
    proposal.bound = answer.bound;
    proposal.cuttingsWanted = month.cuttingsWanted();
    for (const planner::PlacedBatch& placed : answer.placed) {
        if (static_cast<std::size_t>(placed.batch) < month.firstPart) continue;
        proposal.lines.push_back(lineFrom(book, month, answer, placed));
        proposal.cuttingsPlaced += proposal.lines.back().batch.cuttings();
        addMaterials(proposal.materials, book, proposal.lines.back().batch);
    }
    std::stable_sort(proposal.lines.begin(), proposal.lines.end(),
                     [](const StrikeLine& a, const StrikeLine& b) {
                         return std::make_tuple(a.batch.strikeDay, a.stays.front().zone) <
                                std::make_tuple(b.batch.strikeDay, b.stays.front().zone);
                     });
    for (const planner::UnplacedBatch& unplaced : answer.unplaced) {
        const BatchPart& part = month.parts[static_cast<std::size_t>(unplaced.batch) - month.firstPart];
        proposal.notPlaced.push_back({month.needs[part.need].target, part.cuttings, unplaced.reason});
    }
    for (const Shortfall& shortfall : month.shortfalls)
        proposal.notPlaced.push_back({shortfall.target, shortfall.cuttings, shortfall.why});
    for (std::size_t zone = 0; zone < month.zones.size(); ++zone) {
        if (!book.get<Zone>(month.zones[zone]).mat) continue;
        std::vector<MatRun> runs;
        for (const planner::ZoneRuns& found : answer.mats)
            if (found.zone == static_cast<int>(zone))
                for (const planner::MatRun& run : found.runs)
                    runs.push_back({{},
                                    month.zones[zone],
                                    month.from + run.from,
                                    month.from + run.to,
                                    Celsius{month.problem.zones[zone]
                                                .setPoints[static_cast<std::size_t>(run.setPoint)]
                                                .tenths}});
        proposal.mats.emplace_back(month.zones[zone], std::move(runs));
    }
    return proposal;
}

std::string Proposal::quality() const {
    if (bound <= 0 || cost.total() <= 0) return {};
    // Rounded up, so that it is never better than the truth.
    const std::int64_t permille = ((cost.total() - bound) * 1000 + bound - 1) / bound;
    if (permille == 0) return "the best possible";
    return "at most " + decimalText(permille, 1) + " % from the best possible";
}

Command Proposal::command() const {
    Group group;
    group.label = "Accept the plan from " + from.iso() + " to " + (from + (strikeDays - 1)).iso();
    for (const StrikeLine& line : lines) group.commands.push_back(Command{AddBatch{line.batch, line.stays}});
    // Runs reach as far as anything planned stands; before `from` nothing is touched.
    Day end = from + strikeDays;
    for (const StrikeLine& line : lines) end = std::max(end, line.stays.back().to);
    for (const auto& [zone, runs] : mats) {
        Day last = end;
        for (const MatRun& run : runs) last = std::max(last, run.to);
        group.commands.push_back(Command{SetMatRuns{zone, from, last, runs}});
    }
    return Command{group};
}

} // namespace warmbench::season
