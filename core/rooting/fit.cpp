#include "core/rooting/fit.h"

#include "core/rooting/ascent.h"
#include "core/rooting/likelihood.h"
#include "core/rooting/limits.h"

#include <algorithm>
#include <cmath>

namespace warmbench::rooting {
namespace {

/// Whether one log-likelihood is greater than another by more than rounding.
bool clearlyGreater(double value, double other) {
    return other == -always || value - other > 1e-10 * (1 + std::abs(other));
}

/// The maximum where all root, found from any start because there is only one.
Summit allRootSummit(const Likelihood& likelihood) {
    return climb(likelihood, Slant{0, 1, always});
}

/// Laws from which to climb with the share free: those on a coarse grid of time and spread that do best with
/// their likeliest share, and the law of the rooted cuttings alone.
std::vector<Slant> starts(const Likelihood& likelihood, const Slant& ofRooted, const Slant& ofAll) {
    struct Candidate {
        Slant slant;
        double value;
    };
    constexpr double highestOdds = 6; // a climb needs a share below 1
    std::vector<Candidate> candidates;
    const auto consider = [&](Slant slant) {
        slant.odds = std::min(highestOdds, likelihood.bestOdds(slant));
        const double value = likelihood.at(slant).value;
        if (std::isfinite(value)) candidates.push_back({slant, value});
    };
    const double last = likelihood.times().back();
    for (const double steepness : {0.4, 1.0, 2.5, 8.0})
        for (const double median : {-1.2, -0.4, 0.4, 1.2, last, last + 1})
            consider({-steepness * median, steepness, 0});
    constexpr std::size_t mostFromGrid = 4;
    std::sort(candidates.begin(), candidates.end(),
              [](const Candidate& a, const Candidate& b) { return a.value > b.value; });
    if (candidates.size() > mostFromGrid) candidates.resize(mostFromGrid);
    consider(ofRooted);
    consider(ofAll);
    std::vector<Slant> found;
    found.reserve(candidates.size());
    for (const Candidate& candidate : candidates) found.push_back(candidate.slant);
    return found;
}

std::vector<Sighting> rootedOnly(std::vector<Sighting> sightings) {
    std::erase_if(sightings, [](const Sighting& sighting) { return sighting.outcome != Outcome::Rooted; });
    return sightings;
}

/// The best of several climbs with the share free. The likelihood of the rooted cuttings alone has the same
/// centre and scale, so that its law is a start as it stands.
std::optional<Summit> bestInside(Family family, const std::vector<Sighting>& sightings,
                                 const Likelihood& likelihood, const Slant& ofAll) {
    const Slant ofRooted = allRootSummit(Likelihood{family, rootedOnly(sightings)}).slant;
    std::optional<Summit> best;
    for (const Slant& start : starts(likelihood, ofRooted, ofAll)) {
        const Summit summit = climb(likelihood, start);
        if (!best || summit.value > best->value) best = summit;
    }
    return best;
}

} // namespace

std::string_view statusName(FitStatus status) {
    switch (status) {
    case FitStatus::Inside:
        return "inside";
    case FitStatus::AllRoot:
        return "all-root";
    case FitStatus::NoUniqueAnswer:
        break;
    }
    return "no-unique-answer";
}

std::optional<double> RootingFit::shareError() const {
    if (status != FitStatus::Inside) return std::nullopt;
    return std::sqrt(covariance[0]);
}

std::optional<double> RootingFit::muError() const {
    if (!law) return std::nullopt;
    return std::sqrt(covariance[4]);
}

std::optional<double> RootingFit::sigmaError() const {
    if (!law) return std::nullopt;
    return std::sqrt(covariance[8]);
}

RootingFit fitRooting(Family family, const std::vector<Sighting>& given, bool allRoot) {
    RootingFit fit;
    for (const Sighting& sighting : given) fit.cuttings += sighting.count;
    const std::vector<Sighting> sightings = merged(given);
    // Without roots the likelihood nears 1 as the share nears 0, or the time of rooting the end of time.
    if (sightings.empty() || sightings.front().outcome != Outcome::Rooted) return fit;

    const Likelihood likelihood{family, sightings};
    const double limit = supremumAtLimits(sightings, allRoot);
    const Summit all = allRootSummit(likelihood);
    const double allValue = likelihood.anyNever() ? -always : all.value;
    Summit best = all;
    double reached = allValue;
    FitStatus status = FitStatus::AllRoot;
    if (!allRoot) {
        const auto inside = bestInside(family, sightings, likelihood, all.slant);
        if (inside && clearlyGreater(inside->value, allValue)) {
            best = *inside;
            reached = inside->value;
            status = FitStatus::Inside;
        }
    }
    fit.logLikelihood = std::max(reached, limit);
    // Law and share together are three numbers: fewer seen leave them open. So does a likelihood that is
    // greater, or as great, at a limit.
    const bool tooFew = likelihood.numbersSeen() < (allRoot ? 2U : 3U);
    if (tooFew || !clearlyGreater(reached, limit)) return fit;
    const auto covariance = likelihood.covariance(best.slant);
    if (!covariance) return fit;
    fit.status = status;
    fit.law = likelihood.law(best.slant);
    fit.covariance = *covariance;
    return fit;
}

} // namespace warmbench::rooting
