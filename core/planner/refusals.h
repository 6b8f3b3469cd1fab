#pragma once

#include "core/planner/answer.h"
#include "core/planner/search/model.h"
#include "core/quantity/result.h"

/// Why a problem has no answer.
namespace warmbench::planner {

/// What held and pinned things rule out by themselves.
[[nodiscard]] Outcome impossible(const search::Model& model);

/// A pinned batch that the answer leaves out.
[[nodiscard]] Outcome brokenPin(const Problem& problem, const Answer& answer);

} // namespace warmbench::planner
