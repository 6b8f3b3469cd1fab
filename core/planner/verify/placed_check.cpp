#include "core/planner/verify/answer_check.h"

#include "core/exchange/json/text.h"
#include "core/quantity/decimal.h"

#include <algorithm>

namespace warmbench::planner::verify {
namespace {

std::string rangeText(std::int64_t from, std::int64_t to) {
    return std::to_string(from) + ".." + std::to_string(to);
}

std::string rectText(const Rect& rect) {
    return "[" + std::to_string(rect.row) + ", " + std::to_string(rect.col) + ", " +
           std::to_string(rect.height) + ", " + std::to_string(rect.width) + "]";
}

std::string slotText(std::int64_t slot, const Zone& zone) {
    return "[" + std::to_string(slot / zone.cols) + ", " + std::to_string(slot % zone.cols) + "]";
}

Rect readRect(json::Reader& in, json::Value value, const json::Pointer& at) {
    json::Children entries = in.list(value, at, 4, 4);
    const auto next = [&](std::size_t index, std::int64_t least) {
        return in.integer(entries.next().value_or(json::Value{}), at / index, {.least = least});
    };
    const std::int64_t row = next(0, 0);
    const std::int64_t col = next(1, 0);
    const std::int64_t height = next(2, 1);
    const std::int64_t width = next(3, 1);
    return {row, col, height, width};
}

bool isFootprint(const Rect& rect, const Batch& batch) {
    const Footprint& shape = batch.footprint;
    if (rect.height == shape.height && rect.width == shape.width) return true;
    return batch.turn && rect.height == shape.width && rect.width == shape.height;
}

} // namespace

void AnswerCheck::checkPlaced(Value value, const Pointer& at) {
    json::Reader in;
    const json::Fields fields = in.object(value, at, {"id", "strike_day", "stays"});
    if (reported(in)) return;
    const Batch* batch = newBatch(fields["id"], at);
    if (!batch) return;
    const std::int64_t strikeDay = in.integer(fields["strike_day"], at / "strike_day");
    if (reported(in)) return;
    checkStrikeDay(*batch, strikeDay);
    m_struck[strikeDay] += batch->cuttings;
    if (batch->stock) m_taken[*batch->stock][strikeDay] += batch->cuttings;

    const Pointer stays = at / "stays";
    json::Children claims = in.list(fields["stays"], stays, batch->stays.size(), batch->stays.size());
    if (reported(in)) return;
    const auto& previous = batch->previous;
    Course course{*batch, strikeDay, std::nullopt, previous && previous->size() != batch->stays.size()};
    while (const auto stay = claims.next()) {
        const std::string who = batch->id + " stay " + std::to_string(claims.index());
        if (!checkStay(*stay, stays / claims.index(), batch->stays[claims.index()], course, who)) return;
        if (previous && !course.isChanged)
            course.isChanged = !isAsBefore(*course.before, (*previous)[claims.index()]);
    }
    if (course.isChanged) m_verdict.cost.changes += WideCost{10} * m_problem.changeCost;
    if (batch->due && course.day > *batch->due)
        m_verdict.cost.late += WideCost{10} * batch->latePerDay * (course.day - *batch->due);
}

void AnswerCheck::checkStrikeDay(const Batch& batch, std::int64_t day) {
    const std::string struck = batch.id + ": struck on day " + std::to_string(day);
    if (day < batch.strikeFirst || day > batch.strikeLast)
        violated(struck + ", outside " + rangeText(batch.strikeFirst, batch.strikeLast));
    if (day < 0 || day >= m_problem.days) violated(struck + ", not within the horizon");
    if (batch.pin && batch.pin->strikeDay && *batch.pin->strikeDay != day)
        violated(struck + ", pinned to " + std::to_string(*batch.pin->strikeDay));
}

bool AnswerCheck::checkStay(Value value, const Pointer& at, const StayRule& rule, Course& course,
                            const std::string& who) {
    json::Reader in;
    Claim claim;
    const json::Fields fields = in.object(value, at, {"zone", "from", "to", "slots"});
    claim.zone = knownZone(in, fields["zone"], at / "zone");
    claim.from = in.integer(fields["from"], at / "from");
    claim.to = in.integer(fields["to"], at / "to");
    if (reported(in)) return false;
    if (claim.from != course.day)
        violated(who + ": begins on day " + std::to_string(claim.from) + ", expected " +
                 std::to_string(course.day));
    if (claim.from < 0 || claim.to <= claim.from || claim.to - claim.from > longestStay)
        in.refuse(at, "stay " + rangeText(claim.from, claim.to) + " is empty, reversed or above " +
                          std::to_string(longestStay) + " days");
    if (reported(in)) return false;
    checkWarmth(rule, claim, who);

    json::Children slots = in.list(fields["slots"], at / "slots");
    for (auto slot = slots.next(); slot && !in.failed(); slot = slots.next())
        claim.slots.push_back(readRect(in, *slot, at / "slots" / slots.index()));
    if (reported(in)) return false;
    std::sort(claim.slots.begin(), claim.slots.end());
    const Batch& batch = course.batch;
    const Covered covered = checkSlots(claim, batch, who);
    if (!course.before)
        checkPinnedPlace(claim, batch, who);
    else if (claim.zone != course.before->zone || claim.slots != course.before->slots)
        m_verdict.cost.moves += WideCost{10} * batch.moveCost;
    if (!claim.slots.empty())
        m_verdict.cost.scatter += WideCost{10} * m_problem.scatterCost *
                                  (connectedGroups(covered, claim.slots.size(), zoneAt(claim.zone)) - 1);
    std::vector<std::int64_t> taken;
    for (const auto& [slot, container] : covered) taken.push_back(slot);
    m_use.add(claim.zone, taken, claim.from, claim.to, who);
    course.day = claim.to;
    course.before = std::move(claim);
    return true;
}

void AnswerCheck::checkWarmth(const StayRule& rule, const Claim& claim, const std::string& who) {
    const Zone& zone = zoneAt(claim.zone);
    if (!rule.accepts(zone.cover))
        violated(who + ": cover " + coverNames[static_cast<std::size_t>(zone.cover)] + " of " + zone.id +
                 " is not accepted");
    const MatState state = constantState(claim.zone, claim.from, claim.to, who);
    const auto days = lengthOfStay(rule.duration, zone, state, claim.from);
    if (!days)
        violated(who + ": would last more than " + std::to_string(longestStay) + " days");
    else if (claim.to - claim.from != *days)
        violated(who + ": lasts " + std::to_string(claim.to - claim.from) + " days, expected " +
                 std::to_string(*days));
    WideCost offIdeal = 0;
    bool told = false;
    for (std::int64_t day = claim.from; day < claim.to; ++day) {
        const std::int64_t warmth = temperature(zone, state, day);
        offIdeal += warmth > rule.ideal ? warmth - rule.ideal : rule.ideal - warmth;
        if (told || (warmth >= rule.low && warmth <= rule.high)) continue;
        violated(who + ": " + decimalText(warmth, 1) + " degrees in " + zone.id + " on day " +
                 std::to_string(day) + ", accepted " + decimalText(rule.low, 1) + " to " +
                 decimalText(rule.high, 1));
        told = true;
    }
    m_verdict.cost.offIdeal += rule.offIdeal * offIdeal;
}

Covered AnswerCheck::checkSlots(const Claim& claim, const Batch& batch, const std::string& who) {
    const Zone& zone = zoneAt(claim.zone);
    if (claim.slots.size() != static_cast<std::size_t>(batch.containers))
        violated(who + ": " + std::to_string(claim.slots.size()) + " slots, expected " +
                 std::to_string(batch.containers));
    Covered covered;
    for (std::size_t container = 0; container < claim.slots.size() && !isFull(); ++container) {
        const Rect& rect = claim.slots[container];
        if (!isFootprint(rect, batch))
            violated(who + ": slot " + rectText(rect) + " is no footprint of the batch");
        if (!isWithin(rect, zone)) {
            violated(who + ": slot " + rectText(rect) + " leaves the grid of " + zone.id);
            continue;
        }
        forEachSlot(rect, zone, [&](std::int64_t slot) {
            if (zone.blocked[static_cast<std::size_t>(slot)])
                violated(who + ": slot " + rectText(rect) + " covers the blocked slot " +
                         slotText(slot, zone));
            if (!covered.insert_or_assign(slot, container).second)
                violated(who + ": two containers at " + slotText(slot, zone));
        });
    }
    return covered;
}

bool AnswerCheck::isAsBefore(const Claim& claim, const PlacedStay& before) {
    std::vector<Rect> slots;
    for (const SlotRect& slot : before.slots) slots.push_back(asRect(slot));
    std::sort(slots.begin(), slots.end());
    return claim.zone == before.zone && claim.from == before.from && claim.slots == slots;
}

void AnswerCheck::checkPinnedPlace(const Claim& claim, const Batch& batch, const std::string& who) {
    if (!batch.pin) return;
    if (batch.pin->zone && *batch.pin->zone != claim.zone)
        violated(who + ": stands in " + zoneAt(claim.zone).id + ", pinned to " + zoneAt(*batch.pin->zone).id);
    if (batch.pin->slots.empty()) return;
    std::vector<Rect> pinned;
    for (const SlotRect& slot : batch.pin->slots) pinned.push_back(asRect(slot));
    std::sort(pinned.begin(), pinned.end());
    if (pinned != claim.slots) violated(who + ": does not stand on its pinned slots");
}

} // namespace warmbench::planner::verify
