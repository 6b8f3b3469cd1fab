#include "core/rooting/linear_solve.h"
#include "core/rooting/turnbull.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

namespace warmbench::rooting {
namespace {

/// How far a gradient may stay above what it should be, as a part of it.
constexpr double tolerance = 1e-10;

/// How much a value is off for the rounding of its terms.
double rounding(double value) {
    return 1e-14 * (1 + std::abs(value));
}

/// Maximises sum(count * ln(mass in range)) - total * sum(masses), whose maximum over masses that are not
/// negative has the sum 1 of itself.
class MassSearch {
public:
    MassSearch(std::size_t atoms, std::span<const AtomRange> ranges)
        : m_ranges(ranges), m_masses(atoms, 0), m_gradient(atoms), m_before(atoms + 1) {
        for (const AtomRange& range : ranges) m_total += range.count;
    }

    std::vector<double> run() {
        startFromFewAtoms();
        constexpr int mostRounds = 500;
        double reached = -std::numeric_limits<double>::infinity();
        for (int round = 0; round < mostRounds; ++round) {
            const double before = reached;
            reached = climbOnSupport();
            if (!addAtoms() || reached - before <= rounding(reached)) break;
        }
        const double sum = std::accumulate(m_masses.begin(), m_masses.end(), 0.0);
        for (double& mass : m_masses) mass /= sum;
        return m_masses;
    }

private:
    /// As few atoms as there must be for every range to hold some mass.
    void startFromFewAtoms() {
        std::vector<AtomRange> byEnd(m_ranges.begin(), m_ranges.end());
        std::sort(byEnd.begin(), byEnd.end(),
                  [](const AtomRange& a, const AtomRange& b) { return a.last < b.last; });
        for (const AtomRange& range : byEnd)
            if (m_support.empty() || m_support.back() < range.first) m_support.push_back(range.last);
        for (const std::size_t atom : m_support) m_masses[atom] = 1 / static_cast<double>(m_support.size());
    }

    [[nodiscard]] double massIn(const AtomRange& range) const {
        return m_before[range.last + 1] - m_before[range.first];
    }

    double value(const std::vector<double>& masses) {
        std::partial_sum(masses.begin(), masses.end(), m_before.begin() + 1);
        double sum = -m_total * m_before.back();
        for (const AtomRange& range : m_ranges) {
            const double mass = massIn(range);
            if (!(mass > 0)) return -std::numeric_limits<double>::infinity();
            sum += range.count * std::log(mass);
        }
        return sum;
    }

    /// Gradient at the masses of the last call of value.
    void findGradient() {
        std::vector<double> change(m_gradient.size() + 1, 0);
        for (const AtomRange& range : m_ranges) {
            const double rate = range.count / massIn(range);
            change[range.first] += rate;
            change[range.last + 1] -= rate;
        }
        double sum = -m_total;
        for (std::size_t i = 0; i < m_gradient.size(); ++i) m_gradient[i] = sum += change[i];
    }

    /// Minus the second derivatives on `atoms`, at the masses of the last call of value.
    [[nodiscard]] std::vector<double> curvature(const std::vector<std::size_t>& atoms) const {
        const std::size_t n = atoms.size();
        std::vector<double> sums(n * n, 0);
        for (const AtomRange& range : m_ranges) {
            const auto first = std::lower_bound(atoms.begin(), atoms.end(), range.first);
            const auto end = std::upper_bound(atoms.begin(), atoms.end(), range.last);
            if (first == end) continue;
            const auto row = static_cast<std::size_t>(end - atoms.begin()) - 1;
            const auto column = static_cast<std::size_t>(first - atoms.begin());
            const double mass = massIn(range);
            sums[row * n + column] += range.count / (mass * mass);
        }
        // An entry (row, column) is shared by all ranges that begin at or before its column and end at or
        // after its row.
        for (std::size_t row = n; row-- > 0;)
            for (std::size_t column = 0; column <= row; ++column) {
                if (row + 1 < n) sums[row * n + column] += sums[(row + 1) * n + column];
                if (column > 0) sums[row * n + column] += sums[row * n + column - 1];
                if (row + 1 < n && column > 0) sums[row * n + column] -= sums[(row + 1) * n + column - 1];
            }
        return sums;
    }

    /// Climbs on the support to where its gradient is flat, and returns the value reached; atoms left without
    /// mass leave it. Newton steps, held to masses that are not negative (Bertsekas 1982, SIAM Journal on
    /// Control and Optimization 20:221-246), take turns with steps of self-consistency (Turnbull's own),
    /// which never descend and serve far from the top, where Newton's do not.
    double climbOnSupport() {
        constexpr int mostSteps = 100;
        constexpr int mostStalled = 3;
        double reached = value(m_masses);
        for (int step = 0, stalled = 0; step < mostSteps && stalled < mostStalled; ++step) {
            findGradient();
            for (const std::size_t atom : m_support) m_masses[atom] *= 1 + m_gradient[atom] / m_total;
            const double before = std::exchange(reached, value(m_masses));
            findGradient();
            std::vector<std::size_t> free;
            double steepest = 0;
            for (const std::size_t atom : m_support) {
                if (m_masses[atom] <= 0 && m_gradient[atom] <= 0) continue;
                free.push_back(atom);
                steepest = std::max(steepest, std::abs(m_gradient[atom]));
            }
            if (steepest <= tolerance * m_total || !climb(free, reached)) break;
            stalled = reached - before > rounding(reached) ? 0 : stalled + 1;
        }
        std::erase_if(m_support, [this](std::size_t atom) { return m_masses[atom] <= 0; });
        return reached;
    }

    /// One step on the atoms that are free to move; false where it finds nothing higher.
    bool climb(const std::vector<std::size_t>& free, double& reached) {
        const std::size_t n = free.size();
        std::vector<double> matrix = curvature(free);
        double greatest = 0;
        for (std::size_t i = 0; i < n; ++i) greatest = std::max(greatest, matrix[i * n + i]);
        for (std::size_t i = 0; i < n; ++i) matrix[i * n + i] += 1e-12 * greatest;
        std::vector<double> step(n);
        for (std::size_t i = 0; i < n; ++i) step[i] = m_gradient[free[i]];
        if (!solvePositiveDefinite(matrix, step))
            for (std::size_t i = 0; i < n; ++i) step[i] = m_gradient[free[i]] / greatest;

        const std::vector<double> before = m_masses;
        for (double part = 1; part > 1e-10; part /= 2) {
            double promised = 0;
            for (std::size_t i = 0; i < n; ++i) {
                const std::size_t atom = free[i];
                m_masses[atom] = std::max(0.0, before[atom] + part * step[i]);
                promised += m_gradient[atom] * (m_masses[atom] - before[atom]);
            }
            const double found = value(m_masses);
            if (found >= reached + 1e-4 * promised - rounding(reached)) {
                reached = found;
                return true;
            }
        }
        m_masses = before;
        value(m_masses);
        return false;
    }

    /// Adds, between each two neighbours of the support, the atom of greatest gradient if that is above 0;
    /// false where there is none.
    bool addAtoms() {
        findGradient();
        std::vector<std::size_t> added;
        const auto consider = [&](std::size_t begin, std::size_t end) {
            const auto steepest = std::max_element(m_gradient.begin() + static_cast<std::ptrdiff_t>(begin),
                                                   m_gradient.begin() + static_cast<std::ptrdiff_t>(end));
            if (begin<end&& * steepest> tolerance * m_total)
                added.push_back(static_cast<std::size_t>(steepest - m_gradient.begin()));
        };
        std::size_t begin = 0;
        for (const std::size_t atom : m_support) {
            consider(begin, atom);
            begin = atom + 1;
        }
        consider(begin, m_gradient.size());
        m_support.insert(m_support.end(), added.begin(), added.end());
        std::sort(m_support.begin(), m_support.end());
        return !added.empty();
    }

    std::span<const AtomRange> m_ranges;
    double m_total = 0;
    std::vector<double> m_masses;
    std::vector<double> m_gradient;
    std::vector<double> m_before; ///< sums of the masses before each atom
    std::vector<std::size_t> m_support;
};

} // namespace

std::vector<double> likeliestMasses(std::size_t atoms, std::span<const AtomRange> ranges) {
    return MassSearch{atoms, ranges}.run();
}

double massLogLikelihood(std::span<const double> masses, std::span<const AtomRange> ranges) {
    double sum = 0;
    for (const AtomRange& range : ranges) {
        double mass = 0;
        for (std::size_t atom = range.first; atom <= range.last; ++atom) mass += masses[atom];
        sum += range.count * std::log(mass);
    }
    return sum;
}

} // namespace warmbench::rooting
