#pragma once

#include "core/book/house_book.h"
#include "core/rooting/proportion.h"

#include <string>
#include <vector>

namespace warmbench::season {

/// How sure the intervals of a report are.
inline constexpr double reportLevel = 0.95;
/// Fewer batches than this tell nothing of the next one: batches differ for reasons that nobody wrote down.
/// A decision of this program, without a source.
inline constexpr std::size_t fewestBatches = 3;

/// What ended batches say of the share that roots.
struct Evidence {
    std::vector<BatchId> batches;
    rooting::Take take{0, 0};
    /// Independent cuttings that they are worth: each batch's, divided by 1 + (n - 1) times the correlation
    /// within a batch.
    double counts = 0;
    /// Wilson's, of the cuttings as they are, at reportLevel, as the take table has it; 0 to 1 where there is
    /// none.
    rooting::Interval wilson{0, 1};
    /// Wilson's, of as many cuttings as they count, which is what advice rests on; 0 to 1 where there is
    /// none.
    rooting::Interval interval{0, 1};

    [[nodiscard]] bool thin() const { return batches.size() < fewestBatches; }
    /// `53 of 80 potted on from 2 batches, 66 %: 48 to 81 % at 95 %, as batches differ`.
    [[nodiscard]] std::string words() const;
};

/// The evidence of these batches, which have ended.
[[nodiscard]] Evidence evidenceOf(const HouseBook& book, const std::vector<BatchId>& batches);

/// Whether two shares differ, by Newcombe's interval of as many cuttings as each evidence counts.
[[nodiscard]] rooting::Interval differenceOf(const Evidence& first, const Evidence& second);

/// `1 batch`, `12 batches`.
[[nodiscard]] Phrase batchesWords(std::size_t count);
/// `48 to 81 %`.
[[nodiscard]] std::string percentWords(const rooting::Interval& interval);

} // namespace warmbench::season
