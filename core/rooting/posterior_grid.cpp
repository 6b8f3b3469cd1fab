#include "core/rooting/density.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace warmbench::rooting {
namespace {

using Square = std::array<LawPlace, 3>;

/// The lower triangle whose product with its transpose is a symmetric positive matrix; a matrix that is not
/// positive is made so by raising its diagonal.
Square rootOf(const Square& matrix) {
    for (double raised = 0;; raised = raised > 0 ? raised * 10 : 1e-9) {
        Square root{};
        bool positive = true;
        for (std::size_t i = 0; i < 3 && positive; ++i)
            for (std::size_t j = 0; j <= i; ++j) {
                double sum = matrix[i][j] + (i == j ? raised * (1 + std::abs(matrix[i][i])) : 0);
                for (std::size_t k = 0; k < j; ++k) sum -= root[i][k] * root[j][k];
                if (i != j)
                    root[i][j] = sum / root[j][j];
                else if (sum > 0)
                    root[i][i] = std::sqrt(sum);
                else
                    positive = false;
            }
        if (positive) return root;
    }
}

/// Solves root * rootTransposed * x = right.
LawPlace solved(const Square& root, LawPlace x) {
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t k = 0; k < i; ++k) x[i] -= root[i][k] * x[k];
        x[i] /= root[i][i];
    }
    for (std::size_t i = 3; i-- > 0;) {
        for (std::size_t k = i + 1; k < 3; ++k) x[i] -= root[k][i] * x[k];
        x[i] /= root[i][i];
    }
    return x;
}

/// Where the grid lies: place = centre + axes * z, axes lower triangular, so that mu and ln sigma do not
/// depend on the last z.
struct Frame {
    LawPlace centre{};
    Square axes{};

    [[nodiscard]] LawPlace place(const LawPlace& z) const {
        LawPlace at = centre;
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t k = 0; k <= i; ++k) at[i] += axes[i][k] * z[k];
        return at;
    }
    [[nodiscard]] double volume() const { return axes[0][0] * axes[1][1] * axes[2][2]; }
};

/// The frame round the mode, as wide as the curvature there says.
Frame frameAtMode(Density& density) {
    const LawPlace centre = density.priorMean();
    const LawPlace unit = density.priorDeviation();
    LawPlace u{};
    const auto value = [&](const LawPlace& at) {
        return density.at(
            {centre[0] + unit[0] * at[0], centre[1] + unit[1] * at[1], centre[2] + unit[2] * at[2]});
    };
    constexpr double step = 1e-4;
    const auto moved = [](LawPlace at, std::size_t i, double by) {
        at[i] += by;
        return at;
    };
    double here = value(u);
    double damping = 0;
    Square curvature{};
    for (int round = 0; round < 60; ++round) {
        LawPlace slope{};
        for (std::size_t i = 0; i < 3; ++i) {
            const double up = value(moved(u, i, step));
            const double down = value(moved(u, i, -step));
            slope[i] = (up - down) / (2 * step);
            curvature[i][i] = -(up - 2 * here + down) / (step * step);
        }
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t j = 0; j < i; ++j) {
                const double same =
                    value(moved(moved(u, i, step), j, step)) + value(moved(moved(u, i, -step), j, -step));
                const double other =
                    value(moved(moved(u, i, step), j, -step)) + value(moved(moved(u, i, -step), j, step));
                curvature[i][j] = curvature[j][i] = -(same - other) / (4 * step * step);
            }
        Square damped = curvature;
        for (std::size_t i = 0; i < 3; ++i) damped[i][i] += damping * (1 + std::abs(curvature[i][i]));
        LawPlace stride = solved(rootOf(damped), slope);
        double gain = 0;
        for (std::size_t i = 0; i < 3; ++i) {
            stride[i] = std::clamp(stride[i], -2.0, 2.0);
            gain += stride[i] * slope[i];
        }
        if (std::abs(gain) < 1e-6) break;
        const LawPlace next{u[0] + stride[0], u[1] + stride[1], u[2] + stride[2]};
        const double there = value(next);
        if (there > here) {
            u = next;
            here = there;
            damping = damping > 1e-3 ? damping / 10 : 0;
        } else {
            damping = damping > 0 ? damping * 10 : 0.01;
            if (damping > 1e8) break;
        }
    }
    // covariance = inverse of the curvature, column by column.
    const Square root = rootOf(curvature);
    Square covariance{};
    for (std::size_t j = 0; j < 3; ++j) {
        LawPlace column{};
        column[j] = 1;
        column = solved(root, column);
        for (std::size_t i = 0; i < 3; ++i) covariance[i][j] = column[i] * unit[i] * unit[j];
    }
    Frame frame;
    for (std::size_t i = 0; i < 3; ++i) frame.centre[i] = centre[i] + unit[i] * u[i];
    frame.axes = rootOf(covariance);
    return frame;
}

/// The density over a ball of the frame.
PosteriorGrid sumOver(Density& density, const Frame& frame, const Quadrature& quadrature) {
    PosteriorGrid grid;
    const int reach = static_cast<int>(quadrature.radius / quadrature.step);
    const double most = quadrature.radius * quadrature.radius;
    double greatest = -std::numeric_limits<double>::infinity();
    for (int i = -reach; i <= reach; ++i)
        for (int j = -reach; j <= reach; ++j) {
            const LawPlace flat{i * quadrature.step, j * quadrature.step, 0};
            const double outwards = flat[0] * flat[0] + flat[1] * flat[1];
            if (outwards > most) continue;
            const LawPlace timing = frame.place(flat);
            density.setTiming(timing[0], timing[1]);
            for (int k = -reach; k <= reach; ++k) {
                const double z = k * quadrature.step;
                if (outwards + z * z > most) continue;
                const LawPlace place{timing[0], timing[1], timing[2] + frame.axes[2][2] * z};
                const double value = density.at(place[2]);
                greatest = std::max(greatest, value);
                grid.nodes.push_back({place, value});
            }
        }
    double sum = 0;
    for (GridNode& node : grid.nodes) sum += node.weight = std::exp(node.weight - greatest);
    for (GridNode& node : grid.nodes) node.weight /= sum;
    grid.logEvidence =
        greatest + std::log(sum * frame.volume() * quadrature.step * quadrature.step * quadrature.step);
    return grid;
}

Frame frameOf(const PosteriorGrid& grid) {
    Frame frame;
    for (const GridNode& node : grid.nodes)
        for (std::size_t i = 0; i < 3; ++i) frame.centre[i] += node.weight * node.place[i];
    Square covariance{};
    for (const GridNode& node : grid.nodes)
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t j = 0; j < 3; ++j)
                covariance[i][j] +=
                    node.weight * (node.place[i] - frame.centre[i]) * (node.place[j] - frame.centre[j]);
    frame.axes = rootOf(covariance);
    return frame;
}

/// How far two frames are apart, in deviations.
double apart(const Frame& a, const Frame& b) {
    double most = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        most = std::max(most, std::abs(a.centre[i] - b.centre[i]) / a.axes[i][i]);
        most = std::max(most, std::abs(std::log(a.axes[i][i] / b.axes[i][i])));
    }
    return most;
}

} // namespace

PosteriorGrid posteriorGrid(Density& density, const Quadrature& quadrature) {
    constexpr Quadrature coarse{1.1, 4.4};
    constexpr int mostRounds = 8;
    constexpr double near = 0.15;
    Frame frame = frameAtMode(density);
    for (int round = 0; round < mostRounds; ++round) {
        const Frame next = frameOf(sumOver(density, frame, coarse));
        const bool fits = apart(frame, next) < near;
        frame = next;
        if (fits) break;
    }
    PosteriorGrid grid = sumOver(density, frame, quadrature);
    constexpr double weightless = 1e-10;
    std::erase_if(grid.nodes, [](const GridNode& node) { return node.weight < weightless; });
    return grid;
}

} // namespace warmbench::rooting
