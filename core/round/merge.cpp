#include "core/round/merge.h"

#include "core/book/query.h"
#include "core/round/entry.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>
#include <variant>

namespace warmbench::round {
namespace {

using Deed = std::variant<RootCheck, Loss, Potting>;

auto contentOf(const RootCheck& one) {
    return std::tuple(one.container, one.day, one.examined, one.rooted, one.callused, one.alive, one.dead,
                      one.grade, one.note);
}
auto contentOf(const Loss& one) {
    return std::tuple(one.container, one.day, one.cuttings, one.reason);
}
auto contentOf(const Potting& one) {
    return std::tuple(one.container, one.day, one.plants, one.lost, one.note);
}

/// A deed of the copy, and the code of its batch, by which the book knows it.
struct Carried {
    std::string code;
    Deed deed;

    [[nodiscard]] Day day() const {
        return std::visit([](const auto& one) { return one.day; }, deed);
    }
    [[nodiscard]] int container() const {
        return std::visit([](const auto& one) { return one.container; }, deed);
    }
    [[nodiscard]] std::string place() const { return containerCode(code, container()); }
};

/// What the copy has of one kind and the book has not, each as often as it is there more.
template <class E>
void addNew(std::vector<Carried>& found, const HouseBook& book, const HouseBook& copy) {
    const auto keyIn = [](const HouseBook& one, const E& thing) {
        return std::pair(one.get<Batch>(thing.batch).code, contentOf(thing));
    };
    std::multiset<decltype(keyIn(book, E{}))> known;
    for (const auto& [id, thing] : book.all<E>()) known.insert(keyIn(book, thing));
    for (const auto& [id, thing] : copy.all<E>()) {
        auto key = keyIn(copy, thing);
        const auto same = known.find(key);
        if (same != known.end())
            known.erase(same);
        else
            found.push_back({std::move(key.first), thing});
    }
}

std::string words(const RootCheck& one) {
    return std::to_string(one.rooted) + " of " + std::to_string(one.examined) + " rooted";
}
std::string words(const Loss& one) {
    return std::to_string(one.cuttings) + " lost";
}
std::string words(const Potting& one) {
    return std::to_string(one.plants) + " potted on";
}
const char* seen(const RootCheck&) {
    return "it was looked at on ";
}
const char* seen(const Loss&) {
    return "cuttings of it were lost on ";
}
const char* seen(const Potting&) {
    return "it was potted on on ";
}

const auto& idsOf(const HouseBook& book, const RootCheck& one) {
    return book.checksOf(one.batch);
}
const auto& idsOf(const HouseBook& book, const Loss& one) {
    return book.lossesOf(one.batch);
}
const auto& idsOf(const HouseBook& book, const Potting& one) {
    return book.pottingsOf(one.batch);
}

/// Whether the book has another result of the same container and day.
template <class E>
Outcome saidOtherwise(const HouseBook& book, const E& deed, const std::string& place) {
    for (const auto id : idsOf(book, deed))
        if (const E& other = book.get<E>(id); other.container == deed.container && other.day == deed.day)
            return Refusal{place, seen(deed) + deed.day.iso() + " in both books: " + words(other) +
                                      " here, " + words(deed) + " in the copy"};
    return std::nullopt;
}

Result<Command> commandFor(const HouseBook& trial, const HouseBook&, RootCheck check) {
    if (auto refusal = wrongWith(trial, check, Day::last())) return *refusal;
    return Command{RecordCheck{std::move(check)}};
}

Result<Command> commandFor(const HouseBook& trial, const HouseBook& copy, Loss loss) {
    const Batch& batch = trial.get<Batch>(loss.batch);
    const Batch& inCopy = *findBatch(copy, batch.code);
    const bool emptied = standing(copy, inCopy, loss.container, loss.day) == 0;
    if (!emptied) return Command{RecordLoss{std::move(loss)}};
    const int here = standing(trial, batch, loss.container, loss.day);
    if (here != loss.cuttings)
        return Refusal{containerCode(batch.code, loss.container),
                       std::to_string(loss.cuttings) + " were thrown away in the copy, but " +
                           std::to_string(here) + " stand in it here"};
    return Command{Discard{loss.batch, loss.day, {loss.container}, loss.reason}};
}

Result<Command> commandFor(const HouseBook&, const HouseBook&, Potting potting) {
    return Command{
        PotOn{potting.batch, potting.day, {{potting.container, potting.plants, potting.lost}}, potting.note}};
}

} // namespace

RoundMerge mergeRound(const HouseBook& book, const HouseBook& copy) {
    std::vector<Carried> carried;
    addNew<RootCheck>(carried, book, copy);
    addNew<Loss>(carried, book, copy);
    addNew<Potting>(carried, book, copy);
    std::stable_sort(carried.begin(), carried.end(), [](const Carried& a, const Carried& b) {
        return std::pair(a.day(), a.deed.index()) < std::pair(b.day(), b.deed.index());
    });
    RoundMerge merge;
    HouseBook trial = book;
    for (Carried& one : carried) {
        const Batch* batch = findBatch(book, one.code);
        if (!batch) {
            merge.conflicts.push_back({one.place(), "this book has no such batch"});
            continue;
        }
        const auto brought = std::visit(
            [&](auto deed) -> Result<Command> {
                deed.id = {};
                deed.batch = batch->id;
                if (auto refusal = saidOtherwise(book, deed, one.place())) return *refusal;
                auto command = commandFor(trial, copy, std::move(deed));
                if (!command) return command;
                const auto change = trial.perform(*command);
                return change ? command : Result<Command>(change.refusal());
            },
            one.deed);
        if (!brought) {
            merge.conflicts.push_back(brought.refusal());
            continue;
        }
        merge.commands.push_back(*brought);
        std::size_t* const counts[] = {&merge.checks, &merge.losses, &merge.pottings};
        ++*counts[one.deed.index()];
    }
    return merge;
}

} // namespace warmbench::round
