#include "core/rooting/limits.h"

#include "core/rooting/turnbull.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace warmbench::rooting {
namespace {

constexpr double impossible = -std::numeric_limits<double>::infinity();

/// Cuttings on two sides, x * ln(share) + y * ln(1 - share) at its greatest.
double binomialSupremum(double x, double y) {
    double sum = 0;
    if (x > 0) sum += x * std::log(x / (x + y));
    if (y > 0) sum += y * std::log(y / (x + y));
    return sum;
}

/// All roots come at `moment`, in part just before and in part just after it. Three atoms hold all mass:
/// before, after, never.
double supremumAtMoment(const std::vector<Sighting>& sightings, double moment, bool allRoot) {
    enum Atom : std::size_t { before, after, never };
    std::vector<AtomRange> ranges;
    for (const Sighting& sighting : sightings) {
        AtomRange range{before, never, sighting.count};
        if (sighting.outcome == Outcome::Rooted) {
            if (sighting.from > moment || sighting.to < moment) return impossible;
            range.first = sighting.from == moment ? after : before;
            range.last = sighting.to == moment ? before : after;
        } else if (sighting.outcome == Outcome::Never || sighting.from > moment) {
            range.first = never;
        } else {
            range.first = sighting.from == moment ? after : before;
        }
        if (allRoot) {
            if (range.first == never) return impossible;
            range.last = std::min<std::size_t>(range.last, after);
        }
        ranges.push_back(range);
    }
    return massLogLikelihood(likeliestMasses(allRoot ? 2 : 3, ranges), ranges);
}

/// The part that has rooted is the same at all times in the data.
double supremumWithoutTime(const std::vector<Sighting>& sightings, bool allRoot) {
    double rooted = 0;
    double others = 0;
    for (const Sighting& sighting : sightings) {
        if (sighting.outcome == Outcome::Rooted) {
            if (sighting.from > 0) return impossible;
            rooted += sighting.count;
        } else {
            if (allRoot && sighting.outcome == Outcome::Never) return impossible;
            others += sighting.count;
        }
    }
    return binomialSupremum(rooted, others);
}

} // namespace

double supremumAtLimits(const std::vector<Sighting>& sightings, bool allRoot) {
    // All roots can come at one moment only if all intervals with roots share it.
    double first = 0;
    double last = std::numeric_limits<double>::infinity();
    std::vector<double> times;
    for (const Sighting& sighting : sightings) {
        if (sighting.outcome == Outcome::Rooted) {
            first = std::max(first, sighting.from);
            last = std::min(last, sighting.to);
            times.push_back(sighting.to);
        }
        if (sighting.from > 0) times.push_back(sighting.from);
    }
    std::sort(times.begin(), times.end());
    times.erase(std::unique(times.begin(), times.end()), times.end());

    double greatest = supremumWithoutTime(sightings, allRoot);
    for (const double time : times)
        if (time >= first && time <= last)
            greatest = std::max(greatest, supremumAtMoment(sightings, time, allRoot));
    return greatest;
}

} // namespace warmbench::rooting
