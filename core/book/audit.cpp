#include "core/book/rules.h"

namespace warmbench {
namespace {

template <class... E>
std::vector<Refusal> auditKinds(const HouseBook& book, const std::tuple<E...>*) {
    std::vector<Refusal> broken;
    const auto auditKind = [&]<class Kind>(const Kind*) {
        for (const auto& [id, thing] : book.all<Kind>())
            if (auto refusal = checkThing(book, thing)) broken.push_back(*refusal);
    };
    (auditKind(static_cast<const E*>(nullptr)), ...);
    return broken;
}

} // namespace

std::vector<Refusal> audit(const HouseBook& book) {
    return auditKinds(book, static_cast<const Kinds*>(nullptr));
}

} // namespace warmbench
