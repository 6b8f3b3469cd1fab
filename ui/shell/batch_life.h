#pragma once

#include "ui/shell/facts.h"

/// The parts of a batch's life, each as lines for the panel.
namespace warmbench::ui {

/// Each stay with its place and days; where containers stand apart at one time, with their numbers.
[[nodiscard]] QList<Fact> stayFacts(const HouseBook& book, BatchId batch, const Wording& wording);
/// What the latest checks up to a day found, one by one, and what was lost and potted on.
[[nodiscard]] QList<Fact> checkFacts(const HouseBook& book, const Batch& batch, Day day,
                                     const Wording& wording);
/// What becomes of it as seen on a day; empty where it has ended or its recipe's figures can't be. Looks at
/// this batch alone, however many the book has.
[[nodiscard]] QList<Fact> forecastFacts(const HouseBook& book, const Batch& batch, Day day,
                                        const Wording& wording);
/// How long it would root, and at what cost, at each setting of the mat of its rooting stay.
[[nodiscard]] QList<Fact> settingFacts(const HouseBook& book, const Batch& batch, Day day,
                                       const Wording& wording);
/// What stands on its labels.
[[nodiscard]] Fact labelFact(const HouseBook& book, const Batch& batch, const Wording& wording);

} // namespace warmbench::ui
