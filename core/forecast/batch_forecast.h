#pragma once

#include "core/forecast/batch_warmth.h"
#include "core/rooting/belief.h"

namespace warmbench::forecast {

/// What is known of a batch from its checks, losses and pottings up to a day.
struct BatchEvidence {
    std::vector<rooting::CuttingsLeft> left; ///< alive, lots alike taken together
    rooting::Evidence evidence;
    double potted = 0;   ///< plants already in pots
    double deadPart = 0; ///< of those struck
};
[[nodiscard]] BatchEvidence evidenceOf(const HouseBook& book, const Batch& batch, const BatchWarmth& warmth,
                                       Day day);

/// What a recipe promises, before any check, of cuttings of which `deadPart` are dead. Nothing where its
/// figures can't be (no thermal time passes at its ideal, days or take the wrong way round).
[[nodiscard]] std::optional<rooting::RootingPrior> priorOf(const Recipe& recipe, double deadPart = 0);

/// The part of those that will root that has to have rooted before a batch is potted on.
inline constexpr double readyPart = 0.9;

/// What becomes of a batch, as seen on a day.
class BatchForecast {
public:
    /// Nothing where its recipe's figures can't be.
    static std::optional<BatchForecast> make(const HouseBook& book, const Batch& batch, Day day,
                                             const MeasuredDay& measured = {});

    /// The share of those alive that has rooted by the beginning of a day, with its band.
    struct Share {
        double expected = 0;
        rooting::Interval band;
    };
    [[nodiscard]] Share rootedOn(Day day, double level) const;
    /// The first day on which readyPart of those that will root have, with a probability of `sure`; nothing
    /// where that is not within two years of striking.
    [[nodiscard]] std::optional<Day> readyDay(double sure) const;
    /// Plants that it gives in the end, those in pots with them, if no more die; `wanted` of them.
    [[nodiscard]] rooting::CountForecast plants(double wanted, double level) const;
    /// Plants rooted by a day, not before the day as seen on.
    [[nodiscard]] rooting::CountForecast plantsBy(Day day, double wanted, double level) const;

    [[nodiscard]] const rooting::RootingBelief& belief() const { return m_belief; }
    [[nodiscard]] const BatchWarmth& warmth() const { return m_warmth; }
    [[nodiscard]] const BatchEvidence& evidence() const { return m_evidence; }

private:
    BatchForecast(BatchWarmth warmth, BatchEvidence evidence, const rooting::RootingPrior& prior, Day day);
    [[nodiscard]] rooting::CountForecast plantsByTime(double time, double wanted, double level) const;

    BatchWarmth m_warmth;
    BatchEvidence m_evidence;
    rooting::RootingBelief m_belief;
    Day m_day;
};

} // namespace warmbench::forecast
