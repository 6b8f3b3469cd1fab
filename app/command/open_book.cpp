#include "app/command/open_book.h"

#include "core/exchange/book/book_json.h"
#include "core/exchange/file/file.h"

namespace warmbench::app {
namespace {

/// Descriptions above this many bytes are refused.
constexpr std::size_t largestDescription = std::size_t{512} << 20;

bool isShared(const std::string& book) {
    return book.rfind("postgresql://", 0) == 0 || book.rfind("postgres://", 0) == 0;
}

} // namespace

Result<std::unique_ptr<BookFile>> openBook(const std::string& book, OpenMode mode) {
    if (isShared(book))
        return Refusal{"BOOK",
                       "found the address of a shared book, expected the name of a file: this version keeps "
                       "books in files only"};
    return BookFile::open(book, mode);
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
