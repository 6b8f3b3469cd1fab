#pragma once

#include "core/planner/index.h"
#include "core/planner/packing/occupancy.h"
#include "core/planner/search/day_bits.h"
#include "core/planner/search/model.h"

#include <cstdint>
#include <vector>

namespace warmbench::planner::search {

/// Where one stay stands. Beyond the horizon it takes no slots, and the state of the last day goes on.
struct Stand {
    int zone = 0;
    int state = off;
    int from = 0;
    int to = 0; ///< first day after
};

/// A whole way of placing one batch.
struct Plan {
    int batch = -1;
    int strike = -1;         ///< below 0: left out
    std::int64_t direct = 0; ///< off ideal, late, moves, scatter and change
    std::vector<Stand> stands;
    std::vector<SlotRect> slots; ///< of each stay in turn, in zones that are `placed`; else empty
};

/// Hands and stock that are not to be used, because others may use them.
struct Share {
    std::vector<std::int64_t> hands;                 ///< cuttings struck, by day
    std::vector<std::vector<std::int64_t>> cuttings; ///< by stock: none, or by day, up to each
};

/// A plan of the house that keeps all rules, changed batch by batch. Zones that are not `placed` are counted
/// only: single slots can always be given out where the count of each day suffices. Nothing here
/// allocates once every batch has been placed before.
class State {
public:
    explicit State(const Model& model);

    [[nodiscard]] const Model& model() const { return *m_model; }
    [[nodiscard]] std::int64_t cost() const { return m_cost; }
    /// Of it, what leaving batches out costs, but for those that are pinned.
    [[nodiscard]] std::int64_t leftOutCost() const { return m_leftOutCost; }
    [[nodiscard]] bool isPlaced(int batch) const { return m_plans[at(batch)].strike >= 0; }
    [[nodiscard]] const Plan& plan(int batch) const { return m_plans[at(batch)]; }
    [[nodiscard]] const std::vector<Plan>& plans() const { return m_plans; }
    /// Indices of the stays that stand in the zone, among all stays.
    [[nodiscard]] const std::vector<int>& staysIn(int zone) const { return m_staysIn[at(zone)]; }
    /// Nothing stands in the zone, held things with it.
    [[nodiscard]] bool isEmpty(int zone) const {
        return m_staysIn[at(zone)].empty() && m_model->zones[at(zone)].held.empty();
    }
    [[nodiscard]] const Stand& stand(int stay) const;
    [[nodiscard]] const packing::Occupancy& occupancy(int zone) const { return m_occupancy[at(zone)]; }
    /// Index of the zone's choice for what is held there.
    [[nodiscard]] int heldChoice(int zone) const { return m_heldChoice[at(zone)]; }
    [[nodiscard]] const std::vector<int>& heldChoices() const { return m_heldChoice; }
    [[nodiscard]] int freeSlots(int zone, int day) const { return m_free[cell(zone, day)]; }
    /// The state that something asks of the zone on a day of the horizon, or `idle`.
    [[nodiscard]] int stateOn(int zone, int day) const { return m_state[cell(zone, day)]; }
    static constexpr int idle = -2;

    /// Cuttings that can still be struck on a day, of all stocks or of one.
    [[nodiscard]] std::int64_t handsLeft(int day) const { return m_hands[at(day)]; }
    [[nodiscard]] std::int64_t stockLeft(int stock, int day) const { return m_left[at(stock)][at(day)]; }
    /// Cuttings of a stock that may be struck up to a day, but for what is set aside.
    [[nodiscard]] std::int64_t stockLimit(int stock, int day) const { return m_limit[at(stock)][at(day)]; }
    /// Cuttings of a stock struck up to a day.
    [[nodiscard]] std::int64_t struck(int stock, int day) const { return m_used[at(stock)][at(day)]; }
    /// Hands and stock allow striking the batch, which is not placed, on a day.
    [[nodiscard]] bool canStrike(int batch, int day) const;
    /// What its mat costs more when a stay is added, or `never` where there are no slots or another state.
    [[nodiscard]] std::int64_t matCost(int zone, int state, int from, int to, int slots) const;

    /// Fills `days` with the days of the horizon on which a batch cannot stand in the zone at the state;
    /// where `Model::sizes` does not hold its size, it may be that it cannot on others either.
    void barredDays(int zone, int state, int batch, std::span<DayWord> days) const {
        const std::size_t size = at(m_model->batches[at(batch)].size);
        const DayWord* full = m_full.words(fullRow(zone, size));
        const DayWord* resting = m_idle.words(at(zone));
        const DayWord* asked = m_asked.words(askedRow(zone, state));
        for (std::size_t word = 0; word < days.size(); ++word)
            days[word] = full[word] | ~(resting[word] | asked[word]);
    }
    /// Tells the same of a window of days, zone after zone, for as long as the state lives.
    class Barred {
    public:
        [[nodiscard]] DayWord of(int zone, const DayWindow& window) const {
            const std::size_t first = at(zone) * m_words + window.word();
            const DayWord low = m_full[first] | ~(m_idle[first] | m_asked[first]);
            const DayWord high = m_full[first + 1] | ~(m_idle[first + 1] | m_asked[first + 1]);
            return window.of(low, high) & window.within();
        }

    private:
        friend class State;
        const DayWord* m_full = nullptr;
        const DayWord* m_idle = nullptr;
        const DayWord* m_asked = nullptr;
        std::size_t m_words = 0;
    };
    /// Days on which a batch cannot stand at a state.
    [[nodiscard]] Barred barred(int state, int batch) const {
        Barred barred;
        barred.m_full = m_full.words(fullRow(0, at(m_model->batches[at(batch)].size)));
        barred.m_idle = m_idle.words(0);
        barred.m_asked = m_asked.words(askedRow(0, state));
        barred.m_words = wordsOf(m_model->days);
        return barred;
    }
    /// Days of the horizon of [from, to) on which nothing asks for a state of the zone.
    [[nodiscard]] int idleDays(int zone, int from, int to) const {
        return countDays(m_idle.row(at(zone)), from, to < m_model->days ? to : m_model->days);
    }

    /// Places a batch that is not placed; the plan must fit.
    void place(const Plan& plan);
    void remove(int batch);
    /// Another choice for what is held in the zone; nothing else may ask for another state on its days.
    void chooseHeld(int zone, int choice);
    /// Sets hands and stock aside that are left now, in place of what was set aside before.
    void setAside(const Share& share);

private:
    [[nodiscard]] std::size_t askedRow(int zone, int state) const {
        return at(state + 1) * m_model->zones.size() + at(zone);
    }
    [[nodiscard]] std::size_t fullRow(int zone, std::size_t size) const {
        return size * m_model->zones.size() + at(zone);
    }
    [[nodiscard]] std::size_t cell(int zone, int day) const { return at(zone) * at(m_model->days) + at(day); }
    void leaveOut(const BatchModel& batch);
    void takeIn(const BatchModel& batch);
    void findLeft(int stock);
    void strike(int batch, int day, std::int64_t cuttings);
    void demand(int zone, int state, int from, int to, int slots);
    void release(int zone, int state, int from, int to, int slots);
    void addFree(int zone, int from, int to, int slots);
    void standHeld(int zone, bool standing);
    /// Days on which a stay asks for its state: within the horizon, the last day at least.
    [[nodiscard]] int demandFrom(int from) const { return from < m_model->days ? from : m_model->days - 1; }
    [[nodiscard]] int demandTo(int to) const { return to < m_model->days ? to : m_model->days; }

    const Model* m_model;
    std::int64_t m_cost = 0;
    std::int64_t m_leftOutCost = 0;
    std::vector<Plan> m_plans;
    std::vector<int> m_free;           ///< by zone and day
    std::vector<std::int16_t> m_state; ///< by zone and day
    DayRows m_full;                    ///< by size and zone: too few slots are free
    DayRows m_idle;                    ///< by zone
    DayRows m_asked;                   ///< by state and zone: something asks for it
    std::vector<int> m_demands;        ///< by zone and day, how many ask for the state
    std::vector<std::vector<int>> m_staysIn;
    std::vector<int> m_heldChoice;
    std::vector<packing::Occupancy> m_occupancy;    ///< of zones that are `placed`
    std::vector<std::int64_t> m_hands;              ///< left, by day
    std::vector<std::int64_t> m_handsAside;         ///< by day, kept out of m_hands
    std::vector<std::vector<std::int64_t>> m_limit; ///< by stock and day: may be struck up to that day
    std::vector<std::vector<std::int64_t>>
        m_left; ///< by stock and day: cuttings left for striking on that day
    std::vector<std::vector<std::int64_t>> m_used; ///< by stock and day: struck up to that day
};

} // namespace warmbench::planner::search
