#include "ui/map/map_scene.h"

#include "core/book/load.h"
#include "core/book/query.h"
#include "ui/words/wording.h"

#include <algorithm>

namespace warmbench::ui {
namespace {

int area(const SlotRect& rect) {
    return rect.height * rect.width;
}

double millimetres(Millimetres length) {
    return static_cast<double>(length.parts);
}

QRectF areaOf(const Bench& bench) {
    const double slot = millimetres(bench.slot);
    return {millimetres(bench.x), millimetres(bench.y), bench.cols * slot, bench.rows * slot};
}

/// Room behind and before each bench of a house, up to whatever comes first.
void measureAisles(const House& house, std::vector<SceneBench>& benches, std::size_t first) {
    for (std::size_t i = first; i < benches.size(); ++i) {
        SceneBench& bench = benches[i];
        bench.behind = bench.area.top();
        bench.before = millimetres(house.width) - bench.area.bottom();
        for (std::size_t j = first; j < benches.size(); ++j) {
            const QRectF& other = benches[j].area;
            if (i == j || other.left() >= bench.area.right() || other.right() <= bench.area.left()) continue;
            if (other.bottom() <= bench.area.top())
                bench.behind = std::min(bench.behind, bench.area.top() - other.bottom());
            else
                bench.before = std::min(bench.before, other.top() - bench.area.bottom());
        }
    }
}

class SceneBuilder {
public:
    SceneBuilder(const HouseBook& book, Day day, const Letters& letters, RootZoneLogs& logs,
                 std::optional<Day> today)
        : m_book(book), m_letters(letters), m_logs(logs), m_today(today) {
        m_scene.day = day;
    }

    MapScene build() {
        for (const auto& [id, house] : m_book.all<House>()) addHouse(house);
        return std::move(m_scene);
    }

private:
    void addHouse(const House& house) {
        m_scene.houses.push_back({house.id, text(house.name), millimetres(house.length),
                                  millimetres(house.width), onDay(house.air, m_scene.day), 0, 0});
        std::vector<const Bench*> benches;
        for (const BenchId id : m_book.benchesOf(house.id)) benches.push_back(&m_book.get<Bench>(id));
        std::sort(benches.begin(), benches.end(),
                  [](const Bench* a, const Bench* b) { return std::tie(a->y, a->x) < std::tie(b->y, b->x); });
        const std::size_t first = m_scene.benches.size();
        for (const Bench* bench : benches)
            m_scene.benches.push_back({bench->id, static_cast<int>(m_scene.houses.size()) - 1,
                                       text(bench->name), areaOf(*bench), 0, 0});
        measureAisles(house, m_scene.benches, first);
        for (std::size_t i = 0; i < benches.size(); ++i) addZones(*benches[i], static_cast<int>(first + i));
    }

    void addZones(const Bench& bench, int benchIndex) {
        std::vector<const Zone*> zones;
        for (const ZoneId id : m_book.zonesOf(bench.id)) zones.push_back(&m_book.get<Zone>(id));
        std::sort(zones.begin(), zones.end(), [](const Zone* a, const Zone* b) {
            return std::tie(a->row, a->col) < std::tie(b->row, b->col);
        });
        for (const Zone* zone : zones) addZone(bench, benchIndex, *zone);
    }

    void addZone(const Bench& bench, int benchIndex, const Zone& zone) {
        SceneZone shown;
        shown.id = zone.id;
        shown.bench = benchIndex;
        shown.name = text(zone.name);
        shown.title = text(zoneTitle(m_book, zone.id));
        shown.slot = millimetres(bench.slot);
        shown.area = {millimetres(bench.x) + zone.col * shown.slot,
                      millimetres(bench.y) + zone.row * shown.slot, zone.cols * shown.slot,
                      zone.rows * shown.slot};
        shown.rows = zone.rows;
        shown.cols = zone.cols;
        shown.heading = zone.row == 0                        ? HeadingSide::Behind
                        : zone.row + zone.rows == bench.rows ? HeadingSide::Before
                                                             : HeadingSide::Inside;
        shown.cover = zone.cover;
        shown.hasMat = zone.mat.has_value();
        shown.setPoint = setPointOn(m_book, zone.id, m_scene.day);
        shown.expected = expectedRootZone(m_book, zone, m_scene.day);
        shown.measured = m_logs.on(m_book, zone.id, m_scene.day);
        shown.usable = zone.usableSlots();
        shown.nextFree = nextSlotsFree(m_book, zone.id, m_scene.day);
        shown.blocked = zone.blocked;
        shown.potAt.assign(static_cast<std::size_t>(zone.rows) * static_cast<std::size_t>(zone.cols), -1);
        shown.firstStay = static_cast<int>(m_scene.stays.size());
        for (const StayId id : m_book.staysIn(zone.id))
            if (const Stay& stay = m_book.get<Stay>(id); stay.from <= m_scene.day && m_scene.day < stay.to)
                addStay(stay, shown);
        shown.endStay = static_cast<int>(m_scene.stays.size());
        SceneHouse& house = m_scene.houses.back();
        house.taken += shown.taken;
        house.usable += shown.usable;
        m_scene.taken += shown.taken;
        m_scene.usable += shown.usable;
        m_scene.zones.push_back(std::move(shown));
    }

    void addStay(const Stay& stay, SceneZone& zone) {
        const Batch& batch = m_book.get<Batch>(stay.batch);
        SceneStay shown;
        shown.id = stay.id;
        shown.batch = stay.batch;
        shown.zone = static_cast<int>(m_scene.zones.size());
        shown.code = text(batch.code);
        shown.letters = m_letters.of(batch.id);
        shown.taxon = nameOf(batch.taxon);
        shown.progress = progressOn(m_book, stay, m_scene.day, m_today);
        shown.troubles = troublesOn(m_book, stay, m_scene.day);
        if (!shown.troubles.empty()) ++zone.troubled;
        shown.firstPot = static_cast<int>(m_scene.pots.size());
        addPots(stay, batch, zone);
        shown.endPot = static_cast<int>(m_scene.pots.size());
        std::vector<SlotRect> rects;
        rects.reserve(stay.places.size());
        for (const Place& place : stay.places) rects.push_back(place.slots);
        shown.patch = mergedPatch(std::move(rects));
        const auto largest =
            std::max_element(shown.patch.begin(), shown.patch.end(),
                             [](const SlotRect& a, const SlotRect& b) { return area(a) < area(b); });
        shown.labelRect = static_cast<int>(largest - shown.patch.begin());
        m_scene.stays.push_back(std::move(shown));
    }

    void addPots(const Stay& stay, const Batch& batch, SceneZone& zone) {
        m_potOf.clear();
        for (const Place& place : stay.places) {
            const int index = static_cast<int>(m_scene.pots.size());
            for (int row = place.slots.row; row < place.slots.row + place.slots.height; ++row)
                for (int col = place.slots.col; col < place.slots.col + place.slots.width; ++col)
                    zone.potAt[static_cast<std::size_t>(row) * static_cast<std::size_t>(zone.cols) +
                               static_cast<std::size_t>(col)] = index;
            zone.taken += area(place.slots);
            ScenePot pot;
            pot.stay = static_cast<int>(m_scene.stays.size());
            pot.number = place.container;
            pot.slots = place.slots;
            pot.cuttings = standing(m_book, batch, place.container, m_scene.day);
            m_scene.pots.push_back(pot);
            if (m_potOf.size() <= static_cast<std::size_t>(place.container))
                m_potOf.resize(static_cast<std::size_t>(place.container) + 1, -1);
            m_potOf[static_cast<std::size_t>(place.container)] = index;
        }
        for (const RootCheckId id : m_book.checksOf(batch.id))
            addCheck(batch, m_book.get<RootCheck>(id).container);
    }

    void addCheck(const Batch& batch, int container) {
        const auto number = static_cast<std::size_t>(container);
        const int pot = number < m_potOf.size() ? m_potOf[number] : -1;
        const RootCheck* check = pot < 0 ? nullptr : latestCheck(m_book, batch.id, container, m_scene.day);
        if (!check) return;
        m_scene.pots[static_cast<std::size_t>(pot)].examined = check->examined;
        m_scene.pots[static_cast<std::size_t>(pot)].rooted = check->rooted;
    }

    /// A taxon's name, shared by all its batches.
    QString nameOf(TaxonId id) {
        QString& name = m_names[id.number];
        if (name.isNull()) name = text(m_book.get<Taxon>(id).name);
        return name;
    }

    const HouseBook& m_book;
    const Letters& m_letters;
    RootZoneLogs& m_logs;
    std::optional<Day> m_today;
    MapScene m_scene;
    QHash<std::int64_t, QString> m_names;
    std::vector<int> m_potOf; ///< of the stay at hand: index of the pot of each container number, -1 for none
};

} // namespace

std::vector<SlotRect> mergedPatch(std::vector<SlotRect> slots) {
    std::sort(slots.begin(), slots.end());
    std::vector<SlotRect> rows;
    for (const SlotRect& slot : slots) {
        if (!rows.empty() && rows.back().row == slot.row && rows.back().height == slot.height &&
            rows.back().col + rows.back().width == slot.col)
            rows.back().width += slot.width;
        else
            rows.push_back(slot);
    }
    std::vector<SlotRect> merged;
    for (const SlotRect& row : rows) {
        const auto above = std::find_if(merged.begin(), merged.end(), [&](const SlotRect& one) {
            return one.row + one.height == row.row && one.col == row.col && one.width == row.width;
        });
        if (above != merged.end())
            above->height += row.height;
        else
            merged.push_back(row);
    }
    return merged;
}

const SceneZone* MapScene::find(ZoneId id) const {
    const auto found =
        std::find_if(zones.begin(), zones.end(), [&](const SceneZone& one) { return one.id == id; });
    return found == zones.end() ? nullptr : &*found;
}

const SceneStay* MapScene::find(BatchId id) const {
    const auto found =
        std::find_if(stays.begin(), stays.end(), [&](const SceneStay& one) { return one.batch == id; });
    return found == stays.end() ? nullptr : &*found;
}

MapScene mapScene(const HouseBook& book, Day day, const Letters& letters, RootZoneLogs& logs,
                  std::optional<Day> today) {
    return SceneBuilder(book, day, letters, logs, today).build();
}

MapScene mapScene(const HouseBook& book, Day day, const Letters& letters) {
    RootZoneLogs logs;
    return mapScene(book, day, letters, logs);
}

} // namespace warmbench::ui
