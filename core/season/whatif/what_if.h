#pragma once

#include "core/season/coverage.h"
#include "core/season/proposal.h"

namespace warmbench::season {

/// A mat that is not there yet, or one that may be run warmer: under a zone, holding a set-point.
struct OtherMat {
    ZoneId zone;
    Celsius setPoint{}; ///< added to those that it has
    Watts rated{};      ///< of the whole mat; one that is there keeps its own where that is more
};

/// What is changed in a copy of the season. Each thing left out stays as it is.
struct Variation {
    int handsPercent = 100; ///< of every weekday's hands
    Celsius warmer{};       ///< the houses' air and unheated root zones, colder where negative
    std::optional<int> surenessPermille;
    std::optional<OtherMat> mat;

    [[nodiscard]] bool changesNothing() const {
        return handsPercent == 100 && warmer == Celsius{} && !surenessPermille && !mat;
    }
};

/// The commands that change a book so; empty where nothing changes.
[[nodiscard]] std::vector<Command> commandsOf(const HouseBook& book, const Variation& variation);

/// The book changed so. Refused in words where that breaks a rule.
[[nodiscard]] Result<HouseBook> varied(HouseBook book, const Variation& variation);

/// Keeps what was tried, with its plan, as one step.
[[nodiscard]] Command keepCommand(const HouseBook& book, const Variation& variation, const Proposal& plan);

/// What comes of a season.
struct SeasonFigures {
    std::size_t batches = 0;   ///< struck or to be struck in the days planned
    std::int64_t cuttings = 0; ///< of them
    std::int64_t left = 0;     ///< cuttings wanted now that have no place
    double plants = 0;         ///< expected for all targets together
    int targets = 0;
    int covered = 0;           ///< of them, those that can be relied on, late ones with them
    int lateDays = 0;          ///< of all targets together
    double kilowattHours = 0;  ///< of the mats, on the days looked at
    Money heat{};              ///< its cost
    std::int64_t slotDays = 0; ///< taken by batches on those days
    int fullestDay = 0;        ///< slots taken on the fullest of them
    int slots = 0;             ///< that there are
};

/// The figures of a book in which a plan has been accepted. The days looked at are those asked for and
/// `daysAfter` more, the same for all that are compared.
[[nodiscard]] SeasonFigures figuresOf(const HouseBook& planned, const RecipeLibrary& library,
                                      const PlanRequest& request, const Proposal& plan);

/// Batches struck on the last day still stand.
inline constexpr int daysAfter = 90;

} // namespace warmbench::season
