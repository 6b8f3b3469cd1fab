#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/climate_kept.h"
#include "app/command/figures.h"
#include "app/command/open_book.h"
#include "core/book/query.h"
#include "core/climate/excursion.h"
#include "core/climate/vapour.h"
#include "core/exchange/logger/logger_file.h"
#include "core/exchange/table/table_text.h"
#include "core/forecast/measured_root_zone.h"
#include "core/quantity/decimal.h"
#include "core/season/heat_choice.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct ClimateOptions {
    std::string book;
    std::string file;
    std::string zone;
    std::string house;
    std::string column;
    std::string humidity;
    std::string unit;
    std::string summerTime = "none";
    std::string order;
    int offsetMinutes = 0;
    bool heat = false;
    bool air = false;
    bool keep = false;
    std::string day;
};

/// Shorter stretches outside a recipe's range are not told.
constexpr double hoursThatMatter = 2;
constexpr std::size_t excursionsTold = 5;

const Zone* zoneNamed(const HouseBook& book, const std::string& name) {
    for (const auto& [id, zone] : book.all<Zone>())
        if (zoneTitle(book, id) == name || placeWords(book, id) == name ||
            book.get<Bench>(zone.bench).name + " " + zone.name == name)
            return &zone;
    return nullptr;
}

/// Where the logger was.
Result<ReadingPlace> placeOf(const HouseBook& book, const ClimateOptions& options) {
    if (!options.house.empty()) {
        const auto found = book.withKey<House>(options.house);
        if (found.empty())
            return Refusal{"--house", "found '" + options.house + "', expected the name of a house"};
        return ReadingPlace{std::nullopt, *found.begin()};
    }
    if (const Zone* zone = zoneNamed(book, options.zone)) return ReadingPlace{zone->id, std::nullopt};
    return Refusal{"--zone",
                   "found '" + options.zone + "', expected a zone such as '" +
                       (book.all<Zone>().empty() ? std::string("Bench 1 · A")
                                                 : zoneTitle(book, book.all<Zone>().begin()->first)) +
                       "'"};
}

Result<exchange::Clock> clockOf(const ClimateOptions& options) {
    exchange::Clock clock{options.offsetMinutes, exchange::SummerTime::None};
    if (options.summerTime == "european")
        clock.summerTime = exchange::SummerTime::European;
    else if (options.summerTime == "american")
        clock.summerTime = exchange::SummerTime::American;
    else if (options.summerTime != "none")
        return Refusal{"--summer-time",
                       "found '" + options.summerTime + "', expected none, european or american"};
    return clock;
}

Result<exchange::LoggerHints> hintsOf(const ClimateOptions& options) {
    exchange::LoggerHints hints{options.column, options.humidity, {}, {}, {}, {}};
    if (options.unit == "celsius" || options.unit == "fahrenheit")
        hints.fahrenheit = options.unit == "fahrenheit";
    else if (!options.unit.empty())
        return Refusal{"--unit", "found '" + options.unit + "', expected celsius or fahrenheit"};
    if (options.order == "day-first")
        hints.order = exchange::DateOrder::DayFirst;
    else if (options.order == "month-first")
        hints.order = exchange::DateOrder::MonthFirst;
    else if (!options.order.empty())
        return Refusal{"--dates", "found '" + options.order + "', expected day-first or month-first"};
    return hints;
}

std::string momentWords(double hour) {
    const int day = static_cast<int>(std::floor(hour / 24));
    const int minutes = static_cast<int>(std::lround((hour - 24.0 * day) * 60));
    const auto two = [](int value) { return (value < 10 ? "0" : "") + std::to_string(value); };
    return Day::fromNumber(day).iso() + " " + two(minutes / 60) + ":" + two(minutes % 60);
}

void sayFile(const exchange::LoggerFile& file, const std::vector<climate::Reading>& readings) {
    const auto [lowest, highest] = std::minmax_element(
        readings.begin(), readings.end(), [](const auto& a, const auto& b) { return a.celsius < b.celsius; });
    std::cout << "  read as: " << file.shape.words() << "\n  "
              << counted(file.readings.size(), "reading", "readings") << " from "
              << momentWords(readings.front().hour) << " to " << momentWords(readings.back().hour)
              << " (winter time), " << fixedText(lowest->celsius, 1) << " to "
              << fixedText(highest->celsius, 1)
              << " °C\n  left out: " << counted(file.duplicates, "double", "doubles") << " ("
              << file.contradictions << " with another temperature), "
              << counted(file.missing, "line", "lines") << " without one, " << file.wrongLines
              << " that can't be read; " << file.outOfOrder << " put in order; "
              << counted(file.gaps, "gap", "gaps") << " of more than 3 h, " << hoursWords(file.gapHours)
              << " in all\n";
    for (const std::string& wrong : file.wrong) std::cout << "    " << wrong << '\n';
}

void sayDeficit(const exchange::LoggerFile& file) {
    double sum = 0;
    double greatest = 0;
    std::size_t count = 0;
    for (const exchange::LoggerReading& reading : file.readings) {
        if (!reading.humidity) continue;
        const double found =
            climate::deficit(climate::saturationPressure(reading.celsius),
                             climate::pressureFromHumidity(reading.celsius, *reading.humidity));
        sum += found;
        greatest = std::max(greatest, found);
        ++count;
    }
    if (count > 0)
        std::cout << "  vapour pressure deficit: " << fixedText(sum / static_cast<double>(count), 2)
                  << " kPa on average, " << fixedText(greatest, 2) << " kPa at most\n";
}

void sayBatch(const HouseBook& book, const forecast::MeasuredRootZone& measured, const Stay& stay) {
    const Batch& batch = book.get<Batch>(stay.batch);
    const auto readings = measured.between(stay.from, stay.to);
    if (readings.empty()) return;
    const climate::Thresholds thresholds = forecast::thresholdsOf(batch.recipe);
    double found = 0;
    double planned = 0;
    int days = 0;
    for (Day day = stay.from; day < stay.to; day = day + 1) {
        const auto one = measured.on(stay.zone, day, thresholds);
        if (!one) continue;
        ++days;
        found += *one;
        planned += climate::steadyDegreeDays(expectedRootZone(book, book.get<Zone>(stay.zone), day).units(),
                                             24, thresholds);
    }
    std::cout << "  " << batch.code << ", " << book.get<Taxon>(batch.taxon).name << ", " << stay.from.iso()
              << " to " << stay.to.iso() << ": " << fixedText(found, 0) << " degree-days measured on "
              << counted(static_cast<std::size_t>(days), "whole day", "whole days") << ", "
              << fixedText(planned, 0) << " by set-points\n";
    const double low = batch.recipe.rootZoneLow.value.units();
    const double high = batch.recipe.rootZoneHigh.value.units();
    auto outside = climate::excursions(readings, low, high, hoursThatMatter);
    double hours = 0;
    for (const climate::Excursion& one : outside) hours += one.hours();
    if (outside.empty()) return;
    std::cout << "    outside its " << fixedText(low, 1) << " to " << fixedText(high, 1) << " °C for "
              << hoursWords(hours) << " in " << counted(outside.size(), "stretch", "stretches")
              << "; the longest:\n";
    std::stable_sort(outside.begin(), outside.end(),
                     [](const auto& a, const auto& b) { return a.hours() > b.hours(); });
    outside.resize(std::min(outside.size(), excursionsTold));
    for (const climate::Excursion& one : outside)
        std::cout << "      " << (one.below ? "too cold" : "too warm") << " from " << momentWords(one.from)
                  << " for " << hoursWords(one.hours()) << ", " << fixedText(one.extreme, 1) << " °C\n";
}

int tellLogger(const HouseBook& book, const ClimateOptions& options) {
    const auto clock = clockOf(options);
    if (!clock) return refuse(clock.refusal());
    const auto hints = hintsOf(options);
    if (!hints) return refuse(hints.refusal());
    const auto place = placeOf(book, options);
    if (!place) return refuse(place.refusal());
    const auto text = exchange::readTableText(options.file);
    if (!text) return refuseFile(text.refusal());
    const auto file = exchange::readLogger(options.file, *text, *clock, *hints);
    if (!file) return refuseFile(file.refusal());
    std::vector<climate::Reading> readings;
    readings.reserve(file->readings.size());
    for (const exchange::LoggerReading& one : file->readings)
        readings.push_back({static_cast<double>(one.second + clock->offsetMinutes * 60) / 3600, one.celsius});
    std::cout << options.file << ", "
              << (place->zone ? placeWords(book, *place->zone) : book.get<House>(*place->house).name) << '\n';
    sayFile(*file, readings);
    sayDeficit(*file);
    const Channel channel = options.air || place->house ? Channel::Air : Channel::RootZone;
    const auto kept = exchange::keptReadings(*file, clock->offsetMinutes, channel);
    sayToKeep(book, *place, kept);
    if (options.keep) return keepReadings(options.book, *place, kept);
    if (channel != Channel::RootZone) return done;
    const forecast::MeasuredRootZone measured(*place->zone, std::move(readings));
    std::cout << "\nCuttings that rooted there\n";
    for (const StayId id : book.staysIn(*place->zone))
        if (const Stay& stay = book.get<Stay>(id); stay.stage == Stage::Rooting)
            sayBatch(book, measured, stay);
    return done;
}

int tellHeat(const HouseBook& book, const ClimateOptions& options) {
    const auto day = readDay("--day", options.day);
    if (!day) return refuse(day.refusal());
    std::cout << "Heat for what roots on " << dayWords(*day)
              << ": from that day until nine of ten of those that root have, the whole mat's cost\n";
    bool any = false;
    for (const auto& [id, zone] : book.all<Zone>()) {
        if (!zone.mat) continue;
        for (const StayId stayId : book.staysMeeting(id, *day, *day + 1)) {
            const Stay& stay = book.get<Stay>(stayId);
            if (stay.stage != Stage::Rooting) continue;
            const Batch& batch = book.get<Batch>(stay.batch);
            TextTable table({"mat", "ready after", "cost", "recipe's range"}, 1);
            for (const season::HeatChoice& choice : season::heatChoices(book, zone, batch, *day))
                table.add({choice.setPoint ? decimal(*choice.setPoint) + " °C" : "off",
                           choice.days ? counted(static_cast<std::size_t>(*choice.days), "day", "days")
                                       : "not in a year",
                           book.nursery().currency + " " + fixedText(choice.cost.units(), 2),
                           choice.suits ? "within" : "outside"});
            if (table.empty()) continue;
            any = true;
            const auto running = setPointOn(book, id, *day);
            std::cout << '\n'
                      << placeWords(book, id) << ", "
                      << (running ? "now at " + decimal(*running) + " °C" : "now off") << ": " << batch.code
                      << ", " << book.get<Taxon>(batch.taxon).name << '\n'
                      << table.text();
        }
    }
    if (!any) std::cout << "Nothing roots over a mat on that day\n";
    return done;
}

int tellClimate(const ClimateOptions& options) {
    const auto file = openBook(options.book, OpenMode::Read);
    if (!file) return refuseFile(file.refusal());
    if (options.heat) return tellHeat((*file)->book(), options);
    if (!options.file.empty() && options.zone.empty() && options.house.empty())
        return refuse({"--file", "found no place, expected --zone or --house"});
    if (!options.file.empty()) return tellLogger((*file)->book(), options);
    const auto day = readDay("--day", options.day);
    if (!day) return refuse(day.refusal());
    return tellKept((*file)->book(), *day);
}

} // namespace

void addClimate(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand(
        "climate", "What a logger measured and what it meant for cuttings; what heat costs");
    const auto options = std::make_shared<ClimateOptions>();
    call->add_option("book", options->book, "The house book")->required();
    CLI::Option* zone =
        call->add_option("--zone", options->zone, "Where the logger was, such as 'Bench 1 · A'");
    CLI::Option* house =
        call->add_option("--house", options->house, "The house whose air the logger measured");
    CLI::Option* file = call->add_option("--file", options->file, "The logger's CSV file");
    zone->needs(file)->excludes(house);
    house->needs(file);
    call->add_flag("--air", options->air, "The temperature is the air's over the zone, not the root zone's")
        ->needs(zone);
    call->add_flag("--keep", options->keep, "Keep the readings in the book")->needs(file);
    call->add_option("--column", options->column, "Temperature's column, by name or number");
    call->add_option("--humidity", options->humidity, "Humidity's column, by name or number");
    call->add_option("--unit", options->unit, "celsius or fahrenheit; else as the file's head says");
    call->add_option("--dates", options->order, "day-first or month-first; else as it fits");
    call->add_option("--utc-offset", options->offsetMinutes,
                     "Minutes that the logger's winter time is ahead of UTC")
        ->check(CLI::Range(-14 * 60, 14 * 60));
    call->add_option("--summer-time", options->summerTime, "none, european or american")
        ->capture_default_str();
    call->add_flag("--heat", options->heat, "What each set-point costs and how much sooner it roots");
    call->add_option("--day", options->day,
                     "With --heat, or for the readings kept: the day; today without it");
    call->callback([&work, options] { work = [options] { return tellClimate(*options); }; });
}

} // namespace warmbench::app
