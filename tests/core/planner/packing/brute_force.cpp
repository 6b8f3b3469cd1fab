#include "brute_force.h"

#include "bench.h"

namespace warmbench::planner::packing::test {

namespace {

struct Container {
    Footprint footprint;
    bool turn;
    int from;
    int to;
};

bool placeFrom(const Zone& zone, int days, const std::vector<Container>& containers, std::size_t next,
               std::vector<Standing>& standing) {
    if (next == containers.size()) return true;
    const Container& one = containers[next];
    for (const bool turned : {false, true}) {
        if (turned && !one.turn) continue;
        const int height = turned ? one.footprint.width : one.footprint.height;
        const int width = turned ? one.footprint.height : one.footprint.width;
        for (int row = 0; row + height <= zone.rows; ++row)
            for (int col = 0; col + width <= zone.cols; ++col) {
                standing.push_back({{row, col, height, width}, one.from, one.to});
                if (standsWell(zone, days, standing) && placeFrom(zone, days, containers, next + 1, standing))
                    return true;
                standing.pop_back();
            }
    }
    return false;
}

} // namespace

bool fitTogether(const Zone& zone, int days, const std::vector<Load>& loads) {
    std::vector<Container> containers;
    std::vector<Standing> standing;
    for (const Load& load : loads) {
        for (const SlotRect& rect : load.fixed) standing.push_back({rect, load.from, load.to});
        if (load.fixed.empty())
            containers.insert(containers.end(), static_cast<std::size_t>(load.containers),
                              {load.footprint, load.turn, load.from, load.to});
    }
    return standsWell(zone, days, standing) && placeFrom(zone, days, containers, 0, standing);
}

std::int64_t greatestValue(const Zone& zone, int days, const std::vector<Candidate>& candidates) {
    std::int64_t best = 0;
    for (unsigned subset = 0; subset < 1U << candidates.size(); ++subset) {
        std::vector<Load> loads;
        std::int64_t value = 0;
        unsigned choices = 0;
        bool allowed = true;
        for (std::size_t index = 0; index < candidates.size(); ++index) {
            if (((subset >> index) & 1) == 0) continue;
            const Candidate& one = candidates[index];
            value += one.value;
            loads.push_back({one.from, one.to, one.containers, one.footprint, one.turn, {}, {}, -1, 0});
            if (one.choice < 0) continue;
            allowed = allowed && ((choices >> one.choice) & 1) == 0;
            choices |= 1U << one.choice;
        }
        if (allowed && value > best && fitTogether(zone, days, loads)) best = value;
    }
    return best;
}

} // namespace warmbench::planner::packing::test
