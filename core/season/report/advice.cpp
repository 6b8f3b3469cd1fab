#include "core/season/report/advice.h"

#include "core/book/query.h"
#include "core/quantity/decimal.h"
#include "core/rooting/prior/recipe_prior.h"
#include "core/rooting/strike_count.h"
#include "core/take/own_figures.h"
#include "core/take/trial.h"

#include <algorithm>
#include <cmath>

namespace warmbench::season {
namespace {

std::string subjectOf(const HouseBook& book, TaxonId taxon, Wood wood) {
    return book.get<Taxon>(taxon).name + ", " + woodNames[static_cast<std::size_t>(wood)];
}

/// Whether an interval leaves out no difference.
bool differs(const rooting::Interval& interval) {
    return interval.low > 0 || interval.high < 0;
}

std::string percentText(double share) {
    return std::to_string(std::lround(100 * share));
}

/// What is to be struck for a target another year by her own figures; nothing where she has none.
std::optional<std::string> toStrike(const HouseBook& book, const Target& target) {
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.target != target.id || batch.state == BatchState::Planned) continue;
        const auto own = take::ownFigures(book, batch.recipe);
        if (!own || own->takePercent.low <= 0 || own->takePercent.high >= 100 ||
            own->takePercent.low >= own->takePercent.high)
            continue;
        const auto law = rooting::betaByPoints(own->takePercent.low / 100.0, own->takePercent.high / 100.0);
        const auto count = rooting::strikeCount(target.plants, book.nursery().surenessPermille / 1000.0, law);
        if (!count) continue;
        return phrase(
                   "by her own take of %1 to %2 % (of the next batch, 8 times in 10; %3 so far) %4 cuttings "
                   "would have been struck for %5 plants",
                   own->takePercent.low, own->takePercent.high, batchesWords(own->batches.size()),
                   count->strike, target.plants)
            .text();
    }
    return std::nullopt;
}

std::string cameOf(const TargetResult& result) {
    return phrase(result.struck == 1 ? pattern("%1 of %2 came of %3 cutting")
                                     : pattern("%1 of %2 came of %3 cuttings"),
                  result.potted, result.wanted, result.struck)
        .text();
}

void adviseOnTarget(std::vector<Advice>& list, const HouseBook& book, const TargetResult& result, Day seen) {
    const Target& target = book.get<Target>(result.target);
    if (target.due > seen) return;
    Advice advice{AdviceKind::Target, target.name + ", " + book.get<Taxon>(target.taxon).name, {}, {}, false};
    if (result.met()) {
        const int late = *result.metOn - target.due;
        if (late <= 0) return;
        advice.what =
            (late == 1 ? phrase("strike it 1 day earlier") : phrase("strike it %1 days earlier", late))
                .text();
        advice.evidence =
            phrase("all %1 were potted on by %2, wanted by %3", result.wanted, *result.metOn, target.due)
                .text();
    } else if (result.struck == 0) {
        advice.what = phrase("plan it in its season").text();
        advice.evidence = phrase("nothing was struck for it").text();
    } else if (const auto words = toStrike(book, target)) {
        advice.what = phrase("strike more").text();
        advice.evidence = cameOf(result) + "; " + *words;
    } else {
        advice.what = phrase("strike more, once a batch has ended and tells how many").text();
        advice.evidence = cameOf(result);
        advice.thin = true;
    }
    list.push_back(std::move(advice));
}

void adviseOnTake(std::vector<Advice>& list, const HouseBook& book, const GroupResult& group) {
    if (group.take.batches.empty()) return;
    const double share = group.take.take.share();
    if (share >= group.recipeLow && share <= group.recipeHigh) return;
    const std::string recipe = percentText(group.recipeLow) + " to " + percentText(group.recipeHigh) + " %";
    Advice advice{AdviceKind::Take, subjectOf(book, group.taxon, group.wood), {}, group.take.words(), false};
    const bool outside =
        group.take.interval.high < group.recipeLow || group.take.interval.low > group.recipeHigh;
    advice.thin = group.take.thin() || !outside;
    if (advice.thin)
        advice.what = phrase("leave the recipe's take of %1 as it is", recipe).text();
    else
        advice.what = phrase("reckon with %1 on average, not with the recipe's %2",
                             percentWords(group.take.interval), recipe)
                          .text();
    if (!outside)
        advice.evidence += "; " + phrase("the recipe may still be right").text();
    else if (group.take.thin())
        advice.evidence += "; " + phrase("fewer than %1 batches have ended", fewestBatches).text();
    list.push_back(std::move(advice));
}

void adviseOnTrials(std::vector<Advice>& list, const HouseBook& book, const ReportSpan& span) {
    std::vector<take::Trial> trials = take::trialsIn(book);
    std::erase_if(trials, [&](const take::Trial& trial) {
        const Day day = book.get<Batch>(trial.first.front()).strikeDay;
        return day < span.from || day >= span.to || day > span.seen;
    });
    for (const take::Trial& trial : trials) {
        const Evidence first = evidenceOf(book, trial.first);
        const Evidence second = evidenceOf(book, trial.second);
        const rooting::Interval difference = differenceOf(first, second);
        const Batch& batch = book.get<Batch>(trial.first.front());
        const bool firstBetter = difference.low + difference.high > 0;
        const std::string& better = firstBetter ? trial.firstWay : trial.secondWay;
        const std::string& worse = firstBetter ? trial.secondWay : trial.firstWay;
        Advice advice{AdviceKind::Way, subjectOf(book, batch.taxon, batch.recipe.wood), {}, {}, false};
        // One batch may be better than another by itself; a way shows in several.
        const bool repeated = trial.first.size() > 1 && trial.second.size() > 1;
        advice.thin = !differs(difference) || !repeated;
        advice.what = (advice.thin ? phrase("try %1 against %2 again", better, worse)
                                   : phrase("strike with %1 rather than %2", better, worse))
                          .text();
        advice.evidence =
            phrase("%1: %2. %3: %4. Difference %5 to %6 points", trial.firstWay, first.words(),
                   trial.secondWay, second.words(), percentText(difference.low), percentText(difference.high))
                .text();
        if (trials.size() > 1)
            advice.evidence +=
                "; " +
                phrase("%1 pairs were compared, and 1 in 20 differs by chance alone", trials.size()).text();
        list.push_back(std::move(advice));
    }
}

/// The batches of all other stocks of the same taxon and wood.
Evidence othersThan(const HouseBook& book, const SeasonReport& report, const StockResult& one) {
    std::vector<BatchId> batches;
    const TaxonId taxon = book.get<Stock>(one.stock).taxon;
    for (const StockResult& other : report.stocks)
        if (other.stock != one.stock && other.wood == one.wood && book.get<Stock>(other.stock).taxon == taxon)
            batches.insert(batches.end(), other.take.batches.begin(), other.take.batches.end());
    return evidenceOf(book, batches);
}

void adviseOnStock(std::vector<Advice>& list, const HouseBook& book, const SeasonReport& report,
                   const StockResult& result) {
    const std::string subject =
        book.get<Stock>(result.stock).name + ", " + woodNames[static_cast<std::size_t>(result.wood)];
    if (result.taken > result.couldGive)
        list.push_back(
            {AdviceKind::Stock, subject, phrase("spare it next year, or plant more of it").text(),
             phrase(result.taken == 1 ? pattern("%1 cutting was taken where its flushes give %2")
                                      : pattern("%1 cuttings were taken where its flushes give %2"),
                    result.taken, result.couldGive)
                 .text(),
             false});
    const Evidence others = othersThan(book, report, result);
    if (result.take.batches.empty() || others.batches.empty()) return;
    const rooting::Interval difference = differenceOf(result.take, others);
    if (!(difference.high < 0)) return;
    const bool thin = result.take.thin() || others.thin();
    list.push_back({AdviceKind::Stock, subject,
                    (thin ? phrase("look at its plants; it may take worse than others")
                          : phrase("take from other stock of the taxon, or renew it"))
                        .text(),
                    phrase("here %1; from others %2", result.take.words(), others.words()).text(), thin});
}

std::string costOf(const HouseBook& book, double kilowattHours) {
    const Money cost = Money::fromUnits(kilowattHours * book.nursery().pricePerKilowattHour.units());
    return decimal(cost) + " " + book.nursery().currency;
}

void adviseOnHeat(std::vector<Advice>& list, const HouseBook& book, const HeatResult& heat) {
    if (heat.kilowattHours <= 0 || heat.idle < idleThatMatters * heat.kilowattHours) return;
    std::vector<std::pair<double, ZoneId>> zones;
    for (const auto& [zone, energy] : heat.idleByZone) zones.emplace_back(energy, zone);
    std::sort(zones.rbegin(), zones.rend());
    std::string words;
    for (std::size_t i = 0; i < std::min<std::size_t>(3, zones.size()); ++i)
        words += (i == 0 ? "" : ", ") + zoneTitle(book, zones[i].second) + " " +
                 std::to_string(std::lround(zones[i].first)) + " kWh";
    list.push_back(
        {AdviceKind::Heat, phrase("mats").text(),
         phrase("turn them off where nothing stands: most in %1", words).text(),
         phrase(
             "%1 of %2 kWh, %3, ran under nothing; reckoned from set-points and the houses' air, not metered",
             std::lround(heat.idle), std::lround(heat.kilowattHours), costOf(book, heat.idle))
             .text(),
         false});
}

} // namespace

std::vector<Advice> adviceOf(const HouseBook& book, const SeasonReport& report) {
    std::vector<Advice> list;
    for (const TargetResult& target : report.targets) adviseOnTarget(list, book, target, report.span.seen);
    for (const GroupResult& group : report.groups) adviseOnTake(list, book, group);
    adviseOnTrials(list, book, report.span);
    for (const StockResult& stock : report.stocks) adviseOnStock(list, book, report, stock);
    adviseOnHeat(list, book, report.heat);
    std::stable_partition(list.begin(), list.end(), [](const Advice& advice) { return !advice.thin; });
    return list;
}

} // namespace warmbench::season
