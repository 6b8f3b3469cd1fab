#pragma once

#include "core/take/take_table.h"

namespace warmbench::take {

/// Two ways of doing it, compared.
struct TrialResult {
    rooting::Take first;
    rooting::Take second;
    double difference = 0;      ///< the first share less the second
    rooting::Interval interval; ///< Newcombe's, at the level asked for
    /// Cuttings to strike in each way, those struck with them, until the interval would leave out 0 if the
    /// shares stayed as they are; nothing where that takes more than a hundred thousand.
    std::optional<std::int64_t> cuttingsToSettle;

    [[nodiscard]] bool settled() const { return interval.low > 0 || interval.high < 0; }
};
[[nodiscard]] TrialResult compare(const rooting::Take& first, const rooting::Take& second, double level);

/// Batches of one taxon, wood and stock struck within a week that differ in one way: a trial, whether it was
/// meant or not.
struct Trial {
    Grouping way = Grouping::Hormone; ///< hormone, medium or heat
    std::string firstWay;
    std::string secondWay;
    std::vector<BatchId> first;
    std::vector<BatchId> second;
};
/// All of a book among batches that have ended. Of more than two ways each pair is a trial.
[[nodiscard]] std::vector<Trial> trialsIn(const HouseBook& book);

/// The take of several batches together.
[[nodiscard]] rooting::Take takeOf(const HouseBook& book, const std::vector<BatchId>& batches);

} // namespace warmbench::take
