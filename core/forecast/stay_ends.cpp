#include "core/forecast/stay_ends.h"

#include "core/forecast/book_forecast.h"

#include <algorithm>

namespace warmbench::forecast {
namespace {

/// The first day from the stay's end on which another batch is to stand on one of its slots, or the same
/// containers elsewhere without it; `latest` where there is none before.
Day freeUntil(const HouseBook& book, const Stay& stay, Day latest) {
    Day free = latest;
    for (const StayId id : book.staysMeeting(stay.zone, stay.to, latest)) {
        const Stay& other = book.get<Stay>(id);
        if (other.id == stay.id) continue;
        for (const Place& theirs : other.places)
            for (const Place& ours : stay.places)
                if (theirs.slots.overlaps(ours.slots)) free = std::min(free, std::max(stay.to, other.from));
    }
    return free;
}

} // namespace

std::map<StayId, Day> stayEnds(const HouseBook& book, const BookForecast& forecast) {
    std::map<StayId, Day> ends;
    for (const auto& [id, outlook] : forecast.batches()) {
        const int slip = outlook.slip();
        if (slip == 0) continue;
        Day last = Day::first();
        for (const StayId stay : book.staysOf(id)) last = std::max(last, book.get<Stay>(stay).to);
        for (const StayId stayId : book.staysOf(id)) {
            const Stay& stay = book.get<Stay>(stayId);
            if (stay.to <= forecast.day()) continue;
            if (slip < 0 && stay.to != last) continue;
            const Day wanted = std::max({forecast.day() + 1, stay.from + 1, stay.to + slip});
            const Day end = wanted > stay.to ? freeUntil(book, stay, wanted) : wanted;
            if (end != stay.to) ends.emplace(stayId, end);
        }
    }
    return ends;
}

} // namespace warmbench::forecast
