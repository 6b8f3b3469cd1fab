#pragma once

#include "core/book/command.h"
#include "core/rooting/proportion.h"

#include <optional>
#include <vector>

namespace warmbench::take {

/// What a propagator's own batches say of one recipe, drawn towards it where there are few of them. To be
/// shown; nothing of it is used until she takes it over.
struct OwnFigures {
    RecipeId recipe;
    std::vector<BatchId> batches; ///< ended, of the recipe's taxon and wood
    rooting::Take take;           ///< of all of them
    double correlation = 0;       ///< within a batch: 0 if batches differ by chance alone
    double cuttingsThatCount = 0; ///< independent cuttings that they are worth
    double share = 0;             ///< the share expected of the next batch
    IntRange takePercent;         ///< its 10 % and 90 % points
    IntRange daysToRoot;          ///< of one cutting, at the recipe's ideal root zone
};

/// How much batches of one recipe differ, where there are too few to tell: the correlation within a batch,
/// and the deviation of their mu. Decisions of this program, without a source.
inline constexpr double usualCorrelation = 0.03;
inline constexpr double usualMuSpread = 0.15;

/// Her own figures for a recipe of the book; nothing where no batch of its taxon and wood has ended, or its
/// figures can't be.
///
/// Take: beta-binomial. The recipe's beta law is updated with each batch's cuttings, divided by 1 + (n - 1)
/// times the correlation (that of batchSpread from five batches on, at least the usual one halved). Days:
/// each batch's belief in mu, less its prior, is weighed with the usual spread between batches and the
/// recipe's own.
[[nodiscard]] std::optional<OwnFigures> ownFigures(const HouseBook& book, const Recipe& recipe);

/// The command that takes own figures over into their recipe, marked as her own.
[[nodiscard]] Command adoptCommand(const HouseBook& book, const OwnFigures& own);

} // namespace warmbench::take
