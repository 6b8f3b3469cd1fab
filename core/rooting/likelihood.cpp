#include "core/rooting/likelihood.h"

#include "core/rooting/linear_solve.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace warmbench::rooting {
namespace {

/// ln p for log-odds.
double logShare(double odds) {
    return odds > 0 ? -std::log1p(std::exp(-odds)) : odds - std::log1p(std::exp(odds));
}

double shareOf(double odds) {
    return std::exp(logShare(odds));
}

/// ln(e^a + e^b).
double logSum(double a, double b) {
    const double high = std::max(a, b);
    if (high == -always) return high;
    return high + std::log1p(std::exp(std::min(a, b) - high));
}

/// Adds count times a term's derivatives by one z, which moves by 1 with the level and by `x` with steepness.
void addByPlace(Ascent& sum, double count, double x, double first, double second) {
    sum.gradient[0] += count * first;
    sum.gradient[1] += count * first * x;
    sum.curvature[0] += count * second;
    sum.curvature[1] += count * second * x;
    sum.curvature[4] += count * second * x * x;
}

} // namespace

Likelihood::Likelihood(Family family, const std::vector<Sighting>& sightings) : m_family(family) {
    double weight = 0;
    double sum = 0;
    double squares = 0;
    std::vector<double> logs;
    for (const Sighting& sighting : sightings) {
        if (sighting.outcome == Outcome::Never) {
            m_never += sighting.count;
            continue;
        }
        if (sighting.from > 0) logs.push_back(std::log(sighting.from));
        if (sighting.outcome == Outcome::Unrooted) continue;
        logs.push_back(std::log(sighting.to));
        m_rootedCount += sighting.count;
        const double middle = std::log((sighting.from + sighting.to) / 2);
        weight += sighting.count;
        sum += sighting.count * middle;
        squares += sighting.count * middle * middle;
    }
    std::sort(logs.begin(), logs.end());
    logs.erase(std::unique(logs.begin(), logs.end()), logs.end());
    m_centre = sum / weight;
    constexpr double narrowest = 0.02;
    m_scale = std::max(narrowest, std::sqrt(std::max(0.0, squares / weight - m_centre * m_centre)));
    for (const double time : logs) m_times.push_back((time - m_centre) / m_scale);

    const auto place = [&logs](double time) {
        return static_cast<std::size_t>(std::lower_bound(logs.begin(), logs.end(), std::log(time)) -
                                        logs.begin());
    };
    for (const Sighting& sighting : sightings) {
        if (sighting.outcome == Outcome::Rooted)
            m_rooted.push_back(
                {sighting.from > 0 ? place(sighting.from) : none, place(sighting.to), sighting.count});
        else if (sighting.outcome == Outcome::Unrooted && sighting.from > 0)
            m_alive.push_back({place(sighting.from), sighting.count});
    }
}

Ascent Likelihood::at(const Slant& slant) const {
    std::vector<double> z;
    std::vector<LawPoint> points;
    z.reserve(m_times.size());
    points.reserve(m_times.size());
    for (const double time : m_times) {
        z.push_back(slant.level + slant.steepness * time);
        points.push_back(lawPoint(m_family, z.back()));
    }
    Ascent sum;
    addRooted(z, points, sum);
    addAlive(points, slant.odds, sum);
    if (slant.odds != always) {
        const double share = shareOf(slant.odds);
        sum.value += m_rootedCount * logShare(slant.odds) + m_never * logShare(-slant.odds);
        sum.gradient[2] += m_rootedCount * (1 - share) - m_never * share;
        sum.curvature[8] -= (m_rootedCount + m_never) * share * (1 - share);
    } else if (m_never > 0) {
        sum.value = -always;
    }
    sum.curvature[3] = sum.curvature[1];
    sum.curvature[6] = sum.curvature[2];
    sum.curvature[7] = sum.curvature[5];
    return sum;
}

void Likelihood::addRooted(const std::vector<double>& z, const std::vector<LawPoint>& points,
                           Ascent& sum) const {
    for (const Rooted& rooted : m_rooted) {
        const LawPoint& to = points[rooted.to];
        const double logMass =
            rooted.from == none ? to.logBelow : logBetween(m_family, z[rooted.from], z[rooted.to]);
        sum.value += rooted.count * logMass;
        const double upper = std::exp(to.logDensity - logMass);
        addByPlace(sum, rooted.count, m_times[rooted.to], upper, upper * (to.slope - upper));
        if (rooted.from == none) continue;
        const LawPoint& from = points[rooted.from];
        const double lower = -std::exp(from.logDensity - logMass);
        addByPlace(sum, rooted.count, m_times[rooted.from], lower, lower * (from.slope - lower));
        const double both = -rooted.count * upper * lower;
        sum.curvature[0] += 2 * both;
        sum.curvature[1] += both * (m_times[rooted.from] + m_times[rooted.to]);
        sum.curvature[4] += 2 * both * m_times[rooted.from] * m_times[rooted.to];
    }
}

void Likelihood::addAlive(const std::vector<LawPoint>& points, double odds, Ascent& sum) const {
    const bool allRoot = odds == always;
    const double logP = allRoot ? 0 : logShare(odds);
    const double logRest = allRoot ? -always : logShare(-odds);
    const double share = std::exp(logP);
    for (const Alive& alive : m_alive) {
        const LawPoint& point = points[alive.from];
        const double logAlive = logSum(logRest, logP + point.logAbove);
        sum.value += alive.count * logAlive;
        const double x = m_times[alive.from];
        const double byPlace = -std::exp(logP + point.logDensity - logAlive);
        addByPlace(sum, alive.count, x, byPlace, byPlace * (point.slope - byPlace));
        if (allRoot) continue;
        const double byOdds = -std::exp(logP + logRest + point.logBelow - logAlive);
        sum.gradient[2] += alive.count * byOdds;
        sum.curvature[8] += alive.count * byOdds * (1 - 2 * share - byOdds);
        const double both = alive.count * byPlace * (1 - share - byOdds);
        sum.curvature[2] += both;
        sum.curvature[5] += both * x;
    }
}

double Likelihood::bestOdds(const Slant& slant) const {
    std::vector<double> rootedShare; // F at each sighting of living cuttings
    rootedShare.reserve(m_alive.size());
    for (const Alive& alive : m_alive)
        rootedShare.push_back(
            std::exp(lawPoint(m_family, slant.level + slant.steepness * m_times[alive.from]).logBelow));
    // The derivative by p falls all the way from 0 to 1.
    const auto slope = [&](double p) {
        double sum = m_rootedCount / p;
        for (std::size_t i = 0; i < m_alive.size(); ++i)
            sum -= m_alive[i].count * rootedShare[i] / (1 - p * rootedShare[i]);
        return m_never > 0 ? sum - m_never / (1 - p) : sum;
    };
    if (m_never == 0 && slope(1) >= 0) return always;
    double low = 0;
    double high = 1;
    constexpr int halvings = 30;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (slope(middle) > 0 ? low : high) = middle;
    }
    const double p = (low + high) / 2;
    return std::log(p) - std::log1p(-p);
}

RootingLaw Likelihood::law(const Slant& slant) const {
    const double sigma = m_scale / slant.steepness;
    return {m_family, shareOf(slant.odds), m_centre - slant.level * sigma, sigma};
}

std::optional<std::array<double, 9>> Likelihood::covariance(const Slant& slant) const {
    const Ascent here = at(slant);
    const bool allRoot = slant.odds == always;
    const std::size_t n = allRoot ? 2 : 3;
    // Rows: how p, mu and sigma move with level, steepness and odds.
    const double share = shareOf(slant.odds);
    const double a = slant.steepness;
    const std::array<std::array<double, 3>, 3> moves{{{0, 0, allRoot ? 0 : share * (1 - share)},
                                                      {-m_scale / a, slant.level * m_scale / (a * a), 0},
                                                      {0, -m_scale / (a * a), 0}}};
    std::array<double, 9> covariances{};
    for (std::size_t i = allRoot ? 1 : 0; i < 3; ++i) {
        std::array<double, 9> information{};
        for (std::size_t row = 0; row < n; ++row)
            for (std::size_t column = 0; column < n; ++column)
                information[row * n + column] = -here.curvature[row * 3 + column];
        std::array<double, 3> solved = moves[i];
        if (!solvePositiveDefinite(std::span{information}.first(n * n), std::span{solved}.first(n)))
            return std::nullopt;
        for (std::size_t j = 0; j < 3; ++j)
            for (std::size_t k = 0; k < n; ++k) covariances[i * 3 + j] += moves[j][k] * solved[k];
        if (!(covariances[i * 3 + i] > 0)) return std::nullopt;
    }
    return covariances;
}

} // namespace warmbench::rooting
