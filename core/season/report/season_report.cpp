#include "core/season/report/season_report.h"

#include "core/book/query.h"
#include "core/season/stock_yield.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace warmbench::season {
namespace {

bool struckIn(const Batch& batch, const ReportSpan& span) {
    return batch.state != BatchState::Planned && batch.strikeDay >= span.from && batch.strikeDay < span.to &&
           batch.strikeDay <= span.seen;
}

/// Whether a batch had ended by the day that the report is seen on.
bool endedBy(const HouseBook& book, const Batch& batch, Day seen) {
    return batch.state == BatchState::Ended && standing(book, batch, seen) == 0;
}

int pottedBy(const HouseBook& book, BatchId batch, Day day) {
    int plants = 0;
    for (const PottingId id : book.pottingsOf(batch))
        if (const Potting& potting = book.get<Potting>(id); potting.day <= day) plants += potting.plants;
    return plants;
}

TargetResult resultOf(const HouseBook& book, const Target& target, const ReportSpan& span) {
    TargetResult result;
    result.target = target.id;
    result.wanted = target.plants;
    std::map<Day, int> plants;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.target != target.id || batch.state == BatchState::Planned || batch.strikeDay >= span.to ||
            batch.strikeDay > span.seen)
            continue;
        result.struck += batch.cuttings();
        result.standing += standing(book, batch, span.seen);
        for (const PottingId potted : book.pottingsOf(id))
            if (const Potting& potting = book.get<Potting>(potted); potting.day <= span.seen)
                plants[potting.day] += potting.plants;
    }
    for (const auto& [day, count] : plants) {
        result.potted += count;
        if (day <= target.due) result.inTime += count;
        if (!result.metOn && result.potted >= target.plants) result.metOn = day;
    }
    return result;
}

std::vector<TargetResult> targetResults(const HouseBook& book, const ReportSpan& span) {
    std::set<TargetId> struckFor;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.target && struckIn(batch, span)) struckFor.insert(*batch.target);
    std::vector<TargetResult> results;
    for (const auto& [id, target] : book.all<Target>())
        if ((target.due >= span.from && target.due < span.to) || struckFor.contains(id))
            results.push_back(resultOf(book, target, span));
    std::stable_sort(results.begin(), results.end(), [&](const TargetResult& a, const TargetResult& b) {
        return book.get<Target>(a.target).due < book.get<Target>(b.target).due;
    });
    return results;
}

void addLosses(std::map<std::string, int>& lost, const HouseBook& book, const Batch& batch, Day seen) {
    for (const LossId id : book.lossesOf(batch.id))
        if (const Loss& loss = book.get<Loss>(id); loss.day <= seen && loss.cuttings > 0)
            lost[loss.reason.empty() ? pattern("no reason given") : loss.reason] += loss.cuttings;
    for (const PottingId id : book.pottingsOf(batch.id))
        if (const Potting& potting = book.get<Potting>(id); potting.day <= seen && potting.lost > 0)
            lost[pattern("without roots at potting on")] += potting.lost;
}

std::vector<GroupResult> groupResults(const HouseBook& book, const std::vector<const Batch*>& batches,
                                      const std::map<BatchId, double>& heat, Day seen) {
    std::map<std::tuple<std::string, Wood>, GroupResult> groups;
    std::map<std::tuple<std::string, Wood>, std::vector<BatchId>> ended;
    for (const Batch* batch : batches) {
        const std::tuple key(book.get<Taxon>(batch->taxon).name, batch->recipe.wood);
        GroupResult& group = groups[key];
        group.taxon = batch->taxon;
        group.wood = batch->recipe.wood;
        ++group.batches;
        group.struck += batch->cuttings();
        group.potted += pottedBy(book, batch->id, seen);
        group.standing += standing(book, *batch, seen);
        addLosses(group.lost, book, *batch, seen);
        if (!endedBy(book, *batch, seen)) continue;
        ended[key].push_back(batch->id);
        group.slotDays += slotDaysOf(book, batch->id, seen);
        if (const auto found = heat.find(batch->id); found != heat.end())
            group.kilowattHours += found->second;
        group.recipeLow += batch->recipe.takePercent.value.low / 100.0 * batch->cuttings();
        group.recipeHigh += batch->recipe.takePercent.value.high / 100.0 * batch->cuttings();
    }
    std::vector<GroupResult> results;
    for (auto& [key, group] : groups) {
        group.take = evidenceOf(book, ended[key]);
        const auto struck = static_cast<double>(group.take.take.struck);
        if (struck > 0) {
            group.recipeLow /= struck;
            group.recipeHigh /= struck;
        }
        results.push_back(std::move(group));
    }
    return results;
}

std::vector<StockResult> stockResults(const HouseBook& book, const std::vector<const Batch*>& batches,
                                      const ReportSpan& span) {
    std::map<std::tuple<std::string, Wood>, StockResult> results;
    std::map<std::tuple<std::string, Wood>, std::vector<BatchId>> ended;
    const auto resultFor = [&](const Stock& stock, Wood wood) -> StockResult& {
        StockResult& result = results[{stock.name, wood}];
        result.stock = stock.id;
        result.wood = wood;
        return result;
    };
    for (const auto& [id, stock] : book.all<Stock>())
        for (const Flush& flush : stock.flushes)
            if (const std::int64_t most = fullYield(book, stock, flush.wood, span.from, span.to - span.from);
                most > 0)
                resultFor(stock, flush.wood).couldGive = most;
    for (const Batch* batch : batches) {
        if (!batch->stock) continue;
        const Stock& stock = book.get<Stock>(*batch->stock);
        StockResult& result = resultFor(stock, batch->recipe.wood);
        result.taken += batch->cuttings();
        result.potted += pottedBy(book, batch->id, span.seen);
        if (endedBy(book, *batch, span.seen)) ended[{stock.name, batch->recipe.wood}].push_back(batch->id);
    }
    std::vector<StockResult> list;
    for (auto& [key, result] : results) {
        result.take = evidenceOf(book, ended[key]);
        list.push_back(std::move(result));
    }
    return list;
}

} // namespace

std::optional<double> GroupResult::slotDaysEach() const {
    if (take.take.rooted == 0) return std::nullopt;
    return static_cast<double>(slotDays) / static_cast<double>(take.take.rooted);
}

std::optional<double> GroupResult::kilowattHoursEach() const {
    if (take.take.rooted == 0) return std::nullopt;
    return kilowattHours / static_cast<double>(take.take.rooted);
}

std::int64_t slotDaysOf(const HouseBook& book, BatchId batch, Day seen) {
    std::int64_t slotDays = 0;
    for (const StayId id : book.staysOf(batch)) {
        const Stay& stay = book.get<Stay>(id);
        const int days = std::min(stay.to, seen + 1) - stay.from;
        if (days <= 0) continue;
        for (const Place& place : stay.places)
            slotDays += std::int64_t{days} * place.slots.height * place.slots.width;
    }
    return slotDays;
}

SeasonReport seasonReport(const HouseBook& book, const ReportSpan& span) {
    SeasonReport report;
    report.span = span;
    std::vector<const Batch*> batches;
    for (const auto& [id, batch] : book.all<Batch>())
        if (struckIn(batch, span)) batches.push_back(&batch);
    const HeatShares heat = heatShares(book, span);
    report.heat = heat.all;
    report.targets = targetResults(book, span);
    report.groups = groupResults(book, batches, heat.byBatch, span.seen);
    report.stocks = stockResults(book, batches, span);
    for (const GroupResult& group : report.groups) {
        report.struck += group.struck;
        report.potted += group.potted;
        report.standing += group.standing;
        for (const auto& [reason, cuttings] : group.lost) report.lost += cuttings;
        report.slotDays += group.slotDays;
        report.pottedOfEnded += static_cast<int>(group.take.take.rooted);
        report.kilowattHoursOfEnded += group.kilowattHours;
    }
    return report;
}

} // namespace warmbench::season
