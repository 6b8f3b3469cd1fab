#include "core/round/round.h"

#include "core/book/progress.h"
#include "core/book/query.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace warmbench::round {
namespace {

constexpr int pickedFromEach = 5;
constexpr double startedShare = 0.1; ///< of roots expected, for a first look
constexpr int lossesFresh = 14;      ///< days that a loss is worth another look
constexpr double manyDead = 0.1;     ///< of those examined

/// Where benches and slots come in a walk: bench after bench from the back wall, every other one backwards.
class Path {
public:
    explicit Path(const HouseBook& book) {
        for (const auto& [id, house] : book.all<House>()) {
            std::vector<const Bench*> benches;
            for (const BenchId bench : book.benchesOf(id)) benches.push_back(&book.get<Bench>(bench));
            std::sort(benches.begin(), benches.end(), [](const Bench* a, const Bench* b) {
                return std::tuple(a->y, a->x, a->id) < std::tuple(b->y, b->x, b->id);
            });
            for (const Bench* bench : benches) {
                const int place = static_cast<int>(m_places.size());
                m_places.emplace(bench->id, place);
            }
        }
    }
    [[nodiscard]] std::tuple<int, int, int> of(const Zone& zone, const SlotRect& slots) const {
        const int bench = m_places.at(zone.bench);
        const int along = zone.col + slots.col;
        return {bench, bench % 2 == 0 ? along : -along, zone.row + slots.row};
    }

private:
    std::map<BenchId, int> m_places;
};

Phrase both(const Phrase& first, const Phrase& second) {
    return first.empty() ? second : second.empty() ? first : phrase("%1; %2", first, second);
}

/// Why a batch as a whole is worth a look.
struct Call {
    std::vector<Reason> reasons;
    Phrase why;

    void add(Reason reason, const Phrase& words) {
        reasons.push_back(reason);
        why = both(why, words);
    }
};

Call callOf(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day) {
    const Batch& batch = book.get<Batch>(outlook.batch);
    const Rhythm rhythm = rhythmOf(batch.recipe.wood);
    const CheckSum found = latestChecks(book, batch.id, day - 1);
    const int age = day - batch.strikeDay;
    const int since = found.last ? day - *found.last : age;
    Call call;
    // Cuttings that were lifted lately are left alone.
    if (since < std::max(2, rhythm.between / 2)) return call;
    if (found.rooted == 0 && outlook.rooted.expected >= startedShare)
        call.add(Reason::Started,
                 phrase("%1 % should have roots, none seen yet", std::lround(100 * outlook.rooted.expected)));
    if (outlook.likelyReady && *outlook.likelyReady <= day)
        call.add(Reason::Ready, phrase("likely ready since %1", *outlook.likelyReady));
    if (found.last && outlook.slip() >= forecast::slipThatMatters)
        call.add(Reason::Behind, phrase("%1 days behind the plan", outlook.slip()));
    if (age >= rhythm.firstLook && since >= rhythm.between)
        call.add(Reason::Unchecked, found.last ? phrase("not looked at for %1 days", since)
                                               : phrase("not looked at since it was struck, %1 days", age));
    return call;
}

/// Losses in one container that are fresh; empty where there are none.
Phrase lossWords(const HouseBook& book, const Batch& batch, int container, Day day) {
    int lost = 0;
    for (const LossId id : book.lossesOf(batch.id, container))
        if (const Loss& loss = book.get<Loss>(id); loss.day <= day && day - loss.day <= lossesFresh)
            lost += loss.cuttings;
    if (lost > 0) return phrase("%1 lost in the last two weeks", lost);
    const RootCheck* check = latestCheck(book, batch.id, container, day - 1);
    if (!check || day - check->day > lossesFresh) return {};
    if (check->dead == 0 || check->dead < manyDead * check->examined) return {};
    return phrase("%1 of %2 dead on %3", check->dead, check->examined, check->day);
}

class BatchStops {
public:
    BatchStops(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day)
        : m_book(book), m_batch(book.get<Batch>(outlook.batch)), m_day(day),
          m_call(callOf(book, outlook, day)) {}

    void addTo(std::vector<Stop>& stops, const std::vector<Standing>& places) const {
        std::vector<Stop> found;
        for (const Standing& place : places) {
            Stop stop{place.batch, place.container, place.zone, place.slots, 0, 0, {}, {}, {}};
            stop.standing = standing(m_book, m_batch, place.container, m_day);
            const RootCheck* check = latestCheck(m_book, m_batch.id, place.container, m_day);
            if (check && check->day == m_day) stop.found = check->id;
            if (stop.standing == 0) continue;
            stop.examine = std::min(stop.standing, pickedFromEach);
            stop.why = lossWords(m_book, m_batch, place.container, m_day);
            if (!stop.why.empty()) stop.reasons.push_back(Reason::Losses);
            found.push_back(std::move(stop));
        }
        // Left alone longest first.
        std::stable_sort(found.begin(), found.end(),
                         [&](const Stop& a, const Stop& b) { return lastDay(a) < lastDay(b); });
        int wanted = m_call.reasons.empty() ? 0 : cuttingsToSee();
        // More of each where containers are few.
        const int containers = std::max(1, static_cast<int>(found.size()));
        const int each = std::max(pickedFromEach, (wanted + containers - 1) / containers);
        for (Stop& stop : found) {
            if (wanted > 0) {
                stop.examine = std::min(stop.standing, each);
                wanted -= stop.examine;
                stop.reasons.insert(stop.reasons.begin(), m_call.reasons.begin(), m_call.reasons.end());
                stop.why = both(m_call.why, stop.why);
            }
            if (!stop.reasons.empty()) stops.push_back(std::move(stop));
        }
    }

private:
    [[nodiscard]] Day lastDay(const Stop& stop) const {
        const RootCheck* check = latestCheck(m_book, m_batch.id, stop.container, m_day - 1);
        return check ? check->day : m_batch.strikeDay;
    }
    [[nodiscard]] int cuttingsToSee() const {
        constexpr int least = 10;
        constexpr int leastToWean = 20;
        const bool ready =
            std::find(m_call.reasons.begin(), m_call.reasons.end(), Reason::Ready) != m_call.reasons.end();
        return std::max(ready ? leastToWean : least, m_batch.cuttings() / 20);
    }

    const HouseBook& m_book;
    const Batch& m_batch;
    Day m_day;
    Call m_call;
};

} // namespace

Rhythm rhythmOf(Wood wood) {
    switch (wood) {
    case Wood::Softwood:
    case Wood::Basal:
        return {10, 3};
    case Wood::SemiRipe:
        return {21, 4};
    case Wood::Hardwood:
        return {60, 21};
    case Wood::EvergreenHardwood:
        return {50, 7};
    case Wood::LeafBud:
        return {18, 4};
    }
    return {21, 7};
}

std::vector<Standing> walk(const HouseBook& book, Day day) {
    const Path path(book);
    std::vector<std::pair<std::tuple<int, int, int>, Standing>> found;
    for (const auto& [id, stay] : book.all<Stay>()) {
        if (day < stay.from || day >= stay.to) continue;
        for (const Place& place : stay.places)
            found.push_back({path.of(book.get<Zone>(stay.zone), place.slots),
                             {stay.batch, place.container, stay.zone, place.slots}});
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Standing> walked;
    walked.reserve(found.size());
    for (auto& [at, standing] : found) walked.push_back(standing);
    return walked;
}

std::vector<Stop> roundOn(const HouseBook& book, const forecast::BookForecast& forecast) {
    const Day day = forecast.day();
    const std::vector<Standing> walked = walk(book, day);
    std::map<BatchId, std::vector<Standing>> byBatch;
    std::map<std::pair<BatchId, int>, std::size_t> order;
    for (std::size_t i = 0; i < walked.size(); ++i) {
        byBatch[walked[i].batch].push_back(walked[i]);
        order[{walked[i].batch, walked[i].container}] = i;
    }
    std::vector<Stop> stops;
    for (const auto& [batch, outlook] : forecast.batches()) {
        const auto places = byBatch.find(batch);
        if (places == byBatch.end()) continue;
        // Weaned cuttings are no longer lifted.
        if (!outlook.rooting) continue;
        BatchStops(book, outlook, day).addTo(stops, places->second);
    }
    std::sort(stops.begin(), stops.end(), [&](const Stop& a, const Stop& b) {
        return order.at({a.batch, a.container}) < order.at({b.batch, b.container});
    });
    return stops;
}

} // namespace warmbench::round
