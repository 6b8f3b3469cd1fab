#pragma once

#include "core/quantity/result.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// A phrase of the trade's own part of the program, in the language that is set, with its days, numbers and
/// temperatures as they are written there. Of one that has been filled in already, days alone are.
[[nodiscard]] QString told(const Phrase& phrase, const Wording& wording = Wording());
/// `place: what`.
[[nodiscard]] QString told(const Refusal& refusal, const Wording& wording = Wording());
/// English words that were kept, such as those of a journal, by the pattern that they were made of.
[[nodiscard]] QString told(const std::string& words, const Wording& wording = Wording());
[[nodiscard]] inline QString told(const char* words, const Wording& wording = Wording()) {
    return told(std::string(words), wording);
}

} // namespace warmbench::ui
