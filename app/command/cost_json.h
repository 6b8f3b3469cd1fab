#pragma once

#include <nlohmann/json.hpp>

namespace warmbench::app {

/// Thousandths of a currency unit as a number in units.
template <class Thousandths>
nlohmann::ordered_json unitsJson(Thousandths thousandths) {
    return static_cast<double>(thousandths) / 1000;
}

/// The parts of a plan's cost and their total, in currency units, by the names of the planning answer of a
/// version.
template <class Cost>
nlohmann::ordered_json costJson(const Cost& cost, int version) {
    nlohmann::ordered_json json{{"total", unitsJson(cost.total())},  {"unplaced", unitsJson(cost.unplaced)},
                                {"late", unitsJson(cost.late)},      {"off_ideal", unitsJson(cost.offIdeal)},
                                {"mats", unitsJson(cost.mats)},      {"moves", unitsJson(cost.moves)},
                                {"scatter", unitsJson(cost.scatter)}};
    if (version == 2) json["changes"] = unitsJson(cost.changes);
    return json;
}

} // namespace warmbench::app
