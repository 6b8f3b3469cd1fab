#pragma once

#include "core/book/house_book.h"

#include <QPointF>
#include <QRectF>

#include <optional>
#include <variant>

/// Houses, benches and zones as rectangles of a plan in millimetres, and what a hand does to them.
namespace warmbench::ui {

/// A thing of the plan, as it is or as it is being drawn; one that is new has the id 0.
using PlanShape = std::variant<House, Bench, Zone>;
/// Which thing of the plan.
using PlanThing = std::variant<HouseId, BenchId, ZoneId>;

/// Where a shape is held: its edges, all of it, or none of it.
struct Grip {
    bool left = false;
    bool right = false;
    bool top = false;
    bool bottom = false;
    bool whole = false;
    [[nodiscard]] bool any() const { return left || right || top || bottom || whole; }
};

/// In millimetres from the house's back left corner.
[[nodiscard]] QRectF planRect(const House& house);
[[nodiscard]] QRectF planRect(const Bench& bench);
[[nodiscard]] QRectF planRect(const HouseBook& book, const Zone& zone);
[[nodiscard]] QRectF planRect(const HouseBook& book, const PlanShape& shape);
[[nodiscard]] QRectF planRect(const HouseBook& book, const PlanThing& thing);
[[nodiscard]] PlanShape shapeOf(const HouseBook& book, const PlanThing& thing);

/// The topmost thing of a house at a point: a zone, else its bench, else the house.
[[nodiscard]] PlanThing thingAt(const HouseBook& book, HouseId house, QPointF at);
/// Where a thing is held by a hand at a point, `near` millimetres from an edge being near enough. Houses and
/// benches grow and shrink at the right and in front, zones on all sides.
[[nodiscard]] Grip gripAt(const HouseBook& book, const PlanThing& thing, QPointF at, double near);

/// A shape as it becomes when what is held of it is moved: houses and benches in steps of 50 mm, what is
/// measured in slots by whole slots. It stays inside what it stands in.
[[nodiscard]] PlanShape dragged(const HouseBook& book, const PlanShape& shape, const Grip& grip, QPointF by);
/// A shape moved, or with its right and front edges moved, by steps: slots for a zone and for the size of a
/// bench, 100 mm else.
[[nodiscard]] PlanShape stepped(const HouseBook& book, const PlanShape& shape, int right, int front,
                                bool resize);

/// A bench from corner to corner, as large as whole slots fill; nothing where not one does.
[[nodiscard]] std::optional<Bench> benchBetween(const Bench& like, QPointF from, QPointF to);
/// A zone over the slots of a bench from corner to corner.
[[nodiscard]] Zone zoneBetween(const Bench& bench, const Zone& like, QPointF from, QPointF to);

/// The slot of a zone that is nearest to a point.
[[nodiscard]] Slot slotNear(const HouseBook& book, const Zone& zone, QPointF at);
/// A zone with the slots from corner to corner blocked; free again where the first of them is blocked.
[[nodiscard]] Zone blockedBetween(const Zone& zone, Slot from, Slot to);

} // namespace warmbench::ui
