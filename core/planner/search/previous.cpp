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

/// Something that stood in a zone before, or is held there, and the states at which it can stand again.
struct Tenant {
    int stay = -1; ///< -1: all that is held
    int from = 0;
    int to = 0;
    std::vector<int> states;
};

std::vector<std::vector<Tenant>> tenants(const Model& model) {
    std::vector<std::vector<Tenant>> byZone(model.zones.size());
    for (std::size_t zone = 0; zone < model.zones.size(); ++zone) {
        Tenant held;
        for (const HeldChoice& choice : model.zones[zone].heldChoices) {
            held.states.push_back(choice.state);
            held.to = std::max(held.to, choice.days);
        }
        if (held.to > 0) byZone[zone].push_back(std::move(held));
    }
    for (std::size_t b = 0; b < model.batches.size(); ++b) {
        const BatchModel& batch = model.batches[b];
        if (!batch.isKeepable) continue;
        for (std::size_t k = 0; k < batch.stays.size(); ++k) {
            const PlacedStay& before = (*model.problem->batches[b].previous)[k];
            Tenant tenant{batch.firstStay + static_cast<int>(k), before.from, 0, {}};
            for (const StayOption& option : batch.stays[k].options) {
                if (option.zoneClass != model.zones[at(before.zone)].zoneClass) continue;
                const int length = keptLength(batch, k, option);
                if (length == 0) continue;
                tenant.states.push_back(option.state);
                tenant.to = std::max(tenant.to, before.from + length);
            }
            if (!tenant.states.empty()) byZone[at(before.zone)].push_back(std::move(tenant));
        }
    }
    return byZone;
}

/// The states at which both can stand.
std::vector<int> common(const std::vector<int>& a, const std::vector<int>& b) {
    std::vector<int> both;
    for (const int state : a)
        if (std::find(b.begin(), b.end(), state) != b.end()) both.push_back(state);
    return both;
}

void agree(const Model& model, int zone, std::vector<Tenant>& all, KeptStates& kept) {
    std::stable_sort(all.begin(), all.end(),
                     [](const Tenant& a, const Tenant& b) { return a.from < b.from; });
    const ZoneModel& place = model.zones[at(zone)];
    const ZoneClass& kind = model.classes[at(place.zoneClass)];
    for (std::size_t first = 0; first < all.size();) {
        // Those whose days touch each other in a chain; one that agrees with none of the states is passed
        // over.
        std::vector<int> states = all[first].states;
        int end = all[first].to;
        std::vector<const Tenant*> chain{&all[first]};
        std::size_t next = first + 1;
        for (; next < all.size() && std::min(all[next].from, model.days - 1) < end; ++next) {
            std::vector<int> both = common(states, all[next].states);
            if (both.empty()) continue;
            states = std::move(both);
            chain.push_back(&all[next]);
            end = std::max(end, all[next].to);
        }
        const int state = *std::min_element(states.begin(), states.end(),
                                            [&](int a, int b) { return kind.costAt(a) < kind.costAt(b); });
        for (const Tenant* tenant : chain) {
            if (tenant->stay >= 0) {
                kept.ofStay[at(tenant->stay)] = state;
                continue;
            }
            for (std::size_t choice = 0; choice < place.heldChoices.size(); ++choice)
                if (place.heldChoices[choice].state == state)
                    kept.heldChoice[at(zone)] = static_cast<int>(choice);
        }
        first = next;
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
