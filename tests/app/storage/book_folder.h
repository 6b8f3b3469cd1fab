#pragma once

#include "app/storage/book_file.h"

#include <QTemporaryDir>

#include <map>
#include <memory>
#include <string>

namespace warmbench::tests {

/// A folder for the files of one test, gone with its owner.
class BookFolder {
public:
    [[nodiscard]] std::string path(const std::string& name) const {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    /// Every file in it, with its bytes.
    [[nodiscard]] std::map<std::string, std::string> files() const;
    /// A book file with the small book in it.
    [[nodiscard]] std::string smallBookFile(const std::string& name = "small.wbook") const;

private:
    QTemporaryDir m_folder;
};

/// Opens a book that must open; throws std::runtime_error with the refusal's words where it does not.
[[nodiscard]] std::unique_ptr<app::BookFile> opened(const std::string& path, app::OpenMode mode);

/// Runs SQL on a file behind the program's back.
void tamper(const std::string& path, const std::string& statement);

/// The hands of the n-th day, counted from 2030-01-01: a command that can be told apart from others.
[[nodiscard]] Command handsOf(int n);

} // namespace warmbench::tests
