#include "core/round/weaning.h"

#include "core/book/query.h"

#include <algorithm>

namespace warmbench::round {
namespace {

/// A stay from `day` on. Where another follows at its end it reaches up to that, else it is as long as it
/// was.
Command begunOn(const std::vector<const Stay*>& stays, const Stay& stay, Day day) {
    const bool followed =
        std::any_of(stays.begin(), stays.end(), [&](const Stay* other) { return other->from == stay.to; });
    const Day to = followed ? stay.to : day + (stay.to - stay.from);
    return {MoveStay{stay.id, stay.zone, day, to, stay.places}};
}

} // namespace

Result<Command> weanCommand(const HouseBook& book, BatchId id, Day day) {
    const Batch& batch = book.get<Batch>(id);
    const std::vector<const Stay*> stays = staysInOrder(book, id);
    Group group{"Wean " + batch.code, {}};
    const Stay* rooting = nullptr;
    const Stay* weaning = nullptr;
    for (const Stay* stay : stays) {
        if (stay->stage == Stage::Rooting) rooting = stay;
        if (stay->stage == Stage::Rooting && stay->to > day) {
            if (stay->from >= day)
                return Refusal{batch.code, "it roots from " + stay->from.iso() + " on; expected a day after"};
            group.commands.push_back({MoveStay{stay->id, stay->zone, stay->from, day, stay->places}});
        }
        if (stay->stage != Stage::Rooting && stay->from <= day)
            return Refusal{batch.code, "it was weaned on " + stay->from.iso()};
        if (stay->stage != Stage::Rooting && !weaning) weaning = stay;
    }
    if (!rooting) return Refusal{batch.code, "found no place for it, expected one where it roots"};
    if (weaning) {
        group.commands.push_back(begunOn(stays, *weaning, day));
    } else {
        const int days = std::max(1, batch.recipe.weanDays.value + batch.recipe.growOnDays.value);
        Stay made{{}, id, Stage::Weaning, rooting->zone, day, day + days, rooting->places};
        group.commands.push_back({AddStay{std::move(made)}});
    }
    return Command{std::move(group)};
}

} // namespace warmbench::round
