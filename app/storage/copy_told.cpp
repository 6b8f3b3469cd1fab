#include "app/storage/copy_told.h"

#include <algorithm>

namespace warmbench::app {

Result<CopyTold> toldByCopy(const BookFile& home, const BookFile& copy) {
    const auto here = home.journalLines();
    if (!here) return here.refusal();
    const auto there = copy.journalLines();
    if (!there) return there.refusal();
    const auto parted = std::mismatch(here->begin(), here->end(), there->begin(), there->end()).second;
    return CopyTold{parted != there->begin(), {parted, there->end()}};
}

} // namespace warmbench::app
