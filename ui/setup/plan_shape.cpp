#include "ui/setup/plan_shape.h"

#include "core/book/query.h"
#include "core/book/refit.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace warmbench::ui {
namespace {

constexpr double dragStep = 50;
constexpr int keyStep = 100;
constexpr Millimetres smallestSide{500};

double mm(Millimetres length) {
    return static_cast<double>(length.parts);
}

Millimetres snapped(double millimetres) {
    return Millimetres{
        static_cast<std::int64_t>(std::lround(millimetres / dragStep) * std::lround(dragStep))};
}

int steps(double by, Millimetres slot) {
    return static_cast<int>(std::lround(by / mm(slot)));
}

/// Of a grid of slots, the one at a point from its corner, or nearest to it.
Slot nearestSlot(QPointF at, Millimetres slot, int rows, int cols) {
    const auto index = [&](double along, int most) {
        return std::clamp(static_cast<int>(std::floor(along / mm(slot))), 0, most - 1);
    };
    return {index(at.y(), rows), index(at.x(), cols)};
}

House draggedHouse(House house, const Grip& grip, QPointF by) {
    if (grip.right) house.length = std::max(smallestSide, snapped(mm(house.length) + by.x()));
    if (grip.bottom) house.width = std::max(smallestSide, snapped(mm(house.width) + by.y()));
    return house;
}

Bench draggedBench(const House& house, Bench bench, const Grip& grip, QPointF by) {
    const auto within = [](Millimetres at, Millimetres most) {
        return std::clamp(at, Millimetres{0}, std::max(Millimetres{0}, most));
    };
    if (grip.whole) {
        bench.x = within(snapped(mm(bench.x) + by.x()), house.length - bench.slot * bench.cols);
        bench.y = within(snapped(mm(bench.y) + by.y()), house.width - bench.slot * bench.rows);
    }
    const int mostCols = static_cast<int>((house.length - bench.x).parts / bench.slot.parts);
    const int mostRows = static_cast<int>((house.width - bench.y).parts / bench.slot.parts);
    if (grip.right) bench.cols = std::clamp(bench.cols + steps(by.x(), bench.slot), 1, std::max(1, mostCols));
    if (grip.bottom)
        bench.rows = std::clamp(bench.rows + steps(by.y(), bench.slot), 1, std::max(1, mostRows));
    return bench;
}

Zone draggedZone(const Bench& bench, const Zone& zone, const Grip& grip, QPointF by) {
    const int right = steps(by.x(), bench.slot);
    const int front = steps(by.y(), bench.slot);
    SlotRect at = zone.onBench();
    if (grip.whole) {
        at.col = std::clamp(at.col + right, 0, std::max(0, bench.cols - at.width));
        at.row = std::clamp(at.row + front, 0, std::max(0, bench.rows - at.height));
    }
    if (grip.left) {
        const int col = std::clamp(at.col + right, 0, at.col + at.width - 1);
        at.width += at.col - col;
        at.col = col;
    }
    if (grip.top) {
        const int row = std::clamp(at.row + front, 0, at.row + at.height - 1);
        at.height += at.row - row;
        at.row = row;
    }
    if (grip.right) at.width = std::clamp(at.width + right, 1, bench.cols - at.col);
    if (grip.bottom) at.height = std::clamp(at.height + front, 1, bench.rows - at.row);
    return reshaped(zone, at);
}

} // namespace

QRectF planRect(const House& house) {
    return {0, 0, mm(house.length), mm(house.width)};
}

QRectF planRect(const Bench& bench) {
    return {mm(bench.x), mm(bench.y), mm(bench.slot) * bench.cols, mm(bench.slot) * bench.rows};
}

QRectF planRect(const HouseBook& book, const Zone& zone) {
    const Bench& bench = book.get<Bench>(zone.bench);
    const double slot = mm(bench.slot);
    return {mm(bench.x) + slot * zone.col, mm(bench.y) + slot * zone.row, slot * zone.cols, slot * zone.rows};
}

QRectF planRect(const HouseBook& book, const PlanShape& shape) {
    if (const auto* zone = std::get_if<Zone>(&shape)) return planRect(book, *zone);
    if (const auto* bench = std::get_if<Bench>(&shape)) return planRect(*bench);
    return planRect(std::get<House>(shape));
}

QRectF planRect(const HouseBook& book, const PlanThing& thing) {
    return planRect(book, shapeOf(book, thing));
}

PlanShape shapeOf(const HouseBook& book, const PlanThing& thing) {
    if (const auto* zone = std::get_if<ZoneId>(&thing)) return book.get<Zone>(*zone);
    if (const auto* bench = std::get_if<BenchId>(&thing)) return book.get<Bench>(*bench);
    return book.get<House>(std::get<HouseId>(thing));
}

PlanThing thingAt(const HouseBook& book, HouseId house, QPointF at) {
    for (const BenchId bench : book.benchesOf(house)) {
        if (!planRect(book.get<Bench>(bench)).contains(at)) continue;
        for (const ZoneId zone : book.zonesOf(bench))
            if (planRect(book, book.get<Zone>(zone)).contains(at)) return zone;
        return bench;
    }
    return house;
}

Grip gripAt(const HouseBook& book, const PlanThing& thing, QPointF at, double near) {
    const QRectF rect = planRect(book, thing);
    if (!rect.adjusted(-near, -near, near, near).contains(at)) return {};
    Grip grip;
    grip.right = std::abs(at.x() - rect.right()) <= near;
    grip.bottom = std::abs(at.y() - rect.bottom()) <= near;
    if (std::holds_alternative<ZoneId>(thing)) {
        // A zone of one slot can still be moved: its inner third is no edge.
        grip.left = !grip.right && std::abs(at.x() - rect.left()) <= std::min(near, rect.width() / 3);
        grip.top = !grip.bottom && std::abs(at.y() - rect.top()) <= std::min(near, rect.height() / 3);
    }
    grip.whole =
        !grip.left && !grip.right && !grip.top && !grip.bottom && !std::holds_alternative<HouseId>(thing);
    return grip;
}

PlanShape dragged(const HouseBook& book, const PlanShape& shape, const Grip& grip, QPointF by) {
    if (const auto* zone = std::get_if<Zone>(&shape))
        return draggedZone(book.get<Bench>(zone->bench), *zone, grip, by);
    if (const auto* bench = std::get_if<Bench>(&shape))
        return draggedBench(book.get<House>(bench->house), *bench, grip, by);
    return draggedHouse(std::get<House>(shape), grip, by);
}

PlanShape stepped(const HouseBook& book, const PlanShape& shape, int right, int front, bool resize) {
    double step = keyStep;
    if (const auto* zone = std::get_if<Zone>(&shape)) step = mm(book.get<Bench>(zone->bench).slot);
    if (const auto* bench = std::get_if<Bench>(&shape); bench && resize) step = mm(bench->slot);
    Grip grip;
    grip.whole = !resize;
    grip.right = resize && right != 0;
    grip.bottom = resize && front != 0;
    return dragged(book, shape, grip, {right * step, front * step});
}

std::optional<Bench> benchBetween(const Bench& like, QPointF from, QPointF to) {
    const QRectF drawn = QRectF(from, to).normalized();
    Bench bench = like;
    bench.x = snapped(drawn.left());
    bench.y = snapped(drawn.top());
    bench.cols = static_cast<int>(drawn.width() / mm(bench.slot));
    bench.rows = static_cast<int>(drawn.height() / mm(bench.slot));
    return bench.cols > 0 && bench.rows > 0 ? std::optional(bench) : std::nullopt;
}

Slot slotNear(const HouseBook& book, const Zone& zone, QPointF at) {
    return nearestSlot(at - planRect(book, zone).topLeft(), book.get<Bench>(zone.bench).slot, zone.rows,
                       zone.cols);
}

Zone blockedBetween(const Zone& zone, Slot from, Slot to) {
    std::set<Slot> blocked(zone.blocked.begin(), zone.blocked.end());
    const bool frees = blocked.contains(from);
    for (int row = std::min(from.row, to.row); row <= std::max(from.row, to.row); ++row)
        for (int col = std::min(from.col, to.col); col <= std::max(from.col, to.col); ++col) {
            if (frees)
                blocked.erase({row, col});
            else
                blocked.insert({row, col});
        }
    Zone changed = zone;
    changed.blocked.assign(blocked.begin(), blocked.end());
    return changed;
}

Zone zoneBetween(const Bench& bench, const Zone& like, QPointF from, QPointF to) {
    const QPointF corner = planRect(bench).topLeft();
    const Slot a = nearestSlot(from - corner, bench.slot, bench.rows, bench.cols);
    const Slot b = nearestSlot(to - corner, bench.slot, bench.rows, bench.cols);
    Zone zone = like;
    zone.row = std::min(a.row, b.row);
    zone.col = std::min(a.col, b.col);
    zone.rows = std::abs(a.row - b.row) + 1;
    zone.cols = std::abs(a.col - b.col) + 1;
    return zone;
}

} // namespace warmbench::ui
