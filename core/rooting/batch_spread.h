#pragma once

#include "core/rooting/beta_binomial.h"
#include "core/rooting/proportion.h"

#include <span>

namespace warmbench::rooting {

/// How the share that roots varies from batch to batch (or tray to tray).
struct BatchSpread {
    bool spread = false;              ///< more than chance alone gives
    BetaShape share;                  ///< the beta law of the batches' shares, where there is spread
    BetaShape error;                  ///< standard errors of its shapes
    double mean = 0;                  ///< the share on average
    double correlation = 0;           ///< within a batch, 1 / (alpha + beta + 1); 0 without spread
    double logLikelihood = 0;         ///< with the binomial coefficients
    double binomialLogLikelihood = 0; ///< where all batches have one share
};

/// Fits a beta-binomial law to the takes of several batches (at least one) by maximum likelihood. Without
/// more spread than chance gives, where the greatest likelihood is at alpha + beta without bound, `spread` is
/// false.
BatchSpread batchSpread(std::span<const Take> batches);

} // namespace warmbench::rooting
