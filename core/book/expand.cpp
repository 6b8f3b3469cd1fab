#include "core/book/draft.h"
#include "core/book/query.h"
#include "core/book/readings.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace warmbench {
namespace {

std::vector<Stay> staysOf(const Draft& draft, BatchId batch) {
    return draft.standing<Stay>(draft.book().staysOf(batch),
                                [&](const Stay& stay) { return stay.batch == batch; });
}

/// Cuttings that stand in a container now, with what the draft has already taken out.
int standingNow(const Draft& draft, const Batch& batch, int container) {
    int count = 0;
    for (const BatchContainer& one : batch.containers)
        if (one.number == container) count += one.cuttings;
    for (const Loss& loss : draft.standing<Loss>(draft.book().lossesOf(batch.id), [&](const Loss& one) {
             return one.batch == batch.id && one.container == container;
         }))
        count -= loss.cuttings;
    for (const Potting& potting :
         draft.standing<Potting>(draft.book().pottingsOf(batch.id), [&](const Potting& one) {
             return one.batch == batch.id && one.container == container;
         }))
        count -= potting.plants + potting.lost;
    return count;
}

/// Takes containers off their slots from `day` on: stays are cut there, later ones lose those containers.
void freeSlots(Draft& draft, BatchId batch, const std::set<int>& containers, Day day) {
    for (const Stay& stay : staysOf(draft, batch)) {
        if (stay.to <= day) continue;
        Stay leaving = stay;
        Stay remaining = stay;
        std::erase_if(leaving.places,
                      [&](const Place& place) { return !containers.contains(place.container); });
        std::erase_if(remaining.places,
                      [&](const Place& place) { return containers.contains(place.container); });
        if (leaving.places.empty()) continue;
        leaving.to = day;
        const bool stood = stay.from < day;
        if (remaining.places.empty()) {
            if (stood)
                draft.replace(stay, leaving);
            else
                draft.remove(stay);
            continue;
        }
        draft.replace(stay, remaining);
        if (stood) draft.add(leaving);
    }
}

void endIfEmpty(Draft& draft, BatchId id) {
    const Batch before = *draft.find<Batch>(id);
    const bool empty =
        std::all_of(before.containers.begin(), before.containers.end(),
                    [&](const BatchContainer& one) { return standingNow(draft, before, one.number) == 0; });
    if (!empty) return;
    Batch after = before;
    after.state = BatchState::Ended;
    draft.replace(before, after);
}

template <class E>
Outcome changeFor(Draft& draft, const Put<E>& put) {
    if (const E* before = draft.find<E>(put.thing.id))
        draft.replace(*before, put.thing);
    else if (put.thing.id.number == 0)
        draft.add(put.thing);
    else
        return missing<E>(put.thing.id);
    return std::nullopt;
}

template <class E>
Outcome changeFor(Draft& draft, const Remove<E>& remove) {
    const E* before = draft.find<E>(remove.id);
    if (!before) return missing<E>(remove.id);
    draft.remove(E{*before});
    return std::nullopt;
}

/// The recipe of the book that a batch follows. One that is new to the book is added to it, so that she can
/// change her copy later; one that stands there already under a number is that.
Recipe ownRecipe(Draft& draft, Recipe recipe) {
    if (recipe.id.number != 0) return recipe;
    std::set<RecipeId> known;
    for (const auto& [id, one] : draft.book().all<Recipe>()) known.insert(id);
    for (const Recipe& one : draft.standing<Recipe>(known, [&](const Recipe& other) {
             Recipe unnumbered = other;
             unnumbered.id = {};
             return unnumbered == recipe;
         }))
        return one;
    recipe.id = draft.add(recipe);
    return recipe;
}

/// A code that no batch of the draft has, for one struck on `strikeDay`.
std::string freeCode(const Draft& draft, Day strikeDay) {
    for (int letter = 0;; ++letter) {
        std::string code = batchCode(strikeDay, letter);
        if (draft
                .standing<Batch>(draft.book().withKey<Batch>(code),
                                 [&](const Batch& one) { return one.code == code; })
                .empty())
            return code;
    }
}

Outcome changeFor(Draft& draft, const AddBatch& add) {
    Batch batch = add.batch;
    batch.recipe = ownRecipe(draft, batch.recipe);
    for (std::size_t i = 0; i < batch.containers.size(); ++i)
        if (batch.containers[i].number == 0) batch.containers[i].number = static_cast<int>(i) + 1;
    if (batch.code.empty()) batch.code = freeCode(draft, batch.strikeDay);
    const BatchId id = draft.add(batch);
    for (Stay stay : add.stays) {
        stay.batch = id;
        draft.add(stay);
    }
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const StrikeBatch& strike) {
    const Batch* found = draft.find<Batch>(strike.batch);
    if (!found) return missing<Batch>(strike.batch);
    const Batch before = *found;
    if (before.state != BatchState::Planned)
        return Refusal{before.code, phrase("it has been struck already, on %1", before.strikeDay)};
    Batch after = before;
    after.state = BatchState::Struck;
    const int shift = strike.day - before.strikeDay;
    if (shift != 0) {
        after.strikeDay = strike.day;
        after.code = freeCode(draft, strike.day);
    }
    draft.replace(before, after);
    if (shift == 0) return std::nullopt;
    for (const Stay& stay : staysOf(draft, strike.batch)) {
        Stay moved = stay;
        moved.from = stay.from + shift;
        moved.to = stay.to + shift;
        draft.replace(stay, moved);
    }
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const PlanBatch& plan) {
    const Batch* found = draft.find<Batch>(plan.batch);
    if (!found) return missing<Batch>(plan.batch);
    const Batch before = *found;
    if (before.state != BatchState::Planned)
        return Refusal{before.code, phrase("it has been struck, so it can't be planned anew")};
    if (plan.strikeDay != before.strikeDay) {
        Batch after = before;
        after.strikeDay = plan.strikeDay;
        after.code = freeCode(draft, plan.strikeDay);
        draft.replace(before, after);
    }
    const auto byFirstDay = [](const Stay& a, const Stay& b) {
        return std::tie(a.from, a.id) < std::tie(b.from, b.id);
    };
    std::vector<Stay> old = staysOf(draft, plan.batch);
    std::sort(old.begin(), old.end(), byFirstDay);
    std::vector<Stay> stays = plan.stays;
    std::stable_sort(stays.begin(), stays.end(),
                     [](const Stay& a, const Stay& b) { return a.from < b.from; });
    for (std::size_t i = 0; i < stays.size(); ++i) {
        stays[i].batch = plan.batch;
        if (i >= old.size()) {
            draft.add(stays[i]);
            continue;
        }
        stays[i].id = old[i].id;
        draft.replace(old[i], stays[i]);
    }
    for (std::size_t i = stays.size(); i < old.size(); ++i) draft.remove(old[i]);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const RemoveBatch& remove) {
    const Batch* found = draft.find<Batch>(remove.batch);
    if (!found) return missing<Batch>(remove.batch);
    const Batch before = *found;
    if (before.state != BatchState::Planned)
        return Refusal{before.code,
                       phrase("it has been struck; discard it with a reason instead of removing it")};
    for (const Stay& stay : staysOf(draft, remove.batch)) draft.remove(stay);
    draft.remove(before);
    return std::nullopt;
}

/// Changes some fields of a thing that has to be there.
template <class E, class Alter>
Outcome altered(Draft& draft, IdOf<E> id, Alter alter) {
    const E* found = draft.find<E>(id);
    if (!found) return missing<E>(id);
    const E before = *found;
    E after = before;
    alter(after);
    draft.replace(before, after);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const DescribeBatch& describe) {
    return altered<Batch>(draft, describe.batch, [&](Batch& batch) {
        batch.target = describe.target;
        batch.note = describe.note;
    });
}

Outcome changeFor(Draft& draft, const MoveStay& move) {
    return altered<Stay>(draft, move.stay, [&](Stay& stay) {
        stay.zone = move.zone;
        stay.from = move.from;
        stay.to = move.to;
        stay.places = move.places;
    });
}

Outcome changeFor(Draft& draft, const AddStay& add) {
    draft.add(add.stay);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const RemoveStay& remove) {
    const Stay* before = draft.find<Stay>(remove.stay);
    if (!before) return missing<Stay>(remove.stay);
    draft.remove(Stay{*before});
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const WeanStay& wean) {
    return altered<Stay>(draft, wean.stay, [&](Stay& stay) { stay.weanedOn = wean.day; });
}

Outcome changeFor(Draft& draft, const SetMatRuns& set) {
    if (!draft.find<Zone>(set.zone)) return missing<Zone>(set.zone);
    if (set.to <= set.from) return Refusal{"mat", phrase("the days end before they begin")};
    const auto old = draft.standing<MatRun>(draft.book().matRunsOf(set.zone),
                                            [&](const MatRun& run) { return run.zone == set.zone; });
    for (const MatRun& run : old) {
        if (run.to <= set.from || run.from >= set.to) continue;
        MatRun early = run;
        MatRun late = run;
        early.to = set.from;
        late.from = set.to;
        const bool keepsEarly = run.from < set.from;
        const bool keepsLate = run.to > set.to;
        if (keepsEarly)
            draft.replace(run, early);
        else if (keepsLate)
            draft.replace(run, late);
        else
            draft.remove(run);
        if (keepsEarly && keepsLate) draft.add(late);
    }
    for (MatRun run : set.runs) {
        if (run.from < set.from || run.to > set.to)
            return Refusal{"mat", phrase("a run from %1 to %2 leaves the days %3 to %4", run.from, run.to,
                                         set.from, set.to)};
        run.zone = set.zone;
        draft.add(run);
    }
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const RecordCheck& record) {
    draft.add(record.check);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const RemoveCheck& remove) {
    const RootCheck* before = draft.find<RootCheck>(remove.check);
    if (!before) return missing<RootCheck>(remove.check);
    draft.remove(RootCheck{*before});
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const RecordLoss& record) {
    draft.add(record.loss);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const PotOn& potOn) {
    const Batch* found = draft.find<Batch>(potOn.batch);
    if (!found) return missing<Batch>(potOn.batch);
    const Batch batch = *found;
    if (potOn.containers.empty()) return Refusal{batch.code, phrase("no container was named to pot on from")};
    std::set<int> emptied;
    for (const PottedContainer& one : potOn.containers) {
        if (emptied.contains(one.container))
            return Refusal{batch.code, phrase("container %1 is named twice", one.container)};
        draft.add(Potting{{}, batch.id, one.container, potOn.day, one.plants, one.lost, potOn.note});
        if (standingNow(draft, batch, one.container) == 0) emptied.insert(one.container);
    }
    freeSlots(draft, batch.id, emptied, potOn.day);
    endIfEmpty(draft, batch.id);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const Discard& discard) {
    const Batch* found = draft.find<Batch>(discard.batch);
    if (!found) return missing<Batch>(discard.batch);
    const Batch batch = *found;
    std::set<int> containers(discard.containers.begin(), discard.containers.end());
    std::set<int> known;
    for (const BatchContainer& one : batch.containers) known.insert(one.number);
    if (containers.empty()) containers = known;
    for (const int container : containers)
        if (!known.contains(container))
            return Refusal{batch.code, phrase("it has no container %1", container)};
    if (batch.state == BatchState::Ended) return Refusal{batch.code, phrase("nothing stands in it any more")};
    for (const int container : containers)
        if (const int left = standingNow(draft, batch, container); left > 0)
            draft.add(Loss{{}, batch.id, container, discard.day, left, discard.reason});
    freeSlots(draft, batch.id, containers, discard.day);
    endIfEmpty(draft, batch.id);
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const Group& group) {
    for (const Command& command : group.commands)
        if (auto refusal = std::visit([&](const auto& one) { return changeFor(draft, one); }, command.what))
            return refusal;
    return std::nullopt;
}

} // namespace

Result<Change> expand(const HouseBook& book, const Command& command) {
    Draft draft(book);
    if (auto refusal = std::visit([&](const auto& one) { return changeFor(draft, one); }, command.what))
        return *refusal;
    return draft.take();
}

} // namespace warmbench
