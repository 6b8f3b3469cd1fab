#include "core/book/field_rules.h"
#include "core/book/rules.h"

/// The rules of whole changes and whole books. Fields and references come before the rest: the other rules
/// rely on them.
namespace warmbench {
namespace {

template <class E>
Outcome checkFieldsAfter(const HouseBook& book, const Edit<E>& edit) {
    if (const E* now = book.find<E>(edit.id())) return checkFields(book, *now);
    if constexpr (requires { checkUnused(book, *edit.before); })
        if (edit.before) return checkUnused(book, *edit.before);
    return std::nullopt;
}

template <class E>
Outcome checkRulesAfter(const HouseBook& book, const Edit<E>& edit) {
    const E* now = book.find<E>(edit.id());
    if (now)
        if (auto broken = checkThing(book, *now)) return broken;
    if constexpr (requires { checkDependents(book, *now); }) {
        if (now)
            if (auto broken = checkDependents(book, *now)) return broken;
        if (edit.before) return checkDependents(book, *edit.before);
    }
    return std::nullopt;
}

template <class Check>
std::vector<BrokenRule> brokenRules(const HouseBook& book, Check check) {
    std::vector<BrokenRule> broken;
    forEachKind([&]<class Kind>() {
        for (const auto& [id, thing] : book.all<Kind>())
            if (auto refusal = check(thing)) broken.push_back({kindName<Kind>.many, id.number, *refusal});
    });
    return broken;
}

} // namespace

Outcome checkChange(const HouseBook& book, const Change& change) {
    for (const AnyEdit& edit : change.edits)
        if (auto broken = std::visit([&](const auto& one) { return checkFieldsAfter(book, one); }, edit))
            return broken;
    for (const AnyEdit& edit : change.edits)
        if (auto broken = std::visit([&](const auto& one) { return checkRulesAfter(book, one); }, edit))
            return broken;
    return std::nullopt;
}

std::vector<BrokenRule> audit(const HouseBook& book) {
    if (book.all<Nursery>().size() != 1)
        return {{kindName<Nursery>.many, 1, {kindName<Nursery>.one, "a book has one, number 1"}}};
    auto broken = brokenRules(book, [&](const auto& thing) { return checkFields(book, thing); });
    if (broken.empty())
        broken = brokenRules(book, [&](const auto& thing) { return checkThing(book, thing); });
    return broken;
}

} // namespace warmbench
