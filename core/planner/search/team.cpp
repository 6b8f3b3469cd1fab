#include "core/planner/search/team.h"

#include "core/planner/search/bins.h"

#include <algorithm>
#include <thread>

namespace warmbench::planner::search {

namespace {

/// With fewer batches the second thread serves better with the bound.
constexpr std::size_t leastBatches = 600;
/// Slots are given to what is better by one in so many.
constexpr std::int64_t worthSlots = 1000;

} // namespace

bool Team::suits(const Model& model) {
    return model.batches.size() >= leastBatches && !Bins::of(model, 0) &&
           std::none_of(model.batches.begin(), model.batches.end(),
                        [](const BatchModel& batch) { return batch.previous != nullptr; });
}

Team::Team(const Model& model, std::uint64_t seed)
    : m_model(&model), m_random(~seed),
      m_halves(model, m_random), m_walks{Walk(model, Halves::count * seed),
                                         Walk(model, Halves::count * seed + 1)},
      m_found(model) {
    for (Walk& walk : m_walks) walk.leaveBest();
}

void Team::begin(const Stopped& stopped, const Stopped& givenUp) {
    const std::array<Scope, Halves::count> halves{m_halves.scope(state(), 0), m_halves.scope(state(), 1)};
    std::vector<const Scope*> scopes;
    scopes.reserve(m_model->batches.size());
    for (int batch = 0; batch < static_cast<int>(m_model->batches.size()); ++batch)
        scopes.push_back(&halves[at(m_halves.halfOf(batch))]);
    m_walks[0].construct(stopped, scopes);
    m_found.add(state().plans(), state().heldChoices(), state().cost(), givenUp);
    if (m_found.total() == never) m_found.addNothing();
    m_walks[1].takeOver(state(), m_walks[0].moved(), {}, givenUp);
    m_walks[0].clearMoved();
}

bool Team::leavesPinnedOut() const {
    for (int batch = 0; batch < static_cast<int>(m_model->batches.size()); ++batch)
        if (m_model->batches[at(batch)].pinned && !state().isPlaced(batch)) return true;
    return false;
}

void Team::walk(const Leg& leg, const Cooling& cooling, const Stopped& stopped, const Stopped& givenUp) {
    const int cycle = cooling.cycle();
    if (cycle != m_cycle && cycle % 2 == 1 && !givenUp()) goOnFromBest();
    m_cycle = cycle;
    if (leg.isAlone)
        alone(leg, cooling, stopped);
    else
        together(leg, cooling, stopped);
    exchange(leg, givenUp);
    if (givenUp()) return;
    if (state().cost() < m_found.total() - m_found.total() / worthSlots)
        m_found.add(state().plans(), state().heldChoices(), state().cost(), stopped);
}

void Team::goOnFromBest() {
    m_found.add(state().plans(), state().heldChoices(), state().cost(), [] { return false; });
    for (Walk& walk : m_walks) {
        walk.restart(m_found.plans(), m_found.held());
        walk.clearMoved();
    }
}

void Team::walkThrough(Walk& walk, int half, double until, const Leg& leg, Cooling cooling,
                       std::int64_t& done, const Stopped& stopped) {
    const Scope scope = m_halves.scope(walk.state(), half);
    if (scope.batches.empty() || scope.zones.empty()) return;
    walk.keepTo(scope);
    const auto batches = static_cast<double>(m_model->batches.size());
    for (; !stopped(); ++done) {
        cooling.progress = leg.along(done);
        if (cooling.progress >= until) break;
        walk.round(cooling.heat(static_cast<double>(std::min(walk.cost(), m_model->worth)) / batches));
    }
    walk.keepTo(m_model->whole);
}

void Team::together(const Leg& leg, const Cooling& cooling, const Stopped& stopped) {
    const std::array<Share, Halves::count> aside = m_halves.shares(state(), m_random);
    std::array<std::int64_t, Halves::count> done{};
    const auto work = [&](int half) {
        Walk& walk = m_walks[at(half)];
        walk.setAside(aside[at(half)]);
        walkThrough(walk, half, leg.until, leg, cooling, done[at(half)], stopped);
        walk.setAside({});
    };
    if (leg.inThreads) {
        const std::jthread other([&] { work(1); });
        work(0);
    } else {
        work(0);
        work(1);
    }
    m_rounds += done[0] + done[1];
}

void Team::alone(const Leg& leg, const Cooling& cooling, const Stopped& stopped) {
    std::int64_t done = 0;
    const double begun = leg.along(0);
    walkThrough(m_walks[0], 0, (begun + leg.until) / 2, leg, cooling, done, stopped);
    walkThrough(m_walks[0], 1, leg.until, leg, cooling, done, stopped);
    m_rounds += done;
}

void Team::exchange(const Leg& leg, const Stopped& givenUp) {
    m_walks[1].takeOver(state(), m_walks[0].moved(), leg.isAlone ? m_model->whole.zones : m_halves.zonesOf(0),
                        givenUp);
    if (!leg.isAlone)
        m_walks[0].takeOver(m_walks[1].state(), m_walks[1].moved(), m_halves.zonesOf(1), givenUp);
    for (Walk& walk : m_walks) walk.clearMoved();
}

void Team::finish(const Stopped& stopped) {
    m_found.add(state().plans(), state().heldChoices(), state().cost(), stopped);
    m_found.takeCare(stopped);
}

} // namespace warmbench::planner::search
