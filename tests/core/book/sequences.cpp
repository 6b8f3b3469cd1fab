#include "core/book/command.h"
#include "core/book/refit.h"
#include "core/book/rules.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// Draws small numbers from a list, so that a failing sequence can be shrunk; 0 when it is used up.
class Choices {
public:
    explicit Choices(const std::vector<std::uint8_t>& numbers) : m_numbers(numbers) {}
    [[nodiscard]] bool left() const { return m_at < m_numbers.size(); }
    /// From 0 to below `most`.
    int below(int most) { return left() ? m_numbers[m_at++] % most : 0; }
    Day day() { return tests::day("2027-02-10") + below(80); }
    template <class E>
    IdOf<E> idIn(const HouseBook& book) {
        // Now and then one that is not there.
        return {1 + below(static_cast<int>(book.all<E>().size()) + 1)};
    }

private:
    const std::vector<std::uint8_t>& m_numbers;
    std::size_t m_at = 0;
};

std::vector<Place> anyPlaces(Choices& choices) {
    const int count = 1 + choices.below(4);
    std::vector<Place> places;
    places.reserve(static_cast<std::size_t>(count));
    const int row = choices.below(4);
    const int width = choices.below(3) == 0 ? 3 : 1;
    for (int i = 0; i < count; ++i) places.push_back({i + 1, {row, i * width, 1, width}});
    return places;
}

Stay anyStay(const HouseBook& book, Choices& choices) {
    const Day from = choices.day();
    return {{},   choices.idIn<Batch>(book), Stage::Weaning,    choices.idIn<Zone>(book),
            from, from + choices.below(30),  anyPlaces(choices)};
}

Command addBatch(const SmallBook& small, const HouseBook& book, Choices& choices) {
    const Batch* model = book.find<Batch>(small.struck);
    Batch batch;
    if (model) batch = *model;
    batch.code.clear();
    batch.strikeDay = choices.day();
    batch.containerType = choices.idIn<ContainerType>(book);
    batch.containers.assign(static_cast<std::size_t>(choices.below(4)) + 1, {0, 1 + choices.below(6)});
    batch.state = choices.below(2) == 0 ? BatchState::Planned : BatchState::Struck;
    Stay stay = anyStay(book, choices);
    stay.from = batch.strikeDay;
    stay.to = stay.from + 1 + choices.below(30);
    return {AddBatch{batch, {stay}}};
}

RootCheck anyCheck(const HouseBook& book, Choices& choices) {
    RootCheck check;
    check.batch = choices.idIn<Batch>(book);
    check.container = 1 + choices.below(4);
    check.day = choices.day();
    check.rooted = choices.below(4);
    check.dead = choices.below(3);
    check.examined = check.rooted + check.dead;
    return check;
}

Command anyCommand(const SmallBook& small, const HouseBook& book, Choices& choices);

Command anyGroup(const SmallBook& small, const HouseBook& book, Choices& choices) {
    Group group;
    const int count = 1 + choices.below(3);
    for (int i = 0; i < count; ++i) group.commands.push_back(anyCommand(small, book, choices));
    return {group};
}

Command anyPut(const HouseBook& book, Choices& choices) {
    const std::string name = "N" + std::to_string(choices.below(5));
    switch (choices.below(5)) {
    case 0:
        return {
            Put<Taxon>{{choices.below(2) == 0 ? TaxonId{} : choices.idIn<Taxon>(book), name, {}, {}, ""}}};
    case 1: {
        const ZoneId id = choices.idIn<Zone>(book);
        Zone zone = book.find<Zone>(id) ? book.get<Zone>(id) : Zone{};
        zone.rows = 1 + choices.below(4);
        zone.blocked = {{choices.below(4), choices.below(4)}};
        return {Put<Zone>{zone}};
    }
    case 2:
        return {Put<Target>{{{},
                             name,
                             choices.idIn<Taxon>(book),
                             choices.below(50),
                             choices.day(),
                             Money{100},
                             std::nullopt,
                             ""}}};
    case 3:
        return {Put<HandDay>{{{}, choices.day(), choices.below(100), ""}}};
    default: {
        const ContainerTypeId id = choices.idIn<ContainerType>(book);
        ContainerType type = book.find<ContainerType>(id) ? book.get<ContainerType>(id) : ContainerType{};
        type.footprint.width = 1 + choices.below(3);
        return {Put<ContainerType>{type}};
    }
    }
}

Command anyRemove(const HouseBook& book, Choices& choices) {
    switch (choices.below(6)) {
    case 0:
        return {Remove<Taxon>{choices.idIn<Taxon>(book)}};
    case 1:
        return {Remove<Zone>{choices.idIn<Zone>(book)}};
    case 2:
        return {Remove<Target>{choices.idIn<Target>(book)}};
    case 3:
        return {Remove<Recipe>{choices.idIn<Recipe>(book)}};
    case 4:
        return {Remove<ContainerType>{choices.idIn<ContainerType>(book)}};
    default:
        return {Remove<Bench>{choices.idIn<Bench>(book)}};
    }
}

/// A bench or zone of another shape, or taken away.
Command anyRefit(const HouseBook& book, Choices& choices) {
    const Day day = choices.day();
    if (choices.below(4) == 0) return {ClearAway{day, choices.idIn<Zone>(book)}};
    if (choices.below(3) == 0) {
        const BenchId id = choices.idIn<Bench>(book);
        Bench bench = book.find<Bench>(id) ? book.get<Bench>(id) : Bench{};
        bench.rows = 1 + choices.below(5);
        bench.cols = 4 + choices.below(10);
        return {Refit{day, bench}};
    }
    const ZoneId id = choices.idIn<Zone>(book);
    const Zone zone = book.find<Zone>(id) ? book.get<Zone>(id) : Zone{};
    return {Refit{day, reshaped(zone, {choices.below(3), choices.below(9), 1 + choices.below(4),
                                       1 + choices.below(8)})}};
}

Command anyCommand(const SmallBook& small, const HouseBook& book, Choices& choices) {
    switch (choices.below(16)) {
    case 0:
    case 1:
        return addBatch(small, book, choices);
    case 2:
        return {StrikeBatch{choices.idIn<Batch>(book), choices.day()}};
    case 3:
        return {RemoveBatch{choices.idIn<Batch>(book)}};
    case 4: {
        const Stay to = anyStay(book, choices);
        return {MoveStay{choices.idIn<Stay>(book), to.zone, to.from, to.to, to.places}};
    }
    case 5:
        return {AddStay{anyStay(book, choices)}};
    case 6:
        return {RemoveStay{choices.idIn<Stay>(book)}};
    case 7: {
        const Day from = choices.day();
        const Day to = from + 1 + choices.below(20);
        const Celsius setPoint{180 + 20 * choices.below(4)};
        return {SetMatRuns{choices.idIn<Zone>(book), from, to, {{{}, {}, from, to, setPoint}}}};
    }
    case 8:
        return {RecordCheck{anyCheck(book, choices)}};
    case 9:
        return {RecordLoss{
            {{}, choices.idIn<Batch>(book), 1 + choices.below(4), choices.day(), choices.below(4), "rot"}}};
    case 10: {
        const BatchId batch = choices.idIn<Batch>(book);
        return {
            PotOn{batch, choices.day(), {{1 + choices.below(4), choices.below(6), choices.below(2)}}, ""}};
    }
    case 11: {
        std::vector<int> containers;
        if (choices.below(2) == 0) containers = {1 + choices.below(4)};
        return {Discard{choices.idIn<Batch>(book), choices.day(), containers, "rot"}};
    }
    case 12:
        return anyRefit(book, choices);
    case 13:
        return {WeanStay{choices.idIn<Stay>(book), choices.day()}};
    case 14:
        return choices.below(2) == 0 ? anyPut(book, choices) : anyRemove(book, choices);
    default:
        return anyGroup(small, book, choices);
    }
}

} // namespace

TEST_CASE("Whatever is done, the book stays sound, refused commands change nothing, and all can be undone") {
    const SmallBook small = smallBook();
    int done = 0;
    int refused = 0;
    const bool held = rc::check("sequences of commands", [&](const std::vector<std::uint8_t>& numbers) {
        HouseBook book = small.book;
        std::vector<Change> changes;
        Choices choices(numbers);
        while (choices.left()) {
            const Command command = anyCommand(small, book, choices);
            const HouseBook before = book;
            const Result<Change> change = book.perform(command);
            if (change) {
                RC_ASSERT(audit(book).empty());
                changes.push_back(*change);
                ++done;
            } else {
                RC_ASSERT(!change.refusal().what.empty());
                RC_ASSERT(book == before);
                ++refused;
            }
        }
        const HouseBook after = book;
        for (auto change = changes.rbegin(); change != changes.rend(); ++change)
            RC_ASSERT(!book.apply(change->inverse()));
        RC_ASSERT(book == small.book);
        for (const Change& change : changes) RC_ASSERT(!book.apply(change));
        RC_ASSERT(book == after);
    });
    CHECK(held);
    CHECK(done > 300);
    CHECK(refused > 300);
}
