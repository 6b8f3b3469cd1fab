#include "core/planner/bound/day_packing.h"

#include "core/planner/index.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <numeric>
#include <random>

using namespace warmbench::planner;

namespace {

/// Most that a choice of `items` pays in `slots` slots, by looking at every choice.
double mostOfAll(const std::vector<DayPacking::Item>& items, const std::vector<double>& prices, int slots) {
    double most = 0;
    for (std::size_t choice = 0; choice < std::size_t{1} << items.size(); ++choice) {
        int taken = 0;
        double paid = 0;
        for (std::size_t i = 0; i < items.size(); ++i) {
            if ((choice >> i & 1) == 0) continue;
            taken += items[i].slots;
            paid += prices[at(items[i].name)];
        }
        if (taken <= slots) most = std::max(most, paid);
    }
    return most;
}

/// Prices by name, near one price for a slot, as they are near the best bound; some are 0.
std::vector<double> somePrices(const std::vector<DayPacking::Item>& items, std::mt19937& random) {
    std::vector<double> prices(items.size(), 0);
    for (const DayPacking::Item& item : items)
        if (random() % 6 != 0)
            prices[at(item.name)] = 100.0 * item.slots + static_cast<double>(random() % 300);
    return prices;
}

} // namespace

TEST_CASE("A day's packing pays what the best of all choices pays, and fits") {
    std::mt19937 random(7);
    for (int round = 0; round < 300; ++round) {
        const int count = static_cast<int>(random() % 11);
        std::vector<DayPacking::Item> items(at(count));
        for (int name = 0; name < count; ++name) items[at(name)] = {name, static_cast<int>(random() % 31)};
        DayPacking packing;
        for (int evaluation = 0; evaluation < 2; ++evaluation) { // the second in the order of the first
            const std::vector<double> prices = somePrices(items, random);
            packing.take(items, prices);
            REQUIRE(items.size() == at(count));
            for (const int slots : {0, 17, 48, 300}) {
                const double best = packing.best(slots);
                REQUIRE(best == mostOfAll(items, prices, slots));
                REQUIRE(packing.relaxed(slots) >= best);
                std::vector<int> names;
                packing.chosen(names);
                double paid = 0;
                int taken = 0;
                for (const int name : names) {
                    paid += prices[at(name)];
                    taken += std::find_if(items.begin(), items.end(), [&](const DayPacking::Item& item) {
                                 return item.name == name;
                             })->slots;
                }
                REQUIRE(paid == best);
                REQUIRE(taken <= slots);
            }
        }
    }
}

TEST_CASE("A long list of batches is packed as well as a short one: equal batches fill a zone") {
    std::vector<DayPacking::Item> items(200);
    for (int name = 0; name < 200; ++name) items[at(name)] = {name, 7};
    std::vector<double> prices(items.size());
    std::iota(prices.begin(), prices.end(), 1.0);
    DayPacking packing;
    packing.take(items, prices);
    REQUIRE(packing.best(96) == Approx(13 * (200 + 188) / 2.0));
}
