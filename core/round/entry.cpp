#include "core/round/entry.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/rooting/proportion.h"

#include <algorithm>

namespace warmbench::round {
namespace {

std::string containerWords(const HouseBook& book, const RootCheck& check) {
    return containerCode(book.get<Batch>(check.batch).code, check.container);
}

rooting::Take rootedOf(const RootCheck& check) {
    return {check.rooted, check.examined};
}

/// Whether the second check finds fewer roots than random picks after the first one should: fewer than there
/// must be, or shares whose intervals lie apart.
bool rootsVanish(const RootCheck& before, const RootCheck& check, int standing) {
    const int least = before.rooted - (standing - check.examined);
    if (check.rooted < least) return true;
    constexpr double level = 0.95;
    return rooting::wilsonInterval(rootedOf(check), level).high <
           rooting::wilsonInterval(rootedOf(before), level).low;
}

} // namespace

Outcome wrongWith(const HouseBook& book, const RootCheck& check, Day today) {
    if (!book.find<Batch>(check.batch)) return Refusal{"batch", "there is no such batch in this book"};
    const std::string place = containerWords(book, check);
    if (check.day > today)
        return Refusal{place, "found " + check.day.iso() + ", expected a day up to " + today.iso()};
    if (check.rooted > check.examined)
        return Refusal{place, std::to_string(check.rooted) + " rooted, but only " +
                                  std::to_string(check.examined) + " examined"};
    return checkThing(book, check);
}

std::optional<std::string> questionAbout(const HouseBook& book, const RootCheck& check) {
    const Batch& batch = book.get<Batch>(check.batch);
    const RootCheck* before = latestCheck(book, check.batch, check.container, check.day);
    if (!before) return std::nullopt;
    const std::string place = containerWords(book, check);
    if (before->day == check.day)
        return place + ": it was looked at on " + check.day.iso() + " already (" +
               std::to_string(before->rooted) + " of " + std::to_string(before->examined) +
               " rooted); another check?";
    if (rootsVanish(*before, check, standing(book, batch, check.container, check.day - 1)))
        return place + ": " + std::to_string(check.rooted) + " of " + std::to_string(check.examined) +
               " rooted, but " + std::to_string(before->rooted) + " of " + std::to_string(before->examined) +
               " on " + before->day.iso() + "; have roots vanished?";
    return std::nullopt;
}

} // namespace warmbench::round
