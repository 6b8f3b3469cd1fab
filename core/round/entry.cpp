#include "core/round/entry.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/rooting/proportion.h"

#include <algorithm>
#include <tuple>

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

auto contentOf(const std::string& code, const RootCheck& check) {
    return std::tuple(code, check.container, check.day, check.examined, check.rooted, check.callused,
                      check.alive, check.dead, check.grade, check.note);
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

Result<std::vector<RootCheck>> checksToMerge(const HouseBook& book, const HouseBook& copy) {
    const auto codeIn = [](const HouseBook& one, const RootCheck& check) {
        return one.get<Batch>(check.batch).code;
    };
    std::vector<decltype(contentOf({}, {}))> known;
    for (const auto& [id, check] : book.all<RootCheck>())
        known.push_back(contentOf(codeIn(book, check), check));
    std::sort(known.begin(), known.end());
    std::vector<RootCheck> added;
    for (const auto& [id, check] : copy.all<RootCheck>()) {
        const std::string code = codeIn(copy, check);
        const auto found = std::lower_bound(known.begin(), known.end(), contentOf(code, check));
        if (found != known.end() && *found == contentOf(code, check)) {
            known.erase(found);
            continue;
        }
        const Batch* batch = findBatch(book, code);
        if (!batch)
            return Refusal{code, "found a check of it in the copy, expected a batch that this book has too"};
        RootCheck made = check;
        made.id = {};
        made.batch = batch->id;
        added.push_back(std::move(made));
    }
    std::stable_sort(added.begin(), added.end(),
                     [](const RootCheck& a, const RootCheck& b) { return a.day < b.day; });
    return added;
}

} // namespace warmbench::round
