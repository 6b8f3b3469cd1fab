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

/// An edit of a thing of any kind: a variant, whose copying is compiled once, as its kinds are many and
/// large.
struct AnyEdit : detail::EditVariant<Kinds>::type {
    template <class E>
    AnyEdit(Edit<E> edit) : detail::EditVariant<Kinds>::type(std::move(edit)) {}
    AnyEdit(const AnyEdit& other);
    AnyEdit(AnyEdit&& other) noexcept;
    AnyEdit& operator=(const AnyEdit& other);
    AnyEdit& operator=(AnyEdit&& other) noexcept;
    ~AnyEdit();
};
bool operator==(const AnyEdit& a, const AnyEdit& b);

/// What a command did to a book, thing by thing in the order in which it was done. It is all that undo, redo,
/// storage, the journal and the views need to know.
struct Change {
    std::vector<AnyEdit> edits;

    /// What takes the change back.
    [[nodiscard]] Change inverse() const;
    friend bool operator==(const Change&, const Change&) = default;
};

} // namespace warmbench
