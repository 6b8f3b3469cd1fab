#pragma once

#include "core/planner/answer.h"
#include "core/planner/search/assembly.h"
#include "core/planner/search/model.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace warmbench::planner::search {

/// The best of the plans that were given slots.
class Found {
public:
    explicit Found(const Model& model) : m_model(&model), m_assembly(model) {}

    /// Gives slots to plans that cost as much before, at a glance, and remembers them if they are the best;
    /// not a second time to the same, nor where they would not be.
    void add(const std::vector<Plan>& plans, const std::vector<int>& held, std::int64_t cost,
             const Stopped& stopped);
    /// The same with more care, again if need be.
    void addWithCare(const std::vector<Plan>& plans, const std::vector<int>& held, std::int64_t cost,
                     const Stopped& stopped);
    /// Gives slots to the best once more, with more care.
    void takeCare(const Stopped& stopped);
    /// Remembers that nothing but what is held stands anywhere.
    void addNothing();

    /// Total of the best, `never` where there is none.
    [[nodiscard]] std::int64_t total() const { return m_total; }
    /// The answer of that total, without reasons and bound.
    [[nodiscard]] const Answer& answer() const { return m_answer; }
    [[nodiscard]] Answer takeAnswer() { return std::move(m_answer); }
    [[nodiscard]] const std::vector<Plan>& plans() const { return m_plans; }
    [[nodiscard]] const std::vector<int>& held() const { return m_held; }

private:
    void pack(const std::vector<Plan>& plans, const std::vector<int>& held, long rounds,
              const Stopped& stopped);

    const Model* m_model;
    Assembly m_assembly;
    std::int64_t m_total = never;
    std::int64_t m_lastCost = never;
    Answer m_answer;
    std::vector<Plan> m_plans;
    std::vector<int> m_held;
};

} // namespace warmbench::planner::search
