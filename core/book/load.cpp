#include "core/book/load.h"

#include <algorithm>
#include <map>

namespace warmbench {
namespace {

int slotsOf(const Stay& stay) {
    int slots = 0;
    for (const Place& place : stay.places) slots += place.slots.height * place.slots.width;
    return slots;
}

/// Slots of one zone taken on each day, from the days on which stays begin and end.
std::vector<int> takenInZone(const HouseBook& book, ZoneId zone, Day from, int days) {
    std::vector<int> taken(static_cast<std::size_t>(days) + 1, 0);
    for (const StayId id : book.staysIn(zone)) {
        const Stay& stay = book.get<Stay>(id);
        const int begins = std::clamp(stay.from - from, 0, days);
        const int ends = std::clamp(stay.to - from, 0, days);
        const int slots = slotsOf(stay);
        taken[static_cast<std::size_t>(begins)] += slots;
        taken[static_cast<std::size_t>(ends)] -= slots;
    }
    for (std::size_t day = 1; day < taken.size(); ++day) taken[day] += taken[day - 1];
    return taken;
}

/// The day on which the last rooting stay of a batch ends.
std::optional<Day> rootedBy(const HouseBook& book, BatchId batch) {
    std::optional<Day> last;
    for (const StayId id : book.staysOf(batch))
        if (const Stay& stay = book.get<Stay>(id); stay.stage == Stage::Rooting)
            last = last ? std::max(*last, stay.to) : stay.to;
    return last;
}

bool isFree(const HouseBook& book, ZoneId zone, const SlotRect& slots, Day day) {
    for (const StayId id : book.staysIn(zone)) {
        const Stay& stay = book.get<Stay>(id);
        if (day < stay.from || day >= stay.to) continue;
        for (const Place& place : stay.places)
            if (place.slots.overlaps(slots)) return false;
    }
    return true;
}

} // namespace

int SlotLoad::taken(Day day) const {
    const int index = day - from;
    if (index < 0 || index >= days()) return 0;
    int sum = 0;
    for (const auto& ofHeat : takenByHeat) sum += ofHeat[static_cast<std::size_t>(index)];
    return sum;
}

SlotLoad slotLoad(const HouseBook& book, Day from, Day to) {
    SlotLoad load;
    load.from = from;
    const int days = std::max(0, to - from);
    const auto length = static_cast<std::size_t>(days);
    load.cuttingsStruck.assign(length, 0);
    load.batchesRooted.assign(length, 0);
    std::map<std::optional<Celsius>, std::vector<int>> byHeat;
    byHeat[std::nullopt].assign(length, 0);
    for (const auto& [id, zone] : book.all<Zone>()) {
        load.usable += zone.usableSlots();
        const std::vector<int> taken = takenInZone(book, id, from, days);
        std::vector<std::optional<Celsius>> heat(length);
        for (const MatRunId runId : book.matRunsOf(id)) {
            const MatRun& run = book.get<MatRun>(runId);
            const int begins = std::clamp(run.from - from, 0, days);
            const int ends = std::clamp(run.to - from, 0, days);
            std::fill(heat.begin() + begins, heat.begin() + ends, std::optional(run.setPoint));
        }
        for (std::size_t day = 0; day < length; ++day) {
            if (taken[day] == 0) continue;
            auto& ofHeat = byHeat[heat[day]];
            ofHeat.resize(length, 0);
            ofHeat[day] += taken[day];
        }
    }
    for (auto& [heat, taken] : byHeat) {
        load.heats.push_back(heat);
        load.takenByHeat.push_back(std::move(taken));
    }
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.strikeDay >= from && batch.strikeDay < to)
            load.cuttingsStruck[static_cast<std::size_t>(batch.strikeDay - from)] += batch.cuttings();
        if (const auto rooted = rootedBy(book, id); rooted && *rooted >= from && *rooted < to)
            ++load.batchesRooted[static_cast<std::size_t>(*rooted - from)];
    }
    return load;
}

std::optional<DaySpan> daysOf(const HouseBook& book) {
    std::optional<DaySpan> span;
    const auto include = [&](Day first, Day last) {
        span =
            span ? DaySpan{std::min(span->first, first), std::max(span->last, last)} : DaySpan{first, last};
    };
    for (const auto& [id, batch] : book.all<Batch>()) include(batch.strikeDay, batch.strikeDay);
    for (const auto& [id, stay] : book.all<Stay>()) include(stay.from, stay.to - 1);
    for (const auto& [id, run] : book.all<MatRun>()) include(run.from, run.to - 1);
    return span;
}

std::optional<Day> nextSlotsFree(const HouseBook& book, ZoneId zone, Day day) {
    std::vector<const Stay*> leaving;
    for (const StayId id : book.staysIn(zone))
        if (const Stay& stay = book.get<Stay>(id); stay.to > day) leaving.push_back(&stay);
    std::sort(leaving.begin(), leaving.end(), [](const Stay* a, const Stay* b) { return a->to < b->to; });
    for (const Stay* stay : leaving)
        for (const Place& place : stay->places)
            if (isFree(book, zone, place.slots, stay->to)) return stay->to;
    return std::nullopt;
}

} // namespace warmbench
