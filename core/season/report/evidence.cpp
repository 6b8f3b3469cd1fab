#include "core/season/report/evidence.h"

#include "core/rooting/batch_spread.h"
#include "core/take/own_figures.h"
#include "core/take/trial.h"

#include <algorithm>
#include <cmath>

namespace warmbench::season {
namespace {

/// From so many batches on, their own spread is believed rather than the usual one.
constexpr std::size_t enoughToSpread = 5;

double correlationIn(const std::vector<rooting::Take>& takes) {
    if (takes.size() < enoughToSpread) return take::usualCorrelation;
    return std::max(take::usualCorrelation / 2, rooting::batchSpread(takes).correlation);
}

long percent(double share) {
    return std::lround(100 * share);
}

} // namespace

Phrase batchesWords(std::size_t count) {
    return count == 1 ? phrase("1 batch") : phrase("%1 batches", count);
}

std::string percentWords(const rooting::Interval& interval) {
    return std::to_string(percent(interval.low)) + " to " + std::to_string(percent(interval.high)) + " %";
}

std::string Evidence::words() const {
    if (batches.empty()) return phrase("no batch has ended yet").text();
    return phrase("%1 of %2 potted on from %3, %4 %: %5 to %6 % at %7 %, as batches differ", take.rooted,
                  take.struck, batchesWords(batches.size()), percent(take.share()), percent(interval.low),
                  percent(interval.high), percent(reportLevel))
        .text();
}

Evidence evidenceOf(const HouseBook& book, const std::vector<BatchId>& batches) {
    Evidence evidence;
    evidence.batches = batches;
    std::vector<rooting::Take> takes;
    for (const BatchId id : batches) {
        takes.push_back(take::takeOf(book, book.get<Batch>(id)));
        evidence.take.rooted += takes.back().rooted;
        evidence.take.struck += takes.back().struck;
    }
    if (evidence.take.struck == 0) return evidence;
    const double correlation = correlationIn(takes);
    for (const rooting::Take& take : takes)
        evidence.counts +=
            static_cast<double>(take.struck) / (1 + static_cast<double>(take.struck - 1) * correlation);
    evidence.wilson = rooting::wilsonInterval(evidence.take, reportLevel);
    evidence.interval = rooting::wilsonInterval(evidence.take.share(), evidence.counts, reportLevel);
    return evidence;
}

rooting::Interval differenceOf(const Evidence& first, const Evidence& second) {
    const double one = first.take.share();
    const double other = second.take.share();
    // Newcombe's hybrid score interval (see rooting::differenceInterval).
    return {one - other - std::hypot(one - first.interval.low, second.interval.high - other),
            one - other + std::hypot(first.interval.high - one, other - second.interval.low)};
}

} // namespace warmbench::season
