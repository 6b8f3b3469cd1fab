#include "core/season/new_target.h"

namespace warmbench::season {

std::string numberedTargetName(std::size_t number) {
    const std::string digits = std::to_string(number);
    return (digits.size() < 2 ? "T0" : "T") + digits;
}

std::string nextTargetName(const HouseBook& book) {
    for (auto number = book.all<Target>().size() + 1;; ++number)
        if (std::string name = numberedTargetName(number); book.withKey<Target>(name).empty()) return name;
}

} // namespace warmbench::season
