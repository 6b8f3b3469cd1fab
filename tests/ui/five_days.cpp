#include "core/book/query.h"
#include "core/exchange/book/book_json.h"
#include "core/exchange/file/file.h"
#include "core/forecast/book_forecast.h"
#include "core/round/due.h"
#include "core/round/round.h"
#include "tests/ui/season_window.h"

#include <QLabel>
#include <QTreeWidget>

#include <algorithm>

/// Five days in the sample nursery by the window alone: planning, striking, checking, weaning, potting on.
using namespace warmbench;
using warmbench::tests::checkAll;
using warmbench::tests::doDue;
using warmbench::tests::planAndAccept;
using warmbench::tests::SeasonWindow;

namespace {

constexpr std::size_t mostSampleBytes = 64 << 20;

HouseBook sampleNursery() {
    auto text = exchange::readFile(WARMBENCH_SOURCE "/sample-data/nursery.json", mostSampleBytes);
    REQUIRE(text);
    auto book = readBook(*text);
    REQUIRE(book);
    return std::move(*book);
}

/// The batches of a target.
std::vector<BatchId> batchesOf(const HouseBook& book, TargetId target) {
    std::vector<BatchId> all;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.target == target) all.push_back(id);
    return all;
}

/// The planned batch that is struck first of those that are all that their targets have.
const Batch& followed(const HouseBook& book) {
    const Batch* first = nullptr;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Planned || !batch.target) continue;
        if (batchesOf(book, *batch.target).size() != 1) continue;
        if (!first || batch.strikeDay < first->strikeDay) first = &batch;
    }
    REQUIRE(first);
    return *first;
}

bool isDue(const HouseBook& book, BatchId batch, round::Task task, Day day) {
    const auto due = round::dueOn(book, forecast::BookForecast(book, day));
    return std::any_of(due.begin(), due.end(),
                       [&](const round::Due& one) { return one.batch == batch && one.task == task; });
}

bool isWorthALook(const HouseBook& book, BatchId batch, Day day) {
    const auto stops = round::roundOn(book, forecast::BookForecast(book, day));
    return std::any_of(stops.begin(), stops.end(),
                       [&](const round::Stop& stop) { return stop.batch == batch; });
}

void strikeFromToday(SeasonWindow& nursery, const QString& code) {
    nursery.go("dayWork");
    auto* tasks = nursery.child<QTreeWidget>("todayList");
    const auto found = tasks->findItems(code, Qt::MatchExactly, 1);
    REQUIRE(found.size() == 1);
    tasks->setCurrentItem(found.front());
    nursery.click("todayDone");
}

} // namespace

TEST_CASE("Five days in the sample nursery end with a target met and its slots free") {
    const Day planning = *Day::make(2026, 12, 1);
    HouseBook book = sampleNursery();
    {
        SeasonWindow first(planning, std::move(book));
        planAndAccept(first);
        book = first.book();
    }
    const BatchId batch = followed(book).id;
    const QString code = QString::fromStdString(book.get<Batch>(batch).code);
    const TargetId target = *book.get<Batch>(batch).target;
    INFO("batch " << code.toStdString());
    const Day striking = book.get<Batch>(batch).strikeDay;
    {
        SeasonWindow second(striking, std::move(book));
        strikeFromToday(second, code);
        book = second.book();
    }
    REQUIRE(book.get<Batch>(batch).state == BatchState::Struck);

    // A week before its rooting stay is over, as it was planned.
    const Day checking = staysInOrder(book, batch).front()->to - 7;
    REQUIRE(isWorthALook(book, batch, checking));
    {
        SeasonWindow third(checking, std::move(book));
        checkAll(third, code);
        book = third.book();
    }
    CHECK_FALSE(book.checksOf(batch).empty());

    // The place where it is to be weaned may be taken until the plan's day: she tries again each day.
    const Day planned = staysInOrder(book, batch).front()->to;
    Day weaning = checking;
    do {
        weaning = weaning + 1;
        REQUIRE(weaning <= planned);
        REQUIRE(isDue(book, batch, round::Task::Wean, weaning));
        SeasonWindow fourth(weaning, std::move(book));
        doDue(fourth, code);
        book = fourth.book();
        REQUIRE(stayOn(book, batch, weaning));
    } while (stayOn(book, batch, weaning)->stage == Stage::Rooting);

    const Recipe& recipe = book.get<Batch>(batch).recipe;
    const Day grown = weaning + (recipe.weanDays.value + recipe.growOnDays.value);
    const Day potting = std::min(grown, staysInOrder(book, batch).back()->to);
    REQUIRE(isDue(book, batch, round::Task::PotOn, potting));
    SeasonWindow fifth(potting, std::move(book));
    doDue(fifth, code);
    CHECK(fifth.book().get<Batch>(batch).state == BatchState::Ended);
    CHECK(pottedOn(fifth.book(), batch) >= fifth.book().get<Target>(target).plants);
    for (const StayId id : fifth.book().staysOf(batch)) CHECK(fifth.book().get<Stay>(id).to <= potting);
    fifth.go("targets");
    const auto rows =
        fifth.child<QTreeWidget>("targetsTable")
            ->findItems(QString::fromStdString(fifth.book().get<Target>(target).name), Qt::MatchExactly, 0);
    REQUIRE(rows.size() == 1);
    CHECK(rows.front()->text(7) == "met");
}
