#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace warmbench {

/// The identity of one thing of a kind. The house book hands them out, from 1 upwards; absence is
/// std::optional, never a special number.
template <class Tag>
struct Id {
    std::int64_t number = 0;
    friend constexpr auto operator<=>(Id, Id) = default;
};

using NurseryId = Id<struct NurseryTag>;
using HandDayId = Id<struct HandDayTag>;
using HouseId = Id<struct HouseTag>;
using BenchId = Id<struct BenchTag>;
using ZoneId = Id<struct ZoneTag>;
using ContainerTypeId = Id<struct ContainerTypeTag>;
using MediumId = Id<struct MediumTag>;
using TaxonId = Id<struct TaxonTag>;
using RecipeId = Id<struct RecipeTag>;
using StockId = Id<struct StockTag>;
using TargetId = Id<struct TargetTag>;
using BatchId = Id<struct BatchTag>;
using StayId = Id<struct StayTag>;
using RootCheckId = Id<struct RootCheckTag>;
using PottingId = Id<struct PottingTag>;
using LossId = Id<struct LossTag>;
using MatRunId = Id<struct MatRunTag>;
using ReadingMonthId = Id<struct ReadingMonthTag>;

} // namespace warmbench

template <class Tag>
struct std::hash<warmbench::Id<Tag>> {
    std::size_t operator()(warmbench::Id<Tag> id) const noexcept {
        return std::hash<std::int64_t>{}(id.number);
    }
};
