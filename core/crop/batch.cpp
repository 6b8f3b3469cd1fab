#include "core/crop/batch.h"

#include <cstdio>

namespace warmbench {

std::string batchCode(Day strikeDay, int letter) {
    std::string letters;
    for (int rest = letter + 1; rest > 0; rest = (rest - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
    char head[32];
    std::snprintf(head, sizeof head, "%02d-%03d-", strikeDay.year() % 100, strikeDay.dayOfYear());
    return head + letters;
}

} // namespace warmbench
