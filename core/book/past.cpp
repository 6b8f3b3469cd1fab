#include "core/book/past.h"

namespace warmbench {

Result<HouseBook> bookBefore(HouseBook now, const std::vector<Change>& latestFirst) {
    for (const Change& change : latestFirst)
        if (auto refusal = now.apply(change.inverse())) return *refusal;
    return now;
}

} // namespace warmbench
