#include "tiny_problem.h"

namespace warmbench::tests {
namespace {

using namespace planner;

class TinyMaker {
public:
    explicit TinyMaker(std::mt19937& random) : m_random(random) {}

    Problem make() {
        Problem problem;
        problem.days = number(2, 5);
        problem.scatterCost = chance(4) ? number(1, 60) : 0;
        problem.zones.push_back(zone("mat", problem.days < 5 ? 2 : 1));
        if (chance(2))
            problem.zones.push_back(zone("side", problem.days < 4 ? 1 : 0));
        else if (problem.days < 4 && chance(2)) {
            problem.zones.push_back(problem.zones.front());
            problem.zones.back().id = "twin";
        }
        if (chance(2))
            problem.stocks.push_back({"stock", {{0, number(4, 30)}, {number(1, 3), number(30, 60)}}});
        if (chance(2)) problem.strikeCapacity = {number(5, 30), number(5, 30)};
        if (chance(3)) problem.held.push_back(held(problem.zones.front()));
        const int batches = number(1, 3);
        for (int i = 0; i < batches; ++i) problem.batches.push_back(batch(problem, i));
        if (chance(4)) pin(problem);
        return problem;
    }

private:
    int number(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    bool chance(int of) { return number(1, of) == 1; }

    Zone zone(const char* id, int mostSetPoints) {
        Zone zone;
        zone.id = id;
        zone.rows = number(1, 2);
        zone.cols = number(1, 2);
        zone.blocked.assign(static_cast<std::size_t>(zone.rows) * static_cast<std::size_t>(zone.cols), 0);
        if (zone.blocked.size() > 1 && chance(4)) zone.blocked.front() = 1;
        zone.cover = chance(3) ? Cover::Open : Cover::Tent;
        zone.floor = {number(100, 130)};
        if (chance(2)) zone.floor.push_back(number(100, 150));
        if (mostSetPoints > 0 && !chance(5)) {
            zone.hasMat = true;
            const int points = number(1, mostSetPoints);
            for (int i = 0; i < points; ++i)
                zone.setPoints.push_back({120 + 40 * i + number(0, 20), number(5, 90)});
        }
        return zone;
    }

    Duration duration() {
        Duration duration;
        if (chance(2))
            duration.days = number(1, 3);
        else {
            duration.base = number(20, 90);
            duration.degreeDays = number(60, 320);
            if (chance(3)) duration.cap = duration.base + number(40, 120);
        }
        return duration;
    }

    Held held(const Zone& zone) {
        Held held;
        held.id = "held";
        held.slots = {{zone.rows - 1, zone.cols - 1, 1, 1}};
        if (zone.blocked.back() != 0) held.slots.clear();
        held.low = number(90, 120);
        held.high = held.low + number(20, 120);
        held.duration = duration();
        return held;
    }

    Batch batch(const Problem& problem, int index) {
        Batch batch;
        batch.id = "batch-" + std::to_string(index);
        batch.containers = number(1, 2);
        if (chance(3)) batch.footprint = {1, 2};
        batch.turn = chance(2);
        batch.cuttings = number(1, 20);
        if (!problem.stocks.empty() && chance(2)) batch.stock = 0;
        batch.strikeFirst = number(0, 2);
        batch.strikeLast = batch.strikeFirst + number(0, 2);
        if (chance(2)) batch.due = number(1, 6);
        batch.value = number(50, 1500);
        batch.latePerDay = number(0, 120);
        batch.moveCost = number(0, 90);
        const int stays = chance(3) ? 2 : 1;
        for (int i = 0; i < stays; ++i) {
            StayRule rule;
            rule.covers =
                static_cast<std::uint8_t>(chance(2) ? (1U << static_cast<unsigned>(Cover::Tent)) : 31U);
            rule.low = number(80, 140);
            rule.high = rule.low + number(20, 100);
            rule.ideal = number(100, 200);
            rule.offIdeal = number(0, 9);
            rule.duration = duration();
            batch.stays.push_back(rule);
        }
        return batch;
    }

    void pin(Problem& problem) {
        Pin pin;
        Batch& batch = problem.batches.front();
        if (chance(2)) pin.zone = 0;
        if (!pin.zone || chance(2)) pin.strikeDay = std::min(batch.strikeFirst, problem.days - 1);
        batch.strikeFirst = std::min(batch.strikeFirst, problem.days - 1);
        if (pin.zone && batch.containers == 1 && batch.footprint == Footprint{1, 1} && chance(2))
            pin.slots = {{problem.zones.front().rows - 1, 0, 1, 1}};
        batch.pin = pin;
    }

    std::mt19937& m_random;
};

} // namespace

Problem tinyProblem(std::mt19937& random) {
    return TinyMaker(random).make();
}

} // namespace warmbench::tests
