#include "core/planner/search/previous.h"

#include "core/planner/index.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

bool isFootprint(const SlotRect& rect, const Batch& batch) {
    const Footprint shape{rect.height, rect.width};
    return shape == batch.footprint ||
           (batch.turn && shape == Footprint{batch.footprint.width, batch.footprint.height});
}

bool overlapEachOther(const std::vector<SlotRect>& slots) {
    for (std::size_t i = 0; i < slots.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            if (slots[i].overlaps(slots[k])) return true;
    return false;
}

std::vector<SlotRect> sorted(std::vector<SlotRect> slots) {
    std::sort(slots.begin(), slots.end());
    return slots;
}

bool keepsPin(const Pin& pin, const PlacedStay& first) {
    return (!pin.strikeDay || *pin.strikeDay == first.from) && (!pin.zone || *pin.zone == first.zone) &&
           (pin.slots.empty() || sorted(pin.slots) == sorted(first.slots));
}

/// A state at which something that stood before, or is held, can stand again.
struct Again {
    int state = off;
    int to = 0;                ///< first day after
    std::int64_t offIdeal = 0; ///< thousandths
    int inTheWay = 0;          ///< so many others of the zone begin to stand on its slots before it is gone
};

/// Something that stood in a zone before, or is held there.
struct Tenant {
    int stay = -1; ///< -1: all that is held
    int from = 0;
    std::vector<Again> states;
};

/// Others that begin to stand on some of the slots on days from `from` to before `to`.
int othersOn(const std::vector<SlotRect>& slots, int from, int to,
             const std::vector<const PlacedStay*>& all) {
    return static_cast<int>(std::count_if(all.begin(), all.end(), [&](const PlacedStay* other) {
        return &other->slots != &slots && other->from >= from && other->from < to &&
               std::any_of(other->slots.begin(), other->slots.end(), [&](const SlotRect& theirs) {
                   return std::any_of(slots.begin(), slots.end(),
                                      [&](const SlotRect& own) { return own.overlaps(theirs); });
               });
    }));
}

std::vector<std::vector<Tenant>> tenants(const Model& model) {
    std::vector<std::vector<Tenant>> byZone(model.zones.size());
    std::vector<std::vector<const PlacedStay*>> stood(model.zones.size());
    for (const BatchModel& batch : model.batches)
        if (batch.isKeepable)
            for (const PlacedStay& before : *batch.previous) stood[at(before.zone)].push_back(&before);
    for (std::size_t zone = 0; zone < model.zones.size(); ++zone) {
        const ZoneModel& place = model.zones[zone];
        Tenant held;
        for (const HeldChoice& choice : place.heldChoices) {
            held.states.push_back({choice.state, choice.days, 0, 0});
            for (std::size_t i = 0; i < place.held.size(); ++i)
                held.states.back().inTheWay +=
                    othersOn(model.problem->held[at(place.held[i])].slots, 0, choice.until[i], stood[zone]);
        }
        if (!held.states.empty()) byZone[zone].push_back(std::move(held));
    }
    for (std::size_t b = 0; b < model.batches.size(); ++b) {
        const BatchModel& batch = model.batches[b];
        if (!batch.isKeepable) continue;
        for (std::size_t k = 0; k < batch.stays.size(); ++k) {
            const PlacedStay& before = (*batch.previous)[k];
            Tenant tenant{batch.firstStay + static_cast<int>(k), before.from, {}};
            for (const StayOption& option : batch.stays[k].options) {
                if (option.zoneClass != model.zones[at(before.zone)].zoneClass) continue;
                const int length = keptLength(batch, k, option);
                if (length == 0) continue;
                const int to = before.from + length;
                tenant.states.push_back({option.state, to,
                                         batch.stays[k].terms(option, before.from).offIdeal(),
                                         othersOn(before.slots, before.from, to, stood[at(before.zone)])});
            }
            if (!tenant.states.empty()) byZone[at(before.zone)].push_back(std::move(tenant));
        }
    }
    return byZone;
}

/// What is known once some tenants, in the order of their days, have a state or are passed over.
struct Step {
    int state = off; ///< at which the zone stands up to `end`
    int end = 0;
    int passedOver = 0;    ///< or in the way of what is not
    std::int64_t cost = 0; ///< of the mat and off ideal
    std::size_t before = 0;
    bool stands = false; ///< the last tenant does, at `state`

    [[nodiscard]] bool isBetterThan(const Step& other) const {
        return std::pair(passedOver, cost) < std::pair(other.passedOver, other.cost);
    }
};

/// States for the tenants of one zone, sorted by their first days: as many as can stand do, and that as
/// cheaply as can be. Found tenant by tenant; of the steps that leave the zone alike the best is kept.
class Agreement {
public:
    Agreement(const ZoneClass& kind, int days, const std::vector<Tenant>& all) : m_kind(kind), m_days(days) {
        m_steps.push_back({Step{}});
        for (const Tenant& tenant : all) {
            m_steps.emplace_back();
            const std::vector<Step>& known = m_steps[m_steps.size() - 2];
            for (std::size_t i = 0; i < known.size(); ++i) {
                Step without = known[i];
                ++without.passedOver;
                without.before = i;
                without.stands = false;
                keep(without);
                for (const Again& again : tenant.states) stand(known[i], i, tenant.from, again);
            }
        }
    }

    /// By tenant; `KeptStates::any` where it is passed over.
    [[nodiscard]] std::vector<int> states() const {
        std::vector<int> states(m_steps.size() - 1, KeptStates::any);
        const std::vector<Step>& last = m_steps.back();
        auto step = static_cast<std::size_t>(
            std::min_element(last.begin(), last.end(),
                             [](const Step& a, const Step& b) { return a.isBetterThan(b); }) -
            last.begin());
        for (std::size_t tenant = states.size(); tenant-- > 0;) {
            const Step& now = m_steps[tenant + 1][step];
            if (now.stands) states[tenant] = now.state;
            step = now.before;
        }
        return states;
    }

private:
    void stand(const Step& known, std::size_t index, int from, const Again& again) {
        // Beyond the horizon the state of its last day goes on.
        const bool meets = std::min(from, m_days - 1) < std::min(known.end, m_days);
        if (meets && again.state != known.state) return;
        const int first = meets ? std::max(from, known.end) : from;
        const int more = std::max(0, std::min(again.to, m_days) - std::min(first, m_days));
        keep({again.state, meets ? std::max(known.end, again.to) : again.to,
              known.passedOver + again.inTheWay,
              known.cost + m_kind.costAt(again.state) * more + again.offIdeal, index, true});
    }

    void keep(const Step& step) {
        std::vector<Step>& steps = m_steps.back();
        const auto alike = std::find_if(steps.begin(), steps.end(), [&](const Step& other) {
            return other.state == step.state && other.end == step.end;
        });
        if (alike == steps.end())
            steps.push_back(step);
        else if (step.isBetterThan(*alike))
            *alike = step;
    }

    const ZoneClass& m_kind;
    int m_days;
    std::vector<std::vector<Step>> m_steps; ///< after so many tenants
};

void agree(const Model& model, int zone, std::vector<Tenant>& all, KeptStates& kept) {
    std::stable_sort(all.begin(), all.end(),
                     [](const Tenant& a, const Tenant& b) { return a.from < b.from; });
    const ZoneModel& place = model.zones[at(zone)];
    const std::vector<int> states = Agreement(model.classes[at(place.zoneClass)], model.days, all).states();
    for (std::size_t tenant = 0; tenant < all.size(); ++tenant) {
        if (states[tenant] == KeptStates::any) continue;
        if (all[tenant].stay >= 0) kept.ofStay[at(all[tenant].stay)] = states[tenant];
        for (std::size_t choice = 0; all[tenant].stay < 0 && choice < place.heldChoices.size(); ++choice)
            if (place.heldChoices[choice].state == states[tenant])
                kept.heldChoice[at(zone)] = static_cast<int>(choice);
    }
}

} // namespace

bool standsThere(const PlacedStay& before, int zone, int from, std::span<const SlotRect> slots) {
    return zone == before.zone && from == before.from &&
           std::is_permutation(before.slots.begin(), before.slots.end(), slots.begin(), slots.end());
}

bool canBeKept(const Problem& problem, const Batch& batch) {
    if (!batch.previous || batch.previous->empty() || batch.previous->size() != batch.stays.size())
        return false;
    if (batch.pin && !keepsPin(*batch.pin, batch.previous->front())) return false;
    const int strike = batch.previous->front().from;
    if (strike < batch.strikeFirst || strike > batch.strikeLast || strike >= problem.days) return false;
    return std::all_of(batch.previous->begin(), batch.previous->end(), [&](const PlacedStay& stay) {
        return stay.from >= strike && static_cast<int>(stay.slots.size()) == batch.containers &&
               std::all_of(stay.slots.begin(), stay.slots.end(),
                           [&](const SlotRect& rect) { return isFootprint(rect, batch); }) &&
               !overlapEachOther(stay.slots);
    });
}

KeptStates keptStates(const Model& model) {
    KeptStates kept{std::vector<int>(at(model.stayCount), KeptStates::any),
                    std::vector<int>(model.zones.size(), 0)};
    std::vector<std::vector<Tenant>> byZone = tenants(model);
    for (std::size_t zone = 0; zone < byZone.size(); ++zone)
        agree(model, static_cast<int>(zone), byZone[zone], kept);
    return kept;
}

int keptLength(const BatchModel& batch, std::size_t stay, const StayOption& option) {
    const std::vector<PlacedStay>& before = *batch.previous;
    const int from = before[stay].from;
    if (from < batch.stays[stay].firstStart || from > batch.stays[stay].lastStart) return 0;
    const int length = batch.stays[stay].terms(option, from).length();
    return stay + 1 < before.size() && from + length != before[stay + 1].from ? 0 : length;
}

bool standsAsBefore(const Model& model, const Plan& plan) {
    const BatchModel& batch = model.batches[at(plan.batch)];
    if (batch.changeCost == 0 || !batch.isKeepable) return false;
    const auto containers = static_cast<std::ptrdiff_t>(model.problem->batches[at(plan.batch)].containers);
    auto slots = plan.slots.begin();
    for (std::size_t k = 0; k < plan.stands.size(); ++k, slots += containers) {
        if (!standsThere((*batch.previous)[k], plan.stands[k].zone, plan.stands[k].from,
                         {slots, slots + containers}))
            return false;
    }
    return true;
}

} // namespace warmbench::planner::search
