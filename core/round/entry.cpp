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

/// What keeps a check of a copy out of the book.
Outcome conflictOf(const HouseBook& book, const RootCheck& check) {
    if (auto refusal = wrongWith(book, check, Day::last())) return refusal;
    for (const RootCheckId id : book.checksOf(check.batch)) {
        const RootCheck& other = book.get<RootCheck>(id);
        if (other.container != check.container || other.day != check.day) continue;
        return Refusal{containerWords(book, check),
                       "it was looked at on " + check.day.iso() +
                           " in both books: " + std::to_string(other.rooted) + " of " +
                           std::to_string(other.examined) + " rooted here, " + std::to_string(check.rooted) +
                           " of " + std::to_string(check.examined) + " in the copy"};
    }
    return std::nullopt;
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

RoundMerge mergeRound(const HouseBook& book, const HouseBook& copy) {
    const auto codeIn = [](const HouseBook& one, const RootCheck& check) {
        return one.get<Batch>(check.batch).code;
    };
    std::vector<decltype(contentOf({}, {}))> known;
    for (const auto& [id, check] : book.all<RootCheck>())
        known.push_back(contentOf(codeIn(book, check), check));
    std::sort(known.begin(), known.end());
    std::vector<const RootCheck*> added;
    for (const auto& [id, check] : copy.all<RootCheck>()) {
        const auto content = contentOf(codeIn(copy, check), check);
        const auto found = std::lower_bound(known.begin(), known.end(), content);
        if (found != known.end() && *found == content)
            known.erase(found);
        else
            added.push_back(&check);
    }
    std::stable_sort(added.begin(), added.end(),
                     [](const RootCheck* a, const RootCheck* b) { return a->day < b->day; });
    RoundMerge merge;
    for (const RootCheck* check : added) {
        const std::string code = codeIn(copy, *check);
        const Batch* batch = findBatch(book, code);
        if (!batch) {
            merge.conflicts.push_back({containerCode(code, check->container), "this book has no such batch"});
            continue;
        }
        RootCheck made = *check;
        made.id = {};
        made.batch = batch->id;
        if (auto refusal = conflictOf(book, made))
            merge.conflicts.push_back(*refusal);
        else
            merge.checks.push_back(std::move(made));
    }
    return merge;
}

} // namespace warmbench::round
