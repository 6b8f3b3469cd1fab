#include "core/planner/verify/answer_check.h"

#include "core/exchange/json/number.h"
#include "core/exchange/json/text.h"
#include "core/quantity/decimal.h"

#include <algorithm>

namespace warmbench::planner::verify {
namespace {

std::string dayText(std::int64_t day) {
    return std::to_string(day);
}

} // namespace

AnswerCheck::AnswerCheck(const Problem& problem)
    : m_problem(problem), m_states(problem.zones.size(), MatStates(problem.days)),
      m_hasRuns(problem.zones.size(), 0), m_use(problem) {
    for (std::size_t i = 0; i < problem.zones.size(); ++i) m_zones[problem.zones[i].id] = static_cast<int>(i);
    for (const Batch& batch : problem.batches) m_batches[batch.id] = &batch;
}

Verdict AnswerCheck::run(Value document) {
    const Pointer root;
    json::Reader in;
    const json::Fields fields =
        in.object(document, root, {"format", "version", "placed", "unplaced", "mats", "cost", "bound"});
    for (const char* list : {"placed", "unplaced", "mats"}) in.list(fields[list], root / list);
    std::vector<std::string_view> parts{"total", "unplaced", "late", "off_ideal", "mats", "moves", "scatter"};
    if (m_problem.version == 2) parts.emplace_back("changes");
    const json::Fields cost = in.object(fields["cost"], root / "cost", parts, {});
    if (reported(in)) return std::move(m_verdict);

    const Value format = fields["format"];
    if (format.kind() != json::Kind::String || format.string() != "warmbench-planning-answer")
        violated("/format: found " + json::shown(format) + ", expected warmbench-planning-answer");
    json::Reader version;
    if (version.integer(fields["version"], root / "version") != m_problem.version)
        violated("/version: found " + json::shown(fields["version"]) + ", expected " +
                 std::to_string(m_problem.version));

    checkEach(fields["mats"], root / "mats", [&](Value v, const Pointer& at) { checkMat(v, at); });
    for (const Held& held : m_problem.held) checkHeld(held);
    checkEach(fields["placed"], root / "placed", [&](Value v, const Pointer& at) { checkPlaced(v, at); });
    checkEach(fields["unplaced"], root / "unplaced",
              [&](Value v, const Pointer& at) { checkUnplaced(v, at); });
    checkAllListed();
    for (std::string& clash : m_use.clashes()) violated(std::move(clash));
    checkLabour();
    checkStock();
    checkCost(cost, root / "cost");
    checkBound(fields["bound"], root / "bound");
    return std::move(m_verdict);
}

void AnswerCheck::violated(std::string sentence) {
    if (!isFull()) m_verdict.violations.push_back(std::move(sentence));
}

bool AnswerCheck::reported(const json::Reader& in) {
    if (!in.failed()) return false;
    violated(in.refusal()->place + ": " + in.refusal()->what.text());
    return true;
}

template <class Check>
void AnswerCheck::checkEach(Value list, const Pointer& at, Check check) {
    json::Children items{list};
    while (const auto item = items.next()) {
        if (isFull()) return;
        check(*item, at / items.index());
    }
}

int AnswerCheck::knownZone(json::Reader& in, Value value, const Pointer& at) const {
    const auto found = value.kind() == json::Kind::String ? m_zones.find(value.string()) : m_zones.end();
    if (found != m_zones.end()) return found->second;
    in.refuse(at, "unknown zone " + json::shown(value));
    return 0;
}

const Batch* AnswerCheck::newBatch(Value id, const Pointer& entry) {
    const auto found = id.kind() == json::Kind::String ? m_batches.find(id.string()) : m_batches.end();
    if (found == m_batches.end()) {
        violated(entry.text() + ": unknown batch " + json::shown(id));
        return nullptr;
    }
    const auto [listed, isNew] = m_listed.try_emplace(found->first, entry.text());
    if (isNew) return found->second;
    violated(entry.text() + ": batch " + found->first + " is already at " + listed->second);
    return nullptr;
}

void AnswerCheck::checkMat(Value value, const Pointer& at) {
    json::Reader in;
    const json::Fields fields = in.object(value, at, {"zone", "runs"});
    const int zone = knownZone(in, fields["zone"], at / "zone");
    if (!in.failed()) {
        char& hasRuns = m_hasRuns[static_cast<std::size_t>(zone)];
        if (hasRuns) in.refuse(at / "zone", zoneAt(zone).id + " stands twice");
        hasRuns = 1;
    }
    json::Children runs = in.list(fields["runs"], at / "runs");
    std::int64_t end = 0;
    while (const auto run = runs.next()) {
        checkRun(in, *run, at / "runs" / runs.index(), zone, end);
        if (in.failed()) break;
    }
    reported(in);
}

void AnswerCheck::checkRun(json::Reader& in, Value value, const Pointer& at, int zone, std::int64_t& end) {
    json::Children numbers = in.list(value, at, 3, 3);
    const json::Bounds days{.least = 0, .most = m_problem.days};
    const std::int64_t from = in.integer(numbers.next().value_or(Value{}), at / 0, days);
    const std::int64_t to = in.integer(numbers.next().value_or(Value{}), at / 1, days);
    const Value warmth = numbers.next().value_or(Value{});
    const std::int64_t tenths = in.number(warmth, at / 2, 1);
    if (from >= to) in.refuse(at, "empty or reversed run " + dayText(from) + ".." + dayText(to));
    if (from < end) in.refuse(at, "runs overlap or are out of order");
    const auto& points = zoneAt(zone).setPoints;
    const auto point =
        std::find_if(points.begin(), points.end(), [&](const SetPoint& p) { return p.tenths == tenths; });
    if (point == points.end())
        in.refuse(at / 2, json::shown(warmth) + " is no set-point of " + zoneAt(zone).id);
    if (in.failed()) return;
    end = to;
    statesOf(zone).addRun(from, to, tenths);
    m_verdict.cost.mats += WideCost{10} * point->costPerDay * (to - from);
}

MatState AnswerCheck::constantState(int zone, std::int64_t from, std::int64_t to, const std::string& who) {
    const auto change = statesOf(zone).firstChange(from, to);
    if (change)
        violated(who + ": set-point of " + zoneAt(zone).id + " changes on day " + dayText(*change) +
                 " during the stay " + dayText(from) + ".." + dayText(to));
    return statesOf(zone).on(from);
}

void AnswerCheck::checkHeld(const Held& held) {
    const std::string who = "held " + held.id;
    const Zone& zone = zoneAt(held.zone);
    const auto days = lengthOfStay(held.duration, zone, statesOf(held.zone).on(0), 0);
    if (!days) {
        violated(who + ": would stand for more than " + std::to_string(longestStay) + " days");
        return;
    }
    const MatState state = constantState(held.zone, 0, *days, who);
    for (int day = 0; day < *days; ++day) {
        const std::int64_t warmth = temperature(zone, state, day);
        if (warmth >= held.low && warmth <= held.high) continue;
        violated(who + ": " + decimalText(warmth, 1) + " degrees on day " + dayText(day) + ", accepted " +
                 decimalText(held.low, 1) + " to " + decimalText(held.high, 1));
        break;
    }
    std::vector<std::int64_t> slots;
    for (const SlotRect& rect : held.slots)
        forEachSlot(asRect(rect), zone, [&](std::int64_t slot) { slots.push_back(slot); });
    m_use.add(held.zone, slots, 0, *days, who);
}

void AnswerCheck::checkUnplaced(Value value, const Pointer& at) {
    json::Reader in;
    const json::Fields fields = in.object(value, at, {"id", "reason"});
    if (reported(in)) return;
    if (const Batch* batch = newBatch(fields["id"], at)) {
        m_verdict.cost.unplaced += WideCost{10} * batch->value;
        if (batch->previous) m_verdict.cost.changes += WideCost{10} * m_problem.changeCost;
        if (batch->pin) violated(batch->id + ": is pinned but not placed");
    }
    in.name(fields["reason"], at / "reason");
    reported(in);
}

void AnswerCheck::checkAllListed() {
    for (const Batch& batch : m_problem.batches)
        if (!m_listed.count(batch.id)) violated(batch.id + ": neither placed nor unplaced");
}

void AnswerCheck::checkLabour() {
    const auto& capacity = m_problem.strikeCapacity;
    if (capacity.empty()) return;
    for (const auto& [day, cuttings] : m_struck) {
        if (day < 0 || day >= m_problem.days) continue;
        const std::int64_t most = capacity[static_cast<std::size_t>(day) % capacity.size()];
        if (cuttings > most)
            violated("day " + dayText(day) + ": " + std::to_string(cuttings) + " cuttings struck, capacity " +
                     std::to_string(most));
    }
}

void AnswerCheck::checkStock() {
    for (const auto& [index, byDay] : m_taken) {
        const Stock& stock = m_problem.stocks[static_cast<std::size_t>(index)];
        std::int64_t taken = 0;
        for (const auto& [day, cuttings] : byDay) {
            taken += cuttings;
            std::int64_t most = 0;
            for (const StockStep& step : stock.steps)
                if (step.day <= day) most = step.total;
            if (day >= 0 && day < m_problem.days && taken > most)
                violated("stock " + stock.id + ": " + std::to_string(taken) + " cuttings struck up to day " +
                         dayText(day) + ", only " + std::to_string(most) + " to be had");
        }
    }
}

void AnswerCheck::checkCost(const json::Fields& fields, const Pointer& at) {
    const ReckonedCost& cost = m_verdict.cost;
    const std::pair<const char*, WideCost> parts[] = {{"unplaced", cost.unplaced},  {"late", cost.late},
                                                      {"off_ideal", cost.offIdeal}, {"mats", cost.mats},
                                                      {"moves", cost.moves},        {"scatter", cost.scatter},
                                                      {"changes", cost.changes},    {"total", cost.total()}};
    for (const auto& [key, reckoned] : parts) {
        if (!fields.has(key)) continue; // changes, before version 2
        json::Reader in;
        const std::int64_t found = in.number(fields[key], at / key, 3);
        if (!reported(in) && found != reckoned)
            violated((at / key).text() + ": found " + json::shown(fields[key]) + ", expected " +
                     costText(reckoned));
    }
}

void AnswerCheck::checkBound(Value value, const Pointer& at) {
    const auto bound =
        value.kind() == json::Kind::Number ? json::Decimal::read(value.source()) : std::nullopt;
    m_verdict.bound = value.source();
    if (!bound)
        violated(at.text() + ": found " + json::shown(value) + ", expected a finite number");
    else if (*bound > *json::Decimal::read(costText(m_verdict.cost.total())))
        violated(at.text() + ": " + json::shown(value) + " is above the total " +
                 costText(m_verdict.cost.total()));
}

} // namespace warmbench::planner::verify
