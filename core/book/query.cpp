#include "core/book/query.h"

#include <algorithm>
#include <cctype>

namespace warmbench {
namespace {

/// A name for comparing: lower case, `×` as x, single spaces.
std::string folded(std::string_view name) {
    std::string text;
    for (std::size_t i = 0; i < name.size(); ++i) {
        const auto c = static_cast<unsigned char>(name[i]);
        if (c == 0xC3 && i + 1 < name.size() && static_cast<unsigned char>(name[i + 1]) == 0x97) {
            text += 'x';
            ++i;
        } else if (std::isspace(c)) {
            if (!text.empty() && text.back() != ' ') text += ' ';
        } else {
            text += static_cast<char>(std::tolower(c));
        }
    }
    while (!text.empty() && text.back() == ' ') text.pop_back();
    return text;
}

} // namespace

std::string zoneTitle(const HouseBook& book, ZoneId id) {
    const Zone& zone = book.get<Zone>(id);
    return book.get<Bench>(zone.bench).name + " · " + zone.name;
}

std::string containerCode(const std::string& batchCode, int container) {
    return batchCode + (container < 10 ? "/0" : "/") + std::to_string(container);
}

std::string recipeTitle(const HouseBook& book, const Recipe& recipe) {
    return book.get<Taxon>(recipe.taxon).name + ", " + woodNames[static_cast<std::size_t>(recipe.wood)] +
           (recipe.name.empty() ? "" : ", " + recipe.name);
}

int standing(const HouseBook& book, const Batch& batch, int container, Day day) {
    int count = 0;
    for (const BatchContainer& one : batch.containers)
        if (one.number == container) count += one.cuttings;
    for (const LossId id : book.lossesOf(batch.id, container))
        if (const Loss& loss = book.get<Loss>(id); loss.day <= day) count -= loss.cuttings;
    for (const PottingId id : book.pottingsOf(batch.id, container))
        if (const Potting& potting = book.get<Potting>(id); potting.day <= day)
            count -= potting.plants + potting.lost;
    return count;
}

int standing(const HouseBook& book, const Batch& batch, Day day) {
    int count = batch.cuttings();
    for (const LossId id : book.lossesOf(batch.id))
        if (const Loss& loss = book.get<Loss>(id); loss.day <= day) count -= loss.cuttings;
    for (const PottingId id : book.pottingsOf(batch.id))
        if (const Potting& potting = book.get<Potting>(id); potting.day <= day)
            count -= potting.plants + potting.lost;
    return count;
}

int pottedOn(const HouseBook& book, BatchId batch) {
    int plants = 0;
    for (const PottingId id : book.pottingsOf(batch)) plants += book.get<Potting>(id).plants;
    return plants;
}

std::vector<const Stay*> staysInOrder(const HouseBook& book, BatchId batch) {
    std::vector<const Stay*> stays;
    for (const StayId id : book.staysOf(batch)) stays.push_back(&book.get<Stay>(id));
    std::stable_sort(stays.begin(), stays.end(),
                     [](const Stay* a, const Stay* b) { return a->from < b->from; });
    return stays;
}

bool shareSlots(const Stay& a, const Stay& b) {
    return std::any_of(a.places.begin(), a.places.end(), [&](const Place& ours) {
        return std::any_of(b.places.begin(), b.places.end(),
                           [&](const Place& theirs) { return ours.slots.overlaps(theirs.slots); });
    });
}

const Stay* stayOn(const HouseBook& book, BatchId batch, Day day) {
    for (const StayId id : book.staysOf(batch))
        if (const Stay& stay = book.get<Stay>(id); stay.from <= day && day < stay.to) return &stay;
    return nullptr;
}

std::optional<Celsius> setPointOn(const HouseBook& book, ZoneId zone, Day day) {
    const auto runs = book.matRunsMeeting(zone, day, day + 1);
    if (runs.empty()) return std::nullopt;
    return book.get<MatRun>(runs.front()).setPoint;
}

const House& houseOf(const HouseBook& book, const Zone& zone) {
    return book.get<House>(book.get<Bench>(zone.bench).house);
}

Celsius expectedRootZone(const HouseBook& book, const Zone& zone, Day day) {
    const Celsius floor = onDay(houseOf(book, zone).unheatedRootZone, day);
    const auto aimed = setPointOn(book, zone.id, day);
    return aimed ? std::max(*aimed, floor) : floor;
}

int slotsTaken(const HouseBook& book, ZoneId zone, Day day) {
    int taken = 0;
    for (const StayId id : book.staysMeeting(zone, day, day + 1))
        for (const Place& place : book.get<Stay>(id).places) taken += place.slots.height * place.slots.width;
    return taken;
}

const Taxon* findTaxon(const HouseBook& book, std::string_view name) {
    const std::string wanted = folded(name);
    const auto isWanted = [&](const std::string& other) { return folded(other) == wanted; };
    for (const auto& [id, taxon] : book.all<Taxon>())
        if (isWanted(taxon.name)) return &taxon;
    for (const auto& [id, taxon] : book.all<Taxon>())
        if (std::any_of(taxon.synonyms.begin(), taxon.synonyms.end(), isWanted) ||
            std::any_of(taxon.commonNames.begin(), taxon.commonNames.end(), isWanted))
            return &taxon;
    return nullptr;
}

const Batch* findBatch(const HouseBook& book, std::string_view code) {
    const auto& found = book.withKey<Batch>(std::string(code));
    return found.empty() ? nullptr : &book.get<Batch>(*found.begin());
}

} // namespace warmbench
