#include "core/rooting/turnbull.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace warmbench::rooting {
namespace {

constexpr double forever = std::numeric_limits<double>::infinity();

/// The interval in which a cutting of a sighting roots.
RootingMass intervalOf(const Sighting& sighting, double lastTime) {
    switch (sighting.outcome) {
    case Outcome::Rooted:
        return {sighting.from, sighting.to, 0};
    case Outcome::Unrooted:
        return {sighting.from, forever, 0};
    case Outcome::Never:
        break;
    }
    return {lastTime, forever, 0};
}

double lastTimeOf(const std::vector<Sighting>& sightings) {
    double last = 0;
    for (const Sighting& sighting : sightings) last = std::max({last, sighting.from, sighting.to});
    return last;
}

/// The intervals that can hold mass: a left end followed by a right end with no other end between. Intervals
/// are open to the left, so of equal ends the right one comes first.
std::vector<RootingMass> innermost(const std::vector<RootingMass>& intervals) {
    struct End {
        double time;
        bool left;
    };
    std::vector<End> ends;
    for (const RootingMass& interval : intervals) {
        ends.push_back({interval.from, true});
        ends.push_back({interval.to, false});
    }
    std::sort(ends.begin(), ends.end(), [](const End& a, const End& b) {
        return a.time != b.time ? a.time < b.time : a.left < b.left;
    });
    std::vector<RootingMass> found;
    for (std::size_t i = 1; i < ends.size(); ++i)
        if (ends[i - 1].left && !ends[i].left) found.push_back({ends[i - 1].time, ends[i].time, 0});
    return found;
}

/// The innermost intervals that lie within one interval: they are neighbours.
AtomRange rangeOf(const RootingMass& interval, const std::vector<RootingMass>& atoms, double count) {
    const auto first =
        std::lower_bound(atoms.begin(), atoms.end(), interval.from,
                         [](const RootingMass& atom, double time) { return atom.from < time; });
    const auto end = std::upper_bound(atoms.begin(), atoms.end(), interval.to,
                                      [](double time, const RootingMass& atom) { return time < atom.to; });
    return {static_cast<std::size_t>(first - atoms.begin()),
            static_cast<std::size_t>(end - atoms.begin()) - 1, count};
}

} // namespace

TurnbullEstimate turnbull(const std::vector<Sighting>& sightings) {
    const std::vector<Sighting> distinct = merged(sightings);
    if (distinct.empty()) return {{{0, forever, 1}}, 0};
    const double lastTime = lastTimeOf(distinct);
    std::vector<RootingMass> intervals;
    intervals.reserve(distinct.size());
    for (const Sighting& sighting : distinct) intervals.push_back(intervalOf(sighting, lastTime));
    std::vector<RootingMass> atoms = innermost(intervals);
    std::vector<AtomRange> ranges;
    for (std::size_t i = 0; i < distinct.size(); ++i)
        ranges.push_back(rangeOf(intervals[i], atoms, distinct[i].count));

    const std::vector<double> masses = likeliestMasses(atoms.size(), ranges);
    TurnbullEstimate estimate;
    estimate.logLikelihood = massLogLikelihood(masses, ranges);
    constexpr double negligible = 1e-8;
    for (std::size_t i = 0; i < atoms.size(); ++i) {
        atoms[i].mass = masses[i];
        if (masses[i] >= negligible) estimate.masses.push_back(atoms[i]);
    }
    return estimate;
}

} // namespace warmbench::rooting
