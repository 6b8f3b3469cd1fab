#include "core/rooting/density.h"

#include "core/rooting/ln_gamma.h"

#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/trigamma.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace warmbench::rooting {
namespace {

double logNormal(double value, double mean, double deviation) {
    const double z = (value - mean) / deviation;
    return -z * z / 2 - std::log(deviation) - std::log(2 * std::numbers::pi) / 2;
}

} // namespace

Density::Density(const RootingPrior& prior, const Evidence& evidence)
    : m_prior(prior), m_logBeta(lnGamma(prior.share.alpha) + lnGamma(prior.share.beta) -
                                lnGamma(prior.share.alpha + prior.share.beta)) {
    for (const Sighting& sighting : merged(evidence.sightings)) {
        switch (sighting.outcome) {
        case Outcome::Rooted:
            m_rooted += sighting.count;
            m_rootedBetween.push_back(sighting);
            break;
        case Outcome::Unrooted:
            m_alive.push_back({sighting.from, sighting.count, 1});
            break;
        case Outcome::Never:
            m_never += sighting.count;
            break;
        }
    }
    for (const LookSeries& series : evidence.looks) {
        Series made;
        for (const Look& look : series) made.logTimes.push_back(std::log(look.time));
        made.terms = lookTerms(series);
        made.below.resize(series.size());
        m_rootedBy.resize(std::max(m_rootedBy.size(), series.size()));
        m_series.push_back(std::move(made));
    }
}

void Density::setTiming(double mu, double logSigma) {
    const double sigma = std::exp(logSigma);
    const auto place = [&](double time) { return (std::log(time) - mu) / sigma; };
    m_timing = logNormal(mu, m_prior.mu, m_prior.muDeviation) +
               logNormal(logSigma, m_prior.logSigma, m_prior.logSigmaDeviation);
    for (const Sighting& sighting : m_rootedBetween) {
        const double to = place(sighting.to);
        m_timing += sighting.count * (sighting.from > 0 ? logBetween(m_prior.family, place(sighting.from), to)
                                                        : lawPoint(m_prior.family, to).logBelow);
    }
    for (Alive& alive : m_alive)
        alive.waiting = std::exp(lawPoint(m_prior.family, place(alive.time)).logAbove);
    for (Series& series : m_series)
        for (std::size_t i = 0; i < series.logTimes.size(); ++i)
            series.below[i] = lawBelow(m_prior.family, (series.logTimes[i] - mu) / sigma);
}

double Density::at(double odds) {
    const double logShare = -std::log1p(std::exp(-odds));
    const double logRest = -std::log1p(std::exp(odds));
    const double share = std::exp(logShare);
    const double rest = std::exp(logRest);
    double sum = m_timing + (m_prior.share.alpha + m_rooted) * logShare +
                 (m_prior.share.beta + m_never) * logRest - m_logBeta;
    for (const Alive& alive : m_alive) sum += alive.count * std::log(rest + share * alive.waiting);
    for (const Series& series : m_series) {
        for (std::size_t i = 0; i < series.below.size(); ++i) m_rootedBy[i] = share * series.below[i];
        for (std::size_t i = 0; i < series.terms.size(); ++i) {
            const LookTerm& term = series.terms[i];
            sum += term.logLikelihood(term.chance(i, m_rootedBy.data()));
        }
    }
    return sum;
}

LawPlace Density::priorMean() const {
    return {m_prior.mu, m_prior.logSigma,
            boost::math::digamma(m_prior.share.alpha) - boost::math::digamma(m_prior.share.beta)};
}

LawPlace Density::priorDeviation() const {
    return {
        m_prior.muDeviation, m_prior.logSigmaDeviation,
        std::sqrt(boost::math::trigamma(m_prior.share.alpha) + boost::math::trigamma(m_prior.share.beta))};
}

} // namespace warmbench::rooting
