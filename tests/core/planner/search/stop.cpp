#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/reasons/compromises.h"
#include "core/planner/reasons/reasons.h"
#include "core/planner/search/stream.h"
#include "core/planner/verify/verify.h"
#include "tests/support/planning_data.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace warmbench::planner;
using namespace warmbench::planner::search;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

namespace {

/// Says no so many times, then yes for ever, and counts.
class Patience {
public:
    explicit Patience(long most = std::numeric_limits<long>::max()) : m_most(most) {}
    [[nodiscard]] Stopped asked() {
        return [this] { return ++m_asks > m_most; };
    }
    [[nodiscard]] long asks() const { return m_asks; }

private:
    long m_most;
    long m_asks = 0;
};

bool goesOn() {
    return false;
}

Problem monthProblem() {
    return readProblem(fileText(planningData("p10-month.json"))).value();
}

std::size_t optionsOf(const Model& model) {
    std::size_t options = 0;
    for (const BatchModel& batch : model.batches)
        for (const StayModel& stay : batch.stays) options += stay.options.size();
    return options;
}

} // namespace

TEST_CASE(
    "While the model is made a stop is asked for with each kind of zone of each stay, and obeyed at once") {
    const Problem problem = monthProblem();
    Patience endless;
    const Model whole(problem, {1, 0, endless.asked()});
    std::size_t stays = 0;
    for (const Batch& batch : problem.batches) stays += batch.stays.size();
    CHECK(endless.asks() == static_cast<long>(stays * whole.classes.size()));

    Patience brief(7);
    const Model part(problem, {1, 0, brief.asked()});
    std::size_t states = 0;
    for (const ZoneClass& kind : whole.classes) states = std::max(states, kind.warmth.size());
    CHECK(optionsOf(part) <= 7 * states);
    CHECK(part.batches.size() == problem.batches.size());
}

TEST_CASE("The first plan asks before each batch, the search before each round") {
    const Problem problem = monthProblem();
    const Model model(problem);
    Stream stream(model, 1);
    Patience first(20);
    stream.begin(first.asked(), goesOn);
    CHECK(first.asks() <= 22);
    CHECK(stream.answer().placed.size() <= 20);
    CHECK(stream.answer().placed.size() + stream.answer().unplaced.size() == problem.batches.size());

    CHECK_FALSE(stream.answer().placed.empty());

    Patience rounds(5);
    stream.run(100, {}, rounds.asked());
    CHECK(stream.rounds() == 5);
}

TEST_CASE("A first plan that is given up while its zones are packed places nothing, and is valid") {
    const Problem problem = monthProblem();
    const Model model(problem);
    Stream stream(model, 1);
    Patience packing(3);
    stream.begin(goesOn, packing.asked());
    CHECK(packing.asks() == 4);
    CHECK(stream.answer().placed.empty());
    Answer answer = stream.takeAnswer();
    giveReasons(
        problem, stream.plans(), stream.held(), [] { return true; }, answer);
    CHECK(verifyAnswer(problem, answerText(problem, answer)).valid());
}

TEST_CASE("Reasons ask before each way to place a batch, and end at once") {
    const Problem problem = monthProblem();
    const Model model(problem);
    Stream stream(model, 1);
    Patience some(40);
    stream.begin(some.asked(), goesOn);
    Answer answer = stream.answer();
    const std::size_t leftOut = answer.unplaced.size();
    REQUIRE(leftOut > 100);

    // The forms' options are asked for first, then every trial.
    Patience forms(3);
    giveReasons(problem, stream.plans(), stream.held(), forms.asked(), answer);
    // Then once for each stay of the forms, and a few times more.
    CHECK(forms.asks() < static_cast<long>(20 * leftOut));
    for (const UnplacedBatch& unplaced : answer.unplaced) CHECK_FALSE(unplaced.reason.empty());

    // The last that is told takes a few trials, each of which asks.
    Patience whole;
    const std::size_t all = compromises(problem, stream.plans(), stream.held(), whole.asked()).size();
    Patience late(whole.asks() - 20);
    const std::size_t told = compromises(problem, stream.plans(), stream.held(), late.asked()).size();
    CHECK(late.asks() < whole.asks());
    CHECK(told > all / 2);
    CHECK(told < all);
}
