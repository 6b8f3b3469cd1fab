#pragma once

#include "core/book/fields.h"

#include <optional>
#include <variant>
#include <vector>

namespace warmbench {

/// One thing of a book before and after: added where `before` is absent, removed where `after` is.
template <class E>
struct Edit {
    std::optional<E> before;
    std::optional<E> after;

    [[nodiscard]] IdOf<E> id() const { return before ? before->id : after->id; }
    friend bool operator==(const Edit&, const Edit&) = default;
};

namespace detail {
template <class Tuple>
struct EditVariant;
template <class... E>
struct EditVariant<std::tuple<E...>> {
    using type = std::variant<Edit<E>...>;
};
} // namespace detail

using AnyEdit = detail::EditVariant<Kinds>::type;

/// What a command did to a book, thing by thing in the order in which it was done. It is all that undo, redo,
/// storage, the journal and the views need to know.
struct Change {
    std::vector<AnyEdit> edits;

    [[nodiscard]] Change inverse() const {
        Change back;
        for (auto edit = edits.rbegin(); edit != edits.rend(); ++edit)
            std::visit(
                [&](auto swapped) {
                    std::swap(swapped.before, swapped.after);
                    back.edits.emplace_back(std::move(swapped));
                },
                *edit);
        return back;
    }
    friend bool operator==(const Change&, const Change&) = default;
};

} // namespace warmbench
