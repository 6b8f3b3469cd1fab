#pragma once

#include <array>
#include <compare>
#include <cstdint>

namespace warmbench {

/// What keeps the air moist round the cuttings.
enum class Cover : std::uint8_t { Open, Bag, Tent, Mist, Fog };
inline constexpr std::array<const char*, 5> coverNames{"open", "bag", "tent", "mist", "fog"};

/// One cell of a zone's grid; row 0 is at the back of the bench.
struct Slot {
    int row = 0;
    int col = 0;
    friend auto operator<=>(const Slot&, const Slot&) = default;
};

/// A container's place: `height` x `width` slots from (`row`, `col`).
struct SlotRect {
    int row = 0;
    int col = 0;
    int height = 1;
    int width = 1;

    [[nodiscard]] constexpr bool overlaps(const SlotRect& other) const {
        return row < other.row + other.height && other.row < row + height && col < other.col + other.width &&
               other.col < col + width;
    }
    [[nodiscard]] constexpr bool covers(Slot slot) const {
        return slot.row >= row && slot.row < row + height && slot.col >= col && slot.col < col + width;
    }
    /// Whether all of it lies on a grid of rows x cols.
    [[nodiscard]] constexpr bool within(int rows, int cols) const {
        return row >= 0 && col >= 0 && height >= 1 && width >= 1 && row <= rows - height &&
               col <= cols - width;
    }
    friend auto operator<=>(const SlotRect&, const SlotRect&) = default;
};

/// Slots that a container covers, unturned.
struct Footprint {
    int height = 1;
    int width = 1;
    friend auto operator<=>(const Footprint&, const Footprint&) = default;
};

} // namespace warmbench
