#include "core/planner/search/assembly.h"

#include "core/planner/search/cost.h"
#include "core/planner/search/held_loads.h"

#include <algorithm>
#include <tuple>

namespace warmbench::planner::search {

namespace {

bool sameLoad(const packing::Load& a, const packing::Load& b) {
    return a.from == b.from && a.to == b.to && a.containers == b.containers && a.footprint == b.footprint &&
           a.turn == b.turn && a.fixed == b.fixed;
}

} // namespace

Assembly::Assembly(const Model& model)
    : m_model(&model), m_zones(model.zones.size()), m_staysIn(model.zones.size()) {}

void Assembly::gather(const std::vector<Plan>& plans, int zone, int held, ZonePacking& into) const {
    const Problem& problem = *m_model->problem;
    into.stays = m_staysIn[at(zone)];
    const auto standOf = [&](int stay) -> const Stand& {
        const int batch = m_model->batchOfStay[at(stay)];
        return plans[at(batch)].stands[at(stay - m_model->batches[at(batch)].firstStay)];
    };
    std::sort(into.stays.begin(), into.stays.end(),
              [&](int a, int b) { return std::tuple(standOf(a).from, a) < std::tuple(standOf(b).from, b); });
    into.loads.clear();
    addHeldLoads(*m_model, zone, held, into.loads);
    // A stay that follows another in the zone keeps its slots: one load for both.
    into.loadOf.clear();
    for (const int stay : into.stays) {
        const int index = m_model->batchOfStay[at(stay)];
        const Batch& batch = problem.batches[at(index)];
        const Stand& stand = standOf(stay);
        const auto before = std::find(into.stays.begin(), into.stays.end(), stay - 1);
        if (stay > m_model->batches[at(index)].firstStay && before != into.stays.end()) {
            into.loadOf.push_back(into.loadOf[static_cast<std::size_t>(before - into.stays.begin())]);
            into.loads[at(into.loadOf.back())].to = stand.to;
            continue;
        }
        into.loadOf.push_back(static_cast<int>(into.loads.size()));
        into.loads.push_back(
            {stand.from, stand.to, batch.containers, batch.footprint, batch.turn, {}, {}, -1, 0});
    }
}

std::int64_t Assembly::pack(const std::vector<Plan>& plans, const std::vector<int>& held, long rounds,
                            const std::function<bool()>& stopped) {
    std::int64_t total = 0;
    for (auto& stays : m_staysIn) stays.clear();
    for (std::size_t b = 0; b < plans.size(); ++b) {
        const BatchModel& batch = m_model->batches[b];
        if (plans[b].strike < 0) {
            total += batch.value;
            continue;
        }
        total += plans[b].direct;
        for (std::size_t k = 0; k < plans[b].stands.size(); ++k)
            m_staysIn[at(plans[b].stands[k].zone)].push_back(batch.firstStay + static_cast<int>(k));
    }
    ZonePacking fresh;
    for (int zone = 0; zone < static_cast<int>(m_zones.size()); ++zone) {
        const ZoneRuns runs = runsOf(plans, zone, held[at(zone)]);
        const ZoneClass& kind = m_model->classes[at(m_model->zones[at(zone)].zoneClass)];
        for (const MatRun& run : runs.runs) total += (run.to - run.from) * kind.costAt(run.setPoint);
        if (m_model->zones[at(zone)].placed) continue;
        gather(plans, zone, held[at(zone)], fresh);
        ZonePacking& known = m_zones[at(zone)];
        const bool same =
            known.stays == fresh.stays && std::equal(known.loads.begin(), known.loads.end(),
                                                     fresh.loads.begin(), fresh.loads.end(), sameLoad);
        if (!same) {
            if (stopped()) return never;
            fresh.cost = m_strips.pack(m_model->problem->zones[at(zone)], m_model->days, fresh.loads,
                                       m_model->scatterCost, fresh.slots);
            fresh.rounds = 0;
            std::swap(known, fresh);
        }
        if (known.cost > 0 && known.rounds < rounds && !stopped()) packWithCare(zone, rounds);
        total += known.cost;
    }
    return total;
}

void Assembly::packWithCare(int zone, long rounds) {
    ZonePacking& known = m_zones[at(zone)];
    known.rounds = rounds;
    packing::PackLimits limits;
    limits.steps = rounds;
    packing::Packing packed = packing::repack(m_model->problem->zones[at(zone)], m_model->days, known.loads,
                                              m_model->scatterCost, limits);
    if (packed.verdict != packing::Verdict::Packed || packed.cost >= known.cost) return;
    known.slots = std::move(packed.slots);
    known.cost = packed.cost;
}

ZoneRuns Assembly::runsOf(const std::vector<Plan>& plans, int zone, int held) const {
    const int days = m_model->days;
    std::vector<int> states(at(days), off);
    const ZoneModel& place = m_model->zones[at(zone)];
    if (!place.held.empty()) {
        const HeldChoice& choice = place.heldChoices[at(held)];
        std::fill_n(states.begin(), choice.days, choice.state);
    }
    for (const int stay : m_staysIn[at(zone)]) {
        const int batch = m_model->batchOfStay[at(stay)];
        const Stand& stand = plans[at(batch)].stands[at(stay - m_model->batches[at(batch)].firstStay)];
        for (int day = std::min(stand.from, days - 1); day < std::min(stand.to, days); ++day)
            states[at(day)] = stand.state;
    }
    ZoneRuns runs{zone, {}};
    for (int day = 0; day < days; ++day) {
        if (states[at(day)] == off) continue;
        if (!runs.runs.empty() && runs.runs.back().to == day && runs.runs.back().setPoint == states[at(day)])
            ++runs.runs.back().to;
        else
            runs.runs.push_back({day, day + 1, states[at(day)]});
    }
    return runs;
}

Answer Assembly::answer(const std::vector<Plan>& plans, const std::vector<int>& held) const {
    Answer answer;
    for (std::size_t b = 0; b < plans.size(); ++b) {
        const Plan& plan = plans[b];
        if (plan.strike < 0) {
            answer.unplaced.push_back({static_cast<int>(b), {}});
            continue;
        }
        PlacedBatch placed{static_cast<int>(b), plan.strike, {}};
        const std::size_t containers = at(m_model->problem->batches[b].containers);
        for (std::size_t k = 0; k < plan.stands.size(); ++k) {
            const Stand& stand = plan.stands[k];
            PlacedStay stay{stand.zone, stand.from, stand.to, {}};
            if (m_model->zones[at(stand.zone)].placed) {
                const auto first = plan.slots.begin() + static_cast<std::ptrdiff_t>(k * containers);
                stay.slots.assign(first, first + static_cast<std::ptrdiff_t>(containers));
            } else {
                const ZonePacking& packing = m_zones[at(stand.zone)];
                const int index = m_model->batches[b].firstStay + static_cast<int>(k);
                const auto found = std::find(packing.stays.begin(), packing.stays.end(), index);
                stay.slots =
                    packing
                        .slots[at(packing.loadOf[static_cast<std::size_t>(found - packing.stays.begin())])];
            }
            placed.stays.push_back(std::move(stay));
        }
        answer.placed.push_back(std::move(placed));
    }
    for (int zone = 0; zone < static_cast<int>(m_zones.size()); ++zone)
        if (ZoneRuns runs = runsOf(plans, zone, held[at(zone)]); !runs.runs.empty())
            answer.mats.push_back(std::move(runs));
    answer.cost = costOf(*m_model->problem, answer);
    return answer;
}

} // namespace warmbench::planner::search
