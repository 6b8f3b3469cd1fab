#pragma once

#include "core/planner/index.h"
#include "core/planner/search/cooling.h"
#include "core/planner/search/insertion.h"
#include "core/planner/search/random.h"
#include "core/planner/search/state.h"

#include <vector>

namespace warmbench::planner::search {

/// Chooses what to take out of a state and place anew: batches that stand in each other's way. Holds the
/// working memory.
class Ruin {
public:
    /// `empty` is a state in which nothing is placed yet.
    explicit Ruin(const State& empty);

    /// Takes out only what a scope, which must live, holds, from now on; it must hold a batch.
    void keepTo(const Scope& scope) { m_scope = &scope; }

    /// Fills `batches` with distinct batches, placed or not, about `size` of them, and `wishes` with where
    /// some of them are to stand when they are placed again, the first first. With `run` a mat's run is
    /// made or exchanged.
    void choose(const State& state, int size, Random& random, bool run, std::vector<int>& batches,
                std::vector<Wish>& wishes);

private:
    [[nodiscard]] int anyBatch(Random& random) const;
    /// One of the zones of a class, -1 where there is none.
    [[nodiscard]] int anyZone(int zoneClass, Random& random) const;
    /// There is a day on which hands and stock would do for striking it, were it alone.
    [[nodiscard]] bool canEverBeStruck(int batch) const;
    void add(int batch, std::vector<int>& batches);
    void addStaysIn(const State& state, int zone, int from, int to, int size, Random& random,
                    std::vector<int>& batches);
    void addAlike(const State& state, int seed, int size, Random& random, std::vector<int>& batches);
    void makeRoom(const State& state, int seed, Random& random, std::vector<int>& batches,
                  std::vector<Wish>& wishes);
    /// Adds others of its stock, by chance, until that would do for striking a batch that is left out on a
    /// day: most of those that are left out are held back by their stock.
    void freeStock(const State& state, int batch, int day, Random& random, std::vector<int>& batches);
    void makeRun(const State& state, int size, Random& random, std::vector<int>& batches,
                 std::vector<Wish>& wishes);
    void exchangeRuns(const State& state, int seed, Random& random, std::vector<int>& batches,
                      std::vector<Wish>& wishes);
    void addRun(const State& state, int seed, int size, Random& random, std::vector<int>& batches);
    void addLeftOut(const State& state, int size, Random& random, std::vector<int>& batches);

    const Model* m_model;
    const Scope* m_scope;
    bool m_isLarge;
    int m_ways;
    std::vector<unsigned> m_chosen; ///< by batch, the call in which it was chosen last
    unsigned m_call = 0;
    std::vector<int> m_stays;
    std::vector<std::vector<int>> m_byStock;
    std::vector<int>
        m_firstDay; ///< by batch, on which it could be struck, were it alone; after its last for none
};

} // namespace warmbench::planner::search
