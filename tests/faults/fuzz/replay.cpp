#include "tests/faults/fuzz/readers.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>
#include <vector>

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

/// Feeds a reader what is kept for it, as it is and broken, at least so many broken texts; false where
/// nothing is kept.
bool feedAll(const warmbench::tests::FuzzedReader& reader, std::size_t atLeast) {
    const std::filesystem::path folder =
        std::filesystem::path(WARMBENCH_TEST_DATA "/faults/corpus") / reader.name;
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) files.push_back(entry.path());
    std::sort(files.begin(), files.end()); // the same texts on every machine
    std::size_t texts = 0;
    for (std::size_t file = 0; file < files.size(); ++file) {
        std::ostringstream content;
        content << std::ifstream(files[file], std::ios::binary).rdbuf();
        const std::string text = content.str();
        reader.feed(text);
        if (text.empty()) continue;
        const std::size_t ways =
            std::max<std::size_t>(30, atLeast / std::max<std::size_t>(1, files.size() - 1) + 1);
        for (std::size_t number = 0; number < ways; ++number, ++texts)
            reader.feed(broken(text, number * 1000 + file));
    }
    std::printf("%-10s %3zu files, %5zu broken texts\n", reader.name, files.size(), texts);
    std::fflush(stdout);
    return !files.empty();
}

/// faults_replay [TEXTS]: feeds each reader what is kept in its folder of tests/faults/corpus, as it is and
/// broken at random in 30 ways or more, which are the same each time: no coverage guides them, as it does in
/// .ci/fuzz. A book's file and the command line, which are not fuzzed each time for what their build takes,
/// get so many texts. Prints how much that was; a reader that crashes ends it.
int main(int argc, char** argv) {
    namespace tests = warmbench::tests;
    const std::size_t atLeast = argc > 1 ? static_cast<std::size_t>(std::atoi(argv[1])) : 300;
    bool all = true;
    for (const auto* readers : {&tests::fuzzedReaders(), &tests::fileReaders(), &tests::commandReaders()})
        for (const auto& reader : *readers)
            all = feedAll(reader, readers == &tests::fuzzedReaders() ? 0 : atLeast) && all;
    return all ? 0 : 1;
}
