#pragma once

#include "core/book/house_book.h"
#include "core/climate/packed_readings.h"

#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

/// Commands are data: what a person asks of a house book. `expand` turns one into a change,
/// HouseBook::perform does it if every rule still holds. A new command is one struct here, one `changeFor` in
/// expand.cpp, one name in words.cpp and one test.
namespace warmbench {

/// Adds a thing (its id 0: the book hands one out) or replaces the one with its id. Not for batches, stays,
/// checks, pottings and losses, which have commands of their own.
template <class E>
struct Put {
    E thing;
};

/// Removes a thing that nothing else rests on.
template <class E>
struct Remove {
    IdOf<E> id;
};

/// Adds a batch, planned or struck, with its stays. Ids of all are handed out; an empty code is filled in,
/// and containers numbered 0 are numbered from 1.
struct AddBatch {
    Batch batch;
    std::vector<Stay> stays;
};

/// Strikes a planned batch. Struck on another day than planned, it gets that day's code and its stays move
/// along.
struct StrikeBatch {
    BatchId batch;
    Day day;
};

/// Plans a planned batch anew: another strike day, other stays instead of those that it has, or none. Planned
/// for another day, it gets that day's code. The stays keep their ids in the order of their first days.
struct PlanBatch {
    BatchId batch;
    Day strikeDay;
    std::vector<Stay> stays; ///< ids and batch are filled in
};

/// Takes a planned batch, with its stays, out of the book.
struct RemoveBatch {
    BatchId batch;
};

/// Sets what may change in a batch after it was struck: its target, its note.
struct DescribeBatch {
    BatchId batch;
    std::optional<TargetId> target;
    std::string note;
};

/// Gives a stay other slots, another zone or other days.
struct MoveStay {
    StayId stay;
    ZoneId zone;
    Day from;
    Day to;
    std::vector<Place> places;
};

/// Adds a stay to a batch, such as weaning or growing on.
struct AddStay {
    Stay stay;
};

struct RemoveStay {
    StayId stay;
};

/// Says that the containers of a stay, which no longer root in it, were weaned on a day.
struct WeanStay {
    StayId stay;
    Day day;
};

/// Makes the runs of one zone's mat on the days from <= day < to exactly these; runs across an end are cut
/// there.
struct SetMatRuns {
    ZoneId zone;
    Day from;
    Day to;
    std::vector<MatRun> runs; ///< inside those days; ids and zone are filled in
};

/// Writes down a root check (its id is handed out).
struct RecordCheck {
    RootCheck check;
};

struct RemoveCheck {
    RootCheckId check;
};

/// Cuttings of one container that died or were thrown away; the container keeps its slots.
struct RecordLoss {
    Loss loss;
};

/// What came out of one container at potting on.
struct PottedContainer {
    int container = 1;
    int plants = 0;
    int lost = 0;
};

/// Pots on containers of a batch: counts plants and losses, and frees the slots of every container that is
/// empty after it from `day` on. A batch with nothing left ends.
struct PotOn {
    BatchId batch;
    Day day;
    std::vector<PottedContainer> containers;
    std::string note;
};

/// Throws whole containers away, with the reason: all that stands in them is lost, their slots are free.
struct Discard {
    BatchId batch;
    Day day;
    std::vector<int> containers; ///< empty: all of the batch
    std::string reason;
};

/// Gives a bench or a zone another place, size, cover or mat. What stands there stays: on its slots of the
/// bench where a zone grows or shrinks, with its zone where that moves as a whole. Containers for which the
/// new shape has no slots lose their places from `day` on and wait to be placed again; a zone that would
/// leave its bench is cut. Runs of a mat from `day` on at a set-point that it has no more are taken out, and
/// all of its runs from the day on from which it is out of order.
/// Where a stay that was over by `day` has lost its slots, its containers are shown on other slots of the
/// zone, so that the days that they spent there still count. `effectOf` (refit.h) tells all of that before it
/// is done.
struct Refit {
    Day day;
    std::variant<Bench, Zone> thing; ///< as it is to be, with its id
};

/// Takes a bench or a zone away. What stands there from `day` on loses its place and waits to be placed
/// again. Refused where something stood there before, as its warmth is reckoned from that.
struct ClearAway {
    Day day;
    std::variant<BenchId, ZoneId> thing;
};

/// A channel's readings, their minutes rising.
struct ChannelReadings {
    Channel channel = Channel::RootZone;
    std::vector<climate::MinuteReading> readings;
};

/// Keeps what a logger measured in a place. Where the book has a reading of the same channel and minute
/// there already, that one stays and the new one is left out.
struct KeepReadings {
    ReadingPlace place;
    std::vector<ChannelReadings> channels;
};

/// Takes the readings of the days from <= day < to out of the book: of one channel in a place, or of all.
struct RemoveReadings {
    ReadingPlace place;
    std::optional<Channel> channel;
    Day from;
    Day to;
};

/// Several commands that are done, undone and named as one.
struct Group {
    std::string label;
    std::vector<Command> commands;
};

/// Any command. Its copying is compiled once, as its kinds are many and large.
struct Command {
    template <class C>
    requires(!std::is_same_v<std::remove_cvref_t<C>, Command>) Command(C command)
        : what(std::move(command)) {}
    Command(const Command& other);
    Command(Command&& other) noexcept;
    Command& operator=(const Command& other);
    Command& operator=(Command&& other) noexcept;
    ~Command();

    std::variant<Put<Nursery>, Put<HandDay>, Put<House>, Put<Bench>, Put<Zone>, Put<ContainerType>,
                 Put<Medium>, Put<Taxon>, Put<Recipe>, Put<Stock>, Put<Target>, Remove<HandDay>,
                 Remove<House>, Remove<Bench>, Remove<Zone>, Remove<ContainerType>, Remove<Medium>,
                 Remove<Taxon>, Remove<Recipe>, Remove<Stock>, Remove<Target>, AddBatch, StrikeBatch,
                 PlanBatch, RemoveBatch, DescribeBatch, MoveStay, AddStay, RemoveStay, WeanStay, SetMatRuns,
                 RecordCheck, RemoveCheck, RecordLoss, PotOn, Discard, Refit, ClearAway, KeepReadings,
                 RemoveReadings, Group>
        what;
};

/// The change that a command asks of a book, not yet checked against the rules and not yet done.
/// Refused where the command speaks of things that are not there or makes no sense as such.
[[nodiscard]] Result<Change> expand(const HouseBook& book, const Command& command);

/// What a command will do, or has done, in a few words: `Record a root check of 27-048-A/07`. `book` is the
/// book before it.
[[nodiscard]] Phrase words(const HouseBook& book, const Command& command);

} // namespace warmbench
