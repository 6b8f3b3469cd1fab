#include "core/rooting/check_round.h"

namespace warmbench::rooting {

std::vector<Sighting> sightingsOf(double struck, std::span<const CheckRound> checks, DeathRule rule) {
    std::vector<Sighting> sightings;
    const auto add = [&sightings](Sighting sighting) {
        if (sighting.count > 0) sightings.push_back(sighting);
    };
    double previous = 0;
    double left = struck;
    for (const CheckRound& check : checks) {
        add({Outcome::Rooted, previous, check.time, check.rooted});
        if (rule == DeathRule::NeverRoots)
            add({Outcome::Never, 0, 0, check.dead});
        else
            add({Outcome::Unrooted, rule == DeathRule::UntilThis ? check.time : previous, 0, check.dead});
        add({Outcome::Unrooted, check.time, 0, check.removed});
        left -= check.rooted + check.dead + check.removed;
        previous = check.time;
    }
    add({Outcome::Unrooted, previous, 0, left});
    return sightings;
}

} // namespace warmbench::rooting
