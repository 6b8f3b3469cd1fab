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
    if (!book.find<Batch>(check.batch))
        return Refusal{"batch", phrase("there is no such batch in this book")};
    const std::string place = containerWords(book, check);
    if (check.day > today)
        return Refusal{place, phrase("found %1, expected a day up to %2", check.day, today)};
    if (check.rooted > check.examined)
        return Refusal{place, phrase("%1 rooted, but only %2 examined", check.rooted, check.examined)};
    return checkThing(book, check);
}

std::optional<Phrase> questionAbout(const HouseBook& book, const RootCheck& check) {
    const Batch& batch = book.get<Batch>(check.batch);
    const RootCheck* before = latestCheck(book, check.batch, check.container, check.day);
    if (!before) return std::nullopt;
    const std::string place = containerWords(book, check);
    if (before->day == check.day)
        return phrase("%1: it was looked at on %2 already (%3 of %4 rooted); another check?", place,
                      check.day, before->rooted, before->examined);
    if (rootsVanish(*before, check, standing(book, batch, check.container, check.day - 1)))
        return phrase("%1: %2 of %3 rooted, but %4 of %5 on %6; have roots vanished?", place, check.rooted,
                      check.examined, before->rooted, before->examined, before->day);
    return std::nullopt;
}

} // namespace warmbench::round
