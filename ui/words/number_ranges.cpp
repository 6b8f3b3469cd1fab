#include "ui/words/number_ranges.h"

#include "ui/words/say.h"

#include <algorithm>

namespace warmbench::ui {

QString numberRanges(std::vector<int> numbers, const Wording& wording) {
    std::sort(numbers.begin(), numbers.end());
    QStringList ranges;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
        ranges += last == i ? wording.number(numbers[i])
                            : say("%1 to %2").arg(wording.number(numbers[i]), wording.number(numbers[last]));
        i = last + 1;
    }
    return ranges.join(QStringLiteral(", "));
}

} // namespace warmbench::ui
