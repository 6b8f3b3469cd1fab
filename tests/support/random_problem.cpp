#include "random_problem.h"

#include <array>

namespace warmbench::tests {
namespace {

using namespace planner;

class Maker {
public:
    explicit Maker(std::mt19937& random) : m_random(random) {}

    Problem make() {
        m_problem.days = number(12, 40);
        m_problem.scatterCost = chance(2) ? number(1, 80) : 0;
        m_trays = chance(2);
        const int zones = number(2, 5);
        for (int i = 0; i < zones; ++i) m_problem.zones.push_back(zone(i));
        const int stocks = number(0, 2);
        for (int i = 0; i < stocks; ++i) {
            const int first = number(0, 60);
            m_problem.stocks.push_back(
                {"stock-" + std::to_string(i), {{number(0, 4), first}, {8, first + number(0, 80)}}});
        }
        if (chance(2)) m_problem.strikeCapacity = {60, 60, 40, 60, 50, 0, 0};
        for (int i = 0; i < zones; ++i)
            if (chance(3)) m_problem.held.push_back(held(i));
        const int batches = number(4, 14);
        for (int i = 0; i < batches; ++i) m_problem.batches.push_back(batch(i));
        if (chance(3)) pin(m_problem.batches.front());
        return m_problem;
    }

private:
    int number(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    bool chance(int of) { return number(1, of) == 1; }

    Zone zone(int index) {
        Zone zone;
        zone.id = "zone-" + std::to_string(index);
        zone.rows = number(2, 5);
        zone.cols = number(3, 8);
        zone.blocked.assign(static_cast<std::size_t>(zone.rows) * static_cast<std::size_t>(zone.cols), 0);
        if (chance(3)) zone.blocked.front() = 1;
        zone.cover =
            std::array{Cover::Open, Cover::Tent, Cover::Mist}[static_cast<std::size_t>(number(0, 2))];
        const int floors = chance(3) ? 1 : m_problem.days;
        for (int day = 0; day < floors; ++day) zone.floor.push_back(number(100, 130));
        zone.hasMat = zone.cover != Cover::Open || chance(4);
        const int points = zone.hasMat ? number(1, 3) : 0;
        for (int i = 0; i < points; ++i)
            zone.setPoints.push_back({150 + 25 * i + number(0, 20), number(10, 60) + 20 * i});
        return zone;
    }

    Duration duration(int shortest, int longest) {
        Duration duration;
        if (chance(2)) {
            duration.days = number(shortest, longest);
            return duration;
        }
        duration.base = number(40, 60);
        duration.degreeDays = number(shortest * 80, longest * 110);
        if (chance(2)) duration.cap = number(140, 200);
        return duration;
    }

    Held held(int zone) {
        const Zone& place = m_problem.zones[static_cast<std::size_t>(zone)];
        Held held;
        held.id = "held-" + std::to_string(zone);
        held.zone = zone;
        const int columns = number(1, place.cols - 1);
        const int step = chance(3) ? 2 : 1; // connected or not
        for (int col = 0; col < columns; col += step) held.slots.push_back({place.rows - 1, col, 1, 1});
        held.low = number(60, 100);
        held.high = number(150, 260);
        held.duration = duration(2, 7);
        return held;
    }

    Batch batch(int index) {
        Batch batch;
        batch.id = "batch-" + std::to_string(index);
        batch.containers = number(1, 8);
        if (m_trays && !chance(3)) {
            const Footprint footprints[] = {{1, 2}, {2, 1}, {2, 2}, {2, 3}};
            batch.footprint = footprints[number(0, 3)];
            batch.containers = number(1, 3);
            batch.turn = chance(2);
        }
        batch.cuttings = batch.containers * number(1, 6);
        if (!m_problem.stocks.empty() && chance(2))
            batch.stock = number(0, static_cast<int>(m_problem.stocks.size()) - 1);
        batch.strikeFirst = number(0, m_problem.days / 2);
        batch.strikeLast = batch.strikeFirst + number(0, 8);
        if (!chance(4)) batch.due = batch.strikeFirst + number(8, 30);
        batch.value = number(200, 12000);
        batch.latePerDay = number(0, 200);
        batch.moveCost = number(0, 200);
        batch.stays.push_back(rooting());
        for (int more = number(0, 2); more > 0; --more) batch.stays.push_back(weaning());
        return batch;
    }

    StayRule rooting() {
        StayRule rule;
        rule.covers = static_cast<std::uint8_t>(chance(2) ? 31U
                                                          : (1U << static_cast<unsigned>(Cover::Tent)) |
                                                                (1U << static_cast<unsigned>(Cover::Mist)));
        rule.low = number(130, 170);
        rule.high = rule.low + number(20, 80);
        rule.ideal = number(140, 210);
        rule.offIdeal = number(0, 8);
        rule.duration = duration(6, 18);
        return rule;
    }

    StayRule weaning() {
        StayRule rule;
        rule.covers = static_cast<std::uint8_t>(chance(2) ? 31U : 1U << static_cast<unsigned>(Cover::Open));
        rule.low = number(60, 90);
        rule.high = number(220, 280);
        rule.ideal = number(100, 140);
        rule.offIdeal = number(0, 2);
        rule.duration = duration(2, 8);
        return rule;
    }

    void pin(Batch& batch) {
        Pin pin;
        if (chance(2)) pin.zone = number(0, static_cast<int>(m_problem.zones.size()) - 1);
        if (!pin.zone || chance(2)) pin.strikeDay = batch.strikeFirst;
        if (pin.zone && batch.footprint == Footprint{1, 1} && batch.containers <= 3 && chance(2))
            for (int col = 0; col < batch.containers; ++col) pin.slots.push_back({1, col, 1, 1});
        batch.pin = pin;
    }

    std::mt19937& m_random;
    Problem m_problem;
    bool m_trays = false;
};

} // namespace

Problem randomProblem(std::mt19937& random) {
    return Maker(random).make();
}

} // namespace warmbench::tests
