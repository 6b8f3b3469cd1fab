#pragma once

#include "core/planner/format/problem_format.h"
#include "core/planner/verify/verify.h"
#include "tests/support/planning_data.h"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <utility>

namespace warmbench::tests {

inline planner::Problem readPlanning(const std::string& name) {
    auto problem = planner::readProblemFile(planningData(name));
    REQUIRE(problem);
    return std::move(*problem);
}

using Replacement = std::pair<std::string, std::string>;

/// A text with places replaced; each must stand in it, and the first is taken.
inline std::string edited(std::string text, std::initializer_list<Replacement> replacements) {
    for (const auto& [find, replacement] : replacements) {
        INFO("to be replaced: " << find);
        REQUIRE(text.find(find) != std::string::npos);
        text.replace(text.find(find), find.size(), replacement);
    }
    return text;
}

/// The best plan of p01-tiny.json: A in zone a at 15 from day 0 and then in w, B beside it, C unplaced.
inline const std::string tinyAnswer = R"({
  "format": "warmbench-planning-answer", "version": 1,
  "placed": [
    { "id": "A", "strike_day": 0, "stays": [
      { "zone": "a", "from": 0, "to": 6, "slots": [[0, 0, 1, 1], [0, 1, 1, 1], [0, 2, 1, 1]] },
      { "zone": "w", "from": 6, "to": 8, "slots": [[0, 1, 1, 1], [0, 2, 1, 1], [0, 3, 1, 1]] } ] },
    { "id": "B", "strike_day": 1, "stays": [
      { "zone": "a", "from": 1, "to": 6, "slots": [[0, 3, 1, 1]] } ] } ],
  "unplaced": [ { "id": "C", "reason": "no cuttings" } ],
  "mats": [ { "zone": "a", "runs": [[0, 6, 15]] } ],
  "cost": { "total": 11.8, "unplaced": 5, "late": 2, "off_ideal": 1.5, "mats": 3, "moves": 0.3, "scatter": 0 },
  "bound": 11.8
})";

inline bool hasViolation(const planner::Verdict& verdict, const std::string& part) {
    return std::any_of(verdict.violations.begin(), verdict.violations.end(),
                       [&](const std::string& sentence) { return sentence.find(part) != std::string::npos; });
}

/// All violations, for a failing test.
inline std::string told(const planner::Verdict& verdict) {
    std::string text = verdict.summary();
    for (const std::string& sentence : verdict.violations) text += "\n" + sentence;
    return text;
}

} // namespace warmbench::tests
