#include "bench.h"

#include "core/planner/index.h"

namespace warmbench::planner::packing::test {

Zone zoneOf(int rows, int cols, const std::vector<SlotRect>& blocked) {
    Zone zone;
    zone.rows = rows;
    zone.cols = cols;
    zone.blocked.assign(at(rows * cols), 0);
    for (const SlotRect& rect : blocked)
        for (int row = rect.row; row < rect.row + rect.height; ++row)
            for (int col = rect.col; col < rect.col + rect.width; ++col)
                zone.blocked[at(row * cols + col)] = 1;
    return zone;
}

int within(std::minstd_rand& random, int least, int most) {
    return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
}

bool standsWell(const Zone& zone, int days, const std::vector<Standing>& all) {
    std::vector<char> taken(at(zone.rows * zone.cols * days), 0);
    for (const Standing& one : all)
        for (int row = one.rect.row; row < one.rect.row + one.rect.height; ++row)
            for (int col = one.rect.col; col < one.rect.col + one.rect.width; ++col) {
                if (row < 0 || col < 0 || row >= zone.rows || col >= zone.cols) return false;
                if (zone.blocked[at(row * zone.cols + col)]) return false;
                for (int day = one.from; day < one.to && day < days; ++day) {
                    char& mark = taken[at((day * zone.rows + row) * zone.cols + col)];
                    if (mark) return false;
                    mark = 1;
                }
            }
    return true;
}

bool packedWell(const Zone& zone, int days, const std::vector<Load>& loads,
                const std::vector<std::vector<SlotRect>>& slots) {
    if (slots.size() != loads.size()) return false;
    std::vector<Standing> all;
    for (std::size_t index = 0; index < loads.size(); ++index) {
        const Load& load = loads[index];
        if (slots[index].size() != at(load.containers)) return false;
        if (!load.fixed.empty() && slots[index] != load.fixed) return false;
        for (const SlotRect& rect : slots[index]) {
            const bool asGiven = rect.height == load.footprint.height && rect.width == load.footprint.width;
            const bool turned = rect.height == load.footprint.width && rect.width == load.footprint.height;
            if (!asGiven && !(turned && load.turn) && load.fixed.empty()) return false;
            all.push_back({rect, load.from, load.to});
        }
    }
    return standsWell(zone, days, all);
}

} // namespace warmbench::planner::packing::test
