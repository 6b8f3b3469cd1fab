#include "app/storage/book_file.h"
#include "app/storage/rescue.h"
#include "core/book/rules.h"
#include "tests/app/storage/book_folder.h"
#include "tests/faults/fuzz/readers.h"

#include <QCoreApplication>

#include <filesystem>
#include <fstream>
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

} // namespace

const std::vector<FuzzedReader>& fileReaders() {
    static const std::vector<FuzzedReader> readers{{"file", feedFile}};
    return readers;
}

} // namespace warmbench::tests
