#include "app/command/program.h"
#include "tests/faults/fuzz/readers.h"

#include <iostream>
#include <sstream>

namespace warmbench::tests {
namespace {

/// The words of a line, parted by line ends. Only calls that touch no file are done.
void feedCommand(std::string_view text) {
    std::vector<std::string> words{"warmbench"};
    std::istringstream lines{std::string(text)};
    for (std::string word; words.size() < 40 && std::getline(lines, word);)
        words.push_back(word.substr(0, word.find('\0')));
    std::vector<char*> call;
    for (std::string& word : words) call.push_back(word.data());
    call.push_back(nullptr);
    std::ostringstream said;
    std::streambuf* const out = std::cout.rdbuf(said.rdbuf());
    std::streambuf* const error = std::cerr.rdbuf(said.rdbuf());
    const app::Call read = app::readCall(static_cast<int>(words.size()), call.data());
    const bool harmless = words.size() > 1 && (words[1] == "reckon" || words[1] == "recipes") &&
                          text.find('/') == std::string_view::npos &&
                          text.find("--out") == std::string_view::npos;
    const int status = read.work && harmless ? read.work() : read.status;
    std::cout.rdbuf(out);
    std::cerr.rdbuf(error);
    mustBe(status >= 0 && status <= 3, "a call ends with one of the four exit statuses");
    mustBe(status != 2 || !said.str().empty(), "a call that can't be read is told why");
}

} // namespace

const std::vector<FuzzedReader>& commandReaders() {
    static const std::vector<FuzzedReader> readers{{"command", feedCommand}};
    return readers;
}

} // namespace warmbench::tests
