#pragma once

#include <cstdint>
#include <vector>

namespace warmbench::rooting {

enum class Outcome : std::uint8_t {
    Rooted,   ///< after `from` and not after `to`
    Unrooted, ///< alive without roots at `from`
    Never,    ///< known never to root
};

/// What root checks tell of some cuttings. Times are degree-days (or days) since striking, not negative;
/// `to` is above `from` and used for rooted cuttings only.
struct Sighting {
    Outcome outcome = Outcome::Unrooted;
    double from = 0;
    double to = 0;
    double count = 1; ///< cuttings, a whole number, not negative

    friend bool operator==(const Sighting&, const Sighting&) = default;
};

/// The same cuttings with one sighting for each outcome and interval, in order of outcome, `from` and `to`;
/// without those that count nobody, and without those seen unrooted at time 0, who tell nothing.
std::vector<Sighting> merged(const std::vector<Sighting>& sightings);

} // namespace warmbench::rooting
