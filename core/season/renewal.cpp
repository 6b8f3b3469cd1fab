#include "core/season/renewal.h"

#include <string_view>

namespace warmbench::season {

std::string renewalNote(const Stock& stock) {
    return "renews stock " + stock.name;
}

const Stock* renewedBy(const HouseBook& book, const Batch& batch) {
    if (!batch.target) return nullptr;
    const Target& target = book.get<Target>(*batch.target);
    for (const auto& [id, stock] : book.all<Stock>())
        if (stock.taxon == target.taxon && target.note == renewalNote(stock)) return &stock;
    return nullptr;
}

Command potOnAsStock(const HouseBook& book, const PotOn& potOn, const Stock& stock) {
    Stock renewed = stock;
    for (const PottedContainer& one : potOn.containers) renewed.plants += one.plants;
    const Phrase words =
        phrase("Pot on %1 as stock plants of %2", book.get<Batch>(potOn.batch).code, stock.name);
    return {Group{words.text(), {Command{potOn}, Command{Put<Stock>{std::move(renewed)}}}}};
}

} // namespace warmbench::season
