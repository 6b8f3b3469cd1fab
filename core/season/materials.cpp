#include "core/season/materials.h"

#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"

namespace warmbench::season {

void Materials::add(const HouseBook& book, const Batch& batch) {
    const ContainerType& type = book.get<ContainerType>(batch.containerType);
    const auto count = static_cast<int>(batch.containers.size());
    containers[type.name] += count;
    const Recipe& recipe = batch.recipe;
    int parts = 0;
    for (const MediumComponent& component : recipe.medium.value) parts += component.parts;
    for (const MediumComponent& component : recipe.medium.value)
        componentMillilitres[component.name] += type.volume.parts * count * component.parts / parts;
    cuttingsByHormone[isWithoutHormone(recipe.hormone.value) ? "none" : hormoneText(recipe)] +=
        batch.cuttings();
}

} // namespace warmbench::season
