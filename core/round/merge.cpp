#include "core/round/merge.h"

#include "core/book/query.h"
#include "core/round/entry.h"
#include "core/round/weaning.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>
#include <variant>

namespace warmbench::round {
namespace {

/// A batch that is weaned on a day, as a deed of the round.
struct Weaning {
    BatchId batch;
    Day day;
};

using Deed = std::variant<RootCheck, Loss, Weaning, Potting>;

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
    [[nodiscard]] std::string place() const {
        return std::visit(
            [&](const auto& one) {
                if constexpr (std::is_same_v<std::remove_cvref_t<decltype(one)>, Weaning>)
                    return code;
                else
                    return containerCode(code, one.container);
            },
            deed);
    }
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

Phrase words(const RootCheck& one) {
    return phrase("%1 of %2 rooted", one.rooted, one.examined);
}
Phrase words(const Loss& one) {
    return phrase("%1 lost", one.cuttings);
}
Phrase words(const Potting& one) {
    return phrase("%1 potted on", one.plants);
}
const char* seen(const RootCheck&) {
    return pattern("it was looked at on %1 in both books: %2 here, %3 in the copy");
}
const char* seen(const Loss&) {
    return pattern("cuttings of it were lost on %1 in both books: %2 here, %3 in the copy");
}
const char* seen(const Potting&) {
    return pattern("it was potted on on %1 in both books: %2 here, %3 in the copy");
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
            return Refusal{place, phrase(seen(deed), deed.day, words(other), words(deed))};
    return std::nullopt;
}
Outcome saidOtherwise(const HouseBook&, const Weaning&, const std::string&) {
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
        return Refusal{
            containerCode(batch.code, loss.container),
            phrase("%1 were thrown away in the copy, but %2 stand in it here", loss.cuttings, here)};
    return Command{Discard{loss.batch, loss.day, {loss.container}, loss.reason}};
}

Result<Command> commandFor(const HouseBook&, const HouseBook&, Potting potting) {
    return Command{
        PotOn{potting.batch, potting.day, {{potting.container, potting.plants, potting.lost}}, potting.note}};
}

Result<Command> commandFor(const HouseBook& trial, const HouseBook&, const Weaning& weaning) {
    auto command = weanCommand(trial, weaning.batch, weaning.day);
    if (command) return command;
    return Refusal{command.refusal().place, phrase("it was weaned on %1 in the copy, but here: %2",
                                                   weaning.day, command.refusal().what)};
}

/// The days on which parts of a batch were weaned.
std::set<Day> weaningDays(const HouseBook& book, BatchId batch) {
    std::set<Day> days;
    for (const StayId id : book.staysOf(batch))
        if (const auto day = book.get<Stay>(id).weanedOn) days.insert(*day);
    return days;
}

/// Adds the weanings of batches of which no part was weaned that day in the book.
void addWeanings(std::vector<Carried>& found, const HouseBook& book, const HouseBook& copy) {
    for (const auto& [id, weaned] : copy.all<Batch>()) {
        const Batch* here = findBatch(book, weaned.code);
        const std::set<Day> known = here ? weaningDays(book, here->id) : std::set<Day>{};
        for (const Day day : weaningDays(copy, id))
            if (!known.contains(day)) found.push_back({weaned.code, Weaning{{}, day}});
    }
}

void note(RoundDeeds& deeds, const Carried& one) {
    std::size_t* const counts[] = {&deeds.checks, &deeds.losses, &deeds.weanings, &deeds.pottings};
    ++*counts[one.deed.index()];
    deeds.first = std::min(deeds.first, one.day());
    deeds.last = std::max(deeds.last, one.day());
}

} // namespace

RoundMerge mergeRound(const HouseBook& book, const HouseBook& copy) {
    std::vector<Carried> carried;
    addNew<RootCheck>(carried, book, copy);
    addNew<Loss>(carried, book, copy);
    addNew<Potting>(carried, book, copy);
    addWeanings(carried, book, copy);
    std::stable_sort(carried.begin(), carried.end(), [](const Carried& a, const Carried& b) {
        return std::pair(a.day(), a.deed.index()) < std::pair(b.day(), b.deed.index());
    });
    RoundMerge merge;
    HouseBook trial = book;
    for (Carried& one : carried) {
        const Batch* batch = findBatch(book, one.code);
        if (!batch) {
            merge.conflicts.push_back({one.place(), phrase("this book has no such batch")});
            continue;
        }
        const auto brought = std::visit(
            [&](auto deed) -> Result<Command> {
                if constexpr (!std::is_same_v<decltype(deed), Weaning>) deed.id = {};
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
        for (RoundDeeds* deeds : {&merge.all, &merge.byBatch[batch->id]}) note(*deeds, one);
    }
    return merge;
}

Command bringHome(const RoundMerge& merge, const std::string& copy) {
    return {Group{phrase("Bring home the round in %1", copy).text(), merge.commands}};
}

} // namespace warmbench::round
