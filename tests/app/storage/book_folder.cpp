#include "tests/app/storage/book_folder.h"

#include "app/storage/rows.h"
#include "app/storage/shared_address.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/support/small_book.h"

#include <QUuid>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace warmbench::tests {

std::string BookFolder::path(const std::string& name) const {
    if (m_kept == Kept::InFiles) return filePath(name);
    std::string& address = m_databases[name];
    if (address.empty()) address = PostgresServer::shared().newDatabase();
    return address;
}

std::map<std::string, std::string> BookFolder::files() const {
    std::map<std::string, std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(m_folder.path().toStdString())) {
        std::ostringstream content;
        content << std::ifstream(entry.path(), std::ios::binary).rdbuf();
        found.emplace(entry.path().filename().string(), content.str());
    }
    return found;
}

std::string BookFolder::smallBookFile(const std::string& name) const {
    std::string file = path(name);
    if (const auto refusal = app::BookFile::create(file, smallBook().book))
        throw std::runtime_error(refusal->text());
    return file;
}

std::unique_ptr<app::BookFile> opened(const std::string& path, app::OpenMode mode) {
    auto file = app::BookFile::open(path, mode);
    if (!file) throw std::runtime_error(file.refusal().text());
    return std::move(*file);
}

void tamper(const std::string& path, const std::string& statement) {
    if (app::isShared(path))
        return PostgresServer::shared().run(app::SharedAddress::read(path)->database, statement);
    const QString connection = QUuid::createUuid().toString();
    Outcome refusal;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection);
        database.setDatabaseName(QString::fromStdString(path));
        database.open();
        refusal = app::run(database, QString::fromStdString(statement));
        database.close();
    }
    QSqlDatabase::removeDatabase(connection);
    if (refusal) throw std::runtime_error(refusal->text());
}

Command handsOf(int n) {
    return {Put<HandDay>{{{}, day("2030-01-01") + n, n, ""}}};
}

} // namespace warmbench::tests
