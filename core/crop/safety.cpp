#include "core/crop/safety.h"

#include <algorithm>

namespace warmbench {
namespace {

constexpr std::array electricHeatNotes{
    SafetyNote{pattern("Fixed wiring, supply, earthing and fault protection for benches, cables and mats are "
                       "for a licensed electrician, to the local code. Do not improvise."),
               fromMemory},
    SafetyNote{pattern("Circuits in horticultural places need residual-current protection: additional "
                       "protection for socket outlets up to 32 A, 100 mA or less above that, 300 mA or less "
                       "for other circuits (UK wiring rules of 2015; codes differ and change)."),
               "BS7671_705"},
    SafetyNote{pattern("Additional protection commonly means a residual-current device of 30 mA."),
               fromMemory},
    SafetyNote{pattern("Use only equipment made and rated for wet horticultural places, and test its "
                       "residual-current device as the maker advises."),
               fromMemory},
    SafetyNote{
        pattern("Keep plugs, joints and controllers above splash height, and let leads hang in a drip loop."),
        fromMemory},
    SafetyNote{pattern("Never cut, cross or kink heating cable, and space it evenly."), "USU_CABLE"},
    SafetyNote{pattern("Use a thermostat with its probe in the root zone and a separate high limit: a "
                       "slipped probe overheats the bed."),
               fromMemory},
    SafetyNote{pattern("Switch off and isolate before digging in a heated bed. Damaged, warm or tripping "
                       "gear: off, tagged, out of use, electrician."),
               fromMemory},
};

constexpr std::array mistNotes{
    SafetyNote{pattern("Fine spray can carry legionella into the lungs. The risk is with water between 20 "
                       "and 45 °C that is stored or recirculated, or holds scale, sludge or slime: assess "
                       "it, keep it clean, watch it, keep records."),
               "HSE_OTHER"},
    SafetyNote{
        pattern("Horticultural misting is among the systems that need such an assessment (UK guidance)."),
        "HSG274P3"},
    SafetyNote{pattern("Good or disinfected water is the control."), "NGIA2001"},
    SafetyNote{pattern("Clean source, no dead legs, covered tanks, cool storage; flush after any idle spell "
                       "without breathing the spray, and keep away from fog in use. Anyone at higher risk "
                       "should take advice first."),
               fromMemory},
    SafetyNote{pattern("Fever, cough or breathlessness after exposure: see a doctor and mention the mist."),
               fromMemory},
};

constexpr std::array hormoneNotes{
    SafetyNote{
        pattern(
            "Use only products approved for the purpose where you are, at label rate, with the protective "
            "gear that the label states. Some hormones and strengths are restricted to trained users."),
        fromMemory},
    SafetyNote{pattern("Gloves and eye protection for liquids; avoid breathing powder; wash before food; "
                       "keep it locked, in the original pack."),
               fromMemory},
    SafetyNote{pattern("Tip out what you need, never dip into the stock pot, and discard what is left."),
               fromMemory},
    SafetyNote{pattern("Dips in alcohol burn: no flame, no spark, good air."), fromMemory},
};

constexpr std::array fungicideNotes{
    SafetyNote{
        pattern("Use only products approved for the purpose where you are, at label rate, with the "
                "protective gear that the label states; where the law asks for a trained user, by one."),
        fromMemory},
    SafetyNote{
        pattern("Observe re-entry times. Gloves and eye protection; keep it locked, in the original pack."),
        fromMemory},
    SafetyNote{pattern("Rotate modes of action, and do not spray as routine when air and cleaning will do."),
               fromMemory},
};

constexpr std::array bladeNotes{
    SafetyNote{pattern("A sharp blade for each person; cut away from the body, thumb below the cut; a "
                       "cut-resistant glove on the holding hand for hardwood."),
               fromMemory},
    SafetyNote{pattern("Wipe off sap, then disinfect between stock plants and at each batch, for the contact "
                       "time on the label."),
               fromMemory},
    SafetyNote{pattern("Used blades go in a sharps box. Keep tetanus cover up to date."), fromMemory},
};

constexpr std::array plantNotes{
    SafetyNote{pattern("No caution shown is no promise that a plant is safe: treat an unknown sap as "
                       "irritant, and no plant here as food."),
               fromMemory},
    SafetyNote{pattern("Milky sap of spurges and figs gives an itchy rash: gloves, and cover for the eyes."),
               "GWORLD2014"},
    SafetyNote{
        pattern("Some saps burn skin in sunlight: keep skin covered, and out of the sun until washed."),
        fromMemory},
    SafetyNote{pattern("Keep trimmings of poisonous kinds from livestock, pets and children. Never burn "
                       "oleander, and do not shut fresh crushed laurel in a closed vehicle or shed."),
               fromMemory},
    SafetyNote{
        pattern("If eaten, or sap in the eye: call poison or emergency help, and keep a piece of the plant."),
        fromMemory},
};

constexpr std::array mediumNotes{
    SafetyNote{pattern("Mix and compost can hold harmful microbes and dust: damp it, open bags away from the "
                       "face, wear a mask where it is dusty, wash hands."),
               fromMemory},
};

bool makesSpray(Cover cover) {
    return cover == Cover::Mist || cover == Cover::Fog;
}

} // namespace

std::span<const SafetyNote> safetyNotes(Hazard hazard) {
    switch (hazard) {
    case Hazard::ElectricHeat:
        return electricHeatNotes;
    case Hazard::Mist:
        return mistNotes;
    case Hazard::Hormone:
        return hormoneNotes;
    case Hazard::Fungicide:
        return fungicideNotes;
    case Hazard::Blades:
        return bladeNotes;
    case Hazard::Plants:
        return plantNotes;
    case Hazard::Medium:
        return mediumNotes;
    }
    return {};
}

bool isWithoutHormone(const std::string& hormone) {
    if (hormone.empty() || hormone == "none") return true;
    return hormone.starts_with("none ") && hormone.find(';') == std::string::npos;
}

std::vector<Hazard> hazardsOfStriking(const Recipe& recipe) {
    std::vector<Hazard> hazards;
    if (!recipe.covers.value.empty() && makesSpray(recipe.covers.value.front()))
        hazards.push_back(Hazard::Mist);
    if (!isWithoutHormone(recipe.hormone.value)) hazards.push_back(Hazard::Hormone);
    for (const Hazard always : {Hazard::Blades, Hazard::Plants, Hazard::Medium}) hazards.push_back(always);
    return hazards;
}

std::vector<Hazard> hazardsOfRound(std::span<const Cover> covers, bool heated) {
    std::vector<Hazard> hazards;
    if (heated) hazards.push_back(Hazard::ElectricHeat);
    if (std::any_of(covers.begin(), covers.end(), makesSpray)) hazards.push_back(Hazard::Mist);
    hazards.push_back(Hazard::Plants);
    return hazards;
}

} // namespace warmbench
