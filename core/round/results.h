#pragma once

#include "core/book/house_book.h"

#include <string>
#include <vector>

namespace warmbench::round {

/// The rows of a filled-in round sheet.
struct Results {
    std::vector<RootCheck> checks;      ///< of the rows that are right, without ids
    std::vector<Refusal> wrong;         ///< one for each row that is not, with file and line
    std::vector<std::string> questions; ///< of right rows that may be mistaken, with file and line
};

/// Reads results as CSV with the columns `batch`, `container`, `examined` and `rooted`; `callused`, `alive`,
/// `dead`, `grade`, `day` and `note` may be there. Counts left empty are 0, `alive` what the others leave of
/// those examined, an empty day `day`; rows without `examined` were not looked at. `name` is the file's.
/// Refused where the text is no such table at all.
[[nodiscard]] Result<Results> readResults(const HouseBook& book, const std::string& name, std::string text,
                                          Day day);

} // namespace warmbench::round
