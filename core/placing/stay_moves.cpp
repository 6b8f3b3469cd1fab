#include "core/placing/stay_moves.h"

#include "core/book/container_numbers.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

/// Stays are taken apart into the time of each single container, changed there, and put together again: so
/// that moving, splitting, joining and stretching are one and the same.
namespace warmbench::placing {
namespace {

/// Days of one container on its slots.
struct Span {
    Stage stage = Stage::Rooting;
    ZoneId zone;
    Day from;
    Day to;
    SlotRect slots;
    std::optional<Day> weanedOn;
    StayId origin; ///< the stay that it was of; 0 where it is new
};
/// By container, in order of days.
using Times = std::map<int, std::vector<Span>>;

Times timesOf(const std::vector<Stay>& stays) {
    Times times;
    for (const Stay& stay : stays)
        for (const Place& place : stay.places)
            times[place.container].push_back(
                {stay.stage, stay.zone, stay.from, stay.to, place.slots, stay.weanedOn, stay.id});
    for (auto& [container, spans] : times)
        std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
    return times;
}

/// What comes after a span that ended on `end` moves along by some days, as long as it follows without a gap.
void shiftFollowing(std::vector<Span>& spans, std::size_t first, Day end, int days) {
    for (std::size_t i = first; i < spans.size() && spans[i].from == end; ++i) {
        end = spans[i].to;
        spans[i].from = spans[i].from + days;
        spans[i].to = spans[i].to + days;
    }
}

void sortPlaces(Stay& stay) {
    std::sort(stay.places.begin(), stay.places.end(), [](const Place& a, const Place& b) {
        return std::tie(a.container, a.slots) < std::tie(b.container, b.slots);
    });
}

/// Stays of one zone, stage and weaning on the days on which the same containers stand there on the same
/// slots: as few and as long as can be.
std::vector<Stay> together(std::vector<std::pair<Span, int>> spans, BatchId batch) {
    std::vector<Day> cuts;
    for (const auto& [span, container] : spans) {
        cuts.push_back(span.from);
        cuts.push_back(span.to);
    }
    std::sort(cuts.begin(), cuts.end());
    cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());
    std::vector<Stay> stays;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const Span& first = spans.front().first;
        Stay stay{{}, batch, first.stage, first.zone, cuts[i], cuts[i + 1], {}, first.weanedOn};
        for (const auto& [span, container] : spans)
            if (span.from <= stay.from && stay.to <= span.to) stay.places.push_back({container, span.slots});
        sortPlaces(stay);
        if (stay.places.empty()) continue;
        if (!stays.empty() && stays.back().to == stay.from && stays.back().places == stay.places)
            stays.back().to = stay.to;
        else
            stays.push_back(std::move(stay));
    }
    return stays;
}

/// Gives stays the ids of those that they come from: a stay that is as it was keeps its own, then each takes
/// the first one left of its containers'.
void keepIds(std::vector<Stay>& stays, const std::vector<Stay>& before, const Times& times) {
    std::set<StayId> used;
    for (Stay& stay : stays)
        for (const Stay& old : before) {
            Stay same = old;
            same.id = {};
            sortPlaces(same);
            if (!(same == stay)) continue;
            stay.places = old.places;
            stay.id = old.id;
            used.insert(old.id);
            break;
        }
    for (Stay& stay : stays) {
        if (stay.id.number != 0) continue;
        for (const Place& place : stay.places)
            for (const Span& span : times.at(place.container)) {
                const bool comesFrom = stay.stage == span.stage && stay.zone == span.zone &&
                                       stay.weanedOn == span.weanedOn && stay.from < span.to &&
                                       span.from < stay.to;
                if (!comesFrom || span.origin.number == 0 || stay.id.number != 0) continue;
                if (used.insert(span.origin).second) stay.id = span.origin;
            }
    }
}

/// The commands that lead from the stays of a batch to what its containers' times are now.
Result<Command> settle(const std::vector<Stay>& before, const Times& times, const Batch& batch,
                       std::string label) {
    std::map<std::tuple<Stage, ZoneId, std::optional<Day>>, std::vector<std::pair<Span, int>>> groups;
    for (const auto& [container, spans] : times)
        for (const Span& span : spans)
            groups[{span.stage, span.zone, span.weanedOn}].emplace_back(span, container);
    std::vector<Stay> after;
    for (auto& [group, spans] : groups)
        for (Stay& stay : together(std::move(spans), batch.id)) after.push_back(std::move(stay));
    std::stable_sort(after.begin(), after.end(),
                     [](const Stay& a, const Stay& b) { return a.from < b.from; });
    keepIds(after, before, times);
    Group step;
    step.label = std::move(label);
    for (const Stay& old : before) {
        const auto kept =
            std::find_if(after.begin(), after.end(), [&](const Stay& stay) { return stay.id == old.id; });
        if (kept == after.end())
            step.commands.push_back({RemoveStay{old.id}});
        else if (!(*kept == old))
            step.commands.push_back({MoveStay{kept->id, kept->zone, kept->from, kept->to, kept->places}});
    }
    for (const Stay& stay : after)
        if (stay.id.number == 0) step.commands.push_back({AddStay{stay}});
    if (step.commands.empty()) return Refusal{batch.code, phrase("it stands there on those days already")};
    return Command{std::move(step)};
}

std::vector<Stay> staysOfBatch(const HouseBook& book, BatchId batch) {
    std::vector<Stay> stays;
    for (const StayId id : book.staysOf(batch)) stays.push_back(book.get<Stay>(id));
    return stays;
}

/// `27-048-A`, or `containers 1-3 of 27-048-A` where it has others besides.
std::string movedWords(const Batch& batch, const std::vector<Place>& places) {
    if (places.size() >= batch.containers.size()) return batch.code;
    if (places.size() == 1) return containerCode(batch.code, places.front().container);
    std::vector<int> numbers;
    numbers.reserve(places.size());
    for (const Place& place : places) numbers.push_back(place.container);
    return phrase("containers %1 of %2", containerNumbers(numbers), batch.code).text();
}

std::string moveWords(const HouseBook& book, const Move& move) {
    const Batch& batch = book.get<Batch>(move.batch);
    const std::string moved = movedWords(batch, move.places);
    const Stay* stay = stayOf(book, move.batch, move.places.front().container, move.day);
    const char* what = !stay                     ? pattern("Give %1 a place in %2 from %3 on")
                       : stay->zone == move.zone ? pattern("Move %1 within %2 from %3 on")
                                                 : pattern("Move %1 to %2 from %3 on");
    return phrase(what, moved, zoneTitle(book, move.zone), move.day).text();
}

/// Moves one container; `code` is its batch's.
Outcome moveOne(std::vector<Span>& spans, const Move& move, const Place& place, const std::string& code) {
    const auto covering = std::find_if(spans.begin(), spans.end(), [&](const Span& span) {
        return span.from <= move.day && move.day < span.to;
    });
    if (covering == spans.end()) {
        const std::string name = containerCode(code, place.container);
        if (!move.to)
            return Refusal{name, phrase("it has no place on %1; say until when it is to stand", move.day)};
        Span given{Stage::Rooting, move.zone, move.day, *move.to, place.slots, {}, {}};
        for (const Span& span : spans)
            if (span.from < move.day) {
                given.stage = span.stage;
                given.weanedOn = span.weanedOn;
            }
        spans.push_back(given);
        return std::nullopt;
    }
    Span there = *covering;
    there.zone = move.zone;
    there.slots = place.slots;
    const Day end = there.to;
    if (move.to) there.to = *move.to;
    auto at = static_cast<std::size_t>(covering - spans.begin());
    if (covering->from < move.day) {
        spans[at].to = move.day;
        there.from = move.day;
        there.origin = {};
        spans.insert(spans.begin() + static_cast<std::ptrdiff_t>(++at), there);
    } else {
        spans[at] = there;
    }
    shiftFollowing(spans, at + 1, end, there.to - end);
    return std::nullopt;
}

} // namespace

Result<Command> moveContainers(const HouseBook& book, const Move& move) {
    const Batch& batch = book.get<Batch>(move.batch);
    if (batch.state == BatchState::Ended) return Refusal{batch.code, phrase("nothing stands in it any more")};
    if (move.places.empty()) return Refusal{batch.code, phrase("no container was named to move")};
    if (move.to && *move.to <= move.day)
        return Refusal{batch.code, phrase("a stay that begins on %1 can't end on %2", move.day, *move.to)};
    const std::vector<Stay> before = staysOfBatch(book, move.batch);
    Times times = timesOf(before);
    std::set<int> named;
    for (const Place& place : move.places) {
        if (!named.insert(place.container).second)
            return Refusal{batch.code, phrase("container %1 is named twice", place.container)};
        if (auto refusal = moveOne(times[place.container], move, place, batch.code)) return *refusal;
    }
    return settle(before, times, batch, moveWords(book, move));
}

Result<Command> setStayDays(const HouseBook& book, StayId id, Day from, Day to) {
    const Stay& stay = book.get<Stay>(id);
    const Batch& batch = book.get<Batch>(stay.batch);
    if (to <= from) return Refusal{batch.code, phrase("a stay that begins on %1 can't end on %2", from, to)};
    const std::vector<Stay> before = staysOfBatch(book, stay.batch);
    Times times = timesOf(before);
    for (const Place& place : stay.places) {
        std::vector<Span>& spans = times[place.container];
        for (std::size_t i = 0; i < spans.size(); ++i) {
            if (spans[i].origin != id) continue;
            if (i > 0 && spans[i - 1].to == stay.from) {
                if (spans[i - 1].from >= from)
                    return Refusal{containerCode(batch.code, place.container),
                                   phrase("it would leave no day for the stay before, which begins on %1",
                                          spans[i - 1].from)};
                spans[i - 1].to = from;
            }
            spans[i].from = from;
            spans[i].to = to;
            shiftFollowing(spans, i + 1, stay.to, to - stay.to);
            break;
        }
    }
    return settle(before, times, batch,
                  phrase("Change the days of %1 in %2", batch.code, zoneTitle(book, stay.zone)).text());
}

} // namespace warmbench::placing
