#include "app/storage/file_name.h"

#include <QUuid>

#include <filesystem>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace warmbench::app {

void syncFolder(const std::string& path) {
    const std::filesystem::path file = path;
    const std::filesystem::path folder =
        file.parent_path().empty() ? std::filesystem::path(".") : file.parent_path();
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY);
    if (descriptor < 0) return;
    ::fsync(descriptor);
    ::close(descriptor);
}

std::string temporaryName(const std::string& path) {
    return path + ".part-" + QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

Outcome giveName(const std::string& finished, const std::string& path) {
    std::error_code failed;
    std::filesystem::create_hard_link(finished, path, failed);
    std::error_code ignored;
    std::filesystem::remove(finished, ignored);
    if (failed == std::errc::file_exists)
        return Refusal{path, phrase("there is a file of this name already; choose another")};
    if (failed) return Refusal{path, phrase("it can't be written: %1", failed.message())};
    syncFolder(path);
    return std::nullopt;
}

} // namespace warmbench::app
