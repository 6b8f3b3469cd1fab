#include "core/book/refit.h"

#include "core/book/draft.h"
#include "core/book/query.h"
#include "core/quantity/decimal.h"

#include <algorithm>

namespace warmbench {
namespace {

/// By how many rows and columns of a zone its places move, so that they stay where they are on the bench
/// where it grows or shrinks, and go along where it moves as a whole.
Slot shiftOf(const Zone& before, const Zone& after) {
    const bool resized = before.rows != after.rows || before.cols != after.cols;
    if (!resized || before.bench != after.bench) return {0, 0};
    return {before.row - after.row, before.col - after.col};
}

bool fits(const SlotRect& slots, const Zone& zone) {
    return slots.within(zone.rows, zone.cols) &&
           std::none_of(zone.blocked.begin(), zone.blocked.end(),
                        [&](Slot blocked) { return slots.covers(blocked); });
}

/// The stays of one zone, while it gets its new shape.
class ZoneRefit {
public:
    ZoneRefit(Draft& draft, const Zone& before, const Zone& after, Day day)
        : m_draft(draft), m_before(before), m_after(after), m_day(day), m_shift(shiftOf(before, after)) {}

    void stays() {
        std::vector<Homeless> homeless;
        for (const Stay& stay :
             m_draft.standing<Stay>(m_draft.book().staysIn(m_before.id),
                                    [&](const Stay& one) { return one.zone == m_before.id; })) {
            Stay fitting = stay;
            fitting.places.clear();
            std::vector<Place> outside;
            for (Place place : stay.places) {
                place.slots.row += m_shift.row;
                place.slots.col += m_shift.col;
                (fits(place.slots, m_after) ? fitting.places : outside).push_back(place);
            }
            if (outside.empty()) {
                m_draft.replace(stay, fitting);
                continue;
            }
            if (stay.from >= m_day) {
                replaceOrRemove(stay, fitting);
                continue;
            }
            // What has stood there keeps its days up to now, as one stay; what fits goes on as another.
            Stay past = fitting;
            past.to = std::min(stay.to, m_day);
            replaceOrRemove(stay, past);
            homeless.push_back({past, past.places.empty() ? std::nullopt : std::optional(past.id), outside});
            if (stay.to > m_day && !fitting.places.empty()) {
                fitting.from = m_day;
                m_draft.add(fitting);
            }
        }
        // First one container of each, as the warmth of a batch is reckoned from where any of it stood.
        for (Homeless& one : homeless)
            if (!one.kept) reseat(one, 1);
        for (Homeless& one : homeless) reseat(one, one.places.size());
    }

    Outcome runs() {
        const auto runs =
            m_draft.standing<MatRun>(m_draft.book().matRunsOf(m_before.id),
                                     [&](const MatRun& run) { return run.zone == m_before.id; });
        for (const MatRun& run : runs) {
            const bool offered = m_after.mat && std::count(m_after.mat->setPoints.begin(),
                                                           m_after.mat->setPoints.end(), run.setPoint) > 0;
            if (offered) {
                cutWhereOut(run);
                continue;
            }
            if (run.from < m_day)
                return Refusal{m_before.name,
                               phrase(m_after.mat
                                          ? pattern("its mat has run at %1 since %2; keep the mat and that "
                                                    "set-point, as the warmth of what stood there is "
                                                    "reckoned from it")
                                          : pattern("its mat has run at %1 since %2, and the warmth of what "
                                                    "stood there is reckoned from it; keep the mat, and say "
                                                    "from which day on it is out of order"),
                                      run.setPoint, run.from)};
            m_draft.remove(run);
        }
        return std::nullopt;
    }

private:
    /// Takes from a run the days on which the mat is out of order.
    void cutWhereOut(const MatRun& run) {
        const std::optional<Day> out = m_after.mat->outOfOrderFrom;
        if (!out || run.to <= *out) return;
        if (run.from >= *out) return m_draft.remove(run);
        MatRun left = run;
        left.to = *out;
        m_draft.replace(run, left);
    }

    void replaceOrRemove(const Stay& before, const Stay& after) {
        if (after.places.empty())
            m_draft.remove(before);
        else
            m_draft.replace(before, after);
    }

    /// A stay that is over, with containers whose slots are gone.
    struct Homeless {
        Stay past;                  ///< with those that still have theirs
        std::optional<StayId> kept; ///< the stay in the draft; nothing where none of its containers fits
        std::vector<Place> places;  ///< of the others
    };

    /// Shows as many as `most` of them on slots that were free then, as far as there are any.
    void reseat(Homeless& homeless, std::size_t most) {
        const Stay& past = homeless.past;
        std::vector<SlotRect> taken;
        for (const Stay& other :
             m_draft.standing<Stay>(m_draft.book().staysIn(m_before.id), [&](const Stay& one) {
                 return one.zone == m_before.id && one.from < past.to && past.from < one.to;
             }))
            for (const Place& place : other.places) taken.push_back(place.slots);
        Stay shown = homeless.kept ? *m_draft.find<Stay>(*homeless.kept) : past;
        const Stay before = shown;
        std::vector<Place> left;
        for (Place place : homeless.places) {
            const auto free = shown.places.size() - before.places.size() < most
                                  ? freeSlots(place.slots, taken)
                                  : std::nullopt;
            if (!free) {
                left.push_back(place);
                continue;
            }
            place.slots = *free;
            taken.push_back(*free);
            shown.places.push_back(place);
        }
        homeless.places = left;
        if (homeless.kept)
            m_draft.replace(before, shown);
        else if (!shown.places.empty())
            homeless.kept = m_draft.add(shown);
    }

    [[nodiscard]] std::optional<SlotRect> freeSlots(SlotRect slots,
                                                    const std::vector<SlotRect>& taken) const {
        for (slots.row = 0; slots.row + slots.height <= m_after.rows; ++slots.row)
            for (slots.col = 0; slots.col + slots.width <= m_after.cols; ++slots.col)
                if (fits(slots, m_after) &&
                    std::none_of(taken.begin(), taken.end(),
                                 [&](const SlotRect& other) { return slots.overlaps(other); }))
                    return slots;
        return std::nullopt;
    }

    Draft& m_draft;
    const Zone m_before;
    const Zone m_after;
    Day m_day;
    Slot m_shift;
};

Outcome refitZone(Draft& draft, const Zone& after, Day day) {
    const Zone* found = draft.find<Zone>(after.id);
    if (!found) return missing<Zone>(after.id);
    const Zone before = *found;
    draft.replace(before, after);
    ZoneRefit refit(draft, before, after, day);
    refit.stays();
    return refit.runs();
}

Outcome clearZone(Draft& draft, ZoneId id, Day day) {
    const Zone* found = draft.find<Zone>(id);
    if (!found) return missing<Zone>(id);
    const Zone zone = *found;
    for (const Stay& stay :
         draft.standing<Stay>(draft.book().staysIn(id), [&](const Stay& one) { return one.zone == id; })) {
        const Batch* batch = draft.find<Batch>(stay.batch);
        if (!batch) return missing<Batch>(stay.batch);
        if (stay.from < day)
            return Refusal{zone.name, phrase("%1 has stood there since %2, and its warmth is reckoned from "
                                             "that; make the zone smaller instead of taking it away",
                                             batch->code, stay.from)};
        draft.remove(stay);
    }
    for (const MatRun& run : draft.standing<MatRun>(draft.book().matRunsOf(id),
                                                    [&](const MatRun& one) { return one.zone == id; }))
        draft.remove(run);
    draft.remove(zone);
    return std::nullopt;
}

Outcome refitBench(Draft& draft, const Bench& after, Day day) {
    const Bench* found = draft.find<Bench>(after.id);
    if (!found) return missing<Bench>(after.id);
    draft.replace(Bench{*found}, after);
    for (const Zone& zone : draft.standing<Zone>(draft.book().zonesOf(after.id),
                                                 [&](const Zone& one) { return one.bench == after.id; })) {
        SlotRect left = zone.onBench();
        left.height = std::min(left.height, after.rows - left.row);
        left.width = std::min(left.width, after.cols - left.col);
        if (left == zone.onBench()) continue;
        const bool gone = left.height < 1 || left.width < 1;
        if (auto refusal =
                gone ? clearZone(draft, zone.id, day) : refitZone(draft, reshaped(zone, left), day))
            return refusal;
    }
    return std::nullopt;
}

} // namespace

Zone reshaped(const Zone& zone, const SlotRect& onBench) {
    Zone after = zone;
    after.row = onBench.row;
    after.col = onBench.col;
    after.rows = onBench.height;
    after.cols = onBench.width;
    const Slot shift = shiftOf(zone, after);
    for (Slot& blocked : after.blocked) blocked = {blocked.row + shift.row, blocked.col + shift.col};
    std::erase_if(after.blocked, [&](Slot blocked) {
        return blocked.row < 0 || blocked.col < 0 || blocked.row >= after.rows || blocked.col >= after.cols;
    });
    return after;
}

Outcome changeFor(Draft& draft, const Refit& refit) {
    if (const auto* zone = std::get_if<Zone>(&refit.thing)) return refitZone(draft, *zone, refit.day);
    return refitBench(draft, std::get<Bench>(refit.thing), refit.day);
}

Outcome changeFor(Draft& draft, const ClearAway& clear) {
    if (const auto* zone = std::get_if<ZoneId>(&clear.thing)) return clearZone(draft, *zone, clear.day);
    const BenchId id = std::get<BenchId>(clear.thing);
    const Bench* bench = draft.find<Bench>(id);
    if (!bench) return missing<Bench>(id);
    const Bench before = *bench;
    for (const Zone& zone :
         draft.standing<Zone>(draft.book().zonesOf(id), [&](const Zone& one) { return one.bench == id; }))
        if (auto refusal = clearZone(draft, zone.id, clear.day)) return refusal;
    draft.remove(before);
    return std::nullopt;
}

} // namespace warmbench
