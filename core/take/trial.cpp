#include "core/take/trial.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace warmbench::take {
namespace {

constexpr int daysOfOneLot = 7;
constexpr std::array<Grouping, 3> ways{Grouping::Hormone, Grouping::Medium, Grouping::Heat};

bool settles(const rooting::Take& first, const rooting::Take& second, std::int64_t each, double level) {
    const auto grown = [each](const rooting::Take& take) {
        return rooting::Take{std::llround(take.share() * static_cast<double>(each)), each};
    };
    const rooting::Interval interval = rooting::differenceInterval(grown(first), grown(second), level);
    return interval.low > 0 || interval.high < 0;
}

std::optional<std::int64_t> cuttingsToSettle(const rooting::Take& first, const rooting::Take& second,
                                             double level) {
    constexpr std::int64_t most = 100'000;
    if (!settles(first, second, most, level)) return std::nullopt;
    std::int64_t low = 0;
    std::int64_t high = most;
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        (settles(first, second, middle, level) ? high : low) = middle;
    }
    return high;
}

} // namespace

TrialResult compare(const rooting::Take& first, const rooting::Take& second, double level) {
    return {first, second, first.share() - second.share(), rooting::differenceInterval(first, second, level),
            cuttingsToSettle(first, second, level)};
}

rooting::Take takeOf(const HouseBook& book, const std::vector<BatchId>& batches) {
    rooting::Take sum{0, 0};
    for (const BatchId id : batches) {
        const rooting::Take one = takeOf(book, book.get<Batch>(id));
        sum.rooted += one.rooted;
        sum.struck += one.struck;
    }
    return sum;
}

std::vector<Trial> trialsIn(const HouseBook& book) {
    std::map<std::tuple<TaxonId, Wood, std::optional<StockId>>, std::vector<const Batch*>> lots;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Ended)
            lots[{batch.taxon, batch.recipe.wood, batch.stock}].push_back(&batch);
    std::map<std::tuple<const Batch*, Grouping, std::string, std::string>, Trial> trials;
    for (auto& [key, lot] : lots) {
        std::stable_sort(lot.begin(), lot.end(),
                         [](const Batch* a, const Batch* b) { return a->strikeDay < b->strikeDay; });
        for (std::size_t i = 0; i < lot.size();) {
            std::size_t end = i;
            while (end < lot.size() && lot[end]->strikeDay - lot[i]->strikeDay <= daysOfOneLot) ++end;
            for (std::size_t a = i; a < end; ++a)
                for (std::size_t b = a + 1; b < end; ++b) {
                    std::vector<Grouping> differing;
                    for (const Grouping way : ways)
                        if (groupOf(book, *lot[a], way) != groupOf(book, *lot[b], way))
                            differing.push_back(way);
                    if (differing.size() != 1) continue;
                    const Batch* first = lot[a];
                    const Batch* second = lot[b];
                    std::string one = groupOf(book, *first, differing[0]);
                    std::string other = groupOf(book, *second, differing[0]);
                    if (other < one) {
                        std::swap(one, other);
                        std::swap(first, second);
                    }
                    Trial& trial = trials[{lot[i], differing[0], one, other}];
                    trial.way = differing[0];
                    trial.firstWay = one;
                    trial.secondWay = other;
                    const auto add = [](std::vector<BatchId>& to, BatchId id) {
                        if (std::find(to.begin(), to.end(), id) == to.end()) to.push_back(id);
                    };
                    add(trial.first, first->id);
                    add(trial.second, second->id);
                }
            i = end;
        }
    }
    std::vector<Trial> found;
    found.reserve(trials.size());
    for (auto& [key, trial] : trials) found.push_back(std::move(trial));
    std::stable_sort(found.begin(), found.end(),
                     [](const Trial& a, const Trial& b) { return a.first.front() < b.first.front(); });
    return found;
}

} // namespace warmbench::take
