#pragma once

#include "core/crop/batch.h"
#include "core/crop/crop.h"
#include "core/house/house.h"
#include "core/house/nursery.h"
#include "core/house/reading_month.h"

#include <concepts>
#include <string>
#include <tuple>
#include <type_traits>
#include <utility>

/// The one list of what a house book holds: every kind of thing, and every field of each by name. JSON,
/// storage, journal and export all walk it, so a new field is one line here (and a migration).
///
/// `describe(thing, visit)` calls `visit(name, member)` for each field, in order.
namespace warmbench {

template <class T, class E>
concept Like = std::same_as<std::remove_const_t<T>, E>;

/// Kinds of things that a book keeps, parents before those that refer to them.
using Kinds = std::tuple<Nursery, HandDay, House, Bench, Zone, MatRun, ContainerType, Medium, Taxon, Recipe,
                         Stock, Target, Batch, Stay, RootCheck, Potting, Loss, ReadingMonth>;

namespace detail {
template <class... E>
void forEachOf(const std::tuple<E...>*, auto&& visit) {
    (visit.template operator()<E>(), ...);
}
} // namespace detail

/// Calls `visit.operator()<E>()` for each kind, in their order.
void forEachKind(auto&& visit) {
    detail::forEachOf(static_cast<const Kinds*>(nullptr), visit);
}

template <class E>
using IdOf = decltype(E::id);

/// `one` and `several` name things of the kind to people, `many` its list in JSON and its table in storage.
struct KindName {
    const char* one;
    const char* several;
    const char* many;
};

template <class E>
inline constexpr KindName kindName{};
template <>
inline constexpr KindName kindName<Nursery>{"nursery", "nursery", "nursery"};
template <>
inline constexpr KindName kindName<HandDay>{"hand day", "hand days", "hand_days"};
template <>
inline constexpr KindName kindName<House>{"house", "houses", "houses"};
template <>
inline constexpr KindName kindName<Bench>{"bench", "benches", "benches"};
template <>
inline constexpr KindName kindName<Zone>{"zone", "zones", "zones"};
template <>
inline constexpr KindName kindName<MatRun>{"mat run", "mat runs", "mat_runs"};
template <>
inline constexpr KindName kindName<ContainerType>{"container type", "container types", "container_types"};
template <>
inline constexpr KindName kindName<Medium>{"medium", "media", "media"};
template <>
inline constexpr KindName kindName<Taxon>{"taxon", "taxa", "taxa"};
template <>
inline constexpr KindName kindName<Recipe>{"recipe", "recipes", "recipes"};
template <>
inline constexpr KindName kindName<Stock>{"stock", "stocks", "stocks"};
template <>
inline constexpr KindName kindName<Target>{"target", "targets", "targets"};
template <>
inline constexpr KindName kindName<Batch>{"batch", "batches", "batches"};
template <>
inline constexpr KindName kindName<Stay>{"stay", "stays", "stays"};
template <>
inline constexpr KindName kindName<RootCheck>{"root check", "root checks", "root_checks"};
template <>
inline constexpr KindName kindName<Potting>{"potting on", "pottings", "pottings"};
template <>
inline constexpr KindName kindName<Loss>{"loss", "losses", "losses"};
template <>
inline constexpr KindName kindName<ReadingMonth>{"month of readings", "months of readings", "reading_months"};

/// What people tell things of a kind apart by, where no two in a book may share it.
inline const Day& ownKey(const HandDay& x) {
    return x.day;
}
inline const std::string& ownKey(const House& x) {
    return x.name;
}
inline const std::string& ownKey(const ContainerType& x) {
    return x.name;
}
inline const std::string& ownKey(const Medium& x) {
    return x.name;
}
inline const std::string& ownKey(const Taxon& x) {
    return x.name;
}
inline const std::string& ownKey(const Stock& x) {
    return x.name;
}
inline const std::string& ownKey(const Target& x) {
    return x.name;
}
inline const std::string& ownKey(const Batch& x) {
    return x.code;
}
template <class E>
concept HasOwnKey = requires(const E& thing) {
    ownKey(thing);
};
template <HasOwnKey E>
using OwnKey = std::remove_cvref_t<decltype(ownKey(std::declval<const E&>()))>;

void describe(Like<Nursery> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("name", x.name);
    visit("latitude", x.latitude);
    visit("season_shift_days", x.seasonShiftDays);
    visit("currency", x.currency);
    visit("price_per_kilowatt_hour", x.pricePerKilowattHour);
    visit("strikes_by_weekday", x.strikesByWeekday);
    visit("sureness_permille", x.surenessPermille);
    visit("scatter_cost", x.scatterCost);
    visit("move_cost", x.moveCost);
    visit("off_ideal_cost", x.offIdealCost);
    visit("late_cost_permille", x.lateCostPermille);
}

void describe(Like<HandDay> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("day", x.day);
    visit("cuttings", x.cuttings);
    visit("note", x.note);
}

void describe(Like<House> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("name", x.name);
    visit("kind", x.kind);
    visit("length_mm", x.length);
    visit("width_mm", x.width);
    visit("air_c", x.air);
    visit("unheated_root_zone_c", x.unheatedRootZone);
}

void describe(Like<Bench> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("house", x.house);
    visit("name", x.name);
    visit("x_mm", x.x);
    visit("y_mm", x.y);
    visit("rows", x.rows);
    visit("cols", x.cols);
    visit("slot_mm", x.slot);
}

void describe(Like<Slot> auto& x, auto&& visit) {
    visit("row", x.row);
    visit("col", x.col);
}

void describe(Like<SlotRect> auto& x, auto&& visit) {
    visit("row", x.row);
    visit("col", x.col);
    visit("height", x.height);
    visit("width", x.width);
}

void describe(Like<Footprint> auto& x, auto&& visit) {
    visit("height", x.height);
    visit("width", x.width);
}

void describe(Like<Mat> auto& x, auto&& visit) {
    visit("name", x.name);
    visit("rated_w", x.rated);
    visit("loss_w_per_m2_k", x.loss);
    visit("set_points_c", x.setPoints);
    // Written only of a mat that is out of order, so that what is written of others is as it ever was.
    if constexpr (std::is_const_v<std::remove_reference_t<decltype(x)>>)
        if (!x.outOfOrderFrom) return;
    visit("out_of_order_from", x.outOfOrderFrom);
}

void describe(Like<Zone> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("bench", x.bench);
    visit("name", x.name);
    visit("row", x.row);
    visit("col", x.col);
    visit("rows", x.rows);
    visit("cols", x.cols);
    visit("cover", x.cover);
    visit("blocked", x.blocked);
    visit("mat", x.mat);
}

void describe(Like<MatRun> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("zone", x.zone);
    visit("from", x.from);
    visit("to", x.to);
    visit("set_point_c", x.setPoint);
}

void describe(Like<ContainerType> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("name", x.name);
    visit("footprint", x.footprint);
    visit("turnable", x.turnable);
    visit("volume_l", x.volume);
    visit("cuttings", x.cuttings);
}

void describe(Like<MediumComponent> auto& x, auto&& visit) {
    visit("name", x.name);
    visit("parts", x.parts);
}

void describe(Like<Medium> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("name", x.name);
    visit("components", x.components);
}

void describe(Like<Taxon> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("name", x.name);
    visit("synonyms", x.synonyms);
    visit("common_names", x.commonNames);
    visit("caution", x.caution);
}

void describe(Like<Season> auto& x, auto&& visit) {
    visit("from", x.from);
    visit("to", x.to);
}

void describe(Like<IntRange> auto& x, auto&& visit) {
    visit("low", x.low);
    visit("high", x.high);
}

template <class F>
concept IsFigure = requires(F figure) {
    figure.value;
    figure.source;
};

void describe(IsFigure auto& x, auto&& visit) {
    visit("value", x.value);
    visit("source", x.source);
}

void describe(Like<Recipe> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("taxon", x.taxon);
    visit("wood", x.wood);
    visit("name", x.name);
    visit("origin", x.origin);
    visit("season", x.season);
    visit("cutting_length_mm", x.cuttingLength);
    visit("nodes", x.nodes);
    visit("nodes_buried", x.nodesBuried);
    visit("wound", x.wound);
    visit("tip_removed", x.tipRemoved);
    visit("leaf_trim", x.leafTrim);
    visit("root_zone_low_c", x.rootZoneLow);
    visit("root_zone_ideal_c", x.rootZoneIdeal);
    visit("root_zone_high_c", x.rootZoneHigh);
    visit("air_c", x.air);
    visit("days_to_root", x.daysToRoot);
    visit("base_c", x.base);
    visit("take_percent", x.takePercent);
    visit("hormone", x.hormone);
    visit("hormone_form", x.hormoneForm);
    visit("covers", x.covers);
    visit("medium", x.medium);
    visit("container", x.container);
    visit("cuttings_per_container", x.cuttingsPerContainer);
    visit("wean_days", x.weanDays);
    visit("grow_on_days", x.growOnDays);
    visit("aftercare", x.aftercare);
    visit("caution", x.caution);
}

void describe(Like<Flush> auto& x, auto&& visit) {
    visit("wood", x.wood);
    visit("season", x.season);
    visit("cuttings_per_plant", x.cuttingsPerPlant);
    visit("regrowth_days", x.regrowthDays);
}

void describe(Like<Stock> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("taxon", x.taxon);
    visit("name", x.name);
    visit("place", x.place);
    visit("plants", x.plants);
    visit("flushes", x.flushes);
    visit("health", x.health);
}

void describe(Like<Target> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("name", x.name);
    visit("taxon", x.taxon);
    visit("plants", x.plants);
    visit("due", x.due);
    visit("worth", x.worth);
    visit("wood", x.wood);
    visit("note", x.note);
}

void describe(Like<BatchContainer> auto& x, auto&& visit) {
    visit("number", x.number);
    visit("cuttings", x.cuttings);
}

void describe(Like<Batch> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("code", x.code);
    visit("taxon", x.taxon);
    visit("recipe", x.recipe);
    visit("stock", x.stock);
    visit("target", x.target);
    visit("strike_day", x.strikeDay);
    visit("container_type", x.containerType);
    visit("containers", x.containers);
    visit("state", x.state);
    visit("note", x.note);
}

void describe(Like<Place> auto& x, auto&& visit) {
    visit("container", x.container);
    visit("slots", x.slots);
}

void describe(Like<Stay> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("batch", x.batch);
    visit("stage", x.stage);
    visit("zone", x.zone);
    visit("from", x.from);
    visit("to", x.to);
    visit("places", x.places);
    visit("weaned_on", x.weanedOn);
}

void describe(Like<RootCheck> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("batch", x.batch);
    visit("container", x.container);
    visit("day", x.day);
    visit("examined", x.examined);
    visit("rooted", x.rooted);
    visit("callused", x.callused);
    visit("alive", x.alive);
    visit("dead", x.dead);
    visit("grade", x.grade);
    visit("note", x.note);
}

void describe(Like<Potting> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("batch", x.batch);
    visit("container", x.container);
    visit("day", x.day);
    visit("plants", x.plants);
    visit("lost", x.lost);
    visit("note", x.note);
}

void describe(Like<Loss> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("batch", x.batch);
    visit("container", x.container);
    visit("day", x.day);
    visit("cuttings", x.cuttings);
    visit("reason", x.reason);
}

void describe(Like<ReadingMonth> auto& x, auto&& visit) {
    visit("id", x.id);
    visit("zone", x.zone);
    visit("house", x.house);
    visit("channel", x.channel);
    visit("month", x.month);
    visit("packed", x.packed);
}

/// A thing, or a part of one, with fields of its own.
template <class T>
concept Described = requires(T& thing) {
    describe(thing, [](const char*, auto&) {});
};

/// The words of an enum class, in the order of its values, as they stand in files.
template <class E>
struct EnumWords;
template <>
struct EnumWords<HouseKind> {
    static constexpr const auto& words = houseKindNames;
};
template <>
struct EnumWords<Cover> {
    static constexpr const auto& words = coverNames;
};
template <>
struct EnumWords<Wood> {
    static constexpr const auto& words = woodNames;
};
template <>
struct EnumWords<BatchState> {
    static constexpr const auto& words = batchStateNames;
};
template <>
struct EnumWords<Channel> {
    static constexpr const auto& words = channelNames;
};
template <>
struct EnumWords<Stage> {
    static constexpr const auto& words = stageNames;
};

} // namespace warmbench
