#include "app/command/reckon.h"

#include "app/command/figures.h"
#include "app/command/number_option.h"
#include "core/climate/vapour.h"
#include "core/quantity/number.h"

#include <algorithm>
#include <memory>
#include <optional>

namespace warmbench::app {
namespace {

using climate::Ventilation;

/// Temperatures for which the formulas are meant, and then some.
constexpr double coldestAir = -100;
constexpr double hottestAir = 100;

struct VapourAsked {
    double air = 0;
    double humidity = 0;
    double highest = 0;
    double lowest = 0;
    double highestHumidity = 0;
    double lowestHumidity = 0;
    double dry = 0;
    double wet = 0;
    double altitude = 0;
    bool forced = false; ///< as also where nothing is said
    bool natural = false;
    bool indoor = false;
    bool json = false;
};

std::string kilopascals(double pressure) {
    return fixedText(pressure, 3) + " kPa";
}

void addPressure(Figures& figures, const std::string& key, const std::string& label, double pressure) {
    figures.add(key, pressure, label, kilopascals(pressure));
}

/// The refusal of an option's value that is not at most another's.
Outcome notInOrder(const std::string& small, double smallValue, const std::string& great, double greatValue) {
    if (smallValue <= greatValue) return {};
    return Refusal{small, "found " + numberText(smallValue) + ", expected at most the " +
                              numberText(greatValue) + " of " + great};
}

int fromAir(const VapourAsked& asked) {
    const double saturation = climate::saturationPressure(asked.air);
    const double actual = climate::pressureFromHumidity(asked.air, asked.humidity);
    const auto dewPoint = climate::dewPoint(actual);
    Figures figures;
    addPressure(figures, "saturation_kpa", "saturation", saturation);
    addPressure(figures, "actual_kpa", "vapour pressure", actual);
    addPressure(figures, "deficit_kpa", "deficit", climate::deficit(saturation, actual));
    figures.add("dew_point_c", dewPoint ? nlohmann::ordered_json(*dewPoint) : nlohmann::ordered_json(),
                "dew point", dewPoint ? fixedText(*dewPoint, 1) + " °C" : "none");
    figures.print(asked.json);
    return done;
}

int fromExtremes(const VapourAsked& asked) {
    if (const auto refused = notInOrder("--min", asked.lowest, "--max", asked.highest))
        return refuse(*refused);
    if (const auto refused = notInOrder("--rh-min", asked.lowestHumidity, "--rh-max", asked.highestHumidity))
        return refuse(*refused);
    const double saturation = climate::meanSaturationPressure(asked.highest, asked.lowest);
    const double actual = climate::pressureFromHumidities(asked.highest, asked.lowest, asked.highestHumidity,
                                                          asked.lowestHumidity);
    Figures figures;
    addPressure(figures, "saturation_kpa", "saturation", saturation);
    addPressure(figures, "actual_kpa", "vapour pressure", actual);
    addPressure(figures, "deficit_kpa", "deficit", climate::deficit(saturation, actual));
    figures.print(asked.json);
    return done;
}

int fromPsychrometer(const VapourAsked& asked) {
    if (const auto refused = notInOrder("--wet", asked.wet, "--dry", asked.dry)) return refuse(*refused);
    const Ventilation ventilation = asked.indoor    ? Ventilation::Indoor
                                    : asked.natural ? Ventilation::Natural
                                                    : Ventilation::Forced;
    const double actual = climate::pressureFromPsychrometer(asked.dry, asked.wet, ventilation,
                                                            climate::atmosphericPressure(asked.altitude));
    if (actual < 0)
        return refuse({"--wet", "found " + numberText(asked.wet) + ", expected a wet bulb nearer to the " +
                                    numberText(asked.dry) + " of --dry: no air is drier than dry"});
    Figures figures;
    addPressure(figures, "actual_kpa", "vapour pressure", actual);
    figures.print(asked.json);
    return done;
}

/// Options of one form: all of them are needed, and none of the other forms may stand beside them.
void addForm(CLI::App& call, const std::vector<CLI::Option*>& form) {
    for (CLI::Option* one : form)
        for (CLI::Option* other : form)
            if (one != other) one->needs(other);
    for (CLI::Option* other : call.get_options())
        if (other->get_name() != "--help" && other->get_name() != "--json" &&
            std::find(form.begin(), form.end(), other) == form.end())
            other->excludes(form.front());
}

} // namespace

void addVapour(CLI::App& reckon, Work& work) {
    constexpr double deepest = -500;
    constexpr double summit = 10000;
    CLI::App& call =
        *reckon.add_subcommand("vapour", "Vapour pressure of air by FAO-56: from --air and --rh, "
                                         "from a day's extremes, or from --dry and --wet.");
    const auto asked = std::make_shared<VapourAsked>();
    const auto temperature = [&call](const char* name, double& into, const char* help) {
        return addNumber(call, name, into, between(coldestAir, hottestAir), help);
    };
    const auto humidity = [&call](const char* name, double& into, const char* help) {
        return addNumber(call, name, into, between(0, 100), help);
    };
    CLI::Option* air = temperature("--air", asked->air, "air temperature, degrees Celsius");
    CLI::Option* rh = humidity("--rh", asked->humidity, "relative humidity, per cent");
    addForm(call, {air, rh});
    CLI::Option* highest = temperature("--max", asked->highest, "highest air temperature of a day");
    CLI::Option* lowest = temperature("--min", asked->lowest, "lowest air temperature of a day");
    CLI::Option* highestHumidity = humidity("--rh-max", asked->highestHumidity, "highest relative humidity");
    CLI::Option* lowestHumidity = humidity("--rh-min", asked->lowestHumidity, "lowest relative humidity");
    addForm(call, {highest, lowest, highestHumidity, lowestHumidity});
    CLI::Option* dry = temperature("--dry", asked->dry, "dry bulb of a psychrometer, degrees Celsius");
    CLI::Option* wet = temperature("--wet", asked->wet, "wet bulb of a psychrometer, degrees Celsius");
    addForm(call, {dry, wet});
    addNumber(call, "--altitude", asked->altitude, between(deepest, summit),
              "metres above the sea, 0 unless given")
        ->needs(dry);
    CLI::Option* forced =
        call.add_flag("--ventilated", asked->forced, "air is drawn past the wet bulb (taken unless told)");
    CLI::Option* natural =
        call.add_flag("--natural", asked->natural, "air moves past the wet bulb by itself");
    CLI::Option* indoor = call.add_flag("--indoor", asked->indoor, "the wet bulb hangs in still air indoors");
    for (CLI::Option* one : {forced, natural, indoor}) one->needs(dry);
    forced->excludes(natural)->excludes(indoor);
    natural->excludes(indoor);
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([=, &work] {
        work = [=] {
            if (*air) return fromAir(*asked);
            if (*highest) return fromExtremes(*asked);
            if (*dry) return fromPsychrometer(*asked);
            return refuse({"vapour",
                           "found no temperature, expected --air and --rh; or --max, --min, --rh-max and "
                           "--rh-min; or --dry and --wet"});
        };
    });
}

} // namespace warmbench::app
