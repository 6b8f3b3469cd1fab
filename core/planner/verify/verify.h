#pragma once

#include "core/planner/problem.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A second reading of the planning problem's rules, from the specification alone: it shares no code with the
/// search, so that a mistake in one shows in the other.
namespace warmbench::planner {

/// Thousandths of a currency unit, wide enough for the cost of any answer to any problem.
using WideCost = __int128;

/// Thousandths as a decimal, such as `13.85`.
[[nodiscard]] std::string costText(WideCost thousandths);

/// What an answer costs by the rules, whatever it says itself.
struct ReckonedCost {
    WideCost unplaced = 0;
    WideCost late = 0;
    WideCost offIdeal = 0;
    WideCost mats = 0;
    WideCost moves = 0;
    WideCost scatter = 0;
    WideCost changes = 0;
    [[nodiscard]] WideCost total() const {
        return unplaced + late + offIdeal + mats + moves + scatter + changes;
    }
};

struct Verdict {
    std::vector<std::string> violations; ///< one sentence each
    ReckonedCost cost;                   ///< of what could be read of the answer
    std::string bound;                   ///< as the answer writes it

    [[nodiscard]] bool valid() const { return violations.empty(); }
    /// `valid total=13.85 bound=13.84` or `invalid 3 violations`.
    [[nodiscard]] std::string summary() const;
};

/// After so many violations no more are looked for.
inline constexpr std::size_t mostViolations = 100'000;

/// Checks an answer against every rule of `problem` and reckons its cost anew. A text that is no answer at
/// all has its fault as the one violation.
[[nodiscard]] Verdict verifyAnswer(const Problem& problem, std::string_view answer);

/// The same for a file; one that cannot be read is invalid too.
[[nodiscard]] Verdict verifyAnswerFile(const Problem& problem, const std::filesystem::path& path);

} // namespace warmbench::planner
