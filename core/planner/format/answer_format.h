#pragma once

#include "core/planner/answer.h"
#include "core/planner/problem.h"
#include "core/quantity/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace warmbench::planner {

/// An answer to `problem`, of its version, as the format writes it: exact decimals, costs and the bound with
/// at most three.
[[nodiscard]] std::string answerText(const Problem& problem, const Answer& answer);

/// Writes that to a file, whole or not at all; the place of a refusal is the file's name.
[[nodiscard]] Outcome writeAnswerFile(const std::filesystem::path& path, const Problem& problem,
                                      const Answer& answer);

/// Reads an answer to `problem`: its shape, and that each batch stands in it once. Whether it keeps the rules
/// and its cost is right is another question (core/planner/verify). A bound with more than three decimals is
/// rounded down. The place of a refusal is a JSON pointer.
[[nodiscard]] Result<Answer> readAnswer(std::string_view text, const Problem& problem);

} // namespace warmbench::planner
