#pragma once

#include "app/storage/book_file.h"

#include <QTemporaryDir>

#include <map>
#include <memory>
#include <string>

namespace warmbench::tests {

/// Where the books of a test are kept.
enum class Kept { InFiles, Shared };

/// A folder for the files of one test, gone with its owner; or databases of the test's own server, which take
/// the places of files.
class BookFolder {
public:
    explicit BookFolder(Kept kept = Kept::InFiles) : m_kept(kept) {}

    /// The full name of a book or another file; of a shared book the address of a database of its own.
    [[nodiscard]] std::string path(const std::string& name) const;
    /// The full name of a file, wherever the books are kept.
    [[nodiscard]] std::string filePath(const std::string& name) const {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    /// Every file in it, with its bytes.
    [[nodiscard]] std::map<std::string, std::string> files() const;
    /// A book file with the small book in it.
    [[nodiscard]] std::string smallBookFile(const std::string& name = "small.wbook") const;

private:
    Kept m_kept;
    QTemporaryDir m_folder;
    mutable std::map<std::string, std::string> m_databases;
};

/// Opens a book that must open; throws std::runtime_error with the refusal's words where it does not.
[[nodiscard]] std::unique_ptr<app::BookFile> opened(const std::string& path, app::OpenMode mode);

/// Runs SQL on a book's file or database behind the program's back.
void tamper(const std::string& path, const std::string& statement);

/// The hands of the n-th day, counted from 2030-01-01: a command that can be told apart from others.
[[nodiscard]] Command handsOf(int n);

} // namespace warmbench::tests
