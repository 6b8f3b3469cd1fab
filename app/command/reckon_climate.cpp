#include "app/command/reckon.h"

#include "app/command/figures.h"
#include "app/command/number_option.h"
#include "core/climate/dilution.h"
#include "core/climate/heat.h"
#include "core/climate/pot.h"
#include "core/climate/thermal_time.h"
#include "core/exchange/table/readings.h"
#include "core/exchange/table/table_text.h"
#include "core/quantity/number.h"

#include <memory>

namespace warmbench::app {
namespace {

constexpr double coldest = -273.15;
constexpr double hottest = 1000;
constexpr double hoursPerDay = 24;

struct DegreeDaysAsked {
    std::string file;
    climate::Thresholds thresholds;
    double cap = 0;
    bool json = false;
};

int reckonDegreeDays(const DegreeDaysAsked& asked) {
    const double base = asked.thresholds.base;
    if (asked.thresholds.cap && *asked.thresholds.cap < base)
        return refuse({"--cap", "found " + numberText(asked.cap) + ", expected at least the " +
                                    numberText(base) + " of --base"});
    auto text = exchange::readTableText(asked.file);
    if (!text) return refuse(text.refusal());
    const auto table = exchange::readReadings(asked.file, std::move(*text));
    if (!table) return refuse(table.refusal());
    const climate::ThermalTime sum = thermalTime(table->readings, asked.thresholds);
    Figures figures;
    figures.add("degree_days", sum.total(), "degree-days",
                fixedText(sum.total(), 1) + " above " + numberText(base) + " °C");
    figures.add("from", table->from, "from", table->from);
    figures.add("to", table->to, "to", table->to);
    figures.add("readings", table->readings.size(), "readings", std::to_string(table->readings.size()));
    figures.add("gap_hours", sum.gapHours(), "in gaps",
                fixedText(sum.gapHours(), 1) + " h in " + std::to_string(sum.gaps.size()) +
                    " gaps of more than " + numberText(climate::longestStep) + " h, " +
                    fixedText(sum.acrossGaps, 1) + " degree-days on straight lines across them");
    figures.print(asked.json);
    return done;
}

struct HeatAsked {
    double area = 0;
    double u = 0;
    double inside = 0;
    double outside = 0;
    bool json = false;
};

int reckonHeat(const HeatAsked& asked) {
    const double watts = climate::heatThrough(asked.area, asked.u, asked.inside, asked.outside);
    const double energy = climate::energyForHeat(watts, hoursPerDay);
    Figures figures;
    figures.add("watts", watts, "heat lost", fixedText(watts, 0) + " W");
    figures.add("kwh_per_day", energy, "energy a day", fixedText(energy, 2) + " kWh");
    figures.print(asked.json);
    return done;
}

struct MatAsked {
    climate::Mat mat;
    double air = 0;
    double setPoint = 0;
    double price = 0;
    bool json = false;
};

int reckonMat(const MatAsked& asked) {
    const climate::MatLoad load = matLoad(asked.mat, asked.setPoint, asked.air);
    const double energy = matEnergy(load, hoursPerDay);
    Figures figures;
    figures.add("watts_needed", load.wattsNeeded, "power needed",
                fixedText(load.wattsNeeded, 0) + " W of " + fixedText(load.wattsRated, 0) + " W");
    figures.add("holds", load.holds, "holds the set-point", load.holds ? "yes" : "no");
    figures.add("duty", load.duty, "on", percentText(load.duty) + " of the time");
    figures.add("kwh_per_day", energy, "energy a day", fixedText(energy, 2) + " kWh");
    figures.add("cost_per_day", energy * asked.price, "cost a day", fixedText(energy * asked.price, 2));
    figures.print(asked.json);
    return done;
}

struct PotAsked {
    climate::PotSize size;
    bool json = false;
};

int reckonPot(const PotAsked& asked) {
    const double litres = potLitres(asked.size);
    Figures figures;
    figures.add("litres", litres, "holds", fixedText(litres, 3) + " litres");
    figures.print(asked.json);
    return done;
}

struct DilutionAsked {
    double ppm = 0;
    double litres = 0;
    double strength = 0;
    bool json = false;
};

int reckonDilution(const DilutionAsked& asked, bool fromConcentrate) {
    Figures figures;
    if (fromConcentrate) {
        const double stockPpm = asked.strength * 1000;
        const auto found = climate::dilute(stockPpm, asked.ppm, asked.litres * 1000);
        if (!found)
            return refuse({"--strength", "found " + numberText(asked.strength) + ", expected at least the " +
                                             numberText(asked.ppm / 1000) + " g per litre aimed at"});
        figures.add("millilitres", found->stock, "concentrate",
                    fixedText(found->stock, 1) + " ml, filled up to " + numberText(asked.litres) + " litres");
    } else {
        const double grams = climate::gramsFor(asked.ppm, asked.litres);
        figures.add("grams", grams, "pure substance", fixedText(grams, 3) + " g");
    }
    figures.print(asked.json);
    return done;
}

} // namespace

void addDegreeDays(CLI::App& reckon, Work& work) {
    CLI::App& call = *reckon.add_subcommand("degree-days", "Thermal time from a logger's readings.");
    const auto asked = std::make_shared<DegreeDaysAsked>();
    call.add_option("file", asked->file, "CSV file with the columns time and celsius")->required();
    addNumber(call, "--base", asked->thresholds.base, between(coldest, hottest), "base, degrees Celsius")
        ->required();
    CLI::Option* cap = addNumber(call, "--cap", asked->cap, between(coldest, hottest),
                                 "temperature above which no more counts");
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([=, &work] {
        if (*cap) asked->thresholds.cap = asked->cap;
        work = [asked] { return reckonDegreeDays(*asked); };
    });
}

void addHeat(CLI::App& reckon, Work& work) {
    CLI::App& call = *reckon.add_subcommand("heat", "Heat lost through a surface.");
    const auto asked = std::make_shared<HeatAsked>();
    addNumber(call, "--area", asked->area, atLeast(0), "square metres")->required();
    addNumber(call, "--u", asked->u, atLeast(0), "heat transmittance U, W/(m2 K)")->required();
    addNumber(call, "--inside", asked->inside, between(coldest, hottest), "degrees Celsius inside")
        ->required();
    addNumber(call, "--outside", asked->outside, between(coldest, hottest), "degrees Celsius outside")
        ->required();
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return reckonHeat(*asked); }; });
}

void addMat(CLI::App& reckon, Work& work) {
    CLI::App& call = *reckon.add_subcommand("mat", "What a heated mat needs and costs to hold a set-point.");
    const auto asked = std::make_shared<MatAsked>();
    addNumber(call, "--area", asked->mat.area, above(0), "square metres")->required();
    addNumber(call, "--per-area", asked->mat.wattsPerArea, above(0), "rated power, W/m2")->required();
    addNumber(call, "--loss", asked->mat.loss, atLeast(0), "heat lost from the bench, W/(m2 K)")->required();
    addNumber(call, "--air", asked->air, between(coldest, hottest), "air temperature, degrees Celsius")
        ->required();
    addNumber(call, "--set-point", asked->setPoint, between(coldest, hottest),
              "root-zone temperature aimed at, degrees Celsius")
        ->required();
    addNumber(call, "--price", asked->price, atLeast(0), "price of a kilowatt-hour")->required();
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return reckonMat(*asked); }; });
}

void addPot(CLI::App& reckon, Work& work) {
    CLI::App& call = *reckon.add_subcommand("pot", "Litres that a round pot holds.");
    const auto asked = std::make_shared<PotAsked>();
    addNumber(call, "--top", asked->size.top, above(0), "inside diameter at the top, mm")->required();
    addNumber(call, "--base", asked->size.base, atLeast(0), "inside diameter at the base, mm")->required();
    addNumber(call, "--height", asked->size.height, above(0), "inside height, mm")->required();
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return reckonPot(*asked); }; });
}

void addDilution(CLI::App& reckon, Work& work) {
    CLI::App& call = *reckon.add_subcommand("dilution", "What a solution of a given strength takes.");
    const auto asked = std::make_shared<DilutionAsked>();
    addNumber(call, "--ppm", asked->ppm, above(0), "strength aimed at, mg per litre")->required();
    addNumber(call, "--litres", asked->litres, above(0), "volume aimed at")->required();
    CLI::Option* strength = addNumber(call, "--strength", asked->strength, above(0),
                                      "grams in a litre of the concentrate; pure substance unless given");
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([=, &work] { work = [=] { return reckonDilution(*asked, strength->count() > 0); }; });
}

} // namespace warmbench::app
