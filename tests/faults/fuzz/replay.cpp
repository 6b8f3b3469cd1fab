#include "tests/faults/fuzz/readers.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

namespace {

/// Breaks a text in a way of its own for each number: cut, doubled, bytes changed or taken out.
std::string broken(std::string text, std::uint64_t number) {
    std::mt19937_64 random(number);
    const auto below = [&](std::size_t end) { return static_cast<std::size_t>(random() % end); };
    for (std::size_t times = below(4) + 1; times > 0 && !text.empty(); --times) {
        const std::size_t at = below(text.size());
        switch (below(5)) {
        case 0:
            text.resize(at);
            break;
        case 1:
            text[at] = static_cast<char>(random());
            break;
        case 2:
            text.erase(at, below(20));
            break;
        case 3:
            text.insert(at, text.substr(below(text.size()), below(60)));
            break;
        default:
            text.insert(at, std::string_view("-1e999,\"[{nan\\u0000;\xff\xfe", below(20)));
            break;
        }
    }
    return text;
}

} // namespace

/// Feeds a reader what is kept for it, as it is and broken; false where nothing is kept.
bool feedAll(const warmbench::tests::FuzzedReader& reader, std::uint64_t waysToBreak) {
    const std::filesystem::path folder =
        std::filesystem::path(WARMBENCH_TEST_DATA "/faults/corpus") / reader.name;
    std::size_t files = 0;
    std::size_t texts = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        std::ostringstream content;
        content << std::ifstream(entry.path(), std::ios::binary).rdbuf();
        reader.feed(content.str());
        ++files;
        for (std::uint64_t number = 0; number < waysToBreak; ++number, ++texts)
            reader.feed(broken(content.str(), number * 1000 + files));
    }
    std::printf("%-10s %3zu files, %5zu broken texts\n", reader.name, files, texts);
    return files > 0;
}

/// Feeds each reader what is kept in its folder of tests/faults/corpus, as it is and broken in ways that are
/// the same each time. Prints how much that was; a reader that crashes ends it.
int main() {
    namespace tests = warmbench::tests;
    constexpr std::uint64_t waysToBreak = 30;
    bool all = true;
    for (const auto* readers : {&tests::fuzzedReaders(), &tests::fileReaders(), &tests::commandReaders()})
        for (const auto& reader : *readers) all = feedAll(reader, waysToBreak) && all;
    return all ? 0 : 1;
}
