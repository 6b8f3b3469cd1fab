#include "app/command/open_book.h"

#include "app/window/open_shared.h"

#include "core/exchange/book/book_json.h"
#include "core/exchange/file/file.h"

namespace warmbench::app {
namespace {

/// Descriptions above this many bytes are refused.
constexpr std::size_t largestDescription = std::size_t{512} << 20;

} // namespace

Result<std::unique_ptr<BookFile>> openBook(const std::string& book, OpenMode mode) {
    SystemKeys keys;
    return openBookWith(keys, book, mode);
}

Result<HouseBook> readBookFile(const std::string& path) {
    const auto text = exchange::readFile(path, largestDescription + 1);
    if (!text) return text.refusal();
    if (text->size() > largestDescription)
        return Refusal{path, "found more than 512 MiB, expected a house book as JSON"};
    auto book = readBook(*text);
    if (!book) return Refusal{path, book.refusal().text()};
    return book;
}

} // namespace warmbench::app
