#include "app/command/program.h"
#include "app/storage/book_file.h"
#include "app/storage/rescue.h"
#include "core/book/rules.h"
#include "tests/app/storage/book_folder.h"
#include "tests/faults/fuzz/readers.h"

#include <QCoreApplication>

#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

#include <unistd.h>

namespace warmbench::tests {
namespace {

namespace fs = std::filesystem;
using app::BookFile;
using app::OpenMode;

/// A folder in memory for the files of this process, gone with it.
const fs::path& folder() {
    struct Folder {
        fs::path path = (fs::exists("/dev/shm") ? fs::path("/dev/shm") : fs::temp_directory_path()) /
                        ("warmbench-fuzz-" + std::to_string(::getpid()));
        Folder() { fs::create_directories(path); }
        Folder(const Folder&) = delete;
        Folder& operator=(const Folder&) = delete;
        ~Folder() {
            std::error_code ignored;
            fs::remove_all(path, ignored);
        }
    };
    static const Folder folder;
    return folder.path;
}

std::string fileWith(const std::string& name, std::string_view bytes) {
    const std::string file = (folder() / name).string();
    std::ofstream(file, std::ios::binary) << bytes;
    return file;
}

std::string bytesOf(const std::string& file) {
    std::ostringstream content;
    content << std::ifstream(file, std::ios::binary).rdbuf();
    return content.str();
}

void readFile(const std::string& file) {
    const auto read = BookFile::open(file, OpenMode::Read);
    if (!read) return;
    mustBe(audit((*read)->book()).empty(), "a file that opens keeps every rule");
    (void)(*read)->check();
    (void)(*read)->journal();
    (void)(*read)->bookAfter(1);
}

void writeFile(const std::string& file) {
    const auto written = BookFile::open(file, OpenMode::Write);
    if (!written) return;
    const HouseBook before = (*written)->book();
    if ((*written)->perform(handsOf(1))) {
        mustBe((*written)->book() == before, "what is refused changes nothing");
        return;
    }
    mustBe(!(*written)->undo() && (*written)->book() == before, "what is kept is taken back");
}

void feedFile(std::string_view bytes) {
    // The driver of the database is found by it.
    static int argc = 1;
    static char name[] = "fuzz";
    static char* argv[] = {name, nullptr};
    static const QCoreApplication application(argc, argv);
    const std::string file = fileWith("book", bytes);
    readFile(file);
    const auto rescued = app::rescueBook(file, (folder() / "rescued").string());
    mustBe(bytesOf(file) == bytes, "a file that is read, or rescued, is not changed");
    if (rescued)
        mustBe(BookFile::open((folder() / "rescued").string(), OpenMode::Read).ok(), "what is rescued opens");
    writeFile(file);
    for (const auto& entry : fs::directory_iterator(folder())) fs::remove_all(entry.path());
}

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

const std::vector<FuzzedReader>& programReaders() {
    static const std::vector<FuzzedReader> readers{{"command", feedCommand}, {"file", feedFile}};
    return readers;
}

} // namespace warmbench::tests
