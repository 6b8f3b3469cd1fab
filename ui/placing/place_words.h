#pragma once

#include "core/placing/suitability.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// `27-035-A, Griselinia littoralis: containers 1-4`, or `all 40 pots`.
[[nodiscard]] QString carriedWords(const HouseBook& book, const placing::Carried& carried,
                                   const Wording& wording);

/// What a zone is to what is carried: first whether it suits, then why not, or what it takes and brings.
[[nodiscard]] QStringList verdictWords(const HouseBook& book, const placing::Carried& carried,
                                       const placing::ZoneVerdict& verdict, const Wording& wording);

} // namespace warmbench::ui
