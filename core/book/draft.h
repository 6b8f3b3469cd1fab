#pragma once

#include "core/book/command.h"

#include <set>
#include <string>
#include <vector>

/// What the expansion of commands is written with; of no use beside it.
namespace warmbench {

/// Builds the edits of a command on a copy of what the book would be after those before. A group's later
/// commands see the earlier ones through it.
class Draft {
public:
    explicit Draft(const HouseBook& book) : m_book(book) {}

    template <class E>
    [[nodiscard]] const E* find(IdOf<E> id) const {
        for (auto edit = m_change.edits.rbegin(); edit != m_change.edits.rend(); ++edit)
            if (const auto* one = std::get_if<Edit<E>>(&*edit); one && one->id() == id)
                return one->after ? &*one->after : nullptr;
        return m_book.find<E>(id);
    }

    /// Ids of `owned` (from the book) and of those that this draft has added, that still stand.
    template <class E, class Matches>
    [[nodiscard]] std::vector<E> standing(const std::set<IdOf<E>>& owned, Matches matches) const {
        std::set<IdOf<E>> ids = owned;
        for (const AnyEdit& edit : m_change.edits)
            if (const auto* one = std::get_if<Edit<E>>(&edit)) ids.insert(one->id());
        std::vector<E> found;
        for (const IdOf<E> id : ids)
            if (const E* thing = find<E>(id); thing && matches(*thing)) found.push_back(*thing);
        return found;
    }

    template <class E>
    IdOf<E> add(E thing) {
        thing.id = nextId<E>();
        m_change.edits.emplace_back(Edit<E>{std::nullopt, thing});
        return thing.id;
    }
    template <class E>
    void replace(const E& before, const E& after) {
        if (before == after) return;
        m_change.edits.emplace_back(Edit<E>{before, after});
    }
    template <class E>
    void remove(const E& before) {
        m_change.edits.emplace_back(Edit<E>{before, std::nullopt});
    }

    [[nodiscard]] const HouseBook& book() const { return m_book; }
    [[nodiscard]] Change take() { return std::move(m_change); }

private:
    template <class E>
    [[nodiscard]] IdOf<E> nextId() const {
        IdOf<E> next = m_book.nextId<E>();
        for (const AnyEdit& edit : m_change.edits)
            if (const auto* one = std::get_if<Edit<E>>(&edit); one && one->id() >= next)
                next = {one->id().number + 1};
        return next;
    }

    const HouseBook& m_book;
    Change m_change;
};

template <class E>
Refusal missing(IdOf<E> id) {
    return {kindName<E>.one,
            phrase("there is no number %1 in this book; it may have been removed meanwhile", id.number)};
}

/// Gives a bench or zone another shape, with all that follows from it.
Outcome changeFor(Draft& draft, const Refit& refit);
/// Takes a bench or zone away, with what would stand there.
Outcome changeFor(Draft& draft, const ClearAway& clear);
/// Keeps readings of a logger, month by month.
Outcome changeFor(Draft& draft, const KeepReadings& keep);
/// Takes readings out again.
Outcome changeFor(Draft& draft, const RemoveReadings& remove);

} // namespace warmbench
