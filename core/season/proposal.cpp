#include "core/season/proposal.h"

#include "core/book/query.h"
#include "core/quantity/decimal.h"
#include "core/season/planned_again.h"

#include <algorithm>
#include <cmath>
#include <set>

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

Stay stayFrom(const planner::PlacedStay& placed, const MonthProblem& month, Stage stage, const Batch& batch) {
    Stay stay;
    stay.batch = batch.id;
    stay.stage = stage;
    stay.zone = month.zones[static_cast<std::size_t>(placed.zone)];
    stay.from = month.from + placed.from;
    stay.to = month.from + placed.to;
    for (std::size_t i = 0; i < std::min(placed.slots.size(), batch.containers.size()); ++i)
        stay.places.push_back({batch.containers[i].number, placed.slots[i]});
    return stay;
}

std::vector<SlotRect> sortedSlots(const Stay& stay) {
    std::vector<SlotRect> slots;
    for (const Place& place : stay.places) slots.push_back(place.slots);
    std::sort(slots.begin(), slots.end());
    return slots;
}

/// A stay on the slots on which it stood before keeps each container on its own. Whether all stand as before,
/// but for the day on which the last one ends.
bool keepPlaces(std::vector<Stay>& stays, const std::vector<const Stay*>& before) {
    bool kept = stays.size() == before.size();
    for (std::size_t i = 0; i < std::min(stays.size(), before.size()); ++i) {
        const bool sameSlots =
            stays[i].zone == before[i]->zone && sortedSlots(stays[i]) == sortedSlots(*before[i]);
        if (sameSlots) stays[i].places = before[i]->places;
        kept = kept && sameSlots && stays[i].from == before[i]->from;
    }
    return kept;
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

/// The batch of a part, with its code and id where it is in the book already.
Batch batchOf(const HouseBook& book, const BatchPart& part, Day strikeDay) {
    Batch batch;
    if (part.again) {
        batch = book.get<Batch>(*part.again);
    } else {
        batch.taxon = book.get<Target>(*part.target).taxon;
        batch.recipe = part.way.recipe;
        batch.stock = part.stock;
        batch.target = part.target;
        batch.containerType = part.containerType;
        batch.containers = fill(part.cuttings, part.containers);
    }
    batch.strikeDay = strikeDay;
    return batch;
}

/// Why a batch does not stand where it was planned to.
Phrase whyMoved(const MonthProblem& month, const planner::Batch& planned) {
    const auto& previous = planned.previous;
    if (!previous || previous->empty() || previous->front().from < planned.strikeFirst ||
        previous->front().from > planned.strikeLast)
        return phrase("it can no longer be struck or stand as it was planned");
    const int day = previous->front().from;
    const std::vector<std::int64_t>& hands = month.problem.strikeCapacity;
    if (!hands.empty() && hands[static_cast<std::size_t>(day) % hands.size()] < planned.cuttings)
        return phrase("hands are short on %1", month.from + day);
    // Warm enough still, and rooted by the day on which it was to be weaned.
    const planner::Zone& zone = month.problem.zones[static_cast<std::size_t>(previous->front().zone)];
    const planner::StayRule& rooting = planned.stays.front();
    bool isAsWarm = false;
    for (int state = -1; state < static_cast<int>(zone.setPoints.size()); ++state) {
        const std::int64_t warmth = planner::rootZone(zone, state, day);
        const auto length = planner::stayLength(rooting.duration, zone, state, day);
        const bool isInTime = length && (previous->size() < 2 || day + *length == (*previous)[1].from);
        isAsWarm = isAsWarm || (isInTime && warmth >= rooting.low && warmth <= rooting.high);
    }
    if (!isAsWarm) return phrase("it is colder or warmer now where it was");
    return phrase("that costs less than where it was");
}

StrikeLine lineFrom(const HouseBook& book, const MonthProblem& month, const planner::Answer& answer,
                    const planner::PlacedBatch& placed) {
    const BatchPart& part = month.partOf(placed.batch);
    StrikeLine line;
    line.id = part.id;
    line.batch = batchOf(book, part, month.from + placed.strikeDay);
    for (std::size_t i = 0; i < placed.stays.size(); ++i)
        line.stays.push_back(stayFrom(placed.stays[i], month, stageOf(i, part.way.recipe), line.batch));
    if (part.again) {
        const Batch& before = book.get<Batch>(*part.again);
        line.change =
            keepPlaces(line.stays, staysInOrder(book, before.id)) ? LineChange::Kept : LineChange::Moved;
        if (line.change == LineChange::Moved && canStayAsPlanned(book, before, month.from))
            line.moved = whyMoved(month, month.problem.batches[static_cast<std::size_t>(placed.batch)]);
    }
    line.setPoint = setPointOf(month.problem, answer, placed.stays.front().zone, placed.strikeDay);
    line.late = part.target && line.stays.back().to > book.get<Target>(*part.target).due;
    return line;
}

/// What one plant would have to be worth for a place of its batch to pay.
Phrase worthHint(const HouseBook& book, const MonthProblem& month, const planner::UnplacedBatch& unplaced) {
    const BatchPart& part = month.partOf(unplaced.batch);
    if (unplaced.dearerThanValue == 0 || !part.target) return {};
    const Target& target = book.get<Target>(*part.target);
    const std::int64_t value = 10 * month.problem.batches[static_cast<std::size_t>(unplaced.batch)].value;
    if (value <= 0)
        return phrase("a place for it never pays while “One is worth” of target %1 is 0", target.name);
    const std::int64_t worth = target.worth.parts * unplaced.dearerThanValue / value + 1;
    return phrase("it would have a place if “One is worth” of target %1 were %2 in place of %3", target.name,
                  decimalText(worth, 2), decimal(target.worth));
}

/// Says once what holds for several batches of one target: their cuttings together, and of how many it is.
std::vector<NotPlaced> saidOnce(const std::vector<NotPlaced>& all) {
    std::vector<NotPlaced> said;
    std::vector<std::int64_t> batches;
    for (const NotPlaced& one : all) {
        const auto same = std::find_if(said.begin(), said.end(), [&](const NotPlaced& other) {
            return !one.planned && !other.planned && one.target == other.target && one.why == other.why &&
                   one.hint == other.hint;
        });
        if (same == said.end()) {
            said.push_back(one);
            batches.push_back(1);
            continue;
        }
        same->cuttings += one.cuttings;
        ++batches[static_cast<std::size_t>(same - said.begin())];
    }
    for (std::size_t i = 0; i < said.size(); ++i)
        if (batches[i] > 1) said[i].why = phrase("each of %1 batches: %2", batches[i], said[i].why.text());
    return said;
}

} // namespace

Proposal proposalFrom(const HouseBook& book, const MonthProblem& month, const planner::Answer& answer,
                      const std::vector<planner::Compromise>& compromises) {
    Proposal proposal;
    proposal.from = month.from;
    proposal.strikeDays = month.strikeDays;
    proposal.cost = answer.cost;
    proposal.bound = answer.bound;
    proposal.cuttingsWanted = month.cuttingsWanted();
    for (const planner::PlacedBatch& placed : answer.placed) {
        if (static_cast<std::size_t>(placed.batch) < month.firstPart) continue;
        proposal.lines.push_back(lineFrom(book, month, answer, placed));
        for (const planner::Compromise& one : compromises)
            if (one.batch == placed.batch) proposal.lines.back().why.push_back(one.reason);
        proposal.cuttingsPlaced += proposal.lines.back().batch.cuttings();
        proposal.materials.add(book, proposal.lines.back().batch);
    }
    std::stable_sort(proposal.lines.begin(), proposal.lines.end(),
                     [](const StrikeLine& a, const StrikeLine& b) {
                         return std::make_tuple(a.batch.strikeDay, a.stays.front().zone) <
                                std::make_tuple(b.batch.strikeDay, b.stays.front().zone);
                     });
    const auto plannedBefore = [&](std::optional<BatchId> again) {
        return again ? std::optional<Batch>(book.get<Batch>(*again)) : std::optional<Batch>();
    };
    for (const planner::UnplacedBatch& unplaced : answer.unplaced) {
        const BatchPart& part = month.partOf(unplaced.batch);
        proposal.notPlaced.push_back({part.target, plannedBefore(part.again), part.cuttings, unplaced.reason,
                                      worthHint(book, month, unplaced)});
    }
    proposal.notPlaced = saidOnce(proposal.notPlaced);
    for (const Shortfall& shortfall : month.shortfalls)
        proposal.notPlaced.push_back(
            {shortfall.target, plannedBefore(shortfall.again), shortfall.cuttings, shortfall.why, {}});
    for (const TargetNeed& need : month.needs)
        if (need.missing > 0 && !need.way) proposal.waiting.push_back(need);
    std::stable_sort(proposal.waiting.begin(), proposal.waiting.end(),
                     [](const TargetNeed& a, const TargetNeed& b) {
                         if (!a.ahead || !b.ahead) return a.ahead && !b.ahead;
                         return a.ahead->whole.first < b.ahead->whole.first;
                     });
    for (const auto& [id, end] : month.early) {
        proposal.early.push_back(book.get<Stay>(id));
        proposal.early.back().to = end;
    }
    for (std::size_t zone = 0; zone < month.zones.size(); ++zone) {
        if (!book.get<Zone>(month.zones[zone]).matDuring(month.from, month.from + month.problem.days))
            continue;
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

std::string title(const HouseBook& book, const NotPlaced& one) {
    std::string words;
    if (one.planned) words = one.planned->code;
    if (one.target) words += (words.empty() ? "" : " for ") + book.get<Target>(*one.target).name;
    const TaxonId taxon = one.planned ? one.planned->taxon : book.get<Target>(*one.target).taxon;
    return words + ", " + book.get<Taxon>(taxon).name;
}

Phrase Proposal::quality() const {
    if (bound <= 0 || cost.total() <= 0) return {};
    // Rounded up, so that it is never better than the truth.
    const std::int64_t permille = ((cost.total() - bound) * 1000 + bound - 1) / bound;
    if (permille == 0) return phrase("the best possible");
    return phrase("at most %1 % from the best possible", decimalText(permille, 1));
}

std::size_t Proposal::changes() const {
    return static_cast<std::size_t>(std::count_if(
        lines.begin(), lines.end(), [](const StrikeLine& line) { return line.change != LineChange::Kept; }));
}

Proposal Proposal::only(const HouseBook& book, const std::vector<bool>& taken) const {
    Proposal some = *this;
    some.lines.clear();
    some.notPlaced.clear();
    std::set<ZoneId> leftAlone;
    const auto leaveAlone = [&](BatchId batch) {
        for (const StayId stay : book.staysOf(batch)) leftAlone.insert(book.get<Stay>(stay).zone);
    };
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (taken[i])
            some.lines.push_back(lines[i]);
        else if (lines[i].change != LineChange::New)
            leaveAlone(lines[i].batch.id);
    }
    for (std::size_t i = 0; i < notPlaced.size(); ++i) {
        if (taken[lines.size() + i])
            some.notPlaced.push_back(notPlaced[i]);
        else if (notPlaced[i].planned)
            leaveAlone(notPlaced[i].planned->id);
    }
    for (const StrikeLine& line : some.lines)
        for (const Stay& stay : line.stays) leftAlone.erase(stay.zone);
    std::erase_if(some.mats, [&](const auto& mat) { return leftAlone.contains(mat.first); });
    return some;
}

Command Proposal::command() const {
    Group group;
    group.label = phrase("Accept the plan from %1 to %2", from, from + (strikeDays - 1)).text();
    for (const Stay& stay : early)
        group.commands.push_back(Command{MoveStay{stay.id, stay.zone, stay.from, stay.to, stay.places}});
    for (const NotPlaced& one : notPlaced)
        if (one.planned)
            group.commands.push_back(Command{PlanBatch{one.planned->id, one.planned->strikeDay, {}}});
    for (const StrikeLine& line : lines) {
        if (line.change == LineChange::New)
            group.commands.push_back(Command{AddBatch{line.batch, line.stays}});
        else
            group.commands.push_back(Command{PlanBatch{line.batch.id, line.batch.strikeDay, line.stays}});
    }
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
