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
[[nodiscard]] std::optional<Phrase> questionAbout(const HouseBook& book, const RootCheck& check);

} // namespace warmbench::round
