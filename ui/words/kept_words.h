#pragma once

#include "core/quantity/phrase.h"

namespace warmbench::ui {

/// Finds the pattern of words that were kept in English, such as a journal's, and what its places were
/// filled with: days and numbers as such, names of things and phrases in phrases too. Where several patterns
/// fit, the one with most letters of its own. Words of no pattern come back as they are.
[[nodiscard]] Phrase readKeptWords(const std::string& words);

/// The planner counts days from the first of its problem on: the calendar's days in place of `day 4` and
/// `days 4 to 18`.
[[nodiscard]] Phrase withDates(const Phrase& phrase, Day first);

} // namespace warmbench::ui
