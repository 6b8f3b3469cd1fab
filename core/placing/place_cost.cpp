#include "core/placing/place_cost.h"

#include "core/book/query.h"
#include "core/planner/search/cost.h"
#include "core/rooting/prior/recipe_prior.h"
#include "core/season/batch_price.h"
#include "core/season/month_problem.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace warmbench::placing {
namespace {

/// A small planning problem of the days from `from` on, built zone by zone and batch by batch.
class SmallProblem {
public:
    SmallProblem(const HouseBook& book, Day from, Day end) : m_book(book), m_from(from), m_end(end) {
        m_problem.days = end - from;
        m_problem.scatterCost = book.nursery().scatterCost.parts;
    }

    int zone(ZoneId id) {
        const auto [known, isNew] = m_zones.emplace(id, static_cast<int>(m_problem.zones.size()));
        if (!isNew) return known->second;
        const Zone& zone = m_book.get<Zone>(id);
        planner::Zone made;
        made.rows = zone.rows;
        made.cols = zone.cols;
        made.floor = rootZonesAt(m_book, zone, m_from, m_end, std::nullopt);
        if (zone.mat) addSetPoints(zone, made);
        m_problem.zones.push_back(std::move(made));
        return known->second;
    }

    void addRun(ZoneId id, Day from, Day to, Celsius setPoint) {
        const int index = zone(id);
        const auto& offered = m_problem.zones[static_cast<std::size_t>(index)].setPoints;
        const auto found = std::find_if(offered.begin(), offered.end(), [&](const planner::SetPoint& one) {
            return one.tenths == setPoint.parts;
        });
        if (found == offered.end() || to <= from) return;
        m_answer.mats.push_back(
            {index, {{from - m_from, to - m_from, static_cast<int>(found - offered.begin())}}});
    }

    void addPlaced(planner::Batch batch, std::vector<planner::PlacedStay> stays) {
        m_answer.placed.push_back({add(std::move(batch)), stays.front().from, std::move(stays)});
    }
    void addUnplaced(planner::Batch batch) { m_answer.unplaced.push_back({add(std::move(batch)), {}}); }

    [[nodiscard]] planner::Cost cost() const { return planner::search::costOf(m_problem, m_answer); }

private:
    int add(planner::Batch batch) {
        m_problem.batches.push_back(std::move(batch));
        return static_cast<int>(m_problem.batches.size()) - 1;
    }

    /// Each at what it costs a day in the mean air of the days; one that the mat can't hold costs full power.
    void addSetPoints(const Zone& zone, planner::Zone& made) const {
        std::int64_t air = 0;
        for (Day day = m_from; day < m_end; day = day + 1) air += onDay(houseOf(m_book, zone).air, day).parts;
        const Celsius mean{air / std::max(1, m_end - m_from)};
        const Money most = Money::fromUnits(zone.mat->rated.units() * 24 / 1000 *
                                            m_book.nursery().pricePerKilowattHour.units());
        for (const Celsius setPoint : zone.mat->setPoints)
            made.setPoints.push_back(
                {setPoint.parts, season::matCostPerDay(m_book, zone, setPoint, mean).value_or(most).parts});
        made.hasMat = true;
    }

    const HouseBook& m_book;
    Day m_from;
    Day m_end;
    std::map<ZoneId, int> m_zones;
    planner::Problem m_problem;
    planner::Answer m_answer;
};

/// The stays of one container from a day on, as indices into all.
using Way = std::vector<std::size_t>;

std::map<Way, std::vector<int>> waysOf(const std::vector<Stay>& stays, const std::vector<int>& containers) {
    std::map<int, Way> byContainer;
    for (const int container : containers) byContainer[container] = {};
    for (std::size_t i = 0; i < stays.size(); ++i)
        for (const Place& place : stays[i].places)
            if (const auto found = byContainer.find(place.container); found != byContainer.end())
                found->second.push_back(i);
    std::map<Way, std::vector<int>> ways;
    for (const auto& [container, way] : byContainer) ways[way].push_back(container);
    return ways;
}

} // namespace

CostOfBatch::CostOfBatch(const HouseBook& book, const Carried& carried) : m_book(book), m_carried(carried) {
    const Batch& batch = book.get<Batch>(carried.batch);
    const auto take = rooting::takePrior(batch.recipe);
    if (!take) return;
    m_known = true;
    m_valueOfOne = static_cast<double>(season::worthOfPlant(book, batch.target).parts) * take->share.alpha /
                   (take->share.alpha + take->share.beta);
}

planner::Cost CostOfBatch::reckon(const std::vector<Stay>& stays, const Frame& frame, ZoneId there,
                                  const HeatThere* heat) const {
    const Batch& batch = m_book.get<Batch>(m_carried.batch);
    const Nursery& nursery = m_book.nursery();
    const Day from = m_carried.day;
    std::vector<Stay> ahead;
    for (const Stay& stay : stays)
        if (stay.to > from) {
            ahead.push_back(stay);
            ahead.back().from = std::max(stay.from, from);
        }
    std::stable_sort(ahead.begin(), ahead.end(),
                     [](const Stay& a, const Stay& b) { return a.from < b.from; });
    SmallProblem small(m_book, from, frame.end);
    for (const auto& [way, containers] : waysOf(ahead, m_carried.containers)) {
        planner::Batch made;
        made.containers = static_cast<int>(containers.size());
        for (const BatchContainer& one : batch.containers)
            if (std::find(containers.begin(), containers.end(), one.number) != containers.end())
                made.cuttings += one.cuttings;
        season::price(made, std::llround(m_valueOfOne * static_cast<double>(made.cuttings)), nursery);
        if (batch.target) made.due = m_book.get<Target>(*batch.target).due - from;
        if (way.empty()) {
            small.addUnplaced(std::move(made));
            continue;
        }
        std::vector<planner::PlacedStay> placed;
        for (const std::size_t index : way) {
            const Stay& stay = ahead[index];
            planner::StayRule rule;
            if (stay.stage == Stage::Rooting) {
                rule.ideal = batch.recipe.rootZoneIdeal.value.parts;
                rule.offIdeal = nursery.offIdealCost.parts * made.containers;
            }
            made.stays.push_back(rule);
            planner::PlacedStay one{small.zone(stay.zone), stay.from - from, stay.to - from, {}};
            for (const Place& place : stay.places)
                if (std::find(containers.begin(), containers.end(), place.container) != containers.end())
                    one.slots.push_back(place.slots);
            placed.push_back(std::move(one));
        }
        small.addPlaced(std::move(made), std::move(placed));
    }
    for (const ZoneId zone : frame.zones) {
        const bool set = heat && zone == there;
        const Day asRunFrom = set ? heat->to : from;
        if (set && heat->setPoint) small.addRun(zone, from, heat->to, *heat->setPoint);
        for (const MatRunId id : m_book.matRunsMeeting(zone, asRunFrom, frame.end)) {
            const MatRun& run = m_book.get<MatRun>(id);
            small.addRun(zone, std::max(run.from, asRunFrom), std::min(run.to, frame.end), run.setPoint);
        }
    }
    return small.cost();
}

std::optional<CostChange> CostOfBatch::change(const std::vector<Stay>& after, const Zone& there,
                                              const HeatThere& heat) const {
    if (!m_known) return std::nullopt;
    std::vector<Stay> before;
    for (const StayId id : m_book.staysOf(m_carried.batch)) before.push_back(m_book.get<Stay>(id));
    Frame frame{{there.id}, std::max(heat.to, m_carried.day + 1)};
    for (const std::vector<Stay>* stays : std::initializer_list<const std::vector<Stay>*>{&before, &after})
        for (const Stay& stay : *stays) {
            if (stay.to <= m_carried.day) continue;
            frame.zones.insert(stay.zone);
            frame.end = std::max(frame.end, stay.to);
        }
    return CostChange{reckon(before, frame, there.id, nullptr),
                      reckon(after, frame, there.id, heat.changes ? &heat : nullptr)};
}

} // namespace warmbench::placing
