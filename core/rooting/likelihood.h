#pragma once

#include "core/rooting/rooting_law.h"
#include "core/rooting/sighting.h"

#include <array>
#include <limits>
#include <optional>
#include <vector>

namespace warmbench::rooting {

/// The log-odds of what happens always.
inline constexpr double always = std::numeric_limits<double>::infinity();

/// A rooting law in the coordinates in which its likelihood is easiest to climb: a time t has
/// z = level + steepness * (ln t - centre) / scale, with the likelihood's own centre and scale. With a share
/// of 1 the log-likelihood is concave in level and steepness.
struct Slant {
    double level = 0;
    double steepness = 1; ///< above 0
    double odds = 0;      ///< ln(p / (1 - p)); infinite: all root
};

/// A log-likelihood with its derivatives by level, steepness and odds (the last are 0 where all root).
struct Ascent {
    double value = 0;
    std::array<double, 3> gradient{};
    std::array<double, 9> curvature{}; ///< second derivatives, row by row
};

/// The log-likelihood of a rooting law given sightings: a rooted cutting contributes p (F(to) - F(from)), an
/// unrooted one 1 - p F(from), one that never roots 1 - p.
class Likelihood {
public:
    /// `sightings` as merged() gives them, with at least one rooted cutting.
    Likelihood(Family family, const std::vector<Sighting>& sightings);

    [[nodiscard]] Ascent at(const Slant& slant) const;
    /// The odds of the share that is likeliest with a given level and steepness; infinite for a share of 1.
    [[nodiscard]] double bestOdds(const Slant& slant) const;

    [[nodiscard]] RootingLaw law(const Slant& slant) const;
    /// Covariances of p, mu and sigma, row by row, at a maximum, from the observed information; those of p
    /// are 0 where all root. Nothing where the information is singular.
    [[nodiscard]] std::optional<std::array<double, 9>> covariance(const Slant& slant) const;

    /// How many different numbers the likelihood depends on: F at each time in the data, and p where some
    /// cuttings are known never to root.
    [[nodiscard]] std::size_t numbersSeen() const { return m_times.size() + (m_never > 0 ? 1 : 0); }
    [[nodiscard]] bool anyNever() const { return m_never > 0; }
    /// (ln t - centre) / scale of the times in the data, increasing.
    [[nodiscard]] const std::vector<double>& times() const { return m_times; }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    /// Cuttings between two of the times, by their places in m_times; `none` for time 0.
    struct Rooted {
        std::size_t from;
        std::size_t to;
        double count;
    };
    struct Alive {
        std::size_t from;
        double count;
    };

    void addRooted(const std::vector<double>& z, const std::vector<LawPoint>& points, Ascent& sum) const;
    void addAlive(const std::vector<LawPoint>& points, double odds, Ascent& sum) const;

    Family m_family;
    double m_centre = 0;
    double m_scale = 1;
    std::vector<double> m_times;
    std::vector<Rooted> m_rooted;
    std::vector<Alive> m_alive;
    double m_rootedCount = 0;
    double m_never = 0;
};

} // namespace warmbench::rooting
