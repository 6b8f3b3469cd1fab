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

template <class Id>
void noteSpan(std::map<ZoneId, Spans<Id>>& spans, ZoneId zone, Day from, Day to, Id id, bool present) {
    if (present)
        spans[zone].add(from, to, id);
    else
        spans[zone].remove(from, id);
}

/// Whether the edit tells of one thing, and the book holds what it says was there before.
template <class E>
bool standsOn(const HouseBook& book, const Edit<E>& edit) {
    if (!edit.before && !edit.after) return false;
    if (edit.before && edit.after && edit.before->id != edit.after->id) return false;
    const E* now = book.find<E>(edit.id());
    return edit.before ? now && *now == *edit.before : !now;
}

} // namespace

HouseBook::HouseBook() {
    std::get<std::map<NurseryId, Nursery>>(m_things).emplace(NurseryId{1}, Nursery{});
}

HouseBook::HouseBook(const HouseBook& other) = default;
HouseBook::HouseBook(HouseBook&& other) noexcept = default;
HouseBook& HouseBook::operator=(const HouseBook& other) = default;
HouseBook& HouseBook::operator=(HouseBook&& other) noexcept = default;
HouseBook::~HouseBook() = default;

bool operator==(const HouseBook& a, const HouseBook& b) {
    return a.m_things == b.m_things;
}

HouseBook::HouseBook(Things things) : m_things(std::move(things)) {
    std::apply(
        [&](const auto&... kind) {
            const auto indexAll = [&](const auto& of) {
                for (const auto& [id, thing] : of) index(thing, true);
            };
            (indexAll(kind), ...);
        },
        m_things);
}

std::variant<HouseBook, std::vector<BrokenRule>> HouseBook::make(Things things) {
    HouseBook book(std::move(things));
    if (auto broken = audit(book); !broken.empty()) return broken;
    return book;
}

template <class E>
void HouseBook::index(const E& thing, bool present) {
    if constexpr (std::is_same_v<E, Bench>) note(m_benches, thing.house, thing.id, present);
    if constexpr (std::is_same_v<E, Zone>) note(m_zones, thing.bench, thing.id, present);
    if constexpr (std::is_same_v<E, MatRun>) {
        note(m_matRuns, thing.zone, thing.id, present);
        noteSpan(m_matRunDays, thing.zone, thing.from, thing.to, thing.id, present);
    }
    if constexpr (std::is_same_v<E, Stay>) {
        noteSpan(m_stayDays, thing.zone, thing.from, thing.to, thing.id, present);
        note(m_staysIn, thing.zone, thing.id, present);
        note(m_stays, thing.batch, thing.id, present);
    }
    if constexpr (std::is_same_v<E, RootCheck>) note(m_checks, thing.batch, thing.id, present);
    if constexpr (std::is_same_v<E, Potting>) {
        note(m_pottings, thing.batch, thing.id, present);
        note(m_pottingsIn, std::pair(thing.batch, thing.container), thing.id, present);
    }
    if constexpr (std::is_same_v<E, Loss>) {
        note(m_losses, thing.batch, thing.id, present);
        note(m_lossesIn, std::pair(thing.batch, thing.container), thing.id, present);
    }
    if constexpr (std::is_same_v<E, ReadingMonth>) {
        auto& months = m_readings[{thing.place(), thing.channel}];
        if (present)
            months.emplace(thing.month, thing.id);
        else if (const auto found = months.find(thing.month);
                 found != months.end() && found->second == thing.id)
            months.erase(found);
    }
    if constexpr (HasOwnKey<E>) note(std::get<KeyIndex<E>>(m_keys), ownKey(thing), thing.id, present);
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

Outcome HouseBook::apply(const Change& change) {
    std::size_t done = 0;
    Outcome refusal;
    for (const AnyEdit& edit : change.edits) {
        if (!std::visit([&](const auto& one) { return standsOn(*this, one); }, edit)) {
            const std::string kind =
                std::visit([]<class E>(const Edit<E>&) { return kindName<E>.one; }, edit);
            refusal = Refusal{
                kind,
                phrase("it has been changed meanwhile, so this can't be done any more; look at it again")};
            break;
        }
        put(edit);
        ++done;
    }
    if (!refusal) refusal = checkChange(*this, change);
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
