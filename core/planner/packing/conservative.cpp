#include "core/planner/packing/conservative.h"

#include <algorithm>
#include <cstdint>
#include <vector>

namespace warmbench::planner::packing {

namespace {

/// A length in 0 .. whole measured by one function: `of[length]` parts, of which the whole has `parts`.
struct Scale {
    std::int64_t parts = 1;
    std::vector<std::int64_t> of;
    friend bool operator==(const Scale&, const Scale&) = default;
};

template <class Measure>
Scale scaleOf(int whole, std::int64_t parts, Measure measure) {
    Scale scale{parts, {}};
    for (int length = 0; length <= whole; ++length) scale.of.push_back(measure(std::int64_t{length}));
    return scale;
}

/// The functions u, U and phi of Fekete and Schepers for all their parameters that differ on whole lengths.
std::vector<Scale> scalesOf(int whole) {
    std::vector<Scale> scales{scaleOf(whole, whole, [](std::int64_t x) { return x; })};
    const std::int64_t w = whole;
    for (std::int64_t k = 1; k <= 4; ++k)
        scales.push_back(scaleOf(whole, w * k, [&](std::int64_t x) {
            return x * (k + 1) % w == 0 ? x * k : (k + 1) * x / w * w;
        }));
    for (std::int64_t least = 1; 2 * least <= w; ++least) {
        scales.push_back(scaleOf(whole, w, [&](std::int64_t x) {
            if (x > w - least) return w;
            return x < least ? std::int64_t{0} : x;
        }));
        const std::int64_t steps = w / least;
        scales.push_back(scaleOf(whole, 2 * steps, [&](std::int64_t x) {
            if (2 * x == w) return steps;
            return 2 * x < w ? 2 * (x / least) : 2 * (steps - (w - x) / least);
        }));
    }
    std::vector<Scale> distinct;
    for (Scale& scale : scales)
        if (std::find(distinct.begin(), distinct.end(), scale) == distinct.end())
            distinct.push_back(std::move(scale));
    return distinct;
}

std::int64_t measured(const Scale& byHeight, const Scale& byWidth, const Footprint& shape, int rows,
                      int cols) {
    if (shape.height > rows || shape.width > cols) return byHeight.parts * byWidth.parts + 1;
    return byHeight.of[static_cast<std::size_t>(shape.height)] *
           byWidth.of[static_cast<std::size_t>(shape.width)];
}

} // namespace

bool tooMuch(int rows, int cols, std::span<const Pieces> pieces) {
    const std::vector<Scale> heights = scalesOf(rows);
    const std::vector<Scale> widths = scalesOf(cols);
    for (const Scale& byHeight : heights)
        for (const Scale& byWidth : widths) {
            std::int64_t sum = 0;
            for (const Pieces& one : pieces) {
                std::int64_t least = measured(byHeight, byWidth, one.footprint, rows, cols);
                if (one.turn)
                    least =
                        std::min(least, measured(byHeight, byWidth,
                                                 {one.footprint.width, one.footprint.height}, rows, cols));
                sum += one.count * least;
            }
            if (sum > byHeight.parts * byWidth.parts) return true;
        }
    return false;
}

} // namespace warmbench::planner::packing
