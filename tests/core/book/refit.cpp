#include "core/book/refit.h"

#include "core/book/query.h"
#include "core/book/rules.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// The small book on 2027-03-10, with what is asked of its benches and zones.
struct Refitting {
    SmallBook small = smallBook();
    Day today = day("2027-03-10");

    [[nodiscard]] Zone warm(SlotRect onBench) const {
        return reshaped(small.book.get<Zone>(small.warm), onBench);
    }
    [[nodiscard]] Bench bench() const { return small.book.get<Bench>(small.bench); }
    [[nodiscard]] RefitEffect effect(const Refit& refit) const {
        const auto effect = effectOf(small.book, refit);
        REQUIRE(effect);
        return *effect;
    }
    /// Does it, takes it back and does it again; the book is sound after each.
    void perform(const Command& command) {
        const HouseBook before = small.book;
        const auto change = small.book.perform(command);
        if (!change) FAIL(change.refusal().text());
        const HouseBook after = small.book;
        CHECK(audit(small.book).empty());
        REQUIRE(!small.book.apply(change->inverse()));
        CHECK(small.book == before);
        REQUIRE(!small.book.apply(*change));
        CHECK(small.book == after);
        CHECK(!words(before, command).empty());
    }
    /// Containers of a batch that stand somewhere on a day.
    [[nodiscard]] int placed(BatchId batch, Day on) const {
        int count = 0;
        for (const StayId id : small.book.staysOf(batch)) {
            const Stay& stay = small.book.get<Stay>(id);
            if (stay.from <= on && on < stay.to) count += static_cast<int>(stay.places.size());
        }
        return count;
    }
};

} // namespace

TEST_CASE("A zone that grows to the left and back keeps its containers on their slots of the bench") {
    Refitting refitting;
    HouseBook& book = refitting.small.book;
    const ZoneId cool = refitting.small.cool;
    const Zone before = book.get<Zone>(cool);
    // Room is made for it first: the warm zone gives two columns away, on which nothing stands.
    refitting.perform({Refit{refitting.today, refitting.warm({0, 0, 4, 6})}});
    const SlotRect stood = book.get<Stay>(refitting.small.weaning).places.front().slots;
    SlotRect wider = before.onBench();
    wider.col -= 2;
    wider.width += 2;
    const Refit refit{refitting.today, reshaped(before, wider)};
    CHECK(refitting.effect(refit).empty());
    refitting.perform({refit});
    const SlotRect stands = book.get<Stay>(refitting.small.weaning).places.front().slots;
    CHECK(stands.col + book.get<Zone>(cool).col == stood.col + before.col);
    CHECK(stands.row == stood.row);
}

TEST_CASE("What a smaller zone has no slots for loses its place from that day, is told before, and is kept") {
    Refitting refitting;
    HouseBook& book = refitting.small.book;
    const HouseBook before = book;
    // Four pots of the struck batch stand in the back row, two trays of the planned one in the second.
    const Refit refit{refitting.today, refitting.warm({1, 0, 3, 8})};
    const RefitEffect effect = refitting.effect(refit);
    CHECK(effect.unplaced ==
          std::vector<RefitEffect::Containers>{{refitting.small.struck, {1, 2, 3, 4}, refitting.today}});
    CHECK(effect.redrawn ==
          std::vector<RefitEffect::Containers>{{refitting.small.struck, {1, 2, 3, 4}, day("2027-02-15")}});
    CHECK(effect.unshown.empty());
    CHECK(effect.gone.empty());
    refitting.perform({refit});
    CHECK(book.get<Batch>(refitting.small.struck) == before.get<Batch>(refitting.small.struck));
    CHECK(refitting.placed(refitting.small.struck, refitting.today) == 0);
    CHECK(refitting.placed(refitting.small.struck, refitting.today - 1) == 4);
    CHECK(refitting.placed(refitting.small.struck, day("2027-04-02")) == 4);
    CHECK(refitting.placed(refitting.small.planned, refitting.today) == 2);
}

TEST_CASE("A zone that moves as a whole takes along what stands in it") {
    Refitting refitting;
    HouseBook& book = refitting.small.book;
    refitting.perform({ClearAway{day("2027-02-01"), refitting.small.cool}});
    const Stay before = book.get<Stay>(refitting.small.rooting);
    const Refit refit{refitting.today, refitting.warm({0, 4, 4, 8})};
    CHECK(refitting.effect(refit).empty());
    refitting.perform({refit});
    CHECK(book.get<Stay>(refitting.small.rooting) == before);
    CHECK(book.get<Zone>(refitting.small.warm).col == 4);
}

TEST_CASE("A slot that is blocked takes its container's place, and only that one's") {
    Refitting refitting;
    Zone zone = refitting.small.book.get<Zone>(refitting.small.warm);
    const Place first = refitting.small.book.get<Stay>(refitting.small.rooting).places.front();
    zone.blocked.push_back({first.slots.row, first.slots.col});
    const Refit refit{refitting.today, zone};
    const RefitEffect effect = refitting.effect(refit);
    CHECK(effect.unplaced ==
          std::vector<RefitEffect::Containers>{{refitting.small.struck, {first.container}, refitting.today}});
    refitting.perform({refit});
    CHECK(refitting.placed(refitting.small.struck, refitting.today) == 3);
    CHECK(refitting.placed(refitting.small.struck, refitting.today - 1) == 4);
}

TEST_CASE("A bench that becomes shorter cuts its zones, and takes away one that would have nothing left") {
    Refitting refitting;
    HouseBook& book = refitting.small.book;
    Bench bench = refitting.bench();
    bench.cols = 10;
    const RefitEffect cut = refitting.effect({refitting.today, bench});
    CHECK(cut.cut == std::vector<ZoneId>{refitting.small.cool});
    CHECK(cut.gone.empty());
    bench.cols = 8;
    const RefitEffect gone = refitting.effect({refitting.today, bench});
    CHECK(gone.gone == std::vector<ZoneId>{refitting.small.cool});
    CHECK(gone.unplaced ==
          std::vector<RefitEffect::Containers>{{refitting.small.struck, {1, 2, 3, 4}, day("2027-04-01")}});
    refitting.perform({Refit{refitting.today, bench}});
    CHECK(!book.find<Zone>(refitting.small.cool));
    CHECK(book.find<Batch>(refitting.small.struck));
    CHECK(refitting.placed(refitting.small.struck, refitting.today) == 4);
}

TEST_CASE("A zone in which something has stood is not taken away, and says what to do instead") {
    Refitting refitting;
    const auto effect = effectOf(refitting.small.book, ClearAway{refitting.today, refitting.small.warm});
    REQUIRE(!effect);
    CHECK(effect.refusal().text().find("make the zone smaller instead") != std::string::npos);
    const auto bench = effectOf(refitting.small.book, ClearAway{refitting.today, refitting.small.bench});
    CHECK(!bench);
}

TEST_CASE("A mat loses only runs that have not begun; one that has run keeps its set-point") {
    Refitting refitting;
    Zone zone = refitting.small.book.get<Zone>(refitting.small.warm);
    zone.mat.reset();
    CHECK(!effectOf(refitting.small.book, Refit{refitting.today, zone}));
    const Refit before{day("2027-02-01"), zone};
    CHECK(refitting.effect(before).runs.size() == 1);
    refitting.perform({before});
    CHECK(refitting.small.book.matRunsOf(refitting.small.warm).empty());
}

TEST_CASE("A mat that has run and is taken away is said to be out of order, and the refusal says that") {
    Refitting refitting;
    Zone zone = refitting.small.book.get<Zone>(refitting.small.warm);
    zone.mat.reset();
    const auto refused = effectOf(refitting.small.book, Refit{refitting.today, zone});
    REQUIRE(!refused);
    CHECK(refused.refusal().text().find("keep the mat, and say from which day on it is out of order") !=
          std::string::npos);
    zone = refitting.small.book.get<Zone>(refitting.small.warm);
    zone.mat->setPoints = {Celsius{180}};
    const auto setPoint = effectOf(refitting.small.book, Refit{refitting.today, zone});
    REQUIRE(!setPoint);
    CHECK(setPoint.refusal().text().find("keep the mat and that set-point") != std::string::npos);
}

TEST_CASE("A mat that is out of order keeps what it did before that day and runs no more") {
    Refitting refitting;
    HouseBook& book = refitting.small.book;
    const ZoneId warm = refitting.small.warm;
    Zone zone = book.get<Zone>(warm);
    const Day broke = refitting.today - 2;
    zone.mat->outOfOrderFrom = broke;
    const Refit refit{refitting.today, zone};
    const RefitEffect effect = refitting.effect(refit);
    REQUIRE(effect.runs.size() == 1);
    CHECK(effect.runs.front().from == broke);
    CHECK(effect.runs.front().to == day("2027-04-01"));
    CHECK(effect.unplaced.empty());
    refitting.perform({refit});
    CHECK(setPointOn(book, warm, broke - 1) == Celsius{200});
    CHECK(!setPointOn(book, warm, broke));
    const Zone& out = book.get<Zone>(warm);
    CHECK(expectedRootZone(book, out, broke) == onDay(houseOf(book, out).unheatedRootZone, broke));
    CHECK(out.matOn(broke - 1));
    CHECK_FALSE(out.matOn(broke));
    CHECK_FALSE(out.matDuring(broke - 5, broke + 1));
    CHECK(out.matDuring(broke - 5, broke));

    const auto run = [&](Day from, Day to) {
        HouseBook tried = book;
        const auto change = tried.perform({SetMatRuns{warm, from, to, {{{}, {}, from, to, Celsius{200}}}}});
        return change ? std::string() : change.refusal().text();
    };
    CHECK(run(broke, broke + 10).find("its mat is out of order from 2027-03-08 on") != std::string::npos);
    CHECK(run(broke - 3, broke).empty());

    // Mended, it runs again; nothing of it comes back by itself.
    Zone mended = out;
    mended.mat->outOfOrderFrom.reset();
    CHECK(refitting.effect({refitting.today, mended}).empty());
    refitting.perform({Refit{refitting.today, mended}});
    CHECK(run(broke + 5, broke + 10).empty());
}

TEST_CASE("What would break a rule of the house is refused before anything is told") {
    Refitting refitting;
    Bench bench = refitting.bench();
    bench.x = Millimetres{11'900};
    const auto effect = effectOf(refitting.small.book, Refit{refitting.today, bench});
    REQUIRE(!effect);
    CHECK(effect.refusal().text().find("does not fit inside") != std::string::npos);
    CHECK(!effectOf(refitting.small.book, Refit{refitting.today, refitting.warm({0, 0, 4, 10})}));
}

TEST_CASE(
    "In a zone too small for all, each batch keeps one container of its past, so that its warmth counts") {
    Refitting refitting;
    HouseBook& book = refitting.small.book;
    // Beside the struck batch of four pots a second one of four stood in the zone.
    Batch other = book.get<Batch>(refitting.small.struck);
    other.id = {};
    other.code = "27-046-Z";
    Stay stay = book.get<Stay>(refitting.small.rooting);
    stay.id = {};
    for (Place& place : stay.places) place.slots.row = 3;
    refitting.perform({RemoveBatch{refitting.small.planned}});
    refitting.perform({AddBatch{other, {stay}}});
    const BatchId second = book.all<Batch>().rbegin()->first;
    // Two slots are left, on which neither stood.
    const Refit refit{refitting.today, refitting.warm({1, 6, 1, 2})};
    const RefitEffect effect = refitting.effect(refit);
    CHECK(effect.uncounted.empty());
    CHECK(effect.unplaced.size() == 2);
    CHECK(effect.redrawn.size() == 2);
    CHECK(effect.unshown.size() == 2);
    refitting.perform({refit});
    CHECK(refitting.placed(refitting.small.struck, refitting.today - 1) == 1);
    CHECK(refitting.placed(second, refitting.today - 1) == 1);
    // One slot is left: one of them is told to lose its days.
    Refitting again;
    again.small.book = book;
    const RefitEffect less =
        again.effect({again.today, reshaped(book.get<Zone>(again.small.warm), {1, 6, 1, 1})});
    CHECK(less.uncounted.size() == 1);
}
