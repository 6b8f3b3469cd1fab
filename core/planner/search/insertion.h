#pragma once

#include "core/planner/index.h"
#include "core/planner/packing/placement.h"
#include "core/planner/search/random.h"
#include "core/planner/search/state.h"

#include <cstdint>
#include <vector>

namespace warmbench::planner::search {

/// How an insertion looks at its choices.
struct Taste {
    int matWeight = 16; ///< of mat costs, in sixteenths: less looks ahead to batches that will share the mat
    int blink = 0;      ///< once in so many a zone is overlooked; 0: never
    int dayBlink = 0;   ///< the same of strike days
    int looks = 128;    ///< about so many zones, each at each state, are looked at for a stay and a day
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

    /// Fills `plan` with the cheapest way found and returns its whole cost, mats at their weight; `never`
    /// when there is none that costs at most what leaving the batch out costs.
    std::int64_t best(const State& state, int batch, const Taste& taste, Random& random, Plan& plan);
    /// The same among the ways that keep a wish.
    std::int64_t best(const State& state, const Wish& wish, const Taste& taste, Random& random, Plan& plan);

    /// Fills `plan` with the batch's place in the plan that was made before and returns its whole cost, mats
    /// at their weight; `never` where it cannot stand like that. At the states `agreed`, by stay among all
    /// stays, where they are given, else at the cheapest.
    std::int64_t keep(const State& state, int batch, const Taste& taste, Plan& plan,
                      const std::vector<int>* agreed = nullptr);

private:
    struct Rest {
        std::int64_t cost = never;
        unsigned stamp = 0;
        Stand stand;
    };

    void begin(const State& state, int batch, const Taste& taste);
    std::int64_t keep(Plan& plan, const std::vector<int>* agreed);
    /// Adds the stand of a stay in the place that it had before, and its slots; what its mat costs more.
    std::int64_t keepStay(std::size_t stay, const std::vector<int>* agreed, Plan& plan) const;
    std::int64_t search(Plan& plan);
    /// The cheapest stand for the first stay on a day that keeps the wish; replaces `found` when it costs
    /// less.
    void tryWish(int day, Rest& found);
    const Rest& rest(int stay, int day);
    /// The cheapest stand for `stay` in any zone, from `day` on; replaces `found` when it costs less.
    void tryStands(int stay, int day, Rest& found);
    void tryZone(int stay, const StayOption& option, int zone, const StayTerms& terms, int day, Rest& found);
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

    const Model* m_model;
    const State* m_state = nullptr;
    const BatchModel* m_batch = nullptr;
    int m_index = 0;
    Taste m_taste;
    const Wish* m_wish = nullptr;
    Random* m_random = nullptr;
    unsigned m_stamp = 0;
    std::vector<std::vector<Rest>> m_rest; ///< by stay and day after its first possible start
    /// Stays that found no slots, in spite of the count (no stay of the batch that lasts longer will), or
    /// that cannot follow an earlier stay of the batch.
    std::vector<Stand> m_barred;
    packing::Placer m_placer;
    std::vector<SlotRect> m_slots;
    std::vector<SlotRect> m_before;
    Plan m_tried;
};

/// Off ideal, late, moves, scatter and change of a plan whose stands (and slots, in placed zones) are filled
/// in.
[[nodiscard]] std::int64_t directCost(const Model& model, const Plan& plan);

} // namespace warmbench::planner::search
