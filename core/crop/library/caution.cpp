#include "core/crop/library/caution.h"

#include "core/crop/library/taxon_name.h"

#include <algorithm>

namespace warmbench {

bool Caution::concerns(std::string_view genus) const {
    return std::find(genera.begin(), genera.end(), genus) != genera.end();
}

std::vector<std::string> generaNamedIn(std::string_view plants) {
    const auto isCapital = [](char c) { return c >= 'A' && c <= 'Z'; };
    const auto isSmall = [](char c) { return c >= 'a' && c <= 'z'; };
    std::vector<std::string> genera;
    for (std::size_t first = 0; first < plants.size(); ++first) {
        if (!isCapital(plants[first])) continue;
        std::size_t end = first + 1;
        while (end < plants.size() && isSmall(plants[end])) ++end;
        if (end - first > 1) genera.push_back(nameKey(plants.substr(first, end - first)));
        first = end - 1;
    }
    return genera;
}

} // namespace warmbench
