#pragma once

#include "core/planner/index.h"
#include "core/planner/packing/placement.h"
#include "core/planner/search/day_bits.h"
#include "core/planner/search/random.h"
#include "core/planner/search/refit.h"
#include "core/planner/search/state.h"

#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace warmbench::planner::search {

/// How an insertion looks at its choices.
struct Taste {
    int matWeight = 16; ///< of mat costs, in sixteenths: less looks ahead to batches that will share the mat
    int blink = 0;      ///< once in so many a zone is overlooked; 0: never
    bool isDoubtful = false; ///< it may well stand nowhere: then that is seen soon
    int looks = 100;         ///< about so many zones, each at each state, are looked at for a stay
    std::span<const int> alwaysLooked =
        {}; ///< zones that are looked at besides where not all are: those with new room
    std::int64_t spacePrice =
        0; ///< thousandths, of a slot on a day of the horizon: what others might have paid
};

/// Where the first stay of a batch is to stand.
struct Wish {
    static constexpr int any = -2; ///< state or day

    int batch = 0;
    int zone = 0;
    int state = any;
    int day = any;
};

/// Finds the cheapest way to place one batch into a state. Works back over the stays: what the rest of the
/// stays costs from a day on is found once for each day and kept. Holds the working memory.
class Inserter {
public:
    explicit Inserter(const Model& model);

    /// Looks only into the zones of a scope, which must live, from now on.
    void keepTo(const Scope& scope) { m_scope = &scope; }

    /// Fills `plan` with the cheapest way found and returns its whole cost, mats at their weight; `never`
    /// when there is none that costs at most what leaving the batch out costs.
    std::int64_t best(const State& state, int batch, const Taste& taste, Random& random, Plan& plan);
    /// The same among the ways that keep a wish.
    std::int64_t best(const State& state, const Wish& wish, const Taste& taste, Random& random, Plan& plan);

    /// Where slots are free but not together, what stands there may get others, so many times from now on.
    void mayRefit(int times) { m_refitsLeft = times; }
    /// Other batches with the slots that they must get for the plan that `best` found last to have its own.
    [[nodiscard]] const std::vector<Plan>& moved() const { return m_moved; }

    /// False where a glance tells that the batch, which is not placed, can stand nowhere.
    [[nodiscard]] bool mayPlace(const State& state, int batch, Random& random);

    /// Fills `plan` with the batch's place in the plan that was made before and returns its whole cost, mats
    /// at their weight; `never` where it cannot stand like that. At the states `agreed`, by stay among all
    /// stays, where they are given, else at the cheapest.
    std::int64_t keep(const State& state, int batch, const Taste& taste, Plan& plan,
                      const std::vector<int>* agreed = nullptr);

private:
    static constexpr int none = std::numeric_limits<int>::max(); ///< days

    struct Rest {
        std::int64_t cost = never;
        Stand stand;
    };

    /// What a stay costs at one option from one day on, wherever it stands.
    struct Start {
        int length = 0;
        std::int64_t cost = 0; ///< with what comes after it elsewhere, where it cannot stay
    };

    /// Where a stay is looked for, and what is known of it: the cheapest from each day on, or from all.
    struct Look {
        int stay = 0;
        int first = 0; ///< days on which it may begin
        int last = 0;
        bool each = false;
        Rest* found = nullptr; ///< by day after the first of the stay where it is each, else one

        [[nodiscard]] Rest& at(int day, int firstStart) const { return found[each ? day - firstStart : 0]; }
    };

    class Glance;

    void begin(const State& state, int batch, const Taste& taste);
    std::int64_t keep(Plan& plan, const std::vector<int>* agreed);
    /// Adds the stand of a stay in the place that it had before, and its slots; what its mat costs more.
    std::int64_t keepStay(std::size_t stay, const std::vector<int>* agreed, Plan& plan) const;
    std::int64_t search(Plan& plan);
    /// Days on which the batch may be struck into m_strikes, the first and the last into `look`; false where
    /// there are none.
    bool chooseStrikes(Look& look);
    /// False where a glance tells that the first stay can stand nowhere.
    [[nodiscard]] bool mayStand(const Look& first);
    /// What each stay after the first costs from each day on that can be reached.
    void lookAtRests(const Look& first);
    void lookForStand(const Look& look);
    /// The zone of a pin, else of a wish, for the first stay; -1 where there is neither.
    [[nodiscard]] int onlyZone() const;
    /// The zone offers the option, and the wish, if any, is for its state.
    [[nodiscard]] bool mayBeIn(int zone, const StayOption& option) const;
    /// The same in one zone only, that of a pin or a wish.
    void lookAtOnly(const Look& look, int zone);
    /// `tried` zones of an option; before them those that are always looked at, unless `all` are.
    void lookAtOption(const Look& look, const StayOption& option, int tried, bool all);
    /// The stay after `stay` can follow it in a zone of the option's class.
    [[nodiscard]] bool nextMayStay(int stay, const StayOption& option) const;
    /// Fills m_starts and m_costs with what could still be cheaper than what was found; the shortest length,
    /// or none.
    [[nodiscard]] int gatherStarts(const Look& look, const StayOption& option, bool mayStay);
    void tryZone(const Look& look, const StayOption& option, int zone, int shortest, bool mayStay);
    void tryStand(const Look& look, const Stand& stand, std::int64_t mat, bool mayStay);
    /// Takes those out of m_starts that can no longer be cheaper than what was found from `day` on.
    void dropStarts(const Look& look, int day);
    /// Nothing cheaper can be found at the option looked at.
    [[nodiscard]] bool isSettled(const Look& look) const;
    [[nodiscard]] const std::vector<int>& zonesFor(const StayOption& option) const {
        return m_scope->zonesOfClass[at(option.zoneClass)];
    }
    [[nodiscard]] const Rest& rest(int stay, int day) const {
        return m_rest[at(stay)][at(day - m_batch->stays[at(stay)].firstStart)];
    }
    [[nodiscard]] std::int64_t standCost(const StayTerms& terms, int from) const {
        if (m_taste.spacePrice == 0) return terms.offIdeal();
        const int end = from + terms.length();
        const int days =
            (end < m_model->days ? end : m_model->days) - (from < m_model->days ? from : m_model->days);
        return terms.offIdeal() + m_taste.spacePrice * m_batch->slots * days;
    }
    [[nodiscard]] std::int64_t matCost(int zone, int state, int from, int to) const;
    [[nodiscard]] bool isBarred(int zone, int from, int to) const;
    /// What comes after `stay`, which stands at `stand`: the rest of the stays, in another place or in the
    /// same.
    std::int64_t following(int stay, const Stand& stand);
    /// `stay` in the zone of the stay before it, `before`; `next` is its stand.
    std::int64_t staying(int stay, const Stand& before, Stand& next);
    void writeStands(Plan& plan, const Stand& first);
    /// A stay beyond the horizon that asks its zone for another state than an earlier stay of the batch does.
    [[nodiscard]] const Stand* disagreeing(const Plan& plan) const;
    void computeDirect(Plan& plan) const;
    /// Finds slots for all stays in zones that need them; else bars the stay that found none.
    bool placeSlots(Plan& plan);
    /// Slots for all stays in a zone, and others for what stands there, where that may be tried.
    [[nodiscard]] bool refit(int zone, Plan& plan);
    /// Slots for a stay as it is pinned or as the zone has them free, into m_slots.
    [[nodiscard]] bool findSlots(const Plan& plan, std::size_t stay);
    /// What m_movedNow costs more with its other slots.
    [[nodiscard]] std::int64_t dearerMoved() const;

    const Model* m_model;
    const Scope* m_scope;
    const State* m_state = nullptr;
    const BatchModel* m_batch = nullptr;
    int m_index = 0;
    Taste m_taste;
    const Wish* m_wish = nullptr;
    Random* m_random = nullptr;
    std::vector<std::vector<Rest>> m_rest; ///< by stay and day after its first possible start
    std::vector<std::int64_t> m_leastRest; ///< by stay, of all days
    std::vector<DayWord> m_strikes;        ///< days of the horizon on which the batch may be struck
    std::vector<DayWord> m_starts;         ///< those on which the stay may begin at the option looked at
    std::vector<Start> m_costs;            ///< by day after the first of the look
    std::vector<DayWord> m_barredDays;     ///< of the zone looked at
    std::vector<DayWord> m_inTheWay;       ///< those from which the shortest stay would meet a barred one
    bool m_forwards = true;                ///< the order of days
    /// Stays that found no slots, in spite of the count (no stay of the batch that lasts longer will), or
    /// that cannot follow an earlier stay of the batch.
    std::vector<Stand> m_barred;
    packing::Placer m_placer;
    std::vector<SlotRect> m_slots;
    std::vector<SlotRect> m_before;
    Plan m_tried;
    Refit m_refit;
    int m_refitsLeft = 0;
    std::vector<Plan> m_movedNow; ///< others with the slots that m_tried asks them to have
    std::vector<Plan> m_moved;    ///< the same for the best plan
    std::vector<int> m_refitted;  ///< zones in which m_tried has slots by that
};

/// Off ideal, late, moves, scatter and change of a plan whose stands (and slots, in placed zones) are filled
/// in.
[[nodiscard]] std::int64_t directCost(const Model& model, const Plan& plan);

} // namespace warmbench::planner::search
