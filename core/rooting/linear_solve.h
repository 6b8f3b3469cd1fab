#pragma once

#include <span>

namespace warmbench::rooting {

/// Solves A x = b for a symmetric positive definite A (row by row, n x n, of which the lower half is read) by
/// Cholesky's factors, which take A's place; x takes the place of b. False, with both spoilt, where A is not
/// positive definite to working accuracy.
bool solvePositiveDefinite(std::span<double> matrix, std::span<double> vector);

} // namespace warmbench::rooting
