#pragma once

#include "core/book/refit.h"
#include "ui/words/wording.h"

#include <QStringList>

namespace warmbench::ui {

/// What a change of the house does to what stands in it, a sentence each; containers by ranges of numbers.
[[nodiscard]] QStringList refitWords(const HouseBook& book, const RefitEffect& effect,
                                     const Wording& wording);

} // namespace warmbench::ui
