#pragma once

#include "core/planner/problem.h"
#include "core/quantity/result.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

/// Planning problems and answers as JSON, versions 1 and 2 (resources/doc/planning-problem.md).
namespace warmbench::planner {

/// Files above this many bytes are refused.
inline constexpr std::size_t largestFile = std::size_t{256} << 20;
/// All zones of a problem together have at most this many slots, so that grids fit in memory.
inline constexpr std::int64_t mostSlots = std::int64_t{1} << 24;
/// The longest horizon, in days. Days of strike windows and stock steps beyond it are read as this day, which
/// changes no plan.
inline constexpr int farthestDay = 1'000'000'000;

/// Reads a problem. The place of a refusal is the JSON pointer of the first fault in the order of the format:
/// an object's fields (twice, unknown, missing) before its values, values in the order of the specification.
/// The pointer is empty where the text as a whole is not JSON, too deep or too large.
[[nodiscard]] Result<Problem> readProblem(std::string_view text);

/// The same from a file; places begin with the file's name: `problem.json: /batches/3/stays/0/low_c`.
[[nodiscard]] Result<Problem> readProblemFile(const std::filesystem::path& path);

/// The problem as the format writes it; what is read from that is the same problem.
[[nodiscard]] std::string problemText(const Problem& problem);

} // namespace warmbench::planner
