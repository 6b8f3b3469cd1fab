#pragma once

#include "core/crop/crop.h"
#include "core/quantity/phrase.h"

#include <span>
#include <vector>

namespace warmbench {

/// What can hurt someone at the work.
enum class Hazard : std::uint8_t { ElectricHeat, Mist, Hormone, Fungicide, Blades, Plants, Medium };
inline constexpr std::array<const char*, 7> hazardNames{
    "electric heat near water", "mist, fog and legionella", "hormone", "fungicide", "blades", "plants",
    "medium and dust"};

/// A usual caution, and where it comes from: the id of a published source or a mark, as in a Figure.
struct SafetyNote {
    const char* text;
    const char* source;
};

/// Shown with every caution: what comes before it.
inline constexpr const char* safetyDeference = pattern(
    "General cautions only. Local codes, product labels and safety sheets, makers' instructions, your "
    "employer's risk assessment and licensed electricians come first and overrule anything here.");

/// The usual cautions for a hazard, the weightiest first.
[[nodiscard]] std::span<const SafetyNote> safetyNotes(Hazard hazard);

/// What there is to mind when cuttings are struck by a recipe, in the order of Hazard: blades, plants and
/// medium always; hormone where the recipe has one; mist where its preferred cover is mist or fog.
[[nodiscard]] std::vector<Hazard> hazardsOfStriking(const Recipe& recipe);

/// What there is to mind on a round past zones with these covers, some of them heated or not.
[[nodiscard]] std::vector<Hazard> hazardsOfRound(std::span<const Cover> covers, bool heated);

/// Whether a recipe's hormone says that there is none, such as `none` or `none needed`; one that
/// goes on to name another after a semicolon has one.
[[nodiscard]] bool isWithoutHormone(const std::string& hormone);

} // namespace warmbench
