#pragma once

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

/// The planning problems in tests/data/planning.
namespace warmbench::tests {

inline std::filesystem::path planningData(const std::string& name) {
    return std::filesystem::path(WARMBENCH_TEST_DATA) / "data" / "planning" / name;
}

/// The whole of a text file that must be there.
inline std::string fileText(const std::filesystem::path& path) {
    const std::ifstream file(path, std::ios::binary);
    INFO(path.string());
    REQUIRE(file);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

/// A malformed problem of tests/data/planning/bad and the pointer that its refusal must name.
struct BadProblem {
    std::string file;
    std::string what;
    std::string pointer;
};

/// The lines of bad/expected.csv; the middle column may be quoted.
inline std::vector<BadProblem> badProblems() {
    std::istringstream lines(fileText(planningData("bad/expected.csv")));
    std::vector<BadProblem> problems;
    std::string line;
    std::getline(lines, line); // the names of the columns
    while (std::getline(lines, line)) {
        if (!line.empty() && line.back() == '\r') line.pop_back();
        const auto first = line.find(',');
        const auto last = line.rfind(',');
        problems.push_back(
            {line.substr(0, first), line.substr(first + 1, last - first - 1), line.substr(last + 1)});
    }
    REQUIRE(problems.size() > 5);
    return problems;
}

} // namespace warmbench::tests
