#include "core/rooting/sighting.h"

#include <algorithm>
#include <tuple>

namespace warmbench::rooting {
namespace {

auto place(const Sighting& sighting) {
    return std::tuple{sighting.outcome, sighting.from, sighting.to};
}

} // namespace

std::vector<Sighting> merged(const std::vector<Sighting>& sightings) {
    std::vector<Sighting> kept;
    for (Sighting sighting : sightings) {
        if (sighting.outcome != Outcome::Rooted) sighting.to = 0;
        if (sighting.outcome == Outcome::Never) sighting.from = 0;
        const bool tellsNothing = sighting.outcome == Outcome::Unrooted && sighting.from == 0;
        if (sighting.count > 0 && !tellsNothing) kept.push_back(sighting);
    }
    std::sort(kept.begin(), kept.end(),
              [](const Sighting& a, const Sighting& b) { return place(a) < place(b); });
    std::vector<Sighting> result;
    for (const Sighting& sighting : kept) {
        if (!result.empty() && place(result.back()) == place(sighting))
            result.back().count += sighting.count;
        else
            result.push_back(sighting);
    }
    return result;
}

} // namespace warmbench::rooting
