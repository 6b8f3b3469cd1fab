#include "app/storage/file_head.h"

#include <array>
#include <filesystem>
#include <fstream>
#include <string_view>

namespace warmbench::app {
namespace {

// Places in the head of a SQLite file (sqlite.org/fileformat.html, section 1.3); numbers are big-endian.
constexpr std::size_t versionPlace = 60;
constexpr std::size_t applicationPlace = 68;
constexpr std::size_t headSize = 100;

std::uint32_t numberAt(const std::array<char, headSize>& head, std::size_t place) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8 | static_cast<unsigned char>(head[place + i]);
    return number;
}

} // namespace

Result<FileHead> readHead(const std::string& path) {
    std::error_code failed;
    if (!std::filesystem::exists(path, failed)) return Refusal{path, phrase("there is no such file")};
    if (std::filesystem::is_directory(path, failed))
        return Refusal{path, phrase("found a folder, expected a house book")};
    std::ifstream file(path, std::ios::binary);
    if (!file) return Refusal{path, phrase("it can't be read: you may not have the right to")};
    std::array<char, headSize> head{};
    file.read(head.data(), headSize);
    constexpr std::string_view sign("SQLite format 3\0", 16);
    if (file.gcount() < static_cast<std::streamsize>(headSize) ||
        std::string_view(head.data(), sign.size()) != sign)
        return Refusal{
            path,
            phrase("this is no house book (found another kind of file, expected one made by Warmbench)")};
    return FileHead{numberAt(head, applicationPlace), numberAt(head, versionPlace)};
}

} // namespace warmbench::app
