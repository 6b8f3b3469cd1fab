#include "brute_force.h"
#include "core/planner/index.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <numeric>
#include <set>
#include <vector>

namespace warmbench::tests {
namespace {

using namespace planner;

constexpr std::int64_t none = std::numeric_limits<std::int64_t>::max();

std::int64_t gain(const Duration& duration, std::int64_t warmth) {
    if (duration.cap && warmth > *duration.cap) warmth = *duration.cap;
    return warmth > duration.base ? warmth - duration.base : 0;
}

class Enumeration {
public:
    explicit Enumeration(const Problem& problem) : m_problem(problem) {
        m_state.assign(problem.zones.size(), std::vector<int>(at(problem.days), -1));
        m_course.resize(problem.batches.size());
    }

    std::int64_t run() {
        chooseState(0, 0, 0);
        return m_least;
    }

private:
    [[nodiscard]] int stateOn(int zone, int day) const {
        return m_state[at(zone)][at(std::min(day, m_problem.days - 1))];
    }
    [[nodiscard]] std::int64_t warmth(int zone, int day) const {
        const Zone& place = m_problem.zones[at(zone)];
        const std::int64_t floor = place.floor[std::min(at(day), place.floor.size() - 1)];
        const int state = stateOn(zone, day);
        return state < 0 ? floor : std::max(floor, place.setPoints[at(state)].tenths);
    }

    /// Sets zone by zone and day by day, then places the batches.
    void chooseState(int zone, int day, std::int64_t mats) {
        if (mats >= m_least) return;
        if (zone == static_cast<int>(m_problem.zones.size())) {
            m_cost = mats;
            placeHeld();
            return;
        }
        if (day == m_problem.days) return chooseState(zone + 1, 0, mats);
        const auto& points = m_problem.zones[at(zone)].setPoints;
        for (int state = -1; state < static_cast<int>(points.size()); ++state) {
            m_state[at(zone)][at(day)] = state;
            chooseState(zone, day + 1, mats + (state < 0 ? 0 : 10 * points[at(state)].costPerDay));
        }
    }

    /// First day after a stay from `from` on, nothing where a rule of temperature or set-point breaks.
    [[nodiscard]] std::optional<int> endOf(const Duration& duration, std::int64_t low, std::int64_t high,
                                           int zone, int from) const {
        std::int64_t gained = 0;
        for (int day = from; day < from + 400; ++day) {
            const std::int64_t t = warmth(zone, day);
            if (t < low || t > high || stateOn(zone, day) != stateOn(zone, from)) return std::nullopt;
            gained += gain(duration, t);
            if (duration.days ? day - from + 1 == *duration.days : gained >= duration.degreeDays)
                return day + 1;
        }
        return std::nullopt;
    }

    void placeHeld() {
        m_taken.assign(at(m_problem.days), {});
        for (auto& day : m_taken)
            for (const Zone& zone : m_problem.zones) day.push_back(zone.blocked);
        m_struck.assign(at(m_problem.days), 0);
        m_stockStruck.assign(m_problem.stocks.size(), std::vector<std::int64_t>(at(m_problem.days), 0));
        for (const Held& held : m_problem.held) {
            const auto end = endOf(held.duration, held.low, held.high, held.zone, 0);
            if (!end) return;
            take(held.zone, held.slots, 0, *end, 1);
        }
        placeBatch(0);
    }

    void take(int zone, const std::vector<SlotRect>& slots, int from, int to, int change) {
        const int cols = m_problem.zones[at(zone)].cols;
        for (int day = from; day < std::min(to, m_problem.days); ++day)
            for (const SlotRect& rect : slots)
                for (int row = rect.row; row < rect.row + rect.height; ++row)
                    for (int col = rect.col; col < rect.col + rect.width; ++col) {
                        char& cell = m_taken[at(day)][at(zone)][at(row * cols + col)];
                        cell = static_cast<char>(cell + change);
                    }
    }

    [[nodiscard]] bool isFree(int zone, const SlotRect& rect, int from, int to) const {
        const Zone& place = m_problem.zones[at(zone)];
        if (rect.row + rect.height > place.rows || rect.col + rect.width > place.cols) return false;
        for (int row = rect.row; row < rect.row + rect.height; ++row)
            for (int col = rect.col; col < rect.col + rect.width; ++col) {
                const auto cell = at(row * place.cols + col);
                if (place.blocked[cell]) return false;
                for (int day = from; day < std::min(to, m_problem.days); ++day)
                    if (m_taken[at(day)][at(zone)][cell]) return false;
            }
        return true;
    }

    static bool overlap(const SlotRect& a, const SlotRect& b) {
        return a.row < b.row + b.height && b.row < a.row + a.height && a.col < b.col + b.width &&
               b.col < a.col + a.width;
    }
    static bool touch(const SlotRect& a, const SlotRect& b) {
        const int rows = std::min(a.row + a.height, b.row + b.height) - std::max(a.row, b.row);
        const int cols = std::min(a.col + a.width, b.col + b.width) - std::max(a.col, b.col);
        return (rows == 0 && cols > 0) || (cols == 0 && rows > 0);
    }
    static int groups(const std::vector<SlotRect>& slots) {
        std::vector<std::size_t> group(slots.size());
        std::iota(group.begin(), group.end(), std::size_t{0});
        for (std::size_t i = 0; i < slots.size(); ++i)
            for (std::size_t k = 0; k < i; ++k)
                if (touch(slots[i], slots[k])) {
                    const std::size_t from = group[i];
                    for (std::size_t& g : group)
                        if (g == from) g = group[k];
                }
        return static_cast<int>(std::set<std::size_t>(group.begin(), group.end()).size());
    }

    void placeBatch(std::size_t index) {
        if (m_cost >= m_least) return;
        if (index == m_problem.batches.size()) {
            m_least = m_cost;
            return;
        }
        const Batch& batch = m_problem.batches[index];
        if (!batch.pin) {
            const std::int64_t cost = 10 * (batch.value + (batch.previous ? m_problem.changeCost : 0));
            m_cost += cost;
            placeBatch(index + 1);
            m_cost -= cost;
        }
        for (int day = std::max(0, batch.strikeFirst); day <= std::min(batch.strikeLast, m_problem.days - 1);
             ++day) {
            if (batch.pin && batch.pin->strikeDay && *batch.pin->strikeDay != day) continue;
            count(batch, day, batch.cuttings);
            if (handsAndStockSuffice(batch)) placeStay(index, 0, day, -1, {});
            count(batch, day, -batch.cuttings);
        }
    }

    void count(const Batch& batch, int day, std::int64_t cuttings) {
        m_struck[at(day)] += cuttings;
        if (batch.stock) m_stockStruck[at(*batch.stock)][at(day)] += cuttings;
    }

    [[nodiscard]] bool handsAndStockSuffice(const Batch& batch) const {
        const auto& capacity = m_problem.strikeCapacity;
        std::int64_t total = 0;
        for (int day = 0; day < m_problem.days; ++day) {
            if (!capacity.empty() && m_struck[at(day)] > capacity[at(day) % capacity.size()]) return false;
            if (!batch.stock) continue;
            total += m_stockStruck[at(*batch.stock)][at(day)];
            std::int64_t limit = 0;
            for (const StockStep& step : m_problem.stocks[at(*batch.stock)].steps)
                if (step.day <= day) limit = step.total;
            if (total > limit) return false;
        }
        return true;
    }

    void placeStay(std::size_t index, std::size_t stay, int from, int zoneBefore,
                   const std::vector<SlotRect>& before) {
        const Batch& batch = m_problem.batches[index];
        if (stay == batch.stays.size()) {
            const std::int64_t late = batch.due ? std::max<std::int64_t>(0, from - *batch.due) : 0;
            const std::int64_t cost =
                10 * (late * batch.latePerDay + (isChanged(index) ? m_problem.changeCost : 0));
            m_cost += cost;
            placeBatch(index + 1);
            m_cost -= cost;
            return;
        }
        const StayRule& rule = batch.stays[stay];
        for (int zone = 0; zone < static_cast<int>(m_problem.zones.size()); ++zone) {
            if (!rule.accepts(m_problem.zones[at(zone)].cover)) continue;
            if (stay == 0 && batch.pin && batch.pin->zone && *batch.pin->zone != zone) continue;
            const auto to = endOf(rule.duration, rule.low, rule.high, zone, from);
            if (!to) continue;
            std::int64_t off = 0;
            for (int day = from; day < *to; ++day) off += std::abs(warmth(zone, day) - rule.ideal);
            std::vector<SlotRect> slots;
            m_cost += off * rule.offIdeal;
            placeContainer(index, stay, zone, from, *to, slots, zoneBefore, before);
            m_cost -= off * rule.offIdeal;
        }
    }

    void placeContainer(std::size_t index, std::size_t stay, int zone, int from, int to,
                        std::vector<SlotRect>& slots, int zoneBefore, const std::vector<SlotRect>& before) {
        const Batch& batch = m_problem.batches[index];
        if (static_cast<int>(slots.size()) == batch.containers) {
            if (stay == 0 && batch.pin && !batch.pin->slots.empty() &&
                sorted(batch.pin->slots) != sorted(slots))
                return;
            const bool moved = stay > 0 && (zone != zoneBefore || sorted(slots) != sorted(before));
            const std::int64_t cost =
                (moved ? 10 * batch.moveCost : 0) + 10 * m_problem.scatterCost * (groups(slots) - 1);
            m_cost += cost;
            take(zone, slots, from, to, 1);
            m_course[index].push_back({zone, from, to, slots});
            placeStay(index, stay + 1, to, zone, slots);
            m_course[index].pop_back();
            take(zone, slots, from, to, -1);
            m_cost -= cost;
            return;
        }
        std::vector<Footprint> shapes{batch.footprint};
        if (batch.turn && batch.footprint.height != batch.footprint.width)
            shapes.push_back({batch.footprint.width, batch.footprint.height});
        const Zone& place = m_problem.zones[at(zone)];
        for (const Footprint& shape : shapes)
            for (int row = 0; row < place.rows; ++row)
                for (int col = 0; col < place.cols; ++col) {
                    const SlotRect rect{row, col, shape.height, shape.width};
                    if (!slots.empty() && !(slots.back() < rect)) continue; // containers are alike
                    if (!isFree(zone, rect, from, to)) continue;
                    if (std::any_of(slots.begin(), slots.end(),
                                    [&](const SlotRect& s) { return overlap(s, rect); }))
                        continue;
                    slots.push_back(rect);
                    placeContainer(index, stay, zone, from, to, slots, zoneBefore, before);
                    slots.pop_back();
                }
    }

    /// The batch stood somewhere before, and stands on another day, zone or slot now.
    [[nodiscard]] bool isChanged(std::size_t index) const {
        const auto& before = m_problem.batches[index].previous;
        if (!before) return false;
        const std::vector<PlacedStay>& now = m_course[index];
        if (now.size() != before->size()) return true;
        for (std::size_t k = 0; k < now.size(); ++k)
            if (now[k].zone != (*before)[k].zone || now[k].from != (*before)[k].from ||
                sorted(now[k].slots) != sorted((*before)[k].slots))
                return true;
        return false;
    }

    static std::vector<SlotRect> sorted(std::vector<SlotRect> slots) {
        std::sort(slots.begin(), slots.end());
        return slots;
    }

    const Problem& m_problem;
    std::vector<std::vector<int>> m_state;               ///< by zone and day
    std::vector<std::vector<std::vector<char>>> m_taken; ///< by day, zone, slot
    std::vector<std::int64_t> m_struck;
    std::vector<std::vector<std::int64_t>> m_stockStruck;
    std::vector<std::vector<PlacedStay>> m_course; ///< by batch, its stays so far
    std::int64_t m_cost = 0;
    std::int64_t m_least = none;
};

} // namespace

std::optional<std::int64_t> leastTotal(const planner::Problem& problem) {
    const std::int64_t least = Enumeration(problem).run();
    if (least == none) return std::nullopt;
    return least;
}

} // namespace warmbench::tests
