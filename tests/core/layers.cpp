#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <regex>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

struct Include {
    std::string file; ///< from the top of the tree
    std::string what;
};

/// Every #include of the sources below a folder of the tree.
std::vector<Include> includesBelow(const std::string& folder) {
    static const std::regex line(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
    std::vector<Include> found;
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(WARMBENCH_SOURCE) / folder)) {
        const std::string extension = entry.path().extension().string();
        if (extension != ".h" && extension != ".cpp") continue;
        std::ifstream source(entry.path());
        std::string text;
        std::smatch match;
        while (std::getline(source, text))
            if (std::regex_search(text, match, line))
                found.push_back({fs::relative(entry.path(), WARMBENCH_SOURCE).generic_string(), match[1]});
    }
    return found;
}

bool startsWith(const std::string& text, const std::string& start) {
    return text.rfind(start, 0) == 0;
}

bool isQt(const std::string& include) {
    return include.size() > 1 && include[0] == 'Q' && include[1] >= 'A' && include[1] <= 'Z'
               ? true
               : startsWith(include, "Qt");
}

bool isSql(const std::string& include) {
    return include.find("QSql") != std::string::npos || startsWith(include, "QtSql");
}

} // namespace

TEST_CASE("core includes nothing of Qt, ui or app") {
    const auto includes = includesBelow("core");
    REQUIRE(includes.size() > 100);
    for (const Include& one : includes) {
        INFO(one.file << " includes " << one.what);
        CHECK_FALSE(isQt(one.what));
        CHECK_FALSE(startsWith(one.what, "ui/"));
        CHECK_FALSE(startsWith(one.what, "app/"));
    }
}

TEST_CASE("ui includes nothing of SQL or app") {
    for (const Include& one : includesBelow("ui")) {
        INFO(one.file << " includes " << one.what);
        CHECK_FALSE(isSql(one.what));
        CHECK_FALSE(startsWith(one.what, "app/"));
    }
}

TEST_CASE("Only app/storage includes SQL") {
    for (const Include& one : includesBelow("app")) {
        if (startsWith(one.file, "app/storage/")) continue;
        INFO(one.file << " includes " << one.what);
        CHECK_FALSE(isSql(one.what));
    }
}

TEST_CASE("verify shares no code with the search") {
    const fs::path verify = fs::path(WARMBENCH_SOURCE) / "core/planner/verify";
    if (!fs::exists(verify)) return;
    for (const Include& one : includesBelow("core/planner/verify"))
        for (const char* folder : {"search/", "packing/", "bound/", "planner/planner.h"}) {
            INFO(one.file << " includes " << one.what);
            CHECK(one.what.find(std::string("core/planner/") + folder) == std::string::npos);
        }
}
