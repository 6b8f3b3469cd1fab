#include "core/placing/suitability.h"

#include "core/book/query.h"
#include "core/placing/aim.h"

#include <algorithm>

namespace warmbench::placing {
namespace {

planner::Zone gridOf(const Zone& zone) {
    planner::Zone grid;
    grid.rows = zone.rows;
    grid.cols = zone.cols;
    const auto cols = static_cast<std::size_t>(zone.cols);
    grid.blocked.assign(static_cast<std::size_t>(zone.rows) * cols, 0);
    for (const Slot slot : zone.blocked)
        grid.blocked[static_cast<std::size_t>(slot.row) * cols + static_cast<std::size_t>(slot.col)] = 1;
    return grid;
}

bool meets(const Stay& a, const Stay& b) {
    return a.from < b.to && b.from < a.to;
}

bool accepts(const Recipe& recipe, Stage stage, Cover cover) {
    if (stage != Stage::Rooting) return cover == Cover::Open;
    const auto& covers = recipe.covers.value;
    return covers.empty() || std::find(covers.begin(), covers.end(), cover) != covers.end();
}

} // namespace

Suitability::Suitability(const HouseBook& book, Carried carried)
    : m_book(book), m_carried(std::move(carried)) {
    const CostOfBatch costs(book, m_carried);
    m_zones.reserve(book.all<Zone>().size());
    m_free.reserve(book.all<Zone>().size());
    for (const auto& [id, zone] : book.all<Zone>()) judge(zone, costs);
}

const ZoneVerdict* Suitability::find(ZoneId zone) const {
    const auto found = std::lower_bound(m_zones.begin(), m_zones.end(), zone,
                                        [](const ZoneVerdict& one, ZoneId id) { return one.zone < id; });
    return found != m_zones.end() && found->zone == zone ? &*found : nullptr;
}

/// What stands in a zone on any of its days there, as one day; what is carried itself does not count.
planner::packing::Occupancy Suitability::standing(const Zone& zone, Day to) const {
    planner::packing::Occupancy taken(gridOf(zone), 1);
    planner::packing::Cells cells(zone.rows, zone.cols);
    for (const StayId id : m_book.staysMeeting(zone.id, m_carried.day, to)) {
        const Stay& stay = m_book.get<Stay>(id);
        for (const Place& place : stay.places) {
            const bool carriedItself =
                stay.batch == m_carried.batch && stay.from <= m_carried.day && m_carried.day < stay.to &&
                std::binary_search(m_carried.containers.begin(), m_carried.containers.end(), place.container);
            if (!carriedItself) cells.add(place.slots);
        }
    }
    // Slots that several hold one after the other are taken once.
    std::vector<SlotRect> each;
    for (int slot = cells.next(0); slot < cells.size(); slot = cells.next(slot + 1))
        each.push_back({slot / zone.cols, slot % zone.cols, 1, 1});
    taken.occupy(each, 0, 1);
    return taken;
}

void Suitability::judge(const Zone& zone, const CostOfBatch& costs) {
    const Recipe& recipe = m_book.get<Batch>(m_carried.batch).recipe;
    ZoneVerdict verdict;
    verdict.zone = zone.id;
    verdict.heat = heatThere(m_book, m_carried, zone);
    if (!accepts(recipe, m_carried.stage, zone.cover)) verdict.hindrances.push_back(Hindrance::Cover);
    if (!verdict.heat.suits)
        verdict.hindrances.push_back(verdict.heat.others    ? Hindrance::Others
                                     : verdict.heat.tooWarm ? Hindrance::TooWarm
                                                            : Hindrance::TooCold);
    judgeRoom(zone, verdict);
    if (!verdict.best.empty()) {
        const auto after = staysAfter(moveTo(zone.id, verdict.heat, verdict.best));
        verdict.follower = inTheWay(after);
        if (verdict.follower) verdict.hindrances.push_back(Hindrance::Following);
        if (verdict.suits()) verdict.cost = costs.change(after, zone, verdict.heat);
    }
    m_zones.push_back(std::move(verdict));
}

void Suitability::judgeRoom(const Zone& zone, ZoneVerdict& verdict) {
    const int count = static_cast<int>(m_carried.containers.size());
    planner::packing::Stay wanted;
    wanted.containers = count;
    wanted.footprint = m_carried.footprint;
    wanted.turn = m_carried.turnable;
    const auto taken = standing(zone, verdict.heat.to);
    verdict.wantedSlots = count * m_carried.footprint.height * m_carried.footprint.width;
    verdict.freeSlots = taken.freeOn(0);
    taken.freeOver(0, 1, m_free.emplace_back());
    if (verdict.wantedSlots <= verdict.freeSlots && m_placer.place(taken, wanted, verdict.best)) return;
    verdict.best.clear();
    // Others come later: the first of them after whom there is too little room.
    std::vector<Day> comings;
    for (const StayId id : m_book.staysMeeting(zone.id, m_carried.day + 1, verdict.heat.to))
        if (const Day from = m_book.get<Stay>(id).from; from > m_carried.day) comings.push_back(from);
    std::sort(comings.begin(), comings.end());
    std::vector<SlotRect> slots;
    verdict.freeUntil = m_carried.day;
    for (const Day coming : comings) {
        if (coming == verdict.freeUntil) continue;
        if (!m_placer.placeQuickly(standing(zone, coming), wanted, slots)) break;
        verdict.freeUntil = coming;
    }
    verdict.hindrances.push_back(verdict.freeUntil > m_carried.day ? Hindrance::NotSoLong
                                                                   : Hindrance::NoRoom);
}

Move Suitability::moveTo(ZoneId zone, const HeatThere& heat, const std::vector<SlotRect>& slots) const {
    Move move{m_carried.batch, m_carried.day, zone, {}, {}};
    for (std::size_t i = 0; i < m_carried.containers.size(); ++i)
        move.places.push_back({m_carried.containers[i], slots[i]});
    if (!m_carried.placed || (!m_carried.struck && m_carried.whole)) move.to = heat.to;
    return move;
}

std::vector<Stay> Suitability::staysAfter(const Move& move) const {
    std::map<StayId, Stay> stays;
    for (const StayId id : m_book.staysOf(m_carried.batch)) stays.emplace(id, m_book.get<Stay>(id));
    const Result<Command> command = moveContainers(m_book, move);
    const Result<Change> change = command ? expand(m_book, *command) : Result<Change>(command.refusal());
    if (change)
        for (const AnyEdit& edit : change->edits)
            if (const auto* one = std::get_if<Edit<Stay>>(&edit)) {
                stays.erase(one->id());
                if (one->after) stays.emplace(one->id(), *one->after);
            }
    std::vector<Stay> after;
    after.reserve(stays.size());
    for (auto& [id, stay] : stays) after.push_back(std::move(stay));
    return after;
}

/// The first batch on whose slots one of these stays would come; the one carried has been looked at already.
std::optional<BatchId> Suitability::inTheWay(const std::vector<Stay>& stays) const {
    for (const Stay& stay : stays) {
        const Stay* before = m_book.find<Stay>(stay.id);
        if (stay.from <= m_carried.day || (before && *before == stay)) continue;
        for (const StayId id : m_book.staysMeeting(stay.zone, stay.from, stay.to)) {
            const Stay& other = m_book.get<Stay>(id);
            if (other.batch != stay.batch && meets(stay, other) && shareSlots(stay, other))
                return other.batch;
        }
    }
    return std::nullopt;
}

std::vector<SlotRect> Suitability::slotsAt(ZoneId zone, Slot aim, bool turned) const {
    const ZoneVerdict* verdict = find(zone);
    if (!verdict) return {};
    Footprint lies = m_carried.footprint;
    if (turned && m_carried.turnable) std::swap(lies.height, lies.width);
    return slotsRound(m_free[static_cast<std::size_t>(verdict - m_zones.data())], lies,
                      static_cast<int>(m_carried.containers.size()), aim);
}

std::optional<Command> Suitability::placing(ZoneId zone, const std::vector<SlotRect>& slots) const {
    const ZoneVerdict* verdict = find(zone);
    if (!verdict || slots.size() != m_carried.containers.size()) return std::nullopt;
    const Move move = moveTo(zone, verdict->heat, slots);
    const Result<Command> command = moveContainers(m_book, move);
    if (!command) return std::nullopt;
    if (!verdict->heat.changes) return *command;
    Group group;
    group.label = phrase("%1, and set its mat", words(m_book, *command)).text();
    group.commands.push_back(*command);
    SetMatRuns set{zone, m_carried.day, verdict->heat.to, {}};
    if (verdict->heat.setPoint)
        set.runs.push_back({{}, zone, m_carried.day, verdict->heat.to, *verdict->heat.setPoint});
    group.commands.push_back({set});
    return Command{group};
}

} // namespace warmbench::placing
