#pragma once

#include "core/book/query.h"
#include "core/season/proposal.h"
#include "tests/core/season/season_book.h"

namespace warmbench::testing {

/// Three batches planned for 4 August beside each other, and a proposal in which each moves to the slots of
/// the one before it, the first loses its place, and a new batch comes that needs nobody's.
struct PlaceSwap {
    /// Things of the proposal: its three lines, then what has no place.
    static constexpr std::size_t second = 0, third = 1, fresh = 2, first = 3, things = 4;

    SeasonBook nursery;
    season::Proposal proposal;

    PlaceSwap() {
        std::vector<BatchId> planned;
        for (int column = 0; column < 3; ++column) {
            planned.push_back(nursery.book.nextId<Batch>());
            add(Command{AddBatch{batch(), {stay(column, on(8, 4))}}});
        }
        proposal.from = on(8, 2);
        proposal.strikeDays = 28;
        for (int moved = 1; moved < 3; ++moved) {
            season::StrikeLine line;
            line.change = season::LineChange::Moved;
            line.batch = nursery.book.get<Batch>(planned[static_cast<std::size_t>(moved)]);
            line.batch.strikeDay = on(8, 5);
            line.stays = {stay(moved - 1, on(8, 5))};
            proposal.lines.push_back(line);
        }
        season::StrikeLine added;
        added.batch = batch();
        added.stays = {stay(9, on(8, 4))};
        proposal.lines.push_back(added);
        proposal.notPlaced.push_back({{}, nursery.book.get<Batch>(planned.front()), 5, "no room for it", {}});
    }
    void add(const Command& command) {
        if (auto change = nursery.book.perform(command); !change)
            throw std::logic_error(change.refusal().text());
    }
    [[nodiscard]] Batch batch() const {
        Batch batch;
        batch.taxon = nursery.taxon;
        batch.recipe = semiRipe(nursery.taxon);
        batch.stock = nursery.stock;
        batch.strikeDay = on(8, 4);
        batch.containerType = nursery.pot;
        batch.containers = {{1, 5}};
        return batch;
    }
    [[nodiscard]] Stay stay(int column, Day from) const {
        Stay stay;
        stay.zone = nursery.warm;
        stay.from = from;
        stay.to = from + 40;
        stay.places = {{1, {0, column, 1, 1}}};
        return stay;
    }
};

} // namespace warmbench::testing
