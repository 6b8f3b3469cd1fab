#include "core/book/house_book.h"

#include "core/book/command.h"
#include "core/book/rules.h"

namespace warmbench {
namespace {

template <class Owner, class Owned>
void note(Belongings<Owner, Owned>& belongings, Owner owner, Owned owned, bool present) {
    if (present) {
        belongings[owner].insert(owned);
        return;
    }
    const auto found = belongings.find(owner);
    if (found == belongings.end()) return;
    found->second.erase(owned);
    if (found->second.empty()) belongings.erase(found);
}

/// Whether the book holds what the edit says was there before.
template <class E>
bool standsOn(const HouseBook& book, const Edit<E>& edit) {
    const E* now = book.find<E>(edit.id());
    return edit.before ? now && *now == *edit.before : !now;
}

} // namespace

HouseBook::HouseBook() {
    std::get<std::map<NurseryId, Nursery>>(m_things).emplace(NurseryId{1}, Nursery{});
}

template <class E>
void HouseBook::index(const E& thing, bool present) {
    if constexpr (std::is_same_v<E, Bench>) note(m_benches, thing.house, thing.id, present);
    if constexpr (std::is_same_v<E, Zone>) note(m_zones, thing.bench, thing.id, present);
    if constexpr (std::is_same_v<E, MatRun>) note(m_matRuns, thing.zone, thing.id, present);
    if constexpr (std::is_same_v<E, Stay>) {
        note(m_staysIn, thing.zone, thing.id, present);
        note(m_stays, thing.batch, thing.id, present);
    }
    if constexpr (std::is_same_v<E, RootCheck>) note(m_checks, thing.batch, thing.id, present);
    if constexpr (std::is_same_v<E, Potting>) note(m_pottings, thing.batch, thing.id, present);
    if constexpr (std::is_same_v<E, Loss>) note(m_losses, thing.batch, thing.id, present);
    if constexpr (std::is_same_v<E, Batch>) note(m_struckOn, thing.strikeDay, thing.id, present);
}

void HouseBook::put(const AnyEdit& any) {
    std::visit(
        [&]<class E>(const Edit<E>& edit) {
            auto& things = std::get<std::map<IdOf<E>, E>>(m_things);
            if (edit.before) index(*edit.before, false);
            if (edit.after) {
                things.insert_or_assign(edit.after->id, *edit.after);
                index(*edit.after, true);
            } else {
                things.erase(edit.id());
            }
        },
        any);
}

Outcome HouseBook::settle(const Change& change) {
    for (const AnyEdit& edit : change.edits)
        if (auto broken = std::visit([&](const auto& one) { return checkEdit(*this, one); }, edit))
            return broken;
    return std::nullopt;
}

Outcome HouseBook::apply(const Change& change) {
    std::size_t done = 0;
    Outcome refusal;
    for (const AnyEdit& edit : change.edits) {
        if (!std::visit([&](const auto& one) { return standsOn(*this, one); }, edit)) {
            const std::string kind =
                std::visit([]<class E>(const Edit<E>&) { return kindName<E>.one; }, edit);
            refusal = Refusal{
                kind, "it has been changed meanwhile, so this can't be done any more; look at it again"};
            break;
        }
        put(edit);
        ++done;
    }
    if (!refusal) refusal = settle(change);
    if (refusal) {
        const Change made{{change.edits.begin(), change.edits.begin() + static_cast<std::ptrdiff_t>(done)}};
        for (const AnyEdit& edit : made.inverse().edits) put(edit);
    }
    return refusal;
}

Result<Change> HouseBook::perform(const Command& command) {
    Result<Change> change = expand(*this, command);
    if (!change) return change;
    if (auto refusal = apply(*change)) return *refusal;
    return change;
}

} // namespace warmbench
