#include "grown.h"

#include "core/planner/format/problem_format.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <string>
#include <utility>
#include <vector>

namespace warmbench::speed {

using planner::Problem;

std::optional<Problem> problemIn(const char* file) {
    auto problem = planner::readProblemFile(file);
    if (problem) return std::move(*problem);
    std::fprintf(stderr, "%s\n", problem.refusal().text().c_str());
    return std::nullopt;
}

Problem grown(const Problem& one, int batches) {
    Problem all = one;
    all.zones.clear();
    all.stocks.clear();
    all.held.clear();
    all.batches.clear();
    const auto each = static_cast<int>(one.batches.size());
    const auto part = [&](std::size_t of, int wanted) {
        return (of * static_cast<std::size_t>(wanted) + static_cast<std::size_t>(each) - 1) /
               static_cast<std::size_t>(each);
    };
    for (std::int64_t& hands : all.strikeCapacity) hands = hands * batches / each;
    for (int copy = 0; static_cast<int>(all.batches.size()) < batches; ++copy) {
        const std::string mark = "-" + std::to_string(copy);
        const int wanted = std::min(each, batches - static_cast<int>(all.batches.size()));
        const auto firstZone = static_cast<int>(all.zones.size());
        const auto firstStock = static_cast<int>(all.stocks.size());
        // Every so many zones of the problem, so that a part of a copy has some of each kind.
        std::vector<int> zoneOf(one.zones.size(), -1);
        const std::size_t zones = part(one.zones.size(), wanted);
        for (std::size_t i = 0; i < zones; ++i) {
            const std::size_t from = i * one.zones.size() / zones;
            zoneOf[from] = firstZone + static_cast<int>(i);
            all.zones.push_back(one.zones[from]);
            all.zones.back().id += mark;
        }
        for (planner::Stock stock : one.stocks) {
            stock.id += mark;
            all.stocks.push_back(stock);
        }
        for (planner::Held held : one.held) {
            held.zone = zoneOf[static_cast<std::size_t>(held.zone)];
            if (held.zone < 0) continue;
            held.id += mark;
            all.held.push_back(held);
        }
        for (int i = 0; i < wanted; ++i) {
            planner::Batch batch = one.batches[static_cast<std::size_t>(i)];
            batch.id += mark;
            batch.pin.reset();
            if (batch.stock) *batch.stock += firstStock;
            all.batches.push_back(batch);
        }
    }
    return all;
}

} // namespace warmbench::speed
