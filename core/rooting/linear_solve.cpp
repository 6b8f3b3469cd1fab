#include "core/rooting/linear_solve.h"

#include <cmath>

namespace warmbench::rooting {

bool solvePositiveDefinite(std::span<double> matrix, std::span<double> vector) {
    constexpr double accuracy = 1e-14;
    const std::size_t n = vector.size();
    for (std::size_t i = 0; i < n; ++i) {
        double* row = &matrix[i * n];
        const double whole = row[i];
        for (std::size_t j = 0; j <= i; ++j) {
            const double* other = &matrix[j * n];
            double sum = row[j];
            for (std::size_t k = 0; k < j; ++k) sum -= row[k] * other[k];
            if (j < i)
                row[j] = sum / other[j];
            else if (sum > accuracy * whole)
                row[i] = std::sqrt(sum);
            else
                return false;
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k) vector[i] -= matrix[i * n + k] * vector[k];
        vector[i] /= matrix[i * n + i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) vector[i] -= matrix[k * n + i] * vector[k];
        vector[i] /= matrix[i * n + i];
    }
    return true;
}

} // namespace warmbench::rooting
