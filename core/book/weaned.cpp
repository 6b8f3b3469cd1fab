#include "core/book/weaned.h"

#include "core/book/query.h"

#include <algorithm>
#include <set>

namespace warmbench {
namespace {

/// Containers of a batch as its stays pass, the first one first.
class Weanings {
public:
    /// Whether a stay in which nothing roots any longer is the plan's alone.
    bool isPlans(const Stay& stay) {
        const bool weaned = stay.weanedOn || anyIn(m_weaned, stay);
        const bool plans = !weaned && (stay.stage == Stage::Weaning || anyIn(m_byPlan, stay));
        for (const Place& place : stay.places) (plans ? m_byPlan : m_weaned).insert(place.container);
        return plans;
    }

private:
    static bool anyIn(const std::set<int>& containers, const Stay& stay) {
        return std::any_of(stay.places.begin(), stay.places.end(),
                           [&](const Place& place) { return containers.contains(place.container); });
    }

    std::set<int> m_byPlan;
    std::set<int> m_weaned;
};

bool somePotted(const HouseBook& book, BatchId batch, Day day) {
    const auto& pottings = book.pottingsOf(batch);
    return std::any_of(pottings.begin(), pottings.end(),
                       [&](PottingId id) { return book.get<Potting>(id).day <= day; });
}

} // namespace

std::vector<const Stay*> weanedByPlan(const HouseBook& book, BatchId id, Day day) {
    if (book.get<Batch>(id).state != BatchState::Struck || somePotted(book, id, day)) return {};
    std::vector<const Stay*> found;
    Weanings weanings;
    for (const Stay* stay : staysInOrder(book, id))
        if (stay->stage != Stage::Rooting && stay->from <= day && weanings.isPlans(*stay))
            found.push_back(stay);
    return found;
}

bool isRooting(const HouseBook& book, BatchId id, Day day) {
    const auto& stays = book.staysOf(id);
    const auto left = std::count_if(stays.begin(), stays.end(), [&](StayId one) {
        const Stay& stay = book.get<Stay>(one);
        return stay.stage != Stage::Rooting && stay.from <= day;
    });
    return left == std::ssize(weanedByPlan(book, id, day));
}

} // namespace warmbench
