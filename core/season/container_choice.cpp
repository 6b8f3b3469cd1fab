#include "core/season/container_choice.h"

#include <cstdlib>

namespace warmbench::season {

const ContainerType* containerFor(const HouseBook& book, const Recipe& recipe) {
    const ContainerType* nearest = nullptr;
    const auto off = [&](const ContainerType& type) {
        return std::abs(type.cuttings - recipe.cuttingsPerContainer.value);
    };
    for (const auto& [id, type] : book.all<ContainerType>()) {
        if (type.name == recipe.container.value) return &type;
        if (!nearest || off(type) < off(*nearest)) nearest = &type;
    }
    return nearest;
}

int cuttingsIn(const ContainerType& type, const Recipe& recipe) {
    return type.name == recipe.container.value ? recipe.cuttingsPerContainer.value : type.cuttings;
}

} // namespace warmbench::season
