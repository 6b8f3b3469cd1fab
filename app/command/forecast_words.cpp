#include "app/command/forecast_words.h"

#include "app/command/book_words.h"
#include "app/command/figures.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <sstream>

namespace warmbench::app {
namespace {

using forecast::BatchOutlook;
using forecast::TargetOutlook;

std::string whole(double value) {
    return std::to_string(std::lround(value));
}

std::string percent(double share) {
    return whole(100 * share) + " %";
}

std::string dayOr(const std::optional<Day>& day, const std::string& otherwise) {
    return day ? day->iso() : otherwise;
}

std::string span(const rooting::Interval& interval) {
    return whole(interval.low) + " to " + whole(interval.high);
}

/// By the day on which they are likely to be ready.
std::vector<BatchOutlook> byReady(const forecast::BookForecast& forecast) {
    std::vector<BatchOutlook> found;
    for (const auto& [id, outlook] : forecast.batches()) found.push_back(outlook);
    std::stable_sort(found.begin(), found.end(), [](const BatchOutlook& a, const BatchOutlook& b) {
        return std::tuple(a.rooting, a.likelyReady.value_or(Day::last())) <
               std::tuple(b.rooting, b.likelyReady.value_or(Day::last()));
    });
    return found;
}

void sayBatches(std::ostream& out, const HouseBook& book, const forecast::BookForecast& forecast) {
    TextTable rooting({"batch", "taxon", "struck", "looked at", "rooted now", "90 % band", "plants", "90 %",
                       "surely", "ready, likely", "surely", "planned"},
                      2);
    TextTable weaned({"batch", "taxon", "struck", "plants", "90 %", "surely"}, 2);
    for (const BatchOutlook& one : byReady(forecast)) {
        const Batch& batch = book.get<Batch>(one.batch);
        const std::string& taxon = book.get<Taxon>(batch.taxon).name;
        const std::string plants = whole(one.expected);
        if (!one.rooting) {
            weaned.add({batch.code, taxon, std::to_string(one.struck), plants, span(one.plants),
                        std::to_string(one.surePlants)});
            continue;
        }
        rooting.add(
            {batch.code, taxon, std::to_string(one.struck), whole(one.examined), percent(one.rooted.expected),
             whole(100 * one.rooted.band.low) + " to " + percent(one.rooted.band.high), plants,
             span(one.plants), std::to_string(one.surePlants), dayOr(one.likelyReady, "not in 2 years"),
             dayOr(one.sureReady, "not in 2 years"), dayOr(one.assumedReady, "no place")});
    }
    if (!rooting.empty())
        out << "\nRooting (the share rooted is of those alive; ready: nine of ten of those that will root "
               "have)\n"
            << rooting.text();
    if (!weaned.empty()) out << "\nWeaning and growing on\n" << weaned.text();
    if (rooting.empty() && weaned.empty()) out << "\nNo struck batch stands on that day\n";
}

void saySlips(std::ostream& out, const HouseBook& book, const forecast::BookForecast& forecast) {
    std::ostringstream lines;
    for (const BatchOutlook& one : byReady(forecast)) {
        if (one.slip() < forecast::slipThatMatters) continue;
        const Batch& batch = book.get<Batch>(one.batch);
        lines << "  " << batch.code << ", " << book.get<Taxon>(batch.taxon).name << ": likely " << one.slip()
              << " days late, " << one.likelyReady->iso() << " for " << one.assumedReady->iso();
        if (!staysOn(book, one.batch, forecast.day()).empty())
            lines << "; its slots in " << placesWords(book, one.batch, forecast.day())
                  << " stay taken as long";
        lines << '\n';
    }
    if (lines.str().empty()) return;
    out << "\nLater than planned: plan again, `warmbench plan` counts on these dates\n" << lines.str();
}

/// What can be done about a target that is short.
std::string remedy(const season::TargetNeed& need) {
    if (need.state != season::NeedState::Now || !need.way) return need.why.text();
    const season::Way& way = *need.way;
    return "strike " + std::to_string(way.cuttings) + " " +
           woodNames[static_cast<std::size_t>(way.recipe.wood)] +
           (way.cuttings == 1 ? " cutting " : " cuttings ") +
           (way.late ? "at once, it will be late: by " : "while the wood is right, by ") +
           way.whole.last.iso();
}

/// Targets that a batch is meant for, or struck for.
bool hasBatches(const HouseBook& book, TargetId target) {
    const auto& batches = book.all<Batch>();
    return std::any_of(batches.begin(), batches.end(),
                       [&](const auto& entry) { return entry.second.target == target; });
}

void sayTargets(std::ostream& out, const HouseBook& book, const forecast::BookForecast& forecast,
                const std::vector<season::TargetNeed>& needs) {
    TextTable table({"target", "taxon", "wanted", "by", "expected", "surely", "chance", "what to do"}, 2);
    std::size_t without = 0;
    for (const season::TargetNeed& need : needs) {
        if (!hasBatches(book, need.target)) {
            ++without;
            continue;
        }
        const Target& target = book.get<Target>(need.target);
        const TargetOutlook outlook = forecast.target(book, need.target);
        std::string what =
            need.missing == 0 ? "nothing" : "short by " + std::to_string(need.missing) + ": " + remedy(need);
        if (outlook.ready && *outlook.ready > target.due)
            what += "; potted on about " + outlook.ready->iso() + ", " +
                    counted(static_cast<std::size_t>(*outlook.ready - target.due), "day", "days") + " late";
        table.add({target.name, book.get<Taxon>(target.taxon).name, std::to_string(target.plants),
                   target.due.iso(), whole(outlook.expected), std::to_string(outlook.surePlants),
                   percent(outlook.sureness), what});
    }
    if (!table.empty()) out << "\nTargets\n" << table.text();
    if (without > 0)
        out << "\n"
            << counted(without, "target has", "targets have")
            << " no batch yet: `warmbench plan` says when to strike\n";
}

} // namespace

std::string forecastWords(const HouseBook& book, const forecast::BookForecast& forecast,
                          const std::vector<season::TargetNeed>& needs) {
    std::ostringstream out;
    out << "Forecast on " << dayWords(forecast.day()) << "; surely means with "
        << percent(forecast.sureness()) << '\n';
    sayBatches(out, book, forecast);
    saySlips(out, book, forecast);
    sayTargets(out, book, forecast, needs);
    return out.str();
}

std::string forecastJson(const HouseBook& book, const forecast::BookForecast& forecast,
                         const std::vector<season::TargetNeed>& needs) {
    using nlohmann::ordered_json;
    const auto day = [](const std::optional<Day>& one) {
        return one ? ordered_json(one->iso()) : ordered_json();
    };
    ordered_json told{{"day", forecast.day().iso()},
                      {"sureness", forecast.sureness()},
                      {"batches", ordered_json::array()},
                      {"targets", ordered_json::array()}};
    for (const BatchOutlook& one : byReady(forecast))
        told["batches"].push_back({{"batch", book.get<Batch>(one.batch).code},
                                   {"struck", one.struck},
                                   {"alive", one.alive},
                                   {"examined", one.examined},
                                   {"rooted", one.rooted.expected},
                                   {"rooted_band", {one.rooted.band.low, one.rooted.band.high}},
                                   {"plants", one.expected},
                                   {"plants_band", {one.plants.low, one.plants.high}},
                                   {"plants_sure", one.surePlants},
                                   {"rooting", one.rooting},
                                   {"ready_likely", day(one.likelyReady)},
                                   {"ready_sure", day(one.sureReady)},
                                   {"ready_planned", day(one.assumedReady)},
                                   {"slip_days", one.slip()}});
    for (const season::TargetNeed& need : needs) {
        const TargetOutlook outlook = forecast.target(book, need.target);
        told["targets"].push_back({{"target", book.get<Target>(need.target).name},
                                   {"wanted", outlook.wanted},
                                   {"expected", outlook.expected},
                                   {"plants_sure", outlook.surePlants},
                                   {"sureness", outlook.sureness},
                                   {"missing", need.missing},
                                   {"ready", day(outlook.ready)},
                                   {"remedy", need.missing == 0 ? "" : remedy(need)}});
    }
    return told.dump(2) + "\n";
}

std::string batchWords(const HouseBook& book, const forecast::BookForecast& forecast, const Batch& batch) {
    std::ostringstream out;
    const forecast::BatchForecast* found = forecast.find(batch.id);
    const BatchOutlook& outlook = forecast.batches().at(batch.id);
    out << batch.code << ", " << book.get<Taxon>(batch.taxon).name << ", struck on "
        << dayWords(batch.strikeDay) << ": "
        << counted(static_cast<std::size_t>(outlook.struck), "cutting", "cuttings") << ", about "
        << whole(outlook.alive) << " alive\n\nRooted of those alive, by day\n";
    TextTable days({"day", "degree-days", "rooted", "90 % band", "checks: rooted of alive"}, 1);
    std::map<Day, std::pair<int, int>> checks;
    for (const RootCheckId id : book.checksOf(batch.id)) {
        const RootCheck& check = book.get<RootCheck>(id);
        if (check.day > forecast.day()) continue;
        checks[check.day].first += check.rooted;
        checks[check.day].second += check.examined - check.dead;
    }
    std::set<Day> shown;
    for (const auto& [day, count] : checks) shown.insert(day);
    const Day end = std::min(outlook.sureReady.value_or(forecast.day() + 60), forecast.day() + 120);
    for (Day day = forecast.day(); day <= end + 6; day = day + 7) shown.insert(day);
    for (const Day day : shown) {
        const auto share = found->rootedOn(day, 0.9);
        const auto check = checks.find(day);
        days.add({day.iso(), whole(found->warmth().by(day)), percent(share.expected),
                  whole(100 * share.band.low) + " to " + percent(share.band.high),
                  check == checks.end()
                      ? ""
                      : std::to_string(check->second.first) + " of " + std::to_string(check->second.second)});
    }
    out << days.text() << "\nNine of ten of those that will root have: likely by "
        << dayOr(outlook.likelyReady, "no day in two years") << ", with " << percent(forecast.sureness())
        << " by " << dayOr(outlook.sureReady, "no day in two years") << "; the plan has "
        << dayOr(outlook.assumedReady, "no day") << "\nPlants: " << whole(outlook.expected) << " expected, "
        << span(outlook.plants) << " with 90 %, " << outlook.surePlants << " surely\n";
    return out.str();
}

} // namespace warmbench::app
