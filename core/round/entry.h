#pragma once

#include "core/book/house_book.h"

#include <optional>
#include <string>
#include <vector>

namespace warmbench::round {

/// Why a check can't be written down as it stands, before it is asked of the book: the rules of the book and
/// that it is not after `today`. The place of the refusal is the container.
[[nodiscard]] Outcome wrongWith(const HouseBook& book, const RootCheck& check, Day today);

/// What about a check is possible but unlikely, as a question to whoever entered it: roots that were there at
/// the check before and are not found now, or a second check of the container on one day. Nothing where it
/// raises no question.
[[nodiscard]] std::optional<std::string> questionAbout(const HouseBook& book, const RootCheck& check);

/// The checks of a copy that was carried along on a round, brought home.
struct RoundMerge {
    std::vector<RootCheck> checks;  ///< that the book does not have yet, with its own batches' ids
    std::vector<Refusal> conflicts; ///< why others are not among them, in order of their days
};
/// In conflict is a check of a batch or container that the book has not, one of more cuttings than stand
/// there now, or one of a container that was looked at in both books on one day, with another result.
[[nodiscard]] RoundMerge mergeRound(const HouseBook& book, const HouseBook& copy);

} // namespace warmbench::round
