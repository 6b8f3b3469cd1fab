#pragma once

#include "core/planner/packing/repack.h"

#include <random>
#include <vector>

/// Small zones and loads for the tests of packing, and a plain check of what stands where.
namespace warmbench::planner::packing::test {

[[nodiscard]] Zone zoneOf(int rows, int cols, const std::vector<SlotRect>& blocked = {});

/// A whole number in [least, most], the same on every machine.
[[nodiscard]] int within(std::minstd_rand& random, int least, int most);

/// One container after the other, as it stands over [from, to).
struct Standing {
    SlotRect rect;
    int from = 0;
    int to = 1;
};

/// No two share a slot on a day before `days`, none leaves the grid or stands on a blocked slot.
[[nodiscard]] bool standsWell(const Zone& zone, int days, const std::vector<Standing>& all);

/// Every load has its containers, of its footprint (turned only where it may), on its fixed slots if it has
/// some, and all of them stand well.
[[nodiscard]] bool packedWell(const Zone& zone, int days, const std::vector<Load>& loads,
                              const std::vector<std::vector<SlotRect>>& slots);

} // namespace warmbench::planner::packing::test
