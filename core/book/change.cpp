#include "core/book/change.h"

namespace warmbench {

AnyEdit::AnyEdit(const AnyEdit& other) = default;
AnyEdit::AnyEdit(AnyEdit&& other) noexcept = default;
AnyEdit& AnyEdit::operator=(const AnyEdit& other) = default;
AnyEdit& AnyEdit::operator=(AnyEdit&& other) noexcept = default;
AnyEdit::~AnyEdit() = default;

bool operator==(const AnyEdit& a, const AnyEdit& b) {
    using Variant = detail::EditVariant<Kinds>::type;
    return static_cast<const Variant&>(a) == static_cast<const Variant&>(b);
}

Change Change::inverse() const {
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

} // namespace warmbench
